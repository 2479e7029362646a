// The station What to wrap, its parts that need no page: rows of the waterfall, marks of a measure, changes of the list, the
// curve of the last inch, the sentences.

import { describe, expect, test } from 'vitest';
import {
  countOf,
  hasOwnMeasures,
  placeOf,
  withMeasure,
  withOffered,
  withoutMeasure,
  withUsual,
} from '../../src/app/wrapping/list-edits.ts';
import { heatPumpStepsOf, marksOf } from '../../src/app/wrapping/marks.ts';
import { waterfallRows, waterfallScale } from '../../src/app/wrapping/waterfall.ts';
import { sayPayback, sayWrapping } from '../../src/assess/index.ts';
import { lastInchChart } from '../../src/charts/index.ts';
import { type DesignDocument, type EditResult, parseDesign, serialiseDesign } from '../../src/design/index.ts';
import { exampleText } from './answers.ts';
import { inventedWrapping as answer } from './invented-wrapping.ts';

function documentOf(outcome: EditResult | ReturnType<typeof parseDesign>): DesignDocument {
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.document;
}

function without(document: DesignDocument, of: typeof answer, id: string): DesignDocument {
  return documentOf(withoutMeasure(document, of, id)!);
}

/** The answer that the list of a design would have. */
function ownedBy({ wrapping }: DesignDocument): typeof answer {
  const items = (wrapping?.measures ?? []) as unknown as (typeof answer.measures)[number]['item'][];
  const measures = items.map((item, index) => ({
    ...answer.measures[0]!,
    id: `own.${index}`,
    path: `wrapping.measures.${index}`,
    item,
  }));
  return { ...answer, measures };
}

const bare = documentOf(withUsual(documentOf(parseDesign(exampleText('reef-in-the-study.json')))));
const mat = { kind: 'mat', material: 'extrudedPolystyrene', thickness: '10 mm', cost: '12 EUR' };

describe('the waterfall', () => {
  const rows = waterfallRows(answer);

  test('what leaves less what comes by itself is what is needed', () => {
    const amount = (look: string) => rows.find((row) => row.look === look)!.amount;
    expect(amount('leaving')).toBe(400);
    expect(amount('gains')).toBe(50);
    expect(amount('leaving') - amount('gains')).toBe(amount('needed'));
  });

  test('each measure begins where the one before it ended, and all of them end at what is left', () => {
    const needed = rows.findIndex(({ look }) => look === 'needed');
    const steps = rows.slice(needed + 1, -1);
    expect(steps.map(({ amount }) => amount)).toEqual([200, 60, 20]);
    expect(steps.map(({ from }) => from)).toEqual(rows.slice(needed, -2).map(({ passedOn }) => passedOn));
    expect(rows.at(-1)!.to).toBe(steps.at(-1)!.to);
    expect(rows.at(-1)!.band).toEqual(answer.inTurn.at(-1)!.after.load);
  });

  test('a tank whose pumps bring nothing has no row for that', () => {
    const paths = [{ path: 'all', label: 'all', heat: answer.asItIs.load.likely }];
    const without = waterfallRows({ ...answer, asItIs: { ...answer.asItIs, paths } });
    expect(without.map(({ look }) => look)).toEqual(['needed', 'saves', 'saves', 'savesWithoutPaying', 'left']);
  });

  test('what adds nothing to those before it has no row', () => {
    const [lid] = answer.waterfall.slice(1);
    const nothing = { ...lid!, id: 'usual.other', from: 70, to: 70 };
    const bars = answer.waterfall.toSpliced(4, 0, nothing);
    expect(waterfallRows({ ...answer, waterfall: bars })).toEqual(rows);
  });

  test('the scale holds every bar, also of a tank that gets more than it loses', () => {
    expect(waterfallScale(rows)).toEqual([0, 400]);
    const [low] = waterfallScale([{ ...rows[0]!, from: 0, to: -30 }]);
    expect(low).toBe(-30);
  });
});

describe('marks', () => {
  test('pays, stops paying with a heat pump, does not pay; each in words', () => {
    const words = answer.measures.map(({ id }) => marksOf(answer, id).map(({ word }) => word));
    expect(words).toEqual([['pays'], ['pays', 'stops paying with a complete certified heat pump'], ['does not pay']]);
  });

  test('a verdict that the ends of the range do not share says likely', () => {
    const [first, ...others] = answer.inTurn;
    const unsettled = { ...answer, inTurn: [{ ...first!, gain: { ...first!.gain, settled: false } }, ...others] };
    expect(marksOf(unsettled, 'usual.lid')).toEqual([{ kind: 'look', word: 'likely pays' }]);
  });

  test('every measure has its step with every heat pump', () => {
    for (const { id } of answer.measures) expect(heatPumpStepsOf(answer, id)).toHaveLength(answer.withHeatPump.length);
  });
});

