// What Working is made from: the list of results, the parts of a chain, finding by words; and that every number of a table
// that leads to a working shows that very number.

import { describe, expect, test } from 'vitest';
import { heatPathFlows } from '../../src/app/heat-path/flows.ts';
import { wordsOfNodes } from '../../src/app/heat-path/nodes.ts';
import { partsOfChain, partTitle } from '../../src/app/papers/working/parts.ts';
import {
  allResults,
  bandOfResult,
  cycleResults,
  resultMeant,
  resultsByPage,
} from '../../src/app/papers/working/results.ts';
import { matching } from '../../src/app/papers/working/search.ts';
import { say } from '../../src/app/ui/say.ts';
import { answerCycle } from '../../src/app/worker/cycle.ts';
import { formulaTexts } from '../../src/app/worker/formulas.ts';
import { billsByMonthChart, type ChartTable, monthsChart, stateTable } from '../../src/charts/index.ts';
import { chainOf, isQuantityName, type QuantityName, toView, type WorkingStep } from '../../src/quantities/index.ts';
import { answerTo, exampleFiles } from './answers.ts';

const formulas = formulaTexts();

describe.each(exampleFiles)('%s', (file) => {
  const { assessment } = answerTo(file);
  const { workings } = assessment;
  const names = new Set(workings.map((step) => step.result));

  test('every page has results to choose from, each with a step, and a band where the page shows one', () => {
    const groups = resultsByPage(assessment);
    expect(groups.map(({ page }) => page)).toEqual(['what-leaves', 'the-machine', 'where-it-settles', 'two-bills']);
    for (const { results } of groups) {
      expect(results.length).toBeGreaterThan(4);
      expect(results.length).toBeLessThan(45);
      for (const { name } of results) expect(names).toContain(name);
      expect(new Set(results.map(({ label }) => label)).size).toBe(results.length);
    }
    expect(bandOfResult(assessment, 'tank.load')).toEqual(assessment.tankLoad);
    expect(bandOfResult(assessment, 'plant.heatReachingWater')).toEqual(assessment.heatDelivered);
    expect(bandOfResult(assessment, 'tank.meanPower')).toBeUndefined();
  });

  test('a key of the assessment means the result it holds', () => {
    expect(resultMeant('tankLoad', assessment)).toBe('tank.load');
    expect(resultMeant('heatDelivered', assessment)).toBe('plant.heatReachingWater');
    expect(resultMeant('tank.loss', assessment)).toBe('tank.loss');
    expect(resultMeant('sizing.condenser.coilLength', assessment)).toBe('condenser.length');
    expect(resultMeant('designName', assessment)).toBe('designName');
  });

  test('the parts of a chain hold each of its steps once, in the same order', () => {
    const { steps } = chainOf(workings, 'accounts.thisLoop.annualCost');
    const parts = partsOfChain(steps);
    expect(parts.flatMap((part) => part.steps)).toEqual(steps);
    expect(parts.length).toBeGreaterThan(5);
    expect(parts.length).toBeLessThan(steps.length / 3);
    expect(parts.map(({ title }) => title)).not.toContain('Further steps');
  });

  test('each node of the heat path that leads to a working shows its number', () => {
    const path = heatPathFlows(assessment);
    const linked = [...wordsOfNodes(assessment, path, 'metric')].filter(([, { result }]) => result !== undefined);
    expect(linked.map(([name]) => name)).toContain('machine');
    expect(linked.length).toBeGreaterThan(3);
    for (const [name, { result, number }] of linked) {
      if (!names.has(result!)) continue;
      expect(say(valueAt(workings, result!), 'power', 'metric'), name).toBe(number);
    }
  });

  test('each cell of the months, the bills and the states shows the result it leads to', () => {
    const months: readonly QuantityName[] = [
      'temperature',
      'temperature',
      'energy',
      'energy',
      'energy',
      'energy',
      'fraction',
    ];
    expectCells(monthsChart(assessment.year, 'us').table, workings, months, 'us');
    for (const { scenario } of assessment.accounts) {
      const { table } = billsByMonthChart(assessment.accounts, scenario, assessment.currency, 'metric');
      const isCooled = table.columns.some(({ label }) => label === 'Cooling');
      const amounts: readonly QuantityName[] = [
        'energy',
        'money',
        'fraction',
        'energy',
        'money',
        ...(isCooled ? (['money'] as const) : []),
        'money',
      ];
      expectCells(table, workings, amounts, 'metric');
    }
    expectCells(stateTable(assessment.operating.points, 'us'), workings, stateQuantities, 'us');
  });
});

const stateQuantities = ['temperature', 'pressure', 'enthalpy', 'entropy', 'density', 'fraction'] as const;

test('the states of a textbook cycle lead to their steps, its results can be chosen', () => {
  const request = {
    refrigerant: 'R134a',
    evaporating: 273.15,
    condensing: 313.15,
    superheat: 5,
    subcooling: 3,
    isentropicEfficiency: 0.7,
  } as const;
  for (const name of ['cycle', 'secondCycle'] as const) {
    const { cycle, workings } = answerCycle(name, { request, isotherms: [], isobars: [] });
    expectCells(stateTable(cycle.points, 'metric', 'iir', name), workings, stateQuantities, 'metric');
    const present = cycleResults(name).filter((each) => workings.some(({ result }) => result === each.name));
    expect(present.length).toBeGreaterThan(9);
    expect(workings.map(({ result }) => partTitle(result))).not.toContain('Further steps');
  }
});

test('results are found by any words of their names, those on pages first', () => {
  const { assessment } = answerTo('frag-tank-cold-garage.json');
  const named = allResults(assessment);
  const find = (typed: string) => matching(typed, named, assessment.workings, formulas);
  expect(find('discharge').found[0]).toMatchObject({ name: 'operating.dischargeTemperature' });
  expect(find('FRONT pane').found.map(({ name }) => name)).toContain('tank.paths.front');
  expect(find('front surface resistance').found.map(({ name }) => name)).toContain(
    'tank.panels.front.surfaceResistance',
  );
  expect(find('no such thing').found).toEqual([]);
  const many = find('e');
  expect(many.found).toHaveLength(40);
  expect(many.more).toBeGreaterThan(100);
});

function valueAt(workings: readonly WorkingStep[], result: string): number {
  return workings.find((step) => step.result === result)!.value;
}

/** The number in a cell is that of the result, as far as its digits go. */
function expectCells(
  table: ChartTable,
  workings: readonly WorkingStep[],
  quantities: readonly QuantityName[],
  view: 'metric' | 'us',
): void {
  let linked = 0;
  for (const [place, row] of table.rows.entries()) {
    for (const [index, cell] of row.entries()) {
      const result = table.results?.[place]?.[index];
      if (result === undefined || !workings.some((step) => step.result === result)) continue;
      const quantity = quantities[index - 1]!;
      expect(isQuantityName(quantity)).toBe(true);
      const shown = Number(cell.replace('−', '-').replaceAll(/[^\d.e-]/g, ''));
      const value = toView(valueAt(workings, result), quantity, view);
      const isPlainShare = quantity === 'fraction' && shown <= 1 && cell.includes('.');
      const decimals = cell.split('.')[1]?.length ?? 0;
      const step = Math.max(10 ** -decimals, Math.abs(value) * 1e-3);
      expect(Math.abs(shown - (isPlainShare ? value / 100 : value)), `${result}: ${cell}`).toBeLessThanOrEqual(step);
      linked++;
    }
  }
  expect(linked, table.caption).toBeGreaterThan(table.rows.length * 2);
}
