// Viscosity, thermal conductivity and surface tension: printed values, seeded states of a general-purpose library for every
// fluid, laws of gases and of the critical point, and what is said of each method.

import { describe, expect, test } from 'vitest';
import r12 from '../../../data/refrigerants/R12.json';
import r134a from '../../../data/refrigerants/R134a.json';
import r1270 from '../../../data/refrigerants/R1270.json';
import { checkedFluidData } from '../../../src/matter/refrigerants/equation/fluid-data.ts';
import {
  fluidsNeededBy,
  refrigerant,
  refrigerantNames,
  saturationAtTemperature,
  stateAt,
  surfaceTensionAt,
  transportAt,
  transportMethods,
} from '../../../src/matter/refrigerants/index.ts';
import { loadRefrigerant } from '../../../src/matter/refrigerants/load.ts';
import { publishedTransport } from '../../reference/refrigerants/transport/published.ts';
import { publishedOurs, valuesOf } from '../../reference/refrigerants/transport/rows.ts';
import { transportTables } from '../../reference/refrigerants/transport/states.ts';
import { relative } from './deviation.ts';

// biome-ignore lint/suspicious/noExplicitAny: files are broken here on purpose, in ways their type forbids.
type Loose = any;

const tables = transportTables();
const blends = refrigerantNames.filter((name) => refrigerant(name).bubbleAndDew !== undefined);

describe('printed values', () => {
  test.each(publishedTransport.map((row) => [`${row.fluid}, ${row.property} at ${row.where}`, row] as const))(
    '%s',
    (_title, row) => {
      expect(relative(publishedOurs(row), row.printed)).toBeLessThan(row.tolerance);
    },
  );
});

// The library computes viscosity and conductivity of these fluids by the same published models.
describe('states of a general-purpose library', () => {
  test('there is a table of every fluid, made from the coefficients in use', () => {
    expect(tables.map((table) => table.refrigerant).sort()).toEqual([...refrigerantNames].sort());
    for (const { rows } of tables) expect(rows.length).toBeGreaterThanOrEqual(150);
  });

  /** Required of each method; then what the digits of the tables allow. */
  const required = { ownCorrelation: 0.01, residualEntropy: 0.03, correspondingStates: 0.03 } as const;
  const printedDigits = 1e-9;
  /** Estimates in thin gases are held near plain corresponding states (estimates/conformal-search.ts). */
  const heldGas = 0.005;
  const heldLiquid = 1e-6;
  /** R744: the constants of the paper are not quite the library's. */
  const ownConstants = 3e-6;

  test.each(tables.map((table) => [`${table.refrigerant}, seed "${table.seed}"`, table] as const))(
    '%s',
    (_title, { refrigerant: name, rows }) => {
      const fluid = refrigerant(name);
      const methods = transportMethods(fluid);
      for (const row of rows) {
        const ours = valuesOf(fluid, row);
        const isDense = row.density > fluid.critical.density;
        const where = `${row.region}, ${row.temperature} K, ${row.density} kg/m³`;
        for (const property of ['viscosity', 'conductivity'] as const) {
          const { method } = methods[property];
          const deviation = relative(ours[property] ?? Number.NaN, row[property]);
          expect(deviation, `${property}, ${where}`).toBeLessThan(required[method]);
          const held = isDense ? heldLiquid : heldGas;
          const own = name === 'R744' ? ownConstants : printedDigits;
          expect(deviation, `${property}, ${where}`).toBeLessThan(method === 'correspondingStates' ? held : own);
        }
        if (row.surfaceTension === undefined) continue;
        // Water takes the international formula, the library a fit of its own.
        const tensionMost = name === 'R718' ? 0.004 : printedDigits;
        expect(relative(ours.surfaceTension ?? Number.NaN, row.surfaceTension), where).toBeLessThan(tensionMost);
      }
    },
  );
});

