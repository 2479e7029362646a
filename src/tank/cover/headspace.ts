// Under a lid: heat and vapour from the water across the trapped air to the lid's underside. Convection by Hollands,
// Raithby & Konicek, vapour by the same Nusselt number (Sherwood analogy), radiation between parallel faces. What condenses
// on the lid gives its heat to the lid and runs back. A lid warmer than the water is dry: no vapour crosses.

import {
  airConductivity,
  airViscosity,
  DRY_AIR_HEAT_CAPACITY,
  moistAirDensity,
  saturationVapourPressure,
  vapourDensity,
  vapourDiffusivity,
  virtualTemperature,
} from '../../matter/air/index.ts';
import { latentHeat } from '../../matter/water/index.ts';
import { standardGravity } from '../../quantities/index.ts';
import { mean, STEFAN_BOLTZMANN } from '../stack/films.ts';
import { WATER_EMISSIVITY } from '../water-surface/surface.ts';

/** What crosses the trapped air, per m² of water, and the numbers on the way. */
export interface HeadspaceFlux {
  /** All three below together [W/m²], positive upwards. */
  readonly heatFlux: number;
  readonly convectiveFlux: number;
  readonly radiativeFlux: number;
  readonly vapourFlux: number;
  /** Vapour from the water to the lid, all of which runs back [kg/(s m²)]. */
  readonly circulation: number;
  /** p_ws [Pa] at the underside, and the vapour pressure there. */
  readonly lidSaturation: number;
  readonly lidVapour: number;
  /** T_v [K] of the damp air at the water and at the underside. */
  readonly waterVirtual: number;
  readonly lidVirtual: number;
  readonly virtualDifference: number;
  readonly meanVirtualTemperature: number;
  /** Means of water and underside: temperature [K], vapour pressure [Pa]; density [kg/m³] and viscosity [Pa s] there. */
  readonly meanTemperature: number;
  readonly meanVapour: number;
  readonly density: number;
  readonly viscosity: number;
  readonly kinematicViscosity: number;
  readonly thermalDiffusivity: number;
  readonly airConductivity: number;
  readonly diffusivity: number;
  readonly waterVapourDensity: number;
  readonly lidVapourDensity: number;
  readonly rayleigh: number;
  readonly nusselt: number;
}

/**
 * Rayleigh number Ra of a layer of moist air, driven by virtual temperatures.
 *     Ra = g ΔT_v d³ / (T_vm ν α)
 * @param difference      ΔT_v [K], lower minus upper face; stable (≤ 0) gives 0
 * @param meanTemperature T_vm [K]
 * @param gap             d [m]
 * @param viscosity       ν [m²/s], kinematic
 * @param diffusivity     α [m²/s], thermal
 * @returns               Ra [-], ≥ 0
 * Source: definition. Worked value: 60 mm, water 26, lid 23 °C saturated → 7.4e4.
 */
export function rayleighNumber(
  difference: number,
  meanTemperature: number,
  gap: number,
  viscosity: number,
  diffusivity: number,
): number {
  return (standardGravity * Math.max(0, difference) * gap ** 3) / (meanTemperature * viscosity * diffusivity);
}

/**
 * Nusselt number Nu of a horizontal air layer heated from below.
 *     Nu = 1 + 1.44 [1 − 1708/Ra]⁺ + [(Ra/5830)^(1/3) − 1]⁺,  [x]⁺ = max(x, 0)
 * @param rayleigh  Ra [-], ≥ 0
 * @returns         Nu [-], ≥ 1
 * Validity: air, Ra up to 1e8, wide layers. Accuracy: 5 % (from memory). The 5830 was not seen in print: worth 0.15 %.
 * Source: Hollands, Raithby & Konicek, Int. J. Heat Mass Transfer 18 (1975) 879. Worked value: 1e5 → 3.99436.
 */
export function nusseltHollands1975(rayleigh: number): number {
  if (rayleigh <= 1708) return 1;
  return 1 + 1.44 * (1 - 1708 / rayleigh) + Math.max(0, Math.cbrt(rayleigh / 5830) - 1);
}

