// The map of a machine: its running points over evaporating temperatures for a family of condensing temperatures, each number with
// its band from one-at-a-time variation; and which temperatures it spans.

import type { OperatingPoint } from '../../../../loop/index.ts';
import { KettlefinError } from '../../../../numerics/index.ts';
import type { MapFamily, MapPoint } from '../answer.ts';
import { type Levels, mapValues, type Run, runningAt } from '../running.ts';
import { type Variants, variedNumbers } from '../variants.ts';

/** Dew temperatures that a map spans [K]. */
export interface MapAxes {
  readonly evaporating: readonly number[];
  readonly condensing: readonly number[];
}

/** What is asked of each point of a map beside its numbers. */
export interface MapTests {
  /** Names of the limits passed there, of the likely point. */
  readonly passed: (point: OperatingPoint, levels: Levels) => readonly string[];
  /** Whether it lies inside what was measured or printed of the machine. */
  readonly insideData: (levels: Levels) => boolean;
}

/** The families of a map. A point without an answer says why. */
export function machineMap(variants: Variants<Run>, axes: MapAxes, tests: MapTests): readonly MapFamily[] {
  return axes.condensing.map((condensing) => ({
    condensing,
    points: axes.evaporating.map((evaporating) => mapPoint(variants, { evaporating, condensing }, tests)),
  }));
}

function mapPoint(variants: Variants<Run>, levels: Levels, tests: MapTests): MapPoint {
  const { evaporating } = levels;
  const insideData = tests.insideData(levels);
  try {
    const point = runningAt(variants.likely, levels);
    const { bands } = variedNumbers(variants, (run) => mapValues(runningAt(run, levels)));
    return { evaporating, values: bands, reason: null, insideData, passed: tests.passed(point, levels) };
  } catch (error) {
    if (!(error instanceof KettlefinError)) throw error;
    return { evaporating, values: null, reason: error.message, insideData, passed: [] };
  }
}

const zeroCelsius = 273.15;
/** Step of the evaporating axis, and of the rounder condensing temperatures of the family [K]. */
const evaporatingStep = 5;
const condensingStep = 10;
const mostFamilies = 4;
/** Nearer to the first the second line would not be told from it [K]. */
const leastApart = 6;

/** What the axes of a map are chosen from [K]. */
export interface SpannedByMap {
  /** Evaporating range the machine was built for. */
  readonly builtFrom: number;
  readonly builtTo: number;
  /** Condensing temperature it may hold for long. */
  readonly condensingContinuous: number;
  /** Where it would run; empty where nobody knows. */
  readonly marks: readonly Levels[];
  /** Critical temperature of the fluid, and the lowest its equation describes. */
  readonly critical: number;
  readonly coldest: number;
}

/**
 * Axes that show both what the machine was built for and where it would run: evaporating in steps of 5 K, condensing at that of
 * the coldest spell and at rounder temperatures above it up to what it may hold.
 */
export function mapAxes({ builtFrom, builtTo, condensingContinuous, marks, critical, coldest }: SpannedByMap): MapAxes {
  const lowest = Math.max(coldest, Math.min(builtFrom, ...marks.map(({ evaporating }) => evaporating - 5)));
  const highest = Math.max(builtTo + 5, ...marks.map(({ evaporating }) => evaporating + 5));
  const first = marks[0]?.condensing ?? condensingContinuous - 20;
  const top = Math.min(critical - 5, Math.max(condensingContinuous, first));
  const [second] = rounds(first + leastApart, top, evaporatingStep);
  const rounder = second === undefined ? [] : rounds(second, top, condensingStep, second);
  return {
    evaporating: rounds(lowest, highest, evaporatingStep),
    condensing: [first, ...rounder].slice(0, mostFamilies),
  };
}

/** Temperatures from the first at or above `low` to the last at or below `high` in steps, counted from 0 °C or another [K]. */
function rounds(low: number, high: number, step: number, from = zeroCelsius): readonly number[] {
  const first = Math.ceil((low - from) / step - 1e-9);
  const last = Math.floor((high - from) / step + 1e-9);
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, index) => from + step * (first + index));
}
