// A pipe or hose with tank water in it, in room air: water film, wall, wrapping, and the outer surface at its real temperature.

import type { Pipe } from './built-tank.ts';
import { INTERNAL_CONVECTION, radiativeCoefficient, WATER_FILM_COEFFICIENT } from './stack/films.ts';

/** A pipe as it settles. */
export interface PipeState {
  readonly name: string;
  /** Of the outer face [K]. */
  readonly outerTemperature: number;
  /** h_c + h_r at the outer face [W/(m² K)]. */
  readonly outerCoefficient: number;
  /** Of film, wall and wrapping, and of the outer surface, per metre [m K/W]. */
  readonly innerResistance: number;
  readonly outerResistance: number;
  /** [W], positive out of the water. */
  readonly heat: number;
}

const ROUNDS = 60;

/** The pipe in a room. @param filmFactor  on the outer coefficient; 1 is the standard */
export function settlePipe(pipe: Pipe, water: number, room: number, filmFactor: number): PipeState {
  const { outerDiameter, wallThickness, insulation } = pipe;
  const innerDiameter = outerDiameter - 2 * wallThickness;
  const outside = outerDiameter + 2 * (insulation?.thickness ?? 0);
  const innerResistance =
    1 / (Math.PI * innerDiameter * WATER_FILM_COEFFICIENT) +
    cylinderResistance(innerDiameter, outerDiameter, pipe.wallConductivity) +
    (insulation === undefined ? 0 : cylinderResistance(outerDiameter, outside, insulation.conductivity));
  let outerTemperature = water;
  let outerCoefficient = 0;
  let outerResistance = 0;
  for (let round = 0; round < ROUNDS; round++) {
    const radiative = radiativeCoefficient(pipe.emissivity, (outerTemperature + room) / 2);
    outerCoefficient = filmFactor * (INTERNAL_CONVECTION.horizontal + radiative);
    outerResistance = 1 / (Math.PI * outside * outerCoefficient);
    outerTemperature = room + ((water - room) * outerResistance) / (innerResistance + outerResistance);
  }
  const heat = (pipe.length * (water - room)) / (innerResistance + outerResistance);
  return { name: pipe.name, outerTemperature, outerCoefficient, innerResistance, outerResistance, heat };
}

/** R' [m K/W] of a cylindrical layer = ln(D_2/D_1) / (2 π k): diameters [m], conductivity [W/(m K)]. */
export function cylinderResistance(inner: number, outer: number, conductivity: number): number {
  return Math.log(outer / inner) / (2 * Math.PI * conductivity);
}
