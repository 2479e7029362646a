// Which panels of a tank people mean by "the hidden sides", "the front" or "underneath".

import type { BuiltTank, Panel, Vessel } from '../built-tank.ts';
import type { PanelPlace } from './measure.ts';

/**
 * `hidden`: what nobody looks through: back, ends and bottom of the display tank. `back`, `sides` (both ends, or around a
 * cylinder), `bottom`, `front`: of the display tank. `sideVessels`: every side of sump, refuge and overflow.
 */
export const panelGroups = ['hidden', 'back', 'sides', 'bottom', 'front', 'sideVessels'] as const;
export type PanelGroup = (typeof panelGroups)[number];

const backNames: readonly string[] = ['back', 'recessBack'];
const endNames: readonly string[] = ['left', 'right', 'recessSide', 'side'];

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
  if (group === 'sideVessels') return vessel.name !== 'tank' && facing === 'side';
  if (vessel.name !== 'tank') return false;
  const isBack = backNames.includes(name);
  const isEnd = endNames.includes(name);
  switch (group) {
    case 'hidden':
      // Around a cylinder one looks in everywhere.
      return facing === 'bottom' || isBack || (isEnd && name !== 'side');
    case 'back':
      return isBack;
    case 'sides':
      return isEnd;
    case 'bottom':
      return facing === 'bottom';
    case 'front':
      return facing === 'side' && !isBack && !isEnd;
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