describe.each(refrigerantNames)('%s', (name) => {
  const fluid = refrigerant(name);
  const { critical, limits } = fluid;

  test('a gas of little density has the viscosity and conductivity of its temperature alone', () => {
    for (const share of [0.75, 1, 1.15]) {
      const temperature = Math.min(share * critical.temperature, limits.temperatureMax);
      const [thin, thinner] = [1e-6, 1e-9].map((part) =>
        transportAt(fluid, stateAt(fluid, { temperature, density: part * critical.density })),
      );
      expect(relative(thin!.viscosity!, thinner!.viscosity!)).toBeLessThan(1e-5);
      expect(relative(thin!.conductivity!, thinner!.conductivity!)).toBeLessThan(1e-5);
    }
  });

  test('is above 0 wherever loops work', () => {
    const warmest = Math.min(450, limits.temperatureMax);
    for (let temperature = Math.max(200, limits.temperatureMin); temperature < warmest; temperature += 12.5) {
      const states = [0.01, 0.1, 1, 5]
        .map((megapascals) => 1e6 * megapascals)
        .flatMap((pressure) => onePhase(name, temperature, pressure));
      if (temperature < critical.temperature)
        states.push(...Object.values(saturationAtTemperature(fluid, temperature)));
      for (const state of states) {
        const { viscosity, conductivity } = transportAt(fluid, state);
        expect(viscosity, `${temperature} K, ${state.pressure} Pa`).toBeGreaterThan(1e-6);
        expect(conductivity, `${temperature} K, ${state.pressure} Pa`).toBeGreaterThan(1e-3);
      }
    }
  });

  test('has values at the sides of the dome and none inside', () => {
    const temperature = 0.8 * critical.temperature;
    const { liquid, vapour } = saturationAtTemperature(fluid, temperature);
    expect(transportAt(fluid, liquid).viscosity).toBeGreaterThan(2 * transportAt(fluid, vapour).viscosity!);
    expect(transportAt(fluid, liquid).conductivity).toBeGreaterThan(2 * transportAt(fluid, vapour).conductivity!);
    const inside = stateAt(fluid, { pressure: liquid.pressure, quality: 0.4 });
    expect(transportAt(fluid, inside)).toEqual({ viscosity: null, conductivity: null });
    expect(inside.surfaceTension).toBe(surfaceTensionAt(fluid, inside.temperature));
  });

  test('stays a number or nothing as the critical point is come near', () => {
    for (let power = 3; power <= 15; power++) {
      for (const side of [0, 1, -1]) {
        const density = critical.density * (1 + (side * 10 ** -power) / 3);
        for (const temperature of [critical.temperature * (1 + 10 ** -power), critical.temperature]) {
          const { viscosity, conductivity } = transportAt(fluid, stateAt(fluid, { temperature, density }));
          for (const value of [viscosity, conductivity]) {
            // Nothing at the critical point itself, and within rounding of it.
            if (value === null) expect(power > 3 || (side === 0 && temperature === critical.temperature)).toBe(true);
            else expect(value > 0 && Number.isFinite(value)).toBe(true);
          }
        }
      }
    }
  });

  test('says how it is come by', () => {
    const { viscosity, conductivity, surfaceTension } = transportMethods(fluid);
    for (const { source, method, isEstimate } of [viscosity, conductivity, surfaceTension]) {
      expect(source).toMatch(/\d{4}|IAPWS R/);
      expect(isEstimate).toBe(method !== 'ownCorrelation');
    }
    const referenceFluids = [viscosity, conductivity].flatMap(({ referenceFluid }) => referenceFluid ?? []);
    expect([...new Set(referenceFluids)]).toEqual(fluidsNeededBy(name));
  });

  function onePhase(of: string, temperature: number, pressure: number) {
    // A blend between its lines is no state of one phase.
    try {
      const state = stateAt(refrigerant(of), { temperature, pressure });
      return state.quality === null ? [state] : [];
    } catch (error) {
      expect(error).toMatchObject({
        code: expect.stringMatching(/saturatedPair|frozen|outOfModel/),
      });
      return [];
    }
  }
});

describe('near the critical point', () => {
  test.each(refrigerantNames.filter((name) => !blends.includes(name)))('%s conducts better, the nearer', (name) => {
    const fluid = refrigerant(name);
    const { temperature, density } = fluid.critical;
    const warmer = [1.1, 1.03, 1.01, 1.003, 1.001]
      .filter((share) => share * temperature <= fluid.limits.temperatureMax)
      .map((share) => transportAt(fluid, stateAt(fluid, { temperature: share * temperature, density })).conductivity!);
    expect(warmer.length).toBeGreaterThan(1);
    for (let k = 1; k < warmer.length; k++) expect(warmer[k]).toBeGreaterThan(warmer[k - 1]!);
  });

  test('of ammonia at the critical temperature of the correlation, which is not the fluid’s', () => {
    const fluid = refrigerant('R717');
    for (const density of [50, 100, 235, 400]) {
      const [before, at, after] = [405.2, 405.4, 405.6].map((temperature) => {
        const isInside = temperature < fluid.critical.temperature && density > 150 && density < 330;
        return isInside ? undefined : transportAt(fluid, stateAt(fluid, { temperature, density })).conductivity!;
      });
      if (at === undefined) continue;
      expect(relative(at, before!)).toBeLessThan(0.5);
      expect(relative(at, after!)).toBeLessThan(0.5);
    }
  });
});

