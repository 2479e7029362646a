// From a coefficient file to a fluid that can be asked for states: checks the file, builds the equation, finds the ends of
// the saturation line and the largest density, and sets the zero of enthalpy and entropy.

import { DataError, KettlefinError } from '../../numerics/index.ts';
import { type BubbleAndDew, bubbleAndDewOf, NEAR_CRITICAL } from './dome/bubble-and-dew.ts';
import { equilibriumAtTemperature } from './dome/dome.ts';
import { ancillaryGuess, type Guess, lineGuess } from './dome/first-guess.ts';
import { lawTemperature } from './dome/near-critical.ts';
import { curveValue } from './dome/saturation-curve.ts';
import { SaturationOverPressure, SaturationOverTemperature } from './dome/saturation-line.ts';
import { HelmholtzEquation } from './equation/equation.ts';
import {
  checkedFluidData,
  type FluidData,
  type PseudoPureFluidData,
  type PureFluidData,
} from './equation/fluid-data.ts';
import { checkMeltingLine } from './flash/melting-line.ts';
import { IsobarStarts } from './isobars/starts.ts';
import type { Refrigerant } from './types.ts';

/** The zero inside the program: saturated liquid at 0 °C. */
const ZERO_TEMPERATURE = 273.15;
const ZERO_ENTHALPY = 200e3;
const ZERO_ENTROPY = 1e3;
/** So thin, as a share of the critical density, that next to nothing but the ideal part is left of the equation. */
const THIN = 1e-6;

/**
 * @param data  the parsed JSON of a coefficient file
 * @param file  its name, for errors
 * @throws DataError naming file, path and rule
 */
export function loadRefrigerant(data: unknown, file: string): Refrigerant {
  const checked = checkedFluidData(data, file);
  try {
    return loaded(checked, file);
  } catch (error) {
    // Numbers that are sound one by one may have no saturation line, largest density or melting line together.
    if (error instanceof DataError || !(error instanceof KettlefinError)) throw error;
    throw new DataError(file, 'fluid', `must hold numbers that make a fluid together (${error.message})`);
  }
}

function loaded(checked: FluidData, file: string): Refrigerant {
  const started = checked.kind === 'pure' ? pureFluid(checked, file) : blend(checked);
  // With the guesses in use from now on, so that the end of the line is the same number at each later call.
  const { limits, triplePoint } = started;
  const coldest = equilibriumAtTemperature(started, limits.temperatureMin);
  const densityMax = largestDensity(started, coldest.liquidDensity, file);
  checkMeltingLine(started, file);
  checkIdealPart(started, file);
  return Object.freeze({
    ...started,
    triplePoint: { ...triplePoint, pressure: coldest.bubblePressure },
    limits: { ...limits, densityMax },
  });
}

/** A fluid with its equation, whose zero, ends of the dome and largest density are not set yet. */
function unfinished(data: FluidData, guess: Guess, bubbleAndDew: BubbleAndDew | undefined): Refrigerant {
  const { name, aliases, citations, molarMass, critical, limits, triplePoint, surfaceTension, meltingLine } = data;
  const equation = new HelmholtzEquation(data);
  return {
    name,
    aliases,
    citations,
    molarMass,
    gasConstant: equation.gasConstant,
    critical: { ...critical, density: critical.molarDensity * molarMass },
    triplePoint: { ...triplePoint, pressure: 0 },
    limits: { ...limits, densityMax: Number.POSITIVE_INFINITY },
    surfaceTension,
    transport: data.transport,
    meltingLine,
    equation,
    guess,
    overTemperature: undefined,
    overPressure: undefined,
    isobarStarts: new IsobarStarts(),
    bubbleAndDew,
  };
}

function pureFluid(data: PureFluidData, file: string): Refrigerant {
  const fluid = unfinished(data, ancillaryGuess(data), undefined);
  checkCriticalPoint(fluid, file);
  setZero(fluid);
  return withSaturationLine(fluid, lawTemperature(fluid));
}

