// One patch with what turns places on it into states: its borders along the pressure, what its values count from, and its
// form of the density.

import type { VolumeForm } from './fill.ts';
import { ENTROPY, type Patch, TEMPERATURE, VOLUME } from './patch.ts';
import type { Pieces } from './pieces.ts';

/** Rows of a band: the enthalpy at y = 0 and at y = 1, and the saturated values that T, volume form and s count from. */
export interface SheetRows {
  readonly start: number;
  readonly end: number;
  readonly base: readonly [number, number, number] | undefined;
}

/** This close to an outer border, as a share of the enthalpy, the equation answers: it knows exactly what lies beyond. */
const EDGE = 1e-7;

export class Sheet {
  readonly patch: Patch;
  readonly band: Pieces;
  readonly rows: SheetRows;
  readonly form: VolumeForm;
  /** Values at the last place: temperature, density, entropy. */
  temperature = 0;
  density = 0;
  entropy = 0;

  constructor(patch: Patch, band: Pieces, rows: SheetRows, form: VolumeForm) {
    this.patch = patch;
    this.band = band;
    this.rows = rows;
    this.form = form;
  }

  /** Place y of an enthalpy in the column where the band was located; −1 where it lies outside. */
  placeOf(enthalpy: number): number {
    const { band, rows } = this;
    const start = band.value(rows.start);
    const share = (enthalpy - start) / (band.value(rows.end) - start);
    return this.isInside(share) ? this.patch.place(share) : -1;
  }

  /** The same of a temperature or an entropy at the coordinate x, where the band was located. */
  placeOfValue(which: typeof TEMPERATURE | typeof ENTROPY, x: number, value: number): number {
    const { base } = this.rows;
    const from = base === undefined ? 0 : this.band.value(base[which]);
    const y = this.patch.inverse(which, x, value - from);
    return y !== undefined && this.isInside(this.patch.share(y)) ? y : -1;
  }

  /** Enthalpy [J/kg] at y in the column where the band was located. */
  enthalpyAt(y: number): number {
    const { band, rows } = this;
    const start = band.value(rows.start);
    return start + this.patch.share(y) * (band.value(rows.end) - start);
  }

  /** Reads T, ρ and s at a place, in the column where the band was located. */
  read(pressure: number, x: number, y: number): void {
    const { patch, band } = this;
    const { base } = this.rows;
    patch.find(x, y);
    let temperature = patch.found[TEMPERATURE]!;
    let volume = patch.found[VOLUME]!;
    let entropy = patch.found[ENTROPY]!;
    if (base !== undefined) {
      temperature += band.value(base[TEMPERATURE]);
      volume += band.value(base[VOLUME]);
      entropy += band.value(base[ENTROPY]);
    }
    this.temperature = temperature;
    this.density = this.form === 'density' ? volume : pressure / volume;
    this.entropy = entropy;
  }

  /** A sheet that starts at the saturation line has an outer border at its end only. */
  private isInside(share: number): boolean {
    return share <= 1 - EDGE && share >= (this.rows.base === undefined ? EDGE : 0);
  }
}
