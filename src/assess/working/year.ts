// The working of the year: conditions of each month, the tank's load and the loop's operating point in them, energies and
// sums. Months of equal temperatures share one load and one operating point; their steps stand with the first of them.

import type { OperatingPoint } from '../../loop/index.ts';
import type { WorkingStep } from '../../quantities/index.ts';
import { monthWorking, nearbyWorking, type RoomClimate, type SourceClimate } from '../../surroundings/index.ts';
import type { TankLoad } from '../../tank/index.ts';
import { type MonthResult, yearWorking } from '../../year/index.ts';
import { monthPath } from '../answers/tank-values.ts';
import type { TankAloneResults } from '../stages/accounts/heater.ts';
import type { StagedDesign } from '../stages/engine-assumptions.ts';
import { type StageResults, tankSlice } from '../stages/index.ts';
import { dependsOnSeasons } from '../stages/tank/tank.ts';
import { dehumidifierSteps } from './dehumidifier.ts';
import { operatingSteps, plantOrigins, severalSteps } from './machine.ts';
import { tankSteps } from './tank.ts';
import { under } from './under.ts';

/** Everything behind the year of an assessment. */
export function yearSteps(design: StagedDesign, results: StageResults): readonly WorkingStep[] {
  const used = usedPoints(results);
  const points = used.flatMap((point) => pointSteps(design, results, point));
  const byMonth = new Map(used.map((point) => [point.month.conditions.month, point]));
  const origins = ({ conditions }: MonthResult) => {
    const { tankAt, operatingAt } = byMonth.get(conditions.month)!;
    return plantOrigins(design, `${tankAt}.tank`, operatingAt === null ? null : `${operatingAt}.`);
  };
  return [
    ...climateSteps(design, results),
    ...points,
    ...dehumidifierSteps(design, results.year, evaporationIn(results.monthLoads), 'year'),
    ...yearWorking(results.year, results.hardware, origins),
  ];
}

/** Evaporation of the months, each with its own step. */
function evaporationIn(loads: readonly TankLoad[]) {
  return ({ conditions }: MonthResult, index: number) =>
    [loads[index]!.evaporation, `${monthPath(conditions.month)}.tank.evaporation`] as const;
}

/** One month with the steps that its load and its operating point are found under. */
interface UsedPoint {
  readonly month: MonthResult;
  readonly load: TankLoad;
  readonly operating: OperatingPoint | null;
  /** 'year.january'; null where the machine does not run. */
  readonly tankAt: string;
  readonly operatingAt: string | null;
}

function usedPoints({ year, monthLoads, monthOperating }: StageResults): readonly UsedPoint[] {
  const first = new Map<unknown, string>();
  const firstWith = (result: unknown, month: string) => {
    const known = first.get(result);
    if (known !== undefined) return known;
    first.set(result, month);
    return month;
  };
  return year.months.map((month, index) => {
    const at = monthPath(month.conditions.month);
    const load = monthLoads[index]!;
    const operating = month.machine === null ? null : monthOperating[index]!;
    const operatingAt = operating === null ? null : firstWith(operating, at);
    return { month, load, operating, tankAt: firstWith(load, at), operatingAt };
  });
}

/** Load and operating point, where this month is the first that has them; what another month found, told again. */
function pointSteps(design: StagedDesign, results: StageResults, used: UsedPoint): readonly WorkingStep[] {
  const { operating, operatingAt } = used;
  const { month } = used.month.conditions;
  const at = monthPath(month);
  const steps = [...loadSteps(design, results, used)];
  if (operatingAt === at && operating !== null) {
    const room = `${at}.roomTemperature`;
    const source = design.source.kind === 'roomAir' ? room : `${at}.sourceTemperature`;
    const around = { tankRoom: room, sourceRoom: source, outdoors: `${at}.outdoorTemperature` };
    const place = results.surroundings.months.find((each) => each.month === month)!;
    const placed = { place, source, surroundings: around[design.machine.shellPlace] };
    const loop = operatingSteps(design, results, operating, placed, 'operating');
    steps.push(...under(at, [...loop, ...severalSteps(operating, design.machine.count)]));
  }
  return steps;
}

