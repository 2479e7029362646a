// One message of the page after another: the coefficient files of the fluids it is about are fetched, then the engine
// answers. Every request gets one reply, in the order they came, whatever fails on the way.

import { BareAssessor } from '../../assess/index.ts';
import { ensureParts } from './engine-parts.ts';
import { ensureFluids } from './fluids.ts';
import { fluidsNamed, fluidsWished } from './fluids-named.ts';
import type { EngineProblem, EngineReply, EngineRequest, Numbered } from './messages.ts';
import { answerOnDemand, isOnDemand } from './on-demand.ts';
import { missingPart, problemOf } from './problems.ts';
import { createServe } from './serve.ts';

export type Answering = (message: Numbered<EngineRequest>) => Promise<EngineReply>;

/**
 * @param now     a clock in milliseconds, for telling how long an answer took
 * @param ensure  fetches coefficient files and answers the names of those that could not be fetched
 */
export function createAnswering(now: () => number, ensure: typeof ensureFluids = ensureFluids): Answering {
  const assessor = new BareAssessor();
  const serve = createServe(now, assessor);
  const answer = async ({ id, body }: Numbered<EngineRequest>): Promise<EngineReply> => {
    const refused = (problem: EngineProblem): EngineReply => ({ kind: body.kind, id, ok: false, problems: [problem] });
    try {
      const missing = await ensure(fluidsNamed(body));
      if (missing.length > 0) return refused(missingFluids(missing));
      const problem = await ensureParts(body);
      if (problem !== undefined) return refused(problem);
      await ensure(fluidsWished(body));
      return isOnDemand(body) ? await answerOnDemand({ id, body }, now, assessor) : serve({ id, body });
    } catch (error) {
      return refused(problemOf(error, 'view' in body ? body.view : 'metric'));
    }
  };
  let last: Promise<unknown> = Promise.resolve();
  return (message) => {
    const reply = last.then(() => answer(message));
    last = reply;
    return reply;
  };
}

function missingFluids(names: readonly string[]): EngineProblem {
  return missingPart('fluidMissing', `The equation of ${names.join(' and of ')}`);
}
