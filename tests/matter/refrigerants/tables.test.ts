// Tables against the equation they are made of, over their whole region: random states, both sides of the saturation line,
// borders of cells and bands, the edges of the region; that the table really answered; that outside it the equation does.

import { describe, expect, test } from 'vitest';
import {
  AROUND_CRITICAL,
  loopRegion,
  type Refrigerant,
  refrigerant,
  refrigerantNames,
  type State,
  type StateInput,
  saturationAtBubbleTemperature,
  saturationAtDewTemperature,
  saturationAtPressure,
  saturationAtTemperature,
  stateAt,
  type TabulatedRefrigerant,
  tabulated,
} from '../../../src/matter/refrigerants/index.ts';
import { KettlefinError } from '../../../src/numerics/index.ts';
import { relative } from './deviation.ts';
import { randomNumbers, regionPressure, statesInRegion } from './table-states.ts';

/** What a table promises of T, ρ and s (on a scale of 1 kJ/(kg K)), and of values on the saturation line. */
const promised = 1e-5;
const promisedOnLine = 1e-9;

/** The state of the table; fails if the equation answered. */
function fromTable(fast: TabulatedRefrigerant, given: StateInput): State {
  const before = fast.table.counts.byTable;
  const state = stateAt(fast, given);
  expect(fast.table.counts.byTable, `${fast.name} ${JSON.stringify(given)} from the table`).toBe(before + 1);
  return state;
}

function worstOf(state: State, exact: State): number {
  return Math.max(
    relative(state.temperature, exact.temperature),
    relative(state.density, exact.density),
    Math.abs(state.entropy - exact.entropy) / 1e3,
  );
}

function expectClose(state: State, exact: State): void {
  const where = `${exact.temperature} K, ${exact.pressure} Pa`;
  expect(worstOf(state, exact), where).toBeLessThan(promised);
  expect(Math.abs(state.enthalpy - exact.enthalpy) / 200e3, where).toBeLessThan(promised);
  expect(state.internalEnergy).toBe(state.enthalpy - state.pressure / state.density);
  expect(state.phase, where).toBe(exact.phase);
  expect(Object.keys(state)).toEqual(Object.keys(exact));
}

/** Which of the properties that grow near the critical point are off by more than this. */
function expectDerived(state: State, exact: State, share: number): void {
  const where = `${exact.temperature} K, ${exact.pressure} Pa`;
  for (const key of ['cp', 'cv', 'soundSpeed'] as const) {
    if (exact[key] === null) expect(state[key], where).toBeNull();
    else expect(relative(state[key]!, exact[key]), `${key} ${where}`).toBeLessThan(share);
  }
}

describe.each(refrigerantNames)('%s', (name) => {
  const fluid = refrigerant(name);
  const fast = tabulated(fluid);
  const { table } = fast.table;

  test('300 random states of the region, seed 1: (p,h), (p,s), (T,p) within 1e-5', () => {
    for (const exact of statesInRegion(fluid, table.region, 300, 1)) {
      const { temperature, pressure, enthalpy, entropy } = exact;
      const state = fromTable(fast, { pressure, enthalpy });
      expectClose(state, exact);
      expectDerived(state, exact, 1e-3);
      expectClose(fromTable(fast, { pressure, entropy }), exact);
      if (exact.phase !== 'twoPhase') expectClose(fromTable(fast, { temperature, pressure }), exact);
    }
  });

  test('60 random pressures, seed 2: both sides of the line and mixtures within 1e-9', () => {
    const next = randomNumbers(2);
    for (let k = 0; k < 60; k++) {
      const pressure = regionPressure(fluid, table.region, next(), AROUND_CRITICAL.below);
      const exact = saturationAtPressure(fluid, pressure);
      const sides = saturationAtPressure(fast, pressure);
      for (const side of ['liquid', 'vapour'] as const) {
        expectOnLine(sides[side], exact[side]);
        expectDerived(sides[side], exact[side], 1e-3);
        expectOnLine(fromTable(fast, { pressure, quality: side === 'liquid' ? 0 : 1 }), exact[side]);
      }
      const quality = next();
      expectOnLine(fromTable(fast, { pressure, quality }), stateAt(fluid, { pressure, quality }));
      const enthalpy = exact.liquid.enthalpy + quality * (exact.vapour.enthalpy - exact.liquid.enthalpy);
      expectOnLine(fromTable(fast, { pressure, enthalpy }), stateAt(fluid, { pressure, enthalpy }));
    }
  });

  test('30 random temperatures, seed 3: saturation pressures within 1e-9', () => {
    const next = randomNumbers(3);
    for (let k = 0; k < 30; k++) {
      const pressure = regionPressure(fluid, table.region, next(), 0.98 * AROUND_CRITICAL.below);
      const { liquid, vapour } = saturationAtPressure(fluid, pressure);
      const levels = [
        [saturationAtTemperature, vapour.temperature],
        [saturationAtDewTemperature, vapour.temperature],
        [saturationAtBubbleTemperature, liquid.temperature],
      ] as const;
      for (const [level, temperature] of levels) {
        if (temperature < table.region.temperatureMin) continue;
        const before = fast.table.counts;
        const found = level(fast, temperature);
        const passedOn = fast.table.counts.byEquation - before.byEquation;
        // A blend's bubble pressure at a dew temperature may lie above the band that the table knows.
        if (passedOn === 0) expect(fast.table.counts.byTable).toBe(before.byTable + 1);
        else expect(level === saturationAtTemperature && fluid.bubbleAndDew !== undefined).toBe(true);
        const exact = level(fluid, temperature);
        expectOnLine(found.liquid, exact.liquid);
        expectOnLine(found.vapour, exact.vapour);
      }
      const { temperature } = liquid;
      expectOnLine(fromTable(fast, { temperature, quality: 0 }), stateAt(fluid, { temperature, quality: 0 }));
    }
  });
});

