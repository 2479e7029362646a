// The verdict: standing, the sentence, heat needed against heat delivered on one scale, and what it rests on.

import type { ReactNode } from 'react';
import type { Assessment } from '../../assess/index.ts';
import { type Band, sayBand, type UnitView } from '../../quantities/index.ts';
import type { StationName } from '../stations/names.ts';
import type { AssessAnswer } from '../worker/messages.ts';
import { saidFindings } from './findings.tsx';
import { HowComputed } from './how-computed.tsx';
import { say } from './say.ts';
import { StandingMark } from './standing.tsx';

export interface VerdictProps {
  readonly answer: AssessAnswer;
  readonly view: UnitView;
  readonly stale: boolean;
  readonly openAssumptions: () => void;
  readonly open: (station: StationName) => void;
}

export function Verdict({ answer, view, stale, openAssumptions, open }: VerdictProps): ReactNode {
  const { assessment } = answer;
  const said = saidFindings(answer);
  const stops = said.filter(({ finding }) => finding.severity === 'stop');
  const looks = said.filter(({ finding }) => finding.severity === 'look');
  const count = assessment.assumptions.length;
  return (
    <section className={`verdict${stale ? ' stale' : ''}`} aria-labelledby="verdict-title" id="verdict">
      <div className="verdict-words">
        <h2 id="verdict-title" className="for-reader">
          Verdict
        </h2>
        <p className="verdict-standing">
          <StandingMark standing={assessment.standing} />
        </p>
        <p className="verdict-sentence" aria-live="polite">
          {assessment.sentence}
        </p>
        <div className="verdict-links">
          <button type="button" className="linkish" onClick={openAssumptions}>
            {count === 0 ? 'No assumption left' : count === 1 ? '1 assumption left' : `${count} assumptions left`}
          </button>
          {stops.length + looks.length > 0 && (
            <button type="button" className="linkish" onClick={() => open('the-machine')}>
              {findingCount(stops.length, looks.length)}
            </button>
          )}
        </div>
      </div>
      <Ranges assessment={assessment} view={view} />
    </section>
  );
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
      <RangeRow label="The tank needs" band={tankLoad} top={top} ink="leaving" view={view} />
      <HowComputed workings={assessment.workings} result={tankLoad.result} of="The tank needs" />
      <RangeRow label="The machine brings" band={heatDelivered} top={top} ink="into-water" view={view} />
      <HowComputed workings={assessment.workings} result={heatDelivered.result} of="The machine brings" />
      <p className="quiet">
        One scale from 0 to {say(top, 'power', view)}. The band is the range, the stroke the likely value.
      </p>
    </div>
  );
}

interface RangeRowProps {
  readonly label: string;
  readonly band: Band;
  readonly top: number;
  readonly ink: 'leaving' | 'into-water';
  readonly view: UnitView;
}

function RangeRow({ label, band, top, ink, view }: RangeRowProps): ReactNode {
  const share = (value: number) => `${(100 * Math.max(0, Math.min(value, top))) / top}%`;
  const width = `${(100 * (Math.min(band.high, top) - Math.max(0, band.low))) / top}%`;
  return (
    <div className="range-row">
      <span>{label}</span>
      <strong>{sayBand(band, 'power', view)}</strong>
      <div className="range-track" aria-hidden="true">
        <div className="range-band" style={{ left: share(band.low), width, background: `var(--${ink}-fill)` }} />
        <div className="range-likely" style={{ left: share(band.likely) }} />
      </div>
    </div>
  );
}
