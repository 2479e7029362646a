// Lines of the p-h and T-s diagrams of one refrigerant as pure data: dome, isotherms or isobars, isentropes, lines of
// constant quality, each a labelled polyline in base SI. What is drawn, where and how is the caller's affair.
// Lines end where the equation of state ends; they are not clipped to the region.

import {
  type LoopPair,
  type ReferenceStateName,
  type Refrigerant,
  referenceOffset,
  type Saturation,
  type State,
  saturationAtDewTemperature,
  saturationAtPressure,
  saturationAtTemperature,
  stateInLoop,
} from '../matter/refrigerants/index.ts';
import { InputError, KettlefinError, requirePositive } from '../numerics/index.ts';
import type { DiagramState } from './cycle-path.ts';

/** 'pressureEnthalpy': x is h [J/kg], y is p [Pa], usually on a log axis. 'temperatureEntropy': x is s [J/(kg K)], y is T [K]. */
export type DiagramKind = 'pressureEnthalpy' | 'temperatureEntropy';

export type LineKind = 'bubble' | 'dew' | 'isotherm' | 'isentrope' | 'isobar' | 'quality';

/** A polyline; `value` is what is constant along it [K, J/(kg K), Pa, 1]. */
export interface DiagramLine {
  readonly kind: LineKind;
  readonly value: number;
  readonly x: readonly number[];
  readonly y: readonly number[];
}

/** Part of the plane to cover, and, where the usual round values do not suit, the values of the line families. */
export interface DiagramRegion {
  readonly temperatureLow: number;
  readonly temperatureHigh: number;
  readonly pressureLow: number;
  readonly pressureHigh: number;
  /** Temperatures of isotherms [K], for instance round ones of another scale. */
  readonly isotherms?: readonly number[];
  /** Pressures of isobars [Pa]. */
  readonly isobars?: readonly number[];
}

export interface PropertyDiagram {
  readonly kind: DiagramKind;
  readonly refrigerant: string;
  readonly referenceState: ReferenceStateName;
  readonly lines: readonly DiagramLine[];
  readonly criticalPoint: { readonly x: number; readonly y: number };
}

const domePoints = 48;
const qualities = [0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9];
/** Vertices of a line in the vapour or above the critical point, and in the liquid, where lines are nearly straight. */
const vapourPoints = 18;
const supercriticalPoints = 40;
const liquidPoints = 6;
const isentropePoints = 32;
/** The dome reaches this far below the region [K], so that it does not end inside a picture shared with another fluid. */
const belowRegion = 25;
/** Vertices of an isotherm through a blend's dome, where its pressure falls from the bubble to the dew line. */
const glidePoints = 12;
/** The dome is drawn from saturation pairs up to this share of the critical temperature, then to the critical point. */
const lastSaturation = 0.9999;

/**
 * Lines of a property diagram.
 * @param fluid           the refrigerant
 * @param kind            which pair of axes
 * @param region          temperatures [K] and pressures [Pa] to cover, low below high; cut to the equation's limits
 * @param referenceState  zero of h and s; 'iir' where absent
 * @returns               the lines; a line of which fewer than two vertices exist is left out
 * @throws InputError naming the bound of the region that cannot be used.
 */
export function propertyDiagram(
  fluid: Refrigerant,
  kind: DiagramKind,
  region: DiagramRegion,
  referenceState: ReferenceStateName = 'iir',
): PropertyDiagram {
  const cut = cutRegion(fluid, region);
  const saturations = domeSaturations(fluid, Math.max(cut.temperatureLow - belowRegion, lowestSaturation(fluid)));
  const { temperature, density, pressure } = fluid.critical;
  // Of a blend the equation's own pressure there is a little beside the point where its lines meet.
  const critical = { ...stateInLoop(fluid, { density, temperature }), pressure };
  const plane = planeOf(kind, referenceOffset(fluid, referenceState));
  const lines: DiagramLine[] = [...domeLines(plane, saturations, critical)];
  for (const quality of qualities) lines.push(qualityLine(plane, saturations, critical, quality));
  if (kind === 'pressureEnthalpy') {
    const isotherms = region.isotherms ?? roundTemperatures(cut.temperatureLow, cut.temperatureHigh);
    const described = isotherms.filter(
      (value) => value >= lowestSaturation(fluid) && value <= fluid.limits.temperatureMax,
    );
    for (const temperature of described) lines.push(isotherm(fluid, plane, cut, temperature));
    for (const entropy of roundEntropies(fluid, cut)) lines.push(isentrope(fluid, plane, cut, entropy));
  } else {
    const isobars = region.isobars ?? roundPressures(cut.pressureLow, cut.pressureHigh);
    for (const pressure of isobars) lines.push(isobar(fluid, plane, cut, pressure));
  }
  return {
    kind,
    refrigerant: fluid.name,
    referenceState,
    lines: lines.filter((line) => line.x.length > 1),
    criticalPoint: { x: plane.x(critical), y: plane.y(critical) },
  };
}

