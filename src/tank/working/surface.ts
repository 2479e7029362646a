// The working of what leaves by the open water of a vessel: evaporation, convection, radiation.

import { type StepInput, type WorkingStep, workingStep } from '../../quantities/index.ts';
import type { AirState, HeatPath, SurfaceState } from '../load.ts';
import type { SurfaceLook } from '../water-surface/open-surface.ts';
import type { ConditionInputs } from './steps.ts';

/** What a vessel's steps need of it. */
export interface VesselSteps {
  /** Name that its steps begin with, and where it stands in the design. */
  readonly at: string;
  readonly place: string;
  readonly air: AirState;
  readonly from: ConditionInputs;
  readonly waterSurface: StepInput;
  /** Name of the step of a path of this vessel, by the path's bare name; and the path's heat as the model has it. */
  readonly path: (name: string) => string;
  readonly heat: (name: string) => number;
}

/** Vapour pressures of water and air, latent heat. */
export function airInputs(air: AirState) {
  return {
    p_w: [air.waterVapour, 'tank.air.waterVapour'] as StepInput,
    p_r: [air.roomVapour, 'tank.air.roomVapour'] as StepInput,
    h_fg: [air.latentHeat, 'tank.air.latentHeat'] as StepInput,
  };
}

/** Coefficients of a surface on the way to K, in air of a temperature and vapour pressure. */
export interface SurfaceAir {
  readonly T_r: StepInput;
  readonly p_r: StepInput;
}

type Coefficients = Pick<
  SurfaceState,
  | 'airSpeed'
  | 'quietCoefficient'
  | 'movingAirCoefficient'
  | 'activeCoefficient'
  | 'activeShare'
  | 'factor'
  | 'coefficient'
>;

export function coefficientSteps(
  known: Coefficients,
  look: SurfaceLook,
  name: string,
  { at: _, place, air, from }: VesselSteps,
  over: SurfaceAir,
): readonly WorkingStep[] {
  const { p_w, h_fg } = airInputs(air);
  const v: StepInput = look.airSpeed === undefined ? [known.airSpeed] : [known.airSpeed, `${place}.airSpeed`];
  const own = (part: string, value: number): StepInput => [value, `${name}.${part}`];
  return [
    workingStep(`${name}.quietCoefficient`, 'tank.quietCoefficient', known.quietCoefficient, {
      T_w: from.water,
      ...over,
      p_w,
      p: from.pressure,
    }),
    workingStep(`${name}.movingAirCoefficient`, 'tank.quietInMovingAir', known.movingAirCoefficient, {
      K_q: own('quietCoefficient', known.quietCoefficient),
      v,
      h_fg,
    }),
    workingStep(`${name}.activeCoefficient`, 'tank.activeCoefficient', known.activeCoefficient, { v, h_fg }),
    workingStep(`${name}.coefficient`, 'tank.surfaceCoefficient', known.coefficient, {
      f: [known.factor, `${place}.evaporationFactor`],
      K_q: own('movingAirCoefficient', known.movingAirCoefficient),
      K_a: own('activeCoefficient', known.activeCoefficient),
      a: [known.activeShare, `${place}.surface`],
    }),
  ];
}

/** Evaporation, convection and radiation of the open surface. */
export function surfaceSteps(surface: SurfaceState, look: SurfaceLook, vessel: VesselSteps): readonly WorkingStep[] {
  const { at, air, from, waterSurface, path, heat } = vessel;
  const name = `${at}.surface`;
  const { p_w, p_r, h_fg } = airInputs(air);
  const isOpen = surface.openShare === 1;
  const A: StepInput = isOpen ? waterSurface : [surface.area, `${name}.area`];
  const K: StepInput = [surface.coefficient, `${name}.coefficient`];
  const water = { T_w: from.water, T_r: from.room };
  return [
    ...(isOpen
      ? []
      : [
          workingStep(`${name}.area`, 'tank.shareOfArea', surface.area, {
            s: [surface.openShare, `${vessel.place}.lidOpenShare`],
            A: waterSurface,
          }),
        ]),
    ...coefficientSteps(surface, look, name, vessel, { T_r: from.room, p_r }),
    workingStep(`${name}.evaporation`, 'tank.evaporationRate', surface.evaporation, { K, A, p_w, p_r }),
    workingStep(path('evaporation'), 'tank.evaporationHeat', heat('evaporation'), {
      m_e: [surface.evaporation, `${name}.evaporation`],
      h_fg,
    }),
    workingStep(`${name}.convectionCoefficient`, 'tank.surfaceConvectionCoefficient', surface.convectionCoefficient, {
      K,
      p: from.pressure,
    }),
    workingStep(path('surfaceConvection'), 'tank.surfaceConvection', heat('surfaceConvection'), {
      h_c: [surface.convectionCoefficient, `${name}.convectionCoefficient`],
      A,
      ...water,
    }),
    workingStep(path('surfaceRadiation'), 'tank.surfaceRadiation', heat('surfaceRadiation'), { A, ...water }),
  ];
}

/** Heat of a path by its name; 0 where there is none. */
export function heatIn(paths: readonly HeatPath[], name: string): number {
  return paths.find(({ path }) => path === name)?.heat ?? 0;
}
