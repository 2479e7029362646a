// Document -> resolved design: every number an Estimate in base SI, typed or assumed, every choice made; and the list of what
// was assumed, each with the words of its source. No physics: a default that depends on other fields comes from defaults.ts.

import type { Estimate, QuantityName } from '../quantities/index.ts';
import {
  type CompressorDescription,
  type Followed,
  movedBy,
  timesBy,
  usualApplication,
  usualCharge,
  usualCompressor,
  usualCondenserApproach,
  usualDisplacement,
  usualLoopPump,
  usualSalinity,
  warmestRoom,
} from './defaults.ts';
import { fieldRecord, fullLabel } from './field-records.ts';
import { type Follower, ownSpread } from './followers.ts';
import { type ApplicationName, type Assumption, estimatesIn, type Region, type ResolvedDesign } from './plain.ts';
import { resolveLoad } from './resolve-tank.ts';
import { resolveWrapping } from './resolve-wrapping.ts';
import { Resolver } from './resolver.ts';
import type { DesignDocument } from './schema/design.ts';
import { practice } from './schema/field.ts';

export interface Resolution {
  readonly design: ResolvedDesign;
  /** What was not given, in the order of the document. */
  readonly assumptions: readonly Assumption[];
  /** Which of the assumptions follow another field, and how. */
  readonly followers: readonly Follower[];
}

/** A number of the design that may be varied by itself. */
export interface UncertainInput {
  readonly path: string;
  readonly label: string;
  readonly quantity: QuantityName;
  /** Between which ends; of a follower its own spread only. */
  readonly estimate: Estimate;
}

/** Fills a valid document in. @throws InputError only for a document that was never checked. */
export function resolveDesign(document: DesignDocument): Resolution {
  const take = new Resolver(document);
  const place = resolvePlace(take, document);
  const electricity = take.quantity('prices.electricity');
  const room = resolveRoom(take, { path: 'prices.electricity', estimate: electricity });
  const tank = resolveTank(take, { path: 'room.temperature', estimate: room.temperature });
  const wrapping = resolveWrapping(take);
  const source = resolveSource(take);
  const machine = resolveMachine(take, document);
  const exchangers = resolveExchangers(take);
  const power = {
    fan: take.quantity('power.fan'),
    loopPump: take.quantity('power.loopPump', () => usualLoopPump(exchangers.condenserArrangement)),
    controls: take.quantity('power.controls'),
  };
  const safeguards = resolveSafeguards(take, exchangers.wettedMetal);
  const prices = resolvePrices(take, document, electricity);
  const design = {
    name: document.name,
    place,
    room,
    tank,
    wrapping,
    source,
    machine,
    exchangers,
    power,
    safeguards,
    prices,
  };
  return { design, assumptions: take.assumptions, followers: take.followers };
}

/**
 * Every number of a resolved design whose ends differ, with its label. A default that follows another field is listed with
 * its own spread, and only where it has one: the rest of its range is the followed field's, which is varied as itself.
 */
export function uncertainInputs({ design, followers }: Resolution): readonly UncertainInput[] {
  const byPath = new Map(followers.map((follower) => [follower.path, follower]));
  const likely = new Map(estimatesIn(design).map(({ path, estimate }) => [path, estimate.likely]));
  return estimatesIn(design).flatMap(({ path, estimate }) => {
    const follower = byPath.get(path);
    const varied = follower === undefined ? estimate : ownSpread(follower, estimate, likely.get(follower.follows)!);
    if (varied.low >= varied.high) return [];
    const record = fieldRecord(path);
    return [{ path, label: fullLabel(record!), quantity: record!.quantity!, estimate: varied }];
  });
}

function resolvePlace(take: Resolver, document: DesignDocument): ResolvedDesign['place'] {
  const { outdoors, mains } = readsOfPlace(document);
  const winter = take.quantity('place.outdoors.winter', undefined, outdoors);
  const usual = { path: 'place.outdoors.winter', estimate: winter };
  return {
    altitude: take.quantity('place.altitude'),
    region: take.choice<Region>('place.region'),
    outdoors: {
      winter,
      coldest: take.quantity(
        'place.outdoors.coldest',
        () => movedBy(usual, { low: -12, likely: -7, high: -4 }, practice),
        outdoors,
      ),
      summer: take.quantity(
        'place.outdoors.summer',
        () => movedBy(usual, { low: 10, likely: 17, high: 22 }, practice),
        outdoors,
      ),
      windSpeed: take.quantity('place.outdoors.windSpeed', undefined, outdoors),
    },
    mains: {
      winter: take.quantity('place.mains.winter', undefined, mains),
      summer: take.quantity('place.mains.summer', undefined, mains),
    },
  };
}

