// Text -> document: size, JSON, envelope, "newer than this program?", migration, validation. All problems are gathered,
// each with its path; nothing is repaired silently. And back: the text of a document, key for key as it was read.

import type * as z from 'zod/mini';
import { nearestWord, quantityRecord } from '../quantities/index.ts';
import { crossProblems } from './checks/cross-checks.ts';
import { noticesOf } from './checks/machine-notices.ts';
import { fieldRecord, fieldRecords, isOfKind, listRecord } from './field-records.ts';
import { readJson } from './json-text.ts';
import { migrate } from './migrations/migrations.ts';
import type { DesignNotice } from './notices.ts';
import { genericPath, type Part, partAt } from './paths.ts';
import type { DesignProblem, Result } from './problems.ts';
import { type DesignDocument, designSchema, formatVersion } from './schema/design.ts';
import { type FieldProblem, mostItems } from './schema/field.ts';

/** A design is a few kilobytes; a longer text is refused before it is read [characters]. */
export const longestDesignText = 2_000_000;

const mostProblems = 50;

/** A valid document, and what is to be told of it: what an older format left behind, what is unusual. */
export type ReadDesign = Result<{ readonly document: DesignDocument; readonly notices: readonly DesignNotice[] }>;

/** Reads the text of a design file. */
export function parseDesign(text: string): ReadDesign {
  if (text.length > longestDesignText) {
    const received = `${(text.length / 1e6).toFixed(1)} million characters`;
    const expected = `at most ${longestDesignText / 1e6} million characters; a design has a few thousand`;
    return failure({ path: '', code: 'tooLarge', received, expected });
  }
  if (text.trim() === '')
    return failure({ path: '', code: 'empty', received: '', expected: 'the JSON text of a design' });
  const json = readJson(text);
  if (!json.ok) return failure(json.problem);
  return checkDesign(json.value);
}

/** Checks a value that may be a design, of this or an older format version. */
export function checkDesign(value: unknown): ReadDesign {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) {
    return failure({
      path: '',
      code: 'notADesign',
      received: say(value),
      expected: `an object { "formatVersion": ${formatVersion}, … }`,
    });
  }
  const envelope = value as Part;
  const versionProblem = checkVersion(envelope.formatVersion);
  if (versionProblem !== undefined) return failure(versionProblem);
  const { document, notices } = migrate(envelope, envelope.formatVersion as number, formatVersion);
  return validate(document, notices);
}

/** The text of a document: two blanks of indentation, keys in the order they have, a line break at the end. */
export function serialiseDesign(document: DesignDocument): string {
  return `${JSON.stringify(document, null, 2)}\n`;
}

function validate(value: Part, notices: readonly DesignNotice[]): ReadDesign {
  const unsafe = unsafeKeys(value, '');
  const parsed = designSchema.safeParse(value);
  if (!parsed.success || unsafe.length > 0) {
    const fromSchema = parsed.success ? [] : parsed.error.issues.flatMap((issue) => fromIssue(issue, value));
    return { ok: false, problems: [...unsafe, ...fromSchema].slice(0, mostProblems) };
  }
  // The value itself, not the parser's copy: its keys keep their order.
  const document = value as unknown as DesignDocument;
  const problems = crossProblems(document);
  if (problems.length > 0) return { ok: false, problems };
  return { ok: true, document, notices: [...notices, ...noticesOf(document)] };
}

function checkVersion(version: unknown): DesignProblem | undefined {
  const expected = `a format version from 1 to ${formatVersion}`;
  if (version === undefined) return { path: 'formatVersion', code: 'missing', received: '', expected };
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1) {
    return { path: 'formatVersion', code: 'badFormatVersion', received: say(version), expected };
  }
  if (version <= formatVersion) return undefined;
  return {
    path: 'formatVersion',
    code: 'newerFormat',
    received: String(version),
    expected: `${expected}; a newer release of this program can read it`,
  };
}

/** Keys that an object treats specially would slip past the schema. */
function unsafeKeys(value: unknown, path: string): DesignProblem[] {
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, child]) => {
    const inner = path === '' ? key : `${path}.${key}`;
    if (key === '__proto__') return [unknownKey(inner, key, undefined, knownKeys(path))];
    return unsafeKeys(child, inner);
  });
}

