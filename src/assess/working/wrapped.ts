// The working of "insulation only": what its measures cost, and the months of the tank wrapped with them. The heat a wrapped tank
// needs in a month is the tank's own model on another tank; its steps are those of 'tank', and are not shown once more.

import { type WorkingStep, workingStep } from '../../quantities/index.ts';
import { sumStep } from '../../year/index.ts';
import type { StagedDesign } from '../stages/engine-assumptions.ts';
import type { StageResults } from '../stages/index.ts';
import type { OfferedMeasure } from '../stages/wrapping/offered.ts';
import { dehumidifierSteps } from './dehumidifier.ts';

const scenario = 'accounts.insulationOnly';
/** What the models assume: the tank with its measures, and what usual measures cost and measure. */
const wrappedTank = 'engine.wrappedTank';
const usualMeasures = 'engine.usualMeasures';

/** Empty where nothing pays. */
export function wrappedSteps(
  design: StagedDesign,
  { wrapped, wrappingChoice }: Pick<StageResults, 'wrapped' | 'wrappingChoice'>,
): readonly WorkingStep[] {
  if (wrapped === null) return [];
  const { year, heats } = wrapped;
  const at = (month: string, name: string) => `wrapped.${month}.${name}`;
  return [
    ...purchaseChain(design, wrappingChoice),
    ...year.months.flatMap(({ conditions: { month, duration }, state, energies }, index) => {
      const energy = (name: string, value: number, power: number, from: string) =>
        workingStep(at(month, `energies.${name}`), 'year.energy', value, { P: [power, from], t: [duration] });
      return [
        workingStep(at(month, 'heatNeeded'), 'plant.heatNeeded', state.heatNeeded, {
          L: [heats[index]!.load, wrappedTank],
        }),
        energy('heatNeeded', energies.heatNeeded, state.heatNeeded, at(month, 'heatNeeded')),
        energy('tankSensible', energies.tankSensible, state.roomHeat.fromTank, wrappedTank),
      ];
    }),
    ...dehumidifierSteps(design, year, (_month, index) => [heats[index]!.evaporation, wrappedTank], 'wrapped'),
    sumStep('wrapped.energies.heatNeeded', year.energies.heatNeeded, year, ({ conditions, energies }) => [
      energies.heatNeeded,
      at(conditions.month, 'energies.heatNeeded'),
    ]),
  ];
}

/** The heater, and measure by measure what is added to it. */
function purchaseChain({ prices, engine }: StagedDesign, chosen: readonly OfferedMeasure[]): readonly WorkingStep[] {
  let before = prices.heater;
  let from = 'prices.heater';
  return chosen.flatMap((measure, index) => {
    const cost = `${scenario}.cost.${measure.id}`;
    const result = index === chosen.length - 1 ? `${scenario}.purchase` : `${scenario}.purchase.${index + 1}`;
    const steps = [
      ...(measure.usual === null ? [] : [usualCost(measure, cost, engine.measureCostFactor)]),
      workingStep(result, 'accounts.costTogether', before + measure.cost.likely, {
        C_1: [before, from],
        C_2: [measure.cost.likely, measure.path === null ? cost : `${measure.path}.cost`],
      }),
    ];
    before += measure.cost.likely;
    from = result;
    return steps;
  });
}

function usualCost({ usual, cost, area, sheet }: OfferedMeasure, result: string, factor: number): WorkingStep {
  const { fixed, perArea, perVolume } = usual!.cost;
  return workingStep(result, 'accounts.measureCost', cost.likely, {
    f: [factor, 'engine.measureCostFactor'],
    C_0: [fixed.likely, usualMeasures],
    c_A: [perArea?.likely ?? 0, usualMeasures],
    A: [area ?? 0, usualMeasures],
    c_V: [perVolume?.likely ?? 0, usualMeasures],
    d: [sheet?.thickness ?? 0, usualMeasures],
  });
}
