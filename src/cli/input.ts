// What the command line reads: a design file or standard input, as text. A file is not read further than a design can be
// long, so that a device or an endless pipe is refused like any other large input.

import { createReadStream } from 'node:fs';
import { resolve } from 'node:path';
import type { Readable } from 'node:stream';
import { longestDesignText } from '../design/index.ts';
import { InputError } from '../numerics/index.ts';

/** A character of UTF-8 has at most four bytes. */
const mostBytes = 4 * longestDesignText;

const longestTitle = 200;

/** Standard input, where a file is asked for. */
export const standardInput = '-';

/** How a file is called in messages. */
export function fileTitle(file: string): string {
  if (file === standardInput) return 'standard input';
  return file.length > longestTitle ? `${file.slice(0, longestTitle)}…` : file;
}

/** npm starts a script in the project's folder and tells where the person was; their paths count from there. */
export function fromWhereTheyAre(file: string): string {
  const { npm_lifecycle_event: script, INIT_CWD: start } = process.env;
  return script === 'kettlefin' && start !== undefined ? resolve(start, file) : file;
}

/**
 * The text of a design file.
 * @param file   its path, or "-" for `input`
 * @param input  standard input
 * @throws InputError 'noSuchFile', 'isFolder', 'unreadable', 'tooLarge', 'notText'
 */
export async function readDesignText(file: string, input: Readable): Promise<string> {
  const title = fileTitle(file);
  const source = file === standardInput ? input : createReadStream(fromWhereTheyAre(file));
  const pieces: Buffer[] = [];
  let length = 0;
  try {
    for await (const piece of source) {
      const bytes = Buffer.isBuffer(piece) ? piece : Buffer.from(String(piece));
      length += bytes.length;
      if (length > mostBytes) {
        source.destroy();
        const expected = `a design of at most ${longestDesignText / 1e6} million characters; a design has a few thousand`;
        throw new InputError(title, 'a larger text', expected, 'tooLarge');
      }
      pieces.push(bytes);
    }
  } catch (error) {
    throw readingError(title, error);
  }
  return decoded(title, Buffer.concat(pieces));
}

/** Standard input as pieces of text, for batches. @throws InputError 'unreadable' */
export async function* textChunks(input: Readable): AsyncGenerator<string> {
  input.setEncoding('utf8');
  try {
    for await (const chunk of input) yield chunk;
  } catch (error) {
    throw readingError('standard input', error);
  }
}

function decoded(title: string, bytes: Buffer): string {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    throw new InputError(title, 'what it holds', 'text in UTF-8, as editors save it', 'notText');
  }
}

/** A file or stream that cannot be read is unusable input; anything else is passed on. */
function readingError(title: string, error: unknown): unknown {
  const code = (error as NodeJS.ErrnoException | undefined)?.code;
  if (error instanceof InputError || typeof code !== 'string' || !/^E[A-Z]+$/.test(code)) return error;
  if (code === 'ENOENT' || code === 'ENOTDIR') {
    return new InputError(title, 'this path', 'the path of a file that exists', 'noSuchFile');
  }
  if (code === 'EISDIR') return new InputError(title, 'a folder', 'the path of a file', 'isFolder');
  return new InputError(title, code, 'something that can be read', 'unreadable');
}
