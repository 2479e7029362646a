// What the workings of both sizings share: an assumption as an input, and the properties of water at a film.

import { type StepInput, type WorkingStep, workingStep } from '../../quantities/index.ts';
import type { WaterFilmProperties } from './water-film.ts';

/** One number of a record, with its origin from the record of origins of the same keys. */
export function inputFrom<Key extends string>(
  values: Readonly<Record<Key, number>>,
  origins: Readonly<Record<Key, string>>,
  key: Key,
): StepInput {
  return [values[key], origins[key]];
}

/** Properties of water at `<prefix>.temperature`: their steps, and each as an input by its usual symbol. */
export function waterSteps(water: WaterFilmProperties, S: StepInput, prefix: string) {
  const own = (name: string) => `${prefix}.${name}`;
  const T: StepInput = [water.temperature, own('temperature')];
  const beta: StepInput = [water.expansion, own('expansion')];
  const rho: StepInput = [water.density, own('density')];
  const c_p: StepInput = [water.heatCapacity, own('heatCapacity')];
  const mu: StepInput = [water.viscosity, own('viscosity')];
  const k: StepInput = [water.conductivity, own('conductivity')];
  const Pr: StepInput = [water.prandtl, own('prandtl')];
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
