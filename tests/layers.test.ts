// The direction of dependence: a folder of src/ imports only from folders above it in the list, through their index.ts,
// and the engine knows neither Node.js nor the browser nor the clock. Planted faults show that each rule is at work.

import { readdirSync, readFileSync } from 'node:fs';
import { join, posix, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseSync } from 'vite';
import { describe, expect, test } from 'vitest';

const root = fileURLToPath(new URL('..', import.meta.url));

/** Top first. */
const folders = [
  'numerics',
  'quantities',
  'matter',
  'surroundings',
  'tank',
  'parts',
  'loop',
  'plant',
  'year',
  'accounts',
  'cautions',
  'design',
  'assess',
  'charts',
  'brief',
  'cli',
  'app',
];
const firstBeyondTheEngine = folders.indexOf('design');
/** Folders made of folders that meet only through their index files, in any direction that is not a circle. */
const groups = ['matter', 'parts'];
/** Packages the engine may use. */
const enginePackages = ['psychrolib'];
/** Names of the surroundings a program runs in: pure functions use none of them. */
const impureNames =
  /^(window|document|navigator|localStorage|indexedDB|fetch|process|Buffer|setTimeout|setInterval|performance|console)$/;

interface SourceFile {
  /** From the project's root, with forward slashes: 'src/tank/index.ts'. */
  readonly path: string;
  readonly text: string;
}

describe('direction of dependence', () => {
  test('no file of src/ breaks a rule', () => {
    const files = sourceFiles();
    expect(files.length).toBeGreaterThan(20);
    const faults = files.flatMap(faultsOf);
    expect(faults).toEqual([]);
    expect(files.flatMap(importsOf).length).toBeGreaterThan(files.length / 2);
  });

  test('src/ holds the listed folders and nothing else', () => {
    const found = readdirSync(join(root, 'src'), { withFileTypes: true });
    for (const entry of found) {
      if (entry.isDirectory()) expect(folders).toContain(entry.name);
      else expect(entry.name).toBe('index.ts');
    }
  });

  test('no circle among the subfolders of a group', () => {
    for (const group of groups) {
      const edges = sourceFiles()
        .filter(({ path }) => path.startsWith(`src/${group}/`))
        .flatMap((file) => importsOf(file).map((target) => [subfolderOf(file.path), subfolderOf(target)] as const))
        .filter(([from, to]) => from !== undefined && to !== undefined && from !== to);
      expect(circleIn(edges as [string, string][]), group).toBeUndefined();
    }
  });
});

describe('planted faults are found', () => {
  const planted: readonly [string, string, string, RegExp][] = [
    ['import from a later folder', 'src/tank/load.ts', "import { x } from '../loop/index.ts';", /later folder/],
    ['type import from a later folder', 'src/tank/load.ts', "import type { X } from '../assess/index.ts';", /later/],
    [
      'import of a type in place',
      'src/tank/load.ts',
      "export type Y = import('../assess/index.ts').X;",
      /later folder/,
    ],
    ['re-export from a later folder', 'src/tank/index.ts', "export { x } from '../year/index.ts';", /later folder/],
    ['dynamic import of a later folder', 'src/tank/load.ts', "const y = import('../app/main.tsx');", /later folder/],
    ['import past an index', 'src/loop/cycle.ts', "import { x } from '../tank/load.ts';", /index\.ts/],
    [
      'import past the index of a subfolder',
      'src/loop/c.ts',
      "import { x } from '../matter/air/moist.ts';",
      /index\.ts/,
    ],
    ['import past a sister', 'src/matter/air/a.ts', "import { x } from '../water/properties.ts';", /index\.ts/],
    ['Node.js in the engine', 'src/tank/load.ts', "import { readFileSync } from 'node:fs';", /package/],
    ['a package in the engine', 'src/tank/load.ts', "import { z } from 'zod';", /package/],
    ['the clock in the engine', 'src/year/hours.ts', 'export const now = () => Date.now();', /Date/],
    ['the clock by new in the engine', 'src/year/hours.ts', 'export const now = () => new Date();', /Date/],
    ['chance in the engine', 'src/year/hours.ts', 'export const dice = () => Math.random();', /random/],
    ['the browser in the engine', 'src/tank/load.ts', 'export const title = () => document.title;', /document/],
    ['printing in the engine', 'src/tank/load.ts', "console.log('loss');", /console/],
    ['export of everything', 'src/tank/index.ts', "export * from './load.ts';", /one by one/],
    ['a file outside the folders', 'src/tank/load.ts', "import x from '../../tests/run.mjs';", /outside/],
    ['an import without file ending', 'src/tank/load.ts', "import { x } from './layers';", /ending/],
  ];
  test.each(planted)('%s', (_name, path, text, complaint) => {
    expect(faultsOf({ path, text }).join('\n')).toMatch(complaint);
  });

  test('a circle', () => {
    expect(
      circleIn([
        ['air', 'water'],
        ['water', 'materials'],
        ['materials', 'air'],
      ]),
    ).toBeDefined();
    expect(
      circleIn([
        ['air', 'water'],
        ['water', 'materials'],
        ['air', 'materials'],
      ]),
    ).toBeUndefined();
  });

  const allowed: readonly [string, string, string][] = [
    ['an earlier folder', 'src/loop/cycle.ts', "import { x } from '../matter/refrigerants/index.ts';"],
    ['data', 'src/matter/water/w.ts', "import table from '../../../data/water.json';"],
    ['a sister by its index', 'src/matter/air/a.ts', "import { x } from '../water/index.ts';"],
    ['the own folder', 'src/tank/load.ts', "import { x } from './layers.ts';"],
    ['Node.js at the edge', 'src/cli/check.ts', "import { readFile } from 'node:fs/promises';"],
    [
      'a parameter that has the name of something impure',
      'src/tank/load.ts',
      'export const f = (process: string) => process;',
    ],
    [
      'a property that has the name of something impure',
      'src/tank/load.ts',
      'export const f = (o: { document: 1 }) => o.document;',
    ],
  ];
  test.each(allowed)('%s is no fault', (_name, path, text) => {
    expect(faultsOf({ path, text })).toEqual([]);
  });
});

