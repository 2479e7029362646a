// Public names of the tables of properties.

export { loopRegion, NEAR_CRITICAL, type TableRegion } from './region.ts';
export type { TableStates } from './states.ts';
export type { PropertyTable } from './table.ts';
export { type TabulatedRefrigerant, tabulated } from './tabulated.ts';
