// Every supported pair of properties against states exported from a general-purpose reference library, CoolProp 8.0.0
// (data/refrigerants/export.py). Single phase, both sides of the dome and inside it, from the triple point to 0.9999 of
// the critical temperature. Away from the critical point the two agree to 1e-9; near it, where densities and heat capacities
// change without limit, the tolerance is wider and says so.

import { describe, expect, test } from 'vitest';
import {
  refrigerant,
  refrigerantNames,
  type State,
  type StateInput,
  stateAt,
} from '../../../src/matter/refrigerants/index.ts';
import r12 from '../../reference/refrigerants/R12.json';
import r22 from '../../reference/refrigerants/R22.json';
import r134a from '../../reference/refrigerants/R134a.json';
import r290 from '../../reference/refrigerants/R290.json';
import r600a from '../../reference/refrigerants/R600a.json';
import { relative, scales } from './deviation.ts';

interface Row {
  readonly kind: 'single' | 'saturation' | 'twoPhase';
  readonly nearCritical: boolean;
  readonly temperature: number;
  readonly pressure: number;
  readonly density: number;
  readonly enthalpy: number;
  readonly entropy: number;
  readonly internalEnergy: number;
  readonly cp?: number;
  readonly cv?: number;
  readonly soundSpeed?: number;
  readonly quality?: number;
}

const files: readonly { refrigerant: string; coefficients: string; rows: readonly unknown[] }[] = [
  r134a,
  r600a,
  r290,
  r12,
  r22,
];
const tables = files.map((file) => ({ ...file, rows: file.rows as readonly Row[] }));

const AWAY = 1e-9;
/** Near the critical point a relative rounding of 1e-15 in p becomes up to 1e-9 in ρ and 1e-7 in cp. */
const NEAR = { density: 1e-8, cp: 1e-6, other: 1e-8 };

function pairsOf(row: Row): readonly StateInput[] {
  const { temperature, pressure, density, enthalpy, entropy, quality } = row;
  const caloric = [
    { pressure, enthalpy },
    { pressure, entropy },
    { density, temperature },
  ];
  if (quality === undefined) return [{ temperature, pressure }, ...caloric];
  const dome = [
    { temperature, quality },
    { pressure, quality },
  ];
  // On the line itself rounding decides between the phases: there only the pairs with quality are exact requests.
  return row.kind === 'saturation' ? dome : [...dome, ...caloric];
}

function deviations(state: State, row: Row): readonly (readonly [string, number, number])[] {
  const found: [string, number, number][] = [];
  const limit = (away: number, near: number) => (row.nearCritical ? near : away);
  for (const key of ['temperature', 'density', 'cp', 'cv', 'soundSpeed'] as const) {
    const expected = row[key];
    if (expected === undefined) continue;
    const near = key === 'cp' ? NEAR.cp : key === 'density' ? NEAR.density : NEAR.other;
    found.push([key, relative(state[key] ?? Number.NaN, expected), limit(AWAY, near)]);
  }
  for (const key of ['enthalpy', 'entropy', 'internalEnergy'] as const) {
    found.push([key, Math.abs(state[key] - row[key]) / scales[key], limit(AWAY, NEAR.other)]);
  }
  // A liquid's pressure follows from its density with the factor ρ ∂p/∂ρ, up to 1e9 Pa: there 1e-12 of that, the same as 1e-12 in density, is
  // the better part of rounding.
  const { equation } = refrigerantOf(row);
  const stiff = equation.at(state.temperature, state.density).pressureByDensity * state.density;
  const pressureScale = row.kind === 'single' ? Math.max(row.pressure, 1e-3 * stiff) : row.pressure;
  found.push(['pressure', Math.abs(state.pressure - row.pressure) / pressureScale, limit(AWAY, NEAR.other)]);
  return found;
}

const owner = new Map(tables.flatMap((table) => table.rows.map((row) => [row, table.refrigerant] as const)));
function refrigerantOf(row: Row) {
  return refrigerant(owner.get(row)!);
}

describe.each(tables)('$refrigerant', ({ refrigerant: name, coefficients, rows }) => {
  test('the reference was made with the coefficients the program uses', async () => {
    const file = await import(`../../../data/refrigerants/${name}.json`);
    expect(file.default.source.sha256).toBe(coefficients);
  });

  test('the reference covers all kinds of states', () => {
    const count = (kind: Row['kind']) => rows.filter((row) => row.kind === kind).length;
    expect(count('single')).toBeGreaterThan(200);
    expect(count('saturation')).toBeGreaterThan(80);
    expect(count('twoPhase')).toBeGreaterThan(60);
    expect(rows.filter((row) => row.nearCritical).length).toBeGreaterThan(5);
    const { critical } = refrigerant(name);
    expect(Math.max(...rows.map((row) => (row.quality === 0 ? row.temperature : 0)))).toBeCloseTo(
      0.9999 * critical.temperature,
      6,
    );
  });

  test.each(['single', 'saturation', 'twoPhase'] as const)('%s states from every pair', (kind) => {
    const fluid = refrigerant(name);
    const misses: string[] = [];
    let checked = 0;
    for (const row of rows.filter((candidate) => candidate.kind === kind)) {
      for (const given of pairsOf(row)) {
        const state = stateAt(fluid, given);
        for (const [key, deviation, limit] of deviations(state, row)) {
          checked++;
          if (!(deviation <= limit)) misses.push(`${JSON.stringify(given)}: ${key} off by ${deviation}`);
        }
        if ((row.quality === undefined) !== (state.phase !== 'twoPhase'))
          misses.push(`${JSON.stringify(given)}: phase`);
        if (row.quality !== undefined && !(Math.abs((state.quality ?? Number.NaN) - row.quality) < 1e-8)) {
          misses.push(`${JSON.stringify(given)}: quality ${state.quality} for ${row.quality}`);
        }
      }
    }
    expect(misses).toEqual([]);
    expect(checked).toBeGreaterThan(500);
  });
});

test('every refrigerant has a reference', () => {
  expect(tables.map((table) => table.refrigerant).sort()).toEqual([...refrigerantNames].sort());
});
