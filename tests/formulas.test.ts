// Every formula record against the function it stands for: the expression, which people read in the working, evaluated
// by the general-purpose mathematics library mathjs, must give what the engine's own function gives. So a formula on
// screen is never a copy that has drifted from the code.

import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { all, create, type MathNode } from 'mathjs';
import { describe, expect, test } from 'vitest';
import { allFormulas } from '../src/assess/index.ts';
import type { Formula } from '../src/quantities/index.ts';

const root = fileURLToPath(new URL('..', import.meta.url));
const relativeTolerance = 1e-9;
const minimumExamples = 2;
/** The only functions and constants an expression may use. */
const knownFunctions = new Set([
  'abs',
  'exp',
  'log',
  'log10',
  'sqrt',
  'cbrt',
  'min',
  'max',
  'tanh',
  'atan',
  'sin',
  'cos',
]);
const knownConstants = new Set(['pi']);

/** Index files that could not be loaded, each with the reason. */
const unloadable: string[] = [];
const math = create(all!, {});
const collections = await collectFormulas();
const formulas = collections.flatMap((collection) => collection.formulas);

describe('collections', () => {
  test('are found', () => {
    expect(unloadable).toEqual([]);
    expect(collections.length).toBeGreaterThan(0);
    expect(formulas.length).toBeGreaterThan(0);
    for (const { path, name, formulas: own } of collections) expect(own.length, `${path}: ${name}`).toBeGreaterThan(0);
  });

  test('every folder with formula records exports them from its index', () => {
    const exporting = new Set(collections.map(({ path }) => path.replace(/\/index\.ts$/, '')));
    for (const folder of foldersWithRecords()) {
      const above = [...exporting].filter((known) => folder === known || folder.startsWith(`${known}/`));
      expect(above, folder).not.toEqual([]);
    }
  });

  test('the assessment knows every one of them', () => {
    const known = new Set(allFormulas.map((formula) => formula.id));
    expect(formulas.map((formula) => formula.id).filter((id) => !known.has(id))).toEqual([]);
    expect(known.size).toBe(formulas.length);
  });

  test('identifiers are unique', () => {
    const ids = formulas.map((formula) => formula.id);
    expect(ids.filter((id, index) => ids.indexOf(id) !== index)).toEqual([]);
  });
});

describe.each(formulas.map((formula) => [formula.id, formula] as const))('%s', (_id, formula) => {
  test('names exactly the symbols of its expression', () => {
    const { symbols, functions } = namesIn(math.parse(formula.expression));
    expect([...symbols].sort()).toEqual(Object.keys(formula.symbols).sort());
    expect([...functions].filter((name) => !knownFunctions.has(name))).toEqual([]);
  });

  test('its expression gives what its function gives', () => {
    expect(formula.examples.length).toBeGreaterThanOrEqual(minimumExamples);
    const expression = math.compile(formula.expression);
    const results = formula.examples.map((example) => {
      expect(Object.keys(example).sort()).toEqual(Object.keys(formula.symbols).sort());
      const byExpression = Number(expression.evaluate({ ...example }));
      const byFunction = formula.compute(example);
      expect(Number.isFinite(byFunction), `${byFunction}`).toBe(true);
      const scale = Math.max(Math.abs(byFunction), Number.MIN_VALUE);
      const deviation = byExpression === byFunction ? 0 : Math.abs(byExpression - byFunction) / scale;
      expect(deviation, `${formula.expression} = ${byExpression}, function ${byFunction}`).toBeLessThan(
        relativeTolerance,
      );
      return byFunction;
    });
    expect(new Set(results).size, 'examples must lead to different results').toBeGreaterThan(1);
  });

  test('says what it is, from where, and which file computes it', () => {
    for (const words of [
      formula.title,
      formula.source,
      formula.validity,
      formula.result.symbol,
      formula.result.meaning,
    ]) {
      expect(words.trim()).not.toBe('');
    }
    for (const [symbol, { meaning, unit }] of Object.entries({ ...formula.symbols, result: formula.result })) {
      expect(meaning.trim(), symbol).not.toBe('');
      expect(unit.trim(), symbol).not.toBe('');
    }
    expect(formula.file).toMatch(/^src\/.+\.ts$/);
    expect(existsSync(join(root, formula.file)), formula.file).toBe(true);
    const called = exportedFunctions(formula.file).filter((name) => formula.compute.toString().includes(name));
    const isItself = exportedFunctions(formula.file).includes(formula.compute.name);
    expect(isItself || called.length > 0, `${formula.file} exports no function that the record calls`).toBe(true);
  });
});

