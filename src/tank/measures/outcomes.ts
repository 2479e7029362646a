// What became of a measure, in few words.

import type { ChangedPart, Measure, MeasureOutcome, PanelPlace } from './measure.ts';

/** All but cooler water, which changes no part of the tank. */
export type MeasureOfTank = Exclude<Measure, { kind: 'cooler' }>;

/** What a measure is meant to change. */
export function partsOf(measure: MeasureOfTank): readonly ChangedPart[] {
  switch (measure.kind) {
    case 'lid':
      return [{ part: 'cover', vessel: measure.vessel }];
    case 'calmerSurface':
      return [{ part: 'surface' }];
    case 'outside':
      return measure.panels.map(panelPart);
    case 'nightCover':
      return [{ part: 'night' }];
  }
}

export function panelPart({ vessel, panel }: PanelPlace): ChangedPart {
  return { part: 'panel', vessel, panel };
}

export function changedOnly(part: ChangedPart): MeasureOutcome {
  return { changed: [part], unchanged: [] };
}
