// The identification against the published R600a rows: its colder rows identify the machine, the warmer ones are predicted.
// The set has one condensing temperature: what it tells of high evaporating or other condensing temperatures is extrapolation,
// and the band there must be wider.

import { describe, expect, test } from 'vitest';
import {
  condensing,
  fluid,
  identifiedFrom,
  predictedRow,
  type Row,
  returnGas,
  rows,
  supply,
  surroundings,
} from '../../../reference/parts/data-set.ts';
import { kelvin } from './descriptions.ts';
import { type Predicted, predictedAt } from './prediction.ts';

function told(row: Row, { massFlow, power }: Predicted): string {
  const percent = (value: number, of: number) => `${((value / of - 1) * 100).toFixed(1)} %`;
  return `${(row.evaporating - 273.15).toFixed(0)} °C: flow ${percent(massFlow.likely, row.massFlow)}, power ${percent(power.likely, row.power)}`;
}

const relativeWidth = ({ low, likely, high }: Predicted['power']) => (high - low) / likely;

describe('reference: R600a calorimeter rows (F. Fortkamp 2022)', () => {
  test.each([2, 3])('the %d coldest rows identify the machine; the band holds every row', (count) => {
    const identified = identifiedFrom(rows.slice(0, count));
    const found = rows.map((row) => ({ row, predicted: predictedRow(identified, row) }));
    console.log(
      `R600a rows, machine from the ${count} coldest:`,
      found.map((each) => told(each.row, each.predicted)).join('; '),
    );
    for (const { row, predicted } of found) {
      expect(row.massFlow).toBeGreaterThan(predicted.massFlow.low);
      expect(row.massFlow).toBeLessThan(predicted.massFlow.high);
      expect(row.power).toBeGreaterThan(predicted.power.low);
      expect(row.power).toBeLessThan(predicted.power.high);
    }
    // A band of any width would hold them: the rows that were used are met, the others within what such models reach.
    found.forEach(({ row, predicted }, index) => {
      const limit = index < count ? { flow: 0.01, power: 0.01 } : { flow: 0.04, power: 0.08 };
      expect(Math.abs(predicted.massFlow.likely / row.massFlow - 1)).toBeLessThan(limit.flow);
      expect(Math.abs(predicted.power.likely / row.power - 1)).toBeLessThan(limit.power);
      expect(relativeWidth(predicted.power)).toBeLessThan(0.2);
    });
    expect(identified.residuals.filter(({ disagrees }) => disagrees)).toEqual([]);
  });

  test('away from the rows and their condensing temperature the band is wider', () => {
    const identified = identifiedFrom(rows);
    const at = (evaporating: number, condensation: number) =>
      predictedAt(identified, fluid, { evaporating, condensing: condensation, returnGas, surroundings, supply });
    const among = at(kelvin(-22), condensing);
    for (const beyond of [at(kelvin(10), condensing), at(kelvin(-22), kelvin(55)), at(kelvin(5), kelvin(45))]) {
      expect(relativeWidth(beyond.massFlow)).toBeGreaterThan(1.5 * relativeWidth(among.massFlow));
      expect(relativeWidth(beyond.power)).toBeGreaterThan(1.5 * relativeWidth(among.power));
    }
  });
});
