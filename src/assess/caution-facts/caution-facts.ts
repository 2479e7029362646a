// The facts that the rules of caution look at, gathered from the design and the results of the stages.

import {
  type CautionFacts,
  cautionFluid,
  floorOfRoom,
  highSideDesignTemperature,
  lowSideDesignTemperature,
  type MachineLimits,
  type OperatingFacts,
  type PressureFacts,
} from '../../cautions/index.ts';
import type { PlainDesign, ResolvedDesign } from '../../design/index.ts';
import type { OperatingPoint } from '../../loop/index.ts';
import { dewPoint, saturationVapourPressure } from '../../matter/air/index.ts';
import { catalogueEntry, type Refrigerant, saturationAtTemperature } from '../../matter/refrigerants/index.ts';
import {
  applicationLimits,
  type EnvelopeLimit,
  type LimitReach,
  type RunningMachine,
  type RunningPoint,
} from '../../parts/compressor/index.ts';
import { heatReachingWater } from '../../plant/index.ts';
import { machineEnvelope, reachesOf } from '../answers/limits.ts';
import { rangesAt, workingMonths } from '../answers/moments.ts';
import type { Bands } from '../answers/pieces.ts';
import { answerOrNull, hardestAllowed, machinePointAt } from '../machine-point.ts';
import type { StagedDesign } from '../stages/engine-assumptions.ts';
import { loopSlice, type StageResults } from '../stages/index.ts';
import { aroundShell, machineAt } from '../stages/machine.ts';
import { allMachines, plantHardware, sourceIsTankRoom } from '../stages/plant.ts';
import { usualRating } from '../stages/usual-rating.ts';
import { machineFacts, machineStateFacts } from './machine-facts.ts';
import { stuckOn } from './stuck-on.ts';

/** What was computed for a design. A comparison of fluids leaves the sizes out. */
type CautionResults = Pick<
  StageResults,
  'surroundings' | 'meter' | 'tank' | 'compressor' | 'operating' | 'monthLoads' | 'monthOperating'
> &
  Partial<Pick<StageResults, 'sizing'>>;

/**
 * The facts of one design.
 * @param design    at its likely values
 * @param results   of the stages for it
 * @param resolved  the design with its ranges, since a leak is judged at the largest charge in the smallest space
 * @param bands     ranges of the loop's results, where they were varied; without them limits are judged at likely values
 * @param standing  the tank apart from its machine; null where nobody asks about it
 */
export function cautionFacts(
  design: StagedDesign,
  results: CautionResults,
  resolved: ResolvedDesign,
  bands: Pick<Bands, 'bands'> = { bands: {} },
  standing: CautionFacts['standing'] = null,
): CautionFacts {
  const { machine, exchangers, safeguards, tank, place } = design;
  const operating = operatingFacts(design, results, resolved, bands);
  return {
    fluid: cautionFluid(catalogueEntry(machine.refrigerant)),
    molarMass: design.states.fluid(machine.refrigerant).molarMass,
    madeFor: cautionFluid(catalogueEntry(machine.compressor.madeFor)),
    application: machine.application,
    limits: machineLimits(design),
    hardestAllowedPower: hardestOn(design, results, machine.refrigerant)?.power ?? null,
    operating,
    forFlammables: machine.forFlammables,
    charge: resolved.machine.charge,
    enclosure: smallestEnclosure(resolved.machine.enclosure),
    ...rooms(resolved),
    sunkenPlace: smallestSunkenPlace(resolved.machine.sunkenPlace),
    region: place.region,
    pressures: pressureFacts(design, resolved),
    shellSurroundings: shellSurroundings(design, results),
    ratedMassFlow: ratedMassFlow(design, results),
    stuckOn: stuckOn(design, results, operating),
    coilSurface: coilSurface(design, results),
    atmosphericPressure: results.surroundings.atmosphericPressure,
    condenserArrangement: exchangers.condenserArrangement,
    wettedMetal: exchangers.wettedMetal,
    water: tank.water,
    livestock: tank.livestock,
    waterTemperature: tank.waterTemperature,
    tankHeatCapacity: results.tank.heatCapacity,
    standing,
    machine: machineFacts({
      resolved,
      ratedCurrent: results.compressor.ratedCurrent,
      limits: limitsOf(design, results),
      operating: results.operating,
      pointAt: evaporatingAt(design, results),
    }),
    ...safeguards,
  };
}

