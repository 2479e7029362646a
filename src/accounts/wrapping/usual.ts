// Measures that are usually worth a look, with their costs, from data/measures.json, checked once when loaded. Which of them apply
// to a tank is found by applying them. Every cost is common practice without a source, and says so.

import data from '../../../data/measures.json';
import { insulationNames, lidMaterialNames, materialNames } from '../../matter/materials/index.ts';
import { DataError } from '../../numerics/index.ts';
import { type PanelGroup, panelGroups, type VesselName, vesselNames } from '../../tank/index.ts';

/** A sum with its doubt, in the currency of the design. */
export interface CostRange {
  readonly low: number;
  readonly likely: number;
  readonly high: number;
}

/** What a measure costs: once, by area [money/m²], by volume of the board [money/m³]. */
export interface CostRates {
  readonly fixed: CostRange;
  readonly perArea: CostRange | undefined;
  readonly perVolume: CostRange | undefined;
}

interface Sheet {
  readonly material: string;
  readonly thickness: number;
}

/** What is done. Lengths [m], times [s], differences [K]. */
export type UsualWork =
  | (Sheet & {
      readonly kind: 'lid';
      readonly vessel: VesselName;
      readonly panes: 'one' | 'two';
      /** Between two panes. */
      readonly gap?: number;
      readonly openShare: number;
    })
  | (Sheet & { readonly kind: 'board'; readonly where: readonly PanelGroup[]; readonly gap?: number })
  | (Sheet & { readonly kind: 'doubleGlazing'; readonly where: readonly PanelGroup[]; readonly gap: number })
  | { readonly kind: 'cooler'; readonly by: number }
  | (Sheet & { readonly kind: 'nightCover'; readonly hours: number; readonly openShare: number })
  | { readonly kind: 'calmerSurface'; readonly to: 'still' | 'rippled' };

export interface UsualMeasure {
  /** 'twinWallLid'. */
  readonly id: string;
  readonly name: string;
  readonly work: UsualWork;
  readonly cost: CostRates;
}

export interface UsualMeasures {
  /** Where the costs are from: 'common practice, no source'. */
  readonly source: string;
  readonly measures: readonly UsualMeasure[];
}

const FILE = 'data/measures.json';
const secondsPerDay = 86_400;

export const usualMeasures: UsualMeasures = readMeasures(data);

/**
 * Cost of a measure.
 *     C = f (C_0 + c_A A + c_V A d)
 * @param factor     f [-], price here over the usual one
 * @param fixed      C_0 [money]
 * @param perArea    c_A [money/m²]
 * @param area       A [m²]
 * @param perVolume  c_V [money/m³]
 * @param thickness  d [m], of the board
 * @returns          C [money]
 * Source: common practice, no source. Worked value: 1, 18, 8, 1.2 m², 400, 25 mm → 39.6.
 */
export function measureCost(
  factor: number,
  fixed: number,
  perArea: number,
  area: number,
  perVolume: number,
  thickness: number,
): number {
  return factor * (fixed + perArea * area + perVolume * area * thickness);
}

/** Sum of two costs [money] = C_1 + C_2. */
export function costTogether(first: number, second: number): number {
  return first + second;
}

/** How much of a measure there is: area A [m²], thickness d [m] of what is bought by volume, and the factor on prices. */
export interface MeasureSize {
  readonly area: number;
  readonly thickness: number;
  readonly factor?: number;
}

/** Cost of so much of a measure, at each end. */
export function costOf(
  { fixed, perArea, perVolume }: CostRates,
  { area, thickness, factor = 1 }: MeasureSize,
): CostRange {
  const at = (end: keyof CostRange) =>
    measureCost(factor, fixed[end], perArea?.[end] ?? 0, area, perVolume?.[end] ?? 0, thickness);
  return { low: at('low'), likely: at('likely'), high: at('high') };
}

/** @throws DataError naming the place and the rule that a file of measures breaks */
export function readMeasures(raw: unknown): UsualMeasures {
  const file = record(raw, '');
  const measures = Object.entries(record(file.measures, 'measures'));
  if (measures.length === 0) throw new DataError(FILE, 'measures', 'at least one measure');
  return {
    source: text(file.source, 'source'),
    measures: measures.map(([id, entry]) => readMeasure(id, entry)),
  };
}

function readMeasure(id: string, raw: unknown): UsualMeasure {
  const path = `measures.${id}`;
  const entry = record(raw, path, ['name', 'work', 'cost']);
  return {
    id,
    name: text(entry.name, `${path}.name`),
    work: readWork(record(entry.work, `${path}.work`), `${path}.work`),
    cost: readCost(record(entry.cost, `${path}.cost`, ['fixed', 'perArea', 'perVolume']), `${path}.cost`),
  };
}

