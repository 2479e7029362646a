// A pipe or hose with tank water in it, in room air: water film, wall, wrapping, and the outer surface, whose convection and
// radiation follow from the temperature it settles at. Left out: fittings, and what a pipe loses to a wall it lies on.

import { airConductivity, airViscosity, DRY_AIR_GAS_CONSTANT, DRY_AIR_HEAT_CAPACITY } from '../matter/air/index.ts';
import { ConvergenceError } from '../numerics/index.ts';
import { standardGravity } from '../quantities/index.ts';
import type { Pipe } from './built-tank.ts';
import { mean, radiativeCoefficient, WATER_FILM_COEFFICIENT } from './stack/films.ts';

/** A pipe as it settles. */
export interface PipeState {
  readonly name: string;
  /** Of the outer face [K]. */
  readonly outerTemperature: number;
  /** Ra [-] on the outer diameter, wrapping included, and the Nusselt number it gives. */
  readonly rayleigh: number;
  readonly nusselt: number;
  /** h_c and h_r at the outer face, and f (h_c + h_r) [W/(m² K)]. */
  readonly convectiveCoefficient: number;
  readonly radiativeCoefficient: number;
  readonly outerCoefficient: number;
  /** Of film, wall and wrapping, and of the outer surface, per metre [m K/W]. */
  readonly filmResistance: number;
  readonly wallResistance: number;
  readonly insulationResistance: number;
  readonly innerResistance: number;
  readonly outerResistance: number;
  /** Heat per metre [W/m], and of the whole pipe [W], positive out of the water. */
  readonly heatPerMetre: number;
  readonly heat: number;
}

/** The surface temperature is repeated until it moves less than this, K. */
const TOLERANCE = 1e-10;
const ROUNDS = 100;

/**
 * Resistance R' of a cylindrical layer, per metre.
 *     R' = ln(D_2/D_1) / (2 π k)
 * @param inner         D_1 [m]
 * @param outer         D_2 [m], > D_1
 * @param conductivity  k [W/(m K)]
 * @returns             R' [m K/W]
 * Source: textbook (Bergman et al., radial conduction). Worked value: 25, 45 mm, 0.036 → 2.5986 m K/W.
 */
export function cylinderResistance(inner: number, outer: number, conductivity: number): number {
  return Math.log(outer / inner) / (2 * Math.PI * conductivity);
}

/**
 * Resistance R' of a film on a cylinder, per metre.
 *     R' = 1 / (π D h)
 * @param diameter     D [m]
 * @param coefficient  h [W/(m² K)]
 * @returns            R' [m K/W]
 * Source: definition. Worked value: 45 mm, 9 → 0.7860 m K/W.
 */
export function cylinderFilmResistance(diameter: number, coefficient: number): number {
  return 1 / (Math.PI * diameter * coefficient);
}

/**
 * Heat q' per metre of pipe.
 *     q' = (T_w − T_r) / (R_inner' + R_outer')
 * @param water  T_w [K]
 * @param room   T_r [K]
 * @param inner  R_inner' [m K/W], water film, wall and wrapping
 * @param outer  R_outer' [m K/W], outer surface
 * @returns      q' [W/m], positive out of the water
 * Source: resistances in series. Worked value: 6 K over 2.5986 + 0.7860 → 1.7728 W/m.
 */
export function pipeHeat(water: number, room: number, inner: number, outer: number): number {
  return (water - room) / (inner + outer);
}

/**
 * Rayleigh number Ra of a cylinder in air.
 *     Ra = g |T_s − T_r| D³ c_p ρ² / (T_m μ k)
 * @param surface       T_s [K]
 * @param room          T_r [K]
 * @param diameter      D [m]
 * @param pressure      p [Pa], for ρ = p/(287.042 T_m)
 * @returns             Ra [-], ≥ 0; properties of dry air at T_m, the mean of both
 * Source: definition. Worked value: 299.15, 293.15 K, 25 mm, 101325 Pa → 8.96e3.
 */
export function cylinderRayleigh(surface: number, room: number, diameter: number, pressure: number): number {
  const at = mean(surface, room);
  const density = pressure / (DRY_AIR_GAS_CONSTANT * at);
  const diffusion = airViscosity(at) * airConductivity(at);
  const cube = diameter * diameter * diameter;
  return (
    (standardGravity * Math.abs(surface - room) * cube * DRY_AIR_HEAT_CAPACITY * density * density) / (at * diffusion)
  );
}

/**
 * Nusselt number Nu of a long horizontal cylinder, on its diameter.
 *     Nu = (0.60 + 0.387 Ra^(1/6) / (1 + (0.559/Pr)^(9/16))^(8/27))²
 * @param rayleigh  Ra [-], ≥ 0
 * @param prandtl   Pr [-]
 * @returns         Nu [-]
 * Validity: Ra 1e-5 to 1e12. A standing pipe gives off less: left out. Accuracy: not stated.
 * Source: Churchill & Chu, Int. J. Heat Mass Transfer 18 (1975) 1049, as given in an open heat-transfer library (read there).
 * Worked value: Ra 1.867e6, Pr 0.7241 → 17.40 (textbook); Ra 1.8147e9, Pr 0.69 → 139.135.
 */
