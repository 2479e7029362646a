// A comparison of refrigerants as a person reads it in a terminal: the answer, the basis, law and safety fluid by fluid,
// the table of numbers with ranges under them, what differs, sources, caution.

import {
  type RefrigerantComparison,
  type SaidCell,
  type SaidColumn,
  type SaidComparison,
  type SaidGroup,
  sayRefrigerants,
} from '../../assess/index.ts';
import type { UnitView } from '../../quantities/index.ts';
import { printableLine } from './printable.ts';
import { columnAndText, paragraph, section } from './text-table.ts';

const notForThisMachine = 'Not for this machine, for study only';

export function compareReport(comparison: RefrigerantComparison, view: UnitView): string {
  const said = sayRefrigerants(comparison, view);
  const [law, ...others] = said.groups;
  const environment = others.at(-1)!;
  return [
    ...(comparison.designName === null ? [] : [printableLine(comparison.designName)]),
    paragraph(said.answer),
    '',
    section(said.basisTitle, paragraph(said.basisWords, '  ')),
    ...fluidSections(said, [law!, environment]),
    numbersSection(said, others.slice(0, -1)),
    ...(said.differences.length === 0
      ? []
      : [section('What differs beyond its range', said.differences.map((line) => paragraph(line, '  ')).join('\n'))]),
    section('To bear in mind', said.notes.map((line) => paragraph(line, '  ')).join('\n')),
    section('Sources', said.sources.map((line) => paragraph(line, '  ')).join('\n')),
    paragraph(comparison.caution),
  ].join('\n');
}

/** Law, safety, oil and environment need sentences: fluid by fluid, those not for this machine under their own heading. */
function fluidSections({ columns }: SaidComparison, groups: readonly SaidGroup[]): readonly string[] {
  return columns.flatMap(({ fluid, standing, role, studyOnly, reason, problem }, index) => {
    const rows = groups.flatMap(({ rows: all }) =>
      all.map(({ label, cells }) => [label, inLine(cells[index]!)] as const),
    );
    const isFirstOfOthers = standing === 'notForThisMachine' && columns[index - 1]?.standing !== standing;
    const notes = [studyOnly, reason, problem].flatMap((line) => (line === undefined ? [] : [paragraph(line, '  ')]));
    const title = role === '' ? fluid : `${fluid} (${role})`;
    return [
      ...(isFirstOfOthers ? [`${notForThisMachine.toUpperCase()}\n`] : []),
      section(title, [...notes, columnAndText(rows)].join('\n')),
    ];
  });
}

function inLine({ text, range, note }: SaidCell): string {
  const aside = [range, note].filter((part) => part !== undefined);
  return aside.length === 0 ? text : `${text} (${aside.join('; ')})`;
}

/** More columns than this do not fit beside their labels; the others follow in a table below. */
const mostColumns = 4;

function numbersSection(said: SaidComparison, groups: readonly SaidGroup[]): string {
  const indices = said.columns.map((_, index) => index);
  const blocks: number[][] = [];
  const size = Math.ceil(indices.length / Math.ceil(indices.length / mostColumns));
  for (let from = 0; from < indices.length; from += size) blocks.push(indices.slice(from, from + size));
  return section('Side by side', blocks.map((block) => numbersTable(said, groups, block)).join('\n\n'));
}

/** A line a number and one for its range below it; a heading line over the columns that are not for this machine. */
function numbersTable({ columns }: SaidComparison, groups: readonly SaidGroup[], shown: readonly number[]): string {
  const lines: string[][] = [];
  for (const { caption, rows } of groups) {
    lines.push([caption.toUpperCase()]);
    for (const { label, cells } of rows) {
      const picked = shown.map((index) => cells[index]!);
      lines.push([`  ${label}`, ...picked.map(({ text }) => text)]);
      if (picked.some(({ range }) => range !== undefined)) lines.push(['', ...picked.map(({ range }) => range ?? '')]);
    }
  }
  const head = ['', ...shown.map((index) => columns[index]!.fluid)];
  const widths = head.map((_, column) =>
    Math.max(...[head, ...lines].filter((line) => line.length > 1).map((line) => (line[column] ?? '').length)),
  );
  const inColumns = (line: readonly string[]) =>
    `  ${line.map((cell, column) => cell.padEnd(widths[column]!)).join('  ')}`.trimEnd();
  return [
    ...headingOver(
      shown.map((index) => columns[index]!),
      widths,
    ),
    inColumns(head),
    ...lines.map(inColumns),
  ].join('\n');
}

/** "Not for this machine, for study only" over the first of those columns. */
function headingOver(columns: readonly SaidColumn[], widths: readonly number[]): readonly string[] {
  const first = columns.findIndex(({ standing }) => standing === 'notForThisMachine');
  if (first === -1) return [];
  const before = widths.slice(0, first + 1).reduce((sum, width) => sum + width + 2, 2);
  return [`${' '.repeat(before)}${notForThisMachine}:`];
}
