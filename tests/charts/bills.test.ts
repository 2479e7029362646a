// The bill by months as a picture: bars and table say the amounts of the assessment, on one scale for every way.

import { expect, test } from 'vitest';
import { billsByMonthChart } from '../../src/charts/index.ts';
import { answerTo, exampleFiles } from '../app/answers.ts';

test.each(exampleFiles)('%s', (file) => {
  const { accounts, currency } = answerTo(file).assessment;
  const charts = accounts.map(({ scenario }) => billsByMonthChart(accounts, scenario, currency, 'metric'));
  for (const [index, chart] of charts.entries()) {
    const { months } = accounts[index]!;
    expect(chart.y.range).toEqual(charts[0]!.y.range);
    const named = (label: string) => chart.series.find((series) => series.label.startsWith(label))!;
    expect(named('electricity').y).toEqual(months.map((month) => month.electricityCost));
    expect(named('heat to the heated room').y).toEqual(months.map((month) => -month.roomCredit));
    expect(named('what is left').y).toEqual(months.map((month) => month.runningCost));
    const [low, high] = chart.y.range!;
    for (const series of chart.series) for (const y of series.y) expect(y >= low && y <= high).toBe(true);
    expect(chart.table.rows.length).toBe(12);
    for (const row of chart.table.rows) {
      expect(row.length).toBe(chart.table.columns.length);
      expect(row.join(' ')).not.toMatch(/NaN|undefined|-/);
    }
  }
});

test('says in how many months nothing is credited', () => {
  const { accounts, currency } = answerTo('reef-in-the-study.json').assessment;
  const { caption } = billsByMonthChart(accounts, 'thisLoop', currency, 'us').table;
  expect(caption).toContain('in the 5 months in which the room is not heated');
});
