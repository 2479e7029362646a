// The chain behind the numbers of a machine that is known by ten coefficients: back to the printed coefficients, through the
// polynomial on its own scale, the unit, what the model misses, and the correction by the points around. The polynomials are
// evaluated by mathjs, and the correction is added up point by point.

import { evaluate } from 'mathjs';
import { describe, expect, test } from 'vitest';
import { type Assessment, allFormulas, assessDesign } from '../../../src/assess/index.ts';
import { fieldRecord } from '../../../src/design/index.ts';
import { chainOf, numbersPutIn, printedStep, type WorkingStep } from '../../../src/quantities/index.ts';
import { demoTexts } from '../../designs.ts';
import { printedSet } from '../../parts/compressor/polynomial/invented-machine.ts';
import { expectTraced } from '../../traced-steps.ts';
import { modelsOwn, ofTheEquation } from './own-numbers.ts';

const assessment = assessed();
const byName = new Map(assessment.workings.map((step) => [step.result, step]));
const flowChain = chainOf(assessment.workings, 'operating.compressor.massFlow');

/** The garage demo, its machine known by sets in °F, lb/h and BTU/h. */
function assessed(): Assessment {
  const design = JSON.parse(demoTexts['frag-tank-cold-garage.json']!);
  design.machine.compressor = {
    madeFor: 'R134a',
    displacement: '6.5 cm3 ± 10 %',
    coefficients: [coefficients('massFlow', 'lb/h'), coefficients('power', 'BTU/h')],
  };
  const outcome = assessDesign(JSON.stringify(design), 'metric');
  if (!outcome.ok) throw new Error(JSON.stringify(outcome));
  return outcome.assessment;
}

function coefficients(of: 'massFlow' | 'power', unit: 'lb/h' | 'BTU/h'): object {
  return {
    of,
    values: printedSet(of, unit, 'fahrenheit').coefficients.join(' '),
    temperatureUnit: 'fahrenheit',
    unit,
    basis: {
      suction: { kind: 'returnGas', returnGas: '32.2 °C' },
      liquid: { kind: 'temperature', temperature: '32.2 °C' },
    },
    evaporatingRange: '-35 to -5 °C',
    condensingRange: '35 to 60 °C',
    frequency: '50 Hz',
    voltage: '230 V',
  };
}

function step(name: string): WorkingStep {
  const found = byName.get(name);
  if (found === undefined) throw new Error(`no step ${name}`);
  return found;
}

test('every step holds and every number has its origin', () => {
  const absent = assessment.workings.flatMap(({ inputs, from }) =>
    Object.keys(inputs).filter((symbol) => inputs[symbol] === 0 && !(symbol in from)),
  );
  const isGiven = (origin: string) => fieldRecord(origin) !== undefined || origin.startsWith('engine.');
  expectTraced(assessment.workings, allFormulas, isGiven, [...modelsOwn, ...ofTheEquation, ...absent]);
});

