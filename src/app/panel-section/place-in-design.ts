// Where in the design a panel of the picture stands: a face with layers of its own, a piece of a list, a lid with layers; and which
// inputs it shares with others.

import { type DesignDocument, itemsOf, textAt } from '../../design/index.ts';
import { panelKey } from '../tank-picture/panels.ts';

export const facesList = 'tank.load.faces';
const piecesList = 'tank.load.panels';

export type PlaceInDesign =
  /** `isThere`: false where the face has nothing of its own yet; the path is the one it would get. */
  | { readonly kind: 'face'; readonly path: string; readonly isThere: boolean }
  | { readonly kind: 'piece'; readonly path: string }
  | { readonly kind: 'lid'; readonly path: string };

/** Undefined for a panel that has no layers of its own: of another vessel, a hood, the open water. */
export function placeInDesign(document: DesignDocument, vessel: string, panel: string): PlaceInDesign | undefined {
  if (vessel !== 'tank' || panel === 'hood' || panel === 'waterSurface') return undefined;
  if (panel === 'lid') return { kind: 'lid', path: 'tank.load.lidLayers' };
  const piece = /^panel(\d+)$/.exec(panel);
  if (textAt(document, 'tank.load.kind') === 'panels') {
    return piece === null ? undefined : { kind: 'piece', path: `${piecesList}.${Number(piece[1]) - 1}` };
  }
  const faces = itemsOf(document, facesList);
  const index = faces.findIndex((face) => face.face === panel);
  return { kind: 'face', path: `${facesList}.${index < 0 ? faces.length : index}`, isThere: index >= 0 };
}

/** The panel whose layers hold a field; undefined for any other field. */
export function panelOfField(document: DesignDocument, path: string): string | undefined {
  const place = /^tank\.load\.(faces|panels)\.(\d+)\./.exec(path);
  if (path.startsWith('tank.load.lidLayers.')) return panelKey('tank', 'lid');
  if (place === null) return undefined;
  const index = Number(place[2]);
  if (place[1] === 'panels') return panelKey('tank', `panel${index + 1}`);
  const face = itemsOf(document, facesList)[index]?.face;
  return typeof face === 'string' ? panelKey('tank', face) : undefined;
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

/** Beginnings of the paths of inputs that a panel shares with others. */
export function sharedBeginnings(document: DesignDocument, vessel: string, panel: string): readonly string[] {
  const base = vessel === 'tank' ? 'tank.load' : `tank.load.${vessel}`;
  if (panel === 'waterSurface')
    return ['surface', 'evaporationFactor', 'airSpeed', 'lid'].map((name) => `${base}.${name}`);
  if (panel === 'lid' || panel === 'hood') return [`${base}.lid`, `${base}.${panel}`];
  if (vessel !== 'tank') return [`${base}.wall`, `${base}.insulation`, `${base}.exposure`];
  const stand = panel === 'bottom' ? [`${base}.stand`] : [];
  if (textAt(document, 'tank.load.kind') === 'panels') return [`${base}.wall`, ...stand];
  const wrap = wraps[panel];
  return [`${base}.wall`, ...(wrap === undefined ? [] : [`${base}.insulation.${wrap}.`]), ...stand];
}
