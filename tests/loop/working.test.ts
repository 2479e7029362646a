// The working: each step's number is what its formula gives from the numbers put in, every number put in is either given
// from outside or stands in another step, and no number of a textbook cycle is without its step.

import { describe, expect, it } from 'vitest';
import {
  loopFormulas,
  type OperatingPointInput,
  operatingPoint,
  operatingPointWorking,
  type TextbookCycleRequest,
  textbookCycle,
  textbookCycleWorking,
} from '../../src/loop/index.ts';
import { refrigerant, refrigerantFormulas, refrigerantNames } from '../../src/matter/refrigerants/index.ts';
import { compressorFormulas, type HermeticParameter, hermeticParameters } from '../../src/parts/compressor/index.ts';
import type { WorkingStep } from '../../src/quantities/index.ts';
import { type LevelsOf, levelsOf } from './levels-of.ts';
import { machineFor, machineWithPoint } from './running-machine.ts';

const formulas = new Map(
  [...loopFormulas, ...compressorFormulas, ...refrigerantFormulas].map((formula) => [formula.id, formula]),
);

/** What only the fluid's own equation gives, or the fit of its surface tension; every other number put in has an origin. */
const ofTheEquation = [
  ...['R', 'phi', 'phi_d', 'phi_t', 'phi_s', 'phi_dd', 'phi_dt', 'phi_tt', 'h_zero', 's_zero', 'rho_c'],
  ...['phi_liquid', 'phi_vapour', 'rho_liquid', 'rho_vapour', 'Tc', 'a1', 'a2', 'a3', 'n1', 'n2'],
  // Of the published lines of a blend.
  ...['theta', 'T_r', 'p_r', 'n3', 'n4', 't1', 't2', 't3', 't4'],
];

/** Of a liquid under little pressure the density stands on a difference near 0, which doubles know to fewer digits: cold water. */
function toleranceOf({ formula, inputs }: WorkingStep): number {
  return formula === 'refrigerants.density' ? 1e-9 * Math.max(1, 1e-4 / Math.abs(1 + inputs.phi_d!)) : 1e-9;
}

function expectStepsHold(steps: readonly WorkingStep[]): ReadonlyMap<string, number> {
  expect(steps.length).toBeGreaterThan(8);
  const values = new Map(steps.map((step) => [step.result, step.value]));
  expect(values.size).toBe(steps.length);
  for (const step of steps) {
    const formula = formulas.get(step.formula);
    expect(formula, step.formula).toBeDefined();
    const symbols = Object.keys(step.inputs);
    expect([...symbols].sort()).toEqual(Object.keys(formula!.symbols).sort());
    const own = step.formula.startsWith('refrigerants.') ? ofTheEquation : [];
    for (const symbol of symbols) {
      if (!(symbol in step.from)) expect(own, `${step.result}: ${symbol}`).toContain(symbol);
    }
    const value = formula!.compute(step.inputs);
    const scale = Math.max(Math.abs(value), Math.abs(step.value), 1e-2);
    expect(Math.abs(value - step.value), step.result).toBeLessThan(toleranceOf(step) * scale);
    for (const [symbol, origin] of Object.entries(step.from)) {
      const source = values.get(origin);
      expect(source !== undefined || !/^(cycle|operating)\./.test(origin), `${step.result}: ${origin}`).toBe(true);
      if (source === undefined) continue;
      // A sign may be turned: what leaves one body enters another.
      const gap = Math.abs(Math.abs(step.inputs[symbol]!) - Math.abs(source));
      expect(gap, `${step.result}: ${symbol} from ${origin}`).toBeLessThanOrEqual(1e-9 * Math.abs(source));
    }
  }
  return values;
}

/** Every number of a result, by its dotted path; an entry of a list by its name. */
function numbersIn(node: unknown, path: string): (readonly [string, number])[] {
  if (typeof node === 'number') return [[path, node]];
  if (typeof node !== 'object' || node === null) return [];
  return Object.entries(node).flatMap(([key, value]) => {
    const name = Array.isArray(node) ? (value as { name: string }).name : key;
    return numbersIn(value, `${path}.${name}`);
  });
}

/** Follows a result to what it was computed from in the end. */
function endsOf(steps: readonly WorkingStep[], result: string): Set<string> {
  const byResult = new Map(steps.map((step) => [step.result, step]));
  const ends = new Set<string>();
  const seen = new Set<string>();
  const follow = (name: string) => {
    if (seen.has(name)) return;
    seen.add(name);
    const step = byResult.get(name);
    if (step === undefined) ends.add(name);
    else for (const origin of Object.values(step.from)) follow(origin);
  };
  follow(result);
  return ends;
}

