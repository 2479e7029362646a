// Words in a still picture: escaped, and measured without a browser. The widths are those of a wide common letter, so that
// words that keep clear by this measure keep clear in any other.

/**
 * Text as it may stand between tags and in quoted attributes, in SVG and in HTML. Control characters and those
 * that change the direction of writing become blanks: neither may reach beyond the text they stand in.
 */
export function escapeMarkup(text: string): string {
  return [...text]
    .map((letter) => (isForbidden(letter.codePointAt(0) ?? 0) ? ' ' : (entities[letter] ?? letter)))
    .join('');
}

const entities: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** Code points that XML does not let stand in a document, in whatever form, and overrides of the direction of writing. */
function isForbidden(code: number): boolean {
  const isControl = code < 0x20 && code !== 0x09 && code !== 0x0a && code !== 0x0d;
  const turns = (code >= 0x202a && code <= 0x202e) || (code >= 0x2066 && code <= 0x2069);
  return (
    isControl ||
    turns ||
    (code >= 0x7f && code < 0xa0) ||
    (code >= 0xd800 && code < 0xe000) ||
    (code & 0xfffe) === 0xfffe
  );
}

const narrow = new Set("iIjl.,:;'’!|()[]·-ft ");
const wide = new Set('mwMW@%—');

/** Estimated width of a text [units], never below that of the common sans-serif letters. */
export function textWidth(text: string, fontSize: number): number {
  let width = 0;
  for (const letter of text) {
    if (narrow.has(letter)) width += 0.4;
    else if (wide.has(letter)) width += 1;
    else if (letter >= 'A' && letter <= 'Z') width += 0.72;
    else if (letter.charCodeAt(0) > 0x2fff) width += 1.05;
    else width += 0.63;
  }
  return width * fontSize;
}

/** Broken at its blanks into lines no wider than asked, but for words that are wider themselves. */
export function inLines(text: string, width: number, fontSize: number): readonly string[] {
  const lines: string[] = [];
  for (const word of text.split(' ')) {
    const last = lines.at(-1);
    if (last === undefined || textWidth(`${last} ${word}`, fontSize) > width) lines.push(word);
    else lines[lines.length - 1] = `${last} ${word}`;
  }
  return lines;
}

export interface TextPlace {
  readonly x: number;
  /** Of the middle of the line. */
  readonly y: number;
  readonly size: number;
  readonly ink: string;
  readonly anchor?: 'start' | 'middle' | 'end';
  readonly bold?: boolean;
  /** Read from below. */
  readonly upright?: boolean;
}

/** One line of text. Letters are set on a base line a third of their size under the middle, which every reader knows. */
export function textElement(text: string, place: TextPlace): string {
  const { x, y, size, ink, anchor = 'start', bold = false, upright = false } = place;
  const turn = upright ? ` transform="rotate(-90 ${short(x)} ${short(y)})"` : '';
  const weight = bold ? ' font-weight="bold"' : '';
  return `<text x="${short(x)}" y="${short(y + 0.35 * size)}" font-size="${short(size)}" text-anchor="${anchor}" fill="${ink}"${weight}${turn}>${escapeMarkup(text)}</text>`;
}

/** A coordinate to a hundredth of a unit. */
export function short(value: number): string {
  return String(Number(value.toFixed(2)) + 0);
}
