export type { Band, Estimate, Origin } from './estimate.ts';
export type { Fact, Finding, Severity, Subject } from './finding.ts';
export type { Formula, FormulaSymbol, FormulaValues, WorkingStep } from './formula.ts';
