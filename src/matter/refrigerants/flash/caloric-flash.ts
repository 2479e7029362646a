// States from pressure and enthalpy, or pressure and entropy. The values at saturation decide the phase: those of the
// expansions of the line where the value is clear of both sides, the dome solved exactly where it is not. In a single phase
// Newton's method on temperature and density together starts from a sheet of isobars (isobars/), and its answer is accepted
// only on the stable side. Otherwise a bracketed search along the isobar, on which enthalpy and entropy rise with
// temperature, finds the state or shows that the value lies outside the equation's range.

import { ConvergenceError, NoSolutionError, OutOfModelError } from '../../../numerics/index.ts';
import { dewPointBelowBubbleLine } from '../dome/bubble-and-dew.ts';
import { equilibriumAtPressure, equilibriumAtTemperature } from '../dome/dome.ts';
import { qualityOf } from '../equation/relations.ts';
import { type Caloric, caloricOf, newtonOnIsobar } from '../isobars/newton.ts';
import type { IsobarPoint } from '../isobars/sheet.ts';
import type { Refrigerant, State } from '../types.ts';
import { mixedState, saturatedState, singlePhaseState } from './assemble.ts';
import { densityBesideDome, densityOnBranch } from './density.ts';
import { ON_THE_LINE } from './limits.ts';
import { meltingTemperature } from './melting-line.ts';

/** This far from a side of the dome, on the same scale, its expansion tells the phase: a thousand times its error. */
const CLEAR_OF_THE_LINE = 1e-6;
/** Above this share of the critical pressure the sides are too close to one another: the dome is solved. */
const CLOSE_TO_CRITICAL = 0.995;
/** So far a point of the expansions may be from the exact one. */
const LINE_ROUNDING = 1e-8;
/** A liquid is a little denser than at the dome when colder: water, with its anomaly, by less than this margin thinner. */
const NOT_THINNER = 0.999;
/** What a pressure may be off by and still be the same, relative. */
const SAME_PRESSURE = 1e-10;
/** How far from its value a state may be for the last digit of its temperature, as a share of R T or R. */
const LARGEST_MISS = 1e-4;

/** Part of an isobar in one phase, from `cold` to `warm`; where it ends at the dome, with its point there. */
interface IsobarStretch {
  readonly cold: number;
  readonly warm: number;
  readonly side: 'liquid' | 'vapour' | 'any';
  readonly edge: IsobarPoint | undefined;
}

/** A part that ends at the dome. */
interface EdgedStretch extends IsobarStretch {
  readonly side: 'liquid' | 'vapour';
  readonly edge: IsobarPoint;
}

const units = { enthalpy: 'J/kg', entropy: 'J/(kg K)' } as const;

/**
 * The stable state at pressure p and enthalpy h or entropy s.
 * @param fluid     the fluid
 * @param pressure  p [Pa], checked by the caller against the limits
 * @param kind      which of the two is given
 * @param value     h [J/kg] or s [J/(kg K)], finite
 * @returns         the state
 * @throws OutOfModelError with the lowest and highest value the equation covers at this pressure
 */
export function caloricState(fluid: Refrigerant, pressure: number, kind: Caloric, value: number): State {
  const { limits, critical, triplePoint, isobarStarts } = fluid;
  const { temperatureMin: cold, temperatureMax: warm } = limits;
  if (pressure >= critical.pressure) {
    const start = isobarStarts.at(fluid, 'above', pressure, kind, value);
    return stateOnIsobar(fluid, pressure, kind, value, { cold, warm, side: 'any', edge: undefined }, start);
  }
  if (pressure < triplePoint.pressure) {
    const edge = dewPointBelowBubbleLine(fluid, pressure);
    const part: IsobarStretch = { cold: edge?.temperature ?? cold, warm, side: 'vapour', edge };
    return stateOnIsobar(fluid, pressure, kind, value, part, isobarStarts.at(fluid, 'thin', pressure, kind, value));
  }
  const part = clearPart(fluid, pressure, kind, value);
  if (part !== undefined) {
    const start = isobarStarts.at(fluid, part.side, pressure, kind, value);
    const point = newtonOnIsobar(fluid.equation, pressure, kind, value, start);
    if (point !== undefined && isStable(fluid, part, point)) {
      return singlePhaseState(fluid, point.temperature, point.density, pressure);
    }
  }
  return besideOrInDome(fluid, pressure, kind, value);
}

