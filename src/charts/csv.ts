// Tables as comma-separated values (RFC 4180), for spreadsheets and scripts: quoted where it must be, comments in front
// as lines that begin with "#", as most readers can skip them. And the states of a loop as such a table.

import { caution } from '../cautions/index.ts';
import type { ReferenceStateName, State } from '../matter/refrigerants/index.ts';
import { type QuantityName, quantityUnit, toView, type UnitView } from '../quantities/index.ts';
import { sayReferenceState } from './loops/reference-state.ts';
import { inOrderOfFlow, pointNumbers } from './loops/state-table.ts';

/**
 * The text of a table.
 * @param rows      cells; the first row names the columns. An empty cell is a value that does not exist
 * @param comments  lines in front, without their sign
 */
export function csvText(rows: readonly (readonly string[])[], comments: readonly string[] = []): string {
  const lines = [
    ...comments.map((comment) => `# ${comment.replaceAll(/\s*[\r\n]+\s*/g, ' ')}`),
    ...rows.map((row) => row.map(quoted).join(',')),
  ];
  return lines.map((line) => `${line}\r\n`).join('');
}

/** In quotes where a comma, a quote, an end of line or a leading "#" would be misread. */
function quoted(cell: string): string {
  return /[",\r\n]|^#/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell;
}

/** A state under its name. */
export interface NamedState extends State {
  readonly name: string;
}

type NumberOfState = Exclude<keyof State, 'phase' | 'glideApproximation'>;

const columns: readonly (readonly [label: string, key: NumberOfState, quantity: QuantityName | undefined])[] = [
  ['temperature', 'temperature', 'temperature'],
  ['pressure', 'pressure', 'pressure'],
  ['density', 'density', 'density'],
  ['enthalpy', 'enthalpy', 'enthalpy'],
  ['entropy', 'entropy', 'entropy'],
  ['internal energy', 'internalEnergy', 'enthalpy'],
  ['heat capacity at constant pressure', 'cp', 'entropy'],
  ['heat capacity at constant volume', 'cv', 'entropy'],
  ['speed of sound', 'soundSpeed', 'speed'],
  ['vapour by mass', 'quality', undefined],
];

/**
 * States of a loop with every property, in order of flow, units of the view in the head, the caution first.
 * @param points     states of one loop
 * @param view       'metric' or 'us'
 * @param reference  from which state enthalpy, entropy and internal energy are counted
 */
export function statesCsv(points: readonly NamedState[], view: UnitView, reference: ReferenceStateName): string {
  const head = columns.map(([label, , quantity]) =>
    quantity === undefined ? label : `${label} [${quantityUnit(quantity, view)}]`,
  );
  const rows = inOrderOfFlow(points).map((point) => [
    pointNumbers[point.name] ?? '',
    point.name,
    ...columns.map(([, key, quantity]) => cell(point[key], quantity, view)),
    point.phase,
  ]);
  const zero = sayReferenceState(reference, view).replaceAll('\u00a0', ' ');
  return csvText(
    [['number', 'state', ...head, 'phase'], ...rows],
    [caution, `Enthalpy, entropy and internal energy are counted from ${zero}.`],
  );
}

/** Digits of a number in a table for machines: more than any of the equations is worth. */
const digits = 9;

function cell(value: number | null, quantity: QuantityName | undefined, view: UnitView): string {
  if (value === null) return '';
  const shown = quantity === undefined ? value : toView(value, quantity, view);
  return String(Number(shown.toPrecision(digits)));
}
