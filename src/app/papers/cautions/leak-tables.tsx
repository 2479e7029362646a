// Two tables: each enclosed space by itself with the whole charge in it, and the charge beside figures of standards that do
// not apply to it. The charge itself is never among their numbers.

import type { ReactNode } from 'react';
import type { ChargeComparisonAnswer, SpaceAnswer } from '../../../assess/index.ts';
import type { UnitView } from '../../../quantities/index.ts';
import { FieldLink, useFieldFacts } from '../../ui/field-origin.tsx';
import { say, sentenceStart } from '../../ui/say.ts';
import { ScrollBox } from '../../ui/scroll-box.tsx';
import { StateMark } from '../../ui/state-mark.tsx';
import { chargeStates, shortCertainty, spaceStates } from './words.ts';

export function Spaces({ spaces, view }: { spaces: readonly SpaceAnswer[]; view: UnitView }): ReactNode {
  const density = (value: number | null) => (value === null ? '–' : say(value, 'chargeDensity', view, 2));
  return (
    <section className="block" aria-labelledby="cautions-spaces-title">
      <h3 id="cautions-spaces-title" tabIndex={-1}>
        Each enclosed space by itself
      </h3>
      <p className="quiet">
        The whole charge, upper end of its range, evenly mixed into the smallest size the space may have. Heavy gas lies
        on the floor, where there is more of it: below the limit clears nothing.
      </p>
      <ScrollBox className="table-scroll" label="Table of spaces">
        <table className="data leak-table">
          <caption className="for-reader">Each enclosed space with the whole charge in it</caption>
          <thead>
            <tr>
              <th scope="col">Space</th>
              <th scope="col" className="number">
                Size taken
              </th>
              <th scope="col" className="number">
                A leak would make
              </th>
              <th scope="col" className="number">
                It should stay below
              </th>
              <th scope="col">State</th>
            </tr>
          </thead>
          <tbody>
            {spaces.map((space) => (
              <tr key={space.space}>
                <th scope="row">
                  {sentenceStart(space.label)}
                  <SpaceSize space={space} />
                </th>
                <td className="number">{sizeWords(space, view)}</td>
                <td className="number">{density(space.concentration)}</td>
                <td className="number">{density(space.limit)}</td>
                <td>
                  <StateMark kind={spaceStates[space.state][0]} word={spaceStates[space.state][1]} />
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </ScrollBox>
    </section>
  );
}

function sizeWords({ space, volume }: SpaceAnswer, view: UnitView): string {
  if (volume !== null) return say(volume, 'volume', view, 2);
  return space === 'airPumpIntake' ? 'that of where it draws' : 'not known';
}

/** Where its size is assumed or unknown: the field it belongs in, and how to find it. */
function SpaceSize({ space: { path, isAssumed, state, measure, space } }: { space: SpaceAnswer }): ReactNode {
  const facts = useFieldFacts()(path);
  if (facts?.page === undefined || !(isAssumed || state === 'unknown')) return null;
  return (
    <p className="quiet space-size">
      {isAssumed ? 'Assumed. ' : 'Nobody has said. '}
      {space === 'airPumpIntake' ? 'Follow its tube by eye' : sentenceStart(measure)}, and give it at{' '}
      <FieldLink facts={facts} />.
    </p>
  );
}

export interface ChargeFiguresProps {
  readonly comparisons: readonly ChargeComparisonAnswer[];
  readonly view: UnitView;
}

export function ChargeFigures({ comparisons, view }: ChargeFiguresProps): ReactNode {
  if (comparisons.length === 0) return null;
  return (
    <section className="block" aria-labelledby="cautions-charge-title">
      <h3 id="cautions-charge-title" tabIndex={-1}>
        The charge beside figures of standards
      </h3>
      <p className="quiet">
        None of these standards applies to a home-made machine. To be below a figure permits nothing; to be above one
        says how far this is from what makers build.
      </p>
      <ScrollBox className="table-scroll" label="Table of figures">
        <table className="data leak-table">
          <caption className="for-reader">The charge beside figures of standards</caption>
          <thead>
            <tr>
              <th scope="col">Figure set for</th>
              <th scope="col">Standard</th>
              <th scope="col" className="number">
                Figure
              </th>
              <th scope="col">The charge here</th>
              <th scope="col">Figure is</th>
            </tr>
          </thead>
          <tbody>
            {comparisons.map(({ name, label, standard, limit, charge, certainty }) => (
              <tr key={name}>
                <th scope="row">{sentenceStart(label)}</th>
                <td>{standard}</td>
                <td className="number">{say(limit, 'mass', view, 2)}</td>
                <td>
                  <StateMark kind={chargeStates[charge][0]} word={chargeStates[charge][1]} />
                </td>
                <td>{shortCertainty[certainty]}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </ScrollBox>
    </section>
  );
}
