// What the ten coefficients that were given of a machine say themselves at a point inside their ranges, beside the model's value
// there: as printed, and carried to the gas that was asked for.

import {
  type Refrigerant,
  saturationAtDewTemperature,
  saturationAtTemperature,
  stateInLoop,
} from '../../../matter/refrigerants/index.ts';
import {
  type CoefficientSet,
  coefficientValue,
  flowRatioDabiriRice1981,
  powerRatioDabiriRice1981,
  type RatedStates,
  type RatingBasis,
  ratedStates,
} from '../../../parts/compressor/index.ts';
import { coefficientSets } from '../../stages/machine-points.ts';
import type { CoefficientValue, PointBasis } from './point-answer.ts';
import type { MachineSubject } from './subject.ts';

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
  const values = coefficientSets(design.described).flatMap((set): readonly CoefficientValue[] => {
    const gas = setConditions(fluid, set.basis, basis);
    if (!holdsAt(set, gas)) return [];
    return [valueAtPoint(set, gas, basis, fluid)];
  });
  return values.length === 0 ? null : values;
}

/** The two saturation temperatures as a set counts them, and its gas and liquid [K]. */
interface SetConditions {
  readonly evaporating: number;
  readonly condensing: number;
  readonly returnGas: number;
  readonly liquid: number | null;
}

function setConditions(
  fluid: Refrigerant,
  { gas, liquid: stated, saturation }: RatingBasis,
  { evaporating, condensing }: PointBasis,
): SetConditions {
  const condensed = saturationAtDewTemperature(fluid, condensing);
  const bubble = condensed.liquid.temperature;
  const liquid =
    stated === null
      ? null
      : stated.kind === 'subcooling'
        ? bubble - stated.subcooling
        : Math.min(bubble, stated.liquid);
  const returnGas = gas.kind === 'superheat' ? evaporating + gas.superheat : gas.returnGas;
  if (saturation === 'dew' || fluid.bubbleAndDew === undefined) return { evaporating, condensing, returnGas, liquid };
  const { enthalpy } = saturationAtTemperature(fluid, liquid ?? bubble).liquid;
  const { pressure } = saturationAtDewTemperature(fluid, evaporating).vapour;
  const inlet = stateInLoop(fluid, { pressure, enthalpy });
  return {
    evaporating: (inlet.temperature + evaporating) / 2,
    condensing: (bubble + condensing) / 2,
    returnGas,
    liquid,
  };
}

/** Printed temperatures have one or two decimals [K]. */
const rounding = 1e-6;

function holdsAt({ evaporatingRange, condensingRange }: CoefficientSet, at: SetConditions): boolean {
  const isIn = (value: number, { low, high }: { readonly low: number; readonly high: number }) =>
    value >= low - rounding && value <= high + rounding;
  return isIn(at.evaporating, evaporatingRange) && isIn(at.condensing, condensingRange);
}

const units: Readonly<Record<CoefficientSet['of'], string>> = {
  massFlow: 'kg/s',
  capacity: 'W',
  power: 'W',
  current: 'A',
};

/** Gas nearer than this is the same [K]. */
const sameGas = 0.05;

function valueAtPoint(set: CoefficientSet, at: SetConditions, basis: PointBasis, fluid: Refrigerant): CoefficientValue {
  const own = coefficientValue(set, at.evaporating, at.condensing);
  const isSameGas = Math.abs(at.returnGas - basis.returnGas.value) < sameGas;
  const isCarried = !isSameGas && set.of !== 'current' && at.returnGas >= basis.evaporating;
  return {
    path: set.path,
    of: set.of,
    own,
    corrected: isCarried ? carried(set.of, own, at, basis, fluid) : null,
    unit: units[set.of],
    returnGas: at.returnGas,
    liquid: at.liquid,
    frequency: set.supply.frequency,
  };
}

/** The value with the gas that was asked for; of a capacity the liquid stays that of the set. */
function carried(
  of: Exclude<CoefficientSet['of'], 'current'>,
  own: number,
  at: SetConditions,
  { evaporating, condensing, returnGas, liquid: asked }: PointBasis,
  fluid: Refrigerant,
): number {
  const levels = { evaporating, condensing, liquid: at.liquid ?? asked.value };
  const before = ratedStates(fluid, { ...levels, returnGas: at.returnGas });
  const after = ratedStates(fluid, { ...levels, returnGas: returnGas.value });
  const flowRatio = flowRatioDabiriRice1981(after.suction.density / before.suction.density);
  switch (of) {
    case 'massFlow':
      return own * flowRatio;
    case 'power':
      return own * powerRatioDabiriRice1981(flowRatio, after.isentropicWork / before.isentropicWork);
    case 'capacity': {
      const perMass = (states: RatedStates) => states.suction.enthalpy - states.liquidEnthalpy;
      return own * flowRatio * (perMass(after) / perMass(before));
    }
  }
}
