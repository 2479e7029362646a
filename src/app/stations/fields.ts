// Which fields of the design belong to which station, and in which order the first of them stand. What a field is called
// and takes comes from its record; this file only says where it is asked.

import type { FieldRecord } from '../../design/index.ts';
import type { StationName } from '../pages.ts';

/** A station opens with at most this many fields. */
export const mostFields = 7;

/** Asked first, in this order, as far as the design has them. */
const shownFirst: Readonly<Record<StationName, readonly string[]>> = {
  'what-leaves': [
    'tank.waterTemperature',
    'room.temperature',
    'tank.load.kind',
    'tank.load.energy',
    'tank.load.duration',
    'tank.load.lid',
    'tank.load.surface',
    'tank.load.pumpPower',
    'tank.load.lightPower',
    'room.coldest',
  ],
  'what-to-wrap': [
    'prices.electricity',
    'room.houseHeatPrice',
    'room.monthsHeated',
    'room.cooledInSummer',
    'wrapping.years',
    'prices.discountRate',
  ],
  'the-machine': [
    'machine.compressor.appliance',
    'machine.compressor.year',
    'machine.compressor.madeFor',
    'machine.refrigerant',
    'machine.compressor.displacement',
    'machine.count',
    'machine.shellPlace',
  ],
  'where-it-settles': [
    'source.kind',
    'source.temperature',
    'source.coldest',
    'room.coldest',
    'exchangers.evaporatorApproach',
    'exchangers.condenserApproach',
    'exchangers.condenserArrangement',
    'power.fan',
  ],
  'two-bills': [
    'prices.electricity',
    'prices.currency',
    'room.houseHeatPrice',
    'room.monthsHeated',
    'room.cooledInSummer',
    'prices.loopParts',
    'prices.heater',
  ],
};

/** Everything else, by the longest matching beginning of its path. */
const homes: readonly (readonly [string, StationName])[] = [
  ['tank.', 'what-leaves'],
  ['room.temperature', 'what-leaves'],
  ['room.coldest', 'what-leaves'],
  ['room.relativeHumidity', 'what-leaves'],
  ['room.warmest', 'what-leaves'],
  ['wrapping.', 'what-to-wrap'],
  ['room.volume', 'the-machine'],
  ['room.height', 'the-machine'],
  ['source.volume', 'the-machine'],
  ['place.region', 'the-machine'],
  ['machine.', 'the-machine'],
  ['safeguards.', 'the-machine'],
  ['exchangers.wettedMetal', 'the-machine'],
  ['exchangers.suctionPressureLimit', 'the-machine'],
  ['power.crankcaseHeater', 'the-machine'],
  ['source.', 'where-it-settles'],
  ['exchangers.', 'where-it-settles'],
  ['power.', 'where-it-settles'],
  ['place.', 'where-it-settles'],
  ['room.', 'two-bills'],
  ['prices.', 'two-bills'],
];

/** The station a field is asked at; undefined for the name and the note, which stand with the design itself. */
export function homeOf(path: string): StationName | undefined {
  const matches = homes.filter(([start]) => path.startsWith(start));
  return matches.toSorted((a, b) => b[0].length - a[0].length)[0]?.[1];
}

export interface StationFields {
  readonly shown: readonly FieldRecord[];
  /** Behind "I know more". */
  readonly more: readonly FieldRecord[];
  /** Behind that again. */
  readonly expert: readonly FieldRecord[];
  /** Of items of lists: they stand with their item, where the list is shown. */
  readonly inLists: readonly FieldRecord[];
}

/** The fields of a station, as this design has them. */
export function fieldsOfStation(station: StationName, fields: readonly FieldRecord[]): StationFields {
  const shown = shownFirst[station]
    .map((path) => fields.find((field) => field.path === path))
    .filter((field) => field !== undefined)
    .slice(0, mostFields);
  const others = fields.filter((field) => homeOf(field.path) === station && !shown.includes(field));
  const rest = others.filter(({ item }) => item === undefined);
  return {
    shown,
    more: rest.filter((field) => field.level !== 'expert'),
    expert: rest.filter((field) => field.level === 'expert'),
    inLists: others.filter(({ item }) => item !== undefined),
  };
}
