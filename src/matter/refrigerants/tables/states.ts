// States from a property table: the same fields in the same order as from the equation, decided by the same rules. Where a
// decision lies within the error of the table, where it does not reach, and for what is no request it can read, it leaves
// the answer to the equation.

import { mixed, mixedDensity, qualityOf } from '../equation/relations.ts';
import { phaseAboveCritical } from '../flash/assemble.ts';
import { ON_THE_LINE } from '../flash/limits.ts';
import { surfaceTensionAt } from '../surface-tension.ts';
import type { Phase, Refrigerant, Saturation, State, StateInput, StateTable } from '../types.ts';
import { below } from './bands.ts';
import type { Pieces } from './pieces.ts';
import type { TableRegion } from './region.ts';
import type { Sheet } from './sheet.ts';
import { type Place, PropertyTable, saturatedRows } from './table.ts';

/** The saturated values of a table are closer to those of the equation than this share of ON_THE_LINE. */
const UNSURE = 0.5;
/** Relative distance from a saturation or critical temperature within which the equation names the phase. */
const UNSURE_TEMPERATURE = 1e-7;
const UNSURE_CRITICAL = 1e-5;

type Given = Partial<Record<'temperature' | 'pressure' | 'enthalpy' | 'entropy' | 'quality', unknown>>;

/** A table that answers with states, and counts how often it did. */
export class TableStates implements StateTable {
  readonly table: PropertyTable;
  private readonly fluid: Refrigerant;
  private byTable = 0;
  private byEquation = 0;

  constructor(fluid: Refrigerant, region: TableRegion) {
    this.fluid = fluid;
    this.table = new PropertyTable(fluid, region);
  }

  /** How many states the table gave, and how many it left to the equation, errors included. */
  get counts(): { readonly byTable: number; readonly byEquation: number } {
    const { byTable, byEquation } = this;
    return { byTable, byEquation };
  }

  /** The state of a pair; undefined where the equation is to answer. */
  stateAt(given: StateInput): State | undefined {
    return this.counted(this.answer(given));
  }

  /** Both sides of the dome at T [K]; undefined where the equation is to answer. */
  saturationAtTemperature(temperature: number): Saturation | undefined {
    return this.counted(this.pairAtTemperature(temperature));
  }

  /** Both sides of the dome at p [Pa]; undefined where the equation is to answer. */
  saturationAtPressure(pressure: number): Saturation | undefined {
    const band = this.bandBelow(pressure);
    if (band === undefined) return this.counted(undefined);
    return this.counted({
      liquid: this.saturated('liquid', band, pressure),
      vapour: this.saturated('vapour', band, pressure),
    });
  }

  /** Both sides of the dome at the one pressure whose dew temperature is T [K]; undefined where the equation is to answer. */
  saturationAtDewTemperature(temperature: number): Saturation | undefined {
    const pair = this.pairAt('vapour', temperature);
    return this.counted(pair && { ...pair, vapour: { ...pair.vapour, temperature } });
  }

  /** The same of a bubble temperature. */
  saturationAtBubbleTemperature(temperature: number): Saturation | undefined {
    const pair = this.pairAt('liquid', temperature);
    return this.counted(pair && { ...pair, liquid: { ...pair.liquid, temperature } });
  }

  private counted<Answer>(answer: Answer | undefined): Answer | undefined {
    if (answer === undefined) this.byEquation++;
    else this.byTable++;
    return answer;
  }

  private answer(given: StateInput): State | undefined {
    if (typeof given !== 'object' || given === null || Object.keys(given).length !== 2) return undefined;
    const { temperature, pressure, enthalpy, entropy, quality } = given as Given;
    if (typeof pressure !== 'number') {
      return typeof temperature === 'number' && typeof quality === 'number'
        ? this.atTemperatureAndQuality(temperature, quality)
        : undefined;
    }
    if (typeof enthalpy === 'number') return this.caloric(pressure, 'enthalpy', enthalpy);
    if (typeof entropy === 'number') return this.caloric(pressure, 'entropy', entropy);
    if (typeof temperature === 'number') return this.atTemperatureAndPressure(temperature, pressure);
    return typeof quality === 'number' ? this.atPressureAndQuality(pressure, quality) : undefined;
  }

