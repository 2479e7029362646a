// The working: each step's number is what its formula gives from the numbers put in, and every number put in is either
// given from outside or stands in the result under the name it is said to come from.

import { describe, expect, it } from 'vitest';
import {
  loopFormulas,
  type OperatingPointInput,
  operatingPoint,
  operatingPointWorking,
  textbookCycle,
  textbookCycleWorking,
} from '../../src/loop/index.ts';
import { refrigerant, refrigerantFormulas } from '../../src/matter/refrigerants/index.ts';
import { compressorFormulas } from '../../src/parts/compressor/index.ts';
import type { WorkingStep } from '../../src/quantities/index.ts';

const formulas = new Map(
  [...loopFormulas, ...compressorFormulas, ...refrigerantFormulas].map((formula) => [formula.id, formula]),
);

/** What only the fluid's own equation gives; of the other numbers put in, every one has an origin. */
const ofTheEquation = ['R', 'phi', 'phi_d', 'phi_t', 'h_zero', 's_zero', 'rho'];

function expectStepsHold(steps: readonly WorkingStep[]): void {
  expect(steps.length).toBeGreaterThan(8);
  const values = new Map(steps.map((step) => [step.result, step.value]));
  expect(values.size).toBe(steps.length);
  for (const step of steps) {
    const formula = formulas.get(step.formula);
    expect(formula, step.formula).toBeDefined();
    const symbols = Object.keys(step.inputs);
    expect([...symbols].sort()).toEqual(Object.keys(formula!.symbols).sort());
    const own = step.formula.startsWith('refrigerants.') ? ofTheEquation : [];
    expect(Object.keys(step.from).sort(), step.result).toEqual(
      symbols.filter((symbol) => !own.includes(symbol)).sort(),
    );
    const value = formula!.compute(step.inputs);
    const scale = Math.max(Math.abs(value), Math.abs(step.value), 1e-6);
    expect(Math.abs(value - step.value), step.result).toBeLessThan(1e-9 * scale);
    for (const [symbol, origin] of Object.entries(step.from)) {
      const source = values.get(origin);
      if (source === undefined) continue;
      // A sign may be turned: what leaves one body enters another.
      const gap = Math.abs(Math.abs(step.inputs[symbol]!) - Math.abs(source));
      expect(gap, `${step.result}: ${symbol} from ${origin}`).toBeLessThanOrEqual(1e-9 * Math.abs(source));
    }
  }
}

/** Value at a dotted path; a point of a list by its name. */
function valueAt(root: unknown, path: string): unknown {
  return path.split('.').reduce((node: unknown, key) => {
    if (Array.isArray(node)) return node.find((entry) => entry.name === key);
    return (node as Record<string, unknown> | undefined)?.[key];
  }, root);
}

describe('working of the textbook cycle', () => {
  const request = { refrigerant: 'R600a', evaporating: 270, condensing: 312, superheat: 7, subcooling: 4 };
  const options = { deadState: 295, sinkTemperature: 300, sourceTemperature: 283, referenceState: 'ashrae' as const };

  it.each([
    ['efficiency given', { isentropicEfficiency: 0.55 }],
    ['discharge temperature given', { dischargeTemperature: 345 }],
  ])('%s', (_what, compression) => {
    const cycle = textbookCycle({ ...request, ...options, ...compression });
    const steps = textbookCycleWorking(cycle, 'cycle');
    expectStepsHold(steps);
    for (const step of steps) {
      expect(step.value, step.result).toBe(valueAt({ cycle }, step.result));
      for (const [symbol, origin] of Object.entries(step.from)) {
        const value = valueAt({ cycle }, origin);
        expect(Math.abs(step.inputs[symbol]!), `${step.result} ${symbol}`).toBe(Math.abs(value as number));
      }
    }
  });
});

describe('working of the operating point', () => {
  const input: OperatingPointInput = {
    fluid: refrigerant('R290'),
    compressor: {
      displacement: 5.6e-6,
      speed: 48.5,
      clearanceRatio: 0.03,
      reexpansionExponent: 1.1,
      fillingFactor: 0.88,
      compressionEfficiency: 0.58,
      frictionPressure: 25e3,
      shellHeatShare: 0.35,
    },
    sourceTemperature: 287.15,
    waterTemperature: 298.65,
    evaporatorApproach: 9,
    condenserApproach: 11,
    superheat: 6,
    subcooling: 3,
  };
  const model = Object.fromEntries(
    Object.keys(input.compressor).map((key) => [key, `machine.compressor.${key}`]),
  ) as Record<keyof typeof input.compressor, string>;
  const origins = {
    sourceTemperature: 'room.temperature',
    waterTemperature: 'tank.waterTemperature',
    evaporatorApproach: 'exchangers.evaporatorApproach',
    condenserApproach: 'exchangers.condenserApproach',
    superheat: 'exchangers.superheat',
    subcooling: 'exchangers.subcooling',
    model,
  };

  /** A compressor whose shell loses nearly all its heat: the gas leaves wet. */
  const wet: OperatingPointInput = {
    ...input,
    fluid: refrigerant('R600a'),
    compressor: { ...input.compressor, compressionEfficiency: 0.95, frictionPressure: 0, shellHeatShare: 0.9 },
    superheat: 0,
  };

  it.each([
    ['dry discharge', input, null],
    ['wet discharge', wet, expect.any(Number)],
  ])('%s: each step holds; inputs come from the design or from another step', (_what, given, quality) => {
    const result = operatingPoint(given);
    expect(result.points[2].quality).toEqual(quality);
    const steps = operatingPointWorking(given, result, origins);
    expectStepsHold(steps);
    const values = new Map(steps.map((step) => [step.result, step.value]));
    for (const step of steps) {
      for (const origin of Object.values(step.from)) {
        const isDesign = /^(room|tank|exchangers|machine)\./.test(origin);
        const isState = /^operating\.points\.\w+\.\w+$/.test(origin);
        expect(isDesign || isState || values.has(origin), origin).toBe(true);
      }
    }
    expect(values.get('operating.heatDelivered')).toBe(result.heatDelivered);
    expect(values.get('operating.dischargeTemperature')).toBe(result.dischargeTemperature);
    expect(values.get('operating.evaporatingPressure')).toBe(result.evaporating.pressure);
    expect(values.get('operating.condensingPressure')).toBe(result.condensing.pressure);
  });
});
