// The facts that the rules of caution look at, gathered from the design and the results of the stages.

import { type CautionFacts, cautionFluid, type MachineLimits, type OperatingFacts } from '../cautions/index.ts';
import type { PlainDesign, ResolvedDesign } from '../design/index.ts';
import type { OperatingPoint } from '../loop/index.ts';
import { dewPoint, saturationVapourPressure } from '../matter/air/index.ts';
import { catalogueEntry, refrigerant, saturationAtTemperature, stateAt } from '../matter/refrigerants/index.ts';
import { KettlefinError } from '../numerics/index.ts';
import { applicationLimits, compressorPoint } from '../parts/compressor/index.ts';
import { heatReachingWater } from '../plant/index.ts';
import type { MonthConditions } from '../surroundings/index.ts';
import type { StagedDesign } from './stages/engine-assumptions.ts';
import type { StageResults } from './stages/index.ts';
import { plantHardware, sourceIsTankRoom } from './stages/plant.ts';

/**
 * The facts of one design.
 * @param design    at its likely values
 * @param results   of the stages for it
 * @param resolved  the design with its ranges, since a leak is judged at the largest charge in the smallest space
 */
export function cautionFacts(design: StagedDesign, results: StageResults, resolved: ResolvedDesign): CautionFacts {
  const { machine, exchangers, safeguards, tank, source } = design;
  return {
    fluid: cautionFluid(catalogueEntry(machine.refrigerant)),
    madeFor: cautionFluid(catalogueEntry(machine.compressor.madeFor)),
    application: machine.application,
    limits: machineLimits(design),
    hardestAllowedPower: hardestAllowedPower(design, results),
    operating: operatingFacts(design, results),
    forFlammables: machine.forFlammables,
    charge: resolved.machine.charge,
    enclosure: smallestEnclosure(resolved.machine.enclosure),
    roomVolume: resolved.room.volume.low,
    sourceIsTankRoom: sourceIsTankRoom(source),
    atmosphericPressure: results.surroundings.atmosphericPressure,
    condenserArrangement: exchangers.condenserArrangement,
    wettedMetal: exchangers.wettedMetal,
    water: tank.water,
    livestock: tank.livestock,
    waterTemperature: tank.waterTemperature,
    tankHeatCapacity: results.tank.heatCapacity,
    overTemperatureCutOut: safeguards.overTemperatureCutOut,
    residualCurrentProtection: safeguards.residualCurrentProtection,
  };
}

/**
 * Electricity of the modelled compressor at the highest evaporating and the continuous condensing temperature of its
 * application [W], on the fluid and with the superheat of the design; null where the model gives no answer there.
 */
function hardestAllowedPower(design: StagedDesign, { compressor }: StageResults): number | null {
  const { evaporating, condensing } = machineLimits(design);
  const fluid = refrigerant(design.machine.refrigerant);
  try {
    const low = saturationAtTemperature(fluid, evaporating.highest);
    const superheated = { temperature: evaporating.highest + design.exchangers.superheat, pressure: low.pressure };
    const suction = design.exchangers.superheat > 0 ? stateAt(fluid, superheated) : low.vapour;
    const dischargePressure = saturationAtTemperature(fluid, condensing.continuous).pressure;
    return compressorPoint(compressor.model, fluid, { suction, dischargePressure }).power;
  } catch (error) {
    if (error instanceof KettlefinError) return null;
    throw error;
  }
}

export function machineLimits({ machine }: PlainDesign): MachineLimits {
  return applicationLimits(machine.application);
}

function smallestEnclosure(enclosure: ResolvedDesign['machine']['enclosure']): CautionFacts['enclosure'] {
  return enclosure.kind === 'openRoom' ? enclosure : { kind: enclosure.kind, volume: enclosure.volume.low };
}

/** The coldest spell, the usual winter and the warmest month in which the machine still has something to do. */
function operatingFacts(design: StagedDesign, results: StageResults): readonly OperatingFacts[] {
  const { spell, months } = results.surroundings;
  const atSpell = factsOf('coldestSpell', design, results.operating, {
    load: results.tank.load,
    sourceTemperature: spell.sourceTemperature,
    roomTemperature: spell.roomTemperature,
  });
  const working = months
    .map(
      (conditions, index): MonthAtWork => ({
        conditions,
        load: results.monthLoads[index]!.load,
        operating: results.monthOperating[index]!,
      }),
    )
    .filter(({ operating, load }) => operating !== null && load > 0)
    .sort((left, right) => left.conditions.distance - right.conditions.distance);
  const usual = working.find(({ conditions }) => conditions.distance === 0);
  const warmest = working.at(-1);
  return [
    atSpell,
    ...(usual === undefined ? [] : [monthFacts('usual', design, usual)]),
    ...(warmest === undefined || warmest === usual ? [] : [monthFacts('warmestMonth', design, warmest)]),
  ];
}

interface MonthAtWork {
  readonly conditions: MonthConditions;
  readonly load: number;
  readonly operating: OperatingPoint | null;
}

function monthFacts(when: OperatingFacts['when'], design: StagedDesign, month: MonthAtWork): OperatingFacts {
  const { roomTemperature, sourceTemperature } = month.conditions;
  return factsOf(when, design, month.operating!, { load: month.load, roomTemperature, sourceTemperature });
}

function factsOf(
  when: OperatingFacts['when'],
  design: StagedDesign,
  operating: OperatingPoint,
  at: { readonly load: number; readonly sourceTemperature: number; readonly roomTemperature: number },
): OperatingFacts {
  const hardware = plantHardware(design);
  return {
    when,
    sourceTemperature: at.sourceTemperature,
    sourceDewPoint: sourceDewPoint(design, at.roomTemperature),
    evaporatingTemperature: operating.evaporating.temperature,
    condensingTemperature: operating.condensing.temperature,
    evaporatingPressure: operating.evaporating.pressure,
    condensingPressure: operating.condensing.pressure,
    dischargeTemperature: operating.dischargeTemperature,
    compressorPower: operating.compressorPower,
    heatDelivered: heatReachingWater(operating.heatDelivered, hardware.loopPumpPower, hardware.loopPumpShareToWater),
    load: at.load,
  };
}

/** Dew point of the source's air; known only where the source is the tank's own room and its air is not bone dry. */
function sourceDewPoint({ source, room }: PlainDesign, roomTemperature: number): number | null {
  if (!sourceIsTankRoom(source) || room.relativeHumidity === 0) return null;
  return dewPoint(roomTemperature, room.relativeHumidity * saturationVapourPressure(roomTemperature));
}
