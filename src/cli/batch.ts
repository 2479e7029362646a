// Batch mode: one JSON request a line in, one JSON answer a line out, in order, until the input ends.
// Output is gathered into large pieces, since a write per line costs more than the physics.

import type { Readable, Writable } from 'node:stream';

const pieceLength = 1 << 16;

/**
 * Answers every line of `input` on `output`. Empty lines are passed over; a line that cannot be answered must be turned
 * into an error answer by `answer`, so the batch always goes on.
 * @returns the number of lines answered
 */
export async function answerLines(input: Readable, output: Writable, answer: (line: string) => string) {
  let answered = 0;
  let piece = '';
  let rest = '';
  const take = (line: string) => {
    if (line.trim() === '') return;
    piece += `${answer(line)}\n`;
    answered += 1;
  };
  input.setEncoding('utf8');
  for await (const chunk of input) {
    const lines = (rest + chunk).split('\n');
    rest = lines.pop() ?? '';
    for (const line of lines) take(line);
    if (piece.length >= pieceLength) {
      await write(output, piece);
      piece = '';
    }
  }
  take(rest);
  await write(output, piece);
  return answered;
}

/** Writes and waits until the reader on the other side has taken it. */
function write(output: Writable, text: string): Promise<void> {
  return new Promise((resolve, reject) => {
    output.write(text, (error) => (error ? reject(error) : resolve()));
  });
}
