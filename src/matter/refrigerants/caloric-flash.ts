// States from pressure and enthalpy, or pressure and entropy. The values at saturation decide the phase; in a single phase
// Newton's method on temperature and density together is started from the nearest known state, and its answer is accepted
// only on the stable side. Otherwise a bracketed search along the isobar, on which enthalpy and entropy rise with
// temperature, finds the state or shows that the value lies outside the equation's range.

import { ConvergenceError, OutOfModelError } from '../../numerics/index.ts';
import { mixedState, saturatedState, singlePhaseState } from './assemble.ts';
import { densityBesideDome, densityOnBranch } from './density.ts';
import { dewPointBelowBubbleLine } from './dome/bubble-and-dew.ts';
import { equilibriumAtPressure, equilibriumAtTemperature } from './dome/dome.ts';
import type { HelmholtzEquation } from './equation/equation.ts';
import { qualityOf } from './equation/relations.ts';
import { meltingTemperature } from './melting-line.ts';
import { BEFORE_FIRST_STEP, isLastStep } from './newton.ts';
import type { Refrigerant, State } from './types.ts';

export type Caloric = 'enthalpy' | 'entropy';

/** A value this close to one side of the dome counts as on it: as a share of R T for enthalpy, of R for entropy. */
const ON_THE_LINE = 1e-9;
const NEWTON_STEPS = 20;
const LARGEST_STEP = 0.25;

interface Point {
  readonly temperature: number;
  readonly density: number;
}

/** Part of an isobar in one phase, from `cold` to `warm`; where it ends at the dome, with its point there. */
interface IsobarPart {
  readonly cold: number;
  readonly warm: number;
  readonly side: 'liquid' | 'vapour' | 'any';
  readonly edge: Point | undefined;
}

/** By name rather than by key: a computed key costs as much as the evaluation of a short equation. */
function caloricOf(equation: HelmholtzEquation, kind: Caloric): number {
  return kind === 'enthalpy' ? equation.enthalpy : equation.entropy;
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
  const { limits, critical, triplePoint, equation, gasConstant } = fluid;
  const whole = { cold: limits.temperatureMin, warm: limits.temperatureMax };
  if (pressure >= critical.pressure) {
    return stateOnIsobar(fluid, pressure, kind, value, { ...whole, side: 'any', edge: undefined });
  }
  if (pressure < triplePoint.pressure) {
    const edge = dewPointBelowBubbleLine(fluid, pressure);
    const cold = edge?.temperature ?? whole.cold;
    return stateOnIsobar(fluid, pressure, kind, value, { ...whole, cold, side: 'vapour', edge });
  }
  const dome = equilibriumAtPressure(fluid, pressure);
  const liquid = caloricOf(equation.at(dome.bubbleTemperature, dome.liquidDensity), kind);
  const close = ON_THE_LINE * gasConstant * (kind === 'enthalpy' ? dome.bubbleTemperature : 1);
  if (Math.abs(value - liquid) <= close) return saturatedState(fluid, dome, 'liquid');
  if (value < liquid) {
    const edge = { temperature: dome.bubbleTemperature, density: dome.liquidDensity };
    return stateOnIsobar(fluid, pressure, kind, value, { ...whole, warm: edge.temperature, side: 'liquid', edge });
  }
  const vapour = caloricOf(equation.at(dome.dewTemperature, dome.vapourDensity), kind);
  if (Math.abs(value - vapour) <= close) return saturatedState(fluid, dome, 'vapour');
  if (value < vapour) return mixedState(fluid, dome, qualityOf(value, liquid, vapour));
  const edge = { temperature: dome.dewTemperature, density: dome.vapourDensity };
  return stateOnIsobar(fluid, pressure, kind, value, { ...whole, cold: edge.temperature, side: 'vapour', edge });
}

function stateOnIsobar(fluid: Refrigerant, pressure: number, kind: Caloric, value: number, part: IsobarPart): State {
  const start = startPoint(fluid, pressure, kind, value, part);
  const point =
    newton(fluid, pressure, kind, value, part, start) ?? searchAlongIsobar(fluid, pressure, kind, value, part);
  return singlePhaseState(fluid, point.temperature, point.density, pressure);
}

