// Editing a document: one field, or the kind of a part. The new document is checked as a whole; the old one stays as it is,
// and everything beside the path is shared. An empty text takes an optional field out again, back to its default.

import { type FieldRecord, fieldRecord, fieldRecords } from './field-records.ts';
import { checkDesign } from './parse.ts';
import { type Part, partAt, textAt, withPart } from './paths.ts';
import type { DesignProblem, Result } from './problems.ts';
import type { DesignDocument } from './schema/design.ts';

export type EditResult = Result<{ readonly document: DesignDocument }>;

/** The text of a field as it was written; undefined where the default holds. */
export function getField(document: DesignDocument, path: string): string | undefined {
  return textAt(document, path);
}

/** The document with another text in one field. For the kind of a part use setKind. */
export function setField(document: DesignDocument, path: string, text: string): EditResult {
  const record = fieldRecord(path, document);
  if (record === undefined) return refused(unknownPath(path));
  if (record.type === 'kind') return setKind(document, path.slice(0, -'.kind'.length), text, {});
  const written = text.trim();
  if (written === '') return clearField(document, record);
  return checkDesign(withPart(document, path.split('.'), written));
}

/**
 * The document with a part of another kind. Fields that both kinds have keep their text; the others come from `texts`, by
 * path. A required field that is in neither is a problem 'missing' at its path.
 */
export function setKind(
  document: DesignDocument,
  path: string,
  kind: string,
  texts: Readonly<Record<string, string>>,
): EditResult {
  const selector = fieldRecords.find((record) => record.path === `${path}.kind`);
  if (selector === undefined) return refused(unknownPath(`${path}.kind`));
  if (kind.trim() === '' && selector.optional) return checkDesign(withPart(document, path.split('.'), undefined));
  const existing = partAt(document, path) as Part | undefined;
  let part: Part = { kind };
  for (const field of fieldsOfKind(path, kind)) {
    const text = texts[field.path] ?? textAt(existing, field.path.slice(path.length + 1));
    if (text !== undefined) part = withPart(part, field.path.slice(path.length + 1).split('.'), text);
  }
  return checkDesign(withPart(document, path.split('.'), part));
}

/** The fields of one kind of a part, in the order of the schema. */
export function fieldsOfKind(path: string, kind: string): readonly FieldRecord[] {
  return fieldRecords.filter(({ unionKind }) => unionKind?.path === path && unionKind.kinds.includes(kind));
}

/** Takes an optional field out; an insulation layer goes with either of its two fields. */
function clearField(document: DesignDocument, record: FieldRecord): EditResult {
  const layer = /^(tank\.load\.insulation\.[a-z]+)\.(?:material|thickness)$/.exec(record.path);
  if (layer !== null) return checkDesign(withPart(document, layer[1]!.split('.'), undefined));
  if (!record.optional) {
    const expected = `${record.label.toLowerCase()}: it has no default`;
    return refused({ path: record.path, code: 'notOptional', received: '', expected });
  }
  return checkDesign(withPart(document, record.path.split('.'), undefined));
}

function unknownPath(path: string): DesignProblem {
  return { path, code: 'unknownPath', received: path, expected: 'the path of a field of this design' };
}

function refused(problem: DesignProblem): EditResult {
  return { ok: false, problems: [problem] };
}
