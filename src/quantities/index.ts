// Public names of the quantities: units, reading and saying them, estimates, findings, formula records.

export { chainOf, type ResultChain, unknownResult } from './chain.ts';
export type { Band, Estimate, Origin } from './estimate.ts';
export {
  type ArithmeticOperator,
  type ComparisonOperator,
  type Expression,
  evaluateExpression,
  parseExpression,
  symbolsIn,
} from './expression.ts';
export {
  type Certainty,
  type Fact,
  type Finding,
  type Severity,
  type Subject,
  subjects,
  subjectTitles,
} from './finding.ts';
export type { Formula, FormulaSymbol, FormulaText, FormulaValues, WorkingStep } from './formula.ts';
export { editDistance, nearestWord } from './nearest.ts';
export {
  type PrintedInput,
  type PrintedNumber,
  type PrintedStep,
  printedResult,
  printedStep,
  quantityOf,
} from './printed-step.ts';
export { numbersPutIn } from './put-in.ts';
export {
  acceptedWords,
  type QuantityContext,
  type QuantityProblem,
  type QuantityProblemCode,
  type ReadResult,
  readQuantity,
} from './read.ts';
export {
  isQuantityName,
  type QuantityName,
  type QuantityRecord,
  quantityRecord,
  quantityRecords,
  type UnitView,
} from './records.ts';
export {
  fixedDecimals,
  formatNumber,
  fromView,
  quantityUnit,
  sayBand,
  sayBandParts,
  sayQuantity,
  sayRange,
  toView,
} from './say.ts';
export { findUnit, secondsPerYear, standardGravity, type Unit } from './units.ts';
export { insideSentence, listed, sentenceStart } from './words.ts';
export type { StepInput, StepInputs } from './working-step.ts';
export { workingStep } from './working-step.ts';
