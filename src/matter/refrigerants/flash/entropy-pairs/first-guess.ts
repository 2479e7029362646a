// First guesses for states from enthalpy and entropy: a row of points along the dome and a row along one isotherm above it.
// They decide which phase is tried first and where the solver starts, never what it answers.

import { equilibriumAtPressure } from '../../dome/dome.ts';
import type { Refrigerant } from '../../types.ts';

const NODES = 160;
/** The nodes close to the critical pressure, where they stand evenly in the logarithm of the distance to it. */
const CLOSE_NODES = 40;
const CLOSE = 0.05;
const CLOSEST = 1e-5;
const ISOTHERM_NODES = 64;
/** Quality from either line. */
const DEEP = 0.05;
/** As a share of the dew temperature: from there on the isotherm serves better. */
const LARGEST_SUPERHEAT = 0.25;

/** Where a solver starts, in one phase or inside the dome. */
export type Start = { readonly kind: 'dome'; readonly pressure: number } | ({ readonly kind: 'single' } & Point);

export interface Point {
  readonly temperature: number;
  readonly density: number;
}

/** A point on the dome or on the isotherm, from which an isentrope is followed. */
interface Anchor extends Point {
  readonly enthalpy: number;
  /** w² [m²/s²]. */
  readonly stiffness: number;
  /** (∂ln T/∂ln ρ)_s. */
  readonly warming: number;
}

class IsentropeGuess {
  /** Beside its logarithm: the first one is the end of the dome to the last digit. */
  private readonly pressure = new Float64Array(NODES + 1);
  private readonly logPressure = new Float64Array(NODES + 1);
  private readonly liquidEnthalpy = new Float64Array(NODES + 1);
  private readonly liquidEntropy = new Float64Array(NODES + 1);
  private readonly vapourEnthalpy = new Float64Array(NODES + 1);
  private readonly vapourEntropy = new Float64Array(NODES + 1);
  private readonly liquidVolume = new Float64Array(NODES + 1);
  private readonly vapourVolume = new Float64Array(NODES + 1);
  private readonly vapourTemperature = new Float64Array(NODES + 1);
  private readonly vapourHeatCapacity = new Float64Array(NODES + 1);
  private readonly liquidAnchors: readonly Anchor[];
  private readonly isotherm: readonly Anchor[];
  private readonly isothermEntropy = new Float64Array(ISOTHERM_NODES);
  private readonly gasConstant: number;
  private readonly criticalDensity: number;

  constructor(fluid: Refrigerant) {
    this.gasConstant = fluid.gasConstant;
    this.criticalDensity = fluid.critical.density;
    this.liquidAnchors = this.fillDome(fluid);
    this.isotherm = this.fillIsotherm(fluid);
  }

  /** Where to look first for a state of this enthalpy [J/kg] and entropy [J/(kg K)]. */
  start(enthalpy: number, entropy: number): Start {
    const { liquidEntropy } = this;
    const isLiquid = entropy < liquidEntropy[NODES]!;
    const crossing = isLiquid ? placeIn(liquidEntropy, entropy) : NODES;
    const node = this.nodeBelow(enthalpy, entropy, crossing);
    if (node !== undefined) {
      const quality = this.quality(node, entropy);
      const nextQuality = this.quality(node + 1, entropy);
      if (Math.min(quality, nextQuality) <= 1) {
        return { kind: 'dome', pressure: Math.exp(this.logPressureBetween(node, enthalpy, entropy)) };
      }
      const superheated = this.fromDew(node, enthalpy, entropy);
      if (superheated !== undefined) return { kind: 'single', ...superheated };
    }
    const point = isLiquid ? this.fromLiquid(crossing, enthalpy, entropy) : this.fromIsotherm(enthalpy, entropy);
    return { kind: 'single', ...point };
  }