/** Whether anything in the design depends on the weather outdoors, and on the water main. */
function readsOfPlace({ room, tank: { load } }: DesignDocument): {
  readonly outdoors: boolean;
  readonly mains: boolean;
} {
  const isVentilated = room.moisture?.kind === 'ventilated';
  if (load.kind === 'measured') return { outdoors: isVentilated, mains: false };
  const parts = load.kind === 'panels' ? load.panels : (load.faces ?? []);
  const vessels = [load.sump, load.refuge, load.overflow].map((vessel) =>
    vessel?.kind === 'rectangular' ? vessel.exposure : undefined,
  );
  const exposures = [load.stand, ...parts.map(({ exposure }) => exposure), ...vessels];
  return {
    outdoors: isVentilated || exposures.some((exposure) => exposure?.kind === 'outdoors' || exposure?.kind === 'slab'),
    mains: load.makeUpFrom === 'mains' || load.waterChange !== undefined,
  };
}

function resolveMoisture(take: Resolver): ResolvedDesign['room']['moisture'] {
  const path = 'room.moisture';
  const kind = take.choice<ResolvedDesign['room']['moisture']['kind']>(`${path}.kind`);
  switch (kind) {
    case 'humidityKnown':
      return { kind };
    case 'ventilated': {
      const airChanges = take.quantity(`${path}.airChanges`);
      return { kind, airChanges, outdoorHumidity: take.quantity(`${path}.outdoorHumidity`) };
    }
    case 'dehumidifier':
      return { kind, energyPerLitre: take.quantity(`${path}.energyPerLitre`) };
  }
}

function resolveRoom(take: Resolver, electricity: Followed): ResolvedDesign['room'] {
  const temperature = take.quantity('room.temperature');
  const usual = { path: 'room.temperature', estimate: temperature };
  return {
    temperature,
    coldest: take.quantity('room.coldest', () => movedBy(usual, { low: -3, likely: -2, high: -1 }, practice)),
    warmest: take.quantity('room.warmest', () => warmestRoom(temperature)),
    relativeHumidity: take.quantity('room.relativeHumidity'),
    moisture: resolveMoisture(take),
    volume: take.quantity('room.volume'),
    height: take.quantity('room.height'),
    monthsHeated: take.quantity('room.monthsHeated'),
    coldestMonth: take.choice('room.coldestMonth'),
    houseHeatPrice: take.quantity('room.houseHeatPrice', () =>
      timesBy(electricity, { low: 0.25, likely: 0.4, high: 1 }, practice),
    ),
    cooledInSummer: take.choice('room.cooledInSummer'),
  };
}

function resolveTank(take: Resolver, room: Followed): ResolvedDesign['tank'] {
  const waterTemperature = take.quantity('tank.waterTemperature');
  const water = take.choice<'fresh' | 'sea'>('tank.water');
  return {
    waterTemperature,
    water,
    salinity: take.quantity('tank.salinity', () => usualSalinity(water)),
    livestock: take.choice('tank.livestock'),
    load: resolveLoad(take, { room, water: { path: 'tank.waterTemperature', estimate: waterTemperature } }),
  };
}

function resolveSource(take: Resolver): ResolvedDesign['source'] {
  const kind = take.choice<'roomAir' | 'otherRoom'>('source.kind');
  if (kind === 'roomAir') return { kind };
  const temperature = take.quantity('source.temperature');
  const usual = { path: 'source.temperature', estimate: temperature };
  return {
    kind,
    temperature,
    coldest: take.quantity('source.coldest', () => movedBy(usual, { low: -6, likely: -3, high: -1 }, practice)),
    warmest: take.quantity('source.warmest', () => movedBy(usual, { low: 3, likely: 6, high: 12 }, practice)),
    volume: take.quantity('source.volume'),
  };
}

function resolveMachine(take: Resolver, document: DesignDocument): ResolvedDesign['machine'] {
  const described = document.machine.compressor;
  const application: ApplicationName = usualApplication(described);
  return {
    refrigerant: take.choice<string>('machine.refrigerant'),
    compressor: resolveCompressor(take, described),
    application: take.choice('machine.application', {
      name: application,
      source: 'follows from the description of the compressor',
    }),
    shellPlace: take.choice('machine.shellPlace'),
    enclosure: resolveEnclosure(take),
    sunkenPlace: resolveSunkenPlace(take),
    charge: take.quantity('machine.charge', () => usualCharge(described)),
    forFlammables: take.choice('machine.forFlammables'),
  };
}