function sourceFiles(): SourceFile[] {
  return (readdirSync(join(root, 'src'), { recursive: true }) as string[])
    .filter((name) => /\.(ts|tsx|mjs)$/.test(name) && !name.endsWith('.d.ts'))
    .map((name) => {
      const path = `src/${name.split(sep).join('/')}`;
      return { path, text: readFileSync(join(root, path), 'utf8') };
    });
}

function faultsOf(file: SourceFile): string[] {
  const faults: string[] = [];
  const { imports, impure, exportsEverything } = read(file);
  const layer = layerOf(file.path);
  const isEngine = layer >= 0 && layer < firstBeyondTheEngine;
  for (const specifier of imports) faults.push(...importFaults(file.path, specifier, isEngine));
  if (isEngine) faults.push(...impure.map((name) => `${file.path}: ${name} has no place in the engine`));
  if (exportsEverything) faults.push(`${file.path}: public names are listed one by one, without "export *"`);
  return faults;
}

function importFaults(path: string, specifier: string, isEngine: boolean): string[] {
  if (!specifier.startsWith('.')) {
    return isEngine && !enginePackages.includes(specifier)
      ? [`${path}: the engine does not use the package "${specifier}"`]
      : [];
  }
  const bare = specifier.replace(/\?.*$/, '');
  if (!/\.(ts|tsx|mjs|json|css|svg)$/.test(bare)) return [`${path}: "${specifier}" lacks its file ending`];
  const target = posix.join(posix.dirname(path), bare);
  if (target.startsWith('data/')) return [];
  if (!target.startsWith('src/')) return [`${path}: "${specifier}" lies outside src/ and data/`];
  const from = layerOf(path);
  const to = layerOf(target);
  if (from === -1) return to === -1 || /\/index\.ts$/.test(target) ? [] : [`${path}: import from an index.ts only`];
  if (to > from || to === -1) return [`${path}: "${specifier}" is in a later folder`];
  if (unitOf(path) === unitOf(target)) return [];
  // Down the own folder: a group's own index gathers its parts by their index files; other folders nest freely.
  return /\/index\.ts$/.test(target) ? [] : [`${path}: "${specifier}" is not the other folder's index.ts`];
}

/** Position in the list; -1 for src/index.ts, which stands below everything. */
function layerOf(path: string): number {
  return folders.indexOf(path.split('/')[1] ?? '');
}

/** The folder whose files may import one another directly: 'src/tank', but 'src/matter/air'. */
function unitOf(path: string): string {
  const [, folder = '', next = ''] = path.split('/');
  const isNested = groups.includes(folder) && path.split('/').length > 3;
  return isNested ? `src/${folder}/${next}` : `src/${folder}`;
}

function subfolderOf(path: string): string | undefined {
  const [, folder = '', next = ''] = path.split('/');
  return groups.includes(folder) && path.split('/').length > 3 ? `${folder}/${next}` : undefined;
}

function importsOf(file: SourceFile): string[] {
  return read(file)
    .imports.filter((specifier) => specifier.startsWith('.'))
    .map((specifier) => posix.join(posix.dirname(file.path), specifier));
}

