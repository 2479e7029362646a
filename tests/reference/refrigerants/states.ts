// The reference states of every refrigerant, read from states/<name>.csv: what a general-purpose library says of seeded random
// states (written by data/refrigerants/export.py; each file says in its head lines how).

import { headWords } from './head-lines.ts';

const texts = import.meta.glob<string>('./states/*.csv', { query: '?raw', import: 'default', eager: true });

/** One phase: the library's equation at exactly this temperature and density [K, kg/m³, Pa, J/kg, J/(kg K), m/s]. */
export interface SingleRow {
  readonly temperature: number;
  readonly density: number;
  readonly pressure: number;
  readonly enthalpy: number;
  readonly entropy: number;
  readonly cp: number;
  readonly cv: number;
  readonly soundSpeed: number;
}

/** Both sides of the dome at a temperature; of a blend, two pressures. */
export interface SaturationRow {
  readonly temperature: number;
  readonly liquid: SingleRow;
  readonly vapour: SingleRow;
}

/** Inside the dome: of a pure fluid at temperature and quality, of a blend at pressure and quality. */
export interface TwoPhaseRow {
  readonly temperature: number;
  readonly pressure: number;
  readonly quality: number;
  readonly density: number;
  readonly enthalpy: number;
  readonly entropy: number;
}

export interface ReferenceTable {
  readonly refrigerant: string;
  readonly source: string;
  /** The text that seeds the random numbers. */
  readonly seed: string;
  /** Hash of the coefficients the library used. */
  readonly coefficients: string;
  readonly single: readonly SingleRow[];
  readonly saturation: readonly SaturationRow[];
  readonly twoPhase: readonly TwoPhaseRow[];
}

type Row = Readonly<Record<string, number>>;

/** Every table, in the order of the file names. */
export function referenceTables(): readonly ReferenceTable[] {
  return Object.entries(texts)
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([path, text]) => parsed(path, text));
}

function parsed(path: string, text: string): ReferenceTable {
  const lines = text.trimEnd().split('\n');
  const word = headWords(path, lines);
  return {
    refrigerant: word('refrigerant'),
    source: word('source'),
    seed: word('seed'),
    coefficients: word('coefficients'),
    single: rowsOf(path, lines, 'single') as unknown as readonly SingleRow[],
    saturation: rowsOf(path, lines, 'saturation').map(bothSides),
    twoPhase: rowsOf(path, lines, 'twoPhase') as unknown as readonly TwoPhaseRow[],
  };
}

/** The rows under a title, up to the next one; a number that is none stops the reading. */
function rowsOf(path: string, lines: readonly string[], title: string): readonly Row[] {
  const start = lines.indexOf(`[${title}]`);
  if (start < 0) throw new Error(`${path}: no table [${title}]`);
  const columns = lines[start + 1]!.split(',');
  const rows: Row[] = [];
  for (let k = start + 2; k < lines.length && !lines[k]!.startsWith('['); k++) {
    const numbers = lines[k]!.split(',').map(Number);
    if (numbers.length !== columns.length || !numbers.every(Number.isFinite)) throw new Error(`${path}: line ${k + 1}`);
    rows.push(Object.fromEntries(columns.map((column, index) => [column, numbers[index]!])));
  }
  return rows;
}

function bothSides(row: Row): SaturationRow {
  const side = (name: 'liquid' | 'vapour', pressure: number): SingleRow => ({
    temperature: row.temperature!,
    pressure,
    density: row[`${name}.density`]!,
    enthalpy: row[`${name}.enthalpy`]!,
    entropy: row[`${name}.entropy`]!,
    cp: row[`${name}.cp`]!,
    cv: row[`${name}.cv`]!,
    soundSpeed: row[`${name}.soundSpeed`]!,
  });
  return {
    temperature: row.temperature!,
    liquid: side('liquid', row.bubblePressure!),
    vapour: side('vapour', row.dewPressure!),
  };
}
