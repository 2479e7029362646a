// Refrigerants side by side: on the same parts the design's own fluid has the numbers of its assessment, the laws of each
// basis hold, one fluid's failure leaves the others alone, charges are withheld, and nothing is ranked that may not be.
// References: cycles of a general-purpose library (tests/reference/loop/textbook_cycles.py says which).

import { evaluate } from 'mathjs';
import { describe, expect, test } from 'vitest';
import {
  Assessor,
  type ComparedCycle,
  type ComparisonColumn,
  compareRefrigerants,
  compareTextbookCycles,
  comparisonBases,
  formulaById,
  type MachineBasis,
  type RefrigerantComparison,
  sayRefrigerants,
} from '../../../src/assess/index.ts';
import { InputError } from '../../../src/numerics/index.ts';
import { changedDesign, demoTexts } from '../../designs.ts';
import library from '../../reference/loop/textbook-cycles.json';

const fluids = ['R134a', 'R600a', 'R290'];
const reef = demoTexts['reef-in-the-study.json']!;
const shrimp = demoTexts['shrimp-rack-unknown-draughts.json']!;
const propane = demoTexts['propane-in-the-cabinet.json']!;

const known = new Map<string, RefrigerantComparison>();

/** The same question is answered once, since nothing changes an answer. */
function compared(text: string, names = fluids, basis: MachineBasis = 'sameDome', levels?: Levels) {
  const question = JSON.stringify([text, names, basis, levels]);
  const answer = known.get(question);
  if (answer !== undefined) return answer;
  const outcome = compareRefrigerants(text, names, basis, levels);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome));
  known.set(question, outcome.comparison);
  return outcome.comparison;
}

type Levels = Parameters<typeof compareRefrigerants>[3];

function columnOf({ columns }: RefrigerantComparison, fluid: string): ComparisonColumn {
  return columns.find((column) => column.fluid === fluid)!;
}

function valuesOf(comparison: RefrigerantComparison, fluid: string): Extract<ComparedCycle, { ok: true }>['values'] {
  const { cycle } = columnOf(comparison, fluid);
  if (!cycle.ok) throw new Error(cycle.error.message);
  return cycle.values;
}