/**
 * A region that shows a cycle with the dome around it: from 20 K below its coldest to 20 K above its hottest state or the
 * critical temperature, and from half its lowest pressure to twice its highest or 1.3 times the critical pressure.
 */
export function diagramRegion(fluid: Refrigerant, states: readonly DiagramState[]): DiagramRegion {
  if (states.length === 0) throw new InputError('states', 'none', 'at least one state');
  const temperatures = states.map((state) => state.temperature);
  const pressures = states.map((state) => state.pressure);
  const { critical, limits } = fluid;
  return {
    temperatureLow: Math.max(limits.temperatureMin, Math.min(...temperatures) - 20),
    temperatureHigh: Math.min(limits.temperatureMax, Math.max(critical.temperature, ...temperatures) + 20),
    pressureLow: Math.min(...pressures) / 2,
    pressureHigh: Math.min(limits.pressureMax, Math.max(1.3 * critical.pressure, 2 * Math.max(...pressures))),
  };
}

/** How a state becomes a point of the diagram. */
interface Plane {
  readonly x: (state: DiagramState) => number;
  readonly y: (state: DiagramState) => number;
}

function planeOf(kind: DiagramKind, offset: { enthalpy: number; entropy: number }): Plane {
  return kind === 'pressureEnthalpy'
    ? { x: (state) => state.enthalpy + offset.enthalpy, y: (state) => state.pressure }
    : { x: (state) => state.entropy + offset.entropy, y: (state) => state.temperature };
}

function cutRegion(fluid: Refrigerant, region: DiagramRegion): DiagramRegion {
  const { limits, critical } = fluid;
  const bounds = ['temperatureLow', 'temperatureHigh', 'pressureLow', 'pressureHigh'] as const;
  for (const bound of bounds) requirePositive(bound, region[bound]);
  const temperatureLow = Math.max(region.temperatureLow, lowestSaturation(fluid));
  const temperatureHigh = Math.min(region.temperatureHigh, limits.temperatureMax);
  const pressureHigh = Math.min(region.pressureHigh, limits.pressureMax);
  if (!(temperatureLow < critical.temperature)) {
    const expected = `below the critical temperature, ${critical.temperature} K`;
    throw new InputError('temperatureLow', region.temperatureLow, expected);
  }
  if (!(temperatureHigh > temperatureLow)) {
    throw new InputError('temperatureHigh', region.temperatureHigh, `above ${temperatureLow} K`);
  }
  if (!(pressureHigh > region.pressureLow)) {
    throw new InputError('pressureHigh', region.pressureHigh, `above ${region.pressureLow} Pa`);
  }
  return { temperatureLow, temperatureHigh, pressureLow: region.pressureLow, pressureHigh };
}

/** The coldest dew temperature at which the equation describes both sides of the dome [K]. */
function lowestSaturation(fluid: Refrigerant): number {
  const { limits, triplePoint } = fluid;
  const lowest = Math.max(limits.temperatureMin, triplePoint.temperature);
  // A blend's dew line begins at a lower pressure than its bubble line.
  if (fluid.bubbleAndDew === undefined) return lowest;
  return Math.max(lowest, saturationAtPressure(fluid, triplePoint.pressure).vapour.temperature);
}

