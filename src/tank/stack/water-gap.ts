// A layer of standing water behind a decorative background or between two panes: it conducts, and convects where its faces
// differ enough. Upright: the correlation of the VDI Heat Atlas for tall cavities; lying and heated from below: Hollands 1984;
// lying and heated from above: conduction alone. Left out: flow through holes in the background, which carries more heat.

import {
  waterConductivity,
  waterDensity,
  waterExpansion,
  waterHeatCapacity,
  waterViscosity,
} from '../../matter/water/index.ts';
import { standardGravity } from '../../quantities/index.ts';
import type { HeatFlow } from './films.ts';

/** What a layer of water conducts and convects with, at one temperature. */
export interface WaterOfLayer {
  /** k [W/(m K)]. */
  readonly conductivity: number;
  /** g β / (ν α) [1/(m³ K)]: Ra of a layer 1 m thick with 1 K across; below 0 where water shrinks as it warms: under 1.7 °C by the density fit, under 4 °C in truth. */
  readonly buoyancy: number;
  /** Pr [-]. */
  readonly prandtl: number;
}

/** Rayleigh number below which a layer heated from below stands still. */
const CRITICAL_RAYLEIGH = 1708;

/**
 * Fresh water at T, the properties a layer needs. Salt changes the resistance of a layer by less than 1 %: left out.
 * @param temperature  T [K]
 * @throws OutOfModelError below 0 °C and above 100 °C
 */
export function waterOfLayer(temperature: number): WaterOfLayer {
  const conductivity = waterConductivity(temperature, 0);
  const density = waterDensity(temperature, 0);
  const heatCapacity = waterHeatCapacity(temperature, 0);
  const viscosity = waterViscosity(temperature, 0);
  return {
    conductivity,
    buoyancy: layerBuoyancy(waterExpansion(temperature, 0), density, heatCapacity, viscosity, conductivity),
    prandtl: waterPrandtl(viscosity, heatCapacity, conductivity),
  };
}

/**
 * Buoyancy of a fluid, the Rayleigh number of a layer 1 m thick with 1 K across.
 *     B = g β ρ² c_p / (μ k)
 * @param expansion     β [1/K]
 * @param density       ρ [kg/m³]
 * @param heatCapacity  c_p [J/(kg K)]
 * @param viscosity     μ [Pa s]
 * @param conductivity  k [W/(m K)]
 * @returns             B [1/(m³ K)]
 * Source: definition of the Rayleigh number. Worked value: fresh water at 26 °C → 2.05e10.
 */
export function layerBuoyancy(
  expansion: number,
  density: number,
  heatCapacity: number,
  viscosity: number,
  conductivity: number,
): number {
  return (standardGravity * expansion * density * density * heatCapacity) / (viscosity * conductivity);
}

/**
 * Rayleigh number Ra of a water layer.
 *     Ra = B ΔT d³
 * @param buoyancy    B [1/(m³ K)]
 * @param difference  ΔT [K]
 * @param thickness   d [m]
 * @returns           Ra [-]
 * Source: definition. Worked value: 2.05e10, 0.3 K, 30 mm → 1.66e5.
 */
export function layerRayleigh(buoyancy: number, difference: number, thickness: number): number {
  return buoyancy * difference * thickness * thickness * thickness;
}

/**
 * Nusselt number Nu of a tall upright layer heated from the side, on its thickness.
 *     Nu = max(1, 0.42 Pr^0.012 Ra^0.25 (H/d)^−0.25, 0.049 Ra^0.33)
 * @param rayleigh  Ra [-], ≥ 0, on the thickness
 * @param prandtl   Pr [-]
 * @param slimness  H/d [-], height over thickness
 * @returns         Nu [-], ≥ 1
 * Validity: Ra 1e4 to 1e9, H/d up to 80; below 1e4 it passes into conduction. Accuracy: not stated; other fits of the same
 * data have (H/d)^−0.3 (MacGregor & Emery 1969), 15 % less at H/d = 20. Pitfall: the source changes forms at Ra = 1e7; the
 * larger of both has no step there.
 * Source: A. Thess in VDI Heat Atlas, 2nd edition 2010, as given in an open heat-transfer library (read there).
 * Worked value: Ra 2.247e6, Pr 0.7, turbulent term → 6.1126; Ra 1e5, Pr 6, H/d 20 → 3.61.
 */
