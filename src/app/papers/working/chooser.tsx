// Choosing the number whose working is wanted: by the page it stands on, or by typing. Typing also finds the steps on the
// way, which stand on no page.

import { type ReactNode, useId, useState } from 'react';
import type { Assessment } from '../../../assess/index.ts';
import type { UnitView, WorkingStep } from '../../../quantities/index.ts';
import { pageTitles } from '../../pages.ts';
import { PageLink } from '../../ui/page-link.tsx';
import { hasStep } from '../../ui/result-link.tsx';
import { sentenceStart } from '../../ui/say.ts';
import type { FormulaTexts } from '../../worker/messages.ts';
import { allResults, bandOfResult, type ChosenResult, cycleResults, resultsByPage, sayResult } from './results.ts';
import { matching } from './search.ts';

export interface ChooserProps {
  /** Undefined while the design has no answer: the textbook cycle needs none. */
  readonly assessment: Assessment | undefined;
  readonly cycleWorkings: readonly WorkingStep[];
  readonly formulas: FormulaTexts;
  readonly view: UnitView;
}

export function Chooser({ assessment, cycleWorkings, formulas, view }: ChooserProps): ReactNode {
  const id = useId();
  const [typed, setTyped] = useState('');
  const workings = [...(assessment?.workings ?? []), ...cycleWorkings];
  const groups = [
    ...(assessment === undefined ? [] : resultsByPage(assessment)),
    { page: 'cycle-alone' as const, results: cycleResults('cycle').filter(({ name }) => hasStep(cycleWorkings, name)) },
  ];
  const named = [
    ...(assessment === undefined ? [] : allResults(assessment)),
    ...groups.filter(({ page }) => page === 'cycle-alone').flatMap(({ results }) => results),
  ];
  const said = ({ name, quantity }: ChosenResult) => {
    const step = workings.find((each) => each.result === name);
    const band = assessment && bandOfResult(assessment, name);
    return step && sayResult(step.value, band, quantity, view, assessment?.currency ?? '');
  };
  return (
    <div className="chooser">
      <div className="field">
        <label htmlFor={id}>Find a number by its name</label>
        <input
          id={id}
          type="search"
          autoComplete="off"
          value={typed}
          placeholder="such as evaporation, COP, coil"
          onChange={(event) => setTyped(event.target.value)}
        />
      </div>
      {typed.trim() === '' ? (
        <div className="chooser-groups">
          {groups.map(({ page, results }) => (
            <details key={page} open={groups.length === 1}>
              <summary>
                {pageTitles[page]} <span className="quiet">{results.length}</span>
              </summary>
              <ul>
                {page === 'cycle-alone' && (
                  <li>
                    <PageLink page="working" part="cycle">
                      The whole textbook cycle, to hand in
                    </PageLink>
                  </li>
                )}
                {results.map((result) => (
                  <li key={result.name}>
                    <PageLink page="working" part={result.name}>
                      {sentenceStart(result.label)}
                    </PageLink>{' '}
                    <span className="quiet">{said(result)}</span>
                  </li>
                ))}
              </ul>
            </details>
          ))}
        </div>
      ) : (
        <Found typed={typed} named={named} workings={workings} formulas={formulas} />
      )}
    </div>
  );
}

interface FoundProps {
  readonly typed: string;
  readonly named: readonly ChosenResult[];
  readonly workings: readonly WorkingStep[];
  readonly formulas: FormulaTexts;
}

function Found({ typed, named, workings, formulas }: FoundProps): ReactNode {
  const { found, more } = matching(typed, named, workings, formulas);
  return (
    <>
      <p className="quiet" role="status">
        {found.length === 0
          ? `No number has “${typed.trim()}” in its name.`
          : more > 0
            ? `${found.length} of ${found.length + more}; type more to find fewer.`
            : `${found.length} found.`}
      </p>
      <ul className="chooser-found">
        {found.map(({ name, label }) => (
          <li key={name}>
            <PageLink page="working" part={name}>
              {sentenceStart(label)}
            </PageLink>{' '}
            <code className="path">{name}</code>
          </li>
        ))}
      </ul>
    </>
  );
}
