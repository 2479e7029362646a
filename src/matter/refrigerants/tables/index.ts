// Public names of the tables of properties.

export { AROUND_CRITICAL, loopRegion, type TableRegion } from './region.ts';
export type { TableStates } from './states.ts';
export type { PropertyTable } from './table.ts';
export { type TabulatedRefrigerant, tabulated } from './tabulated.ts';
