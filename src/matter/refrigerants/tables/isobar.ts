// Walks along an isobar from a known state and finds, at each enthalpy asked for, temperature and density with every
// derivative a table needs. Newton's method on both together, started from the slopes of the two points before, takes about
// two evaluations of the equation a point; all derivatives are those of the equation, none is a difference.

import { ConvergenceError } from '../../../numerics/index.ts';
import type { HelmholtzEquation } from '../equation/equation.ts';

const STEPS = 30;
const LARGEST_STEP = 0.2;
/** After a step this small the next one would be below rounding, and the derivatives before it are good enough. */
const LAST_STEP = 1e-6;

export class Isobar {
  temperature = 0;
  density = 0;
  entropy = 0;
  /** c_p, c_v [J/(kg K)], w [m/s]. */
  cp = 0;
  cv = 0;
  soundSpeed = 0;
  /** (∂T/∂h)_p, (∂ρ/∂h)_p and (∂T/∂p)_h, (∂ρ/∂p)_h. */
  temperatureByEnthalpy = 0;
  densityByEnthalpy = 0;
  temperatureByPressure = 0;
  densityByPressure = 0;
  private readonly equation: HelmholtzEquation;
  private pressure = 0;
  private enthalpy = 0;
  private slopes = { before: 0, temperature: 0, density: 0 };

  constructor(equation: HelmholtzEquation) {
    this.equation = equation;
  }

  /** Begins at a known state. */
  start(pressure: number, enthalpy: number, temperature: number, density: number): void {
    this.pressure = pressure;
    this.temperature = temperature;
    this.density = density;
    this.enthalpy = enthalpy;
    this.slopes.before = 0;
    this.solve(enthalpy);
  }

  /** Goes on to an enthalpy [J/kg]. @throws ConvergenceError if Newton's method does not arrive on a stable state */
  go(enthalpy: number): void {
    const { slopes } = this;
    const width = enthalpy - this.enthalpy;
    // Two-step rule of Adams and Bashforth; the slope of ln ρ changes less than that of ρ.
    const bend = slopes.before === 0 ? 0 : width / (2 * slopes.before);
    const temperatureSlope = this.temperatureByEnthalpy;
    const densitySlope = this.densityByEnthalpy / this.density;
    const temperature = temperatureSlope + (slopes.before === 0 ? 0 : bend * (temperatureSlope - slopes.temperature));
    const density = densitySlope + (slopes.before === 0 ? 0 : bend * (densitySlope - slopes.density));
    slopes.before = width;
    slopes.temperature = temperatureSlope;
    slopes.density = densitySlope;
    this.temperature += width * temperature;
    this.density *= Math.exp(width * density);
    this.enthalpy = enthalpy;
    this.solve(enthalpy);
  }

  private solve(enthalpy: number): void {
    const { equation, pressure } = this;
    for (let step = 0; step < STEPS; step++) {
      const { temperature, density } = this;
      equation.at(temperature, density);
      const pressureByDensity = equation.pressureByDensity;
      const pressureByTemperature = equation.pressureByTemperature;
      const enthalpyByDensity = equation.enthalpyByDensity;
      const enthalpyByTemperature = equation.enthalpyByTemperature;
      const pressureGap = pressure - equation.pressure;
      const enthalpyGap = enthalpy - equation.enthalpy;
      const determinant = pressureByDensity * enthalpyByTemperature - pressureByTemperature * enthalpyByDensity;
      const densityStep = (enthalpyByTemperature * pressureGap - pressureByTemperature * enthalpyGap) / determinant;
      const temperatureStep = (pressureByDensity * enthalpyGap - enthalpyByDensity * pressureGap) / determinant;
      const size = Math.max(Math.abs(densityStep / density), Math.abs(temperatureStep / temperature));
      if (!(pressureByDensity > 0) || !Number.isFinite(size)) break;
      const share = size > LARGEST_STEP ? LARGEST_STEP / size : 1;
      this.temperature += share * temperatureStep;
      this.density += share * densityStep;
      if (size < LAST_STEP) {
        // To first order, as exact as the step is small.
        this.entropy =
          equation.entropy + equation.entropyByDensity * densityStep + (equation.cv / temperature) * temperatureStep;
        this.temperatureByEnthalpy = pressureByDensity / determinant;
        this.densityByEnthalpy = -pressureByTemperature / determinant;
        this.temperatureByPressure = -enthalpyByDensity / determinant;
        this.densityByPressure = enthalpyByTemperature / determinant;
        this.cp = determinant / pressureByDensity;
        this.cv = equation.cv;
        this.soundSpeed = equation.soundSpeed;
        return;
      }
    }
    throw new ConvergenceError('a node of the table', STEPS, [this.temperature, this.density], Number.NaN, [
      pressure,
      enthalpy,
    ]);
  }
}
