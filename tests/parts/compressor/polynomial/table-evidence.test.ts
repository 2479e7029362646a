// Points of pasted tables as evidence: their four temperatures, the check of a table against itself, and a published data set
// pasted as a table.

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { refrigerant } from '../../../../src/matter/refrigerants/index.ts';
import { KettlefinError } from '../../../../src/numerics/index.ts';
import { ImplausibleUnitError } from '../../../../src/parts/compressor/plausibility/unit-readings.ts';
import {
  evidenceFromTable,
  type TableEvidence,
  type TableRequest,
} from '../../../../src/parts/compressor/polynomial/table/evidence.ts';
import { readPointTable } from '../../../../src/parts/compressor/polynomial/table/point-table.ts';
import dataSet from '../../../reference/parts/compressor-r600a.json';
import { condensingRange, evaporatingRange, fluid, kelvin, spread, truth } from './invented-machine.ts';

const base = {
  fluid,
  path: 'tables.0',
  label: 'Table',
  gas: { kind: 'returnGas', returnGas: kelvin(32.2) },
  liquid: { kind: 'liquid', liquid: kelvin(32.2) },
  saturation: 'dew',
  supply: { frequency: 50, voltage: 230 },
  surroundings: kelvin(32.2),
} as const;

function evidence(text: string, changes: Partial<TableRequest> = {}): TableEvidence {
  const read = readPointTable(text);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return evidenceFromTable({ ...base, table: read.table, ...changes });
}

/** The invented machine as a table. */
function printed(header: string, cells: (evaporating: number, condensing: number) => readonly number[]): string {
  const lines = spread(condensingRange, 4).flatMap((condensing) =>
    spread(evaporatingRange, 4).map((evaporating) =>
      [evaporating - 273.15, condensing - 273.15, ...cells(evaporating, condensing)].map((one) => one.toPrecision(6)),
    ),
  );
  return [header, ...lines.map((line) => line.join(';'))].join('\n');
}

describe('reference: R600a calorimeter rows (F. Fortkamp 2022), pasted', () => {
  const head = 'te [°C]\ttc [°C]\tQ [W]\tP [W]\tm [kg/h]\n';
  const text = head + dataSet.rows.map(([te, q, p, m]) => [te, 35, q, p, m].join('\t')).join('\n');
  const isobutane = refrigerant('R600a');
  const supply = { frequency: 60, voltage: 115 };

  test('flow and capacity imply the liquid of 32.05 to 32.31 °C', () => {
    const { impliedLiquid, points } = evidence(text, { fluid: isobutane, supply });
    expect(impliedLiquid!.contradictions).toEqual([]);
    expect(Math.abs(impliedLiquid!.temperature.low - kelvin(32.05))).toBeLessThan(0.02);
    expect(Math.abs(impliedLiquid!.temperature.high - kelvin(32.31))).toBeLessThan(0.02);
    expect(impliedLiquid!.fromStated!).toBeLessThan(0.16);
    expect(points.map(({ given }) => Object.keys(given).join())).toEqual(Array(4).fill('massFlow,power'));
    expect(points[3]!.given.massFlow!.likely).toBeCloseTo(6.16 / 3600, 12);
    expect(points[3]!.supply).toEqual(supply);
  });

  test('another convention of the liquid is told as the distance from it', () => {
    const liquid = { kind: 'subcooling', subcooling: 0 } as const;
    expect(evidence(text, { fluid: isobutane, supply, liquid }).impliedLiquid!.fromStated!).toBeGreaterThan(2.6);
    expect(evidence(text, { fluid: isobutane, supply, liquid: null }).impliedLiquid!.fromStated).toBeNull();
  });

  test('the same rows with the flow called lb/h or the capacity kW contradict themselves: the unit is named', () => {
    for (const [wrong, path, unit] of [
      [text.replace('kg/h', 'lb/h'), 'tables.0.massFlow', 'kg/h'],
      [text.replace('Q [W]', 'Q [kW]'), 'tables.0.capacity', 'W'],
    ] as const) {
      expect(() => evidence(wrong, { fluid: isobutane, supply })).toThrow(
        expect.objectContaining({
          code: 'flowAgainstCapacity',
          path,
          readings: [expect.objectContaining({ changes: [{ path, unit }] })],
        }),
      );
    }
  });
});

