// What is printed is complete: the text of every step of every demo design, in both views, and of textbook cycles of every
// refrigerant, evaluated by the general-purpose mathematics library mathjs from the printed numbers alone, gives the printed
// result to its last digit.

import { all, create, type EvalFunction } from 'mathjs';
import { describe, expect, test } from 'vitest';
import { assessDesign, formulaById } from '../../src/assess/index.ts';
import { type TextbookCycleRequest, textbookCycle, textbookCycleWorking } from '../../src/loop/index.ts';
import { refrigerant, refrigerantNames } from '../../src/matter/refrigerants/index.ts';
import { KettlefinError } from '../../src/numerics/index.ts';
import {
  numbersPutIn,
  type PrintedStep,
  printedStep,
  type UnitView,
  type WorkingStep,
} from '../../src/quantities/index.ts';
import { changedDesign, demoTexts } from '../designs.ts';

const math = create(all!, {});
const compiled = new Map<string, EvalFunction>();

function evaluated(expression: string, values: Record<string, number>): number {
  let known = compiled.get(expression);
  if (known === undefined) {
    known = math.compile(expression);
    compiled.set(expression, known);
  }
  return Number(known.evaluate(values));
}

/** Half a unit of the last digit of a printed number, with a little for the rounding of the comparison itself. */
function halfOfLastDigit(text: string): number {
  const [mantissa, exponent = '0'] = text.split('e');
  const decimals = mantissa!.split('.')[1]?.length ?? 0;
  return 0.5 * 10 ** (Number(exponent) - decimals) * (1 + 1e-9);
}

function expectLeadsToItsResult(step: PrintedStep): void {
  const values = Object.fromEntries(step.inputs.map(({ symbol, value }) => [symbol, Number(value.text)]));
  const printed = Number(step.value.text);
  const found = evaluated(step.expression, values);
  expect(
    Math.abs(found - printed),
    `${step.result}: ${numbersPutIn(step)} = ${found}, printed ${printed}`,
  ).toBeLessThan(halfOfLastDigit(step.value.text));
  for (const { value, symbol } of step.inputs) expect(value.text, symbol).toMatch(/^-?\d+(\.\d+)?(e-?\d+)?$/);
}

/** How near the printed result is to the engine's own, which it stands for. */
function expectIsTheStepsValue(step: WorkingStep, { value }: PrintedStep): void {
  const noise = 1e-9 * Math.max(...Object.values(step.inputs).map(Math.abs));
  expect(Math.abs(Number(value.text) - step.value), step.result).toBeLessThan(halfOfLastDigit(value.text) + noise);
}

function printedAll(steps: readonly WorkingStep[], view: UnitView): readonly PrintedStep[] {
  return steps.map((step) => {
    const printed = printedStep(step, formulaById(step.formula)!, view);
    expectIsTheStepsValue(step, printed);
    return printed;
  });
}

const reef = demoTexts['reef-in-the-study.json']!;
const designs: Readonly<Record<string, string>> = {
  ...demoTexts,
  'a blend in place of its refrigerant': changedDesign(reef, { 'machine.refrigerant': 'R407C' }),
};

describe.each(Object.keys(designs))('%s', (file) => {
  test.each(['metric', 'us'] as const)('%s', (view) => {
    const outcome = assessDesign(designs[file]!, view);
    if (!outcome.ok) throw new Error(JSON.stringify(outcome));
    const steps = printedAll(outcome.assessment.workings, view);
    expect(steps.length).toBeGreaterThan(500);
    for (const step of steps) expectLeadsToItsResult(step);
  });
});

type Compression = (level: Partial<TextbookCycleRequest>) => Partial<TextbookCycleRequest>;

describe.each([...refrigerantNames])('textbook cycles of %s', (fluid) => {
  const { critical, limits } = refrigerant(fluid);
  // From 0.6 to 0.97 of the critical temperature; carbon dioxide is solid at 0.71 of its own, so drawn together above it.
  const lowest = Math.max(0.6, limits.temperatureMin / critical.temperature + 0.01);
  const ofCritical = (share: number) => critical.temperature * (lowest + ((share - 0.6) * (0.97 - lowest)) / 0.37);
  const levels: readonly Partial<TextbookCycleRequest>[] = [
    { evaporating: ofCritical(0.68), condensing: ofCritical(0.82), superheat: 5, subcooling: 5 },
    {
      evaporating: ofCritical(0.7),
      condensing: ofCritical(0.86),
      superheat: 0,
      subcooling: 0,
      // At −40 °C water is ice.
      referenceState: limits.temperatureMin < 233.15 ? 'ashrae' : 'normalBoilingPoint',
    },
    { evaporating: ofCritical(0.74), condensing: ofCritical(0.76), superheat: 0.1, subcooling: 0.1 },
    widest(),
    { evaporating: ofCritical(0.7), condensing: ofCritical(0.85), suctionQuality: 0.9, subcooling: 1 },
    {
      evaporating: ofCritical(0.7),
      condensing: ofCritical(0.85),
      superheat: 4,
      subcooling: 2,
      heatExchangerEffectiveness: 0.5,
      sinkTemperature: ofCritical(0.8),
      sourceTemperature: ofCritical(0.75),
      massFlow: 0.01,
    },
  ];

  /** The widest of some cycles whose discharge gas the fluid's equation still describes, and which still cools. */
  function widest(): Partial<TextbookCycleRequest> {
    const wide = [
      [0.6, 0.97],
      [0.7, 0.97],
      [0.8, 0.96],
      [0.84, 0.94],
    ].map(([low, high]) => ({
      evaporating: ofCritical(low!),
      condensing: ofCritical(high!),
      superheat: 12,
      subcooling: 8,
    }));
    return wide.find(isDescribed) ?? wide.at(-1)!;
  }

  function isDescribed(level: Partial<TextbookCycleRequest>): boolean {
    try {
      textbookCycle({ refrigerant: fluid, ...level, isentropicEfficiency: 0.6 });
      textbookCycle({ refrigerant: fluid, ...level, dischargeTemperature: withoutLosses(level) + 14 });
      return true;
    } catch (error) {
      if (error instanceof KettlefinError) return false;
      throw error;
    }
  }

  /** Temperature of the gas that a compressor without losses gives [K]. */
  function withoutLosses(level: Partial<TextbookCycleRequest>): number {
    return textbookCycle({ refrigerant: fluid, ...level, isentropicEfficiency: 1 }).points[2].temperature;
  }

  test.each([
    ['efficiency given', () => ({ isentropicEfficiency: 0.6 })],
    ['no losses', () => ({ isentropicEfficiency: 1 })],
    ['discharge temperature given', (level) => ({ dischargeTemperature: withoutLosses(level) + 14 })],
  ] satisfies readonly [string, Compression][])('%s', (_what, compression) => {
    let count = 0;
    for (const level of levels) {
      const request = { refrigerant: fluid, ...level, ...compression(level) } as TextbookCycleRequest;
      const steps = printedAll(textbookCycleWorking(request, textbookCycle(request)), 'us');
      for (const step of steps) expectLeadsToItsResult(step);
      count += steps.length;
    }
    expect(count).toBeGreaterThan(300);
  });
});
