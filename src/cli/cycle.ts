// One line of JSON in, one line of JSON out: the textbook cycle for programs. No input or output happens here.

import { textbookCycle } from '../loop/index.ts';
import { InputError, KettlefinError } from '../numerics/index.ts';

/**
 * Answers one request of `kettlefin cycle --batch`.
 * @param line  a JSON object with the keys of a TextbookCycleRequest, base SI
 * @returns     the cycle as one line of JSON, full precision; or `{"error":{"code":…,"message":…}}` for whatever is wrong
 *              with the line: not JSON, not an object, unknown or missing keys, values no cycle can have
 */
export function answerCycleLine(line: string): string {
  try {
    return JSON.stringify(textbookCycle(parse(line)));
  } catch (error) {
    if (!(error instanceof KettlefinError)) throw error;
    return JSON.stringify({ error: { code: error.code, message: error.message } });
  }
}

/** Whatever the line holds; the cycle checks it at its own door. */
function parse(line: string): Parameters<typeof textbookCycle>[0] {
  try {
    return JSON.parse(line);
  } catch {
    const shown = line.length > 60 ? `${line.slice(0, 57)}...` : line;
    throw new InputError('line', shown, 'one JSON object', 'notJson');
  }
}
