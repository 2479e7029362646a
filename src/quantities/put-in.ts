// An expression with its numbers put in: what stands under the formula in a working, still plain algebra that a machine can
// evaluate.

import type { PrintedStep } from './printed-step.ts';

/**
 * The expression of a printed step with each symbol replaced by its number; negative ones in brackets.
 * Worked value: "(h_2s - h_1) / eta_s" of 425000, 391000, 0.63 → "(425000 - 391000) / 0.63".
 */
export function numbersPutIn({ expression, inputs }: Pick<PrintedStep, 'expression' | 'inputs'>): string {
  const texts = new Map(inputs.map(({ symbol, value }) => [symbol, value.text]));
  // Numbers are matched too, so that the e of "1e5" is not taken for a symbol.
  return expression.replaceAll(/\d[\d.]*(?:[eE][+-]?\d+)?|[A-Za-z_]\w*/g, (word) => {
    const text = texts.get(word);
    if (text === undefined) return word;
    return text.startsWith('-') ? `(${text})` : text;
  });
}
