// Resolving: typed values in SI, defaults with their ranges and sources, what counts as an assumption, and the plain design.

import { describe, expect, test } from 'vitest';
import {
  type DesignDocument,
  parseDesign,
  plainDesign,
  resolveDesign,
  uncertainInputs,
  withFollowers,
  withValue,
} from '../../src/design/index.ts';
import { InputError } from '../../src/numerics/index.ts';
import { tankLoad } from '../../src/tank/index.ts';
import { demoTexts } from '../designs.ts';
import { documentOf, type Loose, measuredDesign, sizedDesign } from './examples.ts';

const resolved = (value: Loose) => resolveDesign(documentOf(value));

describe('defaults', () => {
  test('of the room follow its temperature and the electricity price', () => {
    const { design } = resolved(sizedDesign());
    expect(design.room.coldest).toMatchObject({ low: 290.15, likely: 291.15, high: 292.15, origin: 'assumed' });
    expect(design.room.warmest).toMatchObject({ low: 296.15, likely: 298.15, high: 301.15 });
    const { low, likely, high } = design.room.houseHeatPrice;
    for (const [value, expected] of [
      [low, 0.25e-7],
      [likely, 0.4e-7],
      [high, 1e-7],
    ] as const) {
      expect(value / expected).toBeCloseTo(1, 12);
    }
    const { low: dry, likely: usual, high: damp, origin } = design.room.relativeHumidity;
    for (const [value, expected] of [
      [dry, 0.35],
      [usual, 0.5],
      [damp, 0.6],
    ] as const) {
      expect(value).toBeCloseTo(expected, 12);
    }
    expect(origin).toBe('assumed');
  });

  test('a summer never colder than the usual temperature', () => {
    const design = sizedDesign();
    design.room.temperature = '27 °C';
    const { warmest } = resolved(design).design.room;
    expect(warmest.low).toBeCloseTo(300.15, 9);
    expect(warmest.likely).toBeCloseTo(300.15, 9);
    expect(warmest.high).toBeCloseTo(301.15, 9);
  });

  test('a measurement is taken in the usual room at the usual water temperature', () => {
    const { load } = resolved(measuredDesign()).design.tank;
    expect(load).toMatchObject({
      kind: 'measured',
      energy: { likely: 38 * 3.6e6, origin: 'typed' },
      duration: { likely: 604800 },
      roomTemperature: { likely: 293.15, origin: 'assumed' },
      waterTemperature: { likely: 299.15, origin: 'assumed' },
    });
  });

  test('the water stays below the rim at every end', () => {
    const design = sizedDesign();
    design.tank.load.height = '48 to 52 cm';
    const resolution = resolved(design);
    const plain = plainDesign(resolution.design);
    const inputs = uncertainInputs(resolution).filter(({ path }) => /^tank.*(?:height|waterDepth)/.test(path));
    expect(inputs.map(({ path }) => path)).toEqual(['tank.load.height', 'tank.load.waterDepth']);
    for (const { path, estimate } of inputs) {
      for (const end of ['low', 'likely', 'high'] as const) {
        const { load } = withFollowers(plain, resolution.followers, path, estimate[end]).tank;
        if (load.kind !== 'rectangular') throw new Error('expected a rectangular tank');
        const share = path === 'tank.load.height' || end === 'likely' ? 0.95 : { low: 0.92, high: 0.98 }[end];
        expect(load.waterDepth / load.height).toBeCloseTo(share, 9);
      }
    }
  });

  test('of the condenser and its pump follow the arrangement', () => {
    expect(resolved(sizedDesign()).design.exchangers.condenserApproach).toMatchObject({ low: 7, likely: 10, high: 14 });
    const coil = { ...sizedDesign(), exchangers: { condenserArrangement: 'coilInTank' } };
    expect(resolved(coil).design.exchangers.condenserApproach).toMatchObject({ low: 4, likely: 6, high: 9 });
    expect(resolved(coil).design.power.loopPump).toMatchObject({ low: 0, likely: 0, high: 0 });
  });

  test('a typed value replaces the default and is no assumption', () => {
    const design = sizedDesign();
    design.machine.compressor.clearanceRatio = '0.02 to 0.04';
    const { design: result, assumptions } = resolved(design);
    expect(result.machine.compressor.clearanceRatio).toEqual({ low: 0.02, likely: 0.03, high: 0.04, origin: 'typed' });
    expect(assumptions.map(({ path }) => path)).not.toContain('machine.compressor.clearanceRatio');
  });
});

