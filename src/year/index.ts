// Public names of the year: twelve steady months, their energies and their working.

export { yearFormulas } from './formulas.ts';
export type { MonthOrigins, YearPart } from './working.ts';
export { shareStep, sumStep, yearWorking } from './working.ts';
export type { Energies, MonthResult, Year, YearInput } from './year.ts';
export { roomHeatWithDehumidifier, seasonCop, shareOfEnergy, sumOfMonths, yearOfMonths } from './year.ts';
