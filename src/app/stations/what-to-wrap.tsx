// What to wrap: each measure with its cost, the next best one in turn, in the accounts of tank and room; what stops paying once
// a heat pump is there; what the last inch of a board earns.

import type { ReactNode } from 'react';
import { sayPayback, type WrappingAnswer } from '../../assess/index.ts';
import { insideSentence, listed, type UnitView } from '../../quantities/index.ts';
import { useWorkbench } from '../state/context.tsx';
import { useStudy } from '../state/use-study.ts';
import { FindingItem } from '../ui/findings.tsx';
import { NumberItem, Numbers } from '../ui/number.tsx';
import { PageLink } from '../ui/page-link.tsx';
import { sentenceStart } from '../ui/say.ts';
import type { WrappingReply } from '../worker/wrapping.ts';
import { LastInch } from '../wrapping/last-inch.tsx';
import { Measures } from '../wrapping/measures.tsx';
import { PricesTable } from '../wrapping/price-table.tsx';
import { Waterfall } from '../wrapping/waterfall-picture.tsx';
import '../bills/bills.css';
import '../wrapping/wrapping.css';
import { Station, type StationProps } from './station.tsx';

export function WhatToWrap({ view }: StationProps): ReactNode {
  const { document } = useWorkbench();
  const { reply, problems, isOld } = useStudy('wrapping', document, view);
  const answer =
    problems.length > 0
      ? `What to wrap has no answer for the design as it stands: ${problems.join(' ')}`
      : (reply?.said.headline ?? 'What each measure saves is being worked out.');
  return (
    <Station
      name="what-to-wrap"
      answer={answer}
      isOld={isOld && reply !== undefined && problems.length === 0}
      numbers={reply && problems.length === 0 && <HeadNumbers answer={reply.answer} view={view} />}
    >
      {reply !== undefined && (
        <div className={isOld ? 'wrapping stale' : 'wrapping'}>
          <Wrapping reply={reply} view={view} />
        </div>
      )}
    </Station>
  );
}

function HeadNumbers({ answer, view }: { readonly answer: WrappingAnswer; readonly view: UnitView }): ReactNode {
  const { asItIs, inTurn, payingSteps, paying, currency, basis, workings } = answer;
  const wrapped = inTurn[payingSteps - 1]?.after;
  const common = { view, workings, isElsewhere: true } as const;
  return (
    <Numbers>
      <NumberItem label="Heat needed as it is" band={asItIs.load} quantity="power" {...common} />
      {paying !== null && wrapped !== undefined && (
        <>
          <NumberItem label="With all that pays" band={wrapped.load} quantity="power" ink="into-water" {...common} />
          <NumberItem
            label="Saved a year, tank and room"
            band={paying.netSaving}
            quantity="money"
            currency={currency}
            {...common}
          />
          <NumberItem
            label="To buy for that"
            band={paying.cost}
            quantity="money"
            currency={currency}
            view={view}
            note={`paid for: ${sayPayback(paying.payback)}`}
          />
          <NumberItem
            label={`Worth over ${basis.years} years, less its cost`}
            band={paying.netValue}
            quantity="money"
            currency={currency}
            {...common}
          />
        </>
      )}
    </Numbers>
  );
}

function Wrapping({ reply, view }: { readonly reply: WrappingReply; readonly view: UnitView }): ReactNode {
  const { answer, said, findingWords } = reply;
  const isMeasured = answer.notApplied.some(({ reason }) => reason === 'sizesUnknown');
  return (
    <>
      <section className="block">
        <h3>From the tank as it is to what is left</h3>
        <Waterfall answer={answer} view={view} />
      </section>
      {answer.inTurn.length > 0 && (
        <section className="block">
          <h3>Why there are two accounts</h3>
          <p>{said.twoAccounts}</p>
        </section>
      )}
      <Measures answer={answer} view={view} />
      {answer.notApplied.length > 0 && (
        <section className="block">
          <h3>{isMeasured ? 'What cannot be reckoned here' : 'What changes nothing here'}</h3>
          <ul className="plain-list">
            {sameReasons(answer.notApplied).map(([words, names]) => (
              <li key={words}>
                {isMeasured
                  ? `${sentenceStart(words)}.`
                  : `${sentenceStart(words)}: ${listed(names.map(insideSentence))}.`}
              </li>
            ))}
          </ul>
          {isMeasured && (
            <p>
              <PageLink page="what-leaves">Give the sizes of the tank</PageLink>, with the meter’s reading beside them,
              and every measure can be reckoned.
            </p>
          )}
        </section>
      )}
      {said.withHeatPump.length > 0 && (
        <section className="block">
          <h3>Once a heat pump is there</h3>
          <ul className="plain-list">
            {said.withHeatPump.map((words) => (
              <li key={words}>{words}</li>
            ))}
          </ul>
        </section>
      )}
      <LastInch answer={answer} words={said.lastInch} view={view} />
      {answer.inTurn.length > 0 && (
        <section className="block">
          <h3>At other prices</h3>
          <PricesTable answer={answer} view={view} />
        </section>
      )}
      {answer.findings.length > 0 && (
        <section className="block">
          <h3>What the reckoning leaves open</h3>
          <ul className="findings">
            {answer.findings.map((finding, index) => {
              const words = findingWords[index];
              return words && <FindingItem key={`${finding.code} ${words.text}`} finding={finding} words={words} />;
            })}
          </ul>
        </section>
      )}
    </>
  );
}

/** Names of measures by the words of why they change nothing. */
function sameReasons(all: WrappingAnswer['notApplied']): readonly (readonly [string, readonly string[]])[] {
  const names = new Map<string, string[]>();
  for (const { words, name } of all) names.set(words, [...(names.get(words) ?? []), name]);
  return [...names].map(([words, of]) => [words, [...new Set(of)]]);
}