type Conditions = Partial<TextbookCycleRequest>;
const compressions: readonly (readonly [string, (isentropic: number) => Conditions])[] = [
  ['efficiency given', () => ({ isentropicEfficiency: 0.55 })],
  ['discharge temperature given', (isentropic) => ({ dischargeTemperature: isentropic + 25 })],
];
const optionsOf = ({ at, coldZero }: LevelsOf): Conditions => ({
  deadState: at(295),
  sinkTemperature: at(300),
  sourceTemperature: at(283),
  referenceState: coldZero,
});
function requestsOf(levels: LevelsOf): readonly (readonly [string, Conditions])[] {
  const { at, pressureAt } = levels;
  return [
    [
      'superheat and subcooling',
      { evaporating: at(270), condensing: at(312), superheat: 7, subcooling: 4, ...optionsOf(levels) },
    ],
    ['states on the line', { evaporating: at(262), condensing: at(305), superheat: 0, subcooling: 0 }],
    [
      'pressures and temperatures given',
      {
        evaporatingPressure: pressureAt(263),
        condensingPressure: pressureAt(302),
        suctionTemperature: at(289),
        liquidTemperature: at(278),
      },
    ],
    [
      'wet gas',
      { evaporating: at(268), condensing: at(318), suctionQuality: 0.93, subcooling: 2, sinkTemperature: at(300) },
    ],
    [
      'pressure lost',
      {
        evaporating: at(270),
        condensing: at(312),
        superheat: 7,
        subcooling: 0,
        suctionPressure: pressureAt(270, 0.9),
        liquidPressure: pressureAt(312, 0.95),
        massFlow: 0.02,
      },
    ],
    [
      'heat exchanger by effectiveness, displacement',
      {
        evaporating: at(270),
        condensing: at(312),
        superheat: 3,
        subcooling: 2,
        heatExchangerEffectiveness: 0.4,
        displacement: 2e-3,
        volumetricEfficiency: 0.8,
        ...optionsOf(levels),
      },
    ],
    [
      'heat exchanger by temperature, pressure lost, displacement alone',
      {
        evaporating: at(270),
        condensing: at(312),
        evaporatorOutletTemperature: at(274),
        liquidTemperature: at(303),
        suctionTemperatureAfterExchanger: at(289),
        suctionPressure: pressureAt(270, 0.95),
        displacement: 2e-3,
      },
    ],
    [
      'dry saturated gas and liquid into a heat exchanger, cooling capacity',
      {
        evaporating: at(268),
        condensing: at(310),
        superheat: 0,
        subcooling: 0,
        heatExchangerEffectiveness: 1,
        coolingCapacity: 3500,
      },
    ],
    [
      'heating capacity',
      {
        evaporating: at(262),
        condensing: at(305),
        superheat: 4,
        subcooling: 1,
        heatingCapacity: 900,
        ...optionsOf(levels),
      },
    ],
    [
      'power of the shaft',
      { evaporating: at(262), condensing: at(305), superheat: 4, subcooling: 1, compressorPower: 350 },
    ],
  ];
}

describe.each([...refrigerantNames])('working of the textbook cycle, %s', (fluid) => {
  describe.each(requestsOf(levelsOf(fluid)))('%s', (_what, given) => {
    it.each(compressions)('%s', (_how, compression) => {
      const conditions = { refrigerant: fluid, ...given };
      const isentropic = textbookCycle({ ...conditions, isentropicEfficiency: 1 }).points[1].temperature;
      const request = { ...conditions, ...compression(isentropic) } as TextbookCycleRequest;
      const cycle = textbookCycle(request);
      const steps = textbookCycleWorking(request, cycle);
      const values = expectStepsHold(steps);
      for (const [path, value] of numbersIn(cycle, 'cycle')) {
        expect(values.has(path), path).toBe(true);
        expect(values.get(path), path).toBe(value);
      }
      const keys = Object.keys(request).filter((key) => typeof request[key as keyof typeof request] === 'number');
      const allowed = new Set([...keys, 'deadState', 'volumetricEfficiency'].map((key) => `request.${key}`));
      for (const { result } of steps) {
        for (const end of endsOf(steps, result)) expect(allowed, `${result} from ${end}`).toContain(end);
      }
      const needed = keys.filter((key) => !/^(deadState|sinkTemperature|sourceTemperature)$/.test(key));
      // Where pressure is lost before the compressor, the evaporator shapes state 4 alone.
      const last = ['cycle.heatingCop', 'cycle.points.evaporatorInlet.entropy', 'cycle.perSecond.heatingCapacity'];
      const ends = new Set(last.flatMap((name) => [...endsOf(steps, name)]));
      for (const key of needed) expect(ends, 'all that shapes the cycle').toContain(`request.${key}`);
    });
  });
});