describe('estimates', () => {
  test('are those of the list, and no others', () => {
    const by = (property: 'viscosity' | 'conductivity', method: string) =>
      refrigerantNames.filter((name) => transportMethods(refrigerant(name))[property].method === method).sort();
    expect(by('viscosity', 'residualEntropy')).toEqual(
      ['R22', 'R32', 'R152a', 'R1234yf', 'R1234ze(E)', 'R245fa', 'R124'].sort(),
    );
    expect(by('viscosity', 'correspondingStates')).toEqual(
      ['R12', 'R143a', 'R1270', 'R142b', 'R227ea', 'R236fa'].sort(),
    );
    expect(by('conductivity', 'correspondingStates')).toEqual(
      ['R12', 'R22', 'R143a', 'R32', 'R1270', 'R245fa', 'R142b', 'R124', 'R227ea', 'R236fa'].sort(),
    );
    expect(by('conductivity', 'residualEntropy')).toEqual([]);
  });

  test('R152a tells how far its viscosity is from measurements', () => {
    expect(transportMethods(refrigerant('R152a')).viscosity.truth).toMatch(/9 %/);
  });

  // Below these temperatures no state of the reference fluid matches the saturated vapour exactly [K].
  test.each([
    ['R142b', 304],
    ['R227ea', 249],
    ['R124', 286],
    ['R32', 233],
  ])('%s: its cold vapour has values too, without a jump at %d K', (name, lost) => {
    const fluid = refrigerant(name);
    const at = (temperature: number) => transportAt(fluid, saturationAtTemperature(fluid, temperature).vapour);
    for (let temperature = lost - 30; temperature < lost + 10; temperature += 0.25) {
      const [here, next] = [at(temperature), at(temperature + 0.25)];
      expect(relative(next.viscosity!, here.viscosity!)).toBeLessThan(0.003);
      expect(relative(next.conductivity!, here.conductivity!)).toBeLessThan(0.003);
    }
  });

  test('give nothing where the reference fluid comes to be packed closely', () => {
    const fluid = refrigerant('R12');
    const { viscosity } = transportAt(fluid, stateAt(fluid, { temperature: 118, density: 1835 }));
    expect(viscosity).toBeNull();
  });
});

describe('the range of a source', () => {
  test('is told where it is left, and the values are still given', () => {
    const fluid = refrigerant('R290');
    const inside = transportAt(fluid, stateAt(fluid, { temperature: 300, pressure: 1e5 }));
    expect(inside.extrapolated).toBeUndefined();
    const warm = transportAt(fluid, stateAt(fluid, { temperature: 640, pressure: 1e5 }));
    expect(warm.extrapolated).toEqual(['conductivity']);
    expect(warm.conductivity).toBeGreaterThan(inside.conductivity!);
    expect(transportMethods(fluid).conductivity.range).toEqual({
      temperatureMin: 86,
      temperatureMax: 600,
      pressureMax: 70e6,
    });
  });

  test('of both properties', () => {
    const fluid = refrigerant('R717');
    const { extrapolated } = transportAt(fluid, stateAt(fluid, { temperature: 700, pressure: 60e6 }));
    expect(extrapolated).toEqual(['viscosity']);
  });
});

describe('coefficient files', () => {
  test.each<[string, object, (transport: Loose) => void]>([
    ['fluid.transport.viscosity', r134a, (t) => delete t.viscosity],
    ['fluid.transport.viscosity.type', r134a, (t) => (t.viscosity.type = 'guessed')],
    ['fluid.transport.viscosity.colour', r134a, (t) => (t.viscosity.colour = 'green')],
    ['fluid.transport.viscosity.dilute.type', r134a, (t) => (t.viscosity.dilute.type = 'toString')],
    ['fluid.transport.viscosity.dilute.c[1]', r134a, (t) => (t.viscosity.dilute.c[1] = null)],
    ['fluid.transport.viscosity.initialDensity', r134a, (t) => t.viscosity.initialDensity.b.pop()],
    ['fluid.transport.viscosity.residual', r134a, (t) => t.viscosity.residual.t.pop()],
    ['fluid.transport.viscosity.residual.d[0]', r134a, (t) => (t.viscosity.residual.d[0] = 1.5)],
    [
      'fluid.transport.viscosity.residual.freeVolume.factor',
      r134a,
      (t) => (t.viscosity.residual.freeVolume.factor = 0),
    ],
    ['fluid.transport.conductivity.critical.cutoff', r134a, (t) => delete t.conductivity.critical.cutoff],
    ['fluid.transport.conductivity.critical.type', r134a, (t) => (t.conductivity.critical.type = 'none at all')],
    ['fluid.transport.lennardJones', r134a, (t) => delete t.lennardJones],
    ['fluid.transport.lennardJones.depth', r134a, (t) => (t.lennardJones.depth = -1)],
    ['fluid.transport.conductivity.referenceFluid', r12, (t) => (t.conductivity.referenceFluid = 'R999')],
    ['fluid.transport.truth.colour', r12, (t) => (t.truth.colour = 'green')],
  ])('broken at %s', (path, file, change) => {
    const copy = structuredClone(file) as Loose;
    change(copy.transport);
    expect(() => checkedFluidData(copy, 'x.json')).toThrow(
      expect.objectContaining({ name: 'DataError', file: 'x.json', path }),
    );
  });

  test('a reference fluid without correlations of its own is refused', () => {
    const copy = structuredClone(r1270) as Loose;
    copy.transport.viscosity.referenceFluid = 'R12';
    copy.transport.conductivity.referenceFluid = 'R12';
    const fluid = loadRefrigerant(copy, 'R1270.json');
    expect(() => transportAt(fluid, stateAt(fluid, { temperature: 300, pressure: 1e5 }))).toThrow(
      expect.objectContaining({ name: 'DataError', path: 'fluid.transport.viscosity.referenceFluid' }),
    );
  });
});
