// Where the solvers of states from pressure and enthalpy or entropy start: four sheets of isobars, of the liquid and the
// vapour beside the dome, the vapour thinner than any on the dome, and the fluid above the critical pressure. Each is made
// when the first state in it is asked for, by a function of the fluid alone, so that no answer depends on the ones before.
// They are good to 1e-4 or better over nearly all of the range, which leaves two steps of Newton's; they decide nothing.

import { equilibriumAtTemperature } from '../dome/dome.ts';
import { densityBesideDome, densityOnBranch } from '../flash/density.ts';
import type { Refrigerant } from '../types.ts';
import { type Caloric, caloricOf, newtonOnIsobar } from './newton.ts';
import { type IsobarPoint, Sheet, type SheetRow } from './sheet.ts';

/** Part of an isobar in one phase: beside the dome, thinner than its lowest pressure, or above the critical pressure. */
type IsobarPart = 'liquid' | 'vapour' | 'thin' | 'above';

const parts: readonly IsobarPart[] = ['liquid', 'vapour', 'thin', 'above'];
/** A node of a sheet is good to about the square of this. */
const NODE_TOLERANCE = 1e-3;
/** In place of pressure 0, as a share of the lowest one of the dome. */
const THINNEST = 1e-6;

export class IsobarStarts {
  /** Where the last call of `at` led: T [K] and ρ [kg/m³]. */
  temperature = Number.NaN;
  density = Number.NaN;
  private readonly sheets: (Sheet | undefined)[] = new Array<Sheet | undefined>(2 * parts.length).fill(undefined);

  /**
   * A point near a state.
   * @param fluid     the fluid, whose dome is known; of the liquid and the vapour, at a pressure the line over pressure holds
   * @param part      where the state lies
   * @param pressure  p [Pa]
   * @param kind      which of enthalpy and entropy is given
   * @param value     h [J/kg] or s [J/(kg K)]
   */
  at(fluid: Refrigerant, part: IsobarPart, pressure: number, kind: Caloric, value: number): this {
    const number = parts.indexOf(part) + (kind === 'enthalpy' ? 0 : parts.length);
    let sheet = this.sheets[number];
    if (sheet === undefined) {
      sheet = sheetOf(fluid, part, kind);
      this.sheets[number] = sheet;
    }
    const { critical, gasConstant, triplePoint } = fluid;
    const place = placeOf(fluid, part, pressure);
    if (part === 'thin') {
      sheet.at(
        place,
        kind === 'enthalpy' ? value : value + gasConstant * Math.log(pressure / triplePoint.pressure),
        undefined,
      );
    } else {
      sheet.at(place, value, part === 'above' ? undefined : valueOnLine(fluid, part, pressure, kind));
    }
    this.temperature = sheet.temperature;
    const kept = Math.exp(sheet.logDensity);
    this.density =
      part === 'liquid' || part === 'above'
        ? critical.density * kept
        : pressure / (kept * gasConstant * sheet.temperature);
    return this;
  }
}

/** In which coordinate of pressure the rows of a sheet stand evenly. */
function placeOf({ critical }: Refrigerant, part: IsobarPart, pressure: number): number {
  if (part === 'thin') return pressure;
  const logarithm = Math.log(pressure / critical.pressure);
  return part === 'above' ? logarithm : Math.sqrt(-logarithm);
}

function pressureAt({ critical }: Refrigerant, part: IsobarPart, place: number): number {
  if (part === 'thin') return place;
  return critical.pressure * Math.exp(part === 'above' ? place : -place * place);
}

/** Enthalpy or entropy where a liquid or a vapour meets the dome. */
function valueOnLine(
  { overPressure }: Refrigerant,
  part: 'liquid' | 'vapour',
  pressure: number,
  kind: Caloric,
): number {
  const line = overPressure!.at(pressure);
  if (part === 'liquid') return kind === 'enthalpy' ? line.liquidEnthalpy : line.liquidEntropy;
  return kind === 'enthalpy' ? line.vapourEnthalpy : line.vapourEntropy;
}

