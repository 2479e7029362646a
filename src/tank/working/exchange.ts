// The working of what passes in and out with air and water beside the surface: air drawn through the water, pipes, make-up water
// and water changes.

import { airConductivity, dryAirDensity, humidityRatio } from '../../matter/air/index.ts';
import { waterDensity, waterHeatCapacity } from '../../matter/water/index.ts';
import { type StepInput, type WorkingStep, workingStep } from '../../quantities/index.ts';
import type { BuiltTank, Pipe } from '../built-tank.ts';
import type { TankConditions } from '../description.ts';
import type { AirDrawnState, AirState, BuiltIntermediates } from '../load.ts';
import { airPrandtl, type PipeState } from '../pipes.ts';
import { mean, WATER_FILM_COEFFICIENT } from '../stack/films.ts';
import type { ConditionInputs } from './steps.ts';
import { sumOf } from './sums.ts';
import { airInputs } from './surface.ts';

/** Name of a path's step, and its heat as the model has it. */
export interface PathNames {
  readonly path: (name: string) => string;
  readonly heat: (name: string) => number;
}

/** Dry air per volume and humidity ratio of the room, where something draws its air. */
export function roomAirSteps(air: AirState, conditions: TankConditions, from: ConditionInputs): readonly WorkingStep[] {
  const p_w: StepInput = [air.roomVapour, 'tank.air.roomVapour'];
  const { density, room } = roomAir(air, conditions);
  return [
    workingStep('tank.air.roomDryAirDensity', 'air.dryAirDensity', density[0], { T: from.room, p_w, p: from.pressure }),
    workingStep('tank.air.roomHumidity', 'air.humidityRatio', room[0], { p_w, p: from.pressure }),
  ];
}

/** The same as inputs. */
export function roomAir(air: AirState, { roomTemperature, atmosphericPressure }: TankConditions) {
  return {
    density: [
      dryAirDensity(roomTemperature, air.roomVapour, atmosphericPressure),
      'tank.air.roomDryAirDensity',
    ] as StepInput,
    room: [humidityRatio(air.roomVapour, atmosphericPressure), 'tank.air.roomHumidity'] as StepInput,
  };
}

const drawnFields = { airStones: 'tank.load.airStones', skimmer: 'tank.load.skimmerAir' } as const;

/** Air stones and skimmer. */
export function drawnSteps(
  drawn: readonly AirDrawnState[],
  tank: BuiltTank,
  conditions: TankConditions,
  air: AirState,
  { path, heat }: PathNames,
  from: ConditionInputs,
): readonly WorkingStep[] {
  if (drawn.length === 0) return [];
  const { p_w, h_fg } = airInputs(air);
  const { density, room: W_r } = roomAir(air, conditions);
  const saturated: StepInput = [humidityRatio(air.waterVapour, conditions.atmosphericPressure), 'tank.air.saturated'];
  return [
    workingStep('tank.air.saturated', 'air.humidityRatio', saturated[0], { p_w, p: from.pressure }),
    ...drawn.flatMap(({ name, dryAirFlow, evaporation }) => {
      const at = `tank.${name}`;
      const m_da: StepInput = [dryAirFlow, `${at}.dryAirFlow`];
      const m_e: StepInput = [evaporation, `${at}.evaporation`];
      return [
        workingStep(m_da[1]!, 'tank.blownDryAir', dryAirFlow, {
          V: [tank.airFlow[name], drawnFields[name]],
          rho_da: density,
        }),
        workingStep(m_e[1]!, 'tank.airStoneEvaporation', evaporation, { m_da, W_s: saturated, W_r }),
        workingStep(path(`${name}Vapour`), 'tank.evaporationHeat', heat(`${name}Vapour`), { m_e, h_fg }),
        workingStep(path(name), 'tank.airStoneHeat', heat(name), { m_da, W_r, T_w: from.water, T_r: from.room }),
      ];
    }),
  ];
}

