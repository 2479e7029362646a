// The formula records as the page shows them: without their functions, which cannot be posted. Loaded when somebody first
// asks how a number was computed.

import { allFormulas } from '../../assess/index.ts';
import type { FormulaTexts } from './messages.ts';

export function formulaTexts(): FormulaTexts {
  return Object.fromEntries(
    allFormulas.map(({ id, title, expression, result, symbols, source, validity, file }) => [
      id,
      { id, title, expression, result, symbols, source, validity, file },
    ]),
  );
}