describe('assumptions', () => {
  test('name path, label, value and source; nothing typed is among them', () => {
    const { assumptions } = resolved(sizedDesign());
    const paths = assumptions.map(({ path }) => path);
    expect(new Set(paths).size).toBe(paths.length);
    expect(paths).toContain('source.kind');
    expect(paths).toContain('room.coldest');
    expect(paths).not.toContain('room.temperature');
    for (const assumption of assumptions) {
      expect(assumption.source.length).toBeGreaterThan(4);
      if (assumption.kind === 'choice') expect(assumption.choiceLabel.length).toBeGreaterThan(1);
      else expect(assumption.estimate).toMatchObject({ origin: 'assumed' });
    }
  });

  test('what nothing depends on is neither listed nor varied', () => {
    const open = sizedDesign();
    open.tank.load.lid = 'none';
    const resolution = resolved(open);
    const paths = resolution.assumptions.map(({ path }) => path);
    for (const path of ['tank.load.lidMaterial', 'tank.load.lidThickness', 'tank.load.lightHours']) {
      expect(paths).not.toContain(path);
      expect(uncertainInputs(resolution).map((input) => input.path)).not.toContain(path);
    }
    expect(resolved(sizedDesign()).assumptions.map(({ path }) => path)).toContain('tank.load.lidThickness');
  });

  test('the gaps of a lid are assumed and varied where it is loose, and only there', () => {
    const gaps = 'tank.load.lidOpenShare';
    for (const lid of ['none', 'tight', 'loose']) {
      const document = sizedDesign();
      document.tank.load.lid = lid;
      const resolution = resolved(document);
      expect(resolution.assumptions.some(({ path }) => path === gaps)).toBe(lid === 'loose');
      expect(uncertainInputs(resolution).some(({ path }) => path === gaps)).toBe(lid === 'loose');
    }
  });
});

describe.each(Object.entries(demoTexts))('%s', (_, text) => {
  const parsed = parseDesign(text);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems));
  const resolution = resolveDesign(parsed.document);
  const { design } = resolution;
  const plain = plainDesign(design);

  test('every estimate is ordered and finite, and the plain design holds its likely value', () => {
    const inputs = uncertainInputs(resolution);
    expect(inputs.length).toBeGreaterThan(10);
    for (const { path, estimate, label } of inputs) {
      expect(estimate.low).toBeLessThanOrEqual(estimate.likely);
      expect(estimate.likely).toBeLessThanOrEqual(estimate.high);
      expect(label).not.toBe('');
      expect(numberAt(plain, path)).toBe(estimate.likely);
    }
    expect(leaves(plain).every((leaf) => typeof leaf === 'string' || Number.isFinite(leaf))).toBe(true);
  });

  test('one value can be replaced, and all beside its path is shared', () => {
    for (const { path, estimate } of uncertainInputs(resolution)) {
      const changed = withValue(plain, path, estimate.high);
      expect(numberAt(changed, path)).toBe(estimate.high);
      const [touched] = path.split('.');
      for (const part of Object.keys(plain) as (keyof typeof plain)[]) {
        if (part !== touched) expect(changed[part]).toBe(plain[part]);
      }
    }
    expect(plainDesign(design)).toEqual(plain);
  });
});

test('withValue refuses a path without a number and a value that is none', () => {
  const plain = plainDesign(resolved(sizedDesign()).design);
  for (const path of [
    'tank.load.energy',
    'tank.load',
    'machine.refrigerant',
    '',
    '__proto__.x',
    'tank.load.length.x',
  ]) {
    expect(() => withValue(plain, path, 1), path).toThrow(InputError);
  }
  expect(() => withValue(plain, 'tank.waterTemperature', Number.NaN)).toThrow(InputError);
});

test('a measured load goes into the tank model as it is named there', () => {
  const { load } = plainDesign(resolved(measuredDesign()).design).tank;
  if (load.kind !== 'measured') throw new Error('expected a measurement');
  const heat = tankLoad(
    { ...load, salinity: 0, pumpHeat: 9, lightHeat: 0 },
    { waterTemperature: 299.15, roomTemperature: 293.15, roomRelativeHumidity: 0.5, atmosphericPressure: 101325 },
  );
  // 38 kWh in 7 days is 226 W of heater, under the very conditions it was measured in.
  expect(heat.load).toBeCloseTo((38 * 3.6e6) / 604800, 6);
});

test('a document that was never checked is refused with the path', () => {
  const broken = { ...sizedDesign(), room: { temperature: 'warm' } } as unknown as DesignDocument;
  expect(() => resolveDesign(broken)).toThrow(/room\.temperature/);
});

function numberAt(tree: unknown, path: string): number {
  let node = tree;
  for (const key of path.split('.')) node = (node as Readonly<Record<string, unknown>>)[key];
  return node as number;
}

function leaves(tree: unknown): readonly (string | number)[] {
  if (typeof tree !== 'object' || tree === null) return [tree as string | number];
  return Object.values(tree).flatMap(leaves);
}
