export { yearFormulas, yearWorking } from './formulas.ts';
export type { Energies, MonthResult, Year, YearInput } from './year.ts';
export { seasonCop, yearOfMonths } from './year.ts';
