// Builds the sheets of a table from the equation. Below 0.93 pc one for the liquid and one for the vapour, both starting at
// the saturation line and counting from its values, so that nothing is interpolated across it; around the critical pressure
// the cold and the hot side; above 1.15 pc one for everything.

import type { Refrigerant } from '../types.ts';
import { type Bands, bandsOf, below, beyond, Ends } from './bands.ts';
import { type Column, fill, type VolumeForm } from './fill.ts';
import { Patch } from './patch.ts';
import type { Pieces } from './pieces.ts';
import type { TableRegion } from './region.ts';
import { Sheet, type SheetRows } from './sheet.ts';

/** Cells along the pressure and along the enthalpy, and how much wider the last cell is than the first. */
const cells = {
  liquid: { columns: 76, rows: 44, growth: 2.4 },
  vapour: { columns: 44, rows: 34, growth: 3.2 },
  coldSide: { columns: 14, rows: 40, growth: 0.6 },
  hotSide: { columns: 12, rows: 20, growth: 0.25 },
  above: { columns: 64, rows: 108, growth: 1.3 },
};

export interface Sheets {
  readonly bands: Bands;
  readonly liquid: Sheet;
  readonly vapour: Sheet;
  readonly coldSide: Sheet;
  /** Missing where the highest temperature is too close to the critical one. */
  readonly hotSide: Sheet | undefined;
  readonly above: Sheet;
}

/** What a column starts from: p and dp/dθ, and the state at y = 0. */
type Start = Pick<Column, 'pressure' | 'pressureSlope' | 'startTemperature' | 'startDensity'>;

/** @throws ConvergenceError if the equation has no stable state somewhere in the region */
export function buildSheets(fluid: Refrigerant, region: TableRegion): Sheets {
  const ends = new Ends(fluid, region);
  const bands = bandsOf(fluid, region, ends);
  const { pressure: critical } = fluid.critical;
  const sheet = (
    shape: (typeof cells)['liquid'],
    band: Pieces,
    rows: SheetRows,
    form: VolumeForm,
    startAt: (theta: number) => Start,
  ) => {
    const patch = new Patch({ from: band.from, to: band.to, ...shape });
    fill(fluid.equation, patch, form, (theta) => {
      const start = startAt(theta);
      band.locate(theta);
      return { ...start, ...borders(band, rows) };
    });
    return new Sheet(patch, band, rows, form);
  };
  const onDome = (theta: number, temperature: number) => {
    const pressure = critical * Math.exp(-theta * theta);
    bands.below.locate(theta);
    return { pressure, pressureSlope: -2 * theta * pressure, startTemperature: bands.below.value(temperature) };
  };
  const coldStart = (pressure: number, pressureSlope: number): Start => {
    const startDensity = ends.coldDensity(pressure);
    return { pressure, pressureSlope, startTemperature: region.temperatureMin, startDensity };
  };
  const hotStart = (pressure: number, pressureSlope: number): Start => {
    const startDensity = ends.hotDensity(pressure);
    return { pressure, pressureSlope, startTemperature: region.temperatureMax, startDensity };
  };
  return {
    bands,
    liquid: sheet(cells.liquid, bands.below, liquidRows, 'density', (theta) => {
      const start = onDome(theta, below.bubbleTemperature);
      return { ...start, startDensity: bands.below.value(below.liquidDensity) };
    }),
    vapour: sheet(cells.vapour, bands.below, vapourRows, 'pressureByDensity', (theta) => {
      const start = onDome(theta, below.dewTemperature);
      return { ...start, startDensity: start.pressure / bands.below.value(below.vapourVolume) };
    }),
    coldSide: sheet(cells.coldSide, bands.around, coldSideRows, 'density', (theta) => {
      const pressure = critical * Math.exp(theta);
      return coldStart(pressure, pressure);
    }),
    hotSide: hasHotSide(bands.around)
      ? sheet(cells.hotSide, bands.around, hotSideRows, 'pressureByDensity', (theta) => {
          const pressure = critical * Math.exp(theta);
          return hotStart(pressure, pressure);
        })
      : undefined,
    above: sheet(cells.above, bands.above, aboveRows, 'pressureByDensity', (theta) => {
      const pressure = critical * Math.exp(theta * theta);
      return coldStart(pressure, 2 * theta * pressure);
    }),
  };
}

const liquidRows: SheetRows = {
  start: below.liquidEnthalpy,
  end: below.coldEnthalpy,
  base: [below.bubbleTemperature, below.liquidDensity, below.liquidEntropy],
};
const vapourRows: SheetRows = {
  start: below.vapourEnthalpy,
  end: below.hotEnthalpy,
  base: [below.dewTemperature, below.vapourVolume, below.vapourEntropy],
};
const coldSideRows: SheetRows = { start: beyond.coldEnthalpy, end: beyond.liquidTop, base: undefined };
const hotSideRows: SheetRows = { start: beyond.hotEnthalpy, end: beyond.vapourTop, base: undefined };
const aboveRows: SheetRows = { start: beyond.coldEnthalpy, end: beyond.hotEnthalpy, base: undefined };

/** Of the enthalpies on the hot side at the bottom of the band, this share must be left at its top. */
const HOT_SIDE_LEFT = 0.3;

function hasHotSide(band: Pieces): boolean {
  const left = (theta: number) => {
    band.locate(theta);
    return band.value(beyond.hotEnthalpy) - band.value(beyond.vapourTop);
  };
  return left(band.to) > HOT_SIDE_LEFT * left(band.from);
}

/** Borders and base of a column, in the band where it was located. */
function borders(band: Pieces, { start, end, base }: SheetRows) {
  return {
    startEnthalpy: band.value(start),
    startEnthalpySlope: band.slope(start),
    endEnthalpy: band.value(end),
    endEnthalpySlope: band.slope(end),
    base: base === undefined ? NOTHING : ([band.value(base[0]), band.value(base[1]), band.value(base[2])] as const),
    baseSlope:
      base === undefined ? NOTHING : ([band.slope(base[0]), band.slope(base[1]), band.slope(base[2])] as const),
  };
}

const NOTHING = [0, 0, 0] as const;
