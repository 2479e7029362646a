// One line of a batch: the JSON value it holds, or what keeps it from being one. A key given twice is refused, since one of
// its values would be lost silently.

import { readJson } from '../design/index.ts';
import { InputError, KettlefinError } from '../numerics/index.ts';

/**
 * The answer to one line: `{"error":{"code":…,"message":…}}` on one line for whatever is wrong with it.
 * @param line    what was read
 * @param answer  the answer to the parsed line, as one line of JSON; may throw a KettlefinError
 */
export function answerLine(line: string, answer: (request: unknown) => string): string {
  try {
    return answer(parsedRequest(line));
  } catch (error) {
    if (!(error instanceof KettlefinError)) throw error;
    return JSON.stringify({ error: { code: error.code, message: error.message } });
  }
}

/**
 * The JSON value of a request.
 * @param text   its text, on one line or several
 * @param place  what the text is called in messages
 * @throws InputError 'notJson', 'tooDeep', 'duplicateKey'
 */
export function parsedRequest(text: string, place = 'line'): unknown {
  const plain = plainJson(text);
  if (plain !== undefined) return plain;
  const read = readJson(text);
  if (read.ok) return read.value;
  const { path, code, expected, column } = read.problem;
  const isJson = code === 'tooDeep' || code === 'duplicateKey';
  if (isJson) throw new InputError(path || place, code === 'tooDeep' ? 'what it holds' : 'given twice', expected, code);
  throw new InputError(
    place,
    shortened(text.trim().replace(/\s+/g, ' ')),
    `one JSON object; column ${column} should hold ${expected}`,
    'notJson',
  );
}

/**
 * The value of a plain text in a tenth of the time that reading it word by word takes; undefined where that is needed to know
 * whether it is sound. As many colons in the text as keys in the value: then no key was given twice, since JSON.parse keeps
 * one of those, and a colon inside a text only adds to the count.
 */
function plainJson(text: string): unknown {
  if (text.length > longestPlain) return undefined;
  try {
    const value: unknown = JSON.parse(text);
    return countKeys(value) === countColons(text) ? value : undefined;
  } catch {
    return undefined;
  }
}

/** A longer text is read word by word only: it may cost much to look at twice [characters]. */
const longestPlain = 1000;

function countColons(text: string): number {
  let count = 0;
  for (let at = text.indexOf(':'); at >= 0; at = text.indexOf(':', at + 1)) count++;
  return count;
}

/** Keys of a value and of everything in it; not a number where it is deeper than a request can be. */
function countKeys(value: unknown, depth = 0): number {
  if (typeof value !== 'object' || value === null) return 0;
  if (depth > deepestPlain) return Number.NaN;
  const entries = Object.values(value);
  let count = Array.isArray(value) ? 0 : entries.length;
  for (const entry of entries) count += countKeys(entry, depth + 1);
  return count;
}

const deepestPlain = 8;

function shortened(line: string): string {
  return line.length > 60 ? `${line.slice(0, 57)}...` : line;
}
