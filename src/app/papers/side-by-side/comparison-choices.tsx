// What the comparison is asked: which fluids, and what is held the same. Nothing else.

import { type ReactNode, useId } from 'react';
import { refrigerantChoices } from '../../state/refrigerants.ts';
import { Choice } from '../../ui/choice.tsx';
import { basisLabels, type FluidChoice, mostFluids, withFluid } from './fluid-choice.ts';

export interface ComparisonChoicesProps {
  readonly choice: FluidChoice;
  readonly choose: (choice: FluidChoice) => void;
}

const known = refrigerantChoices.map(({ value }) => value);

export function ComparisonChoices({ choice, choose }: ComparisonChoicesProps): ReactNode {
  const limit = useId();
  const isFull = choice.fluids.length >= mostFluids;
  return (
    <div className="comparison-choices">
      <fieldset className="fluid-choices" aria-describedby={limit}>
        <legend>Fluids</legend>
        <p id={limit} className="quiet">
          Two to five. For study: a compressor belongs to the fluid it was made for.
        </p>
        <div className="fluid-boxes">
          {refrigerantChoices.map(({ value, label }) => {
            const isIn = choice.fluids.includes(value);
            return (
              <label key={value}>
                <input
                  type="checkbox"
                  checked={isIn}
                  disabled={isFull && !isIn}
                  onChange={() => choose(withFluid(choice, value, !isIn, known))}
                />
                <span>{label}</span>
              </label>
            );
          })}
        </div>
      </fieldset>
      <Choice
        legend="What is held the same"
        value={choice.basis}
        options={basisLabels}
        choose={(basis) => choose({ ...choice, basis })}
      />
    </div>
  );
}