/** The part of the isobar a value lies in, from the expansions of the line; undefined where they leave it in doubt. */
function clearPart(fluid: Refrigerant, pressure: number, kind: Caloric, value: number): EdgedStretch | undefined {
  const { critical, limits, overPressure, gasConstant } = fluid;
  if (!(overPressure?.holds(pressure) && pressure < CLOSE_TO_CRITICAL * critical.pressure)) return undefined;
  const line = overPressure.at(pressure);
  const isEnthalpy = kind === 'enthalpy';
  const clear = CLEAR_OF_THE_LINE * gasConstant * (isEnthalpy ? critical.temperature : 1);
  if (value < (isEnthalpy ? line.liquidEnthalpy : line.liquidEntropy) - clear) {
    const edge = { temperature: line.bubbleTemperature, density: line.liquidDensity };
    return { cold: limits.temperatureMin, warm: edge.temperature, side: 'liquid', edge };
  }
  if (value > (isEnthalpy ? line.vapourEnthalpy : line.vapourEntropy) + clear) {
    const edge = { temperature: line.dewTemperature, density: line.vapourDensity };
    return { cold: edge.temperature, warm: limits.temperatureMax, side: 'vapour', edge };
  }
  return undefined;
}

/** The state at a pressure that the dome has, which is solved for. */
function besideOrInDome(fluid: Refrigerant, pressure: number, kind: Caloric, value: number): State {
  const { limits, equation, gasConstant } = fluid;
  const dome = equilibriumAtPressure(fluid, pressure);
  const liquid = caloricOf(equation.at(dome.bubbleTemperature, dome.liquidDensity), kind);
  const close = ON_THE_LINE * gasConstant * (kind === 'enthalpy' ? dome.bubbleTemperature : 1);
  if (Math.abs(value - liquid) <= close) return saturatedState(fluid, dome, 'liquid');
  if (value < liquid) {
    const edge = { temperature: dome.bubbleTemperature, density: dome.liquidDensity };
    const part: EdgedStretch = { cold: limits.temperatureMin, warm: edge.temperature, side: 'liquid', edge };
    return stateBesideDome(fluid, pressure, kind, value, part);
  }
  const vapour = caloricOf(equation.at(dome.dewTemperature, dome.vapourDensity), kind);
  if (Math.abs(value - vapour) <= close) return saturatedState(fluid, dome, 'vapour');
  if (value < vapour) return mixedState(fluid, dome, qualityOf(value, liquid, vapour));
  const edge = { temperature: dome.dewTemperature, density: dome.vapourDensity };
  const part: EdgedStretch = { cold: edge.temperature, warm: limits.temperatureMax, side: 'vapour', edge };
  return stateBesideDome(fluid, pressure, kind, value, part);
}

function stateBesideDome(
  fluid: Refrigerant,
  pressure: number,
  kind: Caloric,
  value: number,
  part: EdgedStretch,
): State {
  const hasSheet = fluid.overPressure?.holds(pressure) === true;
  const start = hasSheet ? fluid.isobarStarts.at(fluid, part.side, pressure, kind, value) : part.edge;
  return stateOnIsobar(fluid, pressure, kind, value, part, start);
}

function stateOnIsobar(
  fluid: Refrigerant,
  pressure: number,
  kind: Caloric,
  value: number,
  part: IsobarStretch,
  start: IsobarPoint,
): State {
  const found = newtonOnIsobar(fluid.equation, pressure, kind, value, start);
  const point =
    found !== undefined && isStable(fluid, part, found) ? found : searchAlongIsobar(fluid, pressure, kind, value, part);
  return singlePhaseState(fluid, point.temperature, point.density, pressure);
}

/**
 * Whether a solution of both conditions lies in the phase asked for, on the side where it is stable. The equation is still
 * evaluated one step, less than any margin here, from the solution.
 */
function isStable(fluid: Refrigerant, part: IsobarStretch, { temperature, density }: IsobarPoint): boolean {
  const { equation, critical, limits, guess } = fluid;
  const { temperatureMin, temperatureMax } = limits;
  if (!(temperature >= temperatureMin && temperature <= temperatureMax)) return false;
  if (!(temperature >= part.cold * (1 - LINE_ROUNDING) && temperature <= part.warm * (1 + LINE_ROUNDING))) return false;
  if (!(density > 0 && density <= limits.densityMax)) return false;
  if (!(equation.stiffness > 0)) return false;
  // Above the critical pressure a cold state is a liquid; what lies inside the dome's densities is no state at all.
  if (part.side === 'any') {
    return temperature >= critical.temperature || density > NOT_THINNER * guess.liquidDensity(temperature);
  }
  if (part.edge === undefined) return density < guess.vapourDensity(limits.temperatureMin);
  return part.side === 'liquid'
    ? density >= NOT_THINNER * part.edge.density
    : density <= part.edge.density * (1 + LINE_ROUNDING);
}