export function nusseltUprightThess2010(rayleigh: number, prandtl: number, slimness: number): number {
  const laminar = 0.42 * prandtl ** 0.012 * (rayleigh / slimness) ** 0.25;
  return Math.max(1, laminar, 0.049 * rayleigh ** 0.33);
}

/**
 * Nusselt number Nu of a lying layer heated from below, any fluid.
 *     Nu = 1 + [1 − 1708/Ra]⁺ (k1 + 2 x^(1 − ln x)) + [(Ra/5830)^(1/3) − 1]⁺,  [y]⁺ = max(y, 0)
 *     x = Ra^(1/3)/k2,  k1 = 1.44/(1 + 0.018/Pr + 0.00136/Pr²),  k2 = 75 exp(1.5/√Pr)
 * @param rayleigh  Ra [-], ≥ 0
 * @param prandtl   Pr [-]
 * @returns         Nu [-], ≥ 1
 * Validity: wide layers. Pitfall: an open library prints 5803 for the 5830 of the 1975 paper on air, which is used here; 0.15 %.
 * Source: Hollands, Int. J. Heat Mass Transfer 27 (1984) 466, as given in an open heat-transfer library (read there).
 * Worked value: Pr 5.54, Ra 1.778e9 → 68.9 (69.03 with 5803).
 */
export function nusseltFromBelowHollands1984(rayleigh: number, prandtl: number): number {
  if (rayleigh <= CRITICAL_RAYLEIGH) return 1;
  const first = 1.44 / (1 + 0.018 / prandtl + 0.00136 / (prandtl * prandtl));
  const ratio = Math.cbrt(rayleigh) / (75 * Math.exp(1.5 / Math.sqrt(prandtl)));
  const second = 2 * ratio ** (1 - Math.log(ratio));
  const turbulent = Math.max(0, Math.cbrt(rayleigh / 5830) - 1);
  return 1 + (1 - CRITICAL_RAYLEIGH / rayleigh) * (first + second) + turbulent;
}

/**
 * Nusselt number of a water layer: upright, lying and heated from where it rises, or lying still.
 * @param water       its properties
 * @param thickness   d [m]
 * @param height      H [m], of an upright layer
 * @param flow        direction of heat flow
 * @param difference  ΔT [K] between its faces, ≥ 0
 */
export function waterLayerNusselt(
  water: WaterOfLayer,
  thickness: number,
  height: number,
  flow: HeatFlow,
  difference: number,
): number {
  const { buoyancy, prandtl } = water;
  const rayleigh = layerRayleigh(Math.abs(buoyancy), difference, thickness);
  if (flow === 'horizontal') return nusseltUprightThess2010(rayleigh, prandtl, slimness(height, thickness));
  const rises = (flow === 'up') === buoyancy > 0;
  return rises ? nusseltFromBelowHollands1984(rayleigh, prandtl) : 1;
}

/**
 * Thermal resistance R of a water layer.
 *     R = d / (Nu k)
 * @param thickness     d [m]
 * @param conductivity  k [W/(m K)]
 * @param nusselt       Nu [-], ≥ 1
 * @returns             R [m² K/W], at most that of still water
 * Source: definition of the Nusselt number. Worked value: 30 mm, 0.607, 3.61 → 0.0137 m² K/W.
 */
export function waterLayerResistance(thickness: number, conductivity: number, nusselt: number): number {
  return thickness / (nusselt * conductivity);
}

/** Pr [-] = μ c_p / k of water: dynamic viscosity [Pa s], specific heat [J/(kg K)], conductivity [W/(m K)]. Definition. */
export function waterPrandtl(viscosity: number, heatCapacity: number, conductivity: number): number {
  return (viscosity * heatCapacity) / conductivity;
}

/** Height over thickness [-] of a layer; both in metres. Definition. */
export function slimness(height: number, thickness: number): number {
  return height / thickness;
}
