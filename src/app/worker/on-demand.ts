// Answers for which a part of the engine is loaded when it is first asked, so that a first visit does not wait for it: the
// picture of a loop, the textbook cycle, the comparison of refrigerants, the brief, the formulas, the steps behind every number, the design reckoned
// with tables, what to wrap, the study of the machine.

import type { BareAssessor } from '../../assess/index.ts';
import type { UnitView } from '../../quantities/index.ts';
import type {
  BothWaysRequest,
  BriefRequest,
  CompareRequest,
  CycleRequest,
  DiagramMessage,
  EngineProblem,
  EngineReply,
  FormulasRequest,
  MachineRequest,
  Numbered,
  SecondCycleRequest,
  WorkingsRequest,
  WrappingRequest,
} from './messages.ts';
import { problemOf, problemsOf } from './problems.ts';

export type RequestOnDemand =
  | DiagramMessage
  | CycleRequest
  | SecondCycleRequest
  | CompareRequest
  | BriefRequest
  | FormulasRequest
  | WorkingsRequest
  | BothWaysRequest
  | WrappingRequest
  | MachineRequest;

/** What each part is called when it could not be loaded. */
const parts: Readonly<Record<RequestOnDemand['kind'], string>> = {
  diagram: 'The picture',
  cycle: 'The textbook cycle',
  secondCycle: 'The textbook cycle',
  compare: 'The comparison',
  brief: 'The brief',
  formulas: 'The formulas',
  workings: 'The steps of the computing',
  bothWays: 'The tables',
  wrapping: 'What to wrap',
  machine: 'The study of the machine',
};

export function isOnDemand(body: { readonly kind: string }): body is RequestOnDemand {
  return body.kind in parts;
}

/**
 * Answers one request.
 * @param message   the request
 * @param now       a clock in milliseconds, for an answer that tells times
 * @param assessor  has mostly assessed the open design last
 */
export async function answerOnDemand(
  message: Numbered<RequestOnDemand>,
  now: () => number,
  assessor: BareAssessor,
): Promise<EngineReply> {
  const { id, body } = message;
  const refused = (...problems: readonly EngineProblem[]): EngineReply => ({
    kind: body.kind,
    id,
    ok: false,
    problems,
  });
  const answer = await answering(body, now, assessor).catch(() => undefined);
  if (answer === undefined) {
    const message = `${parts[body.kind]} could not be loaded. Everything else works without it.`;
    return refused({ code: `${body.kind}Missing`, path: undefined, message });
  }
  const view: UnitView = 'view' in body ? body.view : 'metric';
  try {
    return answer(id, refused);
  } catch (error) {
    return refused(problemOf(error, view));
  }
}

type Refused = (...problems: readonly EngineProblem[]) => EngineReply;

/** Loads the part, and says how it then answers. */
async function answering(
  body: RequestOnDemand,
  now: () => number,
  assessor: BareAssessor,
): Promise<(id: number, refused: Refused) => EngineReply> {
  switch (body.kind) {
    case 'diagram': {
      const { makeDiagram } = await import('./diagram.ts');
      return (id) => ({ kind: 'diagram', id, ok: true, answer: makeDiagram(body.request) });
    }
    case 'cycle':
    case 'secondCycle': {
      const { replyToCycle } = await import('./cycle.ts');
      return (id) => replyToCycle({ id, body });
    }
    case 'compare': {
      const { answerCompare } = await import('./compare.ts');
      return (id, refused) => {
        const reply = answerCompare(body.form, body.view);
        return reply.ok
          ? { kind: 'compare', id, ok: true, answer: reply.answer }
          : refused(...problemsOf(reply, body.form.text, body.view));
      };
    }
    case 'brief': {
      const { answerBrief } = await import('./brief.ts');
      return (id) => ({ kind: 'brief', id, ok: true, answer: answerBrief(body.form, body.view) });
    }
    case 'formulas': {
      const { formulaTexts } = await import('./formulas.ts');
      return (id) => ({ kind: 'formulas', id, ok: true, answer: formulaTexts() });
    }
    case 'workings': {
      const { answerWorkings } = await import('./workings.ts');
      return (id, refused) => {
        const reply = answerWorkings(assessor, body.text, body.view);
        return reply.ok
          ? { kind: 'workings', id, ok: true, answer: reply.workings }
          : refused(...problemsOf(reply, body.text, body.view));
      };
    }
    case 'bothWays': {
      const { answerBothWays } = await import('./both-ways.ts');
      return (id, refused) => {
        const reply = answerBothWays(body.text, body.view, now);
        return reply.ok
          ? { kind: 'bothWays', id, ok: true, answer: reply.answer }
          : refused(...problemsOf(reply, body.text, body.view));
      };
    }
    case 'wrapping': {
      const { answerWrapping } = await import('./wrapping.ts');
      return (id, refused) => {
        const outcome = answerWrapping(body.text, body.view);
        return outcome.ok
          ? { kind: 'wrapping', id, ok: true, answer: outcome.reply }
          : refused(...problemsOf(outcome, body.text, body.view));
      };
    }
    case 'machine': {
      const { answerMachine } = await import('./machine.ts');
      return (id, refused) => {
        const outcome = answerMachine(body.text, body.view);
        return outcome.ok
          ? { kind: 'machine', id, ok: true, answer: outcome.reply }
          : refused(...problemsOf(outcome, body.text, body.view));
      };
    }
  }
}
