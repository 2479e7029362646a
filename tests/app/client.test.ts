// The page's side of the worker: one answer per request, newer ones supersede older ones, failures are answers.

import { describe, expect, test, vi } from 'vitest';
import { createEngineClient, type WorkerPort } from '../../src/app/worker/client.ts';
import type { ComingFluids, EngineReply, EngineRequest, Numbered, ToWorker } from '../../src/app/worker/messages.ts';
import type { DiagramRequest } from '../../src/charts/index.ts';

class FakeWorker implements WorkerPort {
  onmessage: WorkerPort['onmessage'] = null;
  onerror: WorkerPort['onerror'] = null;
  readonly received: Numbered<EngineRequest>[] = [];
  readonly told: ComingFluids[] = [];
  ended = false;

  postMessage(message: ToWorker): void {
    if ('coming' in message) this.told.push(message);
    else this.received.push(message);
  }

  terminate(): void {
    this.ended = true;
  }

  answer(id: number): void {
    this.onmessage?.({ data: { kind: 'diagram', id, ok: true, answer: { id } } as unknown as EngineReply });
  }
}

const request = (refrigerant: string): Extract<EngineRequest, { kind: 'diagram' }> => ({
  kind: 'diagram',
  request: { refrigerant } as DiagramRequest,
  view: 'metric',
});

function setUp() {
  const workers: FakeWorker[] = [];
  let time = 0;
  const client = createEngineClient(
    () => {
      const worker = new FakeWorker();
      workers.push(worker);
      return worker;
    },
    () => time,
  );
  return { client, workers, passTime: (milliseconds: number) => (time += milliseconds) };
}

describe('asking the engine', () => {
  test('what will be asked about is told before, to the same worker', async () => {
    const { client, workers } = setUp();
    client.prepare(['R290']);
    expect(workers[0]?.told).toEqual([{ coming: ['R290'] }]);
    const asked = client.ask(request('R290'));
    expect(workers).toHaveLength(1);
    workers[0]?.answer(workers[0].received[0]?.id ?? 0);
    expect((await asked).outcome).toBe('answered');
  });

  test('a worker that could not begin is begun anew when something is asked', async () => {
    const { client, workers } = setUp();
    client.prepare(['R290']);
    workers[0]?.onerror?.({});
    const asked = client.ask(request('R290'));
    expect(workers).toHaveLength(2);
    workers[1]?.answer(workers[1].received[0]?.id ?? 0);
    expect((await asked).outcome).toBe('answered');
  });

  test('an answer reaches who asked', async () => {
    const { client, workers } = setUp();
    const asked = client.ask(request('R134a'));
    workers[0]?.answer(workers[0].received[0]?.id ?? 0);
    expect((await asked).outcome).toBe('answered');
  });

  test('a waiting request is superseded by a newer one and never sent', async () => {
    const { client, workers } = setUp();
    const first = client.ask(request('R134a'));
    const second = client.ask(request('R290'));
    const third = client.ask(request('R600a'));
    expect((await second).outcome).toBe('superseded');
    workers[0]?.answer(workers[0].received[0]?.id ?? 0);
    expect((await first).outcome).toBe('superseded');
    expect(workers[0]?.received.length).toBe(2);
    workers[0]?.answer(workers[0].received[1]?.id ?? 0);
    expect((await third).outcome).toBe('answered');
  });

  test('a superseded request that runs on and on ends its worker; the newer one gets a fresh one', async () => {
    vi.useFakeTimers();
    const { client, workers, passTime } = setUp();
    const first = client.ask(request('R134a'));
    passTime(1000);
    const second = client.ask(request('R290'));
    vi.advanceTimersByTime(1);
    vi.useRealTimers();
    expect((await first).outcome).toBe('superseded');
    expect(workers[0]?.ended).toBe(true);
    workers[1]?.answer(workers[1].received[0]?.id ?? 0);
    expect((await second).outcome).toBe('answered');
  });

  test('cancel ends what runs and what waits', async () => {
    const { client, workers } = setUp();
    const first = client.ask(request('R134a'));
    const second = client.ask(request('R290'));
    client.cancel();
    expect((await first).outcome).toBe('superseded');
    expect((await second).outcome).toBe('superseded');
    expect(workers[0]?.ended).toBe(true);
  });

  test('a worker that fails answers with a refusal, and the next request starts another', async () => {
    const { client, workers } = setUp();
    const first = client.ask(request('R134a'));
    workers[0]?.onerror?.({ message: 'broken' });
    const outcome = await first;
    expect(outcome.outcome === 'refused' && outcome.problems[0]?.code).toBe('workerFailed');
    void client.ask(request('R290'));
    expect(workers.length).toBe(2);
  });

  test('a late answer to a request that was given up is dropped', async () => {
    const { client, workers } = setUp();
    const first = client.ask(request('R134a'));
    client.cancel();
    workers[0]?.answer(workers[0].received[0]?.id ?? 0);
    expect((await first).outcome).toBe('superseded');
  });
});