  private caloric(pressure: number, kind: 'enthalpy' | 'entropy', value: number): State | undefined {
    const band = this.bandBelow(pressure);
    if (band !== undefined) {
      const rows = saturatedRows[kind];
      const liquid = band.value(rows.liquid);
      const temperature = band.value(below.bubbleTemperature);
      const close = ON_THE_LINE * this.fluid.gasConstant * (kind === 'enthalpy' ? temperature : 1);
      const vapour = band.value(rows.vapour);
      if (isUnsure(value - liquid, close) || isUnsure(value - vapour, close)) return undefined;
      if (Math.abs(value - liquid) <= close) return this.saturated('liquid', band, pressure);
      if (Math.abs(value - vapour) <= close) return this.saturated('vapour', band, pressure);
      if (value > liquid && value < vapour) return this.mixture(band, pressure, qualityOf(value, liquid, vapour));
    }
    const place = this.table.placeOf(kind, pressure, value);
    if (place === undefined) return undefined;
    const state = this.singlePhase(place, pressure, kind, value);
    const { critical } = this.fluid;
    const unsure = Math.abs(state.temperature / critical.temperature - 1) < UNSURE_CRITICAL;
    return unsure && pressure > critical.pressure ? undefined : state;
  }

  private atTemperatureAndPressure(temperature: number, pressure: number): State | undefined {
    const band = this.bandBelow(pressure);
    if (band !== undefined) {
      const bubble = band.value(below.bubbleTemperature);
      const dew = band.value(below.dewTemperature);
      if (isOnLine(temperature, bubble) || isOnLine(temperature, dew)) return undefined;
      if (temperature > bubble && temperature < dew) {
        // Only a blend glides.
        return { ...this.mixture(band, pressure, qualityOf(temperature, bubble, dew)), temperature };
      }
    }
    const place = this.table.placeOf('temperature', pressure, temperature);
    return place && this.singlePhase(place, pressure, 'temperature', temperature);
  }

  private atPressureAndQuality(pressure: number, quality: number): State | undefined {
    const band = this.bandBelow(pressure);
    if (band === undefined || !(quality >= 0 && quality <= 1)) return undefined;
    if (quality === 0) return this.saturated('liquid', band, pressure);
    if (quality === 1) return this.saturated('vapour', band, pressure);
    return this.mixture(band, pressure, quality);
  }

  private atTemperatureAndQuality(temperature: number, quality: number): State | undefined {
    if (quality === 0) return this.sideAt('liquid', temperature);
    if (quality === 1) return this.sideAt('vapour', temperature);
    if (!(quality > 0 && quality < 1) || this.fluid.bubbleAndDew !== undefined) return undefined;
    const x = this.coordinateOf(below.bubbleTemperature, temperature);
    if (x === undefined) return undefined;
    const { table } = this;
    return { ...this.mixture(table.sheets.bands.below, table.pressureBelow(x), quality), temperature };
  }

  /** Both sides at the pressure at which one of them has this temperature; of a pure fluid, both have it. */
  private pairAt(side: 'liquid' | 'vapour', temperature: number): Saturation | undefined {
    if (this.fluid.bubbleAndDew === undefined) return this.pairAtTemperature(temperature);
    const x = this.coordinateOf(saturatedRows.temperature[side], temperature);
    if (x === undefined) return undefined;
    const { table } = this;
    const { below: band } = table.sheets.bands;
    const pressure = table.pressureBelow(x);
    return {
      liquid: this.saturated('liquid', band, pressure, x),
      vapour: this.saturated('vapour', band, pressure, x),
    };
  }

  private pairAtTemperature(temperature: number): Saturation | undefined {
    const liquid = this.sideAt('liquid', temperature);
    const vapour = this.sideAt('vapour', temperature);
    return liquid && vapour && { liquid, vapour };
  }

  /** One side of the dome at T [K]. */
  private sideAt(side: 'liquid' | 'vapour', temperature: number): State | undefined {
    const x = this.coordinateOf(saturatedRows.temperature[side], temperature);
    if (x === undefined) return undefined;
    const { table } = this;
    const { below: band } = table.sheets.bands;
    return { ...this.saturated(side, band, table.pressureBelow(x), x), temperature };
  }

  /** The band below, located at a pressure in it. */
  private bandBelow(pressure: number): Pieces | undefined {
    const { table } = this;
    return table.locate(pressure) === table.sheets.bands.below ? table.sheets.bands.below : undefined;
  }

