// What the ten coefficients that were given of a machine say themselves at a point inside their ranges, beside the model's value
// there: as printed, and carried to the gas and liquid that were asked for.

import type { Refrigerant } from '../../../../matter/refrigerants/index.ts';
import { KettlefinError } from '../../../../numerics/index.ts';
import { type CoefficientSet, coefficientAt, polynomialUnitsInSi } from '../../../../parts/compressor/index.ts';
import { coefficientSets } from '../../../stages/machine-points.ts';
import type { MachineSubject } from '../subject.ts';
import type { CoefficientValue, PointBasis } from './point-answer.ts';

/**
 * Values of every set that holds at the point.
 * @returns null where there is no set, none holds there, or the point is asked of another refrigerant
 */
export function coefficientValues(
  { design }: MachineSubject,
  basis: PointBasis,
  fluid: Refrigerant,
): readonly CoefficientValue[] | null {
  if (fluid.name !== design.described.madeFor) return null;
  const values = coefficientSets(design.described).flatMap((set) => valueAtPoint(set, basis, fluid) ?? []);
  return values.length === 0 ? null : values;
}

/** Undefined where the set does not hold. */
function valueAtPoint(set: CoefficientSet, basis: PointBasis, fluid: Refrigerant): CoefficientValue | undefined {
  const { evaporating, condensing, returnGas, liquid } = basis;
  const asked = { evaporating, condensing, returnGas: returnGas.value, liquid: liquid.value };
  try {
    const { own, corrected, conditions } = coefficientAt(fluid, set, asked);
    return {
      path: set.path,
      of: set.of,
      own,
      corrected,
      unit: polynomialUnitsInSi[set.of],
      returnGas: conditions.returnGas,
      liquid: set.of === 'capacity' ? conditions.liquid : null,
      frequency: set.supply.frequency,
    };
  } catch (error) {
    // Outside its ranges, or where its gas or liquid make no sense.
    if (!(error instanceof KettlefinError)) throw error;
    return undefined;
  }
}
