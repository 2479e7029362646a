// Answers the page's requests with the engine. No worker in it: the tests call it directly, in Node. One assessor is
// kept, so that an edit computes only what depends on it. Messages of the engine are said in the reader's units.

import { BareAssessor, sayFinding, sayLoopAgainst, withoutCharge } from '../../assess/index.ts';
import type { Finding, UnitView } from '../../quantities/index.ts';
import type {
  AssessRequest,
  BareAnswer,
  EngineProblem,
  EngineReply,
  EngineRequest,
  Numbered,
  WordsOfFinding,
} from './messages.ts';
import type { RequestOnDemand } from './on-demand.ts';
import { problemOf, problemsOf } from './problems.ts';

/** All requests but those whose answer is loaded on demand. */
export type ServedRequest = Exclude<EngineRequest, RequestOnDemand>;

export type Serve = (message: Numbered<ServedRequest>) => EngineReply;

/**
 * @param now       a clock in milliseconds, for telling how long an answer took
 * @param assessor  remembers the last design
 */
export function createServe(now: () => number, assessor = new BareAssessor()): Serve {
  return ({ id, body }) => {
    const since = now();
    try {
      switch (body.kind) {
        case 'assess': {
          const outcome = assess(assessor, body);
          if (!outcome.ok) return { kind: 'assess', id, ok: false, problems: outcome.problems };
          return { kind: 'assess', id, ok: true, answer: { ...outcome.answer, took: now() - since } };
        }
        case 'range':
          return { kind: 'range', id, ok: true, answer: assessor.rangeOf(body.result) };
      }
    } catch (error) {
      return { kind: body.kind, id, ok: false, problems: [problemOf(error, 'view' in body ? body.view : 'metric')] };
    }
  };
}

type Assessed =
  | { readonly ok: true; readonly answer: Omit<BareAnswer, 'took'> }
  | { readonly ok: false; readonly problems: readonly EngineProblem[] };

function assess(assessor: BareAssessor, { text, view }: AssessRequest): Assessed {
  const outcome = assessor.assess(text, view);
  if (!outcome.ok) return { ok: false, problems: problemsOf(outcome, text, view) };
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

function wordsOf(finding: Finding, view: UnitView): WordsOfFinding {
  const { title, text, remedy, source } = sayFinding(finding, view);
  return { title, text, remedy, source };
}
