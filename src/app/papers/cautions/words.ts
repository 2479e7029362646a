// Words of the paper of cautions: its answer, the names of its groups, how sure a rule is, and the states of its tables.

import type { ChargeComparisonAnswer, SpaceAnswer } from '../../../assess/index.ts';
import { type Certainty, type Severity, subjects } from '../../../quantities/index.ts';
import type { SaidFinding } from '../../ui/findings.tsx';
import type { StateKind } from '../../ui/state-mark.tsx';

const severities: readonly Severity[] = ['stop', 'look', 'note'];

/** How many to stop for, to look at and to note, and the worst of them: within one severity, that about a person first. */
export function answerSentence(said: readonly SaidFinding[]): string {
  const [worst] = said.toSorted((left, right) => rank(left) - rank(right));
  if (worst === undefined) return 'No limit found. That says what the rules found, and permits nothing.';
  const grave = worst.finding.severity === 'note' ? 'No limit found; ' : '';
  const lead = worst.finding.severity === 'note' ? 'First of the notes' : 'The worst';
  return `${grave}${countWords(said)}. ${lead}: ${asSentence(worst.words.title)}`;
}

/** A title that asks keeps its question mark. */
function asSentence(title: string): string {
  return /[.?]$/.test(title) ? title : `${title}.`;
}

function rank({ finding: { severity, subject } }: SaidFinding): number {
  return severities.indexOf(severity) * subjects.length + subjects.indexOf(subject);
}

/** "2 to stop for, 3 to look at, 8 to note". */
export function countWords(said: readonly SaidFinding[]): string {
  const of = (severity: Severity) => said.filter(({ finding }) => finding.severity === severity).length;
  const parts = [
    [of('stop'), 'to stop for'],
    [of('look'), 'to look at'],
    [of('note'), 'to note'],
  ] as const;
  return parts
    .filter(([count]) => count > 0)
    .map(([count, words]) => `${count} ${words}`)
    .join(', ');
}

export const certaintyWords: Readonly<Record<Certainty, string>> = {
  confirmed: 'a published figure, read',
  physics: 'physics',
  stated: 'as the design itself says',
  memory: 'from memory of its source, so it warns and never clears',
  practice: 'common practice without a source, so it warns and never clears',
};

export const spaceStates: Readonly<Record<SpaceAnswer['state'], readonly [StateKind, string]>> = {
  belowLimit: ['plain', 'below it, evenly mixed'],
  aboveLimit: ['look', 'above it'],
  flammable: ['stop', 'would burn'],
  unknown: ['look', 'not known'],
  noLimit: ['plain', 'no limit known'],
};

export const chargeStates: Readonly<Record<ChargeComparisonAnswer['charge'], readonly [StateKind, string]>> = {
  below: ['plain', 'below the figure'],
  between: ['look', 'its upper end is above'],
  above: ['look', 'above the figure'],
};

export const shortCertainty: Readonly<Record<Certainty, string>> = {
  confirmed: 'read',
  physics: 'physics',
  stated: 'stated',
  memory: 'from memory',
  practice: 'practice',
};
