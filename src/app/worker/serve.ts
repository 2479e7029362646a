// Answers the page's requests with the engine. No worker in it: the tests call it directly, in Node. One Assessor is
// kept, so that an edit computes only what depends on it. Messages of the engine are said in the reader's units.

import {
  type AssessOutcome,
  Assessor,
  messageInView,
  sayFinding,
  sayLoopAgainst,
  withoutCharge,
} from '../../assess/index.ts';
import { makeDiagram } from '../../charts/index.ts';
import { sayProblem } from '../../design/index.ts';
import { KettlefinError } from '../../numerics/index.ts';
import type { Finding, UnitView } from '../../quantities/index.ts';
import { answerCycle, sayCycleError } from './cycle.ts';
import type {
  AssessAnswer,
  AssessRequest,
  BriefRequest,
  CompareRequest,
  EngineProblem,
  EngineReply,
  EngineRequest,
  FormulasRequest,
  Numbered,
  WordsOfFinding,
} from './messages.ts';

/** All requests but those whose answer is loaded on demand. */
export type ServedRequest = Exclude<EngineRequest, FormulasRequest | CompareRequest | BriefRequest>;

export type Serve = (message: Numbered<ServedRequest>) => EngineReply;

/** @param now  a clock in milliseconds, for telling how long an answer took */
export function createServe(now: () => number): Serve {
  const assessor = new Assessor();
  return ({ id, body }) => {
    const since = now();
    try {
      switch (body.kind) {
        case 'assess': {
          const outcome = assess(assessor, body);
          if (!outcome.ok) return { kind: 'assess', id, ok: false, problems: outcome.problems };
          return { kind: 'assess', id, ok: true, answer: { ...outcome.answer, took: now() - since } };
        }
        case 'cycle':
        case 'secondCycle':
          return { kind: body.kind, id, ok: true, answer: answerCycle(body.kind, body.form) };
        case 'diagram':
          return { kind: 'diagram', id, ok: true, answer: makeDiagram(body.request) };
        case 'range':
          return { kind: 'range', id, ok: true, answer: assessor.rangeOf(body.result) };
      }
    } catch (error) {
      return { kind: body.kind, id, ok: false, problems: [problemOf(error, body)] };
    }
  };
}

type Assessed =
  | { readonly ok: true; readonly answer: Omit<AssessAnswer, 'took'> }
  | { readonly ok: false; readonly problems: readonly EngineProblem[] };

function assess(assessor: Assessor, { text, view }: AssessRequest): Assessed {
  const outcome = assessor.assess(text, view);
  if (!outcome.ok) return { ok: false, problems: problemsOf(outcome, view) };
  const { assessment } = outcome;
  const { findings, cautions } = withoutCharge(assessment);
  return {
    ok: true,
    answer: {
      assessment,
      findingWords: findings.map((finding) => wordsOf(finding, view)),
      cautionWords: cautions.map((finding) => wordsOf(finding, view)),
      loopAgainstWords: assessment.loopAgainst.map((each) => sayLoopAgainst(each, assessment.currency, view)),
    },
  };
}

/** What is wrong with a design, in words of the view. */
export function problemsOf(outcome: Exclude<AssessOutcome, { ok: true }>, view: UnitView): readonly EngineProblem[] {
  if (outcome.kind === 'noSolution') {
    const { code, message } = outcome.error;
    return [{ code, path: undefined, message: sentence(messageInView(message, view)) }];
  }
  return outcome.problems.map((problem) => ({ code: problem.code, path: problem.path, message: sayProblem(problem) }));
}

function wordsOf(finding: Finding, view: UnitView): WordsOfFinding {
  const { title, text, remedy, source } = sayFinding(finding, view);
  return { title, text, remedy, source };
}

/** Typed errors keep their code and words; anything else is a fault of the program and says so. */
export function problemOf(error: unknown, body: ServedRequest | CompareRequest | BriefRequest): EngineProblem {
  if (error instanceof KettlefinError) {
    const message =
      body.kind === 'cycle' || body.kind === 'secondCycle'
        ? sayCycleError(error, body.form, body.view)
        : messageInView(error.message, 'view' in body ? body.view : 'metric');
    return { code: error.code, path: undefined, message: sentence(message) };
  }
  const words = error instanceof Error ? error.message : String(error);
  return {
    code: 'programFault',
    path: undefined,
    message: `This is a fault of the program, not of the design: ${words}`,
  };
}

function sentence(words: string): string {
  const start = words.charAt(0).toUpperCase() + words.slice(1);
  return start.endsWith('.') ? start : `${start}.`;
}
