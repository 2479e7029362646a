// The frame of a station: the answer first, then its inputs, then the pictures and tables that explain it.

import type { ReactNode } from 'react';
import type { UnitView } from '../../quantities/index.ts';
import { FieldGroup } from '../ui/field-group.tsx';
import type { AssessAnswer } from '../worker/messages.ts';
import { type StationName, stationTitles } from './names.ts';

export interface StationProps {
  readonly answer: AssessAnswer;
  readonly view: UnitView;
}

export interface StationFrameProps {
  readonly name: Exclude<StationName, 'cycle-alone'>;
  readonly answer: string;
  readonly numbers?: ReactNode;
  readonly before?: ReactNode;
  readonly children: ReactNode;
}

export function Station({ name, answer, numbers, before, children }: StationFrameProps): ReactNode {
  return (
    <article className="station" aria-labelledby="station-title">
      <header className="station-head">
        <h2 id="station-title" tabIndex={-1}>
          {stationTitles[name]}
        </h2>
        <p className="station-answer">{answer}</p>
        {numbers}
      </header>
      {before}
      <div className="station-body">
        <section className="station-inputs" aria-labelledby="station-inputs-title">
          <h3 id="station-inputs-title">What it rests on</h3>
          <FieldGroup station={name} />
        </section>
        <div className="station-pictures">{children}</div>
      </div>
    </article>
  );
}
