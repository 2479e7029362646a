// Which panels of a tank people mean by "the hidden sides", "the front" or "underneath".

import type { BuiltTank, Panel, Vessel } from '../built-tank.ts';
import type { PanelPlace } from './measure.ts';

/**
 * `hidden`: the sides nobody looks through: back and ends of the display tank, and every side of sump, refuge and overflow.
 * `back`, `sides` (both ends), `bottom`, `front` (or around a cylinder): of the display tank. `sideVessels`: every side of sump,
 * refuge and overflow.
 */
export const panelGroups = ['hidden', 'back', 'sides', 'bottom', 'front', 'sideVessels'] as const;
export type PanelGroup = (typeof panelGroups)[number];

const backNames: readonly string[] = ['back', 'recessBack'];
const endNames: readonly string[] = ['left', 'right', 'recessSide'];

/**
 * The panels of a group; empty where the tank has none. Of free pieces only those count whose names say where they are:
 * what people look through is not known of the others, and they count as front.
 */
export function panelsOf(tank: BuiltTank, group: PanelGroup): readonly PanelPlace[] {
  return tank.vessels.flatMap((vessel) =>
    vessel.panels
      .filter((panel) => isOf(group, vessel, panel))
      .map(({ name }): PanelPlace => ({ vessel: vessel.name, panel: name })),
  );
}

function isOf(group: PanelGroup, vessel: Vessel, { name, facing }: Panel): boolean {
  const isSide = facing === 'side';
  if (vessel.name !== 'tank') return isSide && (group === 'sideVessels' || group === 'hidden');
  const isBack = backNames.includes(name);
  const isEnd = endNames.includes(name);
  switch (group) {
    case 'hidden':
      return isBack || isEnd;
    case 'back':
      return isBack;
    case 'sides':
      return isEnd;
    case 'bottom':
      return facing === 'bottom';
    case 'front':
      return isSide && !isBack && !isEnd;
    case 'sideVessels':
      return false;
  }
}

/** Area of panels [m²], above and below the water line. */
export function areaOf(tank: BuiltTank, places: readonly PanelPlace[]): number {
  let area = 0;
  for (const { vessel, panel } of places) {
    const found = tank.vessels.find(({ name }) => name === vessel)?.panels.find(({ name }) => name === panel);
    if (found !== undefined) area += found.wetArea + found.dryArea;
  }
  return area;
}