function expectOnLine(state: State, exact: State): void {
  const where = `${exact.temperature} K, ${exact.pressure} Pa`;
  expect(relative(state.temperature, exact.temperature), where).toBeLessThan(promisedOnLine);
  expect(relative(state.pressure, exact.pressure), where).toBeLessThan(promisedOnLine);
  expect(relative(state.density, exact.density), where).toBeLessThan(promisedOnLine);
  expect(Math.abs(state.enthalpy - exact.enthalpy) / 200e3, where).toBeLessThan(promisedOnLine);
  expect(Math.abs(state.entropy - exact.entropy) / 1e3, where).toBeLessThan(promisedOnLine);
  expect(state.quality === null ? null : Math.abs(state.quality - exact.quality!)).toBeLessThan(promisedOnLine);
  expect(state.phase).toBe('twoPhase');
  expect(Object.keys(state)).toEqual(Object.keys(exact));
}

describe.each(['R134a', 'R600a', 'R290', 'R410A', 'R744', 'R717', 'R407C', 'R1234yf'])('%s at borders', (name) => {
  const fluid = refrigerant(name);
  const fast = tabulated(fluid);
  const { table } = fast.table;
  const { region } = table;
  const { pressure: critical } = fluid.critical;

  test('close to both sides of the line, down to a billionth of the latent heat', () => {
    for (const share of [1e-9, 1e-7, 1e-5, 1e-3, 1e-2]) {
      for (let k = 1; k <= 12; k++) {
        const pressure = regionPressure(fluid, region, k / 12.5, AROUND_CRITICAL.below);
        const { liquid, vapour } = saturationAtPressure(fluid, pressure);
        const step = share * (vapour.enthalpy - liquid.enthalpy);
        for (const enthalpy of [
          liquid.enthalpy - step,
          liquid.enthalpy + step,
          vapour.enthalpy - step,
          vapour.enthalpy + step,
        ]) {
          expectClose(stateAt(fast, { pressure, enthalpy }), stateAt(fluid, { pressure, enthalpy }));
        }
      }
    }
  });

  test('on the very line the phase is that of the equation', () => {
    for (let k = 1; k <= 12; k++) {
      const pressure = regionPressure(fluid, region, k / 12.5, AROUND_CRITICAL.below);
      const { liquid, vapour } = saturationAtPressure(fluid, pressure);
      for (const { enthalpy, entropy, quality } of [liquid, vapour]) {
        expect(stateAt(fast, { pressure, enthalpy })).toMatchObject({ phase: 'twoPhase', quality });
        expect(stateAt(fast, { pressure, entropy })).toMatchObject({ phase: 'twoPhase', quality });
      }
    }
  });

  test('borders of bands, of cells and of the region, from both sides', () => {
    const { below: band } = table.sheets.bands;
    const { columns } = table.sheets.liquid.patch.shape;
    const lines = [1, 7, columns - 1].map((column) => band.from + (column * (band.to - band.from)) / columns);
    const atLines = lines.map((theta) => critical * Math.exp(-theta * theta));
    const borders = [...atLines, critical * AROUND_CRITICAL.below, critical * AROUND_CRITICAL.above];
    const pressures = borders.flatMap((border) => [border * (1 - 1e-9), border * (1 + 1e-9)]);
    const temperatures = [region.temperatureMin + 1e-4, region.temperatureMax - 1e-4, 300, 330.5];
    const edges = [table.pressureBelow(band.to) * (1 + 1e-9), region.pressureMax * (1 - 1e-9)];
    for (const pressure of [...pressures, ...edges]) {
      for (const temperature of temperatures) {
        const exact = stateAt(fluid, { temperature, pressure });
        const { enthalpy } = exact;
        expectClose(fromTable(fast, { pressure, enthalpy }), exact);
        expectClose(fromTable(fast, { temperature, pressure }), exact);
      }
    }
  });
});

