// The heat path: what comes in goes out, ribbons are as wide as their watts, labels have room.

import { describe, expect, test } from 'vitest';
import { heatPathFlows, waysOut } from '../../src/app/heat-path/flows.ts';
import { layHeatPath } from '../../src/app/heat-path/layout.ts';
import { wordsOfNodes } from '../../src/app/heat-path/nodes.ts';
import { withWorkingsToCome } from '../../src/app/state/workings.ts';
import { answerTo, exampleFiles, exampleText, replyTo } from './answers.ts';

const frame = { width: 1200, height: 420, nodeLength: 88, spacing: 52, before: 48, after: 96, above: 62 };

describe.each(exampleFiles)('%s', (file) => {
  const { assessment } = answerTo(file);
  const path = heatPathFlows(assessment);
  const sum = (pick: (flow: (typeof path.flows)[number]) => boolean) =>
    path.flows.filter(pick).reduce((total, flow) => total + flow.watts, 0);

  test('heat into the water equals heat out of it', () => {
    const into = sum((flow) => flow.to === 'water');
    const out = sum((flow) => flow.from === 'water');
    expect(into).toBeGreaterThan(0);
    expect(Math.abs(into - out)).toBeLessThan(0.01 * out);
  });

  test('what the machine takes, it gives', () => {
    const into = sum((flow) => flow.to === 'machine');
    const out = sum((flow) => flow.from === 'machine');
    expect(Math.abs(into - out)).toBeLessThan(1e-6 * Math.max(1, into));
  });

  test('gathering small ways out loses no heat', () => {
    const all = assessment.flows.paths.reduce((total, way) => total + Math.max(0, way.heat), 0);
    expect(waysOut(assessment).reduce((total, way) => total + way.watts, 0)).toBeCloseTo(all, 6);
  });

  test('every ribbon is as wide as its watts on one scale', () => {
    const { ribbons } = layHeatPath(path.flows, frame);
    expect(ribbons.length).toBeGreaterThan(5);
    const scales = ribbons.map((ribbon) => ribbon.thickness / ribbon.watts);
    for (const scale of scales) expect(scale).toBeCloseTo(scales[0] ?? 0, 9);
  });

  test('every node has words and a number, and neighbours of a column stand apart', () => {
    const { nodes } = layHeatPath(path.flows, frame);
    const words = wordsOfNodes(assessment, path, 'metric');
    for (const node of nodes) expect(words.get(node.name)?.number, node.name).toMatch(/\d/);
    for (const name of ['source', 'socket', 'machine', 'water'] as const) {
      expect(words.get(name)?.range, name).toMatch(/\d.* to .*\d/);
    }
    const out = nodes.filter((node) => node.name.startsWith('out.')).toSorted((a, b) => a.y - b.y);
    for (let index = 1; index < out.length; index++) {
      const above = out[index - 1];
      const below = out[index];
      if (above && below) expect(below.y - (above.y + above.height)).toBeGreaterThan(20);
    }
  });
});

test('a room warmer than the water: what comes in by itself and is too much is drawn, and the sums still close', () => {
  const design = JSON.parse(exampleText('frag-tank-cold-garage.json'));
  design.tank.waterTemperature = '18 °C';
  design.room = { temperature: '27 °C' };
  const reply = replyTo(JSON.stringify(design));
  if (reply.kind !== 'assess' || !reply.ok) throw new Error('no answer');
  const { assessment } = withWorkingsToCome(reply.answer);
  const path = heatPathFlows(assessment);
  const sum = (pick: (flow: (typeof path.flows)[number]) => boolean) =>
    path.flows.filter(pick).reduce((total, flow) => total + flow.watts, 0);
  expect(path.fromRoom).toBeGreaterThan(0);
  expect(path.surplus).toBeGreaterThan(0);
  expect(sum((flow) => flow.to === 'water')).toBeCloseTo(
    sum((flow) => flow.from === 'water'),
    6,
  );
  const words = wordsOfNodes(assessment, path, 'metric');
  expect(words.get('out.surplus')?.stateWord).toBe('warms the water');
});

test('no flow at all is an empty picture, not an error', () => {
  expect(layHeatPath([], frame)).toEqual({ nodes: [], ribbons: [] });
});
