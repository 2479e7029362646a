// The steps of colour for heat per area: round numbers of each decade in the units of the view, so that a bare pane and an
// open water surface, ten times apart, are both told from their neighbours. Heat that comes in is a class of its own.

import { InputError } from '../../numerics/index.ts';
import { toView, type UnitView } from '../../quantities/index.ts';

/** Tones of the ramp, from the palest to the deepest: 0 … 5. */
export const tones = 6;

export interface HeatClass {
  readonly tone: number;
  /** In the unit of the view; the first class begins at 0. */
  readonly from: number;
  readonly to: number;
}

export interface HeatScale {
  /** From the least to the most; empty where no heat goes out. */
  readonly classes: readonly HeatClass[];
  readonly hasIncoming: boolean;
}

/** Classes for the fluxes [W/m², positive outwards] of everything that is coloured, with round ends in the unit of the view. */
export function heatScale(fluxes: readonly number[], view: UnitView): HeatScale {
  const outgoing = fluxes.filter((flux) => flux >= 0).map((flux) => toView(flux, 'heatFlux', view));
  const hasIncoming = outgoing.length < fluxes.length;
  const most = Math.max(0, ...outgoing);
  if (most === 0) return { classes: outgoing.length === 0 ? [] : [{ tone: 0, from: 0, to: 1 }], hasIncoming };
  const least = Math.min(...outgoing);
  const all = series.map((steps) => boundsBetween(least, most, steps));
  const [first = 0, ...ends] = all.find((bounds) => bounds.length <= tones + 1) ?? clipped(all.at(-1)!);
  return {
    classes: ends.map((to, index) => ({
      tone: tones - ends.length + index,
      from: index === 0 ? first : ends[index - 1]!,
      to,
    })),
    hasIncoming,
  };
}

/** The class of a heat per area [W/m²]; 'incoming' where it is below zero. */
export function classOf({ classes }: HeatScale, flux: number, view: UnitView): HeatClass | 'incoming' {
  if (flux < 0) return 'incoming';
  const shown = toView(flux, 'heatFlux', view);
  const found = classes.find(({ to }) => shown <= to) ?? classes.at(-1);
  if (found === undefined) throw new InputError('heat per area', flux, 'one of those the scale was made for [W/m²]');
  return found;
}

/** Round numbers of a decade, from the finest steps to the coarsest. */
const series = [
  [1, 1.5, 2, 3, 5, 7],
  [1, 2, 3, 5],
  [1, 2, 5],
] as const;

/** More than this many decades below the most are one class with everything less. */
const mostDecades = 12;

/** The numbers of a series from the last one at or below `least` to the first one at or above `most`, ascending. */
function boundsBetween(least: number, most: number, steps: readonly number[]): readonly number[] {
  const top = Math.ceil(Math.log10(most));
  const decades = Array.from({ length: mostDecades }, (_, index) => top - mostDecades + 1 + index);
  const numbers = decades.flatMap((decade) => steps.map((step) => Number(`${step}e${decade}`)));
  const from = numbers.findLastIndex((number) => number <= least);
  const to = numbers.findIndex((number) => number >= most);
  return numbers.slice(Math.max(0, from), Math.max(to, from + 1) + 1);
}

/** The upper classes, the lowest of them from 0. */
function clipped(bounds: readonly number[]): readonly number[] {
  return [0, ...bounds.slice(-tones)];
}
