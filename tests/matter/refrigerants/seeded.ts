// Random numbers of the tests of this folder.

/** Numbers between 0 and 1 that are the same in each run (Park & Miller 1988, multiplier 48271). */
export function seeded(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
}
