// The tank's own results that carry a band, at the coldest spell and in every month, by the name they have in the working.

import type { QuantityName } from '../../quantities/index.ts';
import { fallTimeLinear, type TankLoad } from '../../tank/index.ts';
import type { StageResults } from '../stages/index.ts';

/** The results behind the tank's own values; they need no machine. */
export type TankResults = Pick<StageResults, 'surroundings' | 'meter' | 'tank' | 'monthLoads'>;

/** One value: its name, the quantity it is of, and where it stands in the results. */
export interface ResultValue<Results = StageResults> {
  readonly name: string;
  readonly quantity: QuantityName;
  readonly read: (results: Results) => number;
  /** Whether it ends at zero by nature, as a need, a power or a flow does; absent: it may have either sign. */
  readonly isNeverNegative?: true;
}

export function neverNegative<Results>(value: ResultValue<Results>): ResultValue<Results> {
  return { ...value, isNeverNegative: true };
}

/** How far the water is let fall where nobody asks for other falls [K]. */
export const usualFalls = [1, 2, 3, 5] as const;

/**
 * The tank's own values.
 * @param likely  results with every input at its likely value: they decide which paths there are
 * @param falls   by how much the water is let fall without heat [K]
 */
export function tankValues(
  likely: TankResults,
  falls: readonly number[] = usualFalls,
): readonly ResultValue<TankResults>[] {
  return [
    value('surroundings.atmosphericPressure', 'pressure', ({ surroundings }) => surroundings.atmosphericPressure),
    ...sumValues('tank', ({ tank }) => tank),
    ...pathValues('tank', likely.tank, ({ tank }) => tank),
    value('tank.conductance', 'thermalConductance', ({ tank }) => tank.conductance),
    value('tank.timeConstant', 'duration', ({ tank }) => tank.heatCapacity / tank.conductance),
    value('tank.gains.pump', 'power', ({ tank }) => tank.gains.pump),
    value('tank.gains.light', 'power', ({ tank }) => tank.gains.light),
    value('tank.gains.ultraviolet', 'power', ({ tank }) => tank.gains.ultraviolet),
    ...vesselsOf(likely.tank).map((vessel) =>
      value(`tank.vessels.${vessel}.loss`, 'power', ({ tank }) => lossOfVessel(tank, vessel)),
    ),
    ...falls.map((fall) => value(fallRate(fall), 'frequency', ({ tank }) => rateOfFall(tank, fall))),
    ...meterValues(likely),
    ...monthsOf(likely),
  ];
}

/** Name of the step behind a fall. */
export function fallName(fall: number): string {
  return `tank.falls.${fall}K`;
}

/** Name of the reciprocal of its time, which is 0 and not without end where the water never falls so far. */
export function fallRate(fall: number): string {
  return `tank.fallRates.${fall}K`;
}

/** Vessels by the paths that leave by them. */
export function vesselsOf({ paths }: TankLoad): readonly string[] {
  return [...new Set(paths.flatMap(({ vessel }) => (vessel === undefined ? [] : [vessel])))];
}

/** Name of the month's steps: 'year.january'. */
export function monthPath(month: string): string {
  return `year.${month}`;
}

/** Heat that a tank needs in a time [J]; none where its gains exceed its losses. */
export function heatNeeded({ load }: TankLoad, duration: number): number {
  return Math.max(0, load) * duration;
}

function monthsOf(likely: TankResults): readonly ResultValue<TankResults>[] {
  const heatOfMonth = ({ surroundings, monthLoads }: TankResults, index: number) =>
    heatNeeded(monthLoads[index]!, surroundings.months[index]!.duration);
  return [
    ...likely.surroundings.months.flatMap(({ month }, index) => [
      ...sumValues(`${monthPath(month)}.tank`, ({ monthLoads }) => monthLoads[index]!),
      // Paths of its twin are the same, whatever is varied.
      ...(twinOf(likely, index) === index
        ? pathValues(`${monthPath(month)}.tank`, likely.monthLoads[index]!, ({ monthLoads }) => monthLoads[index]!)
        : []),
      neverNegative(
        value(`${monthPath(month)}.energies.heatNeeded`, 'energy', (results) => heatOfMonth(results, index)),
      ),
    ]),
    neverNegative(
      value('year.energies.heatNeeded', 'energy', (results) =>
        results.surroundings.months.reduce((sum, _, index) => sum + heatOfMonth(results, index), 0),
      ),
    ),
  ];
}

/** The first month as far from the coldest one: all that surrounds the tank is the same in both. */
export function twinOf({ surroundings: { months } }: Pick<TankResults, 'surroundings'>, index: number): number {
  return months.findIndex(({ distance }) => distance === months[index]!.distance);
}

function sumValues(prefix: string, loadOf: (results: TankResults) => TankLoad): readonly ResultValue<TankResults>[] {
  return [
    value(`${prefix}.loss`, 'power', (results) => loadOf(results).loss),
    value(`${prefix}.load`, 'power', (results) => loadOf(results).load),
    value(`${prefix}.evaporation`, 'evaporation', (results) => loadOf(results).evaporation),
  ];
}

function pathValues(
  prefix: string,
  likely: TankLoad,
  loadOf: (results: TankResults) => TankLoad,
): readonly ResultValue<TankResults>[] {
  return likely.paths.map(({ path }) =>
    value(`${prefix}.paths.${path}`, 'power', (results) => heatByPath(loadOf(results)).get(path) ?? 0),
  );
}

function meterValues({ meter }: TankResults): readonly ResultValue<TankResults>[] {
  if (meter === null) return [];
  const read = (pick: (meter: NonNullable<TankResults['meter']>) => number) => (results: TankResults) =>
    pick(results.meter!);
  return [
    value(
      'tank.meter.meanPower',
      'electricPower',
      read(({ meanPower }) => meanPower),
    ),
    value(
      'tank.meter.measuredLoss',
      'power',
      read(({ measuredLoss }) => measuredLoss),
    ),
    value(
      modelledLossName,
      'power',
      read(({ modelledLoss }) => modelledLoss),
    ),
    value(
      'tank.meter.ratio',
      'ratio',
      read(({ ratio }) => ratio),
    ),
  ];
}

/** Its steps stand apart, under 'meter'. */
export const modelledLossName = 'meter.tank.loss';

const heatMaps = new WeakMap<TankLoad, ReadonlyMap<string, number>>();

/** Heat of each path by its name; kept with the load, since every variation of a design asks for all of them. */
function heatByPath(load: TankLoad): ReadonlyMap<string, number> {
  const known = heatMaps.get(load);
  if (known !== undefined) return known;
  const made = new Map(load.paths.map(({ path, heat }) => [path, heat]));
  heatMaps.set(load, made);
  return made;
}

/** Heat that leaves by one vessel [W]. */
function lossOfVessel({ paths }: TankLoad, name: string): number {
  return paths.reduce((sum, { vessel, heat }) => (vessel === name ? sum + heat : sum), 0);
}

/** In closed form from what is known at the start; the likely time itself is integrated, and the range moves with this. */
function rateOfFall({ heatCapacity, conductance, loss }: TankLoad, fall: number): number {
  if (!(conductance > 0)) return loss > 0 ? loss / (heatCapacity * fall) : 0;
  const time = fallTimeLinear(heatCapacity, conductance, loss, fall);
  return time === null ? 0 : 1 / time;
}

function value(name: string, quantity: QuantityName, read: (results: TankResults) => number): ResultValue<TankResults> {
  return { name, quantity, read };
}
