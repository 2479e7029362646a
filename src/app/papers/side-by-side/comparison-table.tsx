// The table: a column a fluid, those not for this machine under a heading of their own; rows in groups. It scrolls sideways
// inside itself where it is wider than the page, and its row heads stay in sight.

import { type ReactNode, useId } from 'react';
import type { SaidCell, SaidColumn, SaidComparison, SaidGroup } from '../../../assess/index.ts';
import { Termed } from '../../terms/termed.tsx';
import { sentenceStart } from '../../ui/say.ts';
import { StateMark } from '../../ui/state-mark.tsx';

export function ComparisonTable({ said }: { said: SaidComparison }): ReactNode {
  const caption = useId();
  const { columns, groups } = said;
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls sideways must be reachable by keyboard
    <section className="table-scroll comparison-scroll" tabIndex={0} aria-labelledby={caption}>
      <table className="data comparison">
        <caption id={caption}>
          {columns.map(({ fluid }) => fluid).join(', ')}, {said.basisTitle.toLowerCase()}; likely values over their
          ranges
        </caption>
        <Heads columns={columns} />
        {groups.map((group) => (
          <Group key={group.group} group={group} columns={columns} />
        ))}
      </table>
    </section>
  );
}

function Heads({ columns }: { columns: readonly SaidColumn[] }): ReactNode {
  const forThis = columns.filter(({ standing }) => standing === 'forThisMachine').length;
  const others = columns.length - forThis;
  return (
    <>
      <colgroup />
      {forThis > 0 && <colgroup span={forThis} />}
      {others > 0 && <colgroup span={others} className="not-for-this-machine" />}
      <thead>
        <tr>
          <td rowSpan={2} />
          {forThis > 0 && (
            <th scope="colgroup" colSpan={forThis}>
              Made for this machine
            </th>
          )}
          {others > 0 && (
            <th scope="colgroup" colSpan={others} className="not-for-this-machine">
              <StateMark kind="stop" word="Not for this machine, for study only" />
            </th>
          )}
        </tr>
        <tr>
          {columns.map((column) => (
            <th key={column.fluid} scope="col" className={columnClass(column)}>
              <span className="comparison-fluid">{column.fluid}</span>
              <span className="comparison-note">{column.role}</span>
              {column.reason !== undefined && <span className="comparison-note">{column.reason}</span>}
              {column.studyOnly !== undefined && (
                <span className="comparison-problem">
                  <StateMark kind="look" word={column.studyOnly} />
                </span>
              )}
              {column.problem !== undefined && (
                <span className="comparison-problem">
                  <StateMark kind="look" word={column.problem} />
                </span>
              )}
            </th>
          ))}
        </tr>
      </thead>
    </>
  );
}

function Group({ group, columns }: { group: SaidGroup; columns: readonly SaidColumn[] }): ReactNode {
  return (
    <tbody className={`comparison-${group.group}`}>
      <tr className="comparison-group">
        <th scope="rowgroup" colSpan={columns.length + 1}>
          <span>{group.caption}</span>
        </th>
      </tr>
      {group.rows.map(({ name, label, cells }) => (
        <tr key={name}>
          <th scope="row">
            <Termed>{sentenceStart(label)}</Termed>
          </th>
          {cells.map((cell, index) => (
            <td key={columns[index]?.fluid} className={columnClass(columns[index])}>
              <Cell cell={cell} />
            </td>
          ))}
        </tr>
      ))}
    </tbody>
  );
}

function Cell({ cell: { text, range, note } }: { cell: SaidCell }): ReactNode {
  return (
    <>
      <span className="comparison-value">{text}</span>
      {range !== undefined && <span className="comparison-range">{range}</span>}
      {note !== undefined && <span className="comparison-note">{note}</span>}
    </>
  );
}

function columnClass(column: SaidColumn | undefined): string | undefined {
  return column?.standing === 'notForThisMachine' ? 'not-for-this-machine' : undefined;
}
