// The verdict: standing, the sentence, heat needed against heat delivered on one scale, and what it rests on.

import type { ReactNode } from 'react';
import type { Assessment } from '../../assess/index.ts';
import { fieldRecord } from '../../design/index.ts';
import { type Band, sayBand, type UnitView } from '../../quantities/index.ts';
import { useWorkbench } from '../state/context.tsx';
import type { OpenPage } from '../state/use-page.ts';
import { Termed } from '../terms/termed.tsx';
import { saidFindings } from '../ui/findings.tsx';
import { HowComputed } from '../ui/how-computed.tsx';
import { say, sayNeed } from '../ui/say.ts';
import { StateMark } from '../ui/state-mark.tsx';
import type { AssessAnswer } from '../worker/messages.ts';
import { StandingMark } from './standing.tsx';

export interface VerdictProps {
  readonly answer: AssessAnswer;
  readonly view: UnitView;
  readonly stale: boolean;
  /** The engine has no answer for the design as it stands; this one is of an earlier state. */
  readonly isRefused: boolean;
  readonly openAssumptions: () => void;
  readonly open: OpenPage;
}

export function Verdict({ answer, view, stale, isRefused, openAssumptions, open }: VerdictProps): ReactNode {
  const { assessment } = answer;
  const said = saidFindings(answer);
  const stops = said.filter(({ finding }) => finding.severity === 'stop');
  const looks = said.filter(({ finding }) => finding.severity === 'look');
  const { document } = useWorkbench();
  const mine = assessment.assumptions.filter(({ path }) => fieldRecord(path, document) !== undefined).length;
  return (
    <section className={`verdict${stale ? ' stale' : ''}`} aria-labelledby="verdict-title" id="verdict" tabIndex={-1}>
      <div className="verdict-words">
        <h2 id="verdict-title" className="for-reader">
          Verdict
        </h2>
        <p className="verdict-standing">
          {isRefused ? (
            <StateMark kind="stop" word="No answer. This was the verdict before:" />
          ) : (
            <StandingMark standing={assessment.standing} looks={looks.length} />
          )}
        </p>
        <p className="verdict-sentence" aria-live="polite">
          <Termed>{assessment.sentence}</Termed>
        </p>
        <div className="verdict-links">
          <button type="button" className="linkish" onClick={openAssumptions}>
            {assumptionCount(mine, assessment.assumptions.length - mine)}
          </button>
          {stops.length + looks.length > 0 && (
            <button type="button" className="linkish" onClick={() => open('cautions')}>
              {findingCount(stops.length, looks.length)}
            </button>
          )}
          {assessment.measureNext.length > 0 && (
            <button type="button" className="linkish" onClick={() => open('where-it-settles', 'measure-next')}>
              What to measure next
            </button>
          )}
        </div>
      </div>
      <Ranges assessment={assessment} view={view} />
    </section>
  );
}

/** Those that a person can replace, and those that the models make in any case. */
function assumptionCount(mine: number, ofModels: number): string {
  const left = mine === 0 ? 'No assumption' : mine === 1 ? '1 assumption' : `${mine} assumptions`;
  return ofModels === 0 ? `${left} left` : `${left} left, and ${ofModels} of the models`;
}

function findingCount(stops: number, looks: number): string {
  const parts = [stops > 0 ? `${stops} to stop for` : '', looks > 0 ? `${looks} to look at` : ''];
  return parts.filter((part) => part !== '').join(', ');
}

interface RangesProps {
  readonly assessment: Assessment;
  readonly view: UnitView;
}

/** Heat needed and heat delivered with their ranges on one scale: where they overlap, nobody can know yet. */
function Ranges({ assessment, view }: RangesProps): ReactNode {
  const { tankLoad, heatDelivered } = assessment;
  const top = 1.08 * Math.max(tankLoad.high, heatDelivered.high, 1);
  return (
    <div className="ranges">
      <RangeRow label="The tank needs" words={sayNeed(tankLoad, view)} band={tankLoad} top={top} ink="leaving" />
      <HowComputed workings={assessment.workings} result={tankLoad.result} of="The tank needs" />
      <RangeRow
        label="The machine brings"
        words={sayBand(heatDelivered, 'power', view)}
        band={heatDelivered}
        top={top}
        ink="into-water"
      />
      <HowComputed workings={assessment.workings} result={heatDelivered.result} of="The machine brings" />
      <p className="quiet">
        One scale from 0 to {say(top, 'power', view)}. The band is the range, the stroke the likely value.
      </p>
    </div>
  );
}

interface RangeRowProps {
  readonly label: string;
  readonly words: string;
  readonly band: Band;
  readonly top: number;
  readonly ink: 'leaving' | 'into-water';
}

function RangeRow({ label, words, band, top, ink }: RangeRowProps): ReactNode {
  const share = (value: number) => `${(100 * Math.max(0, Math.min(value, top))) / top}%`;
  const width = `${(100 * Math.max(0, Math.min(band.high, top) - Math.max(0, band.low))) / top}%`;
  return (
    <div className="range-row">
      <span>{label}</span>
      <strong>{words}</strong>
      <div className="range-track" aria-hidden="true">
        {band.high > 0 && (
          <>
            <div className="range-band" style={{ left: share(band.low), width, background: `var(--${ink}-fill)` }} />
            <div className="range-likely" style={{ left: share(band.likely) }} />
          </>
        )}
      </div>
    </div>
  );
}