/** Both sides of the dome at one pressure, from the low end to just under the critical point, closer together the nearer to it. */
function domeSaturations(fluid: Refrigerant, temperatureLow: number): Saturation[] {
  const top = Math.max(lastSaturation * fluid.critical.temperature, temperatureLow);
  const span = fluid.critical.temperature - temperatureLow;
  const least = (fluid.critical.temperature - top) / span;
  return Array.from({ length: domePoints }, (_, index) => {
    const left = 1 - index / (domePoints - 1);
    const share = least + (1 - least) * left ** 2.5;
    return saturationAtDewTemperature(fluid, fluid.critical.temperature - share * span);
  });
}

function polyline(plane: Plane, kind: LineKind, value: number, states: readonly DiagramState[]): DiagramLine {
  return { kind, value, x: states.map(plane.x), y: states.map(plane.y) };
}

function domeLines(plane: Plane, saturations: readonly Saturation[], critical: DiagramState): DiagramLine[] {
  const bubble = saturations.map((pair) => pair.liquid);
  const dew = saturations.map((pair) => pair.vapour);
  return [polyline(plane, 'bubble', 0, [...bubble, critical]), polyline(plane, 'dew', 1, [...dew, critical])];
}

/** h, s and T are linear in quality at constant pressure; so no flash is needed. */
function qualityLine(
  plane: Plane,
  saturations: readonly Saturation[],
  critical: DiagramState,
  quality: number,
): DiagramLine {
  const mixed = saturations.map(({ liquid, vapour }) => ({
    temperature: liquid.temperature + quality * (vapour.temperature - liquid.temperature),
    pressure: liquid.pressure,
    enthalpy: liquid.enthalpy + quality * (vapour.enthalpy - liquid.enthalpy),
    entropy: liquid.entropy + quality * (vapour.entropy - liquid.entropy),
  }));
  return polyline(plane, 'quality', quality, [...mixed, critical]);
}

/** From the high pressure down; through the dome where it is crossed. */
function isotherm(fluid: Refrigerant, plane: Plane, cut: DiagramRegion, temperature: number): DiagramLine {
  const at = (pressure: number) => ({ temperature, pressure });
  const { pressureLow, pressureHigh } = cut;
  if (temperature >= lastSaturation * fluid.critical.temperature) {
    const inputs = spacedByRatio(pressureHigh, pressureLow, supercriticalPoints).map(at);
    return polyline(plane, 'isotherm', temperature, existing(fluid, inputs));
  }
  const pair = saturationAtTemperature(fluid, temperature);
  const states: DiagramState[] = [];
  if (pair.liquid.pressure < pressureHigh) {
    const inputs = spacedByRatio(pressureHigh, pair.liquid.pressure, liquidPoints).slice(0, -1).map(at);
    states.push(...existing(fluid, inputs));
  }
  states.push(pair.liquid, ...throughGlide(fluid, pair), pair.vapour);
  if (pair.vapour.pressure > pressureLow) {
    const inputs = spacedByRatio(pair.vapour.pressure, pressureLow, vapourPoints).slice(1).map(at);
    states.push(...existing(fluid, inputs));
  }
  return polyline(plane, 'isotherm', temperature, states);
}

/** Inside a blend's dome an isotherm falls in pressure; that of a single substance is straight. */
function throughGlide(fluid: Refrigerant, { liquid, vapour }: Saturation): State[] {
  const { temperature } = liquid;
  if (liquid.pressure === vapour.pressure) return [];
  const pressures = spacedByRatio(liquid.pressure, vapour.pressure, glidePoints).slice(1, -1);
  return existing(
    fluid,
    pressures.map((pressure) => ({ temperature, pressure })),
  );
}

