// First guesses for states from enthalpy and entropy: a row of points along the dome and a row along one isotherm above it.
// They decide which phase is tried first and where the solver starts, never what it answers.

import { equilibriumAtPressure } from '../dome/dome.ts';
import type { Refrigerant } from '../types.ts';

const NODES = 160;
/** The last solved point of the dome, by the critical pressure; the critical point itself closes the row. */
const HIGHEST = 0.997;
const ISOTHERM_NODES = 64;

/** Where a solver starts, in one phase or inside the dome. */
export type Start =
  | { readonly kind: 'dome'; readonly pressure: number }
  | { readonly kind: 'single'; readonly temperature: number; readonly density: number };

/** A point on the dome or on the isotherm, from which an isentrope is followed. */
interface Anchor {
  readonly temperature: number;
  readonly density: number;
  readonly enthalpy: number;
  /** w² [m²/s²]. */
  readonly stiffness: number;
  /** (∂ln T/∂ln ρ)_s. */
  readonly warming: number;
}

export class IsentropeGuess {
  private readonly logPressure = new Float64Array(NODES + 1);
  private readonly liquidEnthalpy = new Float64Array(NODES + 1);
  private readonly liquidEntropy = new Float64Array(NODES + 1);
  private readonly vapourEnthalpy = new Float64Array(NODES + 1);
  private readonly vapourEntropy = new Float64Array(NODES + 1);
  private readonly liquidVolume = new Float64Array(NODES + 1);
  private readonly vapourVolume = new Float64Array(NODES + 1);
  private readonly liquidAnchors: readonly Anchor[];
  private readonly isotherm: readonly Anchor[];
  private readonly isothermEntropy = new Float64Array(ISOTHERM_NODES);
  private readonly gasConstant: number;

  constructor(fluid: Refrigerant) {
    this.gasConstant = fluid.gasConstant;
    this.liquidAnchors = this.fillDome(fluid);
    this.isotherm = this.fillIsotherm(fluid);
  }

  /** Where to look first for a state of this enthalpy [J/kg] and entropy [J/(kg K)]. */
  start(enthalpy: number, entropy: number): Start {
    const { liquidEntropy } = this;
    const isLiquid = entropy < liquidEntropy[NODES]!;
    const crossing = isLiquid ? placeIn(liquidEntropy, entropy) : NODES;
    const dome = this.domePressure(enthalpy, entropy, crossing);
    if (dome !== undefined) return { kind: 'dome', pressure: dome };
    return {
      kind: 'single',
      ...(isLiquid ? this.fromLiquid(crossing, enthalpy, entropy) : this.fromIsotherm(enthalpy, entropy)),
    };
  }

  /** Pressure of the mixture of this enthalpy and entropy; undefined where the point lies outside the dome. */
  private domePressure(enthalpy: number, entropy: number, crossing: number): number | undefined {
    let low = 0;
    let high = Math.floor(crossing);
    if (high < 0 || this.gap(low, enthalpy, entropy) > 0) return undefined;
    if (this.gap(high, enthalpy, entropy) <= 0) {
      if (high === NODES) return undefined;
      // Between the last node and where the isentrope leaves the dome: too narrow to matter where in it.
      low = high;
      high = low + 1;
      if (this.gap(high, enthalpy, entropy) <= 0) return undefined;
    }
    while (high - low > 1) {
      const middle = (low + high) >> 1;
      if (this.gap(middle, enthalpy, entropy) <= 0) low = middle;
      else high = middle;
    }
    const start = this.quality(low, entropy);
    const end = this.quality(high, entropy);
    const lowGap = this.gap(low, enthalpy, entropy);
    const highGap = this.gap(high, enthalpy, entropy);
    const share = lowGap / (lowGap - highGap);
    const quality = start + share * (end - start);
    if (!(quality >= -1e-3 && quality <= 1 + 1e-3)) return undefined;
    return Math.exp(this.logPressureBetween(low, start, end, lowGap, highGap));
  }