/** One pipe: film, wall, wrapping, outer surface, heat per metre. */
export function pipeSteps(
  pipe: Pipe,
  state: PipeState,
  index: number,
  { path }: PathNames,
  from: ConditionInputs,
): readonly WorkingStep[] {
  const at = `tank.pipes.${pipe.name}`;
  const place = `tank.load.pipes.${index}`;
  const own = (name: string, value: number): StepInput => [value, `${at}.${name}`];
  const outer: StepInput = [pipe.outerDiameter, `${place}.outerDiameter`];
  const wall: StepInput = [pipe.wallThickness, `${place}.wallThickness`];
  const innerDiameter = own('innerDiameter', pipe.outerDiameter - 2 * pipe.wallThickness);
  const { insulation } = pipe;
  const outside: StepInput =
    insulation === undefined ? outer : own('outsideDiameter', pipe.outerDiameter + 2 * insulation.thickness);
  const surface = own('outerTemperature', state.outerTemperature);
  const meanTemperature = own('meanTemperature', mean(state.outerTemperature, from.room[0]));
  const k = own('airConductivity', airConductivity(meanTemperature[0]));
  const Pr = own('prandtl', airPrandtl(meanTemperature[0]));
  const R_inner = own('innerResistance', state.innerResistance);
  const R_outer = own('outerResistance', state.outerResistance);
  const h_c = own('convectiveCoefficient', state.convectiveCoefficient);
  const h_r = own('radiativeCoefficient', state.radiativeCoefficient);
  const f: StepInput = [state.outerCoefficient / (h_c[0] + h_r[0]), from.filmFactor];
  const q = own('heatPerMetre', state.heatPerMetre);
  const parts = [own('filmResistance', state.filmResistance), own('wallResistance', state.wallResistance)];
  return [
    workingStep(innerDiameter[1]!, 'tank.diameterInside', innerDiameter[0], { D: outer, d: wall }),
    workingStep(parts[0]![1]!, 'tank.cylinderFilmResistance', state.filmResistance, {
      D: innerDiameter,
      h: [WATER_FILM_COEFFICIENT],
    }),
    workingStep(parts[1]![1]!, 'tank.cylinderResistance', state.wallResistance, {
      D_1: innerDiameter,
      D_2: outer,
      k: [pipe.wallConductivity, `${place}.material`],
    }),
    ...(insulation === undefined
      ? []
      : [
          workingStep(outside[1]!, 'tank.diameterOutside', outside[0], {
            D: outer,
            d: [insulation.thickness, `${place}.insulation.thickness`],
          }),
          workingStep(`${at}.insulationResistance`, 'tank.cylinderResistance', state.insulationResistance, {
            D_1: outer,
            D_2: outside,
            k: [insulation.conductivity, `${place}.insulation.material`],
          }),
        ]),
    workingStep(R_inner[1]!, 'tank.pipeInnerResistance', state.innerResistance, {
      R_film: parts[0]!,
      R_wall: parts[1]!,
      R_wrapping: insulation === undefined ? [0] : own('insulationResistance', state.insulationResistance),
    }),
    workingStep(meanTemperature[1]!, 'tank.meanTemperature', meanTemperature[0], { x_1: surface, x_2: from.room }),
    workingStep(`${at}.rayleigh`, 'tank.cylinderRayleigh', state.rayleigh, {
      T_s: surface,
      T_r: from.room,
      D: outside,
      p: from.pressure,
    }),
    workingStep(Pr[1]!, 'tank.airPrandtl', Pr[0], { T: meanTemperature }),
    workingStep(`${at}.nusselt`, 'tank.cylinderNusselt', state.nusselt, { Ra: own('rayleigh', state.rayleigh), Pr }),
    workingStep(k[1]!, 'air.conductivity', k[0], { T: meanTemperature }),
    workingStep(h_c[1]!, 'tank.cylinderConvection', h_c[0], { Nu: own('nusselt', state.nusselt), k, D: outside }),
    workingStep(h_r[1]!, 'tank.radiativeCoefficient', h_r[0], {
      epsilon: [pipe.emissivity, insulation === undefined ? `${place}.material` : `${place}.insulation.material`],
      T_m: meanTemperature,
    }),
    workingStep(`${at}.outerCoefficient`, 'tank.outerCoefficient', state.outerCoefficient, { f, h_c, h_r }),
    workingStep(R_outer[1]!, 'tank.cylinderFilmResistance', R_outer[0], {
      D: outside,
      h: own('outerCoefficient', state.outerCoefficient),
    }),
    workingStep(q[1]!, 'tank.pipeHeat', q[0], { T_w: from.water, T_r: from.room, R_inner, R_outer }),
    workingStep(surface[1]!, 'tank.pipeSurface', state.outerTemperature, { T_w: from.water, q, R_inner }),
    workingStep(path(`pipes.${pipe.name}`), 'tank.heatOfLength', state.heat, {
      L: [pipe.length, `${place}.length`],
      q,
    }),
  ];
}

/** Water lost from surfaces, under hoods and into drawn air, as the model has it. */
export function lostSteps(
  { vessels, airDrawn, measuredOverModelled }: BuiltIntermediates,
  evaporation: number,
  name: string,
  at: (vessel: string) => string,
): readonly WorkingStep[] {
  const surfaces = vessels.flatMap(({ name: vessel, surface, hood }): StepInput[] => [
    ...(surface === undefined ? [] : [[surface.evaporation, `${at(vessel)}.surface.evaporation`] as StepInput]),
    ...(hood === undefined ? [] : [[hood.carriedVapour, `${at(vessel)}.hood.carriedVapour`] as StepInput]),
  ]);
  const drawn = airDrawn.map((each): StepInput => [each.evaporation, `tank.${each.name}.evaporation`]);
  return sumOf(name, 'vapour', [...surfaces, ...drawn], evaporation / measuredOverModelled).steps;
}

/** Make-up water and water changes. */
export function freshWaterSteps(
  { exchange, salinity }: BuiltTank,
  conditions: TankConditions,
  known: BuiltIntermediates,
  evaporation: StepInput,
  { path, heat }: PathNames,
  from: ConditionInputs,
): readonly WorkingStep[] {
  const { waterTemperature } = conditions;
  const makeUp: StepInput = exchange.makeUpFrom === 'room' ? from.room : [known.makeUpTemperature, from.mains];
  const c_p: StepInput = [known.makeUpHeatCapacity, 'tank.makeUpHeatCapacity'];
  return [
    ...(evaporation[0] > 0
      ? [
          workingStep(c_p[1]!, 'water.heatCapacity', c_p[0], { T: from.water, S: [0] }),
          workingStep(path('makeUpWater'), 'tank.makeUpHeat', heat('makeUpWater'), {
            m_e: evaporation,
            c_p,
            T_w: from.water,
            T_m: makeUp,
          }),
        ]
      : []),
    ...(exchange.changeFlow > 0
      ? [
          workingStep(path('waterChange'), 'tank.waterChangeHeat', heat('waterChange'), {
            V: [exchange.changeFlow, 'tank.load.waterChange.volume'],
            rho: [waterDensity(waterTemperature, salinity), 'tank.waterDensity'],
            c_p: [waterHeatCapacity(waterTemperature, salinity), 'tank.waterHeatCapacity'],
            T_w: from.water,
            T_f: [conditions.mainsTemperature!, from.mains],
          }),
        ]
      : []),
  ];
}