/** Where Newton's method starts: a liquid where the saturated liquid holds as much; else along the isobar from the dome. */
function startPoint(fluid: Refrigerant, pressure: number, kind: Caloric, value: number, part: IsobarPart): Point {
  const { equation, critical, gasConstant } = fluid;
  const { edge, side, cold, warm } = part;
  if (side !== 'vapour') {
    const temperature = fluid.guess.liquidTemperature(kind, value);
    if (temperature !== undefined) return { temperature, density: liquidDensityGuess(fluid, temperature, pressure) };
  }
  let temperature = edge?.temperature ?? cold;
  let density = edge?.density ?? pressure / (gasConstant * temperature);
  if (side === 'any') {
    temperature = critical.temperature;
    density = critical.density;
  }
  equation.at(temperature, density);
  // At the critical point the heat capacity has no limit; a few times c_v leads to the right neighbourhood.
  const heatCapacity = side === 'any' ? 3 * equation.cv : equation.cp;
  const gap = value - caloricOf(equation, kind);
  const warmed =
    kind === 'enthalpy' ? temperature + gap / heatCapacity : temperature * Math.exp(Math.min(gap / heatCapacity, 2));
  const bounded = Math.min(Math.max(warmed, cold), warm);
  if (side === 'liquid') {
    const expansion = equation.pressureByTemperature / (density * equation.pressureByDensity);
    return { temperature: bounded, density: density * Math.exp(Math.min(expansion * (temperature - bounded), 0.5)) };
  }
  return { temperature: bounded, density: (density * temperature) / bounded };
}

/** Density of a compressed liquid from the saturated one, which stiffens about as a power law with this exponent. */
function liquidDensityGuess(fluid: Refrigerant, temperature: number, pressure: number): number {
  const { equation, guess } = fluid;
  const density = guess.liquidDensity(temperature);
  const stiffness = density * equation.residualAt(temperature, density).pressureByDensity;
  const excess = Math.max(pressure - guess.saturationPressure(temperature), 0);
  return stiffness > 0 ? density * (1 + (9 * excess) / stiffness) ** (1 / 9) : density;
}

function newton(
  fluid: Refrigerant,
  pressure: number,
  kind: Caloric,
  value: number,
  part: IsobarPart,
  start: Point,
): Point | undefined {
  const { equation } = fluid;
  let { temperature, density } = start;
  let before = BEFORE_FIRST_STEP;
  for (let step = 0; step < NEWTON_STEPS; step++) {
    equation.at(temperature, density);
    const a = density * equation.pressureByDensity;
    const b = temperature * equation.pressureByTemperature;
    const c = density * (kind === 'enthalpy' ? equation.enthalpyByDensity : equation.entropyByDensity);
    const d = temperature * (kind === 'enthalpy' ? equation.enthalpyByTemperature : equation.cv / temperature);
    const pressureGap = pressure - equation.pressure;
    const valueGap = value - caloricOf(equation, kind);
    const determinant = a * d - b * c;
    const densityStep = (d * pressureGap - b * valueGap) / determinant;
    const temperatureStep = (a * valueGap - c * pressureGap) / determinant;
    const size = Math.max(Math.abs(densityStep), Math.abs(temperatureStep));
    if (!Number.isFinite(size)) return undefined;
    const share = size > LARGEST_STEP ? LARGEST_STEP / size : 1;
    temperature *= 1 + share * temperatureStep;
    density *= 1 + share * densityStep;
    if (isLastStep(size, before)) {
      const point = { temperature, density };
      return isStable(fluid, part, point) ? point : undefined;
    }
    before = size;
  }
  return undefined;
}

/** Whether a solution of both conditions lies in the phase asked for, on the side where it is stable. */
function isStable(fluid: Refrigerant, part: IsobarPart, { temperature, density }: Point): boolean {
  const { equation, critical, limits } = fluid;
  if (!(temperature >= part.cold && temperature <= part.warm)) return false;
  if (!(density > 0 && density <= limits.densityMax)) return false;
  if (!(equation.stiffness > 0)) return false;
  // Above the critical pressure a cold state is a liquid; what lies far inside the dome's densities is no state at all.
  if (part.side === 'any') {
    return temperature >= critical.temperature || density > 0.95 * fluid.guess.liquidDensity(temperature);
  }
  if (part.edge === undefined) return density < fluid.guess.vapourDensity(limits.temperatureMin);
  // A liquid is a little denser than at the dome when colder (water, with its anomaly, by less than this margin thinner).
  return part.side === 'liquid' ? density >= 0.999 * part.edge.density : density <= part.edge.density;
}

/** Density on the isobar at T, in the phase of the part. */
function densityAt(fluid: Refrigerant, pressure: number, part: IsobarPart, temperature: number): number {
  const { critical, limits, gasConstant } = fluid;
  if (temperature === part.edge?.temperature) return part.edge.density;
  if (temperature >= critical.temperature) {
    const start = pressure / (gasConstant * temperature);
    return densityOnBranch(fluid, temperature, pressure, 0, limits.densityMax, start);
  }
  return densityBesideDome(fluid, equilibriumAtTemperature(fluid, temperature), pressure);
}

/** The lowest and highest value of the whole isobar, through the dome where it has one. */
function isobarRange(fluid: Refrigerant, pressure: number, kind: Caloric, part: IsobarPart): [number, number] {
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
  part: IsobarPart,
): Point {
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
    if (gap === 0 || size <= 1e-15 * temperature || above - below <= 4.5e-16 * above) return { temperature, density };
    temperature = next;
  }
  throw new ConvergenceError(`state from pressure and ${kind}`, 200, [pressure, value], above - below, [below, above]);
}
