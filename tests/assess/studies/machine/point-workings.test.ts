// The steps behind one running point between two temperatures: each holds, each number goes back to what was asked, what was given or
// the model, each number shown has its step, and the coefficients' own values are carried to the gas asked for.

import { evaluate } from 'mathjs';
import { describe, expect, test } from 'vitest';
import { allFormulas, assessMachinePoints, type MachinePoint } from '../../../../src/assess/index.ts';
import { fieldRecord } from '../../../../src/design/index.ts';
import { numbersPutIn, printedStep } from '../../../../src/quantities/index.ts';
import { expectTraced } from '../../../traced-steps.ts';
import { modelsOwn, ofTheEquation } from '../../working/own-numbers.ts';
import { alone, fortkamp, kelvin, type Part, straightSet } from './machines.ts';

const byCoefficients: Part = {
  madeFor: 'R134a',
  displacement: '6.5 cm3 ± 10 %',
  coefficients: [straightSet('massFlow', 4, 0.2, 'kg/h'), straightSet('power', 150, 3, 'W')],
};

function pointOf(compressor: Part, evaporating: number, condensing: number, returnGas?: number): MachinePoint {
  const outcome = assessMachinePoints(alone(compressor), {
    at: [{ evaporating: kelvin(evaporating), condensing: kelvin(condensing) }],
    basis: returnGas === undefined ? {} : { returnGas: kelvin(returnGas) },
    workings: true,
  });
  if (!outcome.ok) throw new Error(JSON.stringify(outcome));
  const [point] = outcome.points;
  if (point === undefined || 'error' in point) throw new Error(JSON.stringify(point));
  return point;
}

/** Numbers of a point and the step of each. */
const steps = {
  capacity: 'point.heatTaken',
  power: 'point.compressor.power',
  massFlow: 'point.compressor.massFlow',
  current: 'point.compressor.current',
  dischargeTemperature: 'point.dischargeTemperature',
  heat: 'point.heatDelivered',
  shellHeat: 'point.compressor.shellHeat',
  volumetricEfficiency: 'point.compressor.volumetricEfficiency',
  overallEfficiency: 'point.compressor.overallEfficiency',
  motorLoad: 'point.compressor.motor.load',
  evaporatingPressure: 'point.evaporatingPressure',
  condensingPressure: 'point.condensingPressure',
} as const;

const subjects = [
  ['ten coefficients, at another gas', pointOf(byCoefficients, -22, 52, 5)],
  ['a table', pointOf(fortkamp, -15, 35)],
  ['a displacement alone', pointOf({ madeFor: 'R290', displacement: '8 cm3' }, -5, 42)],
] as const;

describe.each(subjects)('%s', (_name, point) => {
  const workings = point.workings!;
  const absent = workings.flatMap(({ inputs, from }) =>
    Object.keys(inputs).filter((symbol) => inputs[symbol] === 0 && !(symbol in from)),
  );
  const isGiven = (origin: string) => fieldRecord(origin) !== undefined || /^(asked|engine)\b/.test(origin);
  const values = () => expectTraced(workings, allFormulas, isGiven, [...modelsOwn, ...ofTheEquation, ...absent]);

  test('every step holds, and every number shown has one', () => {
    const known = values();
    for (const [name, step] of Object.entries(steps)) {
      const { likely } = point[name as keyof typeof steps];
      expect(Math.abs(known.get(step)! - likely), name).toBeLessThanOrEqual(1e-9 * Math.abs(likely));
    }
  });

  test('every step prints with numbers that lead to its result', () => {
    const byId = new Map(allFormulas.map((formula) => [formula.id, formula]));
    for (const each of workings) {
      const printed = printedStep(each, byId.get(each.formula)!, 'metric');
      const value = evaluate(numbersPutIn(printed)) as number;
      expect(value.toPrecision(5), each.result).toBe(Number(printed.value.text).toPrecision(5));
    }
  });
});

test('what the coefficients say themselves: the polynomial, three quarters of the change of density, the value carried', () => {
  const [, point] = subjects[0];
  const byName = new Map(point.workings!.map((step) => [step.result, step]));
  const [flow, power] = point.polynomial!;
  expect(byName.get('polynomial.0.own')!.value).toBe(flow!.own);
  expect(flow!.own).toBeCloseTo((4 + 1.3 * 0.2) / 3600, 12);
  expect(power!.own).toBeCloseTo(150 + 1.3 * 3, 9);
  const ratio = byName.get('polynomial.0.flowRatio')!;
  expect(ratio.inputs.F).toBe(0.75);
  expect(ratio.value).toBeCloseTo(1 + 0.75 * (ratio.inputs.rho_new! / ratio.inputs.rho_map! - 1), 12);
  expect(byName.get('polynomial.0.corrected')!.value).toBe(flow!.corrected);
  expect(flow!.corrected! / flow!.own).toBeCloseTo(ratio.value, 12);
  expect(byName.get('polynomial.1.corrected')!.value).toBe(power!.corrected);
});

test.each(subjects)(
  '%s: the contributions of the given values add up to the correction, and to that of the steps',
  (_name, point) => {
    const { parts, ...corrections } = point.correction;
    const byName = new Map(point.workings!.map((step) => [step.result, step.value]));
    for (const kind of ['flow', 'power'] as const) {
      const own = parts.filter(({ of }) => of === kind);
      const sum = own.reduce((total, { weight, miss }) => total + weight * miss, 0);
      expect(Math.abs(Math.expm1(sum) - corrections[kind])).toBeLessThan(1e-9);
      expect(Math.abs(byName.get(`point.doubt.${kind}.correction`)! - corrections[kind])).toBeLessThan(1e-9);
      for (const { path, miss, contribution, weight } of own) {
        const { given, modelled } = point.residuals.find((residual) => residual.path === path)!;
        expect(Math.abs(Math.log(given / modelled) - miss)).toBeLessThan(1e-9);
        expect(contribution).toBe(weight * miss);
      }
    }
  },
);

test('steps are told only where they are asked for', () => {
  const outcome = assessMachinePoints(alone(fortkamp), {
    at: [{ evaporating: kelvin(-15), condensing: kelvin(35) }],
    basis: {},
  });
  expect(outcome.ok && outcome.points.every((point) => !('workings' in point))).toBe(true);
});
