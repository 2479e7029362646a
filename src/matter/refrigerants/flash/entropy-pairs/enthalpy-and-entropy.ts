// States from enthalpy and entropy. Along an isentrope the enthalpy rises with pressure, (∂h/∂p)_s = 1/ρ, in one phase and
// through the dome: one stable state belongs to a pair, and whichever solution is shown to be stable is it. So Newton's
// method may start from a guess and is believed only where its answer is stable and within the limits; otherwise a search
// along the isentrope between its two ends, by states of pressure and entropy, finds the state or the limit passed.

import { findRoot, OutOfModelError } from '../../../../numerics/index.ts';
import { equilibriumAtPressure, equilibriumAtTemperature } from '../../dome/dome.ts';
import type { Equilibrium } from '../../dome/equilibrium.ts';
import { mixed, mixedDensity, qualityOf } from '../../equation/relations.ts';
import type { Refrigerant, State } from '../../types.ts';
import { mixedState, saturatedState, stateOfDensity } from '../assemble.ts';
import { caloricState } from '../caloric-flash.ts';
import { ON_THE_LINE, ROUNDING_AT_LIMIT, SMALLEST_PRESSURE } from '../limits.ts';
import { BEFORE_FIRST_STEP, isLastStep } from '../newton.ts';
import { entropyRange, everyStateAt } from './entropy-at-temperature.ts';
import { isentropeGuess } from './first-guess.ts';
import { severalStates } from './several-states.ts';

const STEPS = 40;
const LARGEST_STEP = 0.4;
/** A pressure or density this little inside the lines of a blend, relative, is on them. */
const SMALLEST_GAP = 1e-10;
/** Closer than this share to a guessed density of the dome, the dome is solved for to tell the side. */
const CLEAR_OF_THE_DOME = 0.02;

/**
 * The stable state at enthalpy h and entropy s.
 * @param fluid     the fluid
 * @param enthalpy  h [J/kg], finite
 * @param entropy   s [J/(kg K)], finite
 * @returns         the state
 * @throws InputError 'severalStates' for a blend (see blendState); OutOfModelError: the entropy with the lowest and highest of the whole range, or the enthalpy with the lowest and
 *         highest on this isentrope, from 1e-30 Pa or the lowest temperature to the largest pressure or the highest temperature
 */
export function stateAtEnthalpyAndEntropy(fluid: Refrigerant, enthalpy: number, entropy: number): State {
  const quick =
    fluid.bubbleAndDew === undefined ? pureState(fluid, enthalpy, entropy) : blendState(fluid, enthalpy, entropy);
  return quick ?? searchAlongIsentrope(fluid, enthalpy, entropy);
}

/** The state of a pure fluid where a guess leads to it. */
function pureState(fluid: Refrigerant, enthalpy: number, entropy: number): State | undefined {
  const start = isentropeGuess(fluid).start(enthalpy, entropy);
  if (start.kind === 'single') return onePhase(fluid, enthalpy, entropy, start.temperature, start.density);
  const { pressure } = start;
  return insideDome(fluid, enthalpy, entropy, pressure) ?? besideDome(fluid, enthalpy, entropy, pressure);
}

/** The mixture at h and s by Newton's method in p; undefined where none is found. */
function insideDome(fluid: Refrigerant, enthalpy: number, entropy: number, start: number): State | undefined {
  const { critical, triplePoint } = fluid;
  let pressure = start;
  let before = BEFORE_FIRST_STEP;
  for (let step = 0; step < STEPS; step++) {
    if (!(pressure >= triplePoint.pressure && pressure < critical.pressure)) return undefined;
    const mixture = mixtureAt(fluid, pressure, entropy);
    const change = (enthalpy - mixture.enthalpy) * mixture.density;
    const size = Math.abs(change) / pressure;
    if (!Number.isFinite(size)) return undefined;
    // A wet liquid of low pressure: enthalpy in double precision tells its pressure no better.
    if (size <= 1e-12 || (size <= 1e-8 && size >= before)) return stateOfMixture(fluid, mixture);
    pressure *= Math.exp(Math.min(Math.max(change / pressure, -LARGEST_STEP), LARGEST_STEP));
    before = size;
  }
  return undefined;
}

