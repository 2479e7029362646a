// A headline number: what it is, its likely value, its range, and how it was computed.

import type { ReactNode } from 'react';
import type { Band, QuantityName, UnitView, WorkingStep } from '../../quantities/index.ts';
import { Termed } from '../terms/termed.tsx';
import { HowComputed } from './how-computed.tsx';
import { say, sayParts } from './say.ts';

export interface NumberItemProps {
  readonly label: string;
  readonly band: Band & { readonly result?: string };
  readonly quantity: QuantityName;
  readonly view: UnitView;
  readonly ink?: 'into-water' | 'from-source' | 'electricity';
  readonly currency?: string;
  /** Significant digits of a number without a range, where they differ from the usual ones. */
  readonly digits?: number;
  readonly note?: ReactNode;
  /** The steps that show how the number came about. */
  readonly workings?: readonly WorkingStep[];
  /** Name of the result in the workings, where the band does not carry it. */
  readonly result?: string;
  /** True where the steps are not of the verdict, so that Working would not have them. */
  readonly isElsewhere?: boolean;
}

export function NumberItem(props: NumberItemProps): ReactNode {
  const { label, band, quantity, view, ink, currency, note, workings } = props;
  const result = props.result ?? band.result;
  const { likely, range } =
    props.digits === undefined
      ? sayParts(band, quantity, view, currency)
      : { likely: say(band.likely, quantity, view, props.digits), range: undefined };
  return (
    <div className="number-item">
      <dt>
        <Termed>{label}</Termed>
      </dt>
      <dd className={`number-value${ink === undefined ? '' : ` ink-${ink}`}`}>{likely}</dd>
      {range !== undefined && <dd className="number-range">{range}</dd>}
      {note !== undefined && <dd className="number-range">{note}</dd>}
      {workings !== undefined && result !== undefined && (
        <dd>
          <HowComputed workings={workings} result={result} of={label} isElsewhere={props.isElsewhere ?? false} />
        </dd>
      )}
    </div>
  );
}

/** A number known without a range, as a band of no width. */
export function exactly(value: number): Band {
  return { low: value, likely: value, high: value };
}

export function Numbers({ children }: { children: ReactNode }): ReactNode {
  return <dl className="numbers">{children}</dl>;
}