/** The rooms that hold part of the circuit, each at the lower end of its size. */
function rooms({ room, source }: ResolvedDesign): Pick<CautionFacts, 'roomVolume' | 'otherRoomVolume' | 'floorArea'> {
  const otherRoomVolume = source.kind === 'otherRoom' ? source.volume.low : null;
  const smallest = Math.min(room.volume.low, otherRoomVolume ?? room.volume.low);
  return { roomVolume: room.volume.low, otherRoomVolume, floorArea: floorOfRoom(smallest, room.height.high) };
}

function smallestSunkenPlace(place: ResolvedDesign['machine']['sunkenPlace']): CautionFacts['sunkenPlace'] {
  return place.kind === 'pit' ? { kind: 'pit', volume: place.volume.low } : place;
}

/**
 * Saturation pressures at the usual design temperatures, of the fluid and of the one the parts were built for. Of a blend
 * that of its liquid: where liquid stands, the bubble pressure is the higher one.
 */
function pressureFacts({ machine, states }: StagedDesign, { room, source }: ResolvedDesign): PressureFacts {
  const fluid = states.fluid(machine.refrigerant);
  const madeFor = states.fluid(machine.compressor.madeFor);
  const warmest = Math.max(room.warmest.high, source.kind === 'otherRoom' ? source.warmest.high : room.warmest.high);
  return {
    highSide: saturationPressureOrNull(fluid, highSideDesignTemperature),
    builtHighSide: saturationPressureOrNull(madeFor, highSideDesignTemperature),
    builtLowSide: saturationPressureOrNull(madeFor, lowSideDesignTemperature),
    warmest,
    standing: saturationPressureOrNull(fluid, warmest),
  };
}

function saturationPressureOrNull(fluid: Refrigerant, temperature: number): number | null {
  return answerOrNull(() => saturationAtTemperature(fluid, temperature).liquid.pressure);
}

/** Temperature around the resting compressor in the coldest spell [K]; null outdoors, which is the coldest place anyway. */
function shellSurroundings({ machine }: StagedDesign, { surroundings: { spell } }: CautionResults): number | null {
  return machine.shellPlace === 'outdoors' ? null : aroundShell(machine.shellPlace, spell);
}

/**
 * Flow of the machine on its own fluid at the rating point its application is named after [kg/s], with the gas as warm as at
 * that point: much warmer, and thinner, than with the superheat of the design. The gas temperature of the medium point is not
 * confirmed, which a warning may bear.
 */
function ratedMassFlow(design: StagedDesign, results: CautionResults): number | null {
  const { evaporating, condensing, returnGas } = usualRating(design.machine.application);
  const fluid = design.states.fluid(design.machine.compressor.madeFor);
  const at = { evaporating, condensing, suctionTemperature: returnGas };
  return answerOrNull(() => machinePointAt(machineInSpell(design, results), fluid, at).massFlow);
}

/** Surface of a refrigerant coil in the tank against the water, in the coldest spell [K]. */
function coilSurface({ tank, exchangers }: StagedDesign, { sizing }: CautionResults): number | null {
  if (exchangers.condenserArrangement !== 'coilInTank' || sizing === undefined) return null;
  return tank.waterTemperature + sizing.condenser.tankCoil.surfaceDifference;
}

/** Every limit of the machine against where it settles in the coldest spell, the nearest first. */
export function limitReaches(design: StagedDesign, results: CautionResults): readonly LimitReach[] {
  return reachesOf(limitsOf(design, results), results.operating);
}

function limitsOf(design: StagedDesign, results: CautionResults): readonly EnvelopeLimit[] {
  const hardest = hardestOn(design, results, design.machine.compressor.madeFor);
  return machineEnvelope(design, results.compressor, hardest?.motor.load ?? null);
}

