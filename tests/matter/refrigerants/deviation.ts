// How deviations are counted in the tests of this folder.

/** |a − b| as a share of |b|; b must not be 0. */
export function relative(a: number, b: number): number {
  return Math.abs(a - b) / Math.abs(b);
}

/** Enthalpy, energy and entropy have no natural zero: their deviations count on these scales [J/kg, J/(kg K)]. */
export const scales = { enthalpy: 200e3, internalEnergy: 200e3, entropy: 1e3 } as const;