describe('the list', () => {
  test('adding to what is offered makes all of it the design’s own, in the order of the page', () => {
    const own = documentOf(withMeasure(bare, answer, mat));
    expect(own.wrapping?.measures).toEqual([...answer.measures.map(({ item }) => item), mat]);
    expect(countOf(bare, answer)).toBe(3);
    expect(countOf(own, answer)).toBe(4);
  });

  test('removing one that is offered keeps the others', () => {
    const own = without(bare, answer, 'usual.boards');
    expect(own.wrapping?.measures?.map(({ name }) => name)).toEqual(['A tight lid', 'A second pane in front']);
  });

  test('an own list is changed by place, may be empty, and gives way to the usual ones again', () => {
    const taken = documentOf(withOffered(bare, answer));
    const owned = {
      ...answer,
      measures: answer.measures.map((measure, index) => ({ ...measure, path: `wrapping.measures.${index}` })),
    };
    expect(placeOf(taken, owned, 'usual.pane')).toBe(2);
    let own = without(taken, owned, 'usual.lid');
    expect(own.wrapping?.measures?.[0]?.name).toBe('Boards behind and below');
    own = without(own, ownedBy(own), 'own.0');
    own = without(own, ownedBy(own), 'own.0');
    expect(hasOwnMeasures(own)).toBe(true);
    expect(countOf(own, answer)).toBe(0);
    expect(serialiseDesign(documentOf(withUsual(own)))).toBe(serialiseDesign(bare));
  });

  test('an answer older than the list still finds what it means, or nothing', () => {
    const fewer = without(bare, answer, 'usual.lid');
    expect(placeOf(fewer, answer, 'usual.pane')).toBe(1);
    expect(placeOf(fewer, answer, 'usual.lid')).toBeUndefined();
    expect(withoutMeasure(fewer, answer, 'usual.lid')).toBeUndefined();
    expect(without(fewer, answer, 'usual.pane').wrapping?.measures?.map(({ name }) => name)).toEqual([
      'Boards behind and below',
    ]);
  });

  test('what is no measure is refused by its path', () => {
    const outcome = withMeasure(bare, answer, { ...mat, thickness: '-1 mm' });
    expect(outcome).toMatchObject({ ok: false, problems: [{ path: 'wrapping.measures.3.thickness' }] });
  });
});

describe('the last inch', () => {
  const [curve] = answer.lastInch;
  const chart = lastInchChart(curve!, 10, 'EUR', 'metric');

  test('is hatched from where it costs more than it brings, and not before', () => {
    expect(chart.limits).toHaveLength(1);
    const [hatched] = chart.limits;
    const [saves, costs] = chart.series;
    saves!.x.forEach((x, index) => {
      if (Number(x) < hatched!.from) expect(saves!.y[index]).toBeGreaterThan(costs!.y[index]! * 0.9);
    });
    expect(hatched!.from).toBeCloseTo(7.62, 10);
    expect(lastInchChart({ ...curve!, worthUpTo: 1 }, 10, 'EUR', 'metric').limits).toEqual([]);
  });

  test('the list’s own thickness stands on the line', () => {
    const [saves, , point] = lastInchChart({ ...curve!, chosen: 0.05 }, 10, 'EUR', 'metric').series;
    const after = saves!.x.findIndex((x) => Number(x) >= 5);
    expect(point!.x).toEqual([5]);
    expect(point!.y[0]).toBeLessThanOrEqual(saves!.y[after - 1]!);
    expect(point!.y[0]).toBeGreaterThanOrEqual(saves!.y[after]!);
  });

  test('US view: inches on the axis and in the table', () => {
    const inches = lastInchChart(curve!, 10, 'USD', 'us');
    expect(inches.x.unit).toBe('in');
    // The first inch, which brings the gap too, stands in the table and in words.
    expect(Number(inches.series[0]!.x[0])).toBeCloseTo(1.2, 10);
    expect(inches.description).toMatch(/The first inch, with the gap that it seals, saves 60\sUSD\./);
    expect(inches.table.rows[0]![0]).toMatch(/^1\sin$/);
  });
});

describe('in words', () => {
  test.each([
    [{ low: 1.23, likely: 2, high: 3.44 }, '1.2 to 3.4 years'],
    [{ low: 12.3, likely: 20, high: 34 }, '12 to 34 years'],
    [{ low: 2, likely: 2, high: 2 }, '2 years'],
    [{ low: 0.1, likely: 0.2, high: 0.4 }, '1 to 5 months'],
    [{ low: 0.25, likely: 0.25, high: 0.25 }, '3 months'],
    [{ low: 0.01, likely: 0.02, high: 0.05 }, 'less than a month'],
    [{ low: 0, likely: 0, high: 0 }, 'at once'],
    [{ low: 16, likely: 60, high: 126 }, '16 years or more'],
    [{ low: 4, likely: 9, high: null }, '4 years or more, perhaps never'],
    [{ low: 9, likely: null, high: null }, 'likely never, at best 9 years'],
    [{ low: null, likely: null, high: null }, 'never'],
  ])('%j: %s', (range, words) => {
    expect(sayPayback(range)).toBe(words);
  });

  test('the answer names the first, the others that pay, and where to stop', () => {
    expect(sayWrapping(answer, 'metric').headline).toMatch(
      /^A tight lid first: .* after 6 to 9 months; then boards behind and below; stop there: a second pane in front does not pay over 10 years\.$/,
    );
  });

  test('nothing that pays, and nothing that applies, are answers too', () => {
    expect(sayWrapping({ ...answer, payingSteps: 0 }, 'metric').headline).toMatch(
      /^Nothing on the list pays over 10 years\./,
    );
    expect(sayWrapping({ ...answer, inTurn: [], payingSteps: 0 }, 'metric').headline).toBe(
      'No measure on the list changes anything on this tank.',
    );
  });

  test('a room that is never heated loses nothing', () => {
    const basis = { ...answer.basis, monthsHeated: 0 };
    expect(sayWrapping({ ...answer, basis }, 'metric').twoAccounts).toContain('worth nothing there');
    expect(sayWrapping(answer, 'metric').twoAccounts).toContain('In the 7 months');
  });
});
