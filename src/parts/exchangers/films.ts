// Films of water at a tube: free convection outside an immersed horizontal tube, forced flow inside, and the resistances
// that stand between refrigerant and water. Nusselt numbers carry author and year; properties are the caller's.

import { InputError, requirePositive } from '../../numerics/index.ts';
import { standardGravity } from '../../quantities/index.ts';

/** Where the fits were made. That of Churchill & Chu reaches beyond any coil in a tank. */
export const xinEbadian1996Validity = { rayleigh: { min: 5e3, max: 1e5 } } as const;
export const gnielinskiValidity = { reynolds: { min: 2300, max: 5e6 }, transitionEnds: 4000 } as const;

/**
 * Rayleigh number Ra on the tube diameter.
 *     Ra = g |β| ΔT D³ ρ² c_p / (μ k)
 * @param expansion      β [1/K]; its magnitude counts: water below its density maximum turns the plume over, not the film
 * @param difference     ΔT [K], surface to bulk, magnitude
 * @param diameter       D [m], outer
 * @param density        ρ [kg/m³]; with μ, k, c_p at the film temperature
 * @param heatCapacity   c_p [J/(kg K)]
 * @param viscosity      μ [Pa s]
 * @param conductivity   k [W/(m K)]
 * @returns              Ra [-]
 * Source: definition. Worked value: water at 28.5 °C, 5 K, 9.5 mm → 8.8e4.
 */
export function rayleighNumber(
  expansion: number,
  difference: number,
  diameter: number,
  density: number,
  heatCapacity: number,
  viscosity: number,
  conductivity: number,
): number {
  const drive = standardGravity * Math.abs(expansion) * difference;
  return (drive * diameter ** 3 * density ** 2 * heatCapacity) / (viscosity * conductivity);
}

/**
 * Nusselt number Nu of free convection outside a long horizontal cylinder.
 *     Nu = {0.60 + 0.387 Ra^(1/6) / [1 + (0.559/Pr)^(9/16)]^(8/27)}²
 * @param rayleigh   Ra [-], on the diameter, above 0
 * @param prandtl    Pr [-], above 0
 * @returns          Nu [-], on the diameter
 * Validity: Ra 1e-5 to 1e12. Accuracy: ±15 % against reality, as usual of such fits.
 * Pitfall: one tube alone; turns of a coil close above each other stand in each other's plume.
 * @throws InputError unless both are finite and above 0
 * Source: Churchill & Chu 1975, Int. J. Heat Mass Transfer 18, 1049; constants as in the open library ht.
 * Worked value: Pr 0.69, Gr 2.63e9 → 139.1349.
 */
export function nusseltHorizontalCylinderChurchillChu1975(rayleigh: number, prandtl: number): number {
  requirePositive('rayleigh', rayleigh);
  requirePositive('prandtl', prandtl);
  return (0.6 + (0.387 * rayleigh ** (1 / 6)) / (1 + (0.559 / prandtl) ** (9 / 16)) ** (8 / 27)) ** 2;
}

/**
 * Nusselt number Nu of free convection outside an immersed helical coil, a second opinion on the one above.
 *     Nu = 0.290 Ra^0.293 (axis vertical),  0.318 Ra^0.293 (axis horizontal)
 * @param rayleigh   Ra [-], on the tube's outer diameter
 * @param axis       of the coil
 * @returns          Nu [-], on the tube's outer diameter
 * Validity: Ra 5e3 to 1e5 (xinEbadian1996Validity); callers report values outside.
 * @throws InputError unless Ra is finite and above 0
 * Source: Xin & Ebadian 1996, J. Thermophysics Heat Transfer 10, 297; constants as in the open library ht.
 * Worked value: Pr 0.7, Gr 2e4 → 4.755690 vertical, 5.214860 horizontal.
 */
export function nusseltImmersedCoilXinEbadian1996(rayleigh: number, axis: 'vertical' | 'horizontal'): number {
  requirePositive('rayleigh', rayleigh);
  return (axis === 'vertical' ? 0.29 : 0.318) * rayleigh ** 0.293;
}

