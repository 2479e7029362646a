// Findings as people read them: state, what was found, what to do, where the rule comes from.

import type { ReactNode } from 'react';
import type { Finding, Severity, Subject } from '../../quantities/index.ts';
import type { AssessAnswer, WordsOfFinding } from '../worker/messages.ts';
import { type StateKind, StateMark } from './state-mark.tsx';

export interface SaidFinding {
  readonly finding: Finding;
  readonly words: WordsOfFinding;
}

const order: readonly Severity[] = ['stop', 'look', 'note'];
const marks: Record<Severity, readonly [StateKind, string]> = {
  stop: ['stop', 'stop'],
  look: ['look', 'look here'],
  note: ['plain', 'note'],
};

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

export function Findings({ said, none }: { said: readonly SaidFinding[]; none: string }): ReactNode {
  if (said.length === 0) return <p className="quiet">{none}</p>;
  return (
    <ul className="findings">
      {said.map(({ finding, words }) => (
        <li key={`${finding.code} ${words.text}`} className={`finding finding-${finding.severity}`}>
          <StateMark kind={marks[finding.severity][0]} word={marks[finding.severity][1]} />
          <div className="finding-body">
            <h4>{words.title}</h4>
            <p>{words.text}</p>
            <p>
              {finding.remedy}
              {finding.needsLicensedPerson && ' This is work for a certified or licensed person.'}
            </p>
            <p className="finding-source">Rule: {finding.source}</p>
          </div>
        </li>
      ))}
    </ul>
  );
}
