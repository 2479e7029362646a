// The working of the machine: compressor from a rating, operating point at a source temperature, sizes of both exchangers,
// and tank, room and loop together.

import { type OperatingPoint, operatingPointWorking } from '../../loop/index.ts';
import { type HermeticParameter, ofAnotherSize } from '../../parts/compressor/index.ts';
import { condenserWorking, evaporatorWorking } from '../../parts/exchangers/index.ts';
import { type PlantOrigins, plantWorking, severalMachinesWorking } from '../../plant/index.ts';
import { type WorkingStep, workingStep } from '../../quantities/index.ts';
import { allMachinesResult, ofOneMachine } from '../answers/machines.ts';
import type { StagedDesign } from '../stages/engine-assumptions.ts';
import { loopSlice, type StageResults } from '../stages/index.ts';
import { type MachinePlace, machineAt } from '../stages/machine.ts';
import { allMachines, machineState, tankHeat } from '../stages/plant.ts';
import { doubtSteps } from './correction.ts';
import { machineOrigins } from './identified.ts';
import { atmosphere } from './tank.ts';

/** Temperatures around the machine, and where they came from. */
export interface PlacedMachine {
  readonly place: MachinePlace;
  readonly source: string;
  /** Of the air around the shell. */
  readonly surroundings: string;
}

/** At the coldest spell. */
export function spellPlace(design: StagedDesign, { surroundings }: StageResults): PlacedMachine {
  const source = design.source.kind === 'roomAir' ? 'room.coldest' : 'source.coldest';
  const around = { tankRoom: 'room.coldest', sourceRoom: source, outdoors: 'place.outdoors.coldest' };
  return { place: surroundings.spell, source, surroundings: around[design.machine.shellPlace] };
}

/** How a loop differs from that of the design's machine between its own approaches. */
export interface LoopOptions {
  /** Its two dew temperatures were given. */
  readonly areLevelsGiven?: boolean;
  /** The machine is one of another size, whose numbers have steps of their own. */
  readonly sized?: { readonly size: number; readonly results: Partial<Readonly<Record<HermeticParameter, string>>> };
}

/** The loop at those temperatures. */
export function operatingSteps(
  design: StagedDesign,
  { compressor, identified }: Pick<StageResults, 'compressor' | 'identified'>,
  operating: OperatingPoint,
  placed: PlacedMachine,
  prefix: string,
  { areLevelsGiven = false, sized }: LoopOptions = {},
): readonly WorkingStep[] {
  const { exchangers, machine, states, tank } = design;
  const { evaporatorApproach, condenserApproach, superheat, subcooling, suctionPressureLimit } = exchangers;
  const there = machineAt(loopSlice(design), compressor, placed.place);
  const origins = machineOrigins({ identified }, placed.surroundings, prefix);
  const input = {
    fluid: states.fluid(machine.refrigerant),
    machine: sized === undefined ? there : ofAnotherSize(there, sized.size),
    sourceTemperature: placed.place.sourceTemperature,
    waterTemperature: tank.waterTemperature,
    evaporatorApproach,
    condenserApproach,
    superheat,
    subcooling,
    ...(suctionPressureLimit === undefined ? {} : { suctionPressureLimit }),
  };
  const loopOrigins = {
    sourceTemperature: placed.source,
    waterTemperature: 'tank.waterTemperature',
    evaporatorApproach: 'exchangers.evaporatorApproach',
    condenserApproach: 'exchangers.condenserApproach',
    superheat: 'exchangers.superheat',
    subcooling: 'exchangers.subcooling',
    machine: { ...origins, parameters: { ...origins.parameters, ...sized?.results } },
    suctionPressureLimit: 'exchangers.suctionPressureLimit',
    areLevelsGiven,
  };
  const doubt = doubtSteps(operating.compressor, compressor, input.fluid, prefix);
  return [...doubt, ...operatingPointWorking(input, operating, loopOrigins, prefix)];
}

