// Every formula record of the engine in one list, for whoever shows how a number was computed. Kept apart from what makes
// the steps: an assessment needs the steps at once, the records only when somebody asks.

import { accountsFormulas } from '../accounts/index.ts';
import { cautionsFormulas } from '../cautions/index.ts';
import { loopFormulas } from '../loop/index.ts';
import { airFormulas } from '../matter/air/index.ts';
import { refrigerantFormulas } from '../matter/refrigerants/index.ts';
import { waterFormulas } from '../matter/water/index.ts';
import { compressorFormulas, identifiedFormulas } from '../parts/compressor/index.ts';
import { exchangerFormulas } from '../parts/exchangers/index.ts';
import { plantFormulas } from '../plant/index.ts';
import type { Formula } from '../quantities/index.ts';
import { surroundingsFormulas } from '../surroundings/index.ts';
import { tankFormulas } from '../tank/index.ts';
import { yearFormulas } from '../year/index.ts';

/** Every formula record of the engine. */
export const allFormulas: readonly Formula[] = [
  ...refrigerantFormulas,
  ...airFormulas,
  ...waterFormulas,
  ...surroundingsFormulas,
  ...tankFormulas,
  ...compressorFormulas,
  ...identifiedFormulas,
  ...exchangerFormulas,
  ...loopFormulas,
  ...plantFormulas,
  ...yearFormulas,
  ...accountsFormulas,
  ...cautionsFormulas,
];

const formulasById = new Map(allFormulas.map((formula) => [formula.id, formula]));

/** The formula of that id; undefined for an id nobody has. */
export function formulaById(id: string): Formula | undefined {
  return formulasById.get(id);
}
