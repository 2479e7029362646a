// The worker that holds the engine. The page never loads it any other way.

import { createAnswering } from './answering.ts';
import { ensureFluids } from './fluids.ts';
import type { ToWorker } from './messages.ts';

const answer = createAnswering(() => performance.now());

self.onmessage = async ({ data }: MessageEvent<ToWorker>) => {
  if ('coming' in data) await ensureFluids(data.coming);
  else self.postMessage(await answer(data));
};
