// Every refrigerant in its group, and a field that narrows them down by number, name or use. What stands for a refrigerant,
// a button or a box to tick, is up to who shows it.

import './fluids.css';
import { type ReactNode, useId, useState } from 'react';
import { type FluidItem, fluidFor, groupsFor } from './fluid-groups.ts';

export interface FluidFinderProps {
  /** Names that may be chosen. */
  readonly offered: readonly string[];
  readonly item: (fluid: FluidItem) => ReactNode;
  /** Enter on a text that means one refrigerant. */
  readonly pick: (name: string) => void;
}

export function FluidFinder({ offered, item, pick }: FluidFinderProps): ReactNode {
  const [typed, setTyped] = useState('');
  const id = useId();
  const groups = groupsFor(typed, offered);
  const found = groups.reduce((sum, { fluids }) => sum + fluids.length, 0);
  const meant = fluidFor(typed, offered);
  return (
    <div className="fluid-finder">
      <label htmlFor={id}>Find by number, name or use</label>
      <input
        id={id}
        type="text"
        autoComplete="off"
        spellCheck={false}
        value={typed}
        placeholder="propane, CO2, 410, freezers"
        aria-describedby={`${id}-found`}
        onChange={(event) => setTyped(event.target.value)}
        onKeyDown={(event) => {
          if (event.key !== 'Enter' || meant === undefined) return;
          event.preventDefault();
          pick(meant);
        }}
      />
      <p id={`${id}-found`} className="quiet" role="status">
        {foundWords(found, offered.length, meant)}
      </p>
      <div className="fluid-groups">
        {groups.map(({ title, fluids }, index) => (
          <div key={title} className="fluid-group">
            <p id={`${id}-group${index}`}>{title}</p>
            <ul aria-labelledby={`${id}-group${index}`}>
              {fluids.map((fluid) => (
                <li key={fluid.name}>{item(fluid)}</li>
              ))}
            </ul>
          </div>
        ))}
      </div>
    </div>
  );
}

function foundWords(found: number, all: number, meant: string | undefined): string {
  if (found === 0) return 'None is called so or used so.';
  const count = found === all ? `All ${all}` : `${found} of ${all}`;
  return meant === undefined ? `${count}.` : `${count}. Enter takes ${meant}.`;
}