function fromIssue(issue: z.core.$ZodIssue, root: Part): DesignProblem[] {
  const path = issue.path.map(String).join('.');
  const raw = path === '' ? root : partAt(root, path);
  if (issue.code === 'unrecognized_keys') {
    return issue.keys
      .filter((key) => key !== '__proto__')
      .map((key) => unknownKey(path === '' ? key : `${path}.${key}`, key, kindOf(raw), knownKeys(path, kindOf(raw))));
  }
  if (issue.code === 'custom') return [{ path, ...(issue.params?.problem as FieldProblem) }];
  const list = listRecord(path);
  if (list !== undefined && Array.isArray(raw)) {
    const code = issue.code === 'too_big' ? 'tooManyItems' : 'missing';
    return [{ path, code, received: `${raw.length} of them`, expected: expectedAt(path, root) }];
  }
  if (raw === undefined) return [{ path, code: 'missing', received: '', expected: expectedAt(path, root) }];
  const choices = issue.code === 'invalid_union' || issue.code === 'invalid_value';
  if (choices && typeof raw === 'string') {
    const names = choicesAt(path, root);
    const nearest = nearestWord(raw, names);
    return [
      {
        path,
        code: 'unknownChoice',
        received: raw.slice(0, 60),
        expected: names.length === 0 ? expectedAt(path, root) : `one of ${names.join(', ')}`,
        ...(nearest === undefined ? {} : { nearest }),
      },
    ];
  }
  const code = issue.code === 'invalid_type' || choices ? 'wrongType' : 'badText';
  if (issue.code === 'too_big' && typeof raw === 'string') {
    const expected = `a text of at most ${issue.maximum} characters`;
    return [{ path, code, received: `a text of ${raw.length} characters`, expected }];
  }
  return [{ path, code, received: say(raw), expected: expectedAt(path, root) }];
}

function unknownKey(path: string, key: string, kind: string | undefined, known: readonly string[]): DesignProblem {
  const nearest = nearestWord(key, known);
  const where = kind === undefined ? '' : ` for the kind "${kind}"`;
  return {
    path,
    code: 'unknownKey',
    received: key,
    expected: `one of ${known.join(', ')}${where}`,
    ...(nearest === undefined ? {} : { nearest }),
  };
}

function kindOf(raw: unknown): string | undefined {
  const kind = typeof raw === 'object' && raw !== null ? (raw as Part).kind : undefined;
  return typeof kind === 'string' ? kind : undefined;
}

/** Keys accepted directly under a path, in one kind of a union. */
function knownKeys(path: string, kind?: string): readonly string[] {
  const generic = genericPath(path);
  const prefix = generic === '' ? '' : `${generic}.`;
  const inside = fieldRecords.filter((field) => field.path.startsWith(prefix));
  const ofKind = kind === undefined ? [] : inside.filter((field) => isOfKind(field, generic, kind));
  const isKind = (field: (typeof inside)[number]) => field.path === `${prefix}kind`;
  const keys = (ofKind.length === 0 ? inside : inside.filter((field) => isKind(field) || ofKind.includes(field))).map(
    (field) => field.path.slice(prefix.length).split('.')[0]!,
  );
  return [...new Set(path === '' ? ['formatVersion', ...keys] : keys)];
}

function choicesAt(path: string, root: Part): readonly string[] {
  return (recordAt(path, root)?.choices ?? []).map(({ name }) => name);
}

function recordAt(path: string, root: Part) {
  return fieldRecord(path, root as unknown as DesignDocument);
}

/** What the field or part at a path should be, in words. */
function expectedAt(path: string, root: Part): string {
  const list = listRecord(path);
  if (list !== undefined)
    return `a list of ${list.optional ? 'at most' : '1 to'} ${mostItems} parts, each ${oneOf(list.itemName)}`;
  const field = recordAt(path, root);
  const why = field?.why === undefined ? '' : `: ${field.why}`;
  if (field?.choices !== undefined) return `one of ${field.choices.map(({ name }) => name).join(', ')}${why}`;
  if (field?.quantity !== undefined) return `${quantityWords(field.quantity)}${why}`;
  if (path === 'prices.currency') return 'three capital letters, such as EUR';
  if (field !== undefined) return 'a text in quotation marks, not empty';
  const keys = knownKeys(path, kindOf(partAt(root, path)));
  if (!keys.includes('kind')) return `an object with ${keys.join(', ')}`;
  const reason = recordAt(`${path}.kind`, root)?.why;
  return `an object { "kind": …, … }${reason === undefined ? '' : `: ${reason}`}`;
}

function oneOf(noun: string): string {
  return `${/^[aeiou]/.test(noun) ? 'an' : 'a'} ${noun}`;
}

function quantityWords(quantity: Parameters<typeof quantityRecord>[0]): string {
  const [first, second] = quantityRecord(quantity).examples;
  return `a text in quotation marks such as "${first}" or "${second}"`;
}

function failure(problem: DesignProblem): { readonly ok: false; readonly problems: readonly DesignProblem[] } {
  return { ok: false, problems: [problem] };
}

/** A short form of any JSON value. */
function say(value: unknown): string {
  if (Array.isArray(value)) return 'a list';
  if (typeof value === 'object' && value !== null) return 'an object';
  return String(value).slice(0, 60);
}
