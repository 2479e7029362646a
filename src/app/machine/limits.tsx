// How near its limits the machine runs in the coldest spell, and where on the map each limit lies.

import type { ReactNode } from 'react';
import type { Assessment, LimitMargin, MachineStudy, MapTrip, OperatingAnswer } from '../../assess/index.ts';
import { mapLimitTable } from '../../charts/index.ts';
import { type Band, sayBand, type UnitView } from '../../quantities/index.ts';
import { DataTable } from '../ui/data-table.tsx';
import { ResultLink } from '../ui/result-link.tsx';
import { say, sentenceStart } from '../ui/say.ts';
import { StateMark } from '../ui/state-mark.tsx';
import { quantityNamed } from './words.ts';

interface LimitsProps {
  readonly assessment: Assessment;
  /** Absent until the study is there. */
  readonly study: MachineStudy | undefined;
  readonly view: UnitView;
}

export function Limits({ assessment, study, view }: LimitsProps): ReactNode {
  return (
    <section className="block">
      <h3>How near its limits</h3>
      <p className="quiet">In the coldest spell. The limit met first stands at the top.</p>
      <LimitTable operating={assessment.operating} workings={assessment.workings} view={view} />
      {study !== undefined && <Trips trips={study.trips} view={view} />}
      {study !== undefined && study.limits.length > 0 && (
        <details className="fields-more">
          <summary>Each limit over the pictures above, with its source</summary>
          <DataTable table={mapLimitTable(study, view)} />
        </details>
      )}
    </section>
  );
}

const tripWords: Readonly<Record<NonNullable<MapTrip['by']>, string>> = {
  motorLoad: 'load of the motor above what its application asks of it',
  current: 'current above what it bears for long',
  stall: 'the motor stalls',
};

/** Where its protector would likely stop it, as the source grows warmer. */
function Trips({ trips, view }: { readonly trips: readonly MapTrip[]; readonly view: UnitView }): ReactNode {
  const level = (value: number) => say(value, 'temperature', view);
  const table = {
    caption: 'Where its motor would trip as the evaporating temperature rises; likely values',
    columns: [{ label: 'Condensing' }, { label: 'Trips from', numeric: true }, { label: 'Because of' }],
    rows: trips.map(({ condensing, evaporating, by, searchedUpTo }) => [
      level(condensing),
      evaporating === null
        ? searchedUpTo === null
          ? 'no running point'
          : `not up to ${level(searchedUpTo)}`
        : level(evaporating),
      by === null ? '' : tripWords[by],
    ]),
  };
  return trips.length === 0 ? null : <DataTable table={table} />;
}

interface LimitTableProps {
  readonly operating: OperatingAnswer;
  readonly workings: Assessment['workings'];
  readonly view: UnitView;
}

function LimitTable({ operating, workings, view }: LimitTableProps): ReactNode {
  return (
    <div className="table-scroll">
      <table className="data">
        <caption className="for-reader">Limits of the machine with the distance left</caption>
        <thead>
          <tr>
            <th scope="col">Limit</th>
            <th scope="col" className="number">
              Now
            </th>
            <th scope="col" className="number">
              Limit at
            </th>
            <th scope="col" className="number">
              Left
            </th>
            <th scope="col">State</th>
          </tr>
        </thead>
        <tbody>
          {operating.limits.map((limit) => (
            <tr key={limit.limit}>
              <th scope="row">{sentenceStart(limit.label)}</th>
              <td className="number">
                <ResultLink
                  workings={workings}
                  result={bandOfLimit(limit, operating).result}
                  of={`${limit.label}, now`}
                >
                  {sayBand(bandOfLimit(limit, operating), quantityNamed(limit.quantity), view)}
                </ResultLink>
              </td>
              <td className="number">{say(limit.bound, quantityNamed(limit.quantity), view)}</td>
              <td className="number">
                <ResultLink
                  workings={workings}
                  result={`operating.limits.${limit.limit}`}
                  of={`${limit.label}, distance left`}
                >
                  {leftWords(limit, operating, view)}
                </ResultLink>
              </td>
              <td>
                <LimitState limit={limit} left={leftOf(limit, operating)} />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

/** Passed, passed at one end of its range only, or not met. */
function LimitState({ limit, left }: { limit: LimitMargin; left: Band }): ReactNode {
  if (limit.passed) return <StateMark kind="look" word="passed" />;
  return left.low < 0 ? <StateMark kind="look" word="passed at one end" /> : <StateMark kind="plain" word="not met" />;
}

/** The range of the number that a limit is about. */
function bandOfLimit({ limit, value }: LimitMargin, operating: OperatingAnswer): Band & { readonly result?: string } {
  if (limit.startsWith('evaporating')) return operating.evaporatingTemperature;
  if (limit.startsWith('condensing')) return operating.condensingTemperature;
  if (limit.startsWith('discharge')) return operating.dischargeTemperature;
  if (limit.startsWith('pressureRatio')) return operating.pressureRatio;
  return { low: value, likely: value, high: value };
}

/** The distance left with its range; negative once passed. */
function leftOf(limit: LimitMargin, operating: OperatingAnswer): Band {
  const { low, high } = bandOfLimit(limit, operating);
  const isUpper = limit.bound - limit.value === limit.margin;
  const ends = isUpper ? [limit.bound - high, limit.bound - low] : [low - limit.bound, high - limit.bound];
  return { low: ends[0]!, likely: limit.margin, high: ends[1]! };
}

/** The distance of a temperature level is a difference. */
function leftWords(limit: LimitMargin, operating: OperatingAnswer, view: UnitView): string {
  const quantity = limit.quantity === 'temperature' ? 'temperatureDifference' : quantityNamed(limit.quantity);
  return sayBand(leftOf(limit, operating), quantity, view);
}