  /** ln p where the enthalpy is met: cubic through both nodes, whose slopes are known, (∂h/∂p)_s = v. */
  private logPressureBetween(
    low: number,
    lowQuality: number,
    highQuality: number,
    lowGap: number,
    highGap: number,
  ): number {
    const { logPressure } = this;
    const high = low + 1;
    const span = highGap - lowGap;
    const share = -lowGap / span;
    const slopeAt = (node: number, quality: number) => {
      const volume = (1 - quality) * this.liquidVolume[node]! + quality * this.vapourVolume[node]!;
      return span / (volume * Math.exp(logPressure[node]!));
    };
    const rise = logPressure[high]! - logPressure[low]!;
    const first = slopeAt(low, lowQuality);
    const second = slopeAt(high, highQuality);
    const straight = logPressure[low]! + share * rise;
    const bend = share * (1 - share) * ((first - rise) * (1 - share) - (second - rise) * share);
    const cubic = straight + bend;
    return cubic > logPressure[low]! && cubic < logPressure[high]! ? cubic : straight;
  }

  private quality(node: number, entropy: number): number {
    if (node === NODES) return 0.5;
    const liquid = this.liquidEntropy[node]!;
    return (entropy - liquid) / (this.vapourEntropy[node]! - liquid);
  }

  /** How far the mixture of this entropy at a node lies above the enthalpy [J/kg]; rises with pressure. */
  private gap(node: number, enthalpy: number, entropy: number): number {
    const liquid = this.liquidEnthalpy[node]!;
    // At the critical point both sides are one, and their slope is its temperature.
    const slope =
      node === NODES
        ? this.liquidAnchors[NODES]!.temperature
        : (this.vapourEnthalpy[node]! - liquid) / (this.vapourEntropy[node]! - this.liquidEntropy[node]!);
    return liquid + slope * (entropy - this.liquidEntropy[node]!) - enthalpy;
  }

  private fromLiquid(crossing: number, enthalpy: number, entropy: number): Pick<Anchor, 'temperature' | 'density'> {
    if (crossing < 0) {
      // Colder than any saturated liquid: compressed along the coldest isotherm, where ln ρ falls by about s/(10 R).
      const { density, temperature } = this.liquidAnchors[0]!;
      const compressed = Math.min((this.liquidEntropy[0]! - entropy) / (10 * this.gasConstant), 0.3);
      return { temperature, density: density * Math.exp(compressed) };
    }
    const anchor = between(this.liquidAnchors, crossing);
    // Liquids stiffen about as a power law with this exponent.
    return along(anchor, enthalpy - anchor.enthalpy, 7);
  }

  private fromIsotherm(enthalpy: number, entropy: number): Pick<Anchor, 'temperature' | 'density'> {
    const { isothermEntropy, isotherm } = this;
    const place = placeIn(isothermEntropy, entropy);
    let anchor = between(isotherm, Math.max(place, 0));
    if (place >= ISOTHERM_NODES - 1) {
      const thinner = Math.exp((isothermEntropy[ISOTHERM_NODES - 1]! - entropy) / this.gasConstant);
      anchor = { ...anchor, density: anchor.density * thinner };
    }
    return along(anchor, enthalpy - anchor.enthalpy, anchor.warming);
  }

  /** Nodes evenly in ln p, from the lowest pressure of the dome; the last one is the critical point. */
  private fillDome(fluid: Refrigerant): Anchor[] {
    const { equation, critical, triplePoint } = fluid;
    const anchors: Anchor[] = [];
    const first = Math.log(triplePoint.pressure);
    const last = Math.log(HIGHEST * critical.pressure);
    for (let k = 0; k <= NODES; k++) {
      const between = Math.exp(first + ((last - first) * k) / (NODES - 1));
      const pressure = k === 0 ? triplePoint.pressure : k === NODES ? critical.pressure : between;
      const sides = k === NODES ? criticalSides(fluid) : equilibriumAtPressure(fluid, pressure);
      this.logPressure[k] = Math.log(pressure);
      equation.at(sides.dewTemperature, sides.vapourDensity);
      this.vapourEnthalpy[k] = equation.enthalpy;
      this.vapourEntropy[k] = equation.entropy;
      this.vapourVolume[k] = 1 / sides.vapourDensity;
      anchors.push(anchorAt(fluid, sides.bubbleTemperature, sides.liquidDensity));
      this.liquidEnthalpy[k] = equation.enthalpy;
      this.liquidEntropy[k] = equation.entropy;
      this.liquidVolume[k] = 1 / sides.liquidDensity;
    }
    return anchors;
  }