/** What has an entropy at a pressure if it lies between both sides of the dome; the quality tells whether it does. */
interface Mixture {
  readonly sides: Equilibrium;
  readonly quality: number;
  readonly enthalpy: number;
  readonly density: number;
  /** How far the entropy lies above that of the liquid and of the vapour [J/(kg K)]. */
  readonly aboveLiquid: number;
  readonly aboveVapour: number;
}

function mixtureAt(fluid: Refrigerant, pressure: number, entropy: number): Mixture {
  const { equation } = fluid;
  const sides = equilibriumAtPressure(fluid, pressure);
  equation.at(sides.bubbleTemperature, sides.liquidDensity);
  const liquidEnthalpy = equation.enthalpy;
  const liquidEntropy = equation.entropy;
  equation.at(sides.dewTemperature, sides.vapourDensity);
  const vapourEntropy = equation.entropy;
  const quality = qualityOf(entropy, liquidEntropy, vapourEntropy);
  return {
    sides,
    quality,
    enthalpy: mixed(liquidEnthalpy, equation.enthalpy, quality),
    density: mixedDensity(sides.liquidDensity, sides.vapourDensity, quality),
    aboveLiquid: entropy - liquidEntropy,
    aboveVapour: entropy - vapourEntropy,
  };
}

/** The state of a mixture; undefined where it is none. */
function stateOfMixture(fluid: Refrigerant, mixture: Mixture): State | undefined {
  const { sides, quality, aboveLiquid, aboveVapour } = mixture;
  const close = ON_THE_LINE * fluid.gasConstant;
  if (Math.abs(aboveLiquid) <= close) return saturatedState(fluid, sides, 'liquid');
  if (Math.abs(aboveVapour) <= close) return saturatedState(fluid, sides, 'vapour');
  return quality > 0 && quality < 1 ? mixedState(fluid, sides, quality) : undefined;
}

/**
 * The state of a blend. Its lines are curves of their own, and between them nothing holds the enthalpy to rise with pressure:
 * just inside the bubble line a mixture may have more enthalpy than the saturated liquid of the same entropy. No real fluid
 * has; so a state of one phase, which is one of the published equation itself, comes before a mixture.
 * @throws InputError 'severalStates' naming them where several mixtures have both, which happens close to the critical point
 */
function blendState(fluid: Refrigerant, enthalpy: number, entropy: number): State | undefined {
  const guess = isentropeGuess(fluid);
  if (!guess.isDeepInside(enthalpy, entropy)) {
    for (const { temperature, density } of guess.phaseStarts(enthalpy, entropy)) {
      const phase = onePhase(fluid, enthalpy, entropy, temperature, density);
      if (phase !== undefined) return phase;
    }
  }
  const mixtures: State[] = [];
  for (const [low, high] of guess.domeBrackets(enthalpy, entropy)) {
    const mixture = mixtureBetween(fluid, enthalpy, entropy, low, high);
    if (mixture !== undefined && !mixtures.some((other) => isSame(other, mixture))) mixtures.push(mixture);
  }
  if (mixtures.length > 1) throw severalStates(`${enthalpy} J/kg and ${entropy} J/(kg K)`, mixtures);
  return mixtures[0];
}

/** The same mixture found from both sides of a node. */
function isSame(one: State, other: State): boolean {
  return Math.abs(one.pressure / other.pressure - 1) < 1e-6 && Math.abs(one.density / other.density - 1) < 1e-6;
}

