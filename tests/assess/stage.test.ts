// The stage runner: recomputes only what depends on a change, and gives a stage nothing it did not declare.

import { expect, test } from 'vitest';
import { StageRunner, stageOf } from '../../src/assess/stage.ts';
import type { StagedDesign } from '../../src/assess/stages/engine-assumptions.ts';

interface Results {
  room: number;
  tank: number;
  both: number;
}

const stage = stageOf<Results>();

const stages = [
  stage(
    'room',
    ({ room }) => ({ temperature: room.temperature }),
    [],
    ({ temperature }) => temperature,
  ),
  stage(
    'tank',
    ({ tank }) => ({ temperature: tank.waterTemperature }),
    [],
    ({ temperature }) => temperature,
  ),
  stage(
    'both',
    () => ({}),
    ['room', 'tank'],
    (_slice, { room, tank }) => tank - room,
  ),
];

function design(room: number, water: number): StagedDesign {
  return { room: { temperature: room }, tank: { waterTemperature: water } } as unknown as StagedDesign;
}

test('an edit runs the stages that read it and those that need them, nothing else', () => {
  const runner = new StageRunner<Results>(stages);
  expect(runner.run(design(290, 299)).both).toBe(9);
  expect(runner.counts()).toEqual({ room: 1, tank: 1, both: 1 });
  expect(runner.run(design(291, 299)).both).toBe(8);
  expect(runner.counts()).toEqual({ room: 2, tank: 1, both: 2 });
  runner.run(design(291, 299));
  expect(runner.counts()).toEqual({ room: 2, tank: 1, both: 2 });
});

test('a probe leaves the remembered run alone', () => {
  const runner = new StageRunner<Results>(stages);
  runner.run(design(290, 299));
  expect(runner.probe(design(280, 299)).both).toBe(19);
  expect(runner.probe(design(290, 299)).both).toBe(9);
  expect(runner.counts()).toEqual({ room: 2, tank: 1, both: 2 });
});

test('a stage sees only what it reads of the design and the results it needs', () => {
  const seen: unknown[] = [];
  const first = stage(
    'room',
    ({ room }) => ({ room }),
    [],
    (slice, results) => {
      seen.push(Object.keys(slice), Object.keys(results));
      return 1;
    },
  );
  const second = stage(
    'tank',
    () => ({}),
    ['room'],
    (slice, results) => {
      seen.push(Object.keys(slice), Object.keys(results));
      return 2;
    },
  );
  new StageRunner<Results>([first, second]).run(design(290, 299));
  expect(seen).toEqual([['room'], [], [], ['room']]);
});

test('an equal design that is another object runs nothing again', () => {
  const runner = new StageRunner<Results>(stages);
  runner.run(design(290, 299));
  runner.run(structuredClone(design(290, 299)));
  expect(runner.counts()).toEqual({ room: 1, tank: 1, both: 1 });
});
