// Every coefficient file, broken at every place: a key left out, a key too many, a number that is none, a kind of term that
// nobody knows. Each is refused with the file, the path inside it and the rule, and no part of it is used.

import { describe, expect, test } from 'vitest';
import r290 from '../../../data/refrigerants/R290.json';
import r718 from '../../../data/refrigerants/R718.json';
import { checkedFluidData } from '../../../src/matter/refrigerants/equation/fluid-data.ts';
import { addCoefficientFile, hasCoefficientFile, refrigerant } from '../../../src/matter/refrigerants/index.ts';
import { loadRefrigerant } from '../../../src/matter/refrigerants/load.ts';

const files = Object.entries(
  import.meta.glob<{ default: unknown }>('../../../data/refrigerants/R*.json', { eager: true }),
).map(([path, { default: content }]) => [path.replace(/.*\//, ''), content] as const);

// biome-ignore lint/suspicious/noExplicitAny: files are broken here on purpose, in ways their type forbids.
type Loose = any;

/** What a file may be without: not every fluid has it, or more is not known. */
const optional = [
  /^fluid\.meltingLine$/,
  /^fluid\.transport\.truth$/,
  /^fluid\.transport\.truth\.(viscosity|conductivity|surfaceTension)$/,
  /^fluid\.transport\.lennardJones\.estimatedFrom$/,
  /^fluid\.transport\.(viscosity|conductivity)\.range$/,
  /^fluid\.transport\.viscosity\.(initialDensity|residual\.freeVolume)$/,
];

/** A place in a file: its path in words, and how to reach what holds it in a copy. */
interface Place {
  readonly path: string;
  readonly keys: readonly (string | number)[];
  readonly value: unknown;
}

function placesIn(value: unknown, path = 'fluid', keys: readonly (string | number)[] = []): readonly Place[] {
  const own: Place = { path, keys, value };
  if (Array.isArray(value)) {
    return [own, ...value.flatMap((entry, index) => placesIn(entry, `${path}[${index}]`, [...keys, index]))];
  }
  if (typeof value !== 'object' || value === null) return [own];
  return [own, ...Object.entries(value).flatMap(([key, entry]) => placesIn(entry, `${path}.${key}`, [...keys, key]))];
}

/** A copy of a file, changed at one place. */
function changedAt(content: unknown, { keys }: Place, change: (holder: Loose, key: string | number) => void): unknown {
  const copy = structuredClone(content) as Loose;
  const holder = keys.slice(0, -1).reduce((inner, key) => inner[key], copy);
  change(holder, keys.at(-1)!);
  return copy;
}

/** The path a DataError names; undefined where the file passes. */
function refusedAt(content: unknown): string | undefined {
  try {
    checkedFluidData(content, 'x.json');
    return undefined;
  } catch (error) {
    expect(error).toMatchObject({ name: 'DataError', code: 'brokenData', file: 'x.json' });
    return (error as { path: string }).path;
  }
}

test('all files are here', () => {
  expect(files.length).toBe(25);
  for (const [, content] of files) expect(refusedAt(content)).toBeUndefined();
});

describe.each(files)('%s', (_name, content) => {
  const places = placesIn(content).slice(1);
  const isKey = ({ keys }: Place) => typeof keys.at(-1) === 'string';

  test('no key can be left out', () => {
    let refused = 0;
    for (const place of places.filter(isKey)) {
      const isOptional = optional.some((pattern) => pattern.test(place.path));
      const path = refusedAt(changedAt(content, place, (holder, key) => delete holder[key]));
      expect(path, place.path).toBe(isOptional ? undefined : place.path);
      refused++;
    }
    expect(refused).toBeGreaterThan(40);
  });

  test('no key can be added', () => {
    for (const place of places) {
      if (typeof place.value !== 'object' || place.value === null || Array.isArray(place.value)) continue;
      const path = refusedAt(changedAt(content, place, (holder, key) => Object.assign(holder[key], { colour: 1 })));
      expect(path, place.path).toBe(`${place.path}.colour`);
    }
  });

  test('a number that is none is refused where it stands', () => {
    let refused = 0;
    for (const place of places) {
      if (typeof place.value !== 'number') continue;
      const wrong = refused % 2 === 0 ? null : Number.NaN;
      const path = refusedAt(changedAt(content, place, (holder, key) => (holder[key] = wrong)));
      expect(path, place.path).toBe(place.path);
      refused++;
    }
    expect(refused).toBeGreaterThan(100);
  });

  test('a kind that nobody knows is refused', () => {
    for (const place of places) {
      if (place.keys.at(-1) !== 'type' && place.keys.at(-1) !== 'kind' && place.keys.at(-1) !== 'form') continue;
      for (const wrong of ['guessed', 'toString', '__proto__', 7]) {
        const path = refusedAt(changedAt(content, place, (holder, key) => (holder[key] = wrong)));
        expect(path, place.path).toBe(place.path);
      }
    }
  });

  test('columns of a term have one length', () => {
    const terms = (content as Loose).residual as Loose[];
    terms.forEach((term, index) => {
      for (const column of Object.keys(term).filter((key) => Array.isArray(term[key]))) {
        const copy = structuredClone(content) as Loose;
        copy.residual[index][column].push(1);
        expect(refusedAt(copy)).toBe(`fluid.residual[${index}]`);
      }
    });
  });
});

describe('what only the equation can tell', () => {
  const altered = (file: unknown, change: (copy: Loose) => void) => {
    const copy = structuredClone(file) as Loose;
    change(copy);
    return copy;
  };

  test.each<[string, unknown, (copy: Loose) => void]>([
    ['fluid.meltingLine', r290, (f) => (f.meltingLine.parts[0].to = 100)],
    ['fluid.meltingLine.parts[0].to', r290, (f) => (f.meltingLine.parts[0].to = 80)],
    ['fluid.meltingLine.parts[2].to', r718, (f) => (f.meltingLine.parts[2].to = 273)],
    ['fluid.critical.pressure', r718, (f) => (f.critical.pressure *= 1.001)],
    ['fluid.critical', r718, (f) => (f.critical.molarDensity *= 1.01)],
  ])('%s', (path, file, change) => {
    expect(() => loadRefrigerant(altered(file, change), 'x.json')).toThrow(
      expect.objectContaining({ name: 'DataError', file: 'x.json', path: expect.stringContaining(path) }),
    );
  });
});

test('only files of known names are taken, and one that is taken stays', () => {
  for (const wrong of [null, 7, {}, { name: 'R999' }, { name: ['R290'] }]) {
    expect(() => addCoefficientFile(wrong)).toThrow(expect.objectContaining({ name: 'DataError', path: 'fluid.name' }));
  }
  const before = refrigerant('R290');
  addCoefficientFile({ name: 'R290' });
  expect(refrigerant('R290')).toBe(before);
  expect(hasCoefficientFile('R290')).toBe(true);
});
