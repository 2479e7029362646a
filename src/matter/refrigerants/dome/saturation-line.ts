// Both sides of the dome as expansions over temperature and over pressure, made when a fluid is loaded, from exact solutions.
// They start the exact solvers so close that one step of Newton's is left, and tell the phase at a given pressure where it
// is not in doubt. No value of theirs leaves the engine: what is returned is solved for.
// Accuracy: 1e-9 of T, p and both densities, of h by R Tc and of s by R, from the lowest temperature to a thousandth below
// the critical one, where tests hold every fluid to it; from there on less, as the solutions themselves have fewer digits.
// As an evaluation of the equation, `at` leaves its result in the fields until the next one.

import { findRoot } from '../../../numerics/index.ts';
import type { Refrigerant } from '../types.ts';
import { equilibriumAtPressure, equilibriumAtTemperature } from './dome.ts';
import { Expansion } from './expansion.ts';

/** How small the last coefficients are to be, on the scales named above; closer to the critical point it grows as rounding does. */
const TOLERANCE = 3e-11;
const CLOSE = 0.03;
/** So far beyond its ends a line is still asked: what lies there is rounding. */
const ROUNDING = 1e-9;

/** Over y = √(Tc/T − 1), in which the densities of both sides have no root and ln p is nearly a parabola. */
export class SaturationOverTemperature {
  readonly coldest: number;
  readonly warmest: number;
  private readonly scales: Scales;
  /** ln p′/pc, ln p″/pc, ρ′/ρc and the compressibility factor p″/(ρ″ R T). */
  private readonly expansion: Expansion;
  private temperature = Number.NaN;

  /**
   * @param fluid    the fluid, whose dome can be solved
   * @param warmest  where the line ends [K], below the critical temperature
   */
  constructor(fluid: Refrigerant, warmest: number) {
    const { critical, limits, gasConstant } = fluid;
    this.scales = scalesOf(fluid);
    this.coldest = limits.temperatureMin;
    this.warmest = warmest;
    const low = Math.sqrt(critical.temperature / warmest - 1);
    const high = Math.sqrt(critical.temperature / limits.temperatureMin - 1);
    this.expansion = new Expansion(4, low, high, toleranceAt, (y, values) => {
      const temperature = critical.temperature / (1 + y * y);
      const solved = equilibriumAtTemperature(fluid, temperature);
      values[0] = Math.log(solved.bubblePressure / critical.pressure);
      values[1] = Math.log(solved.dewPressure / critical.pressure);
      values[2] = solved.liquidDensity / critical.density;
      values[3] = solved.dewPressure / (solved.vapourDensity * gasConstant * temperature);
    });
  }

  holds(temperature: number): boolean {
    return temperature <= this.warmest && temperature >= this.coldest * (1 - ROUNDING);
  }

  at(temperature: number): this {
    this.temperature = temperature;
    this.expansion.fill(Math.sqrt(this.scales.temperature / temperature - 1));
    return this;
  }
  /** [Pa] */
  get bubblePressure(): number {
    return this.scales.pressure * Math.exp(this.expansion.values[0]!);
  }
  /** [Pa] */
  get dewPressure(): number {
    return this.scales.pressure * Math.exp(this.expansion.values[1]!);
  }
  /** [kg/m³] */
  get liquidDensity(): number {
    return this.scales.density * this.expansion.values[2]!;
  }
  /** [kg/m³] */
  get vapourDensity(): number {
    return this.dewPressure / (this.expansion.values[3]! * this.scales.gasConstant * this.temperature);
  }

  /** Temperature on the bubble line at a pressure between its ends: Brent's method in √ln(pc/p), which is nearly straight over y. */
  temperatureAt(pressure: number): number {
    const { expansion, scales } = this;
    const wanted = Math.sqrt(Math.log(scales.pressure / pressure));
    const gapAt = (y: number) => Math.sqrt(-expansion.fill(y)[0]!) - wanted;
    const near = Math.sqrt(scales.temperature / this.warmest - 1);
    const far = Math.sqrt(scales.temperature / this.coldest - 1);
    const y = findRoot(gapAt, near, far, { residualTolerance: ROUNDING, what: 'temperature on the bubble line' }).root;
    return scales.temperature / (1 + y * y);
  }
}

