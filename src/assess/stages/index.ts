// The stages of an Assessment in the order they run, each with the parts of the design it reads and the results it needs.

import type { OperatingPoint } from '../../loop/index.ts';
import type { PlantHardware, PlantState } from '../../plant/index.ts';
import type { TankLoad } from '../../tank/index.ts';
import type { Year } from '../../year/index.ts';
import { type Stage, stage } from '../stage.ts';
import { type AccountsResult, accountsOf } from './accounts.ts';
import { type CompressorResult, compressorOf, operatingAt } from './machine.ts';
import { type MonthPoint, monthPoints, plantAtSpell, plantHardware, yearOf } from './plant.ts';
import { type SizingResult, sizingOf } from './sizing.ts';
import { type SurroundingsResult, surroundingsOf } from './surroundings.ts';
import { tankLoadAt } from './tank.ts';

export interface StageResults {
  readonly surroundings: SurroundingsResult;
  /** The tank at the coldest spell. */
  readonly tank: TankLoad;
  readonly compressor: CompressorResult;
  /** The loop at the coldest spell. */
  readonly operating: OperatingPoint;
  readonly sizing: SizingResult;
  readonly hardware: PlantHardware;
  /** Tank, room and loop at the coldest spell. */
  readonly plant: PlantState;
  readonly months: readonly MonthPoint[];
  readonly year: Year;
  readonly accounts: AccountsResult;
}

type Named<Name extends keyof StageResults> = Stage<StageResults, Name>;

const surroundings = stage<StageResults, 'surroundings', 'place' | 'room' | 'source', never>(
  'surroundings',
  ['place', 'room', 'source'],
  [],
  (design) => surroundingsOf(design),
);

const tank = stage<StageResults, 'tank', 'tank' | 'room', 'surroundings'>(
  'tank',
  ['tank', 'room'],
  ['surroundings'],
  (design, { surroundings: { spell, atmosphericPressure } }) =>
    tankLoadAt(design.tank, design.room, spell.roomTemperature, atmosphericPressure),
);

const compressor = stage<StageResults, 'compressor', 'machine', never>('compressor', ['machine'], [], ({ machine }) =>
  compressorOf(machine.compressor),
);

const operating = stage<StageResults, 'operating', 'machine' | 'tank' | 'exchangers', 'surroundings' | 'compressor'>(
  'operating',
  ['machine', 'tank', 'exchangers'],
  ['surroundings', 'compressor'],
  (design, results) => operatingAt(design, results.compressor.model, results.surroundings.spell.sourceTemperature),
);

const sizing = stage<StageResults, 'sizing', 'tank' | 'room' | 'exchangers' | 'engine', 'surroundings' | 'operating'>(
  'sizing',
  ['tank', 'room', 'exchangers', 'engine'],
  ['surroundings', 'operating'],
  (design, results) => sizingOf(design, results.surroundings, results.operating),
);

const hardware = stage<StageResults, 'hardware', 'source' | 'machine' | 'exchangers' | 'power' | 'engine', never>(
  'hardware',
  ['source', 'machine', 'exchangers', 'power', 'engine'],
  [],
  (design) => plantHardware(design),
);

const plant = stage<StageResults, 'plant', never, 'tank' | 'operating' | 'hardware'>(
  'plant',
  [],
  ['tank', 'operating', 'hardware'],
  (_design, results) => plantAtSpell(results.tank, results.operating, results.hardware),
);

const months = stage<StageResults, 'months', 'tank' | 'room' | 'machine' | 'exchangers', 'surroundings' | 'compressor'>(
  'months',
  ['tank', 'room', 'machine', 'exchangers'],
  ['surroundings', 'compressor'],
  (design, results) => monthPoints(design, results.surroundings, results.compressor.model),
);

const year = stage<StageResults, 'year', never, 'months' | 'hardware'>(
  'year',
  [],
  ['months', 'hardware'],
  (_design, results) => yearOf(results.months, results.hardware),
);

const accounts = stage<StageResults, 'accounts', 'prices' | 'room' | 'source', 'year'>(
  'accounts',
  ['prices', 'room', 'source'],
  ['year'],
  (design, results) => accountsOf(design, results.year),
);

/** All stages, each after those it needs. */
export const stages: readonly Stage<StageResults, keyof StageResults>[] = [
  surroundings,
  tank,
  compressor,
  operating,
  sizing,
  hardware,
  plant,
  months,
  year,
  accounts,
] as readonly Named<keyof StageResults>[];
