// What it would cost to be wrong, and at which price of house heat and which COP over the year the loop and another way would cost
// the same: sentences for the cheapest other way, a small table for both.

import { type ReactNode, useId } from 'react';
import type { Assessment, LoopAgainstWords } from '../../assess/index.ts';
import { sayBand, sayQuantity, type UnitView } from '../../quantities/index.ts';
import { ResultLink } from '../ui/result-link.tsx';
import { sentenceStart } from '../ui/say.ts';

export interface BeingWrongProps {
  readonly assessment: Assessment;
  readonly words: readonly LoopAgainstWords[];
  readonly view: UnitView;
}

export function BeingWrong({ assessment, words, view }: BeingWrongProps): ReactNode {
  const { loopAgainst, standing } = assessment;
  const isForStudy = standing === 'doNotBuild';
  const cheapest = loopAgainst.findIndex(({ isCheapest }) => isCheapest);
  const said = words[cheapest];
  if (said === undefined) return null;
  return (
    <>
      <section className="block">
        <h3>What it would cost to be wrong</h3>
        {isForStudy && <p className="quiet">For study only: this loop is not to be built, whatever its bill says.</p>}
        <p>
          {said.difference} {!isForStudy && said.ifBuilt} {!isForStudy && said.ifNotBuilt}
        </p>
        <p className="quiet">
          Both bills are varied together: what makes both dearer, such as a colder room, cancels in their difference.
          Per year over the life of each, what it costs to buy included.
        </p>
      </section>
      <section className="block">
        <h3>Where they would cost the same</h3>
        <ul className="plain-list">
          {words.map((each) => (
            <li key={each.houseHeatPrice}>
              {each.houseHeatPrice} {each.seasonCop}
            </li>
          ))}
        </ul>
        <AgainstTable assessment={assessment} words={words} view={view} />
      </section>
    </>
  );
}

function AgainstTable({ assessment, words, view }: BeingWrongProps): ReactNode {
  const { loopAgainst, currency, standing, seasonCop, workings } = assessment;
  const money = (value: number) =>
    value > 0 ? `about ${sayQuantity(value, 'money', view, 2, { currency })}` : 'nothing';
  const isForStudy = standing === 'doNotBuild';
  const caption = useId();
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls sideways must be reachable by keyboard
    <section className="table-scroll" tabIndex={0} aria-labelledby={caption}>
      <table className="data against">
        <caption id={caption}>
          This loop against each other way, a year over its life.
          {seasonCop !== null && ` Its own COP over the year is ${sayBand(seasonCop, 'ratio', view)}.`}
        </caption>
        <thead>
          <tr>
            <th scope="col">Against</th>
            <th scope="col">The loop costs</th>
            {!isForStudy && <th scope="col">Built, and wrong: a year more</th>}
            {!isForStudy && <th scope="col">Not built, and wrong: a year forgone</th>}
            <th scope="col">The loop costs less with house heat</th>
            {seasonCop !== null && <th scope="col">and with a COP over the year</th>}
          </tr>
        </thead>
        <tbody>
          {loopAgainst.map((against, index) => {
            const short = words[index]?.short;
            return (
              <tr key={against.against}>
                <th scope="row">{sentenceStart(against.label)}</th>
                <td>
                  <ResultLink
                    workings={workings}
                    result={against.lifeCost.result}
                    of={`difference from ${against.label}`}
                  >
                    {short?.difference}
                  </ResultLink>
                </td>
                {!isForStudy && <td>{money(against.ifBuilt)}</td>}
                {!isForStudy && <td>{money(against.ifNotBuilt)}</td>}
                <td>
                  <ResultLink
                    workings={workings}
                    result={against.houseHeatPrice.at?.result}
                    of={`price of house heat, ${against.label}`}
                  >
                    {short?.houseHeatPrice}
                  </ResultLink>
                </td>
                {seasonCop !== null && (
                  <td>
                    <ResultLink
                      workings={workings}
                      result={against.seasonCop?.at?.result}
                      of={`COP over the year, ${against.label}`}
                    >
                      {short?.seasonCop}
                    </ResultLink>
                  </td>
                )}
              </tr>
            );
          })}
        </tbody>
      </table>
    </section>
  );
}
