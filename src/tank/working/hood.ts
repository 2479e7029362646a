// The working of a hood: air drawn through, its coefficients, the balances of vapour, warmth and inner faces as they settled, and
// what leaves by air and walls. Air and faces depend on one another: they were found by root search and are shown settled.

import { saturationVapourPressure } from '../../matter/air/index.ts';
import { type StepInput, type WorkingStep, workingStep } from '../../quantities/index.ts';
import type { Vessel } from '../built-tank.ts';
import type { HoodState } from '../cover/hood.ts';
import { airCapacityFlow, vapourConductance } from '../cover/hood-air.ts';
import type { TankConditions } from '../description.ts';
import type { PanelState } from '../stack/panel.ts';
import { conductance, sumOfParts } from '../totals.ts';
import { coefficientInAir } from '../water-surface/open-surface.ts';
import { roomAir } from './exchange.ts';
import type { VesselSizes } from './geometry.ts';
import { dryPanel, freeboardSums } from './lid.ts';
import { panelSteps, type ShownPanel } from './panels.ts';
import { sumOf } from './sums.ts';
import { airInputs, coefficientSteps, type VesselSteps } from './surface.ts';

/** Everything that leaves under the hood. */
export function hoodSteps(
  hood: HoodState,
  known: Vessel,
  conditions: TankConditions,
  sizes: VesselSizes,
  vessel: VesselSteps,
): readonly WorkingStep[] {
  const { at, from, path, heat } = vessel;
  const inside: StepInput = [hood.innerTemperature, `${at}.hood.innerTemperature`];
  const dry = hood.freeboard.map((state) => dryPanel(state, [1], sizes, at));
  const walls = hood.walls.map(
    (state): ShownPanel => ({ state, area: [state.area], heat: `${at}.dry.${state.name}.heat` }),
  );
  const shown = [...walls, ...dry.map(({ panel }) => panel)];
  const panels = panelSteps(shown, { vessel: known.name, at: `${at}.dry`, inside, from });
  return [
    ...panels.steps,
    ...areaSteps(hood, shown, at),
    ...airSteps(hood, known, conditions, vessel),
    ...balanceSteps(hood, shown, vessel),
    workingStep(path('hoodVapour'), 'tank.evaporationHeat', heat('hoodVapour'), {
      m_e: [hood.carriedVapour, `${at}.hood.carriedVapour`],
      h_fg: airInputs(vessel.air).h_fg,
    }),
    workingStep(path('hoodAir'), 'tank.hoodAirHeat', heat('hoodAir'), {
      C: capacityFlow(hood, conditions, vessel),
      T_h: [hood.airTemperature, `${at}.hood.airTemperature`],
      T_r: from.room,
    }),
    ...sumOf(
      path('hoodWalls'),
      'heat',
      walls.map((wall): StepInput => [wall.state.heat, wall.heat]),
      heat('hoodWalls'),
    ).steps,
    ...freeboardSums(hood.freeboard, shown.slice(walls.length), vessel),
  ];
}

function isTop({ facing }: PanelState): boolean {
  return facing === 'top';
}

/** Inner faces that look down, upright ones, and all. */
function areaSteps(hood: HoodState, shown: readonly ShownPanel[], at: string): readonly WorkingStep[] {
  const areas = (which: boolean) => shown.filter(({ state }) => isTop(state) === which).map(({ area }) => area);
  const top = sumOf(`${at}.hood.topArea`, 'area', areas(true));
  const side = sumOf(`${at}.hood.sideArea`, 'area', areas(false));
  const all = sumOf(`${at}.hood.innerArea`, 'area', [top.value, side.value], hood.innerArea);
  return [
    ...top.steps,
    ...side.steps,
    ...all.steps,
    workingStep(`${at}.hood.innerConvection`, 'tank.hoodConvection', hood.innerConvection, {
      A_top: top.value,
      A_side: side.value,
    }),
  ];
}

function capacityFlow(hood: HoodState, conditions: TankConditions, { at, air }: VesselSteps): StepInput {
  const { room } = roomAir(air, conditions);
  return [airCapacityFlow(hood.dryAirFlow, room[0]), `${at}.hood.capacityFlow`];
}

