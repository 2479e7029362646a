// Gathers the rows of every tests/reference/**/rows.ts. Bundled and run by make.mjs; the tests call it too.

import type { ValidationRow } from '../../tests/reference/validation.ts';

interface RowsModule {
  readonly validationRows: () => readonly ValidationRow[];
}

/** The rows of one file. */
export interface RowsFile {
  /** 'tests/reference/tank/rows.ts'. */
  readonly file: string;
  readonly rows: readonly ValidationRow[];
}

const files = import.meta.glob<RowsModule>('../../tests/reference/**/rows.ts', { eager: true });

export function gatherRows(): readonly RowsFile[] {
  return Object.entries(files)
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([path, { validationRows }]) => ({ file: path.replace('../../', ''), rows: validationRows() }));
}