function readWork(raw: Readonly<Record<string, unknown>>, path: string): UsualWork {
  const at = (key: string) => `${path}.${key}`;
  const number = (key: string, high: number) => positive(raw[key], at(key), high);
  const sheet = (names: readonly string[]): Sheet => ({
    material: oneOf(raw.material, at('material'), names),
    thickness: number('thickness', 0.3),
  });
  const where = () => list(raw.where, at('where')).map((name) => oneOf(name, at('where'), panelGroups));
  const gap = (): { readonly gap?: number } => (raw.gap === undefined ? {} : { gap: number('gap', 0.3) });
  const openShare = () => share(raw.openShare, at('openShare'));
  switch (raw.kind) {
    case 'lid': {
      const panes = oneOf(raw.panes, at('panes'), ['one', 'two'] as const);
      if (panes === 'two' && raw.gap === undefined) throw new DataError(FILE, at('gap'), 'a gap between two panes');
      const vessel = oneOf(raw.vessel, at('vessel'), vesselNames);
      return {
        kind: 'lid',
        vessel,
        ...sheet([...lidMaterialNames, ...insulationNames]),
        panes,
        ...gap(),
        openShare: openShare(),
      };
    }
    case 'board':
      return { kind: 'board', where: where(), ...sheet(insulationNames), ...gap() };
    case 'doubleGlazing':
      return { kind: 'doubleGlazing', where: where(), ...sheet(lidMaterialNames), gap: number('gap', 0.1) };
    case 'cooler':
      return { kind: 'cooler', by: number('by', 15) };
    case 'nightCover':
      return {
        kind: 'nightCover',
        hours: number('hours', secondsPerDay),
        ...sheet(materialNames),
        openShare: openShare(),
      };
    case 'calmerSurface':
      return { kind: 'calmerSurface', to: oneOf(raw.to, at('to'), ['still', 'rippled'] as const) };
    default:
      throw new DataError(FILE, at('kind'), 'lid, board, doubleGlazing, cooler, nightCover or calmerSurface');
  }
}

function readCost(raw: Readonly<Record<string, unknown>>, path: string): CostRates {
  const optional = (key: string) => (raw[key] === undefined ? undefined : range(raw[key], `${path}.${key}`));
  return {
    fixed: range(raw.fixed, `${path}.fixed`),
    perArea: optional('perArea'),
    perVolume: optional('perVolume'),
  };
}

function range(raw: unknown, path: string): CostRange {
  const entry = record(raw, path, ['low', 'likely', 'high']);
  const [low, likely, high] = [entry.low, entry.likely, entry.high].map(Number) as [number, number, number];
  if (!(low >= 0 && low <= likely && likely <= high && Number.isFinite(high))) {
    throw new DataError(FILE, path, 'finite sums with 0 ≤ low ≤ likely ≤ high');
  }
  return { low, likely, high };
}

function record(raw: unknown, path: string, keys?: readonly string[]): Readonly<Record<string, unknown>> {
  if (typeof raw !== 'object' || raw === null || Array.isArray(raw)) throw new DataError(FILE, path, 'an object');
  const unknown = keys === undefined ? undefined : Object.keys(raw).find((key) => !keys.includes(key));
  if (unknown !== undefined) throw new DataError(FILE, `${path}.${unknown}`, `one of ${keys!.join(', ')}`);
  return raw as Readonly<Record<string, unknown>>;
}

function list(raw: unknown, path: string): readonly unknown[] {
  if (!Array.isArray(raw) || raw.length === 0) throw new DataError(FILE, path, 'a list of at least one');
  return raw;
}

function text(raw: unknown, path: string): string {
  if (typeof raw !== 'string' || raw === '') throw new DataError(FILE, path, 'a text');
  return raw;
}

function oneOf<Name extends string>(raw: unknown, path: string, names: readonly Name[]): Name {
  const found = names.find((name) => name === raw);
  if (found === undefined) throw new DataError(FILE, path, `one of ${names.join(', ')}`);
  return found;
}

function positive(raw: unknown, path: string, high: number): number {
  if (typeof raw !== 'number' || !(raw > 0 && raw <= high)) throw new DataError(FILE, path, `above 0, at most ${high}`);
  return raw;
}

function share(raw: unknown, path: string): number {
  if (typeof raw !== 'number' || !(raw >= 0 && raw <= 1)) throw new DataError(FILE, path, 'a share from 0 to 1');
  return raw;
}
