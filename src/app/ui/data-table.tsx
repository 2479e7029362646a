// One table look for the whole page. Scrolls sideways inside itself on a phone, reachable by keyboard.

import { type ReactNode, useId } from 'react';
import type { ChartTable } from '../../charts/index.ts';
import type { WorkingStep } from '../../quantities/index.ts';
import { Termed } from '../terms/termed.tsx';
import { ResultLink } from './result-link.tsx';

export interface DataTableProps {
  readonly table: ChartTable;
  readonly hiddenCaption?: boolean;
  /** The steps behind the numbers: each cell whose result is among them leads to its working. */
  readonly workings?: readonly WorkingStep[];
}

export function DataTable({ table, hiddenCaption = false, workings = [] }: DataTableProps): ReactNode {
  const caption = useId();
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls sideways must be reachable by keyboard
    <section className="table-scroll" tabIndex={0} aria-labelledby={caption}>
      <table className="data">
        <caption id={caption} className={hiddenCaption ? 'for-reader' : undefined}>
          {table.caption}
        </caption>
        <thead>
          <tr>
            {table.columns.map((column) => (
              <th key={column.label} scope="col" className={column.numeric ? 'number' : undefined}>
                <Termed>{column.label}</Termed>
                {column.unit && <span className="unit"> {column.unit}</span>}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {table.rows.map((row, place) => (
            <tr key={row.join('|')}>
              {row.map((cell, index) =>
                index === 0 ? (
                  <th key={table.columns[index]?.label} scope="row">
                    {cell}
                  </th>
                ) : (
                  <td
                    key={table.columns[index]?.label}
                    className={table.columns[index]?.numeric ? 'number' : undefined}
                  >
                    <ResultLink
                      workings={workings}
                      result={table.results?.[place]?.[index]}
                      of={`${row[0]}, ${table.columns[index]?.label}`}
                    >
                      {cell}
                    </ResultLink>
                  </td>
                ),
              )}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