describe('a value of the coefficients', () => {
  const given = [...byName.values()].filter(({ result }) => /^identified\.given\.\d+$/.test(result));

  test('each of both sets is there, and behind the flow of the loop stand those of the flow', () => {
    const residuals = assessment.machine.residuals;
    expect(given.length).toBe(residuals.length);
    expect(given.length).toBe(60);
    const flows = flowChain.steps.filter(({ result }) => /^identified\.given\.\d+$/.test(result));
    expect(flows.length).toBe(30);
    expect(flowChain.origins).toContain('machine.compressor.coefficients.0.values');
    expect(flowChain.origins).not.toContain('machine.compressor.coefficients.1.values');
  });

  test('is the polynomial of the coefficients as typed, in °F, times the unit', () => {
    const exact = { massFlow: 0.45359237 / 3600, power: 1055.05585262 / 3600 };
    for (const { result, value, from } of given) {
      const printed = step(from.X_set!);
      expect(printed.formula).toBe('compressor.tenCoefficients');
      const [suction, discharge] = [step(printed.from.S!), step(printed.from.D!)];
      expect(suction.inputs).toMatchObject({ a: 1.8, b: 32 });
      const residual = assessment.machine.residuals[Number(result.split('.')[2])]!;
      const set = residual.of as 'massFlow' | 'power';
      const typed = printedSet(set, set === 'massFlow' ? 'lb/h' : 'BTU/h', 'fahrenheit').coefficients;
      const scope = {
        ...Object.fromEntries(typed.map((each, index) => [`C${index + 1}`, each])),
        S: 1.8 * (suction.inputs.T! - 273.15) + 32,
        D: 1.8 * (discharge.inputs.T! - 273.15) + 32,
      };
      const polynomial = evaluate(
        'C1 + C2 S + C3 D + C4 S^2 + C5 S D + C6 D^2 + C7 S^3 + C8 D S^2 + C9 S D^2 + C10 D^3',
        scope,
      );
      expect(value / (polynomial * exact[set])).toBeCloseTo(1, 9);
      expect(value / residual.given).toBeCloseTo(1, 12);
    }
  });

  test('is read at levels of the ranges, ends among them', () => {
    const levels = [...byName.values()].filter(({ result }) => result.startsWith('identified.levels.0.evaporating.'));
    expect(levels.map(({ value }) => Math.round(value * 100) / 100)).toEqual([
      238.15, 244.15, 250.15, 256.15, 262.15, 268.15,
    ]);
    expect(levels[0]!.from).toEqual({
      T_low: 'machine.compressor.coefficients.0.evaporatingRange',
      T_high: 'machine.compressor.coefficients.0.evaporatingRange',
    });
  });
});

describe.each(['flow', 'power'] as const)('the correction of %s', (kind) => {
  test.each(['operating', 'year.january.operating'])('at %s is the sum of weights times misses', (point) => {
    const at = `${point}.doubt.${kind}`;
    const sums = [...byName.values()].filter(({ result }) => result.startsWith(`${at}.sum`));
    const parts = sums.flatMap(({ inputs, from }) =>
      Object.keys(inputs)
        .filter((symbol) => symbol.startsWith('lambda_') && from[symbol.replace('lambda', 'r')] !== undefined)
        .map((symbol) => ({
          weight: inputs[symbol]!,
          miss: inputs[symbol.replace('lambda', 'r')]!,
          from: from[symbol.replace('lambda', 'r')]!,
        })),
    );
    expect(parts.length).toBe(30);
    expect(new Set(parts.map(({ from }) => from)).size).toBe(30);
    const sum = parts.reduce((total, { weight, miss }) => total + weight * miss, 0);
    const correction = step(`${at}.correction`);
    expect(Math.abs(Math.exp(sum) - 1 - correction.value)).toBeLessThan(1e-12);
    expect(Math.abs(correction.value)).toBeGreaterThan(1e-5);
    for (const { miss, from } of parts) {
      const residual = assessment.machine.residuals[Number(from.split('.')[2])]!;
      expect(residual.of).toBe(kind === 'flow' ? 'massFlow' : 'power');
      expect(Math.abs(Math.log(residual.given / residual.modelled) - miss)).toBeLessThan(1e-12);
    }
  });

  test('moves the modelled value to the one shown', () => {
    const shown = kind === 'flow' ? 'massFlow' : 'power';
    const moved = step(`operating.compressor.${shown}`);
    const factor = step(
      Object.values(moved.from).find((from) => byName.get(from)?.formula === 'compressor.factorWithin')!,
    );
    expect(factor.value).toBeCloseTo(1 + step(`operating.doubt.${kind}.correction`).value, 12);
  });
});

test('every step of the chain prints with numbers that lead to its result', () => {
  const byId = new Map(allFormulas.map((formula) => [formula.id, formula]));
  for (const each of flowChain.steps) {
    const printed = printedStep(each, byId.get(each.formula)!, 'metric');
    const value = evaluate(numbersPutIn(printed)) as number;
    expect(value.toPrecision(5), each.result).toBe(Number(printed.value.text).toPrecision(5));
  }
});