/** From the low temperature up; through the dome where it is crossed. */
function isobar(fluid: Refrigerant, plane: Plane, cut: DiagramRegion, pressure: number): DiagramLine {
  const at = (temperature: number) => ({ temperature, pressure });
  const { temperatureLow, temperatureHigh } = cut;
  // Within 0.1 % of the critical pressure the plateau of the isobar is too short to be seen; under the triple point's there
  // is none.
  const isBeside = pressure >= 0.999 * fluid.critical.pressure || pressure < fluid.triplePoint.pressure;
  const pair = isBeside ? undefined : saturationAtPressure(fluid, pressure);
  if (pair === undefined || pair.vapour.temperature <= temperatureLow) {
    const inputs = spacedEvenly(temperatureLow, temperatureHigh, supercriticalPoints).map(at);
    return polyline(plane, 'isobar', pressure, existing(fluid, inputs));
  }
  const states: DiagramState[] = [];
  if (temperatureLow < pair.liquid.temperature) {
    const liquid = spacedEvenly(temperatureLow, pair.liquid.temperature, vapourPoints).slice(0, -1).map(at);
    states.push(...existing(fluid, liquid));
  }
  states.push(pair.liquid, pair.vapour);
  if (temperatureHigh > pair.vapour.temperature) {
    const vapour = spacedEvenly(pair.vapour.temperature, temperatureHigh, vapourPoints).slice(1).map(at);
    states.push(...existing(fluid, vapour));
  }
  return polyline(plane, 'isobar', pressure, states);
}

/** From the low pressure up, until it leaves the equation's limits or the region's temperatures. */
function isentrope(fluid: Refrigerant, plane: Plane, cut: DiagramRegion, entropy: number): DiagramLine {
  const pressures = spacedByRatio(cut.pressureLow, cut.pressureHigh, isentropePoints);
  const states = existing(
    fluid,
    pressures.map((pressure) => ({ pressure, entropy })),
  );
  const inside = states.filter(
    ({ temperature }) => temperature >= cut.temperatureLow && temperature <= cut.temperatureHigh + 40,
  );
  return polyline(plane, 'isentrope', entropy, inside);
}

/** The states that the equation describes; others are left out of the line. */
function existing(fluid: Refrigerant, inputs: readonly LoopPair[]): State[] {
  const states: State[] = [];
  for (const input of inputs) {
    try {
      states.push(stateInLoop(fluid, input));
    } catch (error) {
      if (!(error instanceof KettlefinError)) throw error;
    }
  }
  return states;
}

/** Every 10 or 20 °C, so that at most about a dozen lines appear. */
function roundTemperatures(low: number, high: number): number[] {
  const step = high - low > 150 ? 20 : 10;
  return multiples(low - 273.15, high - 273.15, step).map((celsius) => celsius + 273.15);
}

/** The series 1, 2, 5, 10 …; a closer one where that would give fewer than five. */
function roundPressures(low: number, high: number): number[] {
  const usual = pressuresOfSeries([1, 2, 5], low, high);
  return usual.length < 5 ? pressuresOfSeries([1, 1.5, 2, 3, 5, 7], low, high) : usual;
}

function pressuresOfSeries(factors: readonly number[], low: number, high: number): number[] {
  const pressures: number[] = [];
  for (let decade = 10 ** Math.floor(Math.log10(low)); decade <= high; decade *= 10) {
    for (const factor of factors) {
      if (factor * decade >= low && factor * decade <= high) pressures.push(factor * decade);
    }
  }
  return pressures;
}

/** Round entropies from the coldest liquid to the hottest thin vapour of the region. */
function roundEntropies(fluid: Refrigerant, cut: DiagramRegion): number[] {
  const { liquid } = saturationAtDewTemperature(fluid, cut.temperatureLow);
  const corner = existing(fluid, [{ temperature: cut.temperatureHigh, pressure: cut.pressureLow }])[0];
  const high = corner?.entropy ?? saturationAtDewTemperature(fluid, cut.temperatureLow).vapour.entropy;
  const step = [50, 100, 200, 500].find((size) => (high - liquid.entropy) / size <= 14) ?? 1000;
  return multiples(liquid.entropy, high, step);
}

function multiples(low: number, high: number, step: number): number[] {
  const values: number[] = [];
  for (let index = Math.ceil(low / step); index * step <= high; index++) values.push(index * step);
  return values;
}

function spacedEvenly(from: number, to: number, count: number): number[] {
  return Array.from({ length: count }, (_, index) => from + ((to - from) * index) / (count - 1));
}

function spacedByRatio(from: number, to: number, count: number): number[] {
  return Array.from({ length: count }, (_, index) => from * (to / from) ** (index / (count - 1)));
}
