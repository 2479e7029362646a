// The small parts that the workings of both sizings are put together from: a step, an input with its origin, and the
// properties of water at a film.

import type { WorkingStep } from '../../quantities/index.ts';
import type { WaterFilmProperties } from './water-film.ts';

/** A number put in and, unless it is a constant of the model, the design path or step it came from. */
export type Input = readonly [value: number, from?: string];

export type NamedInputs = Readonly<Record<string, Input>>;

/** A step from inputs by symbol. */
export function workingStep(result: string, formula: string, value: number, given: NamedInputs): WorkingStep {
  const entries = Object.entries(given);
  return {
    result,
    formula,
    inputs: Object.fromEntries(entries.map(([symbol, [number]]) => [symbol, number])),
    from: Object.fromEntries(entries.flatMap(([symbol, [, from]]) => (from === undefined ? [] : [[symbol, from]]))),
    value,
  };
}

/** One number of a record, with its origin from the record of origins of the same keys. */
export function inputFrom<Key extends string>(
  values: Readonly<Record<Key, number>>,
  origins: Readonly<Record<Key, string>>,
  key: Key,
): Input {
  return [values[key], origins[key]];
}

/** Properties of water at `<prefix>.temperature`: their steps, and each as an input by its usual symbol. */
export function waterSteps(water: WaterFilmProperties, S: Input, prefix: string) {
  const own = (name: string) => `${prefix}.${name}`;
  const T: Input = [water.temperature, own('temperature')];
  const beta: Input = [water.expansion, own('expansion')];
  const rho: Input = [water.density, own('density')];
  const c_p: Input = [water.heatCapacity, own('heatCapacity')];
  const mu: Input = [water.viscosity, own('viscosity')];
  const k: Input = [water.conductivity, own('conductivity')];
  const Pr: Input = [water.prandtl, own('prandtl')];
  const steps: readonly WorkingStep[] = [
    workingStep(own('expansion'), 'water.expansion', water.expansion, { T, S }),
    workingStep(own('density'), 'water.density', water.density, { T, S }),
    workingStep(own('heatCapacity'), 'water.heatCapacity', water.heatCapacity, { T, S }),
    workingStep(own('viscosity'), 'water.viscosity', water.viscosity, { T, S }),
    workingStep(own('conductivity'), 'water.conductivity', water.conductivity, { T, S }),
    workingStep(own('prandtl'), 'exchanger.prandtl', water.prandtl, { mu, c_p, k }),
  ];
  return { steps, inputs: { beta, rho, c_p, mu, k, Pr } };
}
