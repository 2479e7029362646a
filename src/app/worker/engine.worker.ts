// The worker that holds the engine. The page never loads it any other way.

import type { BriefRequest, CompareRequest, EngineProblem, EngineReply, EngineRequest, Numbered } from './messages.ts';
import { createServe, problemOf, problemsOf } from './serve.ts';

const serve = createServe(() => performance.now());

self.onmessage = async ({ data: { id, body } }: MessageEvent<Numbered<EngineRequest>>) => {
  self.postMessage(await answered(id, body));
};

/** Parts of the engine that not every visit needs are loaded when they are first asked. */
async function answered(id: number, body: EngineRequest): Promise<EngineReply> {
  if (body.kind === 'formulas') return answerFormulas(id);
  if (body.kind === 'compare') return answerComparison(id, body);
  if (body.kind === 'brief') return answerBriefRequest(id, body);
  return serve({ id, body });
}

async function answerComparison(id: number, body: CompareRequest): Promise<EngineReply> {
  const refused = (...problems: readonly EngineProblem[]): EngineReply => ({
    kind: 'compare',
    id,
    ok: false,
    problems,
  });
  const loaded = await import('./compare.ts').catch(() => undefined);
  if (loaded === undefined) {
    const message = 'The comparison could not be loaded. Everything else works without it.';
    return refused({ code: 'comparisonMissing', path: undefined, message });
  }
  try {
    const reply = loaded.answerCompare(body.form, body.view);
    return reply.ok
      ? { kind: 'compare', id, ok: true, answer: reply.answer }
      : refused(...problemsOf(reply, body.view));
  } catch (error) {
    return refused(problemOf(error, body));
  }
}

async function answerBriefRequest(id: number, body: BriefRequest): Promise<EngineReply> {
  const refused = (problem: EngineProblem): EngineReply => ({ kind: 'brief', id, ok: false, problems: [problem] });
  const loaded = await import('./brief.ts').catch(() => undefined);
  if (loaded === undefined) {
    const message = 'The brief could not be loaded. Everything else works without it.';
    return refused({ code: 'briefMissing', path: undefined, message });
  }
  try {
    return { kind: 'brief', id, ok: true, answer: loaded.answerBrief(body.form, body.view) };
  } catch (error) {
    return refused(problemOf(error, body));
  }
}

async function answerFormulas(id: number): Promise<EngineReply> {
  try {
    const { formulaTexts } = await import('./formulas.ts');
    return { kind: 'formulas', id, ok: true, answer: formulaTexts() };
  } catch {
    const message = 'The formulas could not be loaded. The numbers shown do not depend on them.';
    return { kind: 'formulas', id, ok: false, problems: [{ code: 'formulasMissing', path: undefined, message }] };
  }
}
