// Formula records: what a physical function computes, in a form that people read and machines evaluate.
// The paper that shows the working, the theory pages and "where is this computed" are all driven by them.

import type { QuantityName } from './records.ts';

/** Anything a function of the engine may be called with in a formula: plain SI numbers by symbol. */
export type FormulaValues = Readonly<Record<string, number>>;

/** One symbol of a formula. */
export interface FormulaSymbol {
  /** What it stands for, in words: "thickness of the layer". */
  readonly meaning: string;
  /** Base SI unit; "1" for a pure number. */
  readonly unit: string;
  /** What it is a number of, where the unit alone does not tell: kelvins may be a level or a difference. */
  readonly quantity?: QuantityName;
}

/**
 * Beside each physical function stands one of these.
 *
 * `expression` is one assignment-free expression in plain algebra, evaluable by a general-purpose mathematics library:
 * ASCII identifiers, + - * / ^, parentheses, comparison with `? :`, and abs, exp, log (natural), sqrt, cbrt, min, max,
 * tanh, atan, log10, pi. Example: `d / k`. Identifiers are exactly the keys of `symbols`.
 * `compute` calls the very function the engine uses, so that a test can hold the two against each other on `examples`.
 */
export interface Formula {
  /** Stable, dotted, unique: 'tank.layerResistance'. */
  readonly id: string;
  /** "Thermal resistance of a solid layer". */
  readonly title: string;
  /** The result's symbol and unit: { symbol: 'R', meaning: '…', unit: 'm² K/W' }. */
  readonly result: FormulaSymbol & { readonly symbol: string };
  readonly expression: string;
  readonly symbols: Readonly<Record<string, FormulaSymbol>>;
  /** Where it was read; "from memory" where it was not re-read; "common practice, no source" for a rule of thumb. */
  readonly source: string;
  /** The range it holds for, in words with numbers. */
  readonly validity: string;
  /** File that holds the function, from the project's root: 'src/tank/layers.ts'. */
  readonly file: string;
  readonly compute: (values: FormulaValues) => number;
  /** At least two points inside the validity, away from special values such as 0 and 1. */
  readonly examples: readonly FormulaValues[];
}

/** A formula without its function: what can be printed, posted and saved. */
export type FormulaText = Omit<Formula, 'compute' | 'examples'>;

/**
 * One result as it was computed: which formula, from which numbers, where those came from.
 * `from` names, for a symbol, either a design path ('tank.waterTemperature') or the `result` of another step.
 */
export interface WorkingStep {
  /** Path of the result inside the Assessment or an intermediate name: 'tank.paths.front'. */
  readonly result: string;
  readonly formula: string;
  readonly inputs: FormulaValues;
  readonly from: Readonly<Record<string, string>>;
  readonly value: number;
}
