// Sums of however many parts as steps: a sum has a fixed number of places, and what is more is gathered in sums first.

import { type StepInput, type WorkingStep, workingStep } from '../../quantities/index.ts';
import { placeSymbols, placesOfSum } from '../formulas/sums.ts';
import { sumOfParts } from '../totals.ts';

/** What is added up: formula of the sum and letter of its places. */
export const sums = {
  heat: ['tank.sumOfHeat', 'Q'],
  vapour: ['tank.sumOfVapour', 'm'],
  conductance: ['tank.sumOfConductance', 'H'],
  area: ['tank.sumOfArea', 'A'],
  volume: ['tank.sumOfVolume', 'V'],
  resistance: ['tank.sumOfResistance', 'R'],
} as const;

export interface SumOfSteps {
  readonly value: StepInput;
  readonly steps: readonly WorkingStep[];
}

/**
 * @param name   of the sum
 * @param of     what is added up
 * @param parts  in the order in which they are added
 * @param value  the sum as the engine has it, where that was added in another order
 */
export function sumOf(name: string, of: keyof typeof sums, parts: readonly StepInput[], value?: number): SumOfSteps {
  const steps: WorkingStep[] = [];
  let places = parts;
  for (let part = 1; places.length > placesOfSum; part++) {
    const gathered = sumStep(`${name}.part${part}`, of, places.slice(0, placesOfSum));
    steps.push(gathered);
    places = [[gathered.value, gathered.result], ...places.slice(placesOfSum)];
  }
  const last = sumStep(name, of, places);
  const total = value ?? last.value;
  return { value: [total, name], steps: [...steps, { ...last, value: total }] };
}

function sumStep(name: string, of: keyof typeof sums, parts: readonly StepInput[]): WorkingStep {
  const [formula, letter] = sums[of];
  const inputs = Object.fromEntries(
    placeSymbols(letter).map((symbol, index): [string, StepInput] => [symbol, parts[index] ?? [0]]),
  );
  return workingStep(name, formula, sumOfParts(parts.map(([part]) => part)), inputs);
}