describe('the interpolant', () => {
  const fluid = refrigerant('R290');
  const { table } = tabulated(fluid).table;

  test.each(['liquid', 'vapour', 'coldSide', 'hotSide', 'above'] as const)(
    '%s: values and slopes pass from cell to cell without a jump',
    (key) => {
      const { patch } = table.sheets[key]!;
      const { from, to, columns, rows } = patch.shape;
      const width = (to - from) / columns;
      const at = (i: number, j: number): readonly number[] => {
        patch.find(from + i * width, j / rows);
        return [...patch.found];
      };
      const step = 1e-5;
      for (const [i, j] of [
        [1, 1],
        [2, 5],
        [3, rows - 1],
        [columns - 1, 3],
      ] as const) {
        for (const [along, across] of [
          [1, 0],
          [0, 1],
        ] as const) {
          // Half a cell off in the other direction, where nothing but the join itself makes it smooth.
          const [a, b] = [i + across / 2, j + along / 2];
          const here = at(a, b);
          const before = at(a - along * step, b - across * step);
          const after = at(a + along * step, b + across * step);
          here.forEach((value, which) => {
            const slopes = [value - before[which]!, after[which]! - value].map((rise) => rise / step);
            const scale = Math.max(...slopes.map(Math.abs));
            expect(Math.abs(slopes[1]! - slopes[0]!), `${key} ${i} ${j} ${which}`).toBeLessThan(1e-4 * scale + 1e-6);
          });
        }
      }
    },
  );

  test('its own slope of temperature over enthalpy is 1 / cp of the equation', () => {
    for (const { pressure, enthalpy, cp } of statesInRegion(fluid, table.region, 100, 4)) {
      if (cp === null) continue;
      const step = 20;
      const slope = [enthalpy - step, enthalpy + step].map((value) => {
        expect(table.lookUp(pressure, value)).toBe(true);
        return table.found[0]!;
      });
      expect(relative((2 * step) / (slope[1]! - slope[0]!), cp)).toBeLessThan(1e-3);
    }
  });
});

describe('what the table leaves to the equation', () => {
  const fluid = refrigerant('R134a');
  const fast = tabulated(fluid);
  const { critical } = fluid;

  test.each([
    ['below its lowest pressure', { pressure: 1e3, enthalpy: 420e3 }],
    ['above its highest pressure', { pressure: 4 * critical.pressure, enthalpy: 420e3 }],
    ['colder than its region', { pressure: 1e6, temperature: 185 }],
    ['hotter than its region', { pressure: 1e6, temperature: 453 }],
    ['beside the critical point', { pressure: critical.pressure, enthalpy: 390e3 }],
    ['density and temperature', { density: 20, temperature: 300 }],
    ['enthalpy and entropy', { enthalpy: 420e3, entropy: 1.8e3 }],
    ['temperature and entropy', { temperature: 320, entropy: 1.8e3 }],
  ] as readonly (readonly [string, StateInput])[])(
    '%s: the same state to the last bit, and counted',
    (_name, given) => {
      const before = fast.table.counts;
      expect(stateAt(fast, given)).toEqual(stateAt(fluid, given));
      expect(fast.table.counts).toEqual({ byTable: before.byTable, byEquation: before.byEquation + 1 });
    },
  );

  test('a look-up outside says so', () => {
    expect(fast.table.table.lookUp(1e3, 420e3)).toBe(false);
    expect(fast.table.table.lookUp(critical.pressure, 390e3)).toBe(false);
    expect(fast.table.table.lookUp(1e6, 1e7)).toBe(false);
    expect(fast.table.table.lookUp(Number.NaN, 420e3)).toBe(false);
    expect(fast.table.table.lookUp(1e6, Number.NaN)).toBe(false);
  });

  const bad: readonly unknown[] = [
    null,
    {},
    'vapour',
    { pressure: 1e6 },
    { pressure: 1e6, enthalpy: Number.NaN },
    { pressure: Number.NaN, enthalpy: 420e3 },
    { pressure: Number.POSITIVE_INFINITY, enthalpy: 420e3 },
    { pressure: '1e6', enthalpy: 420e3 },
    { pressure: -1, enthalpy: 420e3 },
    { pressure: 0, entropy: 1e3 },
    { pressure: 1e6, enthalpy: 420e3, entropy: 1e3 },
    { pressure: 1e6, enthalpy: 420e3, colour: 1 },
    { pressure: 1e6, quality: 1.2 },
    { pressure: 1e6, quality: -1e-9 },
    { temperature: 300, quality: Number.NaN },
    { temperature: 300, quality: 2 },
    { temperature: -300, pressure: 1e6 },
    { temperature: 1e4, pressure: 1e6 },
    { pressure: 1e6, enthalpy: 1e9 },
    { pressure: 1e6, enthalpy: -1e9 },
    { pressure: 5e6, quality: 0.5 },
    { temperature: 380, quality: 0 },
    { temperature: 300, pressure: saturationAtTemperature(fluid, 300).liquid.pressure },
  ];
  test.each(bad)('bad request %#, %j: the same error as of the equation', (given) => {
    const errorOf = (asked: Refrigerant) => {
      try {
        stateAt(asked, given as StateInput);
      } catch (error) {
        if (error instanceof KettlefinError) return { code: error.code, message: error.message, facts: error.facts() };
        throw error;
      }
      throw new Error('no error');
    };
    expect(errorOf(fast)).toEqual(errorOf(fluid));
  });

  test('a blend at a temperature and a quality between has no state in the table either', () => {
    const blend = tabulated(refrigerant('R407C'));
    expect(() => stateAt(blend, { temperature: 290, quality: 0.5 })).toThrowError(KettlefinError);
    expect(() => saturationAtTemperature(blend, Number.NaN)).toThrowError(KettlefinError);
  });
});

