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

function shortened(line: string): string {
  return line.length > 60 ? `${line.slice(0, 57)}...` : line;
}
