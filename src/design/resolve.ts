// Document -> resolved design: every number an Estimate in base SI, typed or assumed, every choice made; and the list of what
// was assumed, each with the words of its source. No physics: a default that depends on other fields comes from defaults.ts.

import type { Estimate, QuantityName } from '../quantities/index.ts';
import {
  type CompressorDescription,
  type Followed,
  movedBy,
  sameAs,
  timesBy,
  usualApplication,
  usualCharge,
  usualCompressor,
  usualCondenserApproach,
  usualDisplacement,
  usualEvaporationFactor,
  usualLidThickness,
  usualLoopPump,
  usualSalinity,
  warmestRoom,
} from './defaults.ts';
import { fieldRecord } from './field-records.ts';
import { type Follower, ownSpread } from './followers.ts';
import {
  type ApplicationName,
  type Assumption,
  estimatesIn,
  type LayerOf,
  type Region,
  type ResolvedDesign,
} from './plain.ts';
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
  const place = { altitude: take.quantity('place.altitude'), region: take.choice<Region>('place.region') };
  const electricity = take.quantity('prices.electricity');
  const room = resolveRoom(take, { path: 'prices.electricity', estimate: electricity });
  const tank = resolveTank(take, document, { path: 'room.temperature', estimate: room.temperature });
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
  const design = { name: document.name, place, room, tank, source, machine, exchangers, power, safeguards, prices };
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
    return [{ path, label: record!.label, quantity: record!.quantity!, estimate: varied }];
  });
}

function resolveRoom(take: Resolver, electricity: Followed): ResolvedDesign['room'] {
  const temperature = take.quantity('room.temperature');
  const usual = { path: 'room.temperature', estimate: temperature };
  return {
    temperature,
    coldest: take.quantity('room.coldest', () => movedBy(usual, { low: -3, likely: -2, high: -1 }, practice)),
    warmest: take.quantity('room.warmest', () => warmestRoom(temperature)),
    relativeHumidity: take.quantity('room.relativeHumidity'),
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

function resolveTank(take: Resolver, document: DesignDocument, room: Followed): ResolvedDesign['tank'] {
  const waterTemperature = take.quantity('tank.waterTemperature');
  const water = take.choice<'fresh' | 'sea'>('tank.water');
  return {
    waterTemperature,
    water,
    salinity: take.quantity('tank.salinity', () => usualSalinity(water)),
    livestock: take.choice('tank.livestock'),
    load:
      document.tank.load.kind === 'measured'
        ? resolveMeasured(take, room, { path: 'tank.waterTemperature', estimate: waterTemperature })
        : resolveRectangular(take, document.tank.load),
  };
}

type Load<Kind extends string> = Extract<ResolvedDesign['tank']['load'], { readonly kind: Kind }>;

function resolveMeasured(take: Resolver, room: Followed, water: Followed): Load<'measured'> {
  const measured = 'taken to be as usual while it was measured';
  return {
    kind: 'measured',
    energy: take.quantity('tank.load.energy'),
    duration: take.quantity('tank.load.duration'),
    roomTemperature: take.quantity('tank.load.roomTemperature', () => sameAs(room, measured)),
    waterTemperature: take.quantity('tank.load.waterTemperature', () => sameAs(water, measured)),
    volume: take.quantity('tank.load.volume'),
    evaporationShare: take.quantity('tank.load.evaporationShare'),
    ...resolveGains(take),
  };
}

function resolveRectangular(
  take: Resolver,
  { insulation, lid }: Extract<DesignDocument['tank']['load'], { kind: 'rectangular' }>,
): Load<'rectangular'> {
  const height = take.quantity('tank.load.height');
  const hasLid = lid !== 'none';
  const layerAt = (path: string): LayerOf<Estimate> => ({
    material: take.choice(`${path}.material`),
    thickness: take.quantity(`${path}.thickness`),
  });
  const size = {
    length: take.quantity('tank.load.length'),
    width: take.quantity('tank.load.width'),
    height,
    waterDepth: take.quantity('tank.load.waterDepth', () =>
      timesBy({ path: 'tank.load.height', estimate: height }, { low: 0.92, likely: 0.95, high: 0.98 }, practice),
    ),
    wall: layerAt('tank.load.wall'),
    insulation: {
      ...(insulation?.sides === undefined ? {} : { sides: layerAt('tank.load.insulation.sides') }),
      ...(insulation?.back === undefined ? {} : { back: layerAt('tank.load.insulation.back') }),
      ...(insulation?.bottom === undefined ? {} : { bottom: layerAt('tank.load.insulation.bottom') }),
    },
  };
  const surface = take.choice<'still' | 'rippled' | 'rough'>('tank.load.surface');
  const lidMaterial = take.choice<string>('tank.load.lidMaterial', undefined, hasLid);
  return {
    kind: 'rectangular',
    ...size,
    surface,
    lid,
    lidMaterial,
    lidThickness: take.quantity('tank.load.lidThickness', () => usualLidThickness(lidMaterial), hasLid),
    lidOpenShare: take.quantity('tank.load.lidOpenShare', undefined, lid === 'loose'),
    evaporationFactor: take.quantity('tank.load.evaporationFactor', () => usualEvaporationFactor(surface)),
    ...resolveGains(take),
  };
}

function resolveGains(take: Resolver) {
  const pumpPower = take.quantity('tank.load.pumpPower');
  const lightPower = take.quantity('tank.load.lightPower');
  const hasLight = lightPower.high > 0;
  return {
    pumpPower,
    pumpShareToWater: take.quantity('tank.load.pumpShareToWater', undefined, pumpPower.high > 0),
    lightPower,
    lightHours: take.quantity('tank.load.lightHours', undefined, hasLight),
    lightShareToWater: take.quantity('tank.load.lightShareToWater', undefined, hasLight),
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