function mixtureBetween(
  fluid: Refrigerant,
  enthalpy: number,
  entropy: number,
  low: number,
  high: number,
): State | undefined {
  const gapAt = (pressure: number) => mixtureAt(fluid, pressure, entropy).enthalpy - enthalpy;
  const [lowGap, highGap] = [gapAt(low), gapAt(high)];
  if (lowGap > 0 === highGap > 0) return undefined;
  const ends = { valueAtLow: lowGap, valueAtHigh: highGap };
  const { root } = findRoot(gapAt, low, high, { ...ends, relativeTolerance: 1e-15, what: 'mixture of a blend' });
  return stateOfMixture(fluid, mixtureAt(fluid, root, entropy));
}

/** One phase close to the dome, started from both of its sides. */
function besideDome(fluid: Refrigerant, enthalpy: number, entropy: number, pressure: number): State | undefined {
  const { critical, triplePoint } = fluid;
  if (!(pressure >= triplePoint.pressure && pressure < critical.pressure)) return undefined;
  const sides = equilibriumAtPressure(fluid, pressure);
  return (
    onePhase(fluid, enthalpy, entropy, sides.bubbleTemperature, sides.liquidDensity) ??
    onePhase(fluid, enthalpy, entropy, sides.dewTemperature, sides.vapourDensity)
  );
}

/** Newton's method in ln T and ln ρ; undefined where it does not arrive at a stable state within the limits. */
function onePhase(
  fluid: Refrigerant,
  enthalpy: number,
  entropy: number,
  startTemperature: number,
  startDensity: number,
): State | undefined {
  const { equation } = fluid;
  let temperature = startTemperature;
  let density = startDensity;
  let before = BEFORE_FIRST_STEP;
  for (let step = 0; step < STEPS; step++) {
    equation.at(temperature, density);
    const { cv } = equation;
    const a = temperature * equation.enthalpyByTemperature;
    const b = density * equation.enthalpyByDensity;
    const d = density * equation.entropyByDensity;
    const enthalpyGap = enthalpy - equation.enthalpy;
    const entropyGap = entropy - equation.entropy;
    const determinant = a * d - b * cv;
    const temperatureStep = (d * enthalpyGap - b * entropyGap) / determinant;
    const densityStep = (a * entropyGap - cv * enthalpyGap) / determinant;
    const size = Math.max(Math.abs(temperatureStep), Math.abs(densityStep));
    if (!Number.isFinite(size)) return undefined;
    if (isLastStep(size, before)) {
      temperature = withoutRounding(fluid, temperature * (1 + temperatureStep));
      density *= 1 + densityStep;
      return isStable(fluid, temperature, density) ? stateOfDensity(fluid, temperature, density) : undefined;
    }
    const share = size > LARGEST_STEP ? LARGEST_STEP / size : 1;
    temperature *= Math.exp(share * temperatureStep);
    density *= Math.exp(share * densityStep);
    before = size;
  }
  return undefined;
}

/** A temperature found beyond a limit by rounding lies on it. */
function withoutRounding({ limits }: Refrigerant, temperature: number): number {
  const inside = Math.min(Math.max(temperature, limits.temperatureMin), limits.temperatureMax);
  return Math.abs(temperature / inside - 1) <= ROUNDING_AT_LIMIT ? inside : temperature;
}

/** Whether T and ρ are a stable state of one phase within the limits. */
function isStable(fluid: Refrigerant, temperature: number, density: number): boolean {
  const { equation, limits, critical, guess } = fluid;
  const { temperatureMin, temperatureMax, pressureMax } = limits;
  if (!(temperature >= temperatureMin && temperature <= temperatureMax && density > 0)) return false;
  const { pressure, stiffness } = equation.residualAt(temperature, density);
  if (!(stiffness > 0 && pressure <= pressureMax * (1 + ROUNDING_AT_LIMIT) && pressure >= SMALLEST_PRESSURE))
    return false;
  if (temperature >= critical.temperature) return true;
  if (fluid.bubbleAndDew === undefined) {
    if (density > guess.liquidDensity(temperature) * (1 + CLEAR_OF_THE_DOME)) return true;
    if (density < guess.vapourDensity(temperature) * (1 - CLEAR_OF_THE_DOME)) return true;
  }
  const { liquidDensity, vapourDensity, bubblePressure, dewPressure } = equilibriumAtTemperature(fluid, temperature);
  if (fluid.bubbleAndDew === undefined) return density >= liquidDensity || density <= vapourDensity;
  // The lines of a blend divide its phases by pressure: beyond a density of theirs the equation may have further roots.
  const more = 1 + SMALLEST_GAP;
  if (density * more >= liquidDensity) return pressure * more >= bubblePressure;
  return density <= vapourDensity * more && pressure <= dewPressure * more;
}

