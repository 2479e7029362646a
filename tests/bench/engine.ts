// Measures the engine's cases and answers with rows for the table.

import { type BenchCase, engineCases } from './cases.ts';
import { checksum, measure } from './measure.ts';

export interface BenchRow {
  readonly id: string;
  readonly title: string;
  readonly unit: 's' | 'byte';
  readonly budget: number | undefined;
  readonly measured: { median: number; minimum: number; spread: number; runs: number; judged: number } | undefined;
  /** Why there is no measured value. */
  readonly missing: string | undefined;
}

export function measureEngine(isWanted: (id: string) => boolean): { rows: BenchRow[]; checksum: number } {
  const rows = engineCases.filter(({ id }) => isWanted(id)).map(rowOf);
  return { rows, checksum: checksum() };
}

function rowOf({ id, title, budget, judged, prepare }: BenchCase): BenchRow {
  const common = { id, title, unit: 's', budget } as const;
  if (prepare === undefined) return { ...common, measured: undefined, missing: 'not built yet' };
  const result = measure(prepare());
  const { median, minimum, spread, runs } = result;
  return { ...common, measured: { median, minimum, spread, runs, judged: result[judged] }, missing: undefined };
}
