// A twin-wall sheet is no solid: cells of air between two skins. It is known by its transmittance with both surface
// resistances, by thickness; what a layer needs is the conductivity of a solid that would let as much heat through.

import { InputError } from '../../numerics/index.ts';
import type { SheetPoint } from './types.ts';

/** Surface resistances contained in a sheet's transmittance, m² K/W: ISO 6946 conventional, horizontal flow, in and out. */
export const SHEET_FILMS = 0.13 + 0.04;

/**
 * Equivalent conductivity k of a sheet known by its transmittance.
 *     k = d / (1/U − 0.17)
 * @param transmittance  U [W/(m² K)], with both conventional surface resistances
 * @param thickness      d [m]
 * @returns              k [W/(m K)]
 * Source: definition of transmittance, ISO 6946. Worked value: 3.1 W/(m² K), 10 mm → 0.0656 W/(m K).
 */
export function equivalentConductivity(transmittance: number, thickness: number): number {
  return thickness / (1 / transmittance - SHEET_FILMS);
}

/**
 * Transmittance U of a sheet of this thickness, linear between those that are made.
 * @throws InputError (code sheetThickness) outside them.
 */
export function interpolatedTransmittance(name: string, points: readonly SheetPoint[], thickness: number): number {
  for (let i = 1; i < points.length; i++) {
    const left = points[i - 1]!;
    const right = points[i]!;
    if (thickness >= left.thickness && thickness <= right.thickness) {
      const share = (thickness - left.thickness) / (right.thickness - left.thickness);
      return left.transmittance + share * (right.transmittance - left.transmittance);
    }
  }
  const first = points[0]!.thickness;
  const last = points[points.length - 1]!.thickness;
  throw new InputError('thickness', thickness, `${first} to ${last} m for ${name}`, 'sheetThickness');
}
