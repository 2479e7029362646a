// States inside the dome of a blend under one equation, where temperature alone does not fix the pressure. At one pressure
// h, s, u and 1/ρ are linear in the quality between bubble and dew line, and so is T: the named glide approximation. From it
// follow the quality at (T,p), the pressure at (ρ,T) and (T,s), and what of (T,x) and (p,x) exists.

import { findRoot, InputError, OutOfModelError } from '../../../numerics/index.ts';
import { dewPointBelowBubbleLine } from '../dome/bubble-and-dew.ts';
import { equilibriumAtPressure, equilibriumAtTemperature } from '../dome/dome.ts';
import type { Equilibrium } from '../dome/equilibrium.ts';
import { mixed, qualityOf } from '../equation/relations.ts';
import type { Refrigerant, State } from '../types.ts';
import { mixedState, saturatedState, singlePhaseState } from './assemble.ts';

/** The highest pressure of a mixture, relative: closer by, a bubble line that passes the critical pressure is met at its end. */
const BELOW_CRITICAL = 1 - 1e-9;

/**
 * The state of a blend at T and x: on the bubble line (x = 0) or the dew line (x = 1).
 * @throws InputError ('unsupportedPair') at a quality between: a mixture of that temperature exists at many pressures
 */
export function blendAtTemperatureAndQuality(fluid: Refrigerant, temperature: number, quality: number): State {
  if (quality !== 0 && quality !== 1) {
    throw new InputError(
      'given.quality',
      quality,
      `0 or 1 with a temperature, or pressure and quality: inside its dome the blend ${fluid.name} glides in temperature`,
      'unsupportedPair',
    );
  }
  return mixedState(fluid, equilibriumAtTemperature(fluid, temperature), quality);
}

/** The state of a blend at p and x = 1; the dew line begins at a lower pressure than the bubble line. */
export function blendAtPressureOnDewLine(fluid: Refrigerant, pressure: number): State {
  const point = dewPointBelowBubbleLine(fluid, pressure);
  const equilibrium: Equilibrium =
    point === undefined
      ? equilibriumAtPressure(fluid, pressure)
      : {
          bubbleTemperature: point.temperature,
          dewTemperature: point.temperature,
          bubblePressure: pressure,
          dewPressure: pressure,
          liquidDensity: point.density,
          vapourDensity: point.density,
        };
  return saturatedState(fluid, equilibrium, 'vapour');
}

/**
 * The mixture of a blend at T and a pressure between its dew and bubble pressure there; the quality follows from the glide.
 *     x = (T − T′(p)) / (T″(p) − T′(p))
 * @throws OutOfModelError ('noSaturation') below the bubble pressure at the lowest temperature
 */
export function blendBetweenLines(fluid: Refrigerant, temperature: number, pressure: number): State {
  const equilibrium = equilibriumAtPressure(fluid, pressure);
  const quality = shareOfGlide(equilibrium, temperature);
  return { ...mixedState(fluid, equilibrium, quality), temperature };
}

/**
 * The state of a blend at T and a density between those on its two lines: at the pressure whose mixture has both.
 *     T = T′(p) + x (T″(p) − T′(p)),  1/ρ = 1/ρ′(p) + x (1/ρ″(p) − 1/ρ′(p))
 * Just below the critical temperature the bubble pressure may pass the critical one, from which on there is no mixture: there
 * the equation itself gives the state, if its pressure is that high.
 * @param fluid    the blend
 * @param onLines  both lines at T
 * @param density  ρ [kg/m³], between those of the two lines
 * @throws OutOfModelError ('noSaturation') where no mixture of this temperature is as thin or as dense
 */
