// The page's side of the worker: asks, and answers each request once. A newer request of the same kind supersedes an
// older one: a waiting one is never sent, a running one is dropped, and when it has run for long the worker is ended
// and started afresh, so that a person's latest edit never waits behind an answer nobody wants.

import type { EngineAnswers, EngineProblem, EngineReply, EngineRequest, ToWorker } from './messages.ts';

export type Outcome<Kind extends keyof EngineAnswers> =
  | { readonly outcome: 'answered'; readonly answer: EngineAnswers[Kind] }
  | { readonly outcome: 'refused'; readonly problems: readonly EngineProblem[] }
  | { readonly outcome: 'superseded' };

export interface EngineClient {
  ask<Kind extends keyof EngineAnswers>(request: Extract<EngineRequest, { kind: Kind }>): Promise<Outcome<Kind>>;
  /** Starts the worker, and lets it fetch what these refrigerants need, before anything is asked. */
  prepare(fluids: readonly string[]): void;
  /** Gives up whatever runs or waits; those requests end as superseded. */
  cancel(): void;
}

/** The part of a Worker that the client uses. */
export interface WorkerPort {
  postMessage(message: ToWorker): void;
  terminate(): void;
  onmessage: ((event: { data: EngineReply }) => void) | null;
  onerror: ((event: { message?: string }) => void) | null;
}

interface Asked {
  readonly id: number;
  readonly request: EngineRequest;
  readonly settle: (outcome: Outcome<keyof EngineAnswers>) => void;
}

/** A superseded request that has run longer than this ends its worker [ms]. */
const patience = 400;

export function createEngineClient(startWorker: () => WorkerPort, now: () => number): EngineClient {
  let worker: WorkerPort | undefined;
  let running: (Asked & { readonly since: number }) | undefined;
  let waiting: Asked[] = [];
  let lastId = 0;
  let hurry: ReturnType<typeof setTimeout> | undefined;

  const next = () => {
    const asked = waiting.shift();
    if (asked === undefined) return;
    worker ??= listen(startWorker());
    running = { ...asked, since: now() };
    worker.postMessage({ id: asked.id, body: asked.request });
  };

  const finish = (id: number, outcome: Outcome<keyof EngineAnswers>) => {
    if (running?.id !== id) return;
    const { settle, request } = running;
    running = undefined;
    clearTimeout(hurry);
    const unwanted = waiting.some((asked) => asked.request.kind === request.kind);
    settle(unwanted ? { outcome: 'superseded' } : outcome);
    next();
  };

  const restart = () => {
    worker?.terminate();
    worker = undefined;
    const dropped = running;
    running = undefined;
    dropped?.settle({ outcome: 'superseded' });
    next();
  };

  const listen = (port: WorkerPort): WorkerPort => {
    port.onmessage = ({ data }) => {
      finish(
        data.id,
        data.ok
          ? ({ outcome: 'answered', answer: data.answer } as Outcome<keyof EngineAnswers>)
          : { outcome: 'refused', problems: data.problems },
      );
    };
    port.onerror = ({ message }) => {
      const failed = running;
      worker?.terminate();
      worker = undefined;
      running = undefined;
      failed?.settle({
        outcome: 'refused',
        problems: [
          { code: 'workerFailed', path: undefined, message: message ?? 'the calculation could not be started' },
        ],
      });
      next();
    };
    return port;
  };

  return {
    ask(request) {
      return new Promise((resolve) => {
        lastId += 1;
        for (const old of waiting.filter((asked) => asked.request.kind === request.kind)) {
          old.settle({ outcome: 'superseded' });
        }
        waiting = waiting.filter((asked) => asked.request.kind !== request.kind);
        waiting.push({ id: lastId, request, settle: resolve as Asked['settle'] });
        if (running === undefined) next();
        else if (running.request.kind === request.kind) {
          clearTimeout(hurry);
          hurry = setTimeout(restart, Math.max(0, patience - (now() - running.since)));
        }
      });
    },
    prepare(fluids) {
      worker ??= listen(startWorker());
      worker.postMessage({ coming: fluids });
    },
    cancel() {
      const dropped = waiting;
      waiting = [];
      clearTimeout(hurry);
      for (const asked of dropped) asked.settle({ outcome: 'superseded' });
      restart();
    },
  };
}
