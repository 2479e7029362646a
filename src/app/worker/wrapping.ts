// What to wrap, for the station of that name: the study, its sentences in the view, and its findings in words. Loaded when the
// station is first opened.

import {
  assessWrapping,
  type Refusal,
  type SaidWrapping,
  sayFinding,
  sayWrapping,
  type WrappingAnswer,
} from '../../assess/index.ts';
import type { UnitView } from '../../quantities/index.ts';
import type { WordsOfFinding } from './messages.ts';

export interface WrappingReply {
  readonly answer: WrappingAnswer;
  readonly said: SaidWrapping;
  /** Words of each finding, in the order of the answer. */
  readonly findingWords: readonly WordsOfFinding[];
}

export type WrappingReplyOutcome = { readonly ok: true; readonly reply: WrappingReply } | Refusal;

/**
 * @param text  of the design
 * @param view  of the reader
 */
export function answerWrapping(text: string, view: UnitView): WrappingReplyOutcome {
  const outcome = assessWrapping(text);
  if (!outcome.ok) return outcome;
  const { answer } = outcome;
  const findingWords = answer.findings.map((finding) => {
    const { title, text: words, remedy, source } = sayFinding(finding, view);
    return { title, text: words, remedy, source };
  });
  return { ok: true, reply: { answer, said: sayWrapping(answer, view), findingWords } };
}
