// Finds results by words: those that stand on a page first, then the steps on the way by what their formulas are called.

import type { WorkingStep } from '../../../quantities/index.ts';
import type { FormulaTexts } from '../../worker/messages.ts';
import type { ChosenResult } from './results.ts';

export interface Match {
  readonly name: string;
  readonly label: string;
}

export interface Matches {
  readonly found: readonly Match[];
  /** How many more there are. */
  readonly more: number;
}

/** Longer lists help nobody. */
const most = 40;

/** Every word typed has to be somewhere in the label or the name. */
export function matching(
  typed: string,
  named: readonly ChosenResult[],
  workings: readonly WorkingStep[],
  formulas: FormulaTexts,
): Matches {
  const words = typed
    .toLowerCase()
    .split(/\s+/)
    .filter((word) => word !== '');
  const has = ({ name, label }: Match) => {
    const text = `${label} ${name} ${name.replaceAll(/([A-Z])/g, ' $1').replaceAll('.', ' ')}`.toLowerCase();
    return words.every((word) => text.includes(word));
  };
  const onPages = new Set(named.map(({ name }) => name));
  const onTheWay = workings
    .filter(({ result }) => !onPages.has(result))
    .map(({ result, formula }) => ({ name: result, label: formulas[formula]?.result.meaning ?? result }));
  const all = [...named, ...onTheWay].filter(has);
  return { found: all.slice(0, most), more: Math.max(0, all.length - most) };
}
