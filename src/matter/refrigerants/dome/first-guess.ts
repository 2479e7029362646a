// First guesses for the phase equilibrium. The ancillary curves of the coefficient file are good to about a per cent; at
// loading time the equilibrium is solved from them on a row of temperatures, and a cubic through those solutions gives the
// guesses from then on. Every value that leaves the engine is solved for from such a guess, never taken from it.

import type { PureFluidData } from '../equation/fluid-data.ts';
import type { Equilibrium } from './equilibrium.ts';
import { curveValue } from './saturation-curve.ts';

/** Guesses of saturation pressure [Pa] and densities [kg/m³] at T [K], and of the temperature at p. */
export interface Guess {
  saturationPressure(temperature: number): number;
  saturationTemperature(pressure: number): number;
  liquidDensity(temperature: number): number;
  vapourDensity(temperature: number): number;
  /** Temperature at which the saturated liquid has this enthalpy or entropy; undefined beyond the table. */
  liquidTemperature(kind: 'enthalpy' | 'entropy', value: number): number | undefined;
}

/** One solved equilibrium with what the liquid holds. */
export interface GuessNode extends Equilibrium {
  readonly liquidEnthalpy: number;
  readonly liquidEntropy: number;
}

/** Guesses from the ancillary curves alone. */
export function ancillaryGuess(data: PureFluidData): Guess {
  const { pressure, liquidMolarDensity, vapourMolarDensity, nearCritical } = data.firstGuess;
  const { critical, limits, molarMass } = data;

  /** |ρ − ρc| close to the critical point [mol/m³]; undefined where the far curves serve. */
  function nearCriticalDistance(coefficients: readonly number[], temperature: number): number | undefined {
    const distance = 1 - temperature / critical.temperature;
    if (distance > nearCritical.distanceMax) return undefined;
    const logDistance = Math.log(Math.max(distance, 1e-12));
    let sum = 0;
    for (let k = coefficients.length - 1; k >= 0; k--) sum = sum * logDistance + coefficients[k]!;
    return Math.exp(sum);
  }

  return {
    saturationPressure: (temperature) => curveValue(pressure, temperature),
    saturationTemperature(target) {
      // The logarithm of pressure is nearly linear in 1/T: a few steps of bisection are close enough.
      let cold = 1 / limits.temperatureMin;
      let warm = 1 / critical.temperature;
      for (let step = 0; step < 24; step++) {
        const middle = (cold + warm) / 2;
        if (curveValue(pressure, 1 / middle) < target) cold = middle;
        else warm = middle;
      }
      return 2 / (cold + warm);
    },
    liquidDensity(temperature) {
      const near = nearCriticalDistance(nearCritical.liquid, temperature);
      if (near !== undefined) return (critical.molarDensity + near) * molarMass;
      return curveValue(liquidMolarDensity, temperature) * molarMass;
    },
    vapourDensity(temperature) {
      const near = nearCriticalDistance(nearCritical.vapour, temperature);
      if (near !== undefined) return (critical.molarDensity - near) * molarMass;
      return curveValue(vapourMolarDensity, temperature) * molarMass;
    },
    liquidTemperature: () => undefined,
  };
}

const INTERVALS = 200;

/**
 * Guesses by cubic interpolation between solved equilibria; beyond the warmest node, near the critical point, from the
 * ancillary curves.
 * @param coldest  the lowest temperature [K]
 * @param warmest  the highest temperature of the table [K], below the critical one
 * @param solve    the equilibrium at a temperature
 * @param rough    what serves beyond the table
 */
export function tabulatedGuess(
  coldest: number,
  warmest: number,
  solve: (temperature: number) => GuessNode,
  rough: Guess,
): Guess {
  const start = 1 / coldest;
  const width = (1 / warmest - start) / INTERVALS;
  const nodes = Array.from({ length: INTERVALS + 1 }, (_, k) =>
    solve(k === 0 ? coldest : k === INTERVALS ? warmest : 1 / (start + k * width)),
  );
  const logPressure = new CubicRow(nodes.map((node) => Math.log(node.bubblePressure)));
  const logVapour = new CubicRow(nodes.map((node) => Math.log(node.vapourDensity)));
  const liquid = new CubicRow(nodes.map((node) => node.liquidDensity));
  const caloric = {
    enthalpy: new CubicRow(nodes.map((node) => node.liquidEnthalpy)),
    entropy: new CubicRow(nodes.map((node) => node.liquidEntropy)),
  };
  const place = (temperature: number): number => (1 / temperature - start) / width;
  const highest = nodes[INTERVALS]!.bubblePressure;
  return {
    saturationPressure: (temperature) =>
      temperature > warmest ? rough.saturationPressure(temperature) : Math.exp(logPressure.at(place(temperature))),
    saturationTemperature(pressure) {
      if (pressure > highest) return rough.saturationTemperature(pressure);
      return 1 / (start + width * logPressure.inverse(Math.log(pressure)));
    },
    liquidDensity: (temperature) =>
      temperature > warmest ? rough.liquidDensity(temperature) : liquid.at(place(temperature)),
    vapourDensity: (temperature) =>
      temperature > warmest ? rough.vapourDensity(temperature) : Math.exp(logVapour.at(place(temperature))),
    liquidTemperature(kind, value) {
      const row = caloric[kind];
      return row.holds(value) ? 1 / (start + width * row.inverse(value)) : undefined;
    },
  };
}

/** Values at whole places 0, 1, 2 …, and between them the cubic through the four nearest. */
class CubicRow {
  private readonly values: Float64Array;
  constructor(values: readonly number[]) {
    this.values = Float64Array.from(values);
  }

  at(place: number): number {
    const { values } = this;
    const first = Math.min(Math.max(Math.floor(place) - 1, 0), values.length - 4);
    const x = place - first;
    const a = values[first]!;
    const b = values[first + 1]!;
    const c = values[first + 2]!;
    const d = values[first + 3]!;
    const u = x - 1;
    const v = x - 2;
    const w = x - 3;
    return (x * (u * (v * d - 3 * w * c) + 3 * v * w * b) - u * v * w * a) / 6;
  }

  /** Whether a value lies between the first and the last. */
  holds(value: number): boolean {
    return value >= this.values[0]! && value <= this.values.at(-1)!;
  }

  /** Place of a value; the row must rise. */
  inverse(value: number): number {
    const { values } = this;
    let low = 0;
    let high = values.length - 1;
    while (high - low > 1) {
      const middle = (low + high) >> 1;
      if (values[middle]! <= value) low = middle;
      else high = middle;
    }
    // Secant steps on the cubic: the row is close to a straight line between two nodes.
    const slope = values[high]! - values[low]!;
    let place = low + (value - values[low]!) / slope;
    for (let step = 0; step < 3; step++) place += (value - this.at(place)) / slope;
    return place;
  }
}
