// The choice of fluids and basis. Until somebody chooses, it is the design's own, and follows another design.

import { useState } from 'react';
import type { DesignDocument } from '../../../design/index.ts';
import { fluidNames } from '../../fluids/fluid-groups.ts';
import { useWorkbench } from '../../state/context.tsx';
import { choiceAtFirst, type FluidChoice, keptChoice, readKeptChoice } from './fluid-choice.ts';

const key = 'sideBySide';

export function useFluidChoice(document: DesignDocument): readonly [FluidChoice, (choice: FluidChoice) => void] {
  const { keeper } = useWorkbench();
  const [chosen, setChosen] = useState<FluidChoice | undefined>(() => readKeptChoice(keeper.read(key), fluidNames));
  const choose = (choice: FluidChoice) => {
    setChosen(choice);
    keeper.write(key, keptChoice(choice));
  };
  return [chosen ?? choiceAtFirst(document, fluidNames), choose];
}
