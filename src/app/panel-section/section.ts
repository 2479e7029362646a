// The section of a panel as zones side by side, from what lies inside to what lies beyond: films of fixed width, layers to scale
// with a break where one is much thicker than the others, and the temperature that falls through them. Pixels; no drawing here.

import type { LayerAnswer, PanelAnswer } from '../../assess/index.ts';

export interface SectionZone {
  readonly kind: 'inside' | 'innerFilm' | 'layer' | 'outerFilm' | 'beyond';
  readonly left: number;
  readonly right: number;
  /** Temperature at either edge [K]. */
  readonly from: number;
  readonly to: number;
  /** Of a layer. */
  readonly layer?: LayerAnswer;
  /** Drawn narrower than its thickness at the scale of the others. */
  readonly isBroken: boolean;
}

export interface Section {
  readonly zones: readonly SectionZone[];
  /** Highest and lowest temperature drawn [K]. */
  readonly warmest: number;
  readonly coldest: number;
  /** [K]; undefined where no air of the room touches the panel, or it holds no vapour. */
  readonly dewPoint: number | undefined;
}

/** Widths of what has no thickness to draw [px]. */
const sideWidth = { wide: 84, narrow: 56 } as const;
const filmWidth = { inner: 12, outer: 26 } as const;
/** A layer known by its resistance alone. */
const unknownWidth = 34;
/** A thin pane alone is not drawn as wide as the picture [px/m]. */
const mostScale = 9000;
/** The thinnest pane is still to be seen, with its number. */
const leastWidth = 16;

/** Where the room's air leaves its water, and on what it does not. */
const touchedByRoom = ['roomAir', 'openStand', 'closedStand', 'againstWall'];

export function sectionOf(panel: PanelAnswer, roomDewPoint: number | null, width: number): Section {
  const side = width < 520 ? sideWidth.narrow : sideWidth.wide;
  const innerFilm = panel.waterFilmResistance > 0 ? filmWidth.inner : 0;
  const free = width - 2 * side - innerFilm - filmWidth.outer;
  const { layers } = panel;
  const widths = layerWidths(
    layers.map(({ thickness }) => thickness),
    free,
  );
  const wall = layers[0]?.innerTemperature ?? panel.outerTemperature;
  const zones: SectionZone[] = [];
  let left = 0;
  const add = (zone: Omit<SectionZone, 'left' | 'right' | 'isBroken'>, wide: number, isBroken = false) => {
    zones.push({ ...zone, left, right: left + wide, isBroken });
    left += wide;
  };
  const { insideTemperature: inside, outerTemperature: outer, sinkTemperature: sink } = panel;
  add({ kind: 'inside', from: inside, to: inside }, side);
  if (innerFilm > 0) add({ kind: 'innerFilm', from: inside, to: wall }, innerFilm);
  layers.forEach((layer, index) => {
    const { width: wide, isBroken } = widths[index]!;
    add({ kind: 'layer', from: layer.innerTemperature, to: layer.outerTemperature, layer }, wide, isBroken);
  });
  add({ kind: 'outerFilm', from: outer, to: sink }, filmWidth.outer);
  add({ kind: 'beyond', from: sink, to: sink }, Math.max(side, width - left));
  const dewPoint = roomDewPoint !== null && touchedByRoom.includes(panel.exposure) ? roomDewPoint : undefined;
  const drawn = [...zones.flatMap(({ from, to }) => [from, to]), ...(dewPoint === undefined ? [] : [dewPoint])];
  return { zones, warmest: Math.max(...drawn), coldest: Math.min(...drawn), dewPoint };
}

export interface LayerWidth {
  readonly width: number;
  readonly isBroken: boolean;
}

/**
 * Widths of layers [px]: to scale where all can be seen so; otherwise the thickest are cut to one width, with a break.
 * @param thicknesses  [m]; null where nobody knows it
 * @param free         room for all of them [px]; where even the least widths take more, they get those
 */
export function layerWidths(thicknesses: readonly (number | null)[], free: number): readonly LayerWidth[] {
  const known = thicknesses.filter((thickness) => thickness !== null);
  const room = free - unknownWidth * (thicknesses.length - known.length);
  if (known.length === 0) return thicknesses.map(() => ({ width: unknownWidth, isBroken: false }));
  const sum = known.reduce((total, thickness) => total + thickness, 0);
  const scale = Math.max(Math.min(mostScale, room / sum), leastWidth / Math.min(...known));
  const most = cutAt(
    known.map((thickness) => scale * thickness),
    room,
  );
  return thicknesses.map((thickness) => {
    if (thickness === null) return { width: unknownWidth, isBroken: false };
    const full = scale * thickness;
    return full > most * (1 + 1e-9) ? { width: most, isBroken: true } : { width: full, isBroken: false };
  });
}

/** The width at which the widest have to be cut so that all of them fill the room; never below the least width. */
function cutAt(widths: readonly number[], room: number): number {
  const ascending = widths.toSorted((a, b) => a - b);
  let left = room;
  for (const [index, width] of ascending.entries()) {
    const share = left / (ascending.length - index);
    if (width > share) return Math.max(leastWidth, share);
    left -= width;
  }
  return ascending.at(-1)!;
}

/** Where a temperature stands, counted down from the top of the drawing [px]. */
export function levelOf(temperature: number, { warmest, coldest }: Section, height: number): number {
  const margin = 16;
  if (warmest - coldest < 1e-9) return height / 2;
  return margin + ((warmest - temperature) / (warmest - coldest)) * (height - 2 * margin);
}
