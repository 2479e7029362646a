// Rules about what is laid over the water: less air reaches it, lamps and plugs get damp.

import type { CautionFinding, Grounds } from '../../fact.ts';
import { electricPower, quantity, word } from '../../fact.ts';
import type { CautionFacts } from '../../facts.ts';
import type { StandingTank } from '../../standing-tank.ts';

export type CoverFacts = Pick<CautionFacts, 'standing'>;

/** A lid that leaves less of the surface open than this counts as tight [-]: common practice, no source. */
const tightOpenShare = 0.05;

const practice: Grounds = { source: 'common practice, no source', certainty: 'practice' };

/** A tight lid or a hood, and no air drawn through the water: little oxygen comes in, little carbon dioxide goes out. */
export function coverHoldsGases(facts: CoverFacts): CautionFinding | undefined {
  const tank = facts.standing;
  if (tank === null || !isTight(tank) || tank.airDrawn > 0) return undefined;
  return {
    code: 'coverHoldsGases',
    severity: 'look',
    subject: 'livestock',
    facts: coverFacts(tank),
    ...practice,
    remedy:
      'Leave a gap, or let an air stone bubble with air from outside the cover, and watch the animals at night and in hot weather.',
    needsLicensedPerson: false,
  };
}

/** Lamps over covered water: their heat stays under the cover, and damp air reaches lamps, plugs and switches. */
export function lightsUnderCover(facts: CoverFacts): CautionFinding | undefined {
  const tank = facts.standing;
  if (tank === null || !isCovered(tank) || !(tank.lightPower > 0)) return undefined;
  return {
    code: 'lightsUnderCover',
    severity: 'look',
    subject: 'person',
    facts: { ...coverFacts(tank), lights: electricPower(tank.lightPower) },
    ...practice,
    remedy:
      'Lamps made for wet places, marked for splashing water (IP X4 or better), above a clear cover, with air around them and held so that they cannot fall in; residual-current protection on their circuit; pull the plug before a hand goes into the water. Fixed wiring is for a licensed electrician.',
    needsLicensedPerson: true,
  };
}

function isCovered({ cover, isCoverPlanned }: StandingTank): boolean {
  return isCoverPlanned || cover === 'lid' || cover === 'hood';
}

/** A lid on the list of measures is told to be tight. */
function isTight(tank: StandingTank): boolean {
  return tank.isCoverPlanned || tank.cover === 'hood' || (tank.cover === 'lid' && tank.openShare < tightOpenShare);
}

function coverFacts({ cover, openShare, isCoverPlanned }: StandingTank): CautionFinding['facts'] {
  return {
    cover: word(isCoverPlanned ? 'planned' : cover),
    ...(cover === 'lid' && !isCoverPlanned ? { openShare: quantity(openShare, 'fraction') } : {}),
  };
}
