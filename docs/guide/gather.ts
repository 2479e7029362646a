// The table of fields of the guide to design files, from the field records of the schema. Bundled and run by make.mjs;
// the tests call it to see that the page is that of the present schema.

import { type FieldRecord, fieldRecords, type ListRecord, listRecords, mostItems } from '../../src/design/index.ts';
import { quantityRecord, sayQuantity } from '../../src/quantities/index.ts';

export const tableStart = '<!-- fields: written by node docs/guide/make.mjs -->';
export const tableEnd = '<!-- end of fields -->';

const parts: Readonly<Record<string, string>> = {
  '': 'The design itself',
  place: 'place',
  room: 'room: where the tank stands',
  tank: 'tank',
  wrapping: 'wrapping: what might be wrapped',
  source: 'source: where the heat comes from',
  machine: 'machine',
  exchangers: 'exchangers: out of the source, into the water',
  power: 'power: small consumers that exist only for the heat pump',
  safeguards: 'safeguards',
  prices: 'prices',
};

/** The page with its table made anew. @throws Error if the marks are not there. */
export function withFieldTable(page: string): string {
  const from = page.indexOf(tableStart);
  const to = page.indexOf(tableEnd);
  if (from < 0 || to < from) throw new Error('the page has no place for the table of fields');
  return `${page.slice(0, from)}${tableStart}\n\n${fieldTable()}\n${page.slice(to)}`;
}

/** One table for each part of the document. */
export function fieldTable(): string {
  return Object.entries(parts)
    .map(([part, title]) => {
      const rows = withLists(fieldRecords.filter(({ path }) => partOf(path) === part));
      if (rows.length === 0) throw new Error(`no field in part "${part}"`);
      return `### ${title}\n\n| field | what it is | what to write | if left out |\n| --- | --- | --- | --- |\n${rows.join('\n')}\n`;
    })
    .join('\n');
}

/** A row for each field, and one for each list before those of its items. */
function withLists(records: readonly FieldRecord[]): readonly string[] {
  const told = new Set<string>();
  return records.flatMap((record) => {
    const lists = listRecords.filter(({ path }) => record.path.startsWith(`${path}.*`) && !told.has(path));
    for (const { path } of lists) told.add(path);
    return [...lists.map(listRow), row(record)];
  });
}

function listRow({ path, label, help, itemName, optional }: ListRecord): string {
  const accepted = `a list of ${optional ? 'at most' : '1 to'} ${mostItems}; one of them is a part "${itemName}"`;
  const cells = [`\`${path}\``, `${label}. ${help}`, accepted, optional ? 'nothing' : '**required**'];
  return `| ${cells.map((cell) => plain(cell).replaceAll('|', '\\|')).join(' | ')} |`;
}

function partOf(path: string): string {
  const [part, inner] = path.split('.');
  return inner === undefined ? '' : part!;
}

function row(record: FieldRecord): string {
  const cells = [
    `\`${record.path}\`${kinds(record)}`,
    `${record.label}${record.label.endsWith('?') ? '' : '.'} ${record.help}`,
    accepted(record),
    absent(record),
  ];
  return `| ${cells.map((cell) => plain(cell).replaceAll('|', '\\|')).join(' | ')} |`;
}

function kinds({ unionKind }: FieldRecord): string {
  return unionKind === undefined ? '' : ` (${unionKind.kinds.join(', ')})`;
}

function accepted({ path, quantity, choices, minimum, maximum }: FieldRecord): string {
  if (choices !== undefined) return choices.map(({ name }) => `\`${name}\``).join(', ');
  if (quantity === undefined) return path === 'prices.currency' ? 'three capital letters, such as `EUR`' : 'text';
  const examples = quantityRecord(quantity).examples.map((example) => `\`${example}\``);
  const from = sayQuantity(minimum!, quantity, 'metric');
  return `${examples.join(' or ')}; ${from} to ${sayQuantity(maximum!, quantity, 'metric')}`;
}

function absent({ optional, default: fallback }: FieldRecord): string {
  if (fallback === undefined) return optional ? 'nothing' : '**required**';
  return `${'text' in fallback ? fallback.text : fallback.rule}; ${fallback.source}`;
}

/** Without the blanks that only printing needs. */
function plain(text: string): string {
  return text.replace(/[\u00a0\u202f]/g, ' ');
}