describe('the four temperatures', () => {
  const row = (header: string, cells: string) => `Te [°C];Tc [°C];P [W];${header}\n-20;45;150;${cells}`;

  test('columns before what is stated', () => {
    const [point] = evidence(row('return gas [°C];liquid [°C];Q [W]', '20;40;170')).points;
    expect(point!.returnGas).toBeCloseTo(kelvin(20), 9);
    expect(point!.liquid).toBeCloseTo(kelvin(40), 9);
    const [other] = evidence(row('superheat [K];subcooling [K];Q [W]', '10;5;170')).points;
    expect(other!.returnGas).toBeCloseTo(kelvin(-10), 9);
    expect(other!.liquid).toBeCloseTo(kelvin(40), 6);
  });

  test('empty cells fall back on what is stated', () => {
    const [point] = evidence(row('return gas [°C];Q [W]', ';170')).points;
    expect(point!.returnGas).toBe(kelvin(32.2));
  });

  test.each([
    ['no gas', row('Q [W]', '170'), { gas: null }, 'missingBasis', 'tables.0.line 2.returnGas'],
    ['a capacity without liquid', row('Q [W]', '170'), { liquid: null }, 'missingBasis', 'tables.0.line 2.liquid'],
    [
      'gas and superheat that differ',
      row('return gas [°C];superheat [K]', '20;10'),
      {},
      'contradictoryGas',
      'tables.0.line 2.superheat',
    ],
    [
      'liquid and subcooling that differ',
      row('liquid [°C];subcooling [K]', '40;20'),
      {},
      'contradictoryLiquid',
      'tables.0.line 2.subcooling',
    ],
    [
      'gas colder than it evaporates',
      row('return gas [°C]', '-30'),
      {},
      'returnGasBelowEvaporating',
      'tables.0.line 2.returnGas',
    ],
    [
      'liquid warmer than it condenses',
      row('liquid [°C];Q [W]', '50;170'),
      {},
      'liquidAboveCondensing',
      'tables.0.line 2.liquid',
    ],
    [
      'no frequency',
      row('Q [W]', '170'),
      { supply: { frequency: null, voltage: 230 } },
      'missingFrequency',
      'tables.0.frequency',
    ],
    ['a line without values', 'Te [°C];Tc [°C];P [W]\n-20;45;-', {}, 'nothingGiven', 'tables.0.line 2'],
  ] as const)('%s', (_, text, changes, code, path) => {
    expect(() => evidence(text, changes)).toThrow(expect.objectContaining({ name: 'InputError', code, path }));
  });

  test('gas and superheat, liquid and subcooling that agree within rounding', () => {
    const text = row('return gas [°C];superheat [K];liquid [°C];subcooling [K];Q [W]', '20;40.3;40;5;170');
    expect(evidence(text).points[0]!.returnGas).toBeCloseTo(kelvin(20), 9);
  });

  test('without a capacity nothing asks for the liquid', () => {
    expect(evidence(row('m [kg/h]', '3.5'), { liquid: null }).points[0]!.liquid).toBeCloseTo(kelvin(45), 6);
  });

  test('discharge temperature and current', () => {
    const { given } = evidence(row('discharge temperature [°C];I [A]', '95;1.1')).points[0]!;
    expect(given.dischargeTemperature!.likely).toBe(kelvin(95));
    expect(given.dischargeTemperature!.high - given.dischargeTemperature!.low).toBeCloseTo(10, 9);
    expect(given.current!.likely).toBe(1.1);
  });
});

describe('a table in the wrong unit', () => {
  const head = 'Te [°C];Tc [°C];';
  const pounds = (header: string) =>
    printed(head + header, (te, tc) => {
      const { massFlow, power } = truth(te, tc);
      return [(massFlow * 3600) / 0.45359237, power];
    });

  test('is read in the right one', () => {
    const { points, impliedLiquid } = evidence(pounds('m [lb/h];P [W]'));
    expect(impliedLiquid).toBeNull();
    for (const { evaporating, condensing, given } of points) {
      expect(given.massFlow!.likely / truth(evaporating, condensing).massFlow).toBeCloseTo(1, 4);
    }
  });

  test('is refused with the unit that would make sense', () => {
    try {
      evidence(pounds('m [kg/h];P [W]'));
      expect.unreachable();
    } catch (error) {
      expect(error).toBeInstanceOf(ImplausibleUnitError);
      const { readings, expected } = error as ImplausibleUnitError;
      expect(readings.flatMap(({ changes }) => changes)).toContainEqual({ path: 'tables.0.massFlow', unit: 'lb/h' });
      expect(expected).toContain('tables.0.massFlow in lb/h');
    }
  });

  test('a single impossible line is named', () => {
    const text = printed(`${head}Q [W];P [W]`, (te, tc) => [truth(te, tc).capacity, truth(te, tc).power]);
    const lines = text.split('\n');
    const cells = lines[5]!.split(';');
    lines[5] = [...cells.slice(0, 3), '20'].join(';');
    expect(() => evidence(lines.join('\n'))).toThrow(
      expect.objectContaining({ name: 'NoSolutionError', code: 'belowIsentropic' }),
    );
    expect(() => evidence(lines.join('\n'))).toThrow(/line 6/);
  });
});

describe('property', () => {
  test('any table that was read gives evidence or a typed error (seed 31)', () => {
    const value = fc.oneof(fc.integer({ min: -80, max: 120 }), fc.double({ min: 0.001, max: 1e5, noNaN: true }));
    const header = fc.constantFrom(
      'Te [°C];Tc [°C];Q [W];P [W]',
      'Te [°F];Tc [°F];m [lb/h];Q [BTU/h]',
      'Te [°C];Tc [°C];m [kg/h];liquid [°C]',
    );
    let answered = 0;
    fc.assert(
      fc.property(
        header,
        fc.array(fc.tuple(value, value, value, value), { minLength: 1, maxLength: 8 }),
        (head, rows) => {
          const read = readPointTable(
            [head, ...rows.map((row) => row.map((one) => one.toPrecision(4)).join(';'))].join('\n'),
          );
          if (!read.ok) return;
          try {
            const { points } = evidenceFromTable({ ...base, table: read.table });
            for (const { given } of points) {
              for (const { low, high } of Object.values(given)) expect(Number.isFinite(low) && high >= low).toBe(true);
            }
            answered += 1;
          } catch (error) {
            expect(error).toBeInstanceOf(KettlefinError);
          }
        },
      ),
      { seed: 31, numRuns: 1500 },
    );
    expect(answered).toBeGreaterThan(0);
  });
});
