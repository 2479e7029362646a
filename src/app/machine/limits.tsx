// How near its limits the machine runs in the coldest spell, and where on the map each limit lies.

import type { ReactNode } from 'react';
import {
  type Assessment,
  distanceQuantity,
  type LimitMargin,
  type MachineStudy,
  type MapTrip,
} from '../../assess/index.ts';
import { mapLimitTable } from '../../charts/index.ts';
import type { Band, UnitView } from '../../quantities/index.ts';
import { BandCell } from '../ui/band-cell.tsx';
import { DataTable } from '../ui/data-table.tsx';
import { Fold } from '../ui/fold.tsx';
import { say, sentenceStart } from '../ui/say.ts';
import { ScrollBox } from '../ui/scroll-box.tsx';
import { StateMark } from '../ui/state-mark.tsx';
import { quantityNamed } from './quantity-named.ts';

interface LimitsProps {
  readonly assessment: Assessment;
  /** Absent until the study is there. */
  readonly study: MachineStudy | undefined;
  readonly view: UnitView;
}

/** As many rows stand open at least, although fewer may be passed. */
const leastOpen = 4;

export function Limits({ assessment, study, view }: LimitsProps): ReactNode {
  const rows = assessment.operating.limits.map((limit) => rowOf(limit, assessment));
  const open = Math.max(leastOpen, rows.findLastIndex(({ limit, left }) => limit.passed || left.low < 0) + 1);
  const further = rows.slice(open);
  return (
    <section className="block">
      <h3 id="limits-title" tabIndex={-1}>
        How near its limits
      </h3>
      <p className="quiet">In the coldest spell. The limit met first stands at the top.</p>
      <LimitTable rows={rows.slice(0, open)} label="Limits of the machine" assessment={assessment} view={view} />
      <div className="folds">
        {further.length > 0 && (
          <Fold className="fields-more" summary={`${further.length} more limits, not met`}>
            <LimitTable rows={further} label="Further limits of the machine" assessment={assessment} view={view} />
          </Fold>
        )}
        {study !== undefined && study.trips.length > 0 && (
          <Fold className="fields-more" summary="Where its motor would trip">
            <Trips trips={study.trips} view={view} />
          </Fold>
        )}
        {study !== undefined && study.limits.length > 0 && (
          <Fold className="fields-more" summary="Each limit over the pictures above, with its source">
            <DataTable table={mapLimitTable(study, view)} />
          </Fold>
        )}
      </div>
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
    rows: trips.map(({ condensing, evaporating, by, searchedUpTo }): readonly string[] => [
      level(condensing),
      evaporating === null
        ? searchedUpTo === null
          ? 'no running point'
          : `not up to ${level(searchedUpTo)}`
        : level(evaporating),
      by === null ? '' : tripWords[by]!,
    ]),
  };
  return <DataTable table={table} />;
}

interface LimitRow {
  readonly limit: LimitMargin;
  readonly now: NumberOfLimit;
  readonly left: Band;
}

function rowOf(limit: LimitMargin, assessment: Assessment): LimitRow {
  const now = bandOfLimit(limit, assessment);
  return { limit, now, left: leftOf(limit, now) };
}

interface LimitTableProps {
  readonly rows: readonly LimitRow[];
  readonly label: string;
  readonly assessment: Assessment;
  readonly view: UnitView;
}

const heads = ['Limit', 'Now', 'Limit at', 'Left', 'State'] as const;

function LimitTable({ rows, label: title, assessment: { workings }, view }: LimitTableProps): ReactNode {
  return (
    <ScrollBox className="table-scroll" label={title}>
      <table className="data">
        <caption className="for-reader">{title} with the distance left</caption>
        <thead>
          <tr>
            {heads.map((head) => (
              <th key={head} scope="col" className={head === 'Limit' || head === 'State' ? undefined : 'number'}>
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map(({ limit, now, left }) => {
            const { label, quantity, bound } = limit;
            return (
              <tr key={limit.limit}>
                <th scope="row">{sentenceStart(label)}</th>
                <BandCell
                  band={now}
                  quantity={quantityNamed(quantity)}
                  view={view}
                  workings={workings}
                  of={`${label}, now`}
                />
                <td className="number">{say(bound, quantityNamed(quantity), view)}</td>
                <BandCell
                  band={left}
                  quantity={distanceQuantity(quantity)}
                  view={view}
                  workings={workings}
                  of={`${label}, distance left`}
                  result={`operating.limits.${limit.limit}`}
                />
                <td>
                  <LimitState limit={limit} left={left} />
                </td>
              </tr>
            );
          })}
        </tbody>
      </table>
    </ScrollBox>
  );
}

/** Passed, passed at one end of its range only, or not met. */
function LimitState({ limit, left }: { limit: LimitMargin; left: Band }): ReactNode {
  if (limit.passed) return <StateMark kind="look" word="passed" />;
  return left.low < 0 ? <StateMark kind="look" word="passed at one end" /> : <StateMark kind="plain" word="not met" />;
}

type NumberOfLimit = Band & { readonly result?: string };

/** The range of the number that a limit is about; limits are named by it. */
function bandOfLimit({ limit, value }: LimitMargin, { operating, machine }: Assessment): NumberOfLimit {
  const bands: Readonly<Record<string, NumberOfLimit>> = {
    evaporating: operating.evaporatingTemperature,
    condensing: operating.condensingTemperature,
    discharge: operating.dischargeTemperature,
    pressureRatio: operating.pressureRatio,
    suctionPressure: operating.evaporatingPressure,
    wall: machine.wallTemperature,
    current: machine.current,
    motorLoad: machine.motorLoad,
  };
  const found = Object.entries(bands).find(([name]) => limit.startsWith(name))?.[1];
  return found ?? { low: value, likely: value, high: value };
}

/** The distance left with its range; negative once passed. */
function leftOf({ bound, value, margin }: LimitMargin, { low, high }: Band): Band {
  const isUpper = value <= bound === margin >= 0;
  const ends = isUpper ? [bound - high, bound - low] : [low - bound, high - bound];
  return { low: ends[0]!, likely: margin, high: ends[1]! };
}