  /**
   * Pressures [Pa] between which a mixture of this entropy passes this enthalpy, for fluids where that may happen more than
   * once; each entry a low and a high one.
   */
  domeBrackets(enthalpy: number, entropy: number): readonly (readonly [number, number])[] {
    const brackets: [number, number][] = [];
    const isInside = (node: number) => this.quality(node, entropy) > -1e-3 && this.quality(node, entropy) < 1 + 1e-3;
    for (let node = 0; node < NODES - 1; node++) {
      if (!isInside(node) && !isInside(node + 1)) continue;
      const gap = this.gap(node, enthalpy, entropy);
      const next = this.gap(node + 1, enthalpy, entropy);
      if (gap <= 0 !== next <= 0) brackets.push([this.pressure[node]!, this.pressure[node + 1]!]);
      else if (node > 0 && gap <= 0) brackets.push(...this.bracketsAtTop(node, enthalpy, entropy));
    }
    return brackets;
  }

  /** A top of the enthalpy that rises above the one given between two nodes only: a parabola through three of them. */
  private bracketsAtTop(node: number, enthalpy: number, entropy: number): readonly [number, number][] {
    const [a, b, c] = [node - 1, node, node + 1].map((each) => this.gap(each, enthalpy, entropy)) as [
      number,
      number,
      number,
    ];
    if (!(b >= a && b > c)) return [];
    const [x, y, z] = [node - 1, node, node + 1].map((each) => this.logPressure[each]!) as [number, number, number];
    const left = (b - a) / (y - x);
    const right = (c - b) / (z - y);
    const bend = (right - left) / (z - x);
    const top = (x + y) / 2 - left / (2 * bend);
    const highest = b - bend * (top - y) ** 2;
    // A little early: who asks looks at the mixtures themselves.
    if (!(highest > -0.1 * (highest - Math.min(a, c)))) return [];
    const pressure = Math.exp(top);
    return [
      [this.pressure[node - 1]!, pressure],
      [pressure, this.pressure[node + 1]!],
    ];
  }

  /** Whether the point lies so far inside the dome that no state of one phase can be meant. */
  isDeepInside(enthalpy: number, entropy: number): boolean {
    const { liquidEntropy } = this;
    const crossing = entropy < liquidEntropy[NODES]! ? placeIn(liquidEntropy, entropy) : NODES;
    const node = this.nodeBelow(enthalpy, entropy, crossing);
    if (node === undefined || node >= NODES - CLOSE_NODES) return false;
    return [node, node + 1].every(
      (each) => this.quality(each, entropy) > DEEP && this.quality(each, entropy) < 1 - DEEP,
    );
  }

  /** Starts of one phase from both sides, for fluids where the row does not tell the phase; the likelier one first. */
  phaseStarts(enthalpy: number, entropy: number): readonly Point[] {
    const liquid = this.fromLiquid(placeIn(this.liquidEntropy, entropy), enthalpy, entropy);
    const start = this.start(enthalpy, entropy);
    const gas = start.kind === 'single' ? start : this.fromIsotherm(enthalpy, entropy);
    return entropy < this.liquidEntropy[NODES]! ? [liquid, gas] : [gas, liquid];
  }

  /** The last node below a place in the row where the mixture has no more than this enthalpy, if the next one has more. */
  private nodeBelow(enthalpy: number, entropy: number, crossing: number): number | undefined {
    let low = 0;
    let high = Math.min(Math.ceil(crossing), NODES);
    if (crossing < 0 || this.gap(low, enthalpy, entropy) > 0 || this.gap(high, enthalpy, entropy) <= 0)
      return undefined;
    while (high - low > 1) {
      const middle = (low + high) >> 1;
      if (this.gap(middle, enthalpy, entropy) <= 0) low = middle;
      else high = middle;
    }
    return low;
  }

