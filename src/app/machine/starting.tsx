// What its start asks for: pressures that must even out, rests, oil that must stay warm; each with where it is from.

import type { ReactNode } from 'react';
import type { StartingFact } from '../../assess/index.ts';
import { sayRange, type UnitView } from '../../quantities/index.ts';
import { Termed } from '../terms/termed.tsx';
import { sentenceStart } from '../ui/say.ts';
import { Part } from './part.tsx';
import { quantityNamed } from './quantity-named.ts';

/** The one number of a start that a thermostat needs. */
function briefly(facts: readonly StartingFact[], view: UnitView): string {
  const rest = facts.find(({ name }) => name === 'minimumOffTime')?.band;
  return rest == null ? '' : `at rest ${sayRange(rest, quantityNamed(rest.quantity), view)} between two runs`;
}

interface StartingProps {
  readonly facts: readonly StartingFact[];
  readonly view: UnitView;
}

export function Starting({ facts, view }: StartingProps): ReactNode {
  if (facts.length === 0) return null;
  return (
    <Part name="starting" title="Starting it, and letting it rest" brief={briefly(facts, view)}>
      <dl className="starting">
        {facts.map(({ name, label, band, words, source }) => (
          <div key={name}>
            <dt>
              {sentenceStart(label)}
              {band !== null && <strong>: {sayRange(band, quantityNamed(band.quantity), view)}</strong>}
            </dt>
            <dd>
              <Termed>{words}</Termed>
            </dd>
            <dd className="finding-source">Source: {source}</dd>
          </div>
        ))}
      </dl>
    </Part>
  );
}
