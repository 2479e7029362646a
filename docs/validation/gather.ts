// Gathers the rows of every tests/reference/**/rows.ts. Bundled and run by make.mjs.

import type { ValidationRow } from '../../tests/reference/validation.ts';

interface RowsFile {
  readonly validationRows: () => readonly ValidationRow[];
}

const files = import.meta.glob<RowsFile>('../../tests/reference/**/rows.ts', { eager: true });

export function gatherRows(): readonly { readonly file: string; readonly rows: readonly ValidationRow[] }[] {
  return Object.entries(files)
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([path, { validationRows }]) => ({ file: path.replace('../../', ''), rows: validationRows() }));
}
