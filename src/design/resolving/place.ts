// Place, room and heat source of a document -> resolved.

import type { Region, ResolvedDesign } from '../plain.ts';
import type { DesignDocument } from '../schema/design.ts';
import { practice } from '../schema/field.ts';
import { type Followed, movedBy, timesBy, warmestRoom } from './defaults.ts';
import type { Resolver } from './resolver.ts';

export function resolvePlace(take: Resolver, document: DesignDocument): ResolvedDesign['place'] {
  const { year, air, wind, mains } = readsOfPlace(document);
  const winter = take.quantity('place.outdoors.winter', undefined, year);
  const usual = { path: 'place.outdoors.winter', estimate: winter };
  return {
    altitude: take.quantity('place.altitude'),
    region: take.choice<Region>('place.region'),
    outdoors: {
      winter,
      coldest: take.quantity(
        'place.outdoors.coldest',
        () => movedBy(usual, { low: -12, likely: -7, high: -4 }, practice),
        air,
      ),
      summer: take.quantity(
        'place.outdoors.summer',
        () => movedBy(usual, { low: 10, likely: 17, high: 22 }, practice),
        year,
      ),
      windSpeed: take.quantity('place.outdoors.windSpeed', undefined, wind),
    },
    mains: {
      winter: take.quantity('place.mains.winter', undefined, mains),
      summer: take.quantity('place.mains.summer', undefined, mains),
    },
  };
}

/** Which of the weather the design depends on: its year, the air of the coldest spell, the wind; and on the water main. */
function readsOfPlace({ room, tank: { load } }: DesignDocument) {
  const isVentilated = room.moisture?.kind === 'ventilated';
  if (load.kind === 'measured') return { year: isVentilated, air: isVentilated, wind: false, mains: false };
  const parts = load.kind === 'panels' ? load.panels : (load.faces ?? []);
  const vessels = [load.sump, load.refuge, load.overflow].map((vessel) =>
    vessel?.kind === 'rectangular' ? vessel.exposure : undefined,
  );
  const exposures = [load.stand, ...parts.map(({ exposure }) => exposure), ...vessels];
  const isOutdoors = exposures.some((exposure) => exposure?.kind === 'outdoors');
  const isOnGround = exposures.some((exposure) => exposure?.kind === 'slab');
  return {
    year: isVentilated || isOutdoors || isOnGround,
    air: isVentilated || isOutdoors,
    wind: isOutdoors,
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

export function resolveRoom(take: Resolver, electricity: Followed): ResolvedDesign['room'] {
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

export function resolveSource(take: Resolver): ResolvedDesign['source'] {
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