export function nusseltCylinderChurchillChu1975(rayleigh: number, prandtl: number): number {
  const root = 0.6 + (0.387 * rayleigh ** (1 / 6)) / (1 + (0.559 / prandtl) ** (9 / 16)) ** (8 / 27);
  return root * root;
}

/**
 * The pipe in a room, its surface in agreement with what it gives off.
 * @param pipe        checked by the caller
 * @param water       T_w [K]
 * @param room        T_r [K]
 * @param pressure    p [Pa]
 * @param filmFactor  f [-] on the outer coefficient; 1 is the correlation itself
 * @throws ConvergenceError if 100 rounds do not suffice
 * Accuracy: the water film is that of still water, 300 W/(m² K); pumped water has more, worth 3 % of a bare pipe.
 */
export function settlePipe(pipe: Pipe, water: number, room: number, pressure: number, filmFactor: number): PipeState {
  const { outerDiameter, wallThickness, insulation, emissivity } = pipe;
  const innerDiameter = insideDiameter(outerDiameter, wallThickness);
  const outside = outsideDiameter(outerDiameter, insulation?.thickness ?? 0);
  const filmResistance = cylinderFilmResistance(innerDiameter, WATER_FILM_COEFFICIENT);
  const wallResistance = cylinderResistance(innerDiameter, outerDiameter, pipe.wallConductivity);
  const insulationResistance =
    insulation === undefined ? 0 : cylinderResistance(outerDiameter, outside, insulation.conductivity);
  const innerResistance = pipeInnerResistance(filmResistance, wallResistance, insulationResistance);
  let outerTemperature = water;
  let change = Number.POSITIVE_INFINITY;
  for (let round = 1; round <= ROUNDS; round++) {
    const film = cylinderFilm(outerTemperature, room, outside, pressure);
    const radiative = radiativeCoefficient(emissivity, mean(outerTemperature, room));
    const coefficient = outerCoefficient(filmFactor, film.convectiveCoefficient, radiative);
    const outerResistance = cylinderFilmResistance(outside, coefficient);
    const heatPerMetre = pipeHeat(water, room, innerResistance, outerResistance);
    const next = room + heatPerMetre * outerResistance;
    change = Math.abs(next - outerTemperature);
    outerTemperature = next;
    if (!(change <= TOLERANCE)) continue;
    return {
      name: pipe.name,
      outerTemperature,
      ...film,
      radiativeCoefficient: radiative,
      outerCoefficient: coefficient,
      filmResistance,
      wallResistance,
      insulationResistance,
      innerResistance,
      outerResistance,
      heatPerMetre,
      heat: heatOfLength(pipe.length, heatPerMetre),
    };
  }
  throw new ConvergenceError(`surface of pipe ${pipe.name}`, ROUNDS, [outerTemperature], change);
}

function cylinderFilm(surface: number, room: number, diameter: number, pressure: number) {
  const at = mean(surface, room);
  const conductivity = airConductivity(at);
  const rayleigh = cylinderRayleigh(surface, room, diameter, pressure);
  const nusselt = nusseltCylinderChurchillChu1975(rayleigh, airPrandtl(at));
  return { rayleigh, nusselt, convectiveCoefficient: filmCoefficient(nusselt, conductivity, diameter) };
}

/**
 * Prandtl number of dry air.
 *     Pr = c_p μ / k
 * @param temperature  T [K]
 * @returns            Pr [-]
 * Source: definition. Worked value: 25 °C → 0.708.
 */
export function airPrandtl(temperature: number): number {
  return (DRY_AIR_HEAT_CAPACITY * airViscosity(temperature)) / airConductivity(temperature);
}

/**
 * Convective coefficient h_c from a Nusselt number.
 *     h_c = Nu k / D
 * @param nusselt       Nu [-]
 * @param conductivity  k [W/(m K)] of air
 * @param diameter      D [m]
 * @returns             h_c [W/(m² K)]
 * Source: definition. Worked value: 17.40, 0.02699, 80 mm → 5.87 W/(m² K).
 */
export function filmCoefficient(nusselt: number, conductivity: number, diameter: number): number {
  return (nusselt * conductivity) / diameter;
}

/** Bore [m] = D − 2 d: outer diameter and wall [m]. Geometry. */
export function insideDiameter(outer: number, wall: number): number {
  return outer - 2 * wall;
}

/** Diameter over a wrapping [m] = D + 2 d. Geometry. */
export function outsideDiameter(outer: number, wrapping: number): number {
  return outer + 2 * wrapping;
}

/** R_inner [m K/W]: film, wall and wrapping one behind the other. */
export function pipeInnerResistance(film: number, wall: number, wrapping: number): number {
  return film + wall + wrapping;
}

/** f (h_c + h_r) [W/(m² K)] at the outer face; f departs from the standard film. */
export function outerCoefficient(factor: number, convective: number, radiative: number): number {
  return factor * (convective + radiative);
}

/** Outer surface of a pipe [K]: T_w − q R_inner; q [W/m], R_inner [m K/W]. Resistances in series. */
export function pipeSurface(water: number, heatPerMetre: number, inner: number): number {
  return water - heatPerMetre * inner;
}

/** Heat of a length of pipe [W] = L q. */
export function heatOfLength(length: number, heatPerMetre: number): number {
  return length * heatPerMetre;
}