function resolveCompressor(take: Resolver, described: CompressorDescription): ResolvedDesign['machine']['compressor'] {
  const path = 'machine.compressor';
  const usual = usualCompressor(described);
  const { kind, madeFor } = described;
  const details = () => ({
    speed: take.quantity(`${path}.speed`, () => usual.speed),
    clearanceRatio: take.quantity(`${path}.clearanceRatio`, () => usual.clearanceRatio),
    reexpansionExponent: take.quantity(`${path}.reexpansionExponent`, () => usual.reexpansionExponent),
    fillingFactor: take.quantity(`${path}.fillingFactor`, () => usual.fillingFactor),
    frictionPressure: take.quantity(`${path}.frictionPressure`, () => usual.frictionPressure),
    shellHeatShare: take.quantity(`${path}.shellHeatShare`, () => usual.shellHeatShare),
  });
  const compressionEfficiency = () => take.quantity(`${path}.compressionEfficiency`, () => usual.compressionEfficiency);
  switch (kind) {
    case 'salvaged': {
      const { appliance } = described;
      const displacement = take.quantity(`${path}.displacement`, () => usualDisplacement(appliance, madeFor));
      return { kind, madeFor, appliance, displacement, ...details(), compressionEfficiency: compressionEfficiency() };
    }
    case 'displacement': {
      const { application } = described;
      const displacement = take.quantity(`${path}.displacement`);
      return { kind, madeFor, displacement, application, ...details(), compressionEfficiency: compressionEfficiency() };
    }
    case 'rating': {
      const { ratingPoint } = described;
      const capacity = take.quantity(`${path}.capacity`);
      const power = take.quantity(`${path}.power`);
      return { kind, madeFor, ratingPoint, capacity, power, ...details() };
    }
  }
}

function resolveEnclosure(take: Resolver): ResolvedDesign['machine']['enclosure'] {
  const kind = take.choice<'openRoom' | 'closedCabinet' | 'hood'>('machine.enclosure.kind');
  return kind === 'openRoom' ? { kind } : { kind, volume: take.quantity('machine.enclosure.volume') };
}

function resolveSunkenPlace(take: Resolver): ResolvedDesign['machine']['sunkenPlace'] {
  const kind = take.choice<'unknown' | 'none' | 'pit'>('machine.sunkenPlace.kind');
  return kind === 'pit' ? { kind, volume: take.quantity('machine.sunkenPlace.volume') } : { kind };
}

function resolveSafeguards(take: Resolver, wettedMetal: string): ResolvedDesign['safeguards'] {
  type Safeguards = ResolvedDesign['safeguards'];
  const choice = <Name extends keyof Safeguards>(name: Name, matters = true) =>
    take.choice<Safeguards[Name]>(`safeguards.${name}`, undefined, matters);
  return {
    overTemperatureCutOut: choice('overTemperatureCutOut'),
    residualCurrentProtection: choice('residualCurrentProtection'),
    airPumpIntake: choice('airPumpIntake'),
    sockets: choice('sockets'),
    dripLoops: choice('dripLoops'),
    machineLevel: choice('machineLevel'),
    metalEarthed: choice('metalEarthed', wettedMetal !== 'polymer'),
  };
}

function resolveExchangers(take: Resolver): ResolvedDesign['exchangers'] {
  const evaporatorApproach = take.quantity('exchangers.evaporatorApproach');
  const condenserArrangement = take.choice<'intermediateLoop' | 'coilInTank'>('exchangers.condenserArrangement');
  return {
    evaporatorApproach,
    condenserApproach: take.quantity('exchangers.condenserApproach', () =>
      usualCondenserApproach(condenserArrangement),
    ),
    condenserArrangement,
    wettedMetal: take.choice('exchangers.wettedMetal'),
    tubeDiameter: take.quantity('exchangers.tubeDiameter'),
    superheat: take.quantity('exchangers.superheat'),
    subcooling: take.quantity('exchangers.subcooling'),
    airSpeed: take.quantity('exchangers.airSpeed'),
  };
}

function resolvePrices(take: Resolver, { prices }: DesignDocument, electricity: Estimate): ResolvedDesign['prices'] {
  return {
    currency: prices.currency,
    electricity,
    loopParts: take.quantity('prices.loopParts'),
    heater: take.quantity('prices.heater'),
    certifiedHeatPump: take.quantity('prices.certifiedHeatPump'),
    certifiedCop: take.quantity('prices.certifiedCop'),
    life: take.quantity('prices.life'),
    discountRate: take.quantity('prices.discountRate'),
  };
}
