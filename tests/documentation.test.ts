// Comments against the code they stand over: the arguments a doc comment lists are the parameters of its function, under
// the same names and in the same order, and every file opens by saying what it is about. Planted faults show that the
// comparison is at work.

import { readdirSync, readFileSync } from 'node:fs';
import { join, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseSync } from 'vite';
import { describe, expect, test } from 'vitest';

const root = fileURLToPath(new URL('..', import.meta.url));

describe('arguments in doc comments', () => {
  test('every exported function with listed arguments lists its parameters', () => {
    const documented = sourceFiles().flatMap(documentedFunctions);
    expect(documented.length).toBeGreaterThan(100);
    expect(documented.flatMap(faultsOf)).toEqual([]);
  });

  const planted: readonly [string, string, string, RegExp][] = [
    ['an argument that is gone', ' * @param gone\n', 'kept: number', /gone/],
    ['a parameter without its line', ' * @param first\n', 'first: number, second: number', /second/],
    ['the order of two', ' * @param second\n * @param first\n', 'first: number, second: number', /second, first/],
    ['a renamed parameter', ' * @param oldName\n', 'newName = 1', /newName/],
  ];
  test.each(planted)('%s is found', (_name, lines, parameters, complaint) => {
    const text = `/**\n * Quantity.\n${lines} */\nexport function f(${parameters}): number {\n  return 1;\n}\n`;
    expect(documentedFunctions({ path: 'src/x.ts', text }).flatMap(faultsOf).join('\n')).toMatch(complaint);
  });

  test('a comment over something else is not taken for the function’s', () => {
    const text = '/** @param x */\nconst y = 1;\nexport function f(z: number): number {\n  return z + y;\n}\n';
    expect(documentedFunctions({ path: 'src/x.ts', text })).toEqual([]);
  });
});

describe('opening comments', () => {
  test('every file of src/ says first what it is about', () => {
    const files = sourceFiles();
    expect(files.length).toBeGreaterThan(100);
    expect(files.filter(({ text }) => !/^(?:#!.*\n)?\/\/ \S/.test(text)).map(({ path }) => path)).toEqual([]);
  });
});

interface SourceFile {
  readonly path: string;
  readonly text: string;
}

interface DocumentedFunction {
  /** Where it stands: 'src/tank/surface.ts: evaporationRate'. */
  readonly place: string;
  readonly listed: readonly string[];
  readonly parameters: readonly string[];
}

interface SyntaxNode {
  readonly type: string;
  readonly start: number;
  readonly [property: string]: unknown;
}

function sourceFiles(): SourceFile[] {
  return (readdirSync(join(root, 'src'), { recursive: true }) as string[])
    .filter((name) => /\.(ts|tsx)$/.test(name) && !name.endsWith('.d.ts'))
    .map((name) => {
      const path = `src/${name.split(sep).join('/')}`;
      return { path, text: readFileSync(join(root, path), 'utf8') };
    });
}

function faultsOf({ place, listed, parameters }: DocumentedFunction): string[] {
  const isSame = listed.length === parameters.length && listed.every((name, index) => name === parameters[index]);
  return isSame ? [] : [`${place}: comment lists (${listed.join(', ')}), function takes (${parameters.join(', ')})`];
}

/** Exported functions of a file over which a doc comment lists at least one argument. */
function documentedFunctions({ path, text }: SourceFile): DocumentedFunction[] {
  const { program, comments, errors } = parseSync(path, text);
  if (errors.length > 0) throw new Error(`${path}: ${errors[0]?.message}`);
  return (program.body as unknown as SyntaxNode[]).flatMap((statement) => {
    const declared = statement.declaration as SyntaxNode | null | undefined;
    if (statement.type !== 'ExportNamedDeclaration' || declared?.type !== 'FunctionDeclaration') return [];
    const comment = comments.find(
      ({ end }) => end <= statement.start && /^\s*$/.test(text.slice(end, statement.start)),
    );
    const listed = [...(comment?.value ?? '').matchAll(/@param\s+(\w+)/g)].map((match) => match[1]!);
    if (listed.length === 0) return [];
    const parameters = (declared.params as SyntaxNode[]).map((node) => parameterName(node, text));
    return [{ place: `${path}: ${nameOf(declared.id)}`, listed, parameters }];
  });
}

/** Name of a parameter; one taken apart in place is shown as it stands, since no comment can name it. */
function parameterName(node: SyntaxNode, text: string): string {
  if (node.type === 'Identifier') return nameOf(node);
  if (node.type === 'AssignmentPattern') return parameterName(node.left as SyntaxNode, text);
  if (node.type === 'RestElement') return parameterName(node.argument as SyntaxNode, text);
  return text.slice(node.start, node.end as number);
}

function nameOf(node: unknown): string {
  return String((node as { name?: unknown } | null)?.name ?? '');
}
