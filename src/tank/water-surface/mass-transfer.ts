// Evaporation of still water from the size of its surface: the analogy of heat and mass transfer for a horizontal plate in
// still air. Buoyancy follows from the densities of the damp air at the water and of the room's. The only one of the methods
// here that knows how large the surface is. Left out: edges that stand above the water, drafts, and the few per cent by which
// the vapour's own flow carries more vapour along.

import { airViscosity, moistAirDensity, VAPOUR_GAS_CONSTANT, vapourDiffusivity } from '../../matter/air/index.ts';
import { standardGravity } from '../../quantities/index.ts';
import { mean } from '../stack/films.ts';

/**
 * Characteristic length L of a horizontal surface.
 *     L = A / P
 * @param area       A [m²]
 * @param perimeter  P [m]
 * @returns          L [m]
 * Source: Goldstein, Sparrow & Jones, Int. J. Heat Mass Transfer 16 (1973) 1025 (from memory of textbooks).
 * Worked value: 0.6 m², 3.4 m → 0.17647 m.
 */
export function surfaceLength(area: number, perimeter: number): number {
  return area / perimeter;
}

/**
 * Rayleigh number Ra of mass transfer (Grashof times Schmidt) over a surface, signed: positive where the air at the water is
 * lighter than the room's.
 *     Ra = g (ρ_r − ρ_w) L³ / (ρ_m ν D) = g (ρ_r − ρ_w) L³ / (μ D)
 * @param water        ρ_w [kg/m³] of the damp air at the water (of the mixture)
 * @param room         ρ_r [kg/m³] of the room's air (of the mixture)
 * @param length       L [m]
 * @param viscosity    μ [Pa s], dynamic
 * @param diffusivity  D [m²/s] of vapour in air
 * @returns            Ra [-]
 * Source: definition. Worked value: 26 °C over 22 °C 50 %, 0.17647 m → 2.9e6.
 */
export function surfaceRayleighNumber(
  water: number,
  room: number,
  length: number,
  viscosity: number,
  diffusivity: number,
): number {
  return (standardGravity * (room - water) * length ** 3) / (viscosity * diffusivity);
}

/**
 * Sherwood number Sh of a horizontal water surface, by the laws of a horizontal plate.
 *     Ra > 0: Sh = max(0.54 Ra^(1/4), 0.15 Ra^(1/3));  Ra ≤ 0: Sh = 0.27 |Ra|^(1/4);  never below 2/π
 * @param rayleigh  Ra [-], signed
 * @returns         Sh [-]
 * Validity: |Ra| 1e4 to 1e11. Accuracy: textbooks say 20 %. The larger of the two laws makes it continuous; by the letter the
 * second begins at 1e7, up to 6 % lower from 4.7e6 on. The floor 2/π is a disk set into a plane, by diffusion alone.
 * Source: McAdams 1954 with the constants of Goldstein & Lau 1983, in Incropera & DeWitt, Fundamentals of Heat and Mass Transfer
 * (from memory); shape factor of a disk, table 4.1 there (from memory). Worked value: 2.9e6 → 22.3.
 */
export function sherwoodHorizontalSurface(rayleigh: number): number {
  const moving =
    rayleigh > 0 ? Math.max(0.54 * rayleigh ** 0.25, 0.15 * Math.cbrt(rayleigh)) : 0.27 * Math.abs(rayleigh) ** 0.25;
  return Math.max(2 / Math.PI, moving);
}

/**
 * Mass-transfer coefficient K_m of still water: evaporation per area and vapour pressure difference.
 *     K_m = Sh D / (L R_v T_m),  R_v = 287.042 / 0.621945 J/(kg K)
 * @param sherwood         Sh [-]
 * @param diffusivity      D [m²/s]
 * @param length           L [m]
 * @param meanTemperature  T_m [K], of water and room
 * @returns                K_m [kg/(s m² Pa)]
 * Pitfall: vapour pressures over one mean temperature rather than two vapour densities, so that nothing evaporates where both
 * pressures are equal; 1.8 % more at the worked value.
 * Source: definition of Sh. Worked value: 26 °C over 22 °C 50 %, 1.2 x 0.5 m → E 0.169 kg/(m² h).
 */
export function massTransferCoefficient(
  sherwood: number,
  diffusivity: number,
  length: number,
  meanTemperature: number,
): number {
  return (sherwood * diffusivity) / (length * VAPOUR_GAS_CONSTANT * meanTemperature);
}

/**
 * K_m [kg/(s m² Pa)] of a surface at the conditions, from all of the above.
 * @param waterTemperature  T_w [K]
 * @param waterVapour       p_w [Pa]
 * @param roomTemperature   T_r [K]
 * @param roomVapour        p_r [Pa]
 * @param pressure          p [Pa]
 * @param length            L [m], see `surfaceLength`
 */
export function analogyCoefficient(
  waterTemperature: number,
  waterVapour: number,
  roomTemperature: number,
  roomVapour: number,
  pressure: number,
  length: number,
): number {
  const meanTemperature = mean(waterTemperature, roomTemperature);
  const diffusivity = vapourDiffusivity(meanTemperature, pressure);
  const rayleigh = surfaceRayleighNumber(
    moistAirDensity(waterTemperature, waterVapour, pressure),
    moistAirDensity(roomTemperature, roomVapour, pressure),
    length,
    airViscosity(meanTemperature),
    diffusivity,
  );
  return massTransferCoefficient(sherwoodHorizontalSurface(rayleigh), diffusivity, length, meanTemperature);
}
