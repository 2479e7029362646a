// The steps of a comparison that any loop has, of real parts or of a textbook: the lift between its two levels, each pressure
// above the air of the place, and that a single substance has no glide.

import { gaugePressureOf, temperatureLift } from '../../../loop/index.ts';
import { glideOf } from '../../../matter/refrigerants/index.ts';
import { type StepInput, type WorkingStep, workingStep } from '../../../quantities/index.ts';

/** A dew temperature [K] and its pressure [Pa], each with the step it came from. */
export interface TracedLevel {
  readonly temperature: StepInput;
  readonly pressure: StepInput;
  /** Name of the glide's step where the fluid has none; a blend's stands in the working of its loop. */
  readonly noGlide: string | undefined;
}

/**
 * @param prefix       put before each name: 'cycle' gives 'cycle.temperatureLift'
 * @param evaporating  the lower level
 * @param condensing   the upper one
 * @param atmosphere   air pressure of the place [Pa], with where it came from
 */
export function liftAndGaugeSteps(
  prefix: string,
  evaporating: TracedLevel,
  condensing: TracedLevel,
  atmosphere: StepInput,
): readonly WorkingStep[] {
  const { temperature: T_e } = evaporating;
  const { temperature: T_c } = condensing;
  const gauge = (name: string, p: StepInput) =>
    workingStep(`${prefix}.${name}`, 'loop.gaugePressure', gaugePressureOf(p[0], atmosphere[0]), {
      p,
      p_atm: atmosphere,
    });
  return [
    ...noGlideSteps(evaporating),
    ...noGlideSteps(condensing),
    workingStep(`${prefix}.temperatureLift`, 'loop.temperatureLift', temperatureLift(T_c[0], T_e[0]), { T_c, T_e }),
    gauge('evaporatingGaugePressure', evaporating.pressure),
    gauge('condensingGaugePressure', condensing.pressure),
  ];
}

/** A single substance boils and condenses at one temperature. */
function noGlideSteps({ temperature: T, noGlide }: TracedLevel): readonly WorkingStep[] {
  if (noGlide === undefined) return [];
  return [workingStep(noGlide, 'refrigerants.glide', glideOf(T[0], T[0]), { T_dew: T, T_bubble: T })];
}
