// The study of a machine, for the station of that name, with its findings and its stops in words. Loaded when the station is first
// opened.

import { assessMachine, type MachineStudy, type Refusal, sayFinding } from '../../assess/index.ts';
import type { Finding, UnitView } from '../../quantities/index.ts';
import type { WordsOfFinding } from './messages.ts';

export interface MachineReply {
  readonly study: MachineStudy;
  /** Words of what speaks against each other fluid, in the order of the study. */
  readonly stopWords: readonly (readonly WordsOfFinding[])[];
}

export type MachineReplyOutcome = { readonly ok: true; readonly reply: MachineReply } | Refusal;

/**
 * @param text  of the design
 * @param view  of the reader
 */
export function answerMachine(text: string, view: UnitView): MachineReplyOutcome {
  const outcome = assessMachine(text);
  if (!outcome.ok) return outcome;
  const { study } = outcome;
  const words = (finding: Finding): WordsOfFinding => {
    const { title, text: said, remedy, source } = sayFinding(finding, view);
    return { title, text: said, remedy, source };
  };
  return { ok: true, reply: { study, stopWords: study.otherFluids.map(({ stops }) => stops.map(words)) } };
}