  /** ln p where the enthalpy is met: cubic through both nodes, whose slopes are known, (∂h/∂p)_s = v. */
  private logPressureBetween(low: number, enthalpy: number, entropy: number): number {
    const { logPressure } = this;
    const high = low + 1;
    const lowGap = this.gap(low, enthalpy, entropy);
    const span = this.gap(high, enthalpy, entropy) - lowGap;
    const share = -lowGap / span;
    const slopeAt = (node: number) => {
      const quality = this.quality(node, entropy);
      const volume = (1 - quality) * this.liquidVolume[node]! + quality * this.vapourVolume[node]!;
      return span / (volume * Math.exp(logPressure[node]!));
    };
    const rise = logPressure[high]! - logPressure[low]!;
    const first = slopeAt(low);
    const second = slopeAt(high);
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

  private fromLiquid(crossing: number, enthalpy: number, entropy: number): Point {
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

  /** A vapour a little above the dew line at the pressure where its tie line, drawn on, meets both; undefined if far above. */
  private fromDew(node: number, enthalpy: number, entropy: number): Point | undefined {
    const superheat = (entropy - this.vapourEntropy[node]!) / this.vapourHeatCapacity[node]!;
    if (!(superheat < LARGEST_SUPERHEAT) || node >= NODES - CLOSE_NODES) return undefined;
    const warmer = Math.exp(Math.max(superheat, 0));
    const pressure = Math.exp(this.logPressureBetween(node, enthalpy, entropy));
    const thinner = pressure / Math.exp(this.logPressure[node]!) / warmer;
    return {
      temperature: this.vapourTemperature[node]! * warmer,
      density: thinner / this.vapourVolume[node]!,
    };
  }

  private fromIsotherm(enthalpy: number, entropy: number): Point {
    const { isothermEntropy, isotherm } = this;
    const place = placeIn(isothermEntropy, entropy);
    let anchor = between(isotherm, Math.max(place, 0));
    if (place >= ISOTHERM_NODES - 1) {
      const thinner = Math.exp((isothermEntropy[ISOTHERM_NODES - 1]! - entropy) / this.gasConstant);
      anchor = { ...anchor, density: anchor.density * thinner };
    }
    // A thin gas stiffens along an isentrope as it warms; a dense one comes closer to a liquid.
    const dense = Math.min(Math.max((anchor.density / this.criticalDensity - 0.4) / 1.6, 0), 1);
    return along(anchor, enthalpy - anchor.enthalpy, anchor.warming + 5.5 * dense);
  }

  private fillDome(fluid: Refrigerant): Anchor[] {
    const { equation } = fluid;
    const anchors: Anchor[] = [];
    for (let k = 0; k <= NODES; k++) {
      const pressure = nodePressure(fluid, k);
      const sides = k === NODES ? criticalSides(fluid) : equilibriumAtPressure(fluid, pressure);
      this.pressure[k] = pressure;
      this.logPressure[k] = Math.log(pressure);
      equation.at(sides.dewTemperature, sides.vapourDensity);
      this.vapourEnthalpy[k] = equation.enthalpy;
      this.vapourEntropy[k] = equation.entropy;
      this.vapourVolume[k] = 1 / sides.vapourDensity;
      this.vapourTemperature[k] = sides.dewTemperature;
      // Towards the critical point c_p grows without limit, and a small superheat is no measure any more.
      this.vapourHeatCapacity[k] = Math.min(equation.cp, 5 * equation.cv);
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

/** Evenly in ln p from the lowest pressure of the dome, then in the distance to the critical one, which is the last. */
function nodePressure({ critical, triplePoint }: Refrigerant, node: number): number {
  const far = NODES - CLOSE_NODES;
  if (node === 0) return triplePoint.pressure;
  if (node === NODES) return critical.pressure;
  if (node >= far) return critical.pressure * (1 - CLOSE * (CLOSEST / CLOSE) ** ((node - far) / (CLOSE_NODES - 1)));
  const first = Math.log(triplePoint.pressure);
  const last = Math.log((1 - CLOSE) * critical.pressure);
  return Math.exp(first + ((last - first) * node) / far);
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
function along(anchor: Anchor, rise: number, exponent: number): Point {
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