/** Over z = √ln(pc/p), which is to y as pressure to temperature. */
export class SaturationOverPressure {
  readonly lowest: number;
  readonly highest: number;
  private readonly scales: Scales;
  /** T′/Tc, T″/Tc, ρ′/ρc, p/(ρ″ R T″), h′/(R Tc), h″/(R Tc), s′/R, s″/R. */
  private readonly expansion: Expansion;
  private pressure = Number.NaN;

  /**
   * @param fluid            the fluid, whose dome can be solved and whose zero of h and s is set
   * @param overTemperature  its line over temperature
   */
  constructor(fluid: Refrigerant, overTemperature: SaturationOverTemperature) {
    const { critical, equation, gasConstant } = fluid;
    this.scales = scalesOf(fluid);
    const { coldest, warmest } = overTemperature;
    this.lowest = equilibriumAtTemperature(fluid, coldest).bubblePressure;
    this.highest = equilibriumAtTemperature(fluid, warmest).bubblePressure;
    const low = Math.sqrt(Math.log(critical.pressure / this.highest));
    const high = Math.sqrt(Math.log(critical.pressure / this.lowest));
    const energy = gasConstant * critical.temperature;
    this.expansion = new Expansion(8, low, high, toleranceAt, (z, values) => {
      const pressure = critical.pressure * Math.exp(-z * z);
      const solved = equilibriumAtPressure(fluid, pressure);
      values[0] = solved.bubbleTemperature / critical.temperature;
      values[1] = solved.dewTemperature / critical.temperature;
      values[2] = solved.liquidDensity / critical.density;
      values[3] = pressure / (solved.vapourDensity * gasConstant * solved.dewTemperature);
      equation.at(solved.bubbleTemperature, solved.liquidDensity);
      values[4] = equation.enthalpy / energy;
      values[6] = equation.entropy / gasConstant;
      equation.at(solved.dewTemperature, solved.vapourDensity);
      values[5] = equation.enthalpy / energy;
      values[7] = equation.entropy / gasConstant;
    });
  }

  holds(pressure: number): boolean {
    return pressure <= this.highest && pressure >= this.lowest * (1 - ROUNDING);
  }

  at(pressure: number): this {
    this.pressure = pressure;
    this.expansion.fill(Math.sqrt(Math.log(this.scales.pressure / pressure)));
    return this;
  }
  /** [K] */
  get bubbleTemperature(): number {
    return this.scales.temperature * this.expansion.values[0]!;
  }
  /** [K] */
  get dewTemperature(): number {
    return this.scales.temperature * this.expansion.values[1]!;
  }
  /** [kg/m³] */
  get liquidDensity(): number {
    return this.scales.density * this.expansion.values[2]!;
  }
  /** [kg/m³] */
  get vapourDensity(): number {
    return this.pressure / (this.expansion.values[3]! * this.scales.gasConstant * this.dewTemperature);
  }
  /** [J/kg] */
  get liquidEnthalpy(): number {
    return this.scales.energy * this.expansion.values[4]!;
  }
  /** [J/kg] */
  get vapourEnthalpy(): number {
    return this.scales.energy * this.expansion.values[5]!;
  }
  /** [J/(kg K)] */
  get liquidEntropy(): number {
    return this.scales.gasConstant * this.expansion.values[6]!;
  }
  /** [J/(kg K)] */
  get vapourEntropy(): number {
    return this.scales.gasConstant * this.expansion.values[7]!;
  }
}

function toleranceAt(place: number): number {
  return TOLERANCE * Math.max(1, CLOSE / place) ** 2;
}

interface Scales {
  readonly temperature: number;
  readonly pressure: number;
  readonly density: number;
  readonly gasConstant: number;
  readonly energy: number;
}

function scalesOf({ critical, gasConstant }: Refrigerant): Scales {
  return { ...critical, gasConstant, energy: gasConstant * critical.temperature };
}
