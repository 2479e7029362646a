// The textbook cycle for programs: one line of JSON in and out. No input or output happens here.

import { type TextbookCycleRequest, textbookCycle } from '../../loop/index.ts';
import { answerLine } from '../request-line.ts';

/**
 * Answers one request of `kettlefin cycle --batch`.
 * @param line  a JSON object with the keys of a TextbookCycleRequest, base SI
 * @returns     the cycle as one line of JSON, full precision; or `{"error":{"code":…,"message":…}}` for whatever is wrong
 *              with the line: not JSON, not an object, unknown or missing keys, values no cycle can have
 */
export function answerCycleLine(line: string): string {
  // Whatever the line holds; the cycle checks it at its own door.
  return answerLine(line, (request) => JSON.stringify(textbookCycle(request as TextbookCycleRequest)));
}
