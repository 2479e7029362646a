// The moments at which the rules of caution look at the loop beside the coldest spell: the usual winter and the warmest
// month in which the machine still has something to do; and the ranges of the loop's results there.

import type { RangedFact, Span } from '../../cautions/index.ts';
import type { OperatingPoint } from '../../loop/index.ts';
import type { Band, QuantityName } from '../../quantities/index.ts';
import type { StageResults } from '../stages/index.ts';
import type { Bands } from './pieces.ts';
import type { ResultValue } from './tank-values.ts';

export type MonthMoment = 'usual' | 'warmestMonth';

export interface WorkingMonth {
  readonly when: MonthMoment;
  /** Its place among the months. */
  readonly index: number;
}

type MonthResults = Pick<StageResults, 'surroundings' | 'monthLoads' | 'monthOperating'>;

/** The months of the usual winter and of the warmest work; one and the same month is told once. */
export function workingMonths({ surroundings, monthLoads, monthOperating }: MonthResults): readonly WorkingMonth[] {
  const working = surroundings.months
    .map(({ distance }, index) => ({ distance, index }))
    .filter(({ index }) => monthOperating[index] !== null && monthLoads[index]!.load > 0)
    .sort((left, right) => left.distance - right.distance);
  const usual = working.find(({ distance }) => distance === 0);
  const warmest = working.at(-1);
  return [
    ...(usual === undefined ? [] : [{ when: 'usual' as const, index: usual.index }]),
    ...(warmest === undefined || warmest === usual ? [] : [{ when: 'warmestMonth' as const, index: warmest.index }]),
  ];
}

/** How each ranged fact is read from an operating point, and what it is a number of. */
const readers: Readonly<Record<RangedFact, readonly [QuantityName, (point: OperatingPoint) => number]>> = {
  evaporatingTemperature: ['temperature', ({ evaporating }) => evaporating.temperature],
  condensingTemperature: ['temperature', ({ condensing }) => condensing.temperature],
  evaporatingPressure: ['pressure', ({ evaporating }) => evaporating.pressure],
  condensingPressure: ['pressure', ({ condensing }) => condensing.pressure],
  dischargeTemperature: ['temperature', ({ dischargeTemperature }) => dischargeTemperature],
  pressureRatio: ['ratio', ({ pressureRatio }) => pressureRatio],
};

/** What the rules ask of the machine itself, read the same way. */
const machineReaders = {
  current: ['current', ({ compressor }: OperatingPoint) => compressor.current],
  wallTemperature: ['temperature', ({ compressor }: OperatingPoint) => compressor.wallTemperature],
} as const satisfies Readonly<Record<string, readonly [QuantityName, (point: OperatingPoint) => number]>>;

/**
 * The loop's results in those months, to be varied with everything else. Where a variation leaves the month without an
 * operating point it is taken not to move these results; a limit of the models is said elsewhere (monthsWithoutMachine).
 */
export function monthValues(likely: MonthResults): readonly ResultValue[] {
  return workingMonths(likely).flatMap(({ when, index }) =>
    Object.entries({ ...readers, ...machineReaders }).map(([fact, [quantity, read]]) => ({
      name: `${when}.${fact}`,
      quantity,
      read: ({ monthOperating }: StageResults) => read((monthOperating[index] ?? likely.monthOperating[index])!),
    })),
  );
}

/** The ranges of the loop at one moment, where they were varied. */
export function rangesAt(
  when: MonthMoment | 'coldestSpell',
  { bands }: Pick<Bands, 'bands'>,
): Readonly<Partial<Record<RangedFact, Span>>> {
  const prefix = when === 'coldestSpell' ? 'operating' : when;
  return Object.fromEntries(
    Object.keys(readers).flatMap((fact) => {
      const name =
        prefix === 'operating' && fact === 'pressureRatio' ? 'operating.compressor.pressureRatio' : `${prefix}.${fact}`;
      const band = bands[name];
      return band === undefined ? [] : [[fact, { low: band.low, high: band.high }]];
    }),
  );
}

/** Current and wall of the machine at one moment, with their ranges where they were varied. */
export function machineBandsAt(
  when: MonthMoment | 'coldestSpell',
  point: OperatingPoint,
  { bands }: Pick<Bands, 'bands'>,
): Readonly<Record<keyof typeof machineReaders, Band>> {
  const bandAt = (fact: keyof typeof machineReaders): Band => {
    const likely = machineReaders[fact][1](point);
    const name = when === 'coldestSpell' ? `operating.compressor.${fact}` : `${when}.${fact}`;
    return bands[name] ?? { low: likely, likely, high: likely };
  };
  return { current: bandAt('current'), wallTemperature: bandAt('wallTemperature') };
}