/**
 * Vapour flux m_v'' across the headspace (Sherwood number taken as the Nusselt number).
 *     m_v'' = Nu (D/d) (ρ_v,water − ρ_v,lid)
 * @param nusselt      Nu [-]
 * @param diffusivity  D [m²/s]
 * @param gap          d [m]
 * @param water        ρ_v,water [kg/m³]
 * @param lid          ρ_v,lid [kg/m³], at most ρ_v,water: a lid that is too warm for dew is dry
 * @returns            m_v'' [kg/(s m²)]
 * Source: analogy of heat and mass transfer. Worked value: 60 mm, 26 over 23 °C → 0.0213 kg/(m² h).
 */
export function headspaceVapour(nusselt: number, diffusivity: number, gap: number, water: number, lid: number): number {
  return ((nusselt * diffusivity) / gap) * (water - lid);
}

/**
 * Radiation between the water and the wet underside of the lid, both of water's emissivity.
 *     q_r = σ (T_w⁴ − T_l⁴) / (2/ε − 1)
 * @param water  T_w [K]
 * @param lid    T_l [K]
 * @returns      q_r [W/m²]
 * Source: parallel grey plates. Worked value: 26 over 23 °C → 16.2 W/m².
 */
export function headspaceRadiation(water: number, lid: number): number {
  return (STEFAN_BOLTZMANN * (water ** 4 - lid ** 4)) / (2 / WATER_EMISSIVITY - 1);
}

/**
 * Vapour pressure p_l at the underside of the lid: saturated where it is damp, that over the water where it is too warm for dew.
 *     p_l = min(p_ws, p_w)
 * @param saturation  p_ws [Pa], at the underside
 * @param water       p_w [Pa], over the water
 * @returns           p_l [Pa]
 * Source: own simplification. Worked value: 2810, 3295 → 2810 Pa.
 */
export function lidVapourPressure(saturation: number, water: number): number {
  return Math.min(saturation, water);
}

/**
 * Vapour density at the underside of the lid, never above that over the water.
 *     ρ_l = min(p_ws / (R_v T_l), ρ_w)
 * @param lid         T_l [K]
 * @param saturation  p_ws [Pa], at T_l
 * @param water       ρ_w [kg/m³], over the water
 * @returns           ρ_l [kg/m³]
 * Source: ideal gas. Worked value: 296.15 K, 2810 Pa, 0.0239 → 0.02056.
 */
export function lidVapourDensity(lid: number, saturation: number, water: number): number {
  return Math.min(vapourDensity(lid, saturation), water);
}

/** ΔT_v [K] = T_v,water − T_v,lid: what drives convection in damp air. Source: definition. */
export function virtualDifference(water: number, lid: number): number {
  return water - lid;
}

/** ν [m²/s] = μ / ρ: dynamic viscosity [Pa s], density [kg/m³]. Source: definition. */
export function kinematicViscosity(viscosity: number, density: number): number {
  return viscosity / density;
}

/** α [m²/s] = k / (ρ · 1006 J/(kg K)): conductivity [W/(m K)], density [kg/m³] of air. Source: definition. */
export function thermalDiffusivity(conductivity: number, density: number): number {
  return conductivity / (density * DRY_AIR_HEAT_CAPACITY);
}

/**
 * All that crosses the headspace at a given lid temperature.
 * @param water        T_w [K]
 * @param waterVapour  p_w [Pa], over the water
 * @param lid          T_l [K], underside
 * @param gap          d [m], > 0
 * @param pressure     p [Pa]
 * @returns            fluxes and the numbers they follow from
 */
