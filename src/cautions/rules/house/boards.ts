// Rules about boards, mats and glue on and under a tank: what burns, what poisons, what bears the weight, and the wall behind.

import type { CautionFinding, Grounds } from '../../fact.ts';
import { area, mass, word } from '../../fact.ts';
import type { CautionFacts } from '../../facts.ts';

export type BoardFacts = Pick<CautionFacts, 'standing'>;

const practice: Grounds = { source: 'common practice, no source', certainty: 'practice' };

/** Insulating materials that do not burn by nature; every other one may, and one that nobody names may too. */
const mineralMaterials: readonly string[] = ['mineralWool', 'cellularGlass'];

/** Materials that shed fibres. */
const fibrousMaterials: readonly string[] = ['mineralWool', 'carpet', 'softFibreboard'];

/** Foam, cork, felt or something unnamed on the tank: most of it burns, and some of it with poisonous smoke. */
export function insulationBurns({ standing }: BoardFacts): CautionFinding | undefined {
  const burning = standing?.insulation.filter((name) => !mineralMaterials.includes(name)) ?? [];
  if (burning.length === 0) return undefined;
  return {
    code: 'insulationBurns',
    severity: 'look',
    subject: 'house',
    facts: { materials: word(burning.join(', ')) },
    ...practice,
    remedy:
      'Keep boards well away from lamps, heaters, ballasts and pumps that run hot, cover them on the room’s side, and ask for their fire class and what local building rules and the insurer say.',
    needsLicensedPerson: false,
  };
}

/** Whatever is stuck to a tank is stuck with something, and is cut before. */
export function glueAndFibres({ standing }: BoardFacts): CautionFinding | undefined {
  if (standing === null || standing.insulation.length === 0) return undefined;
  const fibrous = standing.insulation.filter((name) => fibrousMaterials.includes(name));
  return {
    code: 'glueAndFibres',
    severity: 'note',
    subject: 'livestock',
    facts: fibrous.length === 0 ? {} : { fibrous: word(fibrous.join(', ')) },
    ...practice,
    remedy:
      'Cut and glue away from the water and let it air for days; nothing with solvent or mould killer near the surface or an air pump’s intake; wrap fibres and cut edges in foil or tape. Solvents also eat foam and craze acrylic.',
    needsLicensedPerson: false,
  };
}

/** A board or mat below a full tank bears all of it, and only one made for that does so evenly. */
export function boardUnderTank({ standing }: BoardFacts): CautionFinding | undefined {
  if (standing === null || !standing.isOnBoard) return undefined;
  const { footing } = standing;
  return {
    code: 'boardUnderTank',
    severity: 'look',
    subject: 'house',
    facts: footing === null ? {} : { waterMass: mass(footing.waterMass), footprint: area(footing.area) },
    ...practice,
    remedy:
      'Only on an emptied tank, only under the whole of it and on a flat stand, only a board or mat whose maker states that it bears the load for years. A tank with a floating base or a frame stands on foam only if its maker says so.',
    needsLicensedPerson: false,
  };
}

/** Behind a board the wall of the house loses the warmth of the tank; an outer wall may then fall below the dew point. */
export function wallBehindBoard({ standing }: BoardFacts): CautionFinding | undefined {
  if (standing === null || !standing.isBoardAtWall) return undefined;
  return {
    code: 'wallBehindBoard',
    severity: 'look',
    subject: 'house',
    facts: {},
    source: 'physics: a surface below the dew point gathers water; that of the wall is not computed',
    certainty: 'physics',
    remedy:
      'If it is an outer wall, leave room for air to move between board and wall, and look behind it in the cold months.',
    needsLicensedPerson: false,
  };
}
