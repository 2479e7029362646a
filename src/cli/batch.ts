// Batch mode: one JSON request a line in, one JSON answer a line out, in order, until the input ends.
// Output is gathered into large pieces, since a write per line costs more than the physics. Whatever a line holds, it is
// answered and the batch goes on; what was answered is written even if the input breaks off.

import type { Readable, Writable } from 'node:stream';
import { textChunks } from './input.ts';

const pieceLength = 1 << 16;

/** A request has a few hundred characters; a longer line is refused without being kept. */
export const longestLine = 1_000_000;

const byteOrderMark = '\uFEFF';

/**
 * Answers every line of `input` on `output`. Empty lines are passed over; a byte order mark at the start is not part of the
 * first line.
 * @param input   requests, one a line
 * @param output  takes the answers, one a line
 * @param answer  one line to one line of JSON; turns everything wrong with the line into an error answer
 * @throws Error after the last line if `answer` itself failed on any: those lines are answered with code 'internalError'
 */
export async function answerLines(input: Readable, output: Writable, answer: (line: string) => string): Promise<void> {
  let piece = '';
  let faults = 0;
  const lines = new LineReader((line) => {
    try {
      piece += `${line === undefined ? tooLong : answer(line)}\n`;
    } catch (error) {
      faults += 1;
      piece += `${internalError(error)}\n`;
    }
  });
  try {
    for await (const chunk of textChunks(input)) {
      lines.read(chunk);
      if (piece.length < pieceLength) continue;
      const whole = piece;
      piece = '';
      await write(output, whole);
    }
    lines.end();
  } finally {
    await write(output, piece);
  }
  if (faults > 0) throw new Error(`${faults} of the lines met a fault of the program`);
}

const tooLong = errorAnswer('lineTooLong', `this line is longer than ${longestLine} characters`);

function internalError(error: unknown): string {
  return errorAnswer('internalError', `a fault of the program: ${error instanceof Error ? error.message : error}`);
}

function errorAnswer(code: string, message: string): string {
  return JSON.stringify({ error: { code, message } });
}

/** Cuts chunks into lines. A line over the limit is told as undefined, once, and its text is dropped as it comes. */
class LineReader {
  readonly #take: (line: string | undefined) => void;
  #parts: string[] = [];
  #length = 0;
  #isFirst = true;

  constructor(take: (line: string | undefined) => void) {
    this.#take = take;
  }

  read(chunk: string): void {
    let start = 0;
    for (let end = chunk.indexOf('\n'); end >= 0; end = chunk.indexOf('\n', start)) {
      this.#keep(chunk.slice(start, end));
      this.end();
      start = end + 1;
    }
    this.#keep(chunk.slice(start));
  }

  end(): void {
    const line = this.#parts.join('');
    const isTooLong = this.#length > longestLine;
    this.#parts = [];
    this.#length = 0;
    if (isTooLong) this.#take(undefined);
    else if (line.trim() !== '') this.#take(line);
  }

  #keep(text: string): void {
    const part = this.#isFirst && text.startsWith(byteOrderMark) ? text.slice(1) : text;
    if (text !== '') this.#isFirst = false;
    this.#length += part.length;
    if (this.#length > longestLine) this.#parts = [];
    else if (part !== '') this.#parts.push(part);
  }
}

/** Writes and waits until the reader on the other side has taken it. */
function write(output: Writable, text: string): Promise<void> {
  if (text === '') return Promise.resolve();
  return new Promise((resolve, reject) => {
    output.write(text, (error) => (error ? reject(error) : resolve()));
  });
}