interface Reading {
  readonly imports: string[];
  readonly impure: string[];
  readonly exportsEverything: boolean;
}

interface SyntaxNode {
  readonly type: string;
  readonly [property: string]: unknown;
}

/** Import texts and impure names of a file, from its syntax tree. */
function read(file: SourceFile): Reading {
  const { program, errors } = parseSync(file.path, file.text);
  if (errors.length > 0) throw new Error(`${file.path}: ${errors[0]?.message}`);
  const imports: string[] = [];
  const impure: string[] = [];
  const declared = new Set<string>();
  let exportsEverything = false;
  walk(program as unknown as SyntaxNode, (node, parent, role) => {
    const source = node.source as { value?: unknown } | null | undefined;
    if (/^(Import|Export\w*)(Declaration|Expression)$/.test(node.type) && typeof source?.value === 'string') {
      imports.push(source.value);
    }
    if (node.type === 'ImportExpression' && typeof source?.value !== 'string')
      impure.push('an import by a computed name');
    if (node.type === 'TSImportType') imports.push(String((node.source as { value?: unknown })?.value ?? ''));
    if (node.type === 'ExportAllDeclaration' && node.exported == null) exportsEverything = true;
    for (const name of namesDeclaredBy(node)) declared.add(name);
    if (node.type === 'Identifier' && isReference(parent, role)) {
      const name = String(node.name);
      if (impureNames.test(name) || name === 'Date') impure.push(name);
    }
    if (node.type === 'MemberExpression' && nameOf(node.object) === 'Math' && nameOf(node.property) === 'random') {
      impure.push('Math.random');
    }
  });
  return { imports, impure: impure.filter((name) => !declared.has(name)), exportsEverything };
}

/** Names of the file's own that a node brings in: a variable or parameter called `process` is not Node.js. */
function namesDeclaredBy(node: SyntaxNode): string[] {
  if (node.type === 'VariableDeclarator') return namesInPattern(node.id);
  if (Array.isArray(node.params)) return node.params.flatMap(namesInPattern);
  return [];
}

function namesInPattern(pattern: unknown): string[] {
  const node = (pattern ?? { type: '' }) as SyntaxNode;
  switch (node.type) {
    case 'Identifier':
      return [String(node.name)];
    case 'ObjectPattern':
      return (node.properties as SyntaxNode[]).flatMap(({ value, argument }) => namesInPattern(value ?? argument));
    case 'ArrayPattern':
      return (node.elements as unknown[]).flatMap(namesInPattern);
    case 'AssignmentPattern':
      return namesInPattern(node.left);
    case 'RestElement':
      return namesInPattern(node.argument);
    default:
      return [];
  }
}

/** Whether an identifier in this place reads a variable, instead of naming a property, a key or a type. */
function isReference(parent: SyntaxNode | undefined, role: string): boolean {
  if (parent === undefined) return true;
  if (parent.type === 'MemberExpression' && role === 'property') return parent.computed === true;
  if (/^(Property|MethodDefinition|PropertyDefinition|TSPropertySignature|TSMethodSignature)$/.test(parent.type)) {
    return role === 'value' && parent.type !== 'TSPropertySignature';
  }
  return !/^(TSTypeReference|TSQualifiedName|ImportSpecifier|ExportSpecifier|Labeled\w*)$/.test(parent.type);
}

function nameOf(node: unknown): string | undefined {
  const { type, name } = (node ?? {}) as { type?: string; name?: string };
  return type === 'Identifier' ? name : undefined;
}

function walk(
  node: SyntaxNode,
  visit: (node: SyntaxNode, parent: SyntaxNode | undefined, role: string) => void,
  parent?: SyntaxNode,
  role = '',
): void {
  visit(node, parent, role);
  for (const [key, value] of Object.entries(node)) {
    for (const child of Array.isArray(value) ? value : [value]) {
      if (typeof child === 'object' && child !== null && typeof (child as SyntaxNode).type === 'string') {
        walk(child as SyntaxNode, visit, node, key);
      }
    }
  }
}

/** A circle among the edges, as a list of names, or undefined. */
function circleIn(edges: readonly (readonly [string, string])[]): string[] | undefined {
  const search = (path: string[]): string[] | undefined => {
    for (const [from, to] of edges) {
      if (from !== path.at(-1)) continue;
      if (path.includes(to)) return [...path, to];
      const found = search([...path, to]);
      if (found !== undefined) return found;
    }
    return undefined;
  };
  for (const [from] of edges) {
    const found = search([from]);
    if (found !== undefined) return found;
  }
  return undefined;
}