/**
 * Nusselt number Nu of turbulent flow in a tube.
 *     Nu = (f/8) (Re − 1000) Pr / [1 + 12.7 (f/8)^0.5 (Pr^(2/3) − 1)]
 * @param reynolds   Re [-]
 * @param prandtl    Pr [-]
 * @param friction   f [-], Darcy
 * @returns          Nu [-]
 * Validity: Re 2300 to 5e6, Pr 0.5 to 2000. Accuracy: ±10 % as usually stated.
 * Source: Gnielinski 1976; read in Bergman, Incropera, Dewitt & Lavine; constants as in the open library ht.
 * Worked value: Re 1e5, Pr 1.2, f 0.0185 → 254.6268.
 */
export function nusseltTurbulentGnielinski1976(reynolds: number, prandtl: number, friction: number): number {
  const eighth = friction / 8;
  return (eighth * (reynolds - 1000) * prandtl) / (1 + 12.7 * Math.sqrt(eighth) * (prandtl ** (2 / 3) - 1));
}

/**
 * Darcy friction factor f of a tube, laminar to turbulent, rough or smooth.
 *     f = 8 [(8/Re)^12 + (A + B)^(−1.5)]^(1/12);  A = {2.457 ln(1/[(7/Re)^0.9 + 0.27 e/D])}^16,  B = (37530/Re)^16
 * @param reynolds   Re [-], above 0
 * @param roughness  e/D [-], 0 for a smooth tube
 * @returns          f [-], Darcy
 * Validity: all Re; the transition is a bridge, not a prediction.
 * @throws InputError unless Re is finite and above 0
 * Source: Churchill 1977, Chemical Engineering 84(24), 91; constants as in the open library fluids.
 * Worked value: Re 1e5, e/D 1e-4 → 0.01846262; Re 1e4 smooth → 0.03100213.
 */
export function frictionFactorChurchill1977(reynolds: number, roughness: number): number {
  requirePositive('reynolds', reynolds);
  if (!(roughness >= 0 && roughness < 1)) throw new InputError('roughness', roughness, '0 to below 1, relative');
  const a = (2.457 * Math.log(1 / ((7 / reynolds) ** 0.9 + 0.27 * roughness))) ** 16;
  const b = (37530 / reynolds) ** 16;
  return 8 * ((8 / reynolds) ** 12 + (a + b) ** -1.5) ** (1 / 12);
}

/** Nu of fully developed laminar flow at constant wall temperature. */
export const laminarNusselt = 3.66;

/**
 * Nusselt number Nu inside a smooth tube for any flow: laminar 3.66 below Re 2300, Gnielinski above 4000, and between them
 *     Nu = (1 − γ) · 3.66 + γ · Nu(4000),  γ = (Re − 2300)/1700
 * @param reynolds   Re [-], above 0
 * @param prandtl    Pr [-], above 0
 * @returns          Nu [-]
 * Accuracy: in between it is a bridge. Pitfall: the entrance length, which would raise the laminar value, is left out.
 * Source: linear bridge after Gnielinski 2013, Int. J. Heat Mass Transfer 63, 134, from memory.
 */
export function nusseltInsideTube(reynolds: number, prandtl: number): number {
  requirePositive('reynolds', reynolds);
  requirePositive('prandtl', prandtl);
  const starts = gnielinskiValidity.reynolds.min;
  const ends = gnielinskiValidity.transitionEnds;
  if (reynolds <= starts) return laminarNusselt;
  const at = Math.max(reynolds, ends);
  const turbulent = nusseltTurbulentGnielinski1976(at, prandtl, frictionFactorChurchill1977(at, 0));
  if (reynolds >= ends) return turbulent;
  const share = (reynolds - starts) / (ends - starts);
  return (1 - share) * laminarNusselt + share * turbulent;
}

/**
 * Resistance R of a tube wall, referred to its outer area.
 *     R = D_o ln(D_o/D_i) / (2 k)
 * @param outerDiameter  D_o [m]
 * @param innerDiameter  D_i [m], above 0, below D_o
 * @param conductivity   k [W/(m K)]
 * @returns              R [m² K/W]
 * Source: conduction through a cylinder. Worked value: 9.5 mm, 8.5 mm, 16 W/(m K) → 3.30e-5 m² K/W.
 */
export function tubeWallResistance(outerDiameter: number, innerDiameter: number, conductivity: number): number {
  return (outerDiameter * Math.log(outerDiameter / innerDiameter)) / (2 * conductivity);
}
