// What a general-purpose library says of viscosity, conductivity and surface tension at seeded random states, read from
// states/<name>.csv (written by data/refrigerants/export.py; each file says in its head lines how).

import { headWords } from '../head-lines.ts';

const texts = import.meta.glob<string>('./states/*.csv', { query: '?raw', import: 'default', eager: true });

const columns = 'region,temperature,density,viscosity,conductivity,surfaceTension';

export interface TransportRow {
  /** `liquid` and `vapour`: sides of the dome; `anywhere`: the whole range of the equation. */
  readonly region: 'liquid' | 'vapour' | 'superheated' | 'compressed' | 'supercritical' | 'anywhere';
  /** [K, kg/m³, Pa s, W/(m K)] */
  readonly temperature: number;
  readonly density: number;
  readonly viscosity: number;
  readonly conductivity: number;
  /** [N/m]; on the sides of the dome only. */
  readonly surfaceTension: number | undefined;
}

export interface TransportTable {
  readonly refrigerant: string;
  readonly source: string;
  readonly seed: string;
  /** Hash of the coefficients the library used. */
  readonly coefficients: string;
  readonly rows: readonly TransportRow[];
}

/** Every table, in the order of the file names. */
export function transportTables(): readonly TransportTable[] {
  return Object.entries(texts)
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([path, text]) => parsed(path, text));
}

function parsed(path: string, text: string): TransportTable {
  const lines = text.trimEnd().split('\n');
  const word = headWords(path, lines);
  const start = lines.indexOf(columns);
  if (start < 0) throw new Error(`${path}: no columns "${columns}"`);
  return {
    refrigerant: word('refrigerant'),
    source: word('source'),
    seed: word('seed'),
    coefficients: word('coefficients'),
    rows: lines.slice(start + 1).map((line) => rowOf(path, line)),
  };
}

function rowOf(path: string, line: string): TransportRow {
  const [region, temperature, density, viscosity, conductivity, tension] = line.split(',');
  const numbers = [temperature, density, viscosity, conductivity].map(Number);
  if (!numbers.every((number) => number > 0)) throw new Error(`${path}: ${line}`);
  return {
    region: region as TransportRow['region'],
    temperature: numbers[0]!,
    density: numbers[1]!,
    viscosity: numbers[2]!,
    conductivity: numbers[3]!,
    surfaceTension: tension === '' ? undefined : Number(tension),
  };
}
