// The worker that holds the engine. The page never loads it any other way.

import type { EngineRequest, Numbered } from './messages.ts';
import { createServe } from './serve.ts';

const serve = createServe(() => performance.now());

self.onmessage = ({ data }: MessageEvent<Numbered<EngineRequest>>) => {
  self.postMessage(serve(data));
};
