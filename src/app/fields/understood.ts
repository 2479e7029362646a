// What was understood of a typed text, said back: a quantity in the units of the view, a pasted table by its points and columns.

import type { FieldRecord } from '../../design/index.ts';
import { hasMachineReading, machineReading } from '../../parts/compressor/index.ts';
import { listed, type QuantityContext, readQuantity, sayBand, type UnitView } from '../../quantities/index.ts';

/** Undefined where nothing was typed, where it cannot be used, and where it would be said back letter for letter. */
export function understood(
  record: FieldRecord,
  text: string,
  context: QuantityContext,
  view: UnitView,
): string | undefined {
  if (text.trim() === '') return undefined;
  if (record.lines && record.path.endsWith('.table')) return tableWords(text);
  if (record.quantity === undefined) return undefined;
  const read = readQuantity(text, record.quantity, context);
  return read.ok ? unlessAlike(text, sayBand(read.estimate, record.quantity, view, context)) : undefined;
}

/** The station that asks for tables brings what reads them. */
function tableWords(text: string): string | undefined {
  if (!hasMachineReading()) return undefined;
  const read = machineReading().readPointTable(text);
  if (!read.ok) return undefined;
  const { columns, rows } = read.table;
  const heads = columns.map(({ header, unit }) => (header.includes(unit) ? header : `${header} in ${unit}`));
  return `${rows.length} ${rows.length === 1 ? 'point' : 'points'} with ${listed(heads)}`;
}

/** Saying back what was typed letter for letter would say nothing. */
export function unlessAlike(typed: string, said: string): string | undefined {
  const bare = (text: string) =>
    text
      .replaceAll(/[\s\u00a0\u202f]/g, '')
      .replaceAll('−', '-')
      .toLowerCase();
  return bare(typed) === bare(said) ? undefined : said;
}
