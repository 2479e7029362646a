// Streams in memory, so that a command can run inside a test.

import { Readable, Writable } from 'node:stream';
import type { Streams } from '../../src/cli/command.ts';

export function collected(input = ''): {
  readonly streams: Streams;
  readonly output: () => string;
  readonly errors: () => string;
} {
  const output = collector();
  const errors = collector();
  return {
    streams: { input: Readable.from([Buffer.from(input)]), output: output.stream, errors: errors.stream },
    output: output.text,
    errors: errors.text,
  };
}

function collector() {
  const pieces: string[] = [];
  const stream = new Writable({
    decodeStrings: false,
    write(piece, _encoding, done) {
      pieces.push(String(piece));
      done();
    },
  });
  return { stream, text: () => pieces.join('') };
}
