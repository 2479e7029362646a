// What was read of each pasted table, in the units of the view, with how far the likely machine is off each point and which points
// do not fit the rest.

import type { ReactNode } from 'react';
import { evidenceWords } from '../../assess/index.ts';
import { itemsOf } from '../../design/index.ts';
import { type PointRow, readPointTable, type TableQuantity } from '../../parts/compressor/index.ts';
import type { QuantityName, UnitView } from '../../quantities/index.ts';
import { useWorkbench } from '../state/context.tsx';
import { Fold } from '../ui/fold.tsx';
import { say } from '../ui/say.ts';
import { ScrollBox } from '../ui/scroll-box.tsx';
import { StateMark } from '../ui/state-mark.tsx';
import { type KnownResidual, offBy } from './residual-words.ts';

const columns: Readonly<Record<TableQuantity, readonly [string, QuantityName]>> = {
  evaporating: ['Evaporating', 'temperature'],
  condensing: ['Condensing', 'temperature'],
  capacity: ['Capacity', 'power'],
  power: ['Power', 'electricPower'],
  massFlow: ['Flow', 'massFlow'],
  current: ['Current', 'current'],
  returnGas: ['Return gas', 'temperature'],
  superheat: ['Superheat', 'temperatureDifference'],
  liquid: ['Liquid', 'temperature'],
  subcooling: ['Subcooling', 'temperatureDifference'],
  dischargeTemperature: ['Discharge', 'temperature'],
};

/** Path of the tables in a design. */
export const tablesPath = 'machine.compressor.tables';

interface TablesReadProps {
  readonly residuals: readonly KnownResidual[];
  readonly view: UnitView;
}

export function TablesRead({ residuals, view }: TablesReadProps): ReactNode {
  const { document } = useWorkbench();
  return itemsOf(document, tablesPath).map((item, index, all) => (
    <TableRead
      key={index}
      text={String(item.table)}
      name={all.length === 1 ? 'the table' : `table ${index + 1}`}
      residualsOf={(row) =>
        residuals.filter(({ path }) => `${path}.`.startsWith(`${tablesPath}.${index}.points.${row}.`))
      }
      view={view}
    />
  ));
}

interface TableReadProps {
  readonly text: string;
  readonly name: string;
  readonly residualsOf: (row: number) => readonly KnownResidual[];
  readonly view: UnitView;
}

function TableRead({ text, name, residualsOf, view }: TableReadProps): ReactNode {
  const read = readPointTable(text);
  // A table that cannot be read is refused where it is typed.
  if (!read.ok) return null;
  const { table } = read;
  const shown = table.columns.map(({ quantity }) => quantity);
  const rows = table.rows.map((row, index) => ({ row, residuals: residualsOf(index) }));
  const odd = rows.filter(({ residuals }) => residuals.some(({ disagrees }) => disagrees));
  const judged = [...new Set(rows.flatMap(({ residuals }) => residuals.map(({ of }) => of)))];
  const passedOver = table.passedOver.length === 0 ? '' : ` Not read: ${table.passedOver.join(', ')}.`;
  return (
    <Fold
      className="fields-more"
      open={odd.length > 0}
      summary={`What was read of ${name}: ${rows.length} points${odd.length > 0 ? `, ${odd.length} of them in doubt` : ''}`}
    >
      <ScrollBox className="table-scroll" label={`Points of ${name}`}>
        <table className="data">
          <caption>
            As understood; off by is what the likely machine gives over what was given, less one.{passedOver}
          </caption>
          <thead>
            <tr>
              <th scope="col">Line</th>
              {shown.map((quantity) => (
                <th key={quantity} scope="col" className="number">
                  {columns[quantity][0]}
                </th>
              ))}
              {judged.map((of) => (
                <th key={of} scope="col" className="number">
                  {evidenceWords[of]} off by
                </th>
              ))}
              <th scope="col">State</th>
            </tr>
          </thead>
          <tbody>
            {rows.map(({ row, residuals }) => (
              <tr key={row.line}>
                <th scope="row">{row.line}</th>
                {shown.map((quantity) => (
                  <td key={quantity} className="number">
                    {cell(row, quantity, view)}
                  </td>
                ))}
                {judged.map((of) => (
                  <td key={of} className="number">
                    {residuals.filter((residual) => residual.of === of).map((residual) => offBy(residual, view))}
                  </td>
                ))}
                <td>
                  {residuals.some(({ disagrees }) => disagrees) ? (
                    <StateMark kind="look" word="does not fit" />
                  ) : (
                    <StateMark kind="plain" word="fits" />
                  )}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </ScrollBox>
    </Fold>
  );
}

function cell({ values }: PointRow, quantity: TableQuantity, view: UnitView): string {
  const value = values[quantity];
  return value === undefined ? '' : say(value, columns[quantity][1], view, 4);
}