describe.each(Object.entries(demoTexts))('%s', (_, text) => {
  const outcome = new Assessor().assess(text, 'metric');
  if (!outcome.ok) throw new Error(JSON.stringify(outcome));
  const { assessment } = outcome;
  const own = assessment.operating.refrigerant;

  test('on the same parts its own fluid has exactly the numbers and ranges of its assessment', () => {
    const { operating } = assessment;
    const values = valuesOf(compared(text, fluids, 'sameParts'), own);
    const pairs = [
      ['evaporatingTemperature', operating.evaporatingTemperature],
      ['condensingTemperature', operating.condensingTemperature],
      ['evaporatingPressure', operating.evaporatingPressure],
      ['condensingPressure', operating.condensingPressure],
      ['dischargeTemperature', operating.dischargeTemperature],
      ['pressureRatio', operating.pressureRatio],
      ['power', assessment.compressorPower],
      ['compressorCop', assessment.compressorCop],
      ['heatReachingWater', assessment.heatDelivered],
      ['systemPower', assessment.systemPower],
      ['systemCop', assessment.systemCop],
    ] as const;
    for (const [row, band] of pairs) expect(values[row], row).toEqual(band);
  });

  test('every step of the working gives its value, and every number has a step of its name', () => {
    for (const basis of comparisonBases) {
      for (const { cycle, workings } of compared(text, fluids, basis).columns) {
        const steps = new Map(workings.map((step) => [step.result, step.value]));
        for (const { formula, inputs, value, result } of workings) {
          const again = evaluate(formulaById(formula)!.expression, { ...inputs });
          expect(Math.abs(again - value), `${result} by ${formula}`).toBeLessThan(
            1e-9 * Math.max(Math.abs(value), 1e-9),
          );
        }
        if (!cycle.ok) throw new Error(cycle.error.message);
        for (const [row, { result, likely }] of Object.entries(cycle.values)) {
          expect(Math.abs((steps.get(result) ?? Number.NaN) - likely), `${row}: ${result}`).toBeLessThanOrEqual(
            1e-9 * Math.abs(likely),
          );
        }
      }
    }
  });

  test('what is posted is plain data without a number that is none, bands in order', () => {
    const comparison = compared(text, fluids, 'sameHeat');
    expect(structuredClone(comparison)).toEqual(comparison);
    expect(JSON.parse(JSON.stringify(comparison))).toEqual(comparison);
    for (const { cycle } of comparison.columns) {
      if (!cycle.ok) continue;
      for (const { low, likely, high } of Object.values(cycle.values)) {
        expect([low, likely, high].every(Number.isFinite)).toBe(true);
        expect(low <= likely && likely <= high).toBe(true);
      }
    }
  });

  test.each(['metric', 'us'] as const)('reads as sentences in the %s view', (view) => {
    for (const basis of comparisonBases) {
      const said = sayRefrigerants(compared(text, fluids, basis), view);
      const lines = [said.answer, said.basisWords, ...said.differences, ...said.notes, ...said.sources];
      for (const line of lines) expect(line).toMatch(/^[A-Z0-9].*\.$/);
      expect(JSON.stringify(said)).not.toMatch(/undefined|NaN|\[object/);
      for (const { rows } of said.groups) for (const { cells } of rows) expect(cells.length).toBe(fluids.length);
    }
  });
});

describe('order', () => {
  test('law and safety, then oil, pressures, lift, heat, environment', () => {
    const { groups } = sayRefrigerants(compared(reef), 'metric');
    expect(groups.flatMap(({ rows }) => rows.map(({ name }) => name))).toEqual([
      'legalStatus',
      'safetyClass',
      'lowerFlammabilityLimit',
      'leakLimit',
      'standardAmounts',
      'smallestFloorArea',
      'smallestRoomVolume',
      'oil',
      'stops',
      'evaporatingTemperature',
      'evaporatingPressure',
      'evaporatingGaugePressure',
      'evaporatingGlide',
      'condensingTemperature',
      'condensingPressure',
      'condensingGaugePressure',
      'condensingGlide',
      'temperatureLift',
      'pressureRatio',
      'dischargeTemperature',
      'heat',
      'power',
      'current',
      'motorLoad',
      'compressorCop',
      'volumetricHeatingCapacity',
      'ozoneDepletionPotential',
      'globalWarmingPotential',
      'laterGlobalWarmingPotential',
    ]);
  });

  test('fluids for this machine first, the others as asked, each with its reason', () => {
    const { columns } = compared(reef, ['R22', 'R600a', 'R134a', 'propane']);
    expect(columns.map(({ fluid }) => fluid)).toEqual(['R134a', 'R22', 'R600a', 'R290']);
    expect(columns.map(({ standing }) => standing === 'forThisMachine')).toEqual([true, false, false, false]);
    expect(columns.map(({ reason }) => reason?.code ?? null)).toEqual([
      null,
      'notForThisMachine',
      'notForThisMachine',
      'notForThisMachine',
    ]);
  });
});

describe('laws of the bases', () => {
  test('the same temperatures are the same, without a range', () => {
    const comparison = compared(shrimp);
    for (const row of ['evaporatingTemperature', 'condensingTemperature', 'temperatureLift']) {
      const bands = fluids.map((fluid) => valuesOf(comparison, fluid)[row]!);
      for (const { low, likely, high } of bands) {
        expect([low, high]).toEqual([likely, likely]);
        expect(likely).toBe(bands[0]!.likely);
      }
    }
  });

  test('at likely values the same parts settle where the same temperatures are, since approaches are held', () => {
    const [dome, parts] = [compared(shrimp), compared(shrimp, fluids, 'sameParts')];
    for (const fluid of fluids) {
      for (const [row, { likely }] of Object.entries(valuesOf(dome, fluid))) {
        expect(valuesOf(parts, fluid)[row]!.likely, `${fluid} ${row}`).toBe(likely);
      }
    }
  });

  test('the same heat is the same with its range, and electricity by COP gives it', () => {
    const comparison = compared(shrimp, fluids, 'sameHeat');
    const own = valuesOf(comparison, 'R600a');
    expect(own.heat).toEqual({ ...valuesOf(compared(shrimp), 'R600a').heat, result: 'own.heatDelivered' });
    for (const fluid of fluids) {
      const { heat, power, compressorCop } = valuesOf(comparison, fluid);
      expect(heat).toEqual(own.heat);
      expect(Math.abs((power!.likely * compressorCop!.likely) / heat!.likely - 1)).toBeLessThan(1e-9);
    }
    expect(own.displacementNeeded!.likely).toBeCloseTo(13e-6, 15);
  });

  test('a machine alike with the displacement found gives the heat of the design’s own fluid, with that electricity', () => {
    const comparison = compared(shrimp, fluids, 'sameHeat');
    const needed = valuesOf(comparison, 'R290');
    const { UA: shell, n: size } = columnOf(comparison, 'R290').workings.find(
      ({ formula }) => formula === 'compressor.shellConductanceOfSize',
    )!.inputs as { readonly UA: number; readonly n: number };
    expect(size).toBeCloseTo(needed.displacementNeeded!.likely / 13e-6, 12);
    expect(Math.abs(size - 1)).toBeGreaterThan(0.2);
    const scaled = changedDesign(shrimp, {
      'machine.compressor.displacement': `${needed.displacementNeeded!.likely * 1e6} cm3`,
      'machine.compressor.shellConductance': `${shell * size ** (2 / 3)} W/K`,
    });
    const { heat, power, motorLoad, compressorCop } = valuesOf(compared(scaled), 'R290');
    expect(Math.abs(heat!.likely / needed.heat!.likely - 1)).toBeLessThan(1e-6);
    expect(Math.abs(power!.likely / needed.power!.likely - 1)).toBeLessThan(1e-6);
    expect(Math.abs(motorLoad!.likely / needed.motorLoad!.likely - 1)).toBeLessThan(1e-6);
    expect(Math.abs(compressorCop!.likely / needed.compressorCop!.likely - 1)).toBeLessThan(1e-6);
  });

  test('the size found is not what proportion would give, since the shell does not grow with it', () => {
    const needed = valuesOf(compared(shrimp, fluids, 'sameHeat'), 'R290');
    const asItIs = valuesOf(compared(shrimp), 'R290');
    const proportional = (13e-6 * needed.heat!.likely) / asItIs.heat!.likely;
    expect(Math.abs(needed.displacementNeeded!.likely / proportional - 1)).toBeGreaterThan(0.001);
  });

  test('temperatures that are given replace those of the design', () => {
    const { conditions, columns } = compared(reef, fluids, 'sameDome', { evaporating: 268.15, condensing: 313.15 });
    expect(conditions.sourceTemperature).toBeNull();
    for (const { cycle } of columns) {
      expect(cycle.ok && cycle.values.evaporatingTemperature!.likely).toBeCloseTo(268.15, 9);
      expect(cycle.ok && cycle.values.temperatureLift!.likely).toBeCloseTo(45, 9);
    }
  });
});

describe('reference: cycles of the library', () => {
  const conditions = [...new Set(library.cycles.map(({ request }) => `${request.evaporating} ${request.condensing}`))];

  test.each(conditions)('dew temperatures %s: volumes drawn in and discharge temperatures side by side', (key) => {
    const outside = library.cycles.filter(({ request }) => `${request.evaporating} ${request.condensing}` === key);
    expect(outside.length).toBe(5);
    const { evaporating, condensing, superheat, subcooling, isentropicEfficiency } = outside[0]!.request;
    const comparison = compareTextbookCycles(
      outside.map(({ request }) => request.refrigerant),
      { evaporating, condensing, superheat, subcooling, isentropicEfficiency, atmosphericPressure: 101_325 },
    );
    for (const cycle of outside) {
      const values = valuesOf(comparison, cycle.request.refrigerant);
      const ratio = outside[0]!.volumetricHeatingCapacity / cycle.volumetricHeatingCapacity;
      expect(values.relativeVolumeDrawn!.likely / ratio).toBeCloseTo(1, 6);
      expect(values.dischargeTemperature!.likely).toBeCloseTo(cycle.dischargeTemperature, 4);
      expect(values.pressureRatio!.likely).toBeCloseTo(cycle.pressures[1]! / cycle.pressures[0]!, 5);
    }
  });

  // A machine without clearance, throttling, heating, leakage or friction: the gas is compressed as in the library's isentropic
  // cycle, and every loss of its motor leaves through the shell. P_el = W + P_b l (1 + (W/P_b)²), l = (1/η_m − 1)/2.
  test('a machine whose numbers are all given, on states of the library: heat, electricity, COP', () => {
    const machine = {
      madeFor: 'R134a',
      displacement: '8 cm3',
      clearanceRatio: '0',
      suctionVelocity: '0 m/s',
      dischargeVelocity: '0 m/s',
      suctionHeatingUnits: '0',
      dischargeCoolingUnits: '0',
      leakageRatio: '0',
      proportionalLoss: '0',
      frictionPressure: '0 kPa',
      motorEfficiency: '0.6',
      motorPressure: '300 kPa',
      slip: '0',
      powerFactor: '0.7',
      shellConductance: '2 W/K',
    };
    const text = changedDesign(reef, {
      'machine.compressor': machine,
      'machine.application': 'high',
      'machine.supply': { frequency: '50 Hz', voltage: '230 V' },
      'exchangers.superheat': '5 K',
      'exchangers.subcooling': '5 K',
    });
    const levels = { evaporating: 263.15, condensing: 318.15 };
    const comparison = compared(text, ['R134a', 'R600a', 'R290', 'R12', 'R22'], 'sameDome', levels);
    const outside = library.cycles.filter(({ request }) => request.evaporating === 263.15);
    expect(outside.length).toBe(5);
    for (const { request, enthalpies, heatingCop, volumetricHeatingCapacity } of outside) {
      const [h1, h2s, h2textbook, h3] = enthalpies as [number, number, number, number];
      expect(heatingCop).toBeCloseTo((h2textbook - h3) / (h2textbook - h1), 6);
      const density = volumetricHeatingCapacity / (h2textbook - h3);
      const flow = 8e-6 * 50 * density;
      const shaft = flow * (h2s - h1);
      const best = 300e3 * 8e-6 * 50;
      const power = shaft + ((best * (1 / 0.6 - 1)) / 2) * (1 + (shaft / best) ** 2);
      const heat = flow * (h2s - h3);
      const values = valuesOf(comparison, request.refrigerant);
      expect(values.heat!.likely / heat).toBeCloseTo(1, 6);
      expect(values.power!.likely / power).toBeCloseTo(1, 6);
      expect(values.compressorCop!.likely / (heat / power)).toBeCloseTo(1, 6);
      expect(values.motorLoad!.likely).toBeCloseTo(shaft / best, 6);
    }
  });
});

describe('what cannot be compared', () => {
  test.each([
    [['R134a'], 'tooFewFluids', /at least two/],
    [[], 'tooFewFluids', /at least two/],
    [['R134a', 'R-134a'], 'fluidTwice', /each fluid once/],
    [['R134a', 'R600b'], 'unknownRefrigerant', /nearest is R600a/],
  ] as const)('%j: %s', (names, code, expected) => {
    let caught: unknown;
    try {
      compareRefrigerants(reef, names, 'sameDome');
    } catch (error) {
      caught = error;
    }
    expect(caught).toBeInstanceOf(InputError);
    expect((caught as InputError).code).toBe(code);
    expect((caught as InputError).expected).toMatch(expected);
  });

  test('temperatures do not go with the same parts', () => {
    const levels = { evaporating: 270, condensing: 310 };
    expect(() => compareRefrigerants(reef, fluids, 'sameParts', levels)).toThrow(InputError);
  });

  test('a design that cannot be used is refused with its places', () => {
    const outcome = compareRefrigerants(changedDesign(reef, { 'tank.waterTemperature': 'warm' }), fluids, 'sameDome');
    expect(outcome).toMatchObject({ ok: false, kind: 'unusable', problems: [{ path: 'tank.waterTemperature' }] });
  });

  test('a fluid that would condense above its critical point says so; the others stand', () => {
    const names = ['R134a', 'R290', 'R22'];
    const comparison = compared(reef, names, 'sameDome', { evaporating: 275, condensing: 371 });
    expect(columnOf(comparison, 'R134a').cycle.ok).toBe(true);
    for (const fluid of ['R290', 'R22']) {
      expect(columnOf(comparison, fluid).cycle).toMatchObject({
        ok: false,
        error: { code: 'condensingAboveCritical' },
      });
    }
    const said = sayRefrigerants(comparison, 'us');
    expect(said.columns[1]!.problem).toMatch(/^Condensing at 208.*critical point of R290, 206.*\.$/);
    expect(comparison.differences).toEqual([]);
  });

  test('an evaporating temperature below every equation is said of each fluid', () => {
    const comparison = compared(reef, fluids, 'sameDome', { evaporating: 60, condensing: 310 });
    for (const column of sayRefrigerants(comparison, 'metric').columns) {
      expect(column.problem).toContain(`lies outside the equation of ${column.fluid}`);
    }
  });

  test('without a loop on the design’s own fluid there is no heat to match', () => {
    const comparison = compared(reef, ['R134a', 'R600a'], 'sameHeat', { evaporating: 280, condensing: 380 });
    for (const { cycle } of comparison.columns) expect(cycle.ok).toBe(false);
    expect(columnOf(comparison, 'R600a').cycle).toMatchObject({ error: { code: 'noHeatToMatch' } });
    expect(comparison.conditions.heat).toBeNull();
  });

  test('condensing that is not above evaporating pumps nothing', () => {
    const comparison = compared(reef, fluids, 'sameDome', { evaporating: 310, condensing: 300 });
    expect(sayRefrigerants(comparison, 'metric').columns[0]!.problem).toMatch(/nothing to pump/);
  });
});

describe('charge', () => {
  test('is shown as a band for the fluid of the machine only, where nothing stops it', () => {
    const comparison = compared(shrimp);
    const { charge, stops } = columnOf(comparison, 'R600a');
    expect(stops).toEqual([]);
    if (charge.kind !== 'shown') throw new Error(charge.kind);
    const { low, high } = charge.charge;
    expect(low).toBeLessThan(high);
    // EN 378-1: a fifth of the flammability limit of 0.038 kg/m³; IEC 60335-2-40: 4, 26 and 130 m³ of air at the limit.
    expect(charge.smallestRoomVolume!.high).toBeCloseTo(high / 0.0076, 9);
    expect(charge.amounts!.m1.likely).toBeCloseTo(0.152, 12);
    expect(charge.amounts!.m3.likely).toBeCloseTo(4.94, 12);
    for (const fluid of ['R134a', 'R290']) expect(columnOf(comparison, fluid).charge).toEqual({ kind: 'withheld' });
  });

  test('with a stop finding no figure of it leaves, the limits of concentration do', () => {
    const comparison = compared(propane);
    expect(comparison.columns.every(({ charge }) => charge.kind === 'withheld')).toBe(true);
    for (const view of ['metric', 'us'] as const) {
      const law = sayRefrigerants(comparison, view).groups[0]!;
      const cellsOf = (name: string) => law.rows.find((row) => row.name === name)!.cells.map(({ text }) => text);
      expect(cellsOf('smallestRoomVolume')).toEqual(['withheld', 'withheld', 'withheld']);
      expect(cellsOf('leakLimit').every((text) => /g\/m³|ft³/.test(text))).toBe(true);
    }
    expect(JSON.stringify(comparison)).not.toMatch(/"m1"|"charge\.|machine\.charge/);
  });

  test('of another fluid says nothing about this one', () => {
    const text = changedDesign(reef, { 'machine.refrigerant': 'R290' });
    expect(columnOf(compared(text), 'R134a').charge).toEqual({ kind: 'unknown', chargeOf: 'R290', amounts: null });
  });
});

describe('differences', () => {
  test('what two fluids share moves both at once: heat differs although the columns overlap', () => {
    const comparison = compared(reef, ['R134a', 'R22']);
    const [own, other] = [valuesOf(comparison, 'R134a'), valuesOf(comparison, 'R22')];
    expect(own.heat!.high).toBeGreaterThan(other.heat!.low);
    const [pair] = comparison.differences;
    const row = (name: string) => pair!.rows.find((each) => each.row === name)!;
    expect(row('heat').beyondRange).toBe(true);
    expect(row('heat').difference.likely).toBeCloseTo(other.heat!.likely - own.heat!.likely, 9);
    // How well a compressor works with a fluid it was not made for is an unknown of its own.
    expect(row('compressorCop').beyondRange).toBe(false);
  });

  test('nothing is ranked: not for this machine is for study, and what a basis makes equal is not told', () => {
    const comparison = compared(reef, fluids, 'sameHeat');
    expect(comparison.differences.map(({ mayBeRanked }) => mayBeRanked)).toEqual([false, false]);
    const rows = comparison.differences.flatMap((pair) => pair.rows.map(({ row }) => row));
    expect(rows).toContain('displacementNeeded');
    expect(rows).not.toContain('heat');
    const said = sayRefrigerants(comparison, 'metric').differences;
    expect(said[0]).toBe('Only R134a is for this machine, so nothing is ranked.');
    expect(said.filter((line) => line.startsWith('For study only: ')).length).toBe(2);
    expect(said.join(' ')).not.toMatch(/\b(best|better|worse|winner|score|rank(?!ed))\b/);
  });
});

describe('a blend beside single substances', () => {
  const names = ['R134a', 'R407C'];
  const glides = ['evaporatingGlide', 'condensingGlide'];

  test('its glides stand in its column with their steps; a single substance has none', () => {
    for (const basis of ['sameDome', 'sameHeat', 'sameParts'] as const) {
      const comparison = compared(reef, names, basis);
      for (const fluid of names) {
        const values = valuesOf(comparison, fluid);
        const steps = new Map(columnOf(comparison, fluid).workings.map((step) => [step.result, step.value]));
        for (const glide of glides) {
          const { result, likely } = values[glide]!;
          expect(steps.get(result), `${fluid} ${result}`).toBe(likely);
          if (fluid === 'R134a') expect(likely).toBe(0);
          else expect(likely).toBeGreaterThan(4);
        }
      }
    }
  });

  test('with approaches held it condenses down to the temperature at which the other condenses', () => {
    const comparison = compared(reef, names);
    const [pure, blend] = names.map((fluid) => valuesOf(comparison, fluid));
    expect(blend!.evaporatingTemperature!.likely).toBeCloseTo(pure!.evaporatingTemperature!.likely, 9);
    const bubble = blend!.condensingTemperature!.likely - blend!.condensingGlide!.likely;
    expect(bubble).toBeCloseTo(pure!.condensingTemperature!.likely, 9);
    const { notes } = sayRefrigerants(comparison, 'metric');
    expect(notes.filter((note) => note.includes('glide approximation'))).toEqual([
      expect.stringContaining('R407C is a blend'),
    ]);
  });

  test('dew temperatures that were asked for are its dew temperatures, and every step holds', () => {
    const comparison = compared(reef, names, 'sameDome', { evaporating: 268.15, condensing: 315.15 });
    const { cycle, workings } = columnOf(comparison, 'R407C');
    if (!cycle.ok) throw new Error(cycle.error.message);
    expect(cycle.values.evaporatingTemperature!.likely).toBeCloseTo(268.15, 9);
    expect(cycle.values.condensingTemperature!.likely).toBeCloseTo(315.15, 9);
    for (const { formula, inputs, value, result } of workings) {
      const again = evaluate(formulaById(formula)!.expression, { ...inputs });
      expect(Math.abs(again - value), `${result} by ${formula}`).toBeLessThan(1e-9 * Math.max(Math.abs(value), 1e-9));
    }
    const made = workings.map(({ formula }) => formula);
    expect(made).not.toContain('loop.condensingTemperature');
    expect(made).toContain('refrigerants.bubbleTemperature');
  });

  test('single substances alone have no word of a blend', () => {
    const { notes } = sayRefrigerants(compared(reef), 'metric');
    expect(notes.join(' ')).not.toContain('glide');
  });
});

describe('textbook', () => {
  const request = {
    evaporating: 263.15,
    condensing: 318.15,
    superheat: 5,
    subcooling: 5,
    isentropicEfficiency: 0.6,
    atmosphericPressure: 101_325,
  };

  test('every step of the working gives its value, and every number has a step of its name', () => {
    for (const { cycle, workings } of compareTextbookCycles([...fluids, 'R404A', 'R407C'], request).columns) {
      const steps = new Map(workings.map((step) => [step.result, step.value]));
      for (const { formula, inputs, value, result } of workings) {
        const again = evaluate(formulaById(formula)!.expression, { ...inputs });
        expect(Math.abs(again - value), `${result} by ${formula}`).toBeLessThan(1e-9 * Math.max(Math.abs(value), 1e-9));
      }
      if (!cycle.ok) throw new Error(cycle.error.message);
      const given = ['evaporatingTemperature', 'condensingTemperature'];
      for (const [row, { result, likely }] of Object.entries(cycle.values)) {
        if (given.includes(row)) continue;
        expect(Math.abs((steps.get(result) ?? Number.NaN) - likely), `${row}: ${result}`).toBeLessThanOrEqual(
          1e-9 * Math.abs(likely),
        );
      }
    }
  });

  test('is labelled as what it is, has no machine and no figures of a charge', () => {
    const comparison = compareTextbookCycles(fluids, request);
    const said = sayRefrigerants(comparison, 'metric');
    expect(said.basisTitle).toBe('Textbook cycle, not electricity');
    expect(said.differences).toEqual([]);
    expect(comparison.columns.every(({ standing }) => standing === 'noMachine')).toBe(true);
    expect(said.groups[0]!.rows.map(({ name }) => name)).not.toContain('smallestRoomVolume');
  });

  test('a fluid without a cycle leaves the others', () => {
    const { columns } = compareTextbookCycles(['R290', 'R134a'], { ...request, condensing: 372 });
    expect(columns[0]!.cycle.ok).toBe(false);
    expect(columns[1]!.cycle.ok && columns[1]!.cycle.values.relativeVolumeDrawn!.likely).toBe(1);
  });
});
