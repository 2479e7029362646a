// Bars inside a table: the picture and its table in one. The bar ends at the likely value; the line over it is the range.

import { Fragment, type ReactNode, useState } from 'react';
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
  /** What it is put together from, folded until its name is pressed. */
  readonly parts?: readonly BarRow[];
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
            <Row key={row.key} row={row} longest={longest} workings={workings} />
          ))}
        </tbody>
      </table>
    </div>
  );
}

interface RowProps {
  readonly row: BarRow;
  readonly longest: number;
  readonly workings: readonly WorkingStep[];
  readonly isPart?: boolean;
}

function Row({ row, longest, workings, isPart = false }: RowProps): ReactNode {
  const [isOpen, setOpen] = useState(false);
  const { parts = [] } = row;
  return (
    <Fragment>
      <tr className={row.total ? 'total' : isPart ? 'part' : undefined}>
        <th scope="row">
          {parts.length === 0 ? (
            row.label
          ) : (
            <button type="button" className="linkish" aria-expanded={isOpen} onClick={() => setOpen(!isOpen)}>
              {row.label} {isOpen ? '−' : '+'}
            </button>
          )}
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
      {isOpen && parts.map((part) => <Row key={part.key} row={part} longest={longest} workings={workings} isPart />)}
    </Fragment>
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
