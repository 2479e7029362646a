// What a printed flow or capacity holds for besides its two saturation temperatures: how warm the gas comes in, how cold the
// liquid goes to the valve, and whether a blend's levels are dew or mid-points. From them the four temperatures of each point.

import {
  type Refrigerant,
  type Saturation,
  saturationAtBubbleTemperature,
  saturationAtDewTemperature,
  saturationAtTemperature,
  stateInLoop,
} from '../../../matter/refrigerants/index.ts';
import { findRoot, InputError, requireNonNegative, requirePositive } from '../../../numerics/index.ts';
import type { RatingConditions } from '../rating-points.ts';
import { requireSaturatedLevel } from '../saturated-level.ts';

/** Gas at the inlet of the shell: a constant superheat above dew [K], or a constant temperature [K]. */
export type GasBasis =
  | { readonly kind: 'superheat'; readonly superheat: number }
  | { readonly kind: 'returnGas'; readonly returnGas: number };

/** Liquid before the valve: a constant subcooling below bubble [K], or a constant temperature [K]. */
export type LiquidBasis =
  | { readonly kind: 'subcooling'; readonly subcooling: number }
  | { readonly kind: 'liquid'; readonly liquid: number };

/**
 * Of a blend: `dew`, the saturated vapour's temperature at both pressures; `midPoint`, condensing the mean of bubble and dew,
 * evaporating the mean of what comes out of the valve and dew. Of a pure fluid both are the same.
 */
export type SaturationBasis = 'dew' | 'midPoint';

export interface RatingBasis {
  readonly gas: GasBasis;
  /** Null where nothing depends on it: sets of flow, power and current alone. */
  readonly liquid: LiquidBasis | null;
  readonly saturation: SaturationBasis;
}

/**
 * The four temperatures of a point: dew, dew, gas, liquid [K].
 * @param fluid        what the machine ran on
 * @param basis        what the numbers hold for; without a liquid basis the liquid is saturated
 * @param evaporating  as printed [K]: dew or mid-point, as the basis says
 * @param condensing   the same [K]
 * @param path         place of the basis, for errors
 * @throws InputError 'evaporatingAboveCondensing'; 'returnGasBelowEvaporating' and 'liquidAboveCondensing' where the basis makes
 *         no sense at this point; OutOfModelError 'outsideFluid' at a level where the fluid neither boils nor condenses
 * Source: definitions; mid-points as catalogues for blends use them, from memory.
 * Worked value: R407C, mid-points 0 and 45 °C, 10 K superheat, no subcooling → dew 2.10 and 47.39 °C, gas 12.10, liquid 42.61 °C.
 */
export function ratedConditions(
  fluid: Refrigerant,
  basis: RatingBasis,
  evaporating: number,
  condensing: number,
  path = 'basis',
): RatingConditions {
  requireSaturatedLevel(fluid, `${path}.evaporating`, evaporating);
  requireSaturatedLevel(fluid, `${path}.condensing`, condensing);
  if (!(evaporating < condensing)) {
    const expected = `below the condensing temperature of ${condensing} K`;
    throw new InputError(`${path}.evaporating`, `${evaporating} K`, expected, 'evaporatingAboveCondensing');
  }
  const isMid = basis.saturation === 'midPoint' && fluid.bubbleAndDew !== undefined;
  const condensed = saturationAtDewTemperature(
    fluid,
    isMid ? dewFromMiddle(fluid, condensing, condensingMiddle) : condensing,
  );
  const liquid = liquidTemperature(basis.liquid, condensing, condensed, path);
  const dew = isMid ? evaporatingDew(fluid, evaporating, liquid) : evaporating;
  return {
    evaporating: dew,
    condensing: condensed.vapour.temperature,
    returnGas: gasTemperature(basis.gas, dew, path),
    liquid,
  };
}

/**
 * The same where nothing depends on the liquid, because no capacity is stated and the levels are dew temperatures: the stated
 * liquid where it can be, and the saturated one where the stated would be warmer than that or none is stated.
 */
export function conditionsWithoutCapacity(
  fluid: Refrigerant,
  basis: RatingBasis,
  evaporating: number,
  condensing: number,
  path = 'basis',
): RatingConditions {
  const saturated = ratedConditions(fluid, { ...basis, liquid: null }, evaporating, condensing, path);
  if (basis.liquid === null) return saturated;
  const bubble = saturated.liquid;
  const { liquid } = basis;
  if (liquid.kind === 'subcooling') {
    requireNonNegative(`${path}.subcooling`, liquid.subcooling);
    return { ...saturated, liquid: bubble - liquid.subcooling };
  }
  requirePositive(`${path}.liquid`, liquid.liquid);
  return { ...saturated, liquid: Math.min(bubble, liquid.liquid) };
}

/**
 * Evaporating and condensing temperature as numbers on this basis are printed, from dew temperatures [K]: inverse of
 * ratedConditions.
 */
