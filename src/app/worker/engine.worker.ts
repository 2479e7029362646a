// The worker that holds the engine. The page never loads it any other way.

import '../../matter/refrigerants/every-fluid.ts';
import type { EngineRequest, Numbered } from './messages.ts';
import { answerOnDemand, isOnDemand } from './on-demand.ts';
import { createServe } from './serve.ts';

const serve = createServe(() => performance.now());

self.onmessage = async ({ data: { id, body } }: MessageEvent<Numbered<EngineRequest>>) => {
  self.postMessage(isOnDemand(body) ? await answerOnDemand({ id, body }) : serve({ id, body }));
};