/** The machine on a fluid where its application is hardest for long; null where it has no answer. */
function hardestOn(design: StagedDesign, results: CautionResults, fluid: string): RunningPoint | null {
  const { machine, exchangers, states } = design;
  const inSpell = machineInSpell(design, results);
  return hardestAllowed(inSpell, states.fluid(fluid), machine.application, exchangers.superheat);
}

/** The machine of the design at other evaporating temperatures, condensing as in the coldest spell. */
function evaporatingAt(design: StagedDesign, results: CautionResults): (evaporating: number) => RunningPoint {
  const fluid = design.states.fluid(design.machine.refrigerant);
  const condensing = results.operating.condensing.temperature;
  return (evaporating) => {
    const suctionTemperature = evaporating + design.exchangers.superheat;
    return machinePointAt(machineInSpell(design, results), fluid, { evaporating, condensing, suctionTemperature });
  };
}

function machineInSpell(design: StagedDesign, { compressor, surroundings }: CautionResults): RunningMachine {
  return machineAt(loopSlice(design), compressor, surroundings.spell);
}

function machineLimits({ machine }: PlainDesign): MachineLimits {
  return applicationLimits(machine.application);
}

function smallestEnclosure(enclosure: ResolvedDesign['machine']['enclosure']): CautionFacts['enclosure'] {
  return enclosure.kind === 'openRoom' ? enclosure : { kind: enclosure.kind, volume: enclosure.volume.low };
}

/** The coldest spell, the usual winter and the warmest month in which the machine still has something to do. */
function operatingFacts(
  design: StagedDesign,
  results: CautionResults,
  resolved: ResolvedDesign,
  bands: Pick<Bands, 'bands'>,
): readonly OperatingFacts[] {
  const { spell, months } = results.surroundings;
  const at = (
    when: OperatingFacts['when'],
    point: OperatingPoint,
    moment: Parameters<typeof factsOf>[3],
  ): OperatingFacts => ({
    ...factsOf(when, design, point, moment),
    ranges: rangesAt(when, bands),
    machine: machineStateFacts(when, point, bands, resolved),
  });
  return [
    at('coldestSpell', results.operating, {
      load: results.tank.load,
      sourceTemperature: spell.sourceTemperature,
      roomTemperature: spell.roomTemperature,
    }),
    ...workingMonths(results).map(({ when, index }) => {
      const { roomTemperature, sourceTemperature } = months[index]!;
      const { load } = results.monthLoads[index]!;
      return at(when, results.monthOperating[index]!, { load, roomTemperature, sourceTemperature });
    }),
  ];
}

function factsOf(
  when: OperatingFacts['when'],
  design: StagedDesign,
  operating: OperatingPoint,
  at: { readonly load: number; readonly sourceTemperature: number; readonly roomTemperature: number },
): Omit<OperatingFacts, 'ranges' | 'machine'> {
  const { count, loopPumpPower, loopPumpShareToWater } = plantHardware(design);
  return {
    when,
    sourceTemperature: at.sourceTemperature,
    roomTemperature: at.roomTemperature,
    sourceDewPoint: sourceDewPoint(design, at.roomTemperature),
    evaporatingTemperature: operating.evaporating.temperature,
    condensingTemperature: operating.condensing.temperature,
    evaporatingPressure: operating.evaporating.pressure,
    condensingPressure: operating.condensing.pressure,
    dischargeTemperature: operating.dischargeTemperature,
    compressorPower: operating.compressorPower,
    massFlow: operating.massFlow,
    heatDelivered: heatReachingWater(allMachines(operating, count).condenserHeat, loopPumpPower, loopPumpShareToWater),
    load: at.load,
  };
}

/** Dew point of the source's air; known only where the source is the tank's own room and its air is not bone dry. */
function sourceDewPoint({ source, room }: PlainDesign, roomTemperature: number): number | null {
  if (!sourceIsTankRoom(source) || room.relativeHumidity === 0) return null;
  return dewPoint(roomTemperature, room.relativeHumidity * saturationVapourPressure(roomTemperature));
}
