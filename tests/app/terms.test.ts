// The glossary: each form belongs to one term, and in a sentence each term is found once, the longest form first.

import { describe, expect, test } from 'vitest';
import { termFinder } from '../../src/app/terms/find-terms.ts';
import { glossary } from '../../src/app/terms/glossary.ts';

const find = termFinder(glossary);
const found = (text: string) => find(text).flatMap(({ text: piece, term }) => (term ? [[piece, term.name]] : []));

describe('glossary', () => {
  test('no form belongs to two terms, all are lower case, each name is one of its forms', () => {
    const forms = glossary.flatMap((term) => term.forms);
    expect(new Set(forms).size).toBe(forms.length);
    for (const { name, forms: own } of glossary) {
      expect(own.every((form) => form === form.toLowerCase())).toBe(true);
      expect(own).toContain(name.toLowerCase());
    }
  });

  test('every meaning is a whole sentence that does not end in the term it explains', () => {
    for (const { name, meaning } of glossary) {
      expect(meaning, name).toMatch(/^[A-Z].*\.$/);
      expect(meaning.toLowerCase().startsWith(name.toLowerCase()), name).toBe(false);
    }
  });
});

describe('in a sentence', () => {
  test('the pieces put together are the sentence', () => {
    const text = 'Superheat, then subcooling: the evaporating temperature is 3 °C, its superheat 5 K.';
    expect(
      find(text)
        .map((piece) => piece.text)
        .join(''),
    ).toBe(text);
  });

  test('each term once, the longest form first', () => {
    expect(found('The evaporating temperature falls; evaporating colder costs COP.')).toEqual([
      ['evaporating temperature', 'evaporating temperature'],
      ['COP', 'COP'],
    ]);
  });

  test('whole words only', () => {
    expect(found('A copper discharger, recharged; marginal.')).toEqual([]);
  });
});
