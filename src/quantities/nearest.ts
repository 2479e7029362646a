// The nearest of a list of words, for "did you mean": Levenshtein distance, and nothing when none is near.

/** The candidate nearest to `word`, or undefined if more than about a third of it would have to change. */
export function nearestWord(word: string, candidates: readonly string[]): string | undefined {
  const lower = word.toLowerCase();
  let best: string | undefined;
  let bestDistance = Math.max(1, Math.floor(Math.max(word.length, 3) / 3)) + 0.5;
  for (const candidate of candidates) {
    if (Math.abs(candidate.length - word.length) > bestDistance) continue;
    const distance = editDistance(lower, candidate.toLowerCase());
    if (distance < bestDistance) {
      best = candidate;
      bestDistance = distance;
    }
  }
  return best;
}

/** Least number of single letters to insert, remove or replace (V. I. Levenshtein 1966). */
export function editDistance(left: string, right: string): number {
  let previous = Array.from({ length: right.length + 1 }, (_, index) => index);
  for (let row = 1; row <= left.length; row++) {
    const current = [row];
    for (let column = 1; column <= right.length; column++) {
      const replaced = previous[column - 1]! + (left[row - 1] === right[column - 1] ? 0 : 1);
      current.push(Math.min(replaced, previous[column]! + 1, current[column - 1]! + 1));
    }
    previous = current;
  }
  return previous[right.length]!;
}
