// Bars inside a table: the picture and its table in one. The bar ends at the likely value; the line over it is the range.

import type { ReactNode } from 'react';
import type { Band, WorkingStep } from '../../quantities/index.ts';
import { ResultLink } from './result-link.tsx';

export interface BarRow {
  readonly key: string;
  readonly label: string;
  readonly band: Band;
  readonly likely: string;
  readonly range: string;
  readonly look: 'latent' | 'sensible' | 'into' | 'electric' | 'cool' | 'ink';
  readonly total?: boolean;
  readonly note?: string;
  /** Name of the result that the likely value shows. */
  readonly result?: string;
}

export interface BarsProps {
  readonly caption: string;
  readonly heads: readonly [string, string, string, string];
  readonly rows: readonly BarRow[];
  /** The steps behind the numbers: each likely value whose result is among them leads to its working. */
  readonly workings?: readonly WorkingStep[];
}

export function Bars({ caption, heads, rows, workings = [] }: BarsProps): ReactNode {
  const longest = Math.max(...rows.filter((row) => !row.total).map((row) => Math.max(0, row.band.high)), 1e-9);
  return (
    <div className="table-scroll">
      <table className="bars">
        <caption>{caption}</caption>
        <thead>
          <tr>
            {heads.map((head, index) => (
              <th key={head} scope="col" className={index >= 2 ? 'number' : undefined}>
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={row.key} className={row.total ? 'total' : undefined}>
              <th scope="row">
                {row.label}
                {row.note !== undefined && <span className="bar-note">{row.note}</span>}
              </th>
              <td className="bar-cell">{!row.total && <Bar row={row} longest={longest} />}</td>
              <td className="number">
                <ResultLink workings={workings} result={row.result} of={row.label}>
                  {row.likely}
                </ResultLink>
              </td>
              <td className="number unit">{row.range}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

function Bar({ row, longest }: { row: BarRow; longest: number }): ReactNode {
  const share = (value: number) => `${(100 * Math.max(0, value)) / longest}%`;
  const { low, likely, high } = row.band;
  return (
    <div className="bar" aria-hidden="true">
      <div className={`bar-fill ${row.look}`} style={{ left: 0, width: share(likely) }} />
      {high > low && <div className="bar-reach" style={{ left: share(low), right: `calc(100% - ${share(high)})` }} />}
    </div>
  );
}
