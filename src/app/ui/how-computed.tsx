// "How computed" beside a number: opens its working in place, and from there the paper with the whole chain. What is
// opened is loaded when somebody first asks for it.

import { lazy, type ReactNode, Suspense, useState } from 'react';
import type { WorkingStep } from '../../quantities/index.ts';
import { hasStep } from './result-link.tsx';

const OpenedWorking = lazy(() => import('./opened-working.tsx').then((part) => ({ default: part.OpenedWorking })));

export interface HowComputedProps {
  /** The steps behind everything shown, in which this result is one. */
  readonly workings: readonly WorkingStep[];
  /** Name of the result in the workings: 'tank.load'. */
  readonly result: string;
  /** What the number is called on the page, for the button's name. */
  readonly of: string;
  /** What the button says where it stands apart from its number. */
  readonly words?: string;
  /** True where the steps are not of the open design, so that Working would show another number under this name. */
  readonly isElsewhere?: boolean;
}

export function HowComputed(props: HowComputedProps): ReactNode {
  const { workings, result, of, words = 'how computed', isElsewhere = false } = props;
  const [open, setOpen] = useState(false);
  if (!hasStep(workings, result)) return null;
  return (
    <div className="how">
      <button
        type="button"
        className="linkish how-button"
        aria-expanded={open}
        aria-label={words === 'how computed' ? `how computed: ${of}` : undefined}
        onClick={() => setOpen(!open)}
      >
        {words}
      </button>
      {open && (
        <Suspense>
          <OpenedWorking workings={workings} result={result} isElsewhere={isElsewhere} />
        </Suspense>
      )}
    </div>
  );
}