/** Density on the isobar at T, in the phase of the part. */
function densityAt(fluid: Refrigerant, pressure: number, part: IsobarStretch, temperature: number): number {
  const { critical, limits, gasConstant } = fluid;
  if (temperature === part.edge?.temperature) return part.edge.density;
  if (temperature >= critical.temperature) {
    const start = pressure / (gasConstant * temperature);
    return densityOnBranch(fluid, temperature, pressure, 0, limits.densityMax, start);
  }
  return densityBesideDome(fluid, equilibriumAtTemperature(fluid, temperature), pressure);
}

/** The lowest and highest value of the whole isobar, through the dome where it has one. */
function isobarRange(fluid: Refrigerant, pressure: number, kind: Caloric, part: IsobarStretch): [number, number] {
  const { equation, limits, triplePoint } = fluid;
  // Where a blend has a dew line only, its isobar begins there; elsewhere with the coldest liquid that is not frozen.
  const coldest = Math.max(limits.temperatureMin, meltingTemperature(fluid, pressure) ?? 0);
  const cold = pressure < triplePoint.pressure ? part.cold : coldest;
  const { temperatureMax: warm } = limits;
  const lowest = caloricOf(equation.at(cold, densityAt(fluid, pressure, part, cold)), kind);
  const highest = caloricOf(equation.at(warm, densityAt(fluid, pressure, part, warm)), kind);
  return [lowest, highest];
}

/** Newton's method in temperature along the isobar, halved into a bracket that shrinks at each step. */
function searchAlongIsobar(
  fluid: Refrigerant,
  pressure: number,
  kind: Caloric,
  value: number,
  part: IsobarStretch,
): IsobarPoint {
  const { equation } = fluid;
  const { cold, warm } = part;
  const coldDensity = densityAt(fluid, pressure, part, cold);
  const lowest = caloricOf(equation.at(cold, coldDensity), kind);
  const warmDensity = densityAt(fluid, pressure, part, warm);
  const highest = caloricOf(equation.at(warm, warmDensity), kind);
  const close = ON_THE_LINE * fluid.gasConstant * (kind === 'enthalpy' ? cold : 1);
  if (!(value >= lowest - close && value <= highest + close)) {
    const [low, high] = isobarRange(fluid, pressure, kind, part);
    throw new OutOfModelError(kind, value, units[kind], low, high);
  }
  if (value <= lowest) return { temperature: cold, density: coldDensity };
  if (value >= highest) return { temperature: warm, density: warmDensity };
  let below = cold;
  let above = warm;
  let temperature = below + ((above - below) * (value - lowest)) / (highest - lowest);
  for (let step = 0; step < 200; step++) {
    const density = densityAt(fluid, pressure, part, temperature);
    const gap = caloricOf(equation.at(temperature, density), kind) - value;
    const slope = kind === 'enthalpy' ? equation.cp : equation.cp / temperature;
    if (gap < 0) below = temperature;
    else above = temperature;
    let next = temperature - gap / slope;
    if (!(next > below && next < above)) next = (below + above) / 2;
    const size = Math.abs(next - temperature);
    if (gap === 0) return { temperature, density };
    if (size <= 1e-15 * temperature || above - below <= 4.5e-16 * above) {
      return atLastTemperature(fluid, pressure, kind, value, { temperature, density });
    }
    temperature = next;
  }
  throw new ConvergenceError(`state from pressure and ${kind}`, 200, [pressure, value], above - below, [below, above]);
}

/**
 * The state where the temperature cannot be told any closer. Next to the critical point its last digit is worth much of the
 * enthalpy: there the density, which the pressure hardly feels, is moved until the value is met.
 * @throws NoSolutionError ('noStableState') where the equation jumps over the value: those of blends do close to the point
 *         where their lines meet, which is not the critical point of the equation; that of R245fa within 1e-6 of its own
 */
function atLastTemperature(
  fluid: Refrigerant,
  pressure: number,
  kind: Caloric,
  value: number,
  { temperature, density }: IsobarPoint,
): IsobarPoint {
  const { equation, gasConstant } = fluid;
  equation.at(temperature, density);
  const gap = value - caloricOf(equation, kind);
  const scale = gasConstant * (kind === 'enthalpy' ? temperature : 1);
  if (Math.abs(gap) <= ON_THE_LINE * scale) return { temperature, density };
  const moved = density + gap / (kind === 'enthalpy' ? equation.enthalpyByDensity : equation.entropyByDensity);
  if (moved > 0 && Math.abs(equation.residualAt(temperature, moved).pressure / pressure - 1) <= SAME_PRESSURE) {
    return { temperature, density: moved };
  }
  if (Math.abs(gap) <= LARGEST_MISS * scale) return { temperature, density };
  const said = `${kind} ${value} ${units[kind]} at ${pressure} Pa`;
  throw new NoSolutionError(
    `${said}: no stable state has it; there the equation of ${fluid.name} jumps in density`,
    `${temperature} K`,
    'noStableState',
  );
}