type Loaded = Pick<UsedPoint, 'load' | 'tankAt'> & { readonly month: Pick<MonthResult, 'conditions'> };

/** The tank's load of a month: its own steps, or the last of those of the month that found the same. */
function loadSteps(
  design: StagedDesign,
  results: Pick<StageResults, 'surroundings' | 'meter'>,
  { load, tankAt, month: { conditions } }: Loaded,
): readonly WorkingStep[] {
  const at = monthPath(conditions.month);
  const place = results.surroundings.months.find(({ month }) => month === conditions.month)!;
  const own = (name: string) => `${tankAt}.${name}`;
  const steps = tankSteps(design, results, load, place, {
    room: own('roomTemperature'),
    outdoors: own('outdoorTemperature'),
    ground: own('groundTemperature'),
    mains: own('mainsTemperature'),
  });
  if (tankAt === at) return under(at, steps);
  return under(tankAt, steps)
    .filter(({ result }) => isTold(result.slice(tankAt.length + 1)))
    .map((step) => ({ ...step, result: `${at}${step.result.slice(tankAt.length)}` }));
}

/** Results of the tank that the answer tells of each month. */
function isTold(name: string): boolean {
  return name.startsWith('tank.paths.') || ['tank.loss', 'tank.load', 'tank.evaporation'].includes(name);
}

/** The year of the tank alone, in which a plain heater does everything. */
export function heaterYearSteps(design: StagedDesign, results: TankAloneResults): readonly WorkingStep[] {
  const { heaterYear, monthLoads, hardware } = results;
  const first = new Map<TankLoad, string>();
  const used = heaterYear.months.map((month, index): Loaded => {
    const load = monthLoads[index]!;
    const tankAt = first.get(load) ?? monthPath(month.conditions.month);
    first.set(load, tankAt);
    return { month, load, tankAt };
  });
  const byMonth = new Map(used.map((each) => [each.month.conditions.month, each.tankAt]));
  const origins = ({ conditions }: MonthResult) => plantOrigins(design, `${byMonth.get(conditions.month)!}.tank`, null);
  return [
    ...climateSteps(design, results),
    ...used.flatMap((each) => loadSteps(design, results, each)),
    ...dehumidifierSteps(design, heaterYear, evaporationIn(monthLoads), 'year'),
    ...yearWorking(heaterYear, hardware, origins),
  ];
}

function climateSteps(
  design: StagedDesign,
  { surroundings }: Pick<StageResults, 'surroundings'>,
): readonly WorkingStep[] {
  const { room, source, place } = design;
  const climate: RoomClimate = { ...room, usual: room.temperature };
  const heatSource: SourceClimate =
    source.kind === 'roomAir' ? { kind: 'roomAir' } : { ...source, kind: 'otherRoom', usual: source.temperature };
  const coldestMonth = 'room.coldestMonth';
  const origins = {
    usual: 'room.temperature',
    warmest: 'room.warmest',
    monthsHeated: 'room.monthsHeated',
    coldestMonth,
    sourceUsual: 'source.temperature',
    sourceWarmest: 'source.warmest',
  };
  const nearby = {
    outdoorWinter: 'place.outdoors.winter',
    outdoorSummer: 'place.outdoors.summer',
    mainsWinter: 'place.mains.winter',
    mainsSummer: 'place.mains.summer',
  };
  const readsSeasons = dependsOnSeasons(tankSlice(design)) || design.machine.shellPlace === 'outdoors';
  return surroundings.months.flatMap((month) => [
    ...monthWorking(climate, heatSource, month, origins, monthPath(month.month)),
    ...(readsSeasons ? nearbyWorking(place, month, nearby, coldestMonth, monthPath(month.month)) : []),
  ]);
}
