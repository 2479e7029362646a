// Files that the command line writes. An existing file is never overwritten unless that was asked for.

import { writeFile } from 'node:fs/promises';
import { InputError } from '../numerics/index.ts';
import { fileTitle, fromWhereTheyAre } from './input.ts';

/** Standard output, where a file is asked for. */
export const standardOutput = '-';

/**
 * Writes a text to a new file.
 * @param file     its path
 * @param text     what it shall hold
 * @param replace  whether an existing file may be overwritten
 * @throws InputError 'fileExists', 'noSuchFolder', 'isFolder', 'unwritable'
 */
export async function writeNewFile(file: string, text: string, replace: boolean): Promise<void> {
  try {
    await writeFile(fromWhereTheyAre(file), text, { flag: replace ? 'w' : 'wx' });
  } catch (error) {
    throw writingError(fileTitle(file), error);
  }
}

function writingError(title: string, error: unknown): unknown {
  const code = (error as NodeJS.ErrnoException | undefined)?.code;
  switch (code) {
    case 'EEXIST':
      return new InputError(
        title,
        'this file',
        'a path where nothing is yet, or --force to replace the file',
        'fileExists',
      );
    case 'ENOENT':
    case 'ENOTDIR':
      return new InputError(title, 'this path', 'a path in a folder that exists', 'noSuchFolder');
    case 'EISDIR':
      return new InputError(title, 'a folder', 'the path of a file', 'isFolder');
    default:
      if (typeof code !== 'string' || !/^E[A-Z]+$/.test(code)) return error;
      return new InputError(title, code, 'a path that can be written', 'unwritable');
  }
}