export function blendBetweenDensities(fluid: Refrigerant, onLines: Equilibrium, density: number): State {
  const { critical, triplePoint } = fluid;
  const temperature = onLines.bubbleTemperature;
  const volume = 1 / density;
  const lowest = Math.max(onLines.dewPressure, triplePoint.pressure);
  const highest = Math.min(onLines.bubblePressure, critical.pressure * BELOW_CRITICAL);
  const gapAt = (pressure: number) => volumeAt(equilibriumAtPressure(fluid, pressure), temperature) - volume;
  const lowGap = onLines.dewPressure < lowest ? gapAt(lowest) : 1 / onLines.vapourDensity - volume;
  const highGap = onLines.bubblePressure > highest ? gapAt(highest) : 1 / onLines.liquidDensity - volume;
  if (lowGap < 0 || highGap > 0) {
    const { pressure } = fluid.equation.residualAt(temperature, density);
    if (highGap > 0 && pressure >= critical.pressure) return singlePhaseState(fluid, temperature, density, pressure);
    const [thin, dense] = [1 / (volume + lowGap), 1 / (volume + highGap)];
    throw new OutOfModelError('density', density, 'kg/m³', thin, dense, 'noSaturation');
  }
  const pressure = pressureBetween(gapAt, lowest, highest, lowGap, highGap);
  const equilibrium = equilibriumAtPressure(fluid, pressure);
  const { liquidDensity, vapourDensity } = equilibrium;
  // The quality from the density: where both lines nearly coincide, the temperature would give it with fewer digits.
  const quality = Math.min(Math.max(qualityOf(volume, 1 / liquidDensity, 1 / vapourDensity), 0), 1);
  return { ...mixedState(fluid, equilibrium, quality), temperature, density };
}

/**
 * The mixture of a blend at T and an entropy between those on its two lines: at the pressure whose mixture has both.
 *     T = T′(p) + x (T″(p) − T′(p)),  s = s′(p) + x (s″(p) − s′(p))
 * @param fluid    the blend
 * @param onLines  both lines at T
 * @param entropy  s [J/(kg K)], between those of the two lines
 * @throws OutOfModelError ('noSaturation') where no mixture of this temperature has the entropy
 */
export function blendBetweenEntropies(fluid: Refrigerant, onLines: Equilibrium, entropy: number): State {
  const { critical, triplePoint } = fluid;
  const temperature = onLines.bubbleTemperature;
  const lowest = Math.max(onLines.dewPressure, triplePoint.pressure);
  const highest = Math.min(onLines.bubblePressure, critical.pressure * BELOW_CRITICAL);
  const gapAt = (pressure: number) => entropyAt(fluid, equilibriumAtPressure(fluid, pressure), temperature) - entropy;
  const [lowGap, highGap] = [gapAt(lowest), gapAt(highest)];
  if (lowGap < 0 || highGap > 0) {
    const [low, high] = [entropy + highGap, entropy + lowGap];
    throw new OutOfModelError('entropy', entropy, 'J/(kg K)', low, high, 'noSaturation');
  }
  const pressure = pressureBetween(gapAt, lowest, highest, lowGap, highGap);
  const equilibrium = equilibriumAtPressure(fluid, pressure);
  return { ...mixedState(fluid, equilibrium, shareOfGlide(equilibrium, temperature)), temperature };
}

/** Entropy [J/(kg K)] of the mixture that has this temperature. */
function entropyAt({ equation }: Refrigerant, equilibrium: Equilibrium, temperature: number): number {
  const liquid = equation.at(equilibrium.bubbleTemperature, equilibrium.liquidDensity).entropy;
  const vapour = equation.at(equilibrium.dewTemperature, equilibrium.vapourDensity).entropy;
  return mixed(liquid, vapour, shareOfGlide(equilibrium, temperature));
}

function shareOfGlide({ bubbleTemperature, dewTemperature }: Equilibrium, temperature: number): number {
  return Math.min(Math.max(qualityOf(temperature, bubbleTemperature, dewTemperature), 0), 1);
}

/** Specific volume [m³/kg] of the mixture that has this temperature. */
function volumeAt(equilibrium: Equilibrium, temperature: number): number {
  return mixed(1 / equilibrium.liquidDensity, 1 / equilibrium.vapourDensity, shareOfGlide(equilibrium, temperature));
}

/** Pressure at which a falling gap passes 0; at both ends the gap is known already. */
function pressureBetween(
  gapAt: (pressure: number) => number,
  lowest: number,
  highest: number,
  lowestGap: number,
  highestGap: number,
): number {
  if (lowest === highest) return lowest;
  const ends = { valueAtLow: lowestGap, valueAtHigh: highestGap };
  return findRoot(gapAt, lowest, highest, { ...ends, relativeTolerance: 0, what: 'pressure of a mixture' }).root;
}
