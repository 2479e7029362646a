// Viscosity and thermal conductivity of a state. States do not carry them: they cost more than the state itself, and the loop
// seldom asks.

import { refrigerant } from '../library.ts';
import type { Refrigerant, State } from '../types.ts';
import { type ReferenceFluid, transportModelsOf } from './models.ts';
import { pointOf } from './point.ts';
import type { SourceRange } from './transport-data.ts';

export interface Transport {
  /** η [Pa s]; null inside the dome and where the fluid's model says nothing. */
  readonly viscosity: number | null;
  /** λ [W/(m K)]; null likewise, and within rounding of the critical point, where it grows without limit. */
  readonly conductivity: number | null;
  /** Those of both whose source states a range that this state lies outside of. */
  readonly extrapolated?: readonly ('viscosity' | 'conductivity')[];
}

/**
 * Viscosity η and thermal conductivity λ of a state.
 * @param fluid  the fluid
 * @param state  one of its states; at quality 0 or 1 the values of that side of the dome
 * @returns      η [Pa s] and λ [W/(m K)]; null inside the dome
 * Validity: the limits of the fluid's equation. Beyond the range that the source of a model states the model is still
 * followed, and `extrapolated` says so; transportMethods gives the ranges, and what is an estimate.
 * Pitfall: a fluid by corresponding states needs the coefficient file of another (fluidsNeededBy names it).
 * @throws DataError if that file was not handed over before
 * Source: transportMethods(fluid).
 * Worked value: R134a, saturated vapour at 360 K → 17.140e-6 Pa s (Huber and others 2003).
 */
export function transportAt(fluid: Refrigerant, state: State): Transport {
  const { quality } = state;
  if (quality !== null && quality > 0 && quality < 1) return { viscosity: null, conductivity: null };
  const transport = transportModelsOf(fluid);
  const reference = transport.referenceFluid === undefined ? undefined : referenceFluid(transport.referenceFluid);
  const point = pointOf(fluid, state);
  const viscosity = given(transport.viscosity.at(point, fluid, reference));
  const conductivity = given(transport.conductivity.at(point, viscosity ?? Number.NaN, fluid, reference));
  const values = { viscosity, conductivity };
  const viscosityBeyond = isBeyond(transport.viscosity.data.range, state);
  const conductivityBeyond = isBeyond(transport.conductivity.data.range, state);
  if (!viscosityBeyond && !conductivityBeyond) return values;
  return {
    ...values,
    extrapolated: [
      ...(viscosityBeyond ? (['viscosity'] as const) : []),
      ...(conductivityBeyond ? (['conductivity'] as const) : []),
    ],
  };
}

function referenceFluid(name: string): ReferenceFluid {
  const fluid = refrigerant(name);
  return { fluid, models: transportModelsOf(fluid) };
}

/** A model that has left the ground gives NaN, something negative or without limit; none of that is an answer. */
function given(value: number): number | null {
  return value > 0 && value < Number.POSITIVE_INFINITY ? value : null;
}

function isBeyond(range: SourceRange | undefined, { temperature, pressure }: State): boolean {
  if (range === undefined) return false;
  const { temperatureMin, temperatureMax, pressureMax } = range;
  return temperature < temperatureMin || temperature > temperatureMax || pressure > pressureMax;
}
