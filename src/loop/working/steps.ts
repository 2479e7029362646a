// What the steps of a textbook cycle share: everything they are made from, how levels and states are named, and the steps
// of one state from how it was found.

import {
  type CaloricShift,
  type DomeOrigins,
  internalEnergyWorking,
  type Refrigerant,
  type StateOrigins,
  stateWorking,
} from '../../matter/refrigerants/index.ts';
import { InputError } from '../../numerics/index.ts';
import { type StepInput, type WorkingStep, workingStep } from '../../quantities/index.ts';
import type { CheckedCycleRequest } from '../cycle-request.ts';
import type { CyclePoint, CyclePointName, TextbookCycle } from '../cycle-result.ts';
import type { CycleLevels } from '../cycle-states.ts';

export type LevelName = keyof CycleLevels;

/** Everything the steps are made from. */
export interface Solved {
  readonly asked: CheckedCycleRequest;
  readonly cycle: TextbookCycle;
  readonly fluid: Refrigerant;
  readonly levels: CycleLevels;
  readonly shift: CaloricShift;
  readonly own: (name: string) => string;
}

export function placeOf({ own }: Solved, point: CyclePoint): string {
  return own(`points.${point.name}`);
}

/** Where no pressure is lost, the ends of an exchanger share one level, under the name of the first. */
export function levelName({ levels }: Solved, level: LevelName): LevelName {
  if (level === 'suction' && levels.suction === levels.evaporating) return 'evaporating';
  if (level === 'liquid' && levels.liquid === levels.condensing) return 'condensing';
  return level;
}

export function domeOf(solved: Solved, level: LevelName): DomeOrigins {
  const prefix = solved.own(levelName(solved, level));
  const lines = { saturation: solved.levels[level], prefix, temperature: `${prefix}.temperature` };
  return isBlend(solved.fluid) ? { ...lines, bubbleTemperature: `${prefix}.bubbleTemperature` } : lines;
}

/** Whether the two sides of its dome have two temperatures at one pressure. */
export function isBlend({ bubbleAndDew }: Refrigerant): boolean {
  return bubbleAndDew !== undefined;
}

export const levelOfPoint: Readonly<Record<CyclePoint['name'], LevelName>> = {
  compressorInlet: 'suction',
  compressorOutletIsentropic: 'condensing',
  compressorOutlet: 'condensing',
  condenserOutlet: 'liquid',
  evaporatorInlet: 'evaporating',
  evaporatorOutlet: 'evaporating',
  expansionInlet: 'liquid',
};

/** Name of a key of the request as an origin. */
export function requested(key: string): string {
  return `request.${key}`;
}

/** Pressure of a state, what the equation gives from how it was found, and its internal energy. */
export function pointSteps(
  solved: Solved,
  point: CyclePoint,
  found: 'temperature' | 'enthalpy' | 'entropy' | 'quality',
): readonly WorkingStep[] {
  const at = placeOf(solved, point);
  const dome = domeOf(solved, levelOfPoint[point.name]);
  const pressure = `${at}.pressure`;
  const origins = { pressure, [found]: `${at}.${found}` } as unknown as StateOrigins;
  return [
    workingStep(pressure, 'loop.pressureKept', point.pressure, { p_in: [point.pressure, `${dome.prefix}.pressure`] }),
    ...stateWorking(solved.fluid, point, at, origins, point.quality === null ? undefined : dome, solved.shift),
    internalEnergyWorking(point, at, pressure),
  ];
}

/** A state of the cycle by its name. @throws InputError where the cycle has no such state */
export function pointNamed({ cycle }: Solved, name: CyclePointName): CyclePoint {
  const point = cycle.points.find((candidate) => candidate.name === name);
  if (point === undefined) throw new InputError('points', 'no such point', `a point named ${name}`);
  return point;
}

/** Enthalpy and entropy of a state as numbers put in. */
export function enthalpyOf(solved: Solved, point: CyclePoint): StepInput {
  return [point.enthalpy, `${placeOf(solved, point)}.enthalpy`];
}

export function entropyOf(solved: Solved, point: CyclePoint): StepInput {
  return [point.entropy, `${placeOf(solved, point)}.entropy`];
}
