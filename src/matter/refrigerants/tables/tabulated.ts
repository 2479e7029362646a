// A fluid whose states come from a table: the same object, with a table that is asked first.

import type { Refrigerant } from '../types.ts';
import { checkedRegion, loopRegion, type TableRegion } from './region.ts';
import { TableStates } from './states.ts';

/** What a table tells of itself beside its look-ups. */
export interface TabulatedRefrigerant extends Refrigerant {
  readonly table: TableStates;
}

// A table is a pure function of its fluid: keeping it changes no answer, only the time.
const built = new WeakMap<Refrigerant, TabulatedRefrigerant>();

/**
 * The fluid with a table of its states: stateAt and saturationAt… ask the table for (p,h), (p,s), (T,p), (p,x) and (T,x) and
 * the equation for everything else.
 * @param fluid   the fluid, from refrigerant(name)
 * @param region  where the table is to answer; by default the region of a refrigerant loop (loopRegion), whose table is made
 *                once a fluid
 * @returns       the same fluid with `table`: its look-up, region, memory and counts
 * Validity: inside the region, without the surroundings of the critical point; outside it the equation answers, and is
 * counted. Accuracy: T, ρ and s (of 1 kJ/(kg K)) within 1e-5; saturated values within 1e-9; c_p, c_v and w within 1e-3 where
 * they are worst, beside the critical point, and mostly within 1e-8.
 * Pitfall: building takes some tens of milliseconds; it pays from some thousands of states on.
 * @throws InputError naming what the region may be; ConvergenceError
 * Source: the fluid's own equation; bicubic Hermite interpolation, C. de Boor (1962), J. Math. Phys. 41, 212 (from memory of
 * the source).
 * Worked value: R134a at 0.2 MPa and 420 kJ/kg → 295.08 K from table and equation.
 */
export function tabulated(fluid: Refrigerant, region?: TableRegion): TabulatedRefrigerant {
  if (region !== undefined) return withTable(fluid, checkedRegion(fluid, region));
  const known = built.get(fluid);
  if (known !== undefined) return known;
  const made = withTable(fluid, loopRegion(fluid));
  built.set(fluid, made);
  return made;
}

function withTable(fluid: Refrigerant, region: TableRegion): TabulatedRefrigerant {
  return Object.freeze({ ...fluid, table: new TableStates(fluid, region) });
}
