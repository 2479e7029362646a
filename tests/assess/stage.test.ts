// The stage runner: recomputes only what depends on a change, and gives a stage nothing it did not declare.

import { expect, test } from 'vitest';
import { StageRunner, stage } from '../../src/assess/stage.ts';
import type { StagedDesign } from '../../src/assess/stages/engine-assumptions.ts';

interface Results {
  room: number;
  tank: number;
  both: number;
}

const stages = [
  stage<Results, 'room', 'room', never>('room', ['room'], [], ({ room }) => room.temperature),
  stage<Results, 'tank', 'tank', never>('tank', ['tank'], [], ({ tank }) => tank.waterTemperature),
  stage<Results, 'both', never, 'room' | 'tank'>(
    'both',
    [],
    ['room', 'tank'],
    (_design, { room, tank }) => tank - room,
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

test('a stage sees only the parts of the design it declared', () => {
  const seen: unknown[] = [];
  const spy = stage<Results, 'room', 'room', never>('room', ['room'], [], (slice) => {
    seen.push(Object.keys(slice));
    return 0;
  });
  new StageRunner<Results>([spy]).run(design(290, 299));
  expect(seen).toEqual([['room']]);
});
