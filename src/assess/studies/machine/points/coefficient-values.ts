// What the ten coefficients that were given of a machine say themselves at a point inside their ranges, beside the model's value
// there: as printed, and carried to the gas and liquid that were asked for.

import type { Refrigerant } from '../../../../matter/refrigerants/index.ts';
import { KettlefinError } from '../../../../numerics/index.ts';
import {
  type CoefficientAt,
  type CoefficientSet,
  coefficientAt,
  polynomialUnitsInSi,
} from '../../../../parts/compressor/index.ts';
import { coefficientSets } from '../../../stages/machine-points.ts';
import type { MachineSubject } from '../subject.ts';
import type { CoefficientValue, PointBasis } from './point-answer.ts';

type Described = MachineSubject['design']['described'];

/**
 * Values of every set that holds at the point.
 * @returns null where there is no set, none holds there, or the point is asked of another refrigerant
 */
export function coefficientValues(
  { design }: MachineSubject,
  basis: PointBasis,
  fluid: Refrigerant,
): readonly CoefficientValue[] | null {
  const values = coefficientsAt(design.described, basis, fluid).map(({ set, result }) => coefficientValue(set, result));
  return values.length === 0 ? null : values;
}

/** A set and what it gives at a point. */
export interface SetAt {
  readonly set: CoefficientSet;
  readonly result: CoefficientAt;
}

/** The sets that hold at the point; none where it is asked of another refrigerant. */
export function coefficientsAt(described: Described, basis: PointBasis, fluid: Refrigerant): readonly SetAt[] {
  if (fluid.name !== described.madeFor) return [];
  const { evaporating, condensing, returnGas, liquid } = basis;
  const asked = { evaporating, condensing, returnGas: returnGas.value, liquid: liquid.value };
  return coefficientSets(described).flatMap((set) => {
    try {
      return [{ set, result: coefficientAt(fluid, set, asked) }];
    } catch (error) {
      // Outside its ranges, or where its gas or liquid make no sense.
      if (!(error instanceof KettlefinError)) throw error;
      return [];
    }
  });
}

function coefficientValue(
  { path, of, supply }: CoefficientSet,
  { own, corrected, conditions }: CoefficientAt,
): CoefficientValue {
  return {
    path,
    of,
    own,
    corrected,
    unit: polynomialUnitsInSi[of],
    returnGas: conditions.returnGas,
    liquid: of === 'capacity' ? conditions.liquid : null,
    frequency: supply.frequency,
  };
}
