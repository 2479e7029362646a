// When Newton's method has arrived: shared by all solvers of this folder.

/** What a solver passes as the step before its first one: trusts a first step only if it is very small. */
export const BEFORE_FIRST_STEP = 1e-2;

/**
 * Whether the step just taken is the last one needed. Newton's error squares, so the next step would be about
 * size · (size/before)²; where that is below rounding it is not taken. A step that no longer shrinks although it is
 * already small has met rounding, as it does close to the critical point.
 * @param size    size of this step, relative
 * @param before  size of the step before, relative
 */
export function isLastStep(size: number, before: number): boolean {
  if (size <= 1e-9) return true;
  if (size > 1e-5) return false;
  return size >= before || (size / before) ** 2 * size < 1e-15;
}
