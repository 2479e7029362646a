// Measures the engine's cases and answers with rows for the table.

import { type BenchCase, engineCases } from './cases.ts';
import { checksum, measure } from './measure.ts';

export interface BenchRow {
  readonly id: string;
  readonly title: string;
  readonly unit: 's' | 'byte' | '1/s';
  readonly budget: number | undefined;
  readonly measured: { median: number; minimum: number; spread: number; runs: number; judged: number } | undefined;
  /** Why there is no measured value. */
  readonly missing: string | undefined;
}

/**
 * @param isWanted    whether the case of this name is to be measured
 * @param withDetail  whether cases were asked for by name, so that details belong to them
 */
export function measureEngine(
  isWanted: (id: string) => boolean,
  withDetail: boolean,
): { rows: BenchRow[]; checksum: number } {
  const cases = engineCases.filter(({ id, isDetail }) => isWanted(id) && (withDetail || isDetail === undefined));
  return { rows: cases.map(rowOf), checksum: checksum() };
}

function rowOf({ id, title, budget, judged, isRate, bytes, prepare }: BenchCase): BenchRow {
  const common = { id, title, unit: isRate ? '1/s' : bytes === undefined ? 's' : 'byte', budget } as const;
  if (bytes !== undefined) {
    const value = bytes();
    return {
      ...common,
      measured: { median: value, minimum: value, spread: 0, runs: 1, judged: value },
      missing: undefined,
    };
  }
  if (prepare === undefined) return { ...common, measured: undefined, missing: 'not built yet' };
  const result = measure(prepare());
  const { spread, runs } = result;
  const told = (seconds: number) => (isRate ? 1 / seconds : seconds);
  const values = { median: told(result.median), minimum: told(result.minimum), judged: told(result[judged]) };
  return { ...common, measured: { ...values, spread, runs }, missing: undefined };
}