/** The sure way: between the two ends of the isentrope, by states of pressure and entropy. */
function searchAlongIsentrope(fluid: Refrigerant, enthalpy: number, entropy: number): State {
  const [first, last] = endsOfIsentrope(fluid, entropy);
  const close = ON_THE_LINE * fluid.gasConstant * first.temperature;
  if (!(enthalpy >= first.enthalpy - close && enthalpy <= last.enthalpy + close)) {
    const { enthalpy: low } = first;
    const { enthalpy: high } = last;
    const reason = `the range at an entropy of ${entropy} J/(kg K)`;
    throw new OutOfModelError('enthalpy', enthalpy, 'J/kg', low, high, 'outOfModel', reason);
  }
  if (enthalpy <= first.enthalpy) return first;
  if (enthalpy >= last.enthalpy) return last;
  const stateAt = (logarithm: number) => caloricState(fluid, Math.exp(logarithm), 'entropy', entropy);
  const gapAt = (logarithm: number) => stateAt(logarithm).enthalpy - enthalpy;
  const options = { absoluteTolerance: 1e-15, relativeTolerance: 0, what: 'state from enthalpy and entropy' };
  const start = inwards(Math.log(first.pressure), 1);
  const end = inwards(Math.log(last.pressure), -1);
  // A value this close to an end is the end: the search could not tell them apart.
  if (!(start < end) || gapAt(start) >= 0) return first;
  if (gapAt(end) <= 0) return last;
  return stateAt(findRoot(gapAt, start, end, options).root);
}

/** By rounding, a state at the very end of an isentrope lies beyond it. */
function inwards(logarithm: number, direction: 1 | -1): number {
  return logarithm + direction * 1e-13;
}

/** The states at lowest and highest pressure on an isentrope within the limits, melting left aside. @throws OutOfModelError */
function endsOfIsentrope(fluid: Refrigerant, entropy: number): readonly [State, State] {
  const { temperatureMin, temperatureMax, pressureMax } = fluid.limits;
  const [coldLow, coldHigh] = entropyRange(fluid, temperatureMin, pressureMax);
  const [hotLow, hotHigh] = entropyRange(fluid, temperatureMax, pressureMax);
  if (!(entropy >= coldLow && entropy <= hotHigh)) {
    throw new OutOfModelError('entropy', entropy, 'J/(kg K)', coldLow, hotHigh);
  }
  const first =
    entropy <= coldHigh ? coldestState(fluid, entropy) : caloricState(fluid, SMALLEST_PRESSURE, 'entropy', entropy);
  const last =
    entropy >= hotLow
      ? everyStateAt(fluid, temperatureMax, entropy)[0]!
      : caloricState(fluid, pressureMax, 'entropy', entropy);
  return [first, last];
}

/** The coldest state of an entropy: of a blend's mixtures that at the lowest pressure, since none has the lowest temperature. */
function coldestState(fluid: Refrigerant, entropy: number): State {
  const { limits, triplePoint, bubbleAndDew } = fluid;
  if (bubbleAndDew !== undefined) {
    const { aboveLiquid, aboveVapour } = mixtureAt(fluid, triplePoint.pressure, entropy);
    if (aboveLiquid > 0 && aboveVapour < 0) return caloricState(fluid, triplePoint.pressure, 'entropy', entropy);
  }
  return everyStateAt(fluid, limits.temperatureMin, entropy)[0]!;
}
