// What is said of a panel's section: what lies inside and beyond, how each layer is called, whether water settles on it.

import type { PanelAnswer } from '../../assess/index.ts';
import type { UnitView } from '../../quantities/index.ts';
import { say } from '../ui/say.ts';

export function insideWords({ waterFilmResistance }: PanelAnswer): string {
  return waterFilmResistance > 0 ? 'water' : 'damp air';
}

const beyond: Readonly<Record<string, string>> = {
  roomAir: 'room air',
  openStand: 'room air',
  againstWall: 'wall, room behind',
  closedStand: 'in the stand',
  slab: 'ground',
  outdoors: 'outdoors',
};

export function beyondWords({ exposure }: PanelAnswer): string {
  return beyond[exposure] ?? 'beyond';
}

/** Whether the outer face stays dry, and by how much. */
export function drynessWords(panel: PanelAnswer, dewPoint: number | undefined, view: UnitView): string {
  const face = say(panel.outerTemperature, 'temperature', view);
  if (dewPoint === undefined)
    return `The outer face is at ${face}. No air of the room touches it, so its dew point does not matter there.`;
  const dew = say(dewPoint, 'temperature', view);
  if (panel.condenses) {
    return `Water will settle on the outer face: it is at ${face}, and the room’s air leaves water on anything below ${dew}.`;
  }
  return `The outer face is at ${face}, above the room’s dew point of ${dew}: it stays dry.`;
}
