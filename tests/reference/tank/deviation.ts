// Relative deviation of a computed value from an outside one.

export function deviation(ours: number, reference: number): number {
  return Math.abs(ours / reference - 1);
}
