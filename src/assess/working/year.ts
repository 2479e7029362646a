// The working of the year: conditions of each month, the tank's load and the loop's operating point in them, energies and
// sums. Months of equal temperatures share one load and one operating point; their steps stand with the first of them.

import type { OperatingPoint } from '../../loop/index.ts';
import type { WorkingStep } from '../../quantities/index.ts';
import { monthWorking, type RoomClimate, type SourceClimate } from '../../surroundings/index.ts';
import type { TankLoad } from '../../tank/index.ts';
import { type MonthResult, yearWorking } from '../../year/index.ts';
import type { StagedDesign } from '../stages/engine-assumptions.ts';
import type { StageResults } from '../stages/index.ts';
import { operatingSteps, plantOrigins } from './machine.ts';
import { tankSteps } from './tank.ts';

/** Everything behind the year of an assessment. */
export function yearSteps(design: StagedDesign, results: StageResults): readonly WorkingStep[] {
  const used = usedPoints(results);
  const points = used.flatMap((point) => pointSteps(design, results, point));
  const byMonth = new Map(used.map((point) => [point.month.conditions.month, point]));
  const origins = ({ conditions }: MonthResult) => {
    const { tankAt, operatingAt } = byMonth.get(conditions.month)!;
    return plantOrigins(design, `${tankAt}.tank`, operatingAt === null ? null : `${operatingAt}.operating`);
  };
  return [...climateSteps(design, results), ...points, ...yearWorking(results.year, results.hardware, origins)];
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

/** Load and operating point, where this month is the first that has them. */
function pointSteps(design: StagedDesign, results: StageResults, used: UsedPoint): readonly WorkingStep[] {
  const { load, operating, tankAt, operatingAt } = used;
  const { month, roomTemperature, sourceTemperature } = used.month.conditions;
  const at = monthPath(month);
  const steps: WorkingStep[] = [];
  if (tankAt === at) {
    steps.push(...under(at, tankSteps(design, results, load, roomTemperature, `${at}.roomTemperature`)));
  }
  if (operatingAt === at && operating !== null) {
    const from = design.source.kind === 'roomAir' ? `${at}.roomTemperature` : `${at}.sourceTemperature`;
    const source = { temperature: sourceTemperature, from };
    steps.push(...under(at, operatingSteps(design, results, operating, source, 'operating')));
  }
  return steps;
}

/**
 * Steps under a prefix: their names, and the origins that are names of steps among them. An origin that only names a
 * state of the loop is left out: of these states no month keeps more than its steps.
 */
function under(prefix: string, steps: readonly WorkingStep[]): readonly WorkingStep[] {
  const names = new Set(steps.map((step) => step.result));
  return steps.map((step) => {
    const kept = Object.entries(step.from).filter(([, from]) => names.has(from) || !from.startsWith('operating.'));
    const from = kept.map(([symbol, origin]) => [symbol, names.has(origin) ? `${prefix}.${origin}` : origin]);
    return { ...step, result: `${prefix}.${step.result}`, from: Object.fromEntries(from) };
  });
}

function climateSteps(design: StagedDesign, { surroundings }: StageResults): readonly WorkingStep[] {
  const { room, source } = design;
  const climate: RoomClimate = { ...room, usual: room.temperature };
  const heatSource: SourceClimate =
    source.kind === 'roomAir' ? { kind: 'roomAir' } : { ...source, kind: 'otherRoom', usual: source.temperature };
  const origins = {
    usual: 'room.temperature',
    warmest: 'room.warmest',
    monthsHeated: 'room.monthsHeated',
    coldestMonth: 'room.coldestMonth',
    sourceUsual: 'source.temperature',
    sourceWarmest: 'source.warmest',
  };
  return surroundings.months.flatMap((month) =>
    monthWorking(climate, heatSource, month, origins, monthPath(month.month)),
  );
}

function monthPath(month: string): string {
  return `year.${month}`;
}