describe('planted faults are found', () => {
  test('a symbol, a function and a constant are told apart', () => {
    const { symbols, functions } = namesIn(math.parse('a > 0 ? sqrt(a) * pi : -exp(b)'));
    expect([...symbols].sort()).toEqual(['a', 'b']);
    expect([...functions].sort()).toEqual(['exp', 'sqrt']);
  });
});

interface Collection {
  /** The index file: 'src/tank/index.ts'. */
  readonly path: string;
  readonly name: string;
  readonly formulas: readonly Formula[];
}

/** Every exported array named "…Formulas" of every index.ts in src/, each formula once. */
async function collectFormulas(): Promise<Collection[]> {
  const seen = new Set<Formula>();
  const found: Collection[] = [];
  for (const path of indexFiles()) {
    const module = await load(path);
    for (const [name, value] of Object.entries(module)) {
      if (!/formulas$/i.test(name) || !Array.isArray(value)) continue;
      const own = (value as Formula[]).filter((formula) => !seen.has(formula));
      for (const formula of own) seen.add(formula);
      if (own.length > 0 || value.length === 0) found.push({ path, name, formulas: own });
    }
  }
  return found;
}

async function load(path: string): Promise<Record<string, unknown>> {
  try {
    return await import(/* @vite-ignore */ join(root, path));
  } catch (error) {
    unloadable.push(`${path}: ${error instanceof Error ? error.message : String(error)}`);
    return {};
  }
}

function indexFiles(): string[] {
  return (readdirSync(join(root, 'src'), { recursive: true }) as string[])
    .filter((path) => /(^|\/)index\.ts$/.test(path) && !/^(app|index)\b/.test(path))
    .map((path) => `src/${path}`)
    .sort((a, b) => rank(a) - rank(b));
}

/** Parts before the folders that gather them; the assessment, which gathers all, at the end. */
function rank(path: string): number {
  return path.startsWith('src/assess/') ? 1 : -path.split('/').length;
}

/** Folders in which some file writes a Formula record. */
function foldersWithRecords(): string[] {
  const files = (readdirSync(join(root, 'src'), { recursive: true }) as string[])
    .filter((path) => path.endsWith('.ts'))
    // The list of all of them, not a record.
    .filter((path) => path !== 'assess/formulas.ts');
  const folders = files
    .filter((path) => /:\s*(readonly )?Formula(\[\])?\s*=/.test(readFileSync(join(root, 'src', path), 'utf8')))
    .map((path) => `src/${path.split('/').slice(0, -1).join('/')}`);
  return [...new Set(folders)];
}

function exportedFunctions(file: string): string[] {
  const text = readFileSync(join(root, file), 'utf8');
  return [...text.matchAll(/^export function (\w+)/gm)].map((match) => match[1]!);
}

function namesIn(expression: MathNode): { symbols: Set<string>; functions: Set<string> } {
  const symbols = new Set<string>();
  const functions = new Set<string>();
  expression.traverse((node, path, parent) => {
    if (node.type !== 'SymbolNode') return;
    const name = (node as MathNode & { name: string }).name;
    if (parent?.type === 'FunctionNode' && path === 'fn') functions.add(name);
    else if (!knownConstants.has(name)) symbols.add(name);
  });
  return { symbols, functions };
}