describe('a table', () => {
  const fluid = refrigerant('R600a');

  test('worked value of tabulated: R134a at 0.2 MPa and 420 kJ/kg', () => {
    const given = { pressure: 0.2e6, enthalpy: 420e3 };
    expect(fromTable(tabulated(refrigerant('R134a')), given).temperature).toBeCloseTo(295.08, 2);
  });

  test('is the same whenever it is built, and kept for the loop', () => {
    const region = loopRegion(fluid);
    const one = tabulated(fluid, region).table.table.sheets;
    const two = tabulated(fluid, region).table.table.sheets;
    expect(one).not.toBe(two);
    expect(Buffer.from(one.vapour.patch.nodes.buffer).equals(Buffer.from(two.vapour.patch.nodes.buffer))).toBe(true);
    expect(Buffer.from(one.above.patch.nodes.buffer).equals(Buffer.from(two.above.patch.nodes.buffer))).toBe(true);
    expect(tabulated(fluid)).toBe(tabulated(fluid));
  });

  test('answers from its own numbers: (T,p) and back through (p,h) and (p,s)', () => {
    const fast = tabulated(fluid);
    for (const { temperature, pressure, phase } of statesInRegion(fluid, fast.table.table.region, 100, 5)) {
      if (phase === 'twoPhase') continue;
      const { enthalpy, entropy } = fromTable(fast, { temperature, pressure });
      expect(relative(fromTable(fast, { pressure, enthalpy }).temperature, temperature)).toBeLessThan(1e-10);
      expect(relative(fromTable(fast, { pressure, entropy }).temperature, temperature)).toBeLessThan(1e-10);
    }
  });

  test('of every fluid takes at most 2 MB', () => {
    for (const name of refrigerantNames) {
      const { table } = tabulated(refrigerant(name)).table;
      expect(table.bytes).toBeGreaterThan(5e5);
      expect(table.bytes).toBeLessThanOrEqual(2e6);
    }
  });

  test('can be made of a smaller region, and of none that the fluid does not have', () => {
    const small = { temperatureMin: 240, temperatureMax: 420, pressureMax: 6e6 };
    const fast = tabulated(fluid, small);
    const exact = stateAt(fluid, { temperature: 300, pressure: 2e5 });
    expectClose(fromTable(fast, { pressure: 2e5, enthalpy: exact.enthalpy }), exact);
    for (const change of [
      { temperatureMin: 50 },
      { temperatureMin: Number.NaN },
      { temperatureMax: 380 },
      { temperatureMax: 1e4 },
      { pressureMax: 3e6 },
      { pressureMax: 1e12 },
    ]) {
      const [key] = Object.keys(change);
      expect(() => tabulated(fluid, { ...small, ...change })).toThrowError(`region.${key}`);
    }
  });
});
