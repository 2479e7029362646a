// The codes of what the tank model leaves out or doubts, and how a finding of one is written down.

import type { Fact, Finding } from '../../quantities/index.ts';

/** Every code this folder can report. */
export const tankFindingCodes = [
  'tankSimplifications',
  'tankBottomFacesRoomAir',
  'evaporationMethodsDiffer',
  'lidCondensateReturns',
  'looseLidAsOpenShare',
  'condensationOnWater',
  'tankNeedsNoHeat',
  'measuredLoadScaled',
  'measuredDifferenceSmall',
  'hoodWellMixed',
  'nightCoverMixed',
  'waterChangeSpread',
  'drawnAirSaturated',
  'surfaceInMovingAir',
  'surfaceBeyondMethods',
  'handbookNearSeaLevel',
  'headspaceDeep',
  'wallCloseBy',
  'closedStandStill',
  'slabToGround',
  'waterGapClosed',
  'sealedGapThick',
  'jointOfMetal',
  'jointLimitsApart',
] as const;

export type TankFindingCode = (typeof tankFindingCodes)[number];

export function value(number: number, quantity: string): Fact {
  return { value: number, quantity };
}

export function word(text: string): Fact {
  return { word: text };
}

export function note(
  code: TankFindingCode,
  facts: Readonly<Record<string, Fact>>,
  source: string,
  remedy: string,
): Finding {
  return { code, severity: 'note', subject: 'model', facts, source, remedy, needsLicensedPerson: false };
}

export function look(
  code: TankFindingCode,
  facts: Readonly<Record<string, Fact>>,
  source: string,
  remedy: string,
): Finding {
  return { ...note(code, facts, source, remedy), severity: 'look' };
}
