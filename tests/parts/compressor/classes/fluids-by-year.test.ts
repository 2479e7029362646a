// Which fluid and oil a machine most likely holds, by where it came from and when: what was sold when, from memory. Checked
// against the dates that are law: no new appliances with chlorofluorocarbons in industrial countries after 1995 (Montreal
// Protocol, Copenhagen amendment of 1992: phase-out on 1 January 1996).

import { describe, expect, test } from 'vitest';
import {
  applianceClass,
  applianceNames,
  likelyFluid,
  oilChoices,
  startTypeChoices,
  startTypes,
  usualOil,
} from '../../../../src/parts/compressor/index.ts';

const inYear = (year: number) => ({ low: year, likely: year, high: year });

describe.each([...applianceNames, undefined])('%s', (appliance) => {
  test('names fluids such appliances were built for, the likely one apart from the others', () => {
    for (const unitedStates of [false, true]) {
      for (let year = 1950; year <= 2030; year += 1) {
        const { fluid, others, source } = likelyFluid(appliance, inYear(year), unitedStates);
        expect(others).not.toContain(fluid);
        expect(source).toContain('from memory');
        if (appliance === undefined) continue;
        for (const name of [fluid, ...others]) expect(applianceClass(appliance).fluids).toContain(name);
      }
    }
  });

  test('reference: nothing likely made on R12 once it was phased out', () => {
    for (let year = 1996; year <= 2030; year += 1) expect(likelyFluid(appliance, inYear(year)).fluid).not.toBe('R12');
  });

  test('law: a range of years reckons with each fluid of its years', () => {
    const wide = likelyFluid(appliance, { low: 1980, likely: 2005, high: 2025 });
    for (const year of [1980, 2005, 2025]) {
      expect([wide.fluid, ...wide.others]).toContain(likelyFluid(appliance, inYear(year)).fluid);
    }
  });

  test('without a year every fluid of its history is among the others', () => {
    const { fluid, others } = likelyFluid(appliance);
    for (let year = 1950; year <= 2030; year += 5) {
      expect([fluid, ...others]).toContain(likelyFluid(appliance, inYear(year)).fluid);
    }
  });
});

test('household refrigerators of 2010: isobutane in most countries, R134a in the USA', () => {
  expect(likelyFluid('householdRefrigerator', inYear(2010)).fluid).toBe('R600a');
  expect(likelyFluid('householdRefrigerator', inYear(2010), true).fluid).toBe('R134a');
});

test('oils go with the fluid, and each one that is usual can be chosen', () => {
  expect(usualOil('R12')).toContain('mineral');
  expect(usualOil('R134a')).toEqual(['polyolester']);
  const names = oilChoices.map(({ name }) => name);
  for (const fluid of ['R12', 'R22', 'R134a', 'R600a', 'R290', 'R404A', 'R410A', 'R32', 'R744']) {
    for (const oil of usualOil(fluid)) expect(names).toContain(oil);
  }
});

test('start types can be chosen, each with words of its own', () => {
  expect(startTypeChoices.map(({ name }) => name)).toEqual([...startTypes]);
  expect(new Set(startTypeChoices.map(({ title }) => title)).size).toBe(startTypes.length);
});
