// What another kind of a part begins with where it can be told from the answer: a tank described panel by panel begins with the
// panels it has now. Without an answer of that sort its first panel is asked for.

import type { Assessment } from '../../assess/index.ts';
import { type DesignDocument, type FieldRecord, getField, itemsOf, type setKind } from '../../design/index.ts';
import { formatNumber } from '../../quantities/index.ts';
import { withText } from '../state/edits.ts';
import { askedOfItem } from './asked-of-item.ts';
import type { LooseTexts } from './loose-field.tsx';

/** Texts and lists by path, as setKind takes them. */
export type KindTexts = Parameters<typeof setKind>[3];

const load = 'tank.load';
const pieces = `${load}.panels`;

/** The display tank of the answer as a list of panels with its water; empty for any other kind, and for a measured tank. */
export function begunKind(
  document: DesignDocument,
  part: string,
  kind: string,
  tank: Assessment['tank'] | undefined,
): KindTexts {
  const vessel = tank?.vessels[0];
  if (tank === undefined || vessel === undefined || !isPieces(part, kind) || vessel.shape.kind === 'panels') return {};
  const { waterSurface, waterVolume, shape } = vessel;
  const own = tank.panels.filter((panel) => panel.vessel === 'tank' && panel.facing !== 'top');
  return {
    [`${load}.waterSurface`]: `${number(waterSurface)} m2`,
    [`${load}.waterVolume`]: `${number(1000 * waterVolume)} L`,
    [`${load}.freeboard`]: `${number(100 * (shape.height - shape.waterDepth))} cm`,
    [pieces]: own.map(({ panel, label, facing, area, dryArea }) => ({
      name: label,
      facing,
      area: `${number(area)} m2`,
      ...(dryArea > 0 ? { areaAboveWater: `${number(dryArea)} m2` } : {}),
      ...ownParts(document, panel),
    })),
  };
}

/** Which short form of insulation wraps a face. */
const wraps: Readonly<Record<string, string>> = {
  front: 'front',
  back: 'back',
  left: 'sides',
  right: 'sides',
  side: 'sides',
  bottom: 'bottom',
};

/** What a face has of its own, its insulation told as layers outside. */
function ownParts(document: DesignDocument, face: string): Readonly<Record<string, unknown>> {
  const { face: _, ...parts } = itemsOf(document, `${load}.faces`).find((item) => item.face === face) ?? {};
  const board = (key: string) => getField(document, `${load}.insulation.${wraps[face]}.${key}`);
  const [material, thickness, gap] = [board('material'), board('thickness'), board('gap')];
  const wrap = material === undefined ? [] : [{ kind: 'material', material, thickness }];
  const air = gap === undefined ? [] : [{ kind: 'sealedGap', thickness: gap }];
  const beyond = (parts.outside as readonly unknown[] | undefined) ?? [];
  const outside = [...air, ...wrap, ...beyond];
  return outside.length === 0 ? parts : { ...parts, outside };
}

/** What the first item of a list is asked by, where a kind cannot be without one. */
export function firstItemFields(part: string, kind: string): readonly FieldRecord[] {
  return isPieces(part, kind) ? askedOfItem(pieces) : [];
}

/** The texts with those of a first item gathered into its list. */
export function withFirstItem(part: string, kind: string, texts: LooseTexts): KindTexts {
  const asked = firstItemFields(part, kind);
  if (asked.length === 0 || asked.some(({ path }) => (texts[path] ?? '').trim() === '')) return texts;
  const begin = `${pieces}.*.`;
  const item = asked.reduce(
    (whole, { path }) => withText(whole, path.slice(begin.length).split('.'), (texts[path] ?? '').trim()),
    {},
  );
  return { ...texts, [pieces]: [item] };
}

function isPieces(part: string, kind: string): boolean {
  return part === load && kind === 'panels';
}

/** As people write it; what is read back differs by less than a part in a thousand. */
function number(value: number): string {
  return formatNumber(value, 4).replaceAll('\u202f', '');
}