/** Solves the dome from the file's own curves once, and keeps its expansions, which are close enough for one step from then on. */
function withSaturationLine(fluid: Refrigerant, warmest: number): Refrigerant {
  const { guess } = fluid;
  const overTemperature = new SaturationOverTemperature(fluid, warmest);
  const started = { ...fluid, overTemperature, guess: lineGuess(overTemperature, undefined, guess) };
  const lowest = equilibriumAtTemperature(started, fluid.limits.temperatureMin).bubblePressure;
  const withEnds = { ...started, triplePoint: { ...fluid.triplePoint, pressure: lowest } };
  const overPressure = new SaturationOverPressure(withEnds, overTemperature);
  return { ...withEnds, overPressure, guess: lineGuess(overTemperature, overPressure, guess) };
}

function blend(data: PseudoPureFluidData): Refrigerant {
  const { bubbleAndDew: curves, limits, critical, molarMass } = data;
  const lines = bubbleAndDewOf(curves, limits.temperatureMin);
  const rough: Guess = {
    saturationPressure: lines.bubblePressure,
    saturationTemperature: () => critical.temperature * (1 - NEAR_CRITICAL),
    liquidDensity: (temperature) => curveValue(curves.liquidMolarDensity, temperature) * molarMass,
    vapourDensity: (temperature) => curveValue(curves.vapourMolarDensity, temperature) * molarMass,
  };
  const fluid = unfinished(data, rough, lines);
  setZero(fluid);
  return withSaturationLine(fluid, critical.temperature * (1 - NEAR_CRITICAL));
}

/** Enthalpy and entropy count from the saturated liquid at 0 °C; of a blend, the liquid on its bubble line. */
function setZero(fluid: Refrigerant): void {
  const { equation } = fluid;
  // Water freezes 0.01 K above: its line is followed that far beyond the triple point for the zero alone.
  const withZero = {
    ...fluid,
    limits: { ...fluid.limits, temperatureMin: Math.min(fluid.limits.temperatureMin, ZERO_TEMPERATURE) },
  };
  const zero = equilibriumAtTemperature(withZero, ZERO_TEMPERATURE);
  equation.at(zero.bubbleTemperature, zero.liquidDensity);
  equation.enthalpyZero = ZERO_ENTHALPY - equation.enthalpy;
  equation.entropyZero = ZERO_ENTROPY - equation.entropy;
}

/** The critical point of the file must be that of its own equation: ∂p/∂ρ = 0 there, and the pressure as stated. */
function checkCriticalPoint({ equation, critical }: Refrigerant, file: string): void {
  equation.residualAt(critical.temperature, critical.density);
  if (!(Math.abs(equation.pressure / critical.pressure - 1) < 1e-9)) {
    throw new DataError(file, 'fluid.critical.pressure', 'must be the pressure of the equation at the critical point');
  }
  if (!(Math.abs(equation.stiffness) < 1e-6)) {
    throw new DataError(file, 'fluid.critical', 'must be where the equation has its critical point (∂p/∂ρ = 0)');
  }
}

/** The ideal part has no bound of its own: it must give numbers at both ends of the range. */
function checkIdealPart({ equation, limits, critical }: Refrigerant, file: string): void {
  for (const temperature of [limits.temperatureMin, limits.temperatureMax]) {
    equation.at(temperature, critical.density * THIN);
    const { enthalpy, entropy, cp } = equation;
    if (![enthalpy, entropy, cp].every(Number.isFinite)) {
      throw new DataError(
        file,
        'fluid.ideal',
        `must give finite enthalpy, entropy and heat capacity at ${temperature} K`,
      );
    }
  }
}

/** Density at the lowest temperature and the largest pressure: no state of the range is denser. */
function largestDensity({ equation, limits }: Refrigerant, liquidDensity: number, file: string): number {
  let density = liquidDensity;
  for (let step = 0; step < 100; step++) {
    equation.residualAt(limits.temperatureMin, density);
    if (!(equation.stiffness > 0)) break;
    const change = (limits.pressureMax - equation.pressure) / equation.pressureByDensity;
    density += change;
    if (Math.abs(change) < 1e-12 * density) return density;
  }
  throw new DataError(file, 'fluid.limits.pressureMax', 'must be reached by the equation at the lowest temperature');
}
