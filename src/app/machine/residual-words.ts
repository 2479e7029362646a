// How far the likely machine is off a value that was given of it, and where that value stands.

import type { MachineAnswer } from '../../assess/index.ts';
import { sayQuantity, type UnitView } from '../../quantities/index.ts';
import { say } from '../ui/say.ts';

export type KnownResidual = MachineAnswer['residuals'][number];

/** With its sign: the model is above or below what was given. */
export function offBy({ of, deviation }: Pick<KnownResidual, 'of' | 'deviation'>, view: UnitView): string {
  const said =
    of === 'dischargeTemperature'
      ? say(deviation, 'temperatureDifference', view, 2)
      : sayQuantity(deviation, 'fraction', view, 2);
  return deviation > 0 ? `+${said}` : said;
}

/** The field of a list that holds the value: a point of a table stands in its text, one of ten coefficients in theirs. */
const fieldOfList: Readonly<Record<string, string>> = { tables: 'table', coefficients: 'values', bench: 'evaporating' };

/** Path of the field that a residual is of: 'machine.compressor.tables.0.points.3' is of 'machine.compressor.tables.0.table'. */
export function fieldOfResidual({ path, of }: Pick<KnownResidual, 'path' | 'of'>): string {
  const [item, list] = /^machine\.compressor\.([a-z]+)\.\d+/.exec(path) ?? [];
  if (item === undefined || list === undefined) return path;
  return `${item}.${fieldOfList[list] ?? of}`;
}
