// Measures how long a function takes: warm-up, then runs of a fixed length, each a batch of calls large enough for the
// clock. Results are summed into a number that leaves this file, so that no call can be optimised away.

export interface Measurement {
  /** Seconds per call. */
  readonly median: number;
  readonly minimum: number;
  /** Half the distance between the 10th and the 90th percentile of the runs, as a share of the median. */
  readonly spread: number;
  readonly percentile95: number;
  readonly runs: number;
}

const warmUpSeconds = 0.3;
const runs = 15;
const secondsPerRun = 0.04;

let consumed = 0;

/**
 * @param call  does the work once; gets the number of the call, so that it can take another input each time, and returns
 *              a finite number that depends on the result
 */
export function measure(call: (index: number) => number): Measurement {
  let index = 0;
  const start = performance.now();
  while (performance.now() - start < warmUpSeconds * 1000) consume(call(index++));
  const perCall = Math.max((performance.now() - start) / 1000 / index, 1e-9);
  const batch = Math.max(1, Math.round(secondsPerRun / perCall));
  const seconds: number[] = [];
  for (let run = 0; run < runs; run++) {
    const runStart = performance.now();
    let sum = 0;
    for (let i = 0; i < batch; i++) sum += call(index++);
    seconds.push((performance.now() - runStart) / 1000 / batch);
    consume(sum);
  }
  return summary(seconds);
}

export function summary(seconds: readonly number[]): Measurement {
  const sorted = [...seconds].sort((a, b) => a - b);
  const median = percentile(sorted, 0.5);
  return {
    median,
    minimum: sorted[0] ?? Number.NaN,
    spread: (percentile(sorted, 0.9) - percentile(sorted, 0.1)) / 2 / median,
    percentile95: percentile(sorted, 0.95),
    runs: sorted.length,
  };
}

/** Linear between the ranks. */
function percentile(sorted: readonly number[], share: number): number {
  const position = share * (sorted.length - 1);
  const below = Math.floor(position);
  const low = sorted[below] ?? Number.NaN;
  return low + (position - below) * ((sorted[below + 1] ?? low) - low);
}

function consume(value: number): void {
  if (!Number.isFinite(value)) throw new Error(`a benchmark gave ${value}, so it did not do its work`);
  consumed += value;
}

/** What all calls added up to; printing it keeps them honest. */
export function checksum(): number {
  return consumed;
}
