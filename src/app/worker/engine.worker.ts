// The worker that holds the engine. The page never loads it any other way.

import type { EngineReply, EngineRequest, Numbered } from './messages.ts';
import { createServe } from './serve.ts';

const serve = createServe(() => performance.now());

self.onmessage = async ({ data: { id, body } }: MessageEvent<Numbered<EngineRequest>>) => {
  self.postMessage(body.kind === 'formulas' ? await answerFormulas(id) : serve({ id, body }));
};

async function answerFormulas(id: number): Promise<EngineReply> {
  try {
    const { formulaTexts } = await import('./formulas.ts');
    return { kind: 'formulas', id, ok: true, answer: formulaTexts() };
  } catch {
    const message = 'The formulas could not be loaded. The numbers shown do not depend on them.';
    return { kind: 'formulas', id, ok: false, problems: [{ code: 'formulasMissing', path: undefined, message }] };
  }
}
