// Random numbers from a seed, for machines and noise of the tests.

/** Uniform on 0 to 1, ends excluded. */
export type Random = () => number;

/** Source: G. Marsaglia 2003, Xorshift RNGs (from memory), 32 bits, started from a mixed seed. */
export function randomFrom(seed: number): Random {
  let state = (Math.imul(seed + 1, 0x9e3779b1) ^ 0x85ebca6b) >>> 0 || 1;
  const next = () => {
    state ^= state << 13;
    state >>>= 0;
    state ^= state >>> 17;
    state ^= state << 5;
    state >>>= 0;
    return (state + 0.5) / 2 ** 32;
  };
  for (let i = 0; i < 8; i++) next();
  return next;
}

/** Standard normal, by Box and Muller. */
export function normal(random: Random): number {
  return Math.sqrt(-2 * Math.log(random())) * Math.cos(2 * Math.PI * random());
}
