// data/measures.json: every measure reads, names its materials, and says that its cost has no source; broken files are refused
// by place.

import { describe, expect, it } from 'vitest';
import raw from '../../data/measures.json';
import { costOf, measureCost, readMeasures, usualMeasures } from '../../src/accounts/index.ts';

type Raw = typeof raw;
type Entry = Record<string, unknown>;

function broken(change: (file: { measures: Record<string, Entry> } & Entry) => void): unknown {
  const file = structuredClone(raw) as unknown as { measures: Record<string, Entry> } & Entry;
  change(file);
  return file;
}

describe('usual measures', () => {
  it('are at least ten, of every kind', () => {
    expect(usualMeasures.measures.length).toBeGreaterThanOrEqual(10);
    const kinds = new Set(usualMeasures.measures.map(({ work }) => work.kind));
    expect([...kinds].sort()).toEqual(['board', 'calmerSurface', 'cooler', 'doubleGlazing', 'lid', 'nightCover']);
  });

  it('say that their costs have no source', () => {
    expect(usualMeasures.source).toBe('common practice, no source');
  });

  it('cost by area and volume: 18 + 8 · 1.2 + 400 · 1.2 · 0.025 = 39.6', () => {
    expect(measureCost(1, 18, 8, 1.2, 400, 0.025)).toBeCloseTo(39.6, 12);
    const board = usualMeasures.measures.find(({ id }) => id === 'foilBoardBack')!;
    const { low, likely, high } = costOf(board.cost, { area: 1.2, thickness: 0.025 });
    expect(likely).toBeCloseTo(10 + 8 * 1.2 + 400 * 1.2 * 0.025, 12);
    expect(low).toBeLessThan(likely);
    expect(high).toBeGreaterThan(likely);
  });

  const faults: readonly (readonly [string, (file: { measures: Record<string, Entry> } & Entry) => void, RegExp])[] = [
    ['no measures', (file) => Object.assign(file, { measures: {} }), /measures: at least one/],
    [
      'an unknown material',
      (file) => Object.assign(file.measures.mat!.work as Entry, { material: 'wadding' }),
      /mat\.work\.material/,
    ],
    [
      'a thickness of 0',
      (file) => Object.assign(file.measures.mat!.work as Entry, { thickness: 0 }),
      /mat\.work\.thickness/,
    ],
    [
      'an unknown kind',
      (file) => Object.assign(file.measures.mat!.work as Entry, { kind: 'magic' }),
      /mat\.work\.kind/,
    ],
    [
      'an unknown place',
      (file) => Object.assign(file.measures.mat!.work as Entry, { where: ['above'] }),
      /mat\.work\.where/,
    ],
    ['two panes without a gap', (file) => delete (file.measures.doubleLid!.work as Entry).gap, /doubleLid\.work\.gap/],
    ['a share above 1', (file) => Object.assign(file.measures.singleLid!.work as Entry, { openShare: 2 }), /openShare/],
    [
      'a cost upside down',
      (file) => Object.assign(file.measures.mat!.cost as Entry, { fixed: { low: 3, likely: 2, high: 4 } }),
      /mat\.cost\.fixed/,
    ],
    [
      'a cost by the hour',
      (file) => Object.assign(file.measures.mat!.cost as Entry, { perHour: 2 }),
      /mat\.cost\.perHour/,
    ],
    ['no name', (file) => delete file.measures.mat!.name, /mat\.name/],
  ];
  it.each(faults)('refuses %s', (_fault, change, message) => {
    expect(() => readMeasures(broken(change))).toThrow(message);
  });

  it('reads its own file to the same measures', () => {
    expect(readMeasures(raw as Raw)).toEqual(usualMeasures);
  });
});
