// What a measure changes, and why one changes nothing, in words.

import type { ChangedPart, MeasureOutcome, NoEffectReason } from '../../../tank/index.ts';
import { panelLabel, vesselLabel } from '../../wording/labels.ts';
import type { MeasureChange, NotAppliedReason } from './answer.ts';

const reasons: Readonly<Record<NotAppliedReason, string>> = {
  noBetterThanPresent: 'what covers the water already keeps it at least as well',
  noSuchPart: 'the tank has no such part',
  alreadyCalm: 'the surface is as calm already',
  sizesUnknown:
    'the tank is known by its meter alone, and not by its sizes; describe it by its sizes, with the meter beside them',
};

export function reasonWords(reason: NoEffectReason): string {
  return reasons[reason];
}

/** What the measure changes by itself. */
export function changesOf({ changed }: MeasureOutcome): readonly MeasureChange[] {
  return changed.map((part) => ({ part: partName(part), words: partWords(part) }));
}

/** 'lid', 'sump.lid', 'back', 'sump.left', 'night', 'surface', 'waterTemperature'. */
export function partName(part: ChangedPart): string {
  switch (part.part) {
    case 'panel':
      return part.vessel === 'tank' ? part.panel : `${part.vessel}.${part.panel}`;
    case 'cover':
      return part.vessel === 'tank' ? 'lid' : `${part.vessel}.lid`;
    default:
      return part.part;
  }
}

function partWords(part: ChangedPart): string {
  switch (part.part) {
    case 'panel':
      return panelLabel(part.vessel, part.panel);
    case 'cover':
      return part.vessel === 'tank' ? 'lid' : `lid of the ${vesselLabel(part.vessel)}`;
    case 'night':
      return 'cover at night';
    case 'surface':
      return 'water surface';
    case 'waterTemperature':
      return 'water temperature';
  }
}