/** Air drawn through, coefficients of the water in it, its vapour and its warmth. */
function airSteps(
  hood: HoodState,
  known: Vessel,
  conditions: TankConditions,
  vessel: VesselSteps,
): readonly WorkingStep[] {
  const { at, place, air, from, waterSurface } = vessel;
  const name = `${at}.hood`;
  const own = (part: string, value: number): StepInput => [value, `${name}.${part}`];
  const { p_w } = airInputs(air);
  const p = from.pressure;
  const { density, room: W_r } = roomAir(air, conditions);
  const cover = known.cover.kind === 'hood' ? known.cover : undefined;
  const T_h = own('airTemperature', hood.airTemperature);
  const p_h = own('airVapour', hood.airVapour);
  const T_l = own('innerTemperature', hood.innerTemperature);
  const K = own('coefficient', hood.coefficient);
  const K_l = own('innerVapourCoefficient', hood.innerVapourCoefficient);
  const A_l = own('innerArea', hood.innerArea);
  const h_l = own('innerConvection', hood.innerConvection);
  const h_c = own('convectionCoefficient', hood.convectionCoefficient);
  const p_l = own('innerSaturation', hood.innerSaturation);
  const m = own('dryAirFlow', hood.dryAirFlow);
  const C = capacityFlow(hood, conditions, vessel);
  const isWet = hood.condensate > 0;
  const KA = own('surfaceConductance', vapourConductance(hood.coefficient, waterSurface[0]));
  const G = own('innerVapourConductance', vapourConductance(K_l[0], A_l[0]));
  const G_w = own('surfaceWarmth', conductance(waterSurface[0], h_c[0]));
  const G_l = own('innerWarmth', conductance(A_l[0], h_l[0]));
  const W_h = own('airHumidity', hood.airHumidity);
  return [
    workingStep(m[1]!, 'tank.blownDryAir', hood.dryAirFlow, {
      V: [cover?.airFlow ?? 0, `${place}.hood.airFlow`],
      rho_da: density,
    }),
    workingStep(C[1]!, 'tank.airCapacityFlow', C[0], { m_da: m, W: W_r }),
    ...coefficientSteps(
      coefficientInAir(known, conditions, air, hood.airTemperature, hood.airVapour),
      known,
      name,
      vessel,
      { T_r: T_h, p_r: p_h },
    ),
    workingStep(h_c[1]!, 'tank.surfaceConvectionCoefficient', h_c[0], { K, p }),
    workingStep(K_l[1]!, 'tank.wallVapourCoefficient', K_l[0], { h_l, p }),
    workingStep(p_l[1]!, 'air.saturationVapourPressure', saturationVapourPressure(hood.innerTemperature), { T: T_l }),
    workingStep(KA[1]!, 'tank.vapourConductance', KA[0], { K, A: waterSurface }),
    ...(isWet ? [workingStep(G[1]!, 'tank.vapourConductance', G[0], { K: K_l, A: A_l })] : []),
    workingStep(p_h[1]!, 'tank.hoodVapourPressure', p_h[0], { m, W_r, KA, p_w, G: isWet ? G : [0], p_l, p }),
    workingStep(G_w[1]!, 'tank.conductance', G_w[0], { A: waterSurface, U: h_c }),
    workingStep(G_l[1]!, 'tank.conductance', G_l[0], { A: A_l, U: h_l }),
    workingStep(T_h[1]!, 'tank.hoodTemperature', T_h[0], { G_w, T_w: from.water, G_l, T_l, C, T_r: from.room }),
    workingStep(`${name}.condensate`, 'tank.hoodCondensate', hood.condensate, { K_l, A_l, p_h, p_l }),
    workingStep(W_h[1]!, 'air.humidityRatio', W_h[0], { p_w: p_h, p }),
    workingStep(`${name}.carriedVapour`, 'tank.airStoneEvaporation', hood.carriedVapour, { m_da: m, W_s: W_h, W_r }),
  ];
}

/** Radiation to the inner faces and the temperature at which they give off what reaches them. */
function balanceSteps(hood: HoodState, shown: readonly ShownPanel[], vessel: VesselSteps): readonly WorkingStep[] {
  const { at, air, from, waterSurface } = vessel;
  const name = `${at}.hood`;
  const own = (part: string, value: number): StepInput => [value, `${name}.${part}`];
  const heats = shown.map(({ state, heat }): StepInput => [state.heat, heat]);
  const leaving = sumOf(`${name}.leaving`, 'heat', heats, sumOfParts(heats.map(([heat]) => heat)));
  return [
    workingStep(`${name}.radiation`, 'tank.hoodRadiation', hood.radiation, {
      A: waterSurface,
      A_l: own('innerArea', hood.innerArea),
      T_w: from.water,
      T_l: own('innerTemperature', hood.innerTemperature),
    }),
    ...leaving.steps,
    workingStep(`${name}.innerTemperature`, 'tank.hoodInnerTemperature', hood.innerTemperature, {
      T_h: own('airTemperature', hood.airTemperature),
      Q_r: own('radiation', hood.radiation),
      m_c: own('condensate', hood.condensate),
      h_fg: airInputs(air).h_fg,
      Q_out: leaving.value,
      G_l: own('innerWarmth', conductance(hood.innerArea, hood.innerConvection)),
    }),
  ];
}
