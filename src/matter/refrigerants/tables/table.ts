// A property table of one fluid: look-ups of T, ρ and s from p and h without garbage, and the place of a state from the other
// pairs with a pressure. Saturated values decide the side; each side has its own sheet. Where the table does not reach, it
// says so and never extrapolates.

import { mixed, mixedDensity } from '../equation/relations.ts';
import type { Refrigerant } from '../types.ts';
import { below } from './bands.ts';
import { buildSheets, type Sheets } from './build.ts';
import { ENTROPY, TEMPERATURE } from './patch.ts';
import type { Pieces } from './pieces.ts';
import { AROUND_CRITICAL, type TableRegion } from './region.ts';
import type { Sheet } from './sheet.ts';

export class PropertyTable {
  readonly region: TableRegion;
  /** Memory of the typed arrays [bytes]. */
  readonly bytes: number;
  /** What the last look-up found: T [K], ρ [kg/m³], s [J/(kg K)]. */
  readonly found = new Float64Array(3);
  /** Bands and sheets, for the states made from them. */
  readonly sheets: Sheets;
  private readonly criticalPressure: number;
  private readonly lowest: number;
  private readonly belowTop = Math.log(AROUND_CRITICAL.below);
  private readonly aboveBottom = Math.log(AROUND_CRITICAL.above);
  private readonly highest: number;
  /** Coordinate of the pressure in its band. */
  private x = 0;

  /** @throws ConvergenceError if the equation has no stable state somewhere in the region */
  constructor(fluid: Refrigerant, region: TableRegion) {
    this.region = region;
    this.sheets = buildSheets(fluid, region);
    const { bands, liquid, vapour, coldSide, hotSide, above } = this.sheets;
    this.criticalPressure = fluid.critical.pressure;
    this.lowest = -(bands.below.to ** 2);
    this.highest = bands.above.to ** 2;
    const sheets = [liquid, vapour, coldSide, ...(hotSide === undefined ? [] : [hotSide]), above];
    const ofSheets = sheets.reduce((sum, { patch }) => sum + patch.bytes, 0);
    this.bytes = ofSheets + bands.below.bytes + bands.around.bytes + bands.above.bytes;
  }

  /**
   * T, ρ and s at p and h, into `found`; in the dome those of the mixture.
   * @param pressure  p [Pa]
   * @param enthalpy  h [J/kg]
   * @returns         false where the table does not reach; `found` then holds nothing of use
   * Validity: `region`. Accuracy: 1e-5 relative (s: of 1 kJ/(kg K)); docs/validation has the figures of each fluid.
   */
  lookUp(pressure: number, enthalpy: number): boolean {
    const band = this.locate(pressure);
    if (band === undefined) return false;
    const { sheets } = this;
    if (band === sheets.bands.below) return this.lookUpBelow(band, pressure, enthalpy);
    if (band === sheets.bands.above) return this.readAt(sheets.above, pressure, sheets.above.placeOf(enthalpy));
    const cold = sheets.coldSide.placeOf(enthalpy);
    if (cold >= 0) return this.readAt(sheets.coldSide, pressure, cold);
    return sheets.hotSide !== undefined && this.readAt(sheets.hotSide, pressure, sheets.hotSide.placeOf(enthalpy));
  }

  /** Coordinate of the pressure that `locate` was given last. */
  get coordinate(): number {
    return this.x;
  }

  /** The band of a pressure, located there; undefined where the table does not reach. */
  locate(pressure: number): Pieces | undefined {
    const logarithm = Math.log(pressure / this.criticalPressure);
    if (!(logarithm >= this.lowest && logarithm <= this.highest)) return undefined;
    const { bands } = this.sheets;
    let band = bands.around;
    this.x = logarithm;
    if (logarithm <= this.belowTop) {
      band = bands.below;
      this.x = Math.sqrt(-logarithm);
    } else if (logarithm >= this.aboveBottom) {
      band = bands.above;
      this.x = Math.sqrt(logarithm);
    }
    band.locate(this.x);
    return band;
  }

  /** p [Pa] at a coordinate of the band below. */
  pressureBelow(x: number): number {
    return this.criticalPressure * Math.exp(-x * x);
  }

  private lookUpBelow(band: Pieces, pressure: number, enthalpy: number): boolean {
    const { liquid, vapour } = this.sheets;
    const liquidEnthalpy = band.value(below.liquidEnthalpy);
    if (enthalpy < liquidEnthalpy) return this.readAt(liquid, pressure, liquid.placeOf(enthalpy));
    const vapourEnthalpy = band.value(below.vapourEnthalpy);
    if (enthalpy > vapourEnthalpy) return this.readAt(vapour, pressure, vapour.placeOf(enthalpy));
    const quality = (enthalpy - liquidEnthalpy) / (vapourEnthalpy - liquidEnthalpy);
    if (!(quality >= 0)) return false;
    const { found } = this;
    const vapourDensity = pressure / band.value(below.vapourVolume);
    found[0] = mixed(band.value(below.bubbleTemperature), band.value(below.dewTemperature), quality);
    found[1] = mixedDensity(band.value(below.liquidDensity), vapourDensity, quality);
    found[2] = mixed(band.value(below.liquidEntropy), band.value(below.vapourEntropy), quality);
    return true;
  }

  private readAt(sheet: Sheet, pressure: number, y: number): boolean {
    if (!(y >= 0)) return false;
    sheet.read(pressure, this.x, y);
    const { found } = this;
    found[0] = sheet.temperature;
    found[1] = sheet.density;
    found[2] = sheet.entropy;
    return true;
  }

  /** A single-phase place from p and one more property: the sheet and y, or undefined where the table does not reach. */
  placeOf(kind: 'enthalpy' | 'entropy' | 'temperature', pressure: number, value: number): Place | undefined {
    const band = this.locate(pressure);
    if (band === undefined) return undefined;
    for (const sheet of this.sheetsOf(band, kind, value)) {
      const y =
        kind === 'enthalpy'
          ? sheet.placeOf(value)
          : sheet.placeOfValue(kind === 'temperature' ? TEMPERATURE : ENTROPY, this.x, value);
      if (y >= 0) return { sheet, x: this.x, y };
    }
    return undefined;
  }

  /** The sheets that may hold a value, in the band where it was located. */
  private sheetsOf(band: Pieces, kind: 'enthalpy' | 'entropy' | 'temperature', value: number): readonly Sheet[] {
    const { bands, liquid, vapour, coldSide, hotSide, above } = this.sheets;
    if (band === bands.above) return [above];
    if (band === bands.around) return hotSide === undefined ? [coldSide] : [coldSide, hotSide];
    const { liquid: low, vapour: high } = saturatedRows[kind];
    if (value < band.value(low)) return [liquid];
    return value > band.value(high) ? [vapour] : [];
  }
}

/** Where a single-phase state lies. */
export interface Place {
  readonly sheet: Sheet;
  readonly x: number;
  readonly y: number;
}

/** Rows of both sides of the dome, by property. */
export const saturatedRows = {
  enthalpy: { liquid: below.liquidEnthalpy, vapour: below.vapourEnthalpy },
  entropy: { liquid: below.liquidEntropy, vapour: below.vapourEntropy },
  temperature: { liquid: below.bubbleTemperature, vapour: below.dewTemperature },
} as const;
