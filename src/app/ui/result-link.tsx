// A number that leads to how it was computed: a link to its place in Working, quiet to the eye. A number without a step
// behind it stays plain text.

import type { ReactNode } from 'react';
import type { WorkingStep } from '../../quantities/index.ts';
import { areToCome } from '../state/workings.ts';
import { PageLink } from './page-link.tsx';

export interface ResultLinkProps {
  /** The steps behind everything shown, in which this result may be one. */
  readonly workings: readonly WorkingStep[];
  /** Name of the result in the workings: 'tank.load'. */
  readonly result: string | undefined;
  /** What the number is, for those who hear the link without what stands around it. */
  readonly of: string;
  /** The number as it is shown. */
  readonly children: string | undefined;
}

export function ResultLink({ workings, result, of, children }: ResultLinkProps): ReactNode {
  if (children === undefined || result === undefined || !hasStep(workings, result)) return children;
  return (
    <PageLink page="working" part={result} className="result-link" label={`how computed: ${of}, ${children}`}>
      {children}
    </PageLink>
  );
}

const names = new WeakMap<readonly WorkingStep[], ReadonlySet<string>>();

/**
 * Whether a result is among the steps, or will be once they have come; asked for every number of a table, so the names are
 * gathered once.
 */
export function hasStep(workings: readonly WorkingStep[], result: string): boolean {
  if (areToCome(workings)) return true;
  let known = names.get(workings);
  if (known === undefined) {
    known = new Set(workings.map((step) => step.result));
    names.set(workings, known);
  }
  return known.has(result);
}