/** Sizes that the assumed approaches imply. */
export function sizingSteps({ source }: StagedDesign, results: StageResults): readonly WorkingStep[] {
  const { sizing, operating, hardware } = results;
  const { condenserRequest, condenser, evaporatorRequest, evaporator } = sizing;
  const isOne = hardware.count === 1;
  return [
    ...(isOne ? [] : [dutyOfOne(results)]),
    ...condenserWorking(
      condenserRequest,
      condenser,
      {
        duty: isOne ? 'plant.heatReachingWater' : dutyOfOneResult,
        condensingTemperature:
          operating.condensing.glide === 0
            ? 'operating.condensingTemperature'
            : 'operating.condensingBubbleTemperature',
        waterTemperature: 'tank.waterTemperature',
        salinity: 'tank.salinity',
        approach: 'exchangers.condenserApproach',
        tubeDiameter: 'exchangers.tubeDiameter',
        wallThickness: 'engine.wallThickness',
        wallConductivity: 'engine.wallConductivity',
        assumed: {
          fouling: 'engine.fouling',
          refrigerantFilm: 'engine.refrigerantFilm',
          loopSideFilm: 'engine.loopSideFilm',
          tankCoilShare: 'engine.tankCoilShare',
          loopTemperatureChange: 'engine.loopTemperatureChange',
        },
      },
      'condenser',
    ),
    ...evaporatorWorking(
      evaporatorRequest,
      evaporator,
      {
        duty: 'operating.heatTaken',
        approach: 'exchangers.evaporatorApproach',
        airTemperature: source.kind === 'roomAir' ? 'room.coldest' : 'source.coldest',
        pressure: atmosphere,
        faceVelocity: 'exchangers.airSpeed',
        humidity: 'room.relativeHumidity',
        assumed: { effectiveness: 'engine.airEffectiveness', finnedCoefficient: 'engine.finnedCoefficient' },
      },
      'evaporator',
    ),
  ];
}

const dutyOfOneResult = 'condenser.dutyOfOne';

/** What the coil of one of several machines has to pass. */
function dutyOfOne({ sizing, hardware, plant }: StageResults): WorkingStep {
  return workingStep(dutyOfOneResult, 'plant.perMachine', sizing.condenserRequest.duty, {
    X: [plant.heatReachingWaterRunning!, 'plant.heatReachingWater'],
    n: [hardware.count, 'machine.count'],
  });
}

/** Tank, room and loops at the coldest spell. */
export function plantSteps(design: StagedDesign, results: StageResults): readonly WorkingStep[] {
  const { tank, operating, hardware, plant } = results;
  return [
    ...fanSteps(design, results),
    ...severalSteps(operating, hardware.count),
    ...plantWorking(
      tankHeat(tank),
      allMachines(operating, hardware.count),
      hardware,
      plant,
      'plant',
      plantOrigins(design, 'tank', ''),
    ),
  ];
}

/** Fans and crankcase heaters of several machines; of one they are fields of the design. */
function fanSteps({ power, machine: { count } }: StagedDesign, { hardware }: StageResults): readonly WorkingStep[] {
  if (count === 1) return [];
  const all = (name: string, value: number, ofOne: number) =>
    workingStep(`machines.${name}`, 'plant.ofAllMachines', value, {
      n: [count, 'machine.count'],
      X_1: [ofOne, `power.${name}`],
    });
  return [
    all('fan', hardware.fanPower, power.fan),
    all('crankcaseHeater', hardware.crankcaseHeaterPower, power.crankcaseHeater),
  ];
}

/** Several machines made of one: `machines.condenserHeat`, …; none where there is one only. */
export function severalSteps(operating: OperatingPoint, count: number): readonly WorkingStep[] {
  if (count === 1) return [];
  const machine = Object.fromEntries(
    Object.entries(ofOneMachine).map(([flow, name]) => [flow, `operating.${name}`]),
  ) as typeof ofOneMachine;
  return severalMachinesWorking(machineState(operating), count, { count: 'machine.count', machine }, 'machines');
}

/**
 * Where the numbers of a plant came from.
 * @param design     names the fields
 * @param tank       prefix of the tank's steps: 'tank'
 * @param operating  what stands before the names of the loop's steps: '' at the coldest spell, 'year.january.' in a month; null
 *                   where the machine does not run
 */
export function plantOrigins(design: StagedDesign, tank: string, operating: string | null): PlantOrigins {
  const hasPump = design.exchangers.condenserArrangement === 'intermediateLoop';
  const { count } = design.machine;
  const ofAll = (name: string) => (count === 1 ? `power.${name}` : `machines.${name}`);
  const common = {
    phi: 'engine.loopPumpShareToWater',
    // A coil in the tank has no loop and no pump.
    P_p: hasPump ? 'power.loopPump' : 'exchangers.condenserArrangement',
    P_fan: ofAll('fan'),
    P_ctl: 'power.controls',
    P_cr: ofAll('crankcaseHeater'),
    L: `${tank}.load`,
    Q_tank: `${tank}.sensibleToRoom`,
    Q_latent: `${tank}.latentToRoom`,
    shellPlace: 'machine.shellPlace',
    sourceKind: 'source.kind',
  };
  if (operating === null) return common;
  const from = (flow: Parameters<typeof allMachinesResult>[1]) => `${operating}${allMachinesResult(count, flow)}`;
  return {
    ...common,
    Q_c: from('condenserHeat'),
    P_comp: from('compressorPower'),
    P_sh: from('shellHeat'),
    Q_e: from('heatTaken'),
  };
}