function sheetOf(fluid: Refrigerant, part: IsobarPart, kind: Caloric): Sheet {
  const { limits, triplePoint, overPressure } = fluid;
  const row = (place: number, shares: Float64Array) => rowAt(fluid, part, kind, pressureAt(fluid, part, place), shares);
  if (part === 'thin') return new Sheet(5, 20, THINNEST * triplePoint.pressure, triplePoint.pressure, false, row);
  if (part === 'above') return new Sheet(24, 48, 0, placeOf(fluid, part, limits.pressureMax), false, row);
  const low = placeOf(fluid, part, overPressure!.highest);
  const high = placeOf(fluid, part, overPressure!.lowest);
  return part === 'liquid' ? new Sheet(20, 12, low, high, true, row) : new Sheet(28, 20, low, high, true, row);
}

/** Follows an isobar from one end to the other. */
function rowAt(fluid: Refrigerant, part: IsobarPart, kind: Caloric, pressure: number, shares: Float64Array): SheetRow {
  const { equation, critical, gasConstant, triplePoint } = fluid;
  const [start, end] = endsOf(fluid, part, pressure);
  const first = caloricOf(equation.at(start.temperature, start.density), kind);
  const last = caloricOf(equation.at(end.temperature, end.density), kind);
  const temperature = new Float64Array(shares.length);
  const logDensity = new Float64Array(shares.length);
  let point = start;
  for (let k = 0; k < shares.length; k++) {
    if (k === shares.length - 1) point = end;
    else if (k > 0) point = follow(fluid, pressure, kind, first + (last - first) * shares[k]!, point);
    temperature[k] = point.temperature;
    const isDense = part === 'liquid' || part === 'above';
    const scale = isDense ? critical.density : pressure / (gasConstant * point.temperature);
    logDensity[k] = isDense ? Math.log(point.density / scale) : Math.log(scale / point.density);
  }
  // Entropy of a thin gas falls with the logarithm of pressure, which has no limit at 0.
  const shift = part === 'thin' && kind === 'entropy' ? gasConstant * Math.log(pressure / triplePoint.pressure) : 0;
  return { first: first + shift, last: last + shift, temperature, logDensity };
}

function endsOf(fluid: Refrigerant, part: IsobarPart, pressure: number): [start: IsobarPoint, end: IsobarPoint] {
  const { limits, overPressure } = fluid;
  const { temperatureMin: cold, temperatureMax: warm } = limits;
  const coldest = () => ({
    temperature: cold,
    density: densityBesideDome(fluid, equilibriumAtTemperature(fluid, cold), pressure),
  });
  const warmest = () => {
    const start = pressure / (fluid.gasConstant * warm);
    return { temperature: warm, density: densityOnBranch(fluid, warm, pressure, 0, limits.densityMax, start) };
  };
  if (part === 'thin' || part === 'above') return [coldest(), warmest()];
  const { bubbleTemperature, dewTemperature, liquidDensity, vapourDensity } = overPressure!.at(pressure);
  return part === 'liquid'
    ? [{ temperature: bubbleTemperature, density: liquidDensity }, coldest()]
    : [{ temperature: dewTemperature, density: vapourDensity }, warmest()];
}

/** The next point of an isobar: along its slope at the one before, then Newton's method; where that fails, the one before. */
function follow(
  { equation }: Refrigerant,
  pressure: number,
  kind: Caloric,
  value: number,
  before: IsobarPoint,
): IsobarPoint {
  equation.at(before.temperature, before.density);
  const gap = value - caloricOf(equation, kind);
  const warming = gap / (kind === 'enthalpy' ? equation.cp * before.temperature : equation.cp);
  const share = Math.min(Math.max(warming, -0.2), 0.5);
  const expansion =
    (equation.pressureByTemperature * before.temperature) / (before.density * equation.pressureByDensity);
  const start = {
    temperature: before.temperature * (1 + share),
    density: before.density * Math.exp(Math.min(Math.max(-expansion * share, -1), 0.2)),
  };
  return newtonOnIsobar(equation, pressure, kind, value, start, NODE_TOLERANCE) ?? before;
}
