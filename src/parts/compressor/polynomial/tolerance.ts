// How far printed values may be off.

/**
 * How far all values of one sheet may be off together, relative: AHRI 540 lets flow, capacity and power of a machine differ by
 * 5 % from what is printed, from memory.
 */
export const sheetTolerance = 0.05;

/** How far a set of ten coefficients is off its own data at one point, relative; typical, from memory. */
export const coefficientScatter = 0.02;
