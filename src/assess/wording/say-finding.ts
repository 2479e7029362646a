// One door to the words of every finding, whichever folder reported it.

import { InputError } from '../../numerics/index.ts';
import type { Finding, UnitView } from '../../quantities/index.ts';
import { type FindingWords, findingSentence, hasFindingWords } from './findings.ts';
import { modelFindingWords } from './model-findings.ts';
import { textInView } from './text-in-view.ts';

/** All that is said of a finding, every number in the reader's view. */
export interface SaidFinding extends FindingWords {
  readonly remedy: string;
  readonly source: string;
}

/** Title, text, remedy and source of any finding. @throws InputError for a code that nobody wrote words for */
export function sayFinding(finding: Finding, view: UnitView): SaidFinding {
  const { remedy, source } = finding;
  return { ...wordsOf(finding, view), remedy: textInView(remedy, view), source: textInView(source, view) };
}

function wordsOf(finding: Finding, view: UnitView): FindingWords {
  if (hasFindingWords(finding.code)) return findingSentence(finding, view);
  const words = modelFindingWords(finding, view);
  if (words !== undefined) return words;
  throw new InputError('finding.code', finding.code, 'a code with words');
}