it('stands in the order in which a student hands it in', () => {
  const request = { refrigerant: 'R600a', evaporating: 270, condensing: 312, superheat: 7, subcooling: 4 };
  const asked = { ...request, isentropicEfficiency: 0.6 };
  const names = textbookCycleWorking(asked, textbookCycle(asked)).map((step) => step.result);
  const order = [
    'cycle.evaporating.pressure',
    'cycle.condensing.pressure',
    'cycle.points.compressorInlet.enthalpy',
    'cycle.points.compressorOutletIsentropic.enthalpy',
    'cycle.points.compressorOutlet.temperature',
    'cycle.points.condenserOutlet.enthalpy',
    'cycle.points.evaporatorInlet.quality',
    'cycle.specificWork',
    'cycle.heatDelivered',
    'cycle.heatingCop',
    'cycle.exergyDestruction.total',
    'cycle.points.compressorInlet.cp',
  ];
  expect(order.map((name) => names.indexOf(name))).toEqual(
    order.map((name) => names.indexOf(name)).sort((a, b) => a - b),
  );
  expect(names).toEqual(expect.arrayContaining(order));
});

describe('working of the operating point', () => {
  const input: OperatingPointInput = {
    fluid: refrigerant('R290'),
    machine: machineFor('R290'),
    sourceTemperature: 287.15,
    waterTemperature: 298.65,
    evaporatorApproach: 9,
    condenserApproach: 11,
    superheat: 6,
    subcooling: 3,
  };
  const doubtOf = (kind: string) => ({
    correction: `machine.known.${kind}Correction`,
    halfWidth: `machine.known.${kind}HalfWidth`,
    place: `engine.machine${kind}Doubt`,
  });
  const machine = {
    parameters: Object.fromEntries(hermeticParameters.map((name) => [name, `machine.compressor.${name}`])) as Record<
      HermeticParameter,
      string
    >,
    ratedSupply: { frequency: 'machine.rated.frequency', voltage: 'machine.rated.voltage' },
    supply: { frequency: 'machine.supply.frequency', voltage: 'machine.supply.voltage' },
    surroundings: 'room.coldest',
    doubt: { flow: doubtOf('Flow'), power: doubtOf('Power') },
  };
  const origins = {
    sourceTemperature: 'room.temperature',
    waterTemperature: 'tank.waterTemperature',
    evaporatorApproach: 'exchangers.evaporatorApproach',
    condenserApproach: 'exchangers.condenserApproach',
    superheat: 'exchangers.superheat',
    subcooling: 'exchangers.subcooling',
    machine,
    suctionPressureLimit: 'exchangers.suctionPressureLimit',
  };

  /** A machine whose shell loses nearly all its heat: the gas leaves wet. */
  const wet: OperatingPointInput = {
    ...input,
    fluid: refrigerant('R600a'),
    machine: { ...machineFor('R600a', { shellConductance: 60, dischargeCoolingUnits: 3 }), surroundings: 278 },
    superheat: 0,
  };
  const known: OperatingPointInput = { ...input, machine: machineWithPoint('R290') };
  const limited: OperatingPointInput = { ...input, suctionPressureLimit: 3.6e5 };

  it.each([
    ['dry discharge', input, null],
    ['wet discharge', wet, expect.any(Number)],
    ['a blend', { ...input, fluid: refrigerant('R407C'), machine: machineFor('R407C') }, null],
    ['something known of the machine', known, null],
    ['a valve that limits the suction pressure', limited, null],
  ])('%s: each step holds; inputs come from the design or from another step', (_what, given, quality) => {
    const result = operatingPoint(given);
    expect(result.points[2].quality).toEqual(quality);
    const steps = operatingPointWorking(given, result, origins);
    const values = expectStepsHold(steps);
    for (const { result: name } of steps) {
      for (const end of endsOf(steps, name)) expect(end).toMatch(/^(room|tank|exchangers|machine|engine)\./);
    }
    for (const point of result.points) {
      for (const property of ['temperature', 'pressure', 'enthalpy', 'entropy', 'density', 'quality'] as const) {
        const path = `operating.points.${point.name}.${property}`;
        expect(values.get(path) ?? null, path).toBe(point[property]);
      }
    }
    expect(values.get('operating.heatDelivered')).toBe(result.heatDelivered);
    expect(values.get('operating.dischargeTemperature')).toBe(result.dischargeTemperature);
    expect(values.get('operating.evaporatingPressure')).toBe(result.evaporating.pressure);
    expect(values.get('operating.condensingPressure')).toBe(result.condensing.pressure);
  });
});
