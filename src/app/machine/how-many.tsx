// How many such machines the tank needs: whole numbers, with the months in which they run.

import type { ReactNode } from 'react';
import { type CountRow, type HowMany as HowManyAnswer, sayStartsAndFailure, withheldWord } from '../../assess/index.ts';
import { sayRange, type UnitView } from '../../quantities/index.ts';
import { BandCell } from '../ui/band-cell.tsx';
import { DataTable } from '../ui/data-table.tsx';
import { Fold } from '../ui/fold.tsx';
import { say, sayNeed, sentenceStart } from '../ui/say.ts';
import { ScrollBox } from '../ui/scroll-box.tsx';
import { StateMark } from '../ui/state-mark.tsx';
import { Part } from './part.tsx';

interface HowManyProps {
  readonly howMany: HowManyAnswer;
  /** Where the answer is not to build, no amount of refrigerant is shown. */
  readonly isChargeWithheld: boolean;
  readonly view: UnitView;
}

export function HowMany({ howMany, isChargeWithheld, view }: HowManyProps): ReactNode {
  const { planned, needed, load, rows, chargePerCircuit, chargeOfAll } = howMany;
  const told = rows.find(({ machines }) => machines === Math.max(planned, needed.likely ?? planned));
  return (
    <Part name="how-many" title="How many of them" brief={neededWords(howMany)}>
      <p>
        {neededWords(howMany)} The tank needs {sayNeed(load, view)} in the coldest spell; the design plans{' '}
        {planned === 1 ? 'one machine' : `${planned} machines`}.
      </p>
      {rows.length > 0 && (
        <ScrollBox className="table-scroll" label="One machine and more of them">
          <table className="data">
            <caption>Each machine with a circuit of its own, all of them running</caption>
            <thead>
              <tr>
                {['Machines', 'Heat in the coldest spell', 'on a mild day', 'Electricity', 'They run'].map((head) => (
                  <th key={head} scope="col" className={head === 'Machines' ? undefined : 'number'}>
                    {head}
                  </th>
                ))}
                <th scope="col">The tank is carried</th>
              </tr>
            </thead>
            <tbody>
              {rows.map((row) => (
                <Row key={row.machines} row={row} isPlanned={row.machines === planned} view={view} />
              ))}
            </tbody>
          </table>
        </ScrollBox>
      )}
      {told !== undefined && <p>{sayStartsAndFailure(told, view)}</p>}
      <Months howMany={howMany} view={view} />
      <p>
        {isChargeWithheld
          ? `How much each circuit holds is ${withheldWord}.`
          : `Each circuit holds ${sayRange(chargePerCircuit, 'mass', view)} of refrigerant, whatever their number${planned > 1 ? `; all together that would be ${sayRange(chargeOfAll, 'mass', view)}` : ''}.`}{' '}
        Circuits are never joined, so that a leak empties one of them only.
      </p>
    </Part>
  );
}

function neededWords({ needed: { low, likely, high } }: HowManyAnswer): string {
  if (likely === null) return 'No number of them would carry the tank.';
  const most = high === null ? `${low ?? likely} or more` : low === high ? undefined : `${low} to ${high}`;
  const range = most === undefined ? '' : ` (${most})`;
  return likely === 0 ? 'The tank needs none.' : `It would take ${likely}${range} of them.`;
}

const carryMarks = {
  yes: ['plain', 'yes'],
  perhaps: ['look', 'perhaps'],
  no: ['look', 'no'],
} as const;

function Row({
  row: { machines, coldestSpell, mildDay, power, share, carries },
  isPlanned,
  view,
}: {
  readonly row: CountRow;
  readonly isPlanned: boolean;
  readonly view: UnitView;
}): ReactNode {
  const [kind, word] = carryMarks[carries];
  return (
    <tr className={isPlanned ? 'planned' : undefined}>
      <th scope="row">
        {machines}
        {isPlanned && <span className="own-mark"> planned</span>}
      </th>
      <BandCell band={coldestSpell} quantity="power" view={view} />
      {mildDay === null ? (
        <td className="number">nothing to do</td>
      ) : (
        <BandCell band={mildDay} quantity="power" view={view} />
      )}
      <BandCell band={power} quantity="electricPower" view={view} />
      <td className="number">{share >= 1 ? 'all the time' : `${say(share, 'fraction', view, 2)} of the time`}</td>
      <td>
        <StateMark kind={kind} word={word} />
      </td>
    </tr>
  );
}

function Months({ howMany: { months }, view }: Pick<HowManyProps, 'howMany' | 'view'>): ReactNode {
  if (months.length === 0) return null;
  const table = {
    caption: 'Month by month, likely values: how many run at once, and how much of the time the last of them',
    columns: [
      { label: 'Month' },
      { label: 'Heat needed', numeric: true },
      { label: 'Heat of one machine', numeric: true },
      { label: 'At once', numeric: true },
      { label: 'The last of them', numeric: true },
    ],
    rows: months.map(({ month, load, heatOfOne, running, shareOfLast }) => [
      sentenceStart(month),
      load > 0 ? say(load, 'power', view, 2) : 'none',
      heatOfOne === null ? 'does not run' : say(heatOfOne, 'power', view, 2),
      running === null ? 'none helps' : String(running),
      shareOfLast === null || running === 0 ? '' : `${say(shareOfLast, 'fraction', view, 2)} of the time`,
    ]),
  };
  return (
    <Fold className="fields-more" summary="How many run in each month">
      <DataTable table={table} />
    </Fold>
  );
}