  /** From twice the critical density down, evenly in ln ρ; thinner than the last point is an ideal gas. */
  private fillIsotherm(fluid: Refrigerant): Anchor[] {
    const { critical, limits, equation } = fluid;
    const temperature = Math.min(1.1 * critical.temperature, limits.temperatureMax);
    return Array.from({ length: ISOTHERM_NODES }, (_, k) => {
      const anchor = anchorAt(fluid, temperature, 2 * critical.density * 1e-4 ** (k / (ISOTHERM_NODES - 1)));
      this.isothermEntropy[k] = equation.entropy;
      return anchor;
    });
  }
}

function criticalSides({ critical }: Refrigerant) {
  const { temperature, density } = critical;
  return {
    bubbleTemperature: temperature,
    dewTemperature: temperature,
    liquidDensity: density,
    vapourDensity: density,
  };
}

/** Leaves the equation evaluated there. */
function anchorAt(fluid: Refrigerant, temperature: number, density: number): Anchor {
  const equation = fluid.equation.at(temperature, density);
  const { enthalpy, soundSpeed, thermalPush, cv, gasConstant } = equation;
  return {
    temperature,
    density,
    enthalpy,
    stiffness: soundSpeed * soundSpeed,
    warming: (thermalPush * gasConstant) / cv,
  };
}

/**
 * Along an isentrope from an anchor: w² grows as a power of the density, and dh = w² d ln ρ.
 *     ρ = ρ₀ (1 + m Δh/w₀²)^(1/m), T = T₀ (ρ/ρ₀)^warming
 */
function along(anchor: Anchor, rise: number, exponent: number): Pick<Anchor, 'temperature' | 'density'> {
  const { temperature, density, stiffness, warming } = anchor;
  const growth = Math.max(1 + (exponent * rise) / stiffness, 0.05);
  const ratio = growth ** (1 / exponent);
  return { temperature: temperature * ratio ** warming, density: density * ratio };
}

function between(anchors: readonly Anchor[], place: number): Anchor {
  const low = Math.min(Math.floor(place), anchors.length - 2);
  const share = Math.min(place - low, 1);
  const a = anchors[low]!;
  const b = anchors[low + 1]!;
  const mean = (key: keyof Anchor) => a[key] + share * (b[key] - a[key]);
  return {
    temperature: mean('temperature'),
    density: a.density * (b.density / a.density) ** share,
    enthalpy: mean('enthalpy'),
    stiffness: mean('stiffness'),
    warming: mean('warming'),
  };
}

/** Place of a value in a row that rises: whole numbers at its entries; −1 before the first, the last index beyond the last. */
function placeIn(row: Float64Array, value: number): number {
  let low = 0;
  let high = row.length - 1;
  if (value < row[low]!) return -1;
  if (value >= row[high]!) return high;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (row[middle]! <= value) low = middle;
    else high = middle;
  }
  return low + (value - row[low]!) / (row[high]! - row[low]!);
}

// A pure function of the fluid: keeping its result changes no answer, only the time.
const kept = new WeakMap<object, IsentropeGuess>();

export function isentropeGuess(fluid: Refrigerant): IsentropeGuess {
  let guess = kept.get(fluid.equation);
  if (guess === undefined) {
    guess = new IsentropeGuess(fluid);
    kept.set(fluid.equation, guess);
  }
  return guess;
}
