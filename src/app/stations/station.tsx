// The frame of a station: the answer first, then its inputs, then the pictures and tables that explain it.

import type { ReactNode } from 'react';
import type { UnitView } from '../../quantities/index.ts';
import { FieldGroup } from '../fields/field-group.tsx';
import { pageTitles, type StationName } from '../pages.ts';
import { useWorkbench } from '../state/context.tsx';
import { Termed } from '../terms/termed.tsx';
import { StateMark } from '../ui/state-mark.tsx';
import type { AssessAnswer } from '../worker/messages.ts';

export interface StationProps {
  readonly answer: AssessAnswer;
  readonly view: UnitView;
}

export interface StationFrameProps {
  readonly name: StationName;
  readonly answer: string;
  readonly numbers?: ReactNode;
  /** Answer and numbers are of an earlier state of the design, while those of this one are worked out. */
  readonly isOld?: boolean;
  readonly before?: ReactNode;
  readonly children: ReactNode;
}

export function Station({ name, answer, numbers, isOld = false, before, children }: StationFrameProps): ReactNode {
  const { state } = useWorkbench();
  const findings = [...(state.answer?.assessment.findings ?? []), ...(state.answer?.assessment.cautions ?? [])];
  const isForStudyOnly = findings.some((finding) => finding.code === 'notForThisMachine');
  return (
    <article className={`station ${name}`} aria-labelledby="page-title">
      <header className="station-head" aria-busy={isOld}>
        <h2 id="page-title" tabIndex={-1}>
          {pageTitles[name]}
        </h2>
        {isForStudyOnly && (
          <p className="study-only">
            <StateMark kind="stop" word="Not for this machine: what follows is shown for study only." />
          </p>
        )}
        <p className="station-answer">
          <Termed>{answer}</Termed>
        </p>
        {numbers}
      </header>
      {before}
      <div className="station-body">
        <Inputs station={name} />
        <div className="station-pictures">{children}</div>
      </div>
    </article>
  );
}

/** A station of a design the engine has no answer for: its inputs, so that they can be put right. */
export function StationWithoutAnswer({ station }: { station: StationFrameProps['name'] }): ReactNode {
  return (
    <article className="station" aria-labelledby="page-title">
      <header className="station-head">
        <h2 id="page-title" tabIndex={-1}>
          {pageTitles[station]}
        </h2>
        <p className="station-answer">There is no answer yet. Put the inputs right here or at another station.</p>
      </header>
      <div className="station-body">
        <Inputs station={station} hasAnswer={false} />
      </div>
    </article>
  );
}

function Inputs({ station, hasAnswer = true }: { station: StationName; hasAnswer?: boolean }): ReactNode {
  return (
    <section className="station-inputs" aria-labelledby="station-inputs-title">
      <h3 id="station-inputs-title" tabIndex={-1}>
        What it rests on
      </h3>
      <FieldGroup station={station} hasAnswer={hasAnswer} />
    </section>
  );
}
