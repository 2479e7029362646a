// Reads the SVG text of a still picture as far as the tests need it: whether its tags nest, and where its words stand.

import { textWidth } from '../../src/charts/still/text.ts';

export interface SvgTag {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
}

export interface SvgWords {
  readonly text: string;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

export interface SvgReading {
  readonly tags: readonly SvgTag[];
  readonly words: readonly SvgWords[];
  readonly width: number;
  readonly height: number;
}

const piece = /<(\/?)([a-z]+)((?: [a-zA-Z:-]+="[^"<>&]*(?:&(?:amp|lt|gt|quot|#39);[^"<>&]*)*")*)(\/?)>|([^<]+)/gy;

/** @throws Error where the text is not well formed */
export function readSvg(svg: string): SvgReading {
  const open: SvgTag[] = [];
  const tags: SvgTag[] = [];
  const words: SvgWords[] = [];
  piece.lastIndex = 0;
  while (piece.lastIndex < svg.length) {
    const at = piece.lastIndex;
    const match = piece.exec(svg);
    if (match === null) throw new Error(`no tag and no text at ${at}: ${svg.slice(at, at + 80)}`);
    const [, closing, name = '', attributes = '', alone, text] = match;
    if (text !== undefined) {
      if (/&(?!(amp|lt|gt|quot|#39);)/.test(text)) throw new Error(`a bare ampersand: ${text}`);
      if (open.at(-1)?.name === 'text') words.push(placed(text, open));
    } else if (closing === '/') {
      if (open.pop()?.name !== name) throw new Error(`</${name}> closes nothing at ${at}`);
    } else {
      const tag = { name, attributes: attributesOf(attributes) };
      tags.push(tag);
      if (alone !== '/') open.push(tag);
    }
  }
  if (open.length > 0) throw new Error(`not closed: ${open.map((tag) => tag.name).join(', ')}`);
  const [, , width = 0, height = 0] = (tags[0]?.attributes.viewBox ?? '').split(' ').map(Number);
  return { tags, words, width, height };
}

function attributesOf(text: string): Record<string, string> {
  const entries = [...text.matchAll(/ ([a-zA-Z:-]+)="([^"]*)"/g)].map(([, name, value]) => [name!, value!] as const);
  const names = entries.map(([name]) => name);
  if (new Set(names).size !== names.length) throw new Error(`an attribute twice: ${text}`);
  return Object.fromEntries(entries);
}

function placed(escaped: string, open: readonly SvgTag[]): SvgWords {
  const { attributes } = open.at(-1)!;
  const text = escaped
    .replace(/&lt;/g, '<')
    .replace(/&gt;/g, '>')
    .replace(/&quot;/g, '"')
    .replace(/&#39;/g, "'")
    .replace(/&amp;/g, '&');
  const size = Number(attributes['font-size']);
  const wide = textWidth(text, size);
  const inner = open.filter((tag) => tag.name === 'svg').slice(1);
  const shift = (axis: 'x' | 'y') => inner.reduce((sum, tag) => sum + Number(tag.attributes[axis]), 0);
  const x = Number(attributes.x) + shift('x');
  const y = Number(attributes.y) + shift('y');
  const start = { start: 0, middle: wide / 2, end: wide }[attributes['text-anchor'] as 'start' | 'middle' | 'end'];
  if (attributes.transform === undefined) {
    return { text, left: x - start, right: x - start + wide, top: y - 0.8 * size, bottom: y + 0.2 * size };
  }
  // Turned by a quarter about its middle line: what ran to the right runs upwards.
  const [, aboutX = 0, aboutY = 0] = (/rotate\(-90 (\S+) (\S+)\)/.exec(attributes.transform) ?? []).map(Number);
  const middle = aboutX + shift('x');
  const from = aboutY + shift('y') + start;
  return { text, left: middle - size / 2, right: middle + size / 2, top: from - wide, bottom: from };
}
