// The choice among all refrigerants: each stands in one group, the short list is short, and typed words find what they mean.

import { describe, expect, test } from 'vitest';
import {
  fluidFor,
  fluidGroups,
  fluidNames,
  groupsFor,
  shortGroups,
  studyOnlyWords,
} from '../../src/app/fluids/fluid-groups.ts';
import {
  catalogueEntry,
  isStudyOnly,
  refrigerantAliases,
  refrigerantNames,
} from '../../src/matter/refrigerants/index.ts';

function namesOf(groups: typeof fluidGroups): readonly string[] {
  return groups.flatMap(({ fluids }) => fluids.map(({ name }) => name));
}

function found(typed: string, offered = fluidNames): readonly string[] {
  return namesOf(groupsFor(typed, offered));
}

describe('the groups', () => {
  test('hold every refrigerant once', () => {
    expect(fluidNames).toEqual(refrigerantNames);
    expect([...namesOf(fluidGroups)].sort()).toEqual([...refrigerantNames].sort());
  });

  test('those for study only stand apart and say why, and no others do', () => {
    const apart = fluidGroups.find(({ title }) => title === 'For study only')?.fluids.map(({ name }) => name);
    expect(apart).toEqual(refrigerantNames.filter(isStudyOnly));
    for (const name of refrigerantNames) {
      expect(studyOnlyWords(name) !== undefined, name).toBe(isStudyOnly(name));
      expect(studyOnlyWords(name) ?? `${name} is for study only: `).toMatch(`${name} is for study only: `);
    }
    expect(studyOnlyWords('R999')).toBeUndefined();
  });

  test('labels say what burns, what is toxic and what depletes ozone, as the catalogue has it', () => {
    for (const { name, label } of fluidGroups.flatMap(({ fluids }) => fluids)) {
      const { safetyClass, ozoneDepletionPotential } = catalogueEntry(name);
      expect(/flammable/.test(label), label).toBe(/[23]/.test(safetyClass));
      expect(/mildly flammable/.test(label), label).toBe(safetyClass.endsWith('2L'));
      expect(/toxic/.test(label), label).toBe(safetyClass.startsWith('B'));
      expect(/ozone-depleting/.test(label), label).toBe((ozoneDepletionPotential ?? 0) > 0);
      expect(/study only/.test(label), label).toBe(isStudyOnly(name));
    }
  });

  test('what is offered at once is short, and holds what is chosen', () => {
    const atOnce = namesOf(shortGroups(fluidNames, []));
    expect(atOnce.length).toBeGreaterThanOrEqual(5);
    expect(atOnce.length).toBeLessThanOrEqual(12);
    expect(atOnce).toEqual(expect.arrayContaining(['R134a', 'R600a', 'R290', 'R12', 'R22']));
    for (const name of fluidNames) expect(namesOf(shortGroups(fluidNames, [name]))).toContain(name);
    expect(namesOf(shortGroups(['R290', 'R744'], ['R134a']))).toEqual(['R290']);
  });
});

describe('what is typed', () => {
  test.each([
    ['propane', ['R290']],
    ['CO2', ['R744']],
    ['co₂'.replace('₂', '2'), ['R744']],
    ['Ammonia', ['R717']],
    ['water', ['R718']],
    ['410', ['R410A']],
    ['r-410', ['R410A']],
    ['1234', ['R1234yf', 'R1234ze(E)']],
    ['HFC-134a', ['R134a']],
    ['no such thing', []],
    ['?!', []],
    // What it is goes before what is made of it, and a whole word of a use beside names that begin with it.
    ['blend', ['R404A', 'R407C', 'R410A', 'R507A']],
    ['blends', ['R404A', 'R407C', 'R410A', 'R507A']],
    ['component of blends', ['R124', 'R600', 'R152a', 'R125', 'R143a', 'R142b']],
    ['car', ['R134a', 'R12', 'R1234yf', 'R744']],
    ['hydrocarbon', ['R600a', 'R290', 'R1270', 'R600']],
    ['C3H8', ['R290']],
    ['toxic', ['R717', 'R245fa']],
  ] as const)('%s', (typed, names) => {
    expect(found(typed)).toEqual(names);
  });

  test('a use finds all that are used so; several words narrow', () => {
    expect(found('freezers')).toEqual(expect.arrayContaining(['R600a', 'R12', 'R404A']));
    expect(found('freezers')).not.toContain('R744');
    expect(found('freezers flammable')).toEqual(['R600a']);
    expect(found('study').length).toBe(refrigerantNames.filter(isStudyOnly).length);
  });

  test('nothing typed means all of them, blanks too', () => {
    expect(found('').length).toBe(refrigerantNames.length);
    expect(found('  ').length).toBe(refrigerantNames.length);
  });

  test('every name of every refrigerant means it, and what is not offered is not meant', () => {
    for (const name of refrigerantNames) {
      for (const text of [name, name.toLowerCase(), ...refrigerantAliases(name)]) {
        expect(fluidFor(text, fluidNames), text).toBe(name);
      }
    }
    expect(fluidFor('propane', ['R134a'])).toBeUndefined();
    expect(fluidFor('', fluidNames)).toBeUndefined();
    expect(fluidFor('blend', fluidNames)).toBeUndefined();
    expect(fluidFor('', ['R290'])).toBeUndefined();
  });
});
