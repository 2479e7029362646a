// The text of a PDF that the browser printed, page by page: enough of the format (ISO 32000-1) for what Chromium writes,
// which is plain objects, deflated streams and fonts with a table from glyphs to letters. Anything else is an error.

import { inflateSync } from 'node:zlib';

/** Words in the order they are painted, one text per page. @throws Error for a form this reader does not know */
export function pdfPages(pdf: Buffer): readonly string[] {
  const objects = objectsOf(pdf);
  // More than a few pages stand in groups of groups, so the whole is found from the top.
  const catalog = [...objects.values()].find(({ head }) => /\/Type \/Catalog\b/.test(head));
  const tree = objects.get(references(/\/Pages \d+ 0 R/.exec(catalog?.head ?? '')?.[0] ?? '')[0] ?? -1);
  if (tree === undefined) throw new Error('no pages found');
  return pageNumbers(tree.head, objects).map((number) => textOf(objects.get(number)!, objects));
}

interface PdfObject {
  readonly head: string;
  /** Inflated; undefined where there is none. */
  readonly stream: string | undefined;
}

type Objects = ReadonlyMap<number, PdfObject>;

/** One after the other; a stream is as long as its object says, whatever its bytes look like. */
function objectsOf(pdf: Buffer): Objects {
  const text = pdf.toString('latin1');
  const objects = new Map<number, PdfObject>();
  const start = /(\d+) 0 obj\s*([\s\S]*?)(endobj|stream\r?\n)/g;
  for (let match = start.exec(text); match !== null; match = start.exec(text)) {
    const [, number, head = '', end] = match;
    const length = Number(/\/Length (\d+)(?! \d+ R)/.exec(head)?.[1]);
    if (end === 'endobj') {
      objects.set(Number(number), { head, stream: undefined });
      continue;
    }
    if (!Number.isFinite(length)) throw new Error(`a stream without a length of its own: ${head}`);
    const bytes = pdf.subarray(start.lastIndex, start.lastIndex + length);
    start.lastIndex += length;
    const plain = /\/FlateDecode/.test(head) ? inflateSync(bytes) : bytes;
    objects.set(Number(number), { head, stream: plain.toString('latin1') });
  }
  return objects;
}

/** In order, also where the pages stand in groups. */
function pageNumbers(tree: string, objects: Objects): readonly number[] {
  const kids = /\/Kids \[([^\]]*)\]/.exec(tree)?.[1] ?? '';
  return references(kids).flatMap((number) => {
    const { head } = objects.get(number)!;
    return /\/Type \/Pages\b/.test(head) ? pageNumbers(head, objects) : [number];
  });
}

function references(text: string): readonly number[] {
  return [...text.matchAll(/(\d+) 0 R/g)].map(([, number]) => Number(number));
}

type Letters = ReadonlyMap<number, string>;

function textOf(page: PdfObject, objects: Objects): string {
  const fonts = new Map<string, Letters>();
  const listed = /\/Font <<([\s\S]*?)>>/.exec(page.head)?.[1] ?? '';
  for (const [, name, number] of listed.matchAll(/\/(\w+) (\d+) 0 R/g)) {
    fonts.set(name!, lettersOf(objects.get(Number(number))!, objects));
  }
  const contents = /\/Contents (\[[^\]]*\]|\d+ 0 R)/.exec(page.head)?.[1] ?? '';
  return references(contents)
    .map((number) => painted(objects.get(number)?.stream ?? '', fonts))
    .join(' ');
}

/** Of glyphs in two bytes, as all fonts are that Chromium embeds. */
function lettersOf(font: PdfObject, objects: Objects): Letters {
  const number = /\/ToUnicode (\d+) 0 R/.exec(font.head)?.[1];
  if (number === undefined || !/\/Identity-H/.test(font.head)) throw new Error(`a font of another kind: ${font.head}`);
  const table = objects.get(Number(number))?.stream ?? '';
  const letters = new Map<number, string>();
  for (const [, block = ''] of table.matchAll(/beginbfchar([\s\S]*?)endbfchar/g)) {
    for (const [, glyph, code] of block.matchAll(/<(\w+)> <(\w+)>/g)) letters.set(hex(glyph), unicode(code));
  }
  for (const [, block = ''] of table.matchAll(/beginbfrange([\s\S]*?)endbfrange/g)) {
    for (const [, first, last, code] of block.matchAll(/<(\w+)> <(\w+)> <(\w+)>/g)) {
      for (let glyph = hex(first); glyph <= hex(last); glyph += 1) {
        letters.set(glyph, String.fromCodePoint(unicode(code).codePointAt(0)! + glyph - hex(first)));
      }
    }
  }
  return letters;
}

function hex(digits = ''): number {
  return Number.parseInt(digits, 16);
}

function unicode(digits = ''): string {
  return (digits.match(/.{4}/g) ?? []).map((unit) => String.fromCharCode(hex(unit))).join('');
}

/** Each run of glyphs as it is set; runs of one line follow without a blank, since the blanks are glyphs themselves. */
function painted(content: string, fonts: ReadonlyMap<string, Letters>): string {
  if (/ TJ\b|\) Tj\b/.test(content)) throw new Error('text set in another way');
  let letters: Letters | undefined;
  let text = '';
  for (const [token, font, glyphs] of content.matchAll(/\/(\w+) [\d.]+ Tf|<([0-9A-Fa-f]*)> Tj|\bBT\b/g)) {
    if (font !== undefined) letters = fonts.get(font);
    else if (token === 'BT') text += ' ';
    else text += (glyphs!.match(/.{4}/g) ?? []).map((glyph) => letterOf(hex(glyph), letters)).join('');
  }
  return text
    .replace(/[\ufb00-\ufb04]/g, (ligature) => ligature.normalize('NFKC'))
    .replace(/[\s\u00a0\u202f]+/g, ' ')
    .trim();
}

function letterOf(glyph: number, letters: Letters | undefined): string {
  const letter = letters?.get(glyph);
  if (letter === undefined) throw new Error(`glyph ${glyph} stands for no letter`);
  return letter;
}
