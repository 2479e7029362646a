// What the comparison is asked: which fluids, and what is held the same. Nothing else.

import { type ReactNode, useId, useState } from 'react';
import { FluidFinder } from '../../fluids/fluid-finder.tsx';
import { type FluidItem, fluidNames, shortGroups } from '../../fluids/fluid-groups.ts';
import { Choice } from '../../ui/choice.tsx';
import { basisLabels, type FluidChoice, mostFluids, withFluid } from './fluid-choice.ts';

export interface ComparisonChoicesProps {
  readonly choice: FluidChoice;
  readonly choose: (choice: FluidChoice) => void;
}

export function ComparisonChoices({ choice, choose }: ComparisonChoicesProps): ReactNode {
  const limit = useId();
  const all = useId();
  const [isOpen, setOpen] = useState(false);
  const isFull = choice.fluids.length >= mostFluids;
  const toggle = (name: string) => {
    const isIn = choice.fluids.includes(name);
    if (isIn || !isFull) choose(withFluid(choice, name, !isIn, fluidNames));
  };
  const box = ({ name, label, usedIn }: FluidItem, isLong: boolean) => (
    <label key={name} className="fluid-box">
      <input
        type="checkbox"
        checked={choice.fluids.includes(name)}
        disabled={isFull && !choice.fluids.includes(name)}
        onChange={() => toggle(name)}
      />
      <span>{label}</span>
      {isLong && <span className="quiet">{usedIn}</span>}
    </label>
  );
  return (
    <div className="comparison-choices">
      <fieldset className="fluid-choices" aria-describedby={limit}>
        <legend>Fluids</legend>
        <p id={limit} className="quiet">
          Two to five. For study: a compressor belongs to the fluid it was made for.
        </p>
        {isOpen ? (
          <div id={all}>
            <FluidFinder offered={fluidNames} pick={toggle} item={(fluid) => box(fluid, true)} />
          </div>
        ) : (
          <div className="fluid-boxes">
            {shortGroups(fluidNames, choice.fluids)
              .flatMap(({ fluids }) => fluids)
              .map((fluid) => box(fluid, false))}
          </div>
        )}
        <button
          type="button"
          className="linkish"
          aria-expanded={isOpen}
          aria-controls={isOpen ? all : undefined}
          onClick={() => setOpen(!isOpen)}
        >
          {isOpen ? 'only the usual ones and the chosen' : `all ${fluidNames.length} fluids`}
        </button>
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
