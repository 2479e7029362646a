// The working of what leaves by the open water: evaporation, convection, radiation, air stones, make-up water.

import { dryAirDensity, humidityRatio } from '../../matter/air/index.ts';
import { type StepInput, type WorkingStep, workingStep } from '../../quantities/index.ts';
import type { RectangularTank, TankConditions } from '../description.ts';
import type { AirState, RectangularIntermediates, SurfaceState, TankLoad } from '../load.ts';
import { INDOOR_AIR_SPEED } from '../water-surface/surface.ts';
import { type ConditionInputs, openShareOrigin } from './steps.ts';
import { heatOf } from './totals.ts';

/** Evaporation, convection and radiation of the open surface. */
export function surfaceSteps(
  tank: RectangularTank,
  surface: SurfaceState,
  air: AirState,
  load: TankLoad,
  from: ConditionInputs,
): WorkingStep[] {
  const p_w: StepInput = [air.waterVapour, 'tank.air.waterVapour'];
  const p_r: StepInput = [air.roomVapour, 'tank.air.roomVapour'];
  const h_fg: StepInput = [air.latentHeat, 'tank.air.latentHeat'];
  const A: StepInput = [surface.area, 'tank.surface.area'];
  const K: StepInput = [surface.coefficient, 'tank.surface.coefficient'];
  const water = { T_w: from.water, T_r: from.room };
  return [
    workingStep('tank.surface.area', 'tank.faceArea', surface.area, {
      n: [surface.openShare, openShareOrigin(tank)],
      b: [tank.length, 'tank.load.length'],
      h: [tank.width, 'tank.load.width'],
    }),
    workingStep('tank.surface.quietCoefficient', 'tank.quietCoefficient', surface.quietCoefficient, {
      ...water,
      p_w,
      p_r,
      p: from.pressure,
    }),
    workingStep('tank.surface.activeCoefficient', 'tank.activeCoefficient', surface.activeCoefficient, {
      v: [INDOOR_AIR_SPEED],
      h_fg,
    }),
    workingStep('tank.surface.coefficient', 'tank.surfaceCoefficient', surface.coefficient, {
      f: [surface.factor, 'tank.load.evaporationFactor'],
      K_q: [surface.quietCoefficient, 'tank.surface.quietCoefficient'],
      K_a: [surface.activeCoefficient, 'tank.surface.activeCoefficient'],
      a: [surface.activeShare, 'tank.load.surface'],
    }),
    workingStep('tank.surface.evaporation', 'tank.evaporationRate', surface.evaporation, { K, A, p_w, p_r }),
    workingStep('tank.paths.evaporation', 'tank.evaporationHeat', heatOf(load, 'evaporation'), {
      m_e: [surface.evaporation, 'tank.surface.evaporation'],
      h_fg,
    }),
    workingStep(
      'tank.surface.convectionCoefficient',
      'tank.surfaceConvectionCoefficient',
      surface.convectionCoefficient,
      {
        K,
        p: from.pressure,
      },
    ),
    workingStep('tank.paths.surfaceConvection', 'tank.surfaceConvection', heatOf(load, 'surfaceConvection'), {
      h_c: [surface.convectionCoefficient, 'tank.surface.convectionCoefficient'],
      A,
      ...water,
    }),
    workingStep('tank.paths.surfaceRadiation', 'tank.surfaceRadiation', heatOf(load, 'surfaceRadiation'), {
      A,
      ...water,
    }),
  ];
}

/** Air stones. */
export function airStoneSteps(
  tank: RectangularTank,
  conditions: TankConditions,
  known: RectangularIntermediates,
  load: TankLoad,
  from: ConditionInputs,
): WorkingStep[] {
  const { airStones, air } = known;
  const saturated = humidityRatio(air.waterVapour, conditions.atmosphericPressure);
  const room = humidityRatio(air.roomVapour, conditions.atmosphericPressure);
  const density = dryAirDensity(conditions.roomTemperature, air.roomVapour, conditions.atmosphericPressure);
  const p_w: StepInput = [air.roomVapour, 'tank.air.roomVapour'];
  const m_da: StepInput = [airStones!.dryAirFlow, 'tank.airStones.dryAirFlow'];
  const W_r: StepInput = [room, 'tank.airStones.roomHumidity'];
  return [
    workingStep('tank.airStones.roomDensity', 'air.dryAirDensity', density, { T: from.room, p_w, p: from.pressure }),
    workingStep('tank.airStones.dryAirFlow', 'tank.blownDryAir', airStones!.dryAirFlow, {
      V: [tank.airFlow!, 'tank.load.airFlow'],
      rho_da: [density, 'tank.airStones.roomDensity'],
    }),
    workingStep('tank.airStones.roomHumidity', 'air.humidityRatio', room, { p_w, p: from.pressure }),
    workingStep('tank.airStones.saturated', 'air.humidityRatio', saturated, {
      p_w: [air.waterVapour, 'tank.air.waterVapour'],
      p: from.pressure,
    }),
    workingStep('tank.airStones.evaporation', 'tank.airStoneEvaporation', airStones!.evaporation, {
      m_da,
      W_s: [saturated, 'tank.airStones.saturated'],
      W_r,
    }),
    workingStep('tank.paths.airStonesVapour', 'tank.evaporationHeat', heatOf(load, 'airStonesVapour'), {
      m_e: [airStones!.evaporation, 'tank.airStones.evaporation'],
      h_fg: [air.latentHeat, 'tank.air.latentHeat'],
    }),
    workingStep('tank.paths.airStones', 'tank.airStoneHeat', heatOf(load, 'airStones'), {
      m_da,
      W_r,
      T_w: from.water,
      T_r: from.room,
    }),
  ];
}

/** Water lost from the open surface and into air blown through the water. */
export function lostStep({ surface, airStones }: RectangularIntermediates, load: TankLoad): WorkingStep {
  return workingStep('tank.evaporation', 'tank.waterLost', load.evaporation, {
    m_s: surface === undefined ? [0] : [surface.evaporation, 'tank.surface.evaporation'],
    m_b: airStones === undefined ? [0] : [airStones.evaporation, 'tank.airStones.evaporation'],
  });
}

/** Make-up water. */
export function makeUpSteps(load: TankLoad, known: RectangularIntermediates, from: ConditionInputs): WorkingStep[] {
  if (!load.paths.some((path) => path.path === 'makeUpWater')) return [];
  return [
    workingStep('tank.makeUpHeatCapacity', 'water.heatCapacity', known.makeUpHeatCapacity, { T: from.water, S: [0] }),
    workingStep('tank.paths.makeUpWater', 'tank.makeUpHeat', heatOf(load, 'makeUpWater'), {
      m_e: [load.evaporation, 'tank.evaporation'],
      c_p: [known.makeUpHeatCapacity, 'tank.makeUpHeatCapacity'],
      T_w: from.water,
      T_m: from.room,
    }),
  ];
}