  /** Coordinate at which a saturation temperature is T; the band is located there. */
  private coordinateOf(row: number, temperature: number): number | undefined {
    const { below: band } = this.table.sheets.bands;
    band.locate(band.to);
    if (!(temperature >= band.value(row))) return undefined;
    band.locate(band.from);
    if (!(temperature <= band.value(row))) return undefined;
    const x = band.inverseOfFalling(row, temperature);
    band.locate(x);
    return x;
  }

  private singlePhase(
    { sheet, x, y }: Place,
    pressure: number,
    kind: 'enthalpy' | 'entropy' | 'temperature',
    value: number,
  ): State {
    sheet.read(pressure, x, y);
    sheet.patch.findSide(x, y);
    const { foundSide } = sheet.patch;
    const temperature = kind === 'temperature' ? value : sheet.temperature;
    const enthalpy = kind === 'enthalpy' ? value : sheet.enthalpyAt(y);
    const { density } = sheet;
    return {
      temperature,
      pressure,
      density,
      enthalpy,
      entropy: kind === 'entropy' ? value : sheet.entropy,
      internalEnergy: enthalpy - pressure / density,
      cp: 1 / foundSide[0]!,
      cv: foundSide[1]!,
      soundSpeed: foundSide[2]!,
      surfaceTension: null,
      quality: null,
      phase: this.phaseOf(sheet, temperature, pressure),
    };
  }

  /** By the rules of the equation's states; below the critical pressure each sheet is one phase. */
  private phaseOf(sheet: Sheet, temperature: number, pressure: number): Phase {
    const { liquid, coldSide } = this.table.sheets;
    const side = sheet === liquid || sheet === coldSide ? 'liquid' : 'vapour';
    return phaseAboveCritical(this.fluid, temperature, pressure) ?? side;
  }

  /** One side of the dome, in the band below where it was located. */
  private saturated(side: 'liquid' | 'vapour', band: Pieces, pressure: number, x = this.table.coordinate): State {
    const isLiquid = side === 'liquid';
    const { patch } = this.table.sheets[side];
    patch.findSide(x, 0);
    const { foundSide } = patch;
    const temperature = band.value(saturatedRows.temperature[side]);
    const enthalpy = band.value(saturatedRows.enthalpy[side]);
    const density = isLiquid ? band.value(below.liquidDensity) : pressure / band.value(below.vapourVolume);
    return {
      temperature,
      pressure,
      density,
      enthalpy,
      entropy: band.value(saturatedRows.entropy[side]),
      internalEnergy: enthalpy - pressure / density,
      cp: 1 / foundSide[0]!,
      cv: foundSide[1]!,
      soundSpeed: foundSide[2]!,
      surfaceTension: surfaceTensionAt(this.fluid, temperature),
      quality: isLiquid ? 0 : 1,
      phase: 'twoPhase',
    };
  }

  /** A mixture of both sides, in the band below where it was located. */
  private mixture(band: Pieces, pressure: number, quality: number): State {
    const temperature = mixed(band.value(below.bubbleTemperature), band.value(below.dewTemperature), quality);
    const enthalpy = mixed(band.value(below.liquidEnthalpy), band.value(below.vapourEnthalpy), quality);
    const vapourDensity = pressure / band.value(below.vapourVolume);
    const density = mixedDensity(band.value(below.liquidDensity), vapourDensity, quality);
    return {
      temperature,
      pressure,
      density,
      enthalpy,
      entropy: mixed(band.value(below.liquidEntropy), band.value(below.vapourEntropy), quality),
      internalEnergy: enthalpy - pressure / density,
      cp: null,
      cv: null,
      soundSpeed: null,
      surfaceTension: surfaceTensionAt(this.fluid, temperature),
      quality,
      phase: 'twoPhase',
      ...(this.fluid.bubbleAndDew === undefined ? {} : { glideApproximation: true }),
    };
  }
}

/** Whether a temperature is so close to that of a line that the equation is to name the phase. */
function isOnLine(temperature: number, line: number): boolean {
  return Math.abs(temperature / line - 1) < UNSURE_TEMPERATURE;
}

/** Whether a distance from the line is so close to the one that counts as on it that the table cannot tell. */
function isUnsure(distance: number, close: number): boolean {
  return Math.abs(Math.abs(distance) - close) < UNSURE * close;
}