export function printedLevels(
  fluid: Refrigerant,
  basis: RatingBasis,
  evaporating: number,
  condensing: number,
  path = 'basis',
): { readonly evaporating: number; readonly condensing: number } {
  if (basis.saturation === 'dew' || fluid.bubbleAndDew === undefined) return { evaporating, condensing };
  const condensed = saturationAtDewTemperature(fluid, condensing);
  const middle = condensingMiddle(condensed);
  const liquid = liquidTemperature(basis.liquid, middle, condensed, path);
  const { enthalpy } = saturationAtTemperature(fluid, liquid).liquid;
  return {
    evaporating: evaporatingMiddle(fluid, saturationAtDewTemperature(fluid, evaporating), enthalpy),
    condensing: middle,
  };
}

function gasTemperature(gas: GasBasis, evaporating: number, path: string): number {
  if (gas.kind === 'superheat') {
    requireNonNegative(`${path}.superheat`, gas.superheat);
    return evaporating + gas.superheat;
  }
  if (!(Number.isFinite(gas.returnGas) && gas.returnGas >= evaporating - roundingKelvin)) {
    const expected = `return gas at or above the evaporating temperature of ${round(evaporating)} K`;
    throw new InputError(`${path}.returnGas`, `${round(gas.returnGas)} K`, expected, 'returnGasBelowEvaporating');
  }
  // Within the rounding of what was printed the gas is saturated.
  return Math.max(gas.returnGas, evaporating);
}

/**
 * Temperature of the liquid [K]. A sheet that prints the same number for liquid and condensing says that nothing is subcooled: of
 * a blend the liquid then has its bubble temperature, which is below the dew temperature printed.
 */
function liquidTemperature(
  liquid: LiquidBasis | null,
  printedCondensing: number,
  condensed: Saturation,
  path: string,
): number {
  const bubble = condensed.liquid.temperature;
  if (liquid === null) return bubble;
  if (liquid.kind === 'subcooling') {
    requireNonNegative(`${path}.subcooling`, liquid.subcooling);
    return bubble - liquid.subcooling;
  }
  if (Math.abs(liquid.liquid - printedCondensing) <= roundingKelvin) return bubble;
  if (!(Number.isFinite(liquid.liquid) && liquid.liquid > 0 && liquid.liquid <= bubble + roundingKelvin)) {
    const expected = `liquid at most as warm as the bubble point of ${round(bubble)} K at this condensing temperature; as warm as condensing where nothing is subcooled`;
    throw new InputError(`${path}.liquid`, `${round(liquid.liquid)} K`, expected, 'liquidAboveCondensing');
  }
  return liquid.liquid;
}

/** Printed temperatures have one or two decimals [K]. */
const roundingKelvin = 0.05;

function condensingMiddle({ liquid, vapour }: Saturation): number {
  return (liquid.temperature + vapour.temperature) / 2;
}

/** Mean of what leaves the valve, from the liquid's enthalpy [J/kg], and of dew [K]. */
function evaporatingMiddle(fluid: Refrigerant, { vapour }: Saturation, liquidEnthalpy: number): number {
  const inlet = stateInLoop(fluid, { pressure: vapour.pressure, enthalpy: liquidEnthalpy });
  return (inlet.temperature + vapour.temperature) / 2;
}

/** Dew temperature [K] at the pressure where the mean of what leaves the valve and of dew is T. */
function evaporatingDew(fluid: Refrigerant, middle: number, liquidTemperature: number): number {
  const { enthalpy } = saturationAtTemperature(fluid, liquidTemperature).liquid;
  return dewFromMiddle(fluid, middle, (at) => evaporatingMiddle(fluid, at, enthalpy));
}

/** Dew temperature [K] at the pressure whose middle, as told, is T. */
function dewFromMiddle(fluid: Refrigerant, middle: number, middleAt: (at: Saturation) => number): number {
  const { liquid, vapour } = saturationAtDewTemperature(fluid, middle);
  const glide = vapour.temperature - liquid.temperature;
  const excess = (dew: number) => middleAt(saturationAtDewTemperature(fluid, dew)) - middle;
  return findRoot(excess, middle, middle + glide + 1, {
    what: 'dew temperature of a mid-point',
    absoluteTolerance: 1e-9,
  }).root;
}

/** Liquid temperature [K] whose saturated liquid has this enthalpy [J/kg]; undefined where no liquid of this fluid has it. */
export function liquidOfEnthalpy(fluid: Refrigerant, enthalpy: number): number | undefined {
  const lowest = Math.max(coldestLiquid, fluid.limits.temperatureMin, fluid.triplePoint.temperature);
  const highest = fluid.critical.temperature - belowCritical;
  const excess = (temperature: number) => saturationAtBubbleTemperature(fluid, temperature).liquid.enthalpy - enthalpy;
  if (!(excess(lowest) <= 0 && excess(highest) >= 0)) return undefined;
  return findRoot(excess, lowest, highest, { what: 'liquid temperature', absoluteTolerance: 1e-6 }).root;
}

/** Between these a liquid before a valve is looked for [K]. */
const coldestLiquid = 200;
const belowCritical = 1;

function round(kelvin: number): number {
  return Math.round(kelvin * 100) / 100;
}
