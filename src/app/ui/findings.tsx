// Findings as people read them: state, what was found, what to do, where the rule comes from.

import type { ReactNode } from 'react';
import type { Finding, Severity, Subject } from '../../quantities/index.ts';
import { useWorkbench } from '../state/context.tsx';
import { Termed } from '../terms/termed.tsx';
import type { AssessAnswer, WordsOfFinding } from '../worker/messages.ts';
import { PageLink } from './page-link.tsx';
import { type StateKind, StateMark } from './state-mark.tsx';

export interface SaidFinding {
  readonly finding: Finding;
  readonly words: WordsOfFinding;
}

const order: readonly Severity[] = ['stop', 'look', 'note'];
/** State and word of each severity. */
export const severityMarks: Readonly<Record<Severity, readonly [StateKind, string]>> = {
  stop: ['stop', 'stop'],
  look: ['look', 'look here'],
  note: ['plain', 'note'],
};

/** A station shows at most this many; all stand in the paper of cautions. */
const mostOnStation = 3;

/** Findings and cautions of an answer with their words, the gravest first. */
export function saidFindings(answer: AssessAnswer, subjects?: readonly Subject[]): readonly SaidFinding[] {
  const { findings, cautions } = answer.assessment;
  const said = [
    ...findings.map((finding, index) => ({ finding, words: answer.findingWords[index] })),
    ...cautions.map((finding, index) => ({ finding, words: answer.cautionWords[index] })),
  ].filter((entry): entry is SaidFinding => entry.words !== undefined);
  const unique = said.filter(
    (entry, index) => said.findIndex((other) => other.words.text === entry.words.text) === index,
  );
  return unique
    .filter(({ finding }) => subjects === undefined || subjects.includes(finding.subject))
    .toSorted((a, b) => order.indexOf(a.finding.severity) - order.indexOf(b.finding.severity));
}

export interface FindingsProps {
  readonly said: readonly SaidFinding[];
  readonly none: string;
  /** Shows one of them. */
  readonly Item?: (said: SaidFinding) => ReactNode;
}

/** The gravest of a station's findings, and the way to all. */
export function Findings({ said, none, Item = FindingItem }: FindingsProps): ReactNode {
  const { answer } = useWorkbench().state;
  const all = answer === undefined ? said.length : saidFindings(answer).length;
  const left = said.length - mostOnStation;
  return (
    <>
      {said.length === 0 ? (
        <p className="quiet">{none}</p>
      ) : (
        <ul className="findings">
          {said.slice(0, mostOnStation).map(({ finding, words }) => (
            <Item key={`${finding.code} ${words.text}`} finding={finding} words={words} />
          ))}
        </ul>
      )}
      {all > 0 && (
        <p className="elsewhere">
          {left > 0 && `${left} more here. `}
          <PageLink page="cautions">{all === 1 ? 'The one caution' : `All ${all} cautions`}</PageLink>
        </p>
      )}
    </>
  );
}

/** One finding of a list: state, what was found, what to do, where the rule comes from. */
export function FindingItem({ finding, words }: SaidFinding): ReactNode {
  const [kind, word] = severityMarks[finding.severity];
  return (
    <li className={`finding finding-${finding.severity}`}>
      <StateMark kind={kind} word={word} />
      <div className="finding-body">
        <h4>{words.title}</h4>
        <FindingWords finding={finding} words={words} />
      </div>
    </li>
  );
}

/** What was found, what to do, where the rule comes from. */
export function FindingWords({ finding, words }: SaidFinding): ReactNode {
  return (
    <>
      <p>
        <Termed>{words.text}</Termed>
      </p>
      <p>
        {words.remedy}
        {finding.needsLicensedPerson && ' This is work for a certified or licensed person.'}
      </p>
      <p className="finding-source">Rule: {words.source}</p>
    </>
  );
}