export function headspaceFlux(
  water: number,
  waterVapour: number,
  lid: number,
  gap: number,
  pressure: number,
): HeadspaceFlux {
  const lidSaturation = saturationVapourPressure(lid);
  const lidVapour = lidVapourPressure(lidSaturation, waterVapour);
  const waterVirtual = virtualTemperature(water, waterVapour, pressure);
  const lidVirtual = virtualTemperature(lid, lidVapour, pressure);
  const drive = virtualDifference(waterVirtual, lidVirtual);
  const meanVirtualTemperature = mean(waterVirtual, lidVirtual);
  const meanTemperature = mean(water, lid);
  const meanVapour = mean(waterVapour, lidVapour);
  const density = moistAirDensity(meanTemperature, meanVapour, pressure);
  const conductivity = airConductivity(meanTemperature);
  const viscosity = airViscosity(meanTemperature);
  const kinematic = kinematicViscosity(viscosity, density);
  const thermal = thermalDiffusivity(conductivity, density);
  const rayleigh = rayleighNumber(drive, meanVirtualTemperature, gap, kinematic, thermal);
  const nusselt = nusseltHollands1975(rayleigh);
  const diffusivity = vapourDiffusivity(meanTemperature, pressure);
  const waterVapourDensity = vapourDensity(water, waterVapour);
  const lidDensity = lidVapourDensity(lid, lidSaturation, waterVapourDensity);
  const circulation = headspaceVapour(nusselt, diffusivity, gap, waterVapourDensity, lidDensity);
  const convectiveFlux = headspaceConvection(nusselt, conductivity, gap, water, lid);
  const radiativeFlux = headspaceRadiation(water, lid);
  const vapourFlux = circulation * latentHeat(water);
  return {
    heatFlux: convectiveFlux + radiativeFlux + vapourFlux,
    convectiveFlux,
    radiativeFlux,
    vapourFlux,
    circulation,
    lidSaturation,
    lidVapour,
    waterVirtual,
    lidVirtual,
    virtualDifference: drive,
    meanVirtualTemperature,
    meanTemperature,
    meanVapour,
    density,
    viscosity,
    kinematicViscosity: kinematic,
    thermalDiffusivity: thermal,
    airConductivity: conductivity,
    diffusivity,
    waterVapourDensity,
    lidVapourDensity: lidDensity,
    rayleigh,
    nusselt,
  };
}

/**
 * Convection and conduction q_c across the headspace.
 *     q_c = Nu (k/d) (T_w − T_l)
 * @param nusselt       Nu [-]
 * @param conductivity  k [W/(m K)] of air
 * @param gap           d [m]
 * @param water         T_w [K]
 * @param lid           T_l [K]
 * @returns             q_c [W/m²]
 * Source: definition of Nu. Worked value: 3.74, 0.0261, 60 mm, 3 K → 4.9 W/m².
 */
export function headspaceConvection(
  nusselt: number,
  conductivity: number,
  gap: number,
  water: number,
  lid: number,
): number {
  return ((nusselt * conductivity) / gap) * (water - lid);
}

/**
 * Temperature T_l of the damp inner faces of lid and panes above the water: what reaches them leaves through them.
 *     T_l = T_r + A q / H
 * @param room         T_r [K]
 * @param area         A [m²], covered water surface
 * @param flux         q [W/m²], across the headspace
 * @param transmission H [W/K], sum of area times transmittance of the lid and the panes above the water
 * @returns            T_l [K]
 * Source: heat balance. Worked value: 292.15, 0.75 m², 42.3 W/m², 8.16 W/K → 296.04 K.
 */
export function lidTemperature(room: number, area: number, flux: number, transmission: number): number {
  return room + (area * flux) / transmission;
}

/**
 * Temperature T_l of the inner faces above the water, from the heat that leaves through them to wherever they face.
 *     T_l = T_w − (Q/A − q_r − m_v'' h_fg) d / (Nu k)
 * @param water         T_w [K]
 * @param leaving       Q [W], through lid and panels above the water
 * @param area          A [m²], covered water surface
 * @param radiative     q_r [W/m²] across the headspace
 * @param vapour        m_v'' h_fg [W/m²]
 * @param gap           d [m]
 * @param nusselt       Nu [-]
 * @param conductivity  k [W/(m K)] of air
 * @returns             T_l [K]
 * Source: energy balance of the inner faces. Worked value: 299.15 K, 27.6 W, 0.75 m², 16.2, 14.4, 0.06, 3.74, 0.026 → 295.32 K.
 */
export function innerFacesTemperature(
  water: number,
  leaving: number,
  area: number,
  radiative: number,
  vapour: number,
  gap: number,
  nusselt: number,
  conductivity: number,
): number {
  return water - ((leaving / area - radiative - vapour) * gap) / (nusselt * conductivity);
}
