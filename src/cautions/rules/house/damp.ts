// Rules about water that goes from the tank into the room's air and comes out of it again where nobody looks.

import type { Formula } from '../../../quantities/index.ts';
import type { CautionFinding } from '../../fact.ts';
import { quantity, temperature, volume, word } from '../../fact.ts';
import type { CautionFacts } from '../../facts.ts';

export type DampFacts = Pick<CautionFacts, 'standing' | 'roomVolume'>;

/**
 * What the tank alone may add to the water in each cubic metre of the room's air [kg/m³]: where EN ISO 13788 begins to call a
 * dwelling humid, at freezing outdoors; from memory.
 */
const humidRoomExcess = 0.004;

/** Air changes of a room of which nobody has said how it is aired [1/s]: half its air an hour; common practice, no source. */
const usualAirChanges = 0.5 / 3600;

/**
 * Water the tank adds to the air of its room, at rest with what air changes carry off.
 *     Δv = E / (n V)
 * @param evaporation  E [kg/s]
 * @param airChanges   n [1/s], > 0
 * @param room         V [m³], > 0
 * @returns            Δv [kg/m³], above the air outdoors
 * Validity: evenly mixed air, nothing condenses or dries. Source: balance of vapour. Worked value: 3 L a day, 0.5 an hour,
 * 40 m³ → 6.25 g/m³.
 */
export function moistureExcess(evaporation: number, airChanges: number, room: number): number {
  return evaporation / (airChanges * room);
}

/** The tank alone makes its room a humid one; a dehumidifier, where there is one, is left to do its work. */
export function roomTakesWater({ standing, roomVolume }: DampFacts): CautionFinding | undefined {
  if (standing === null || standing.isDehumidified) return undefined;
  const airChanges = standing.airChanges ?? usualAirChanges;
  // A room without any change of air keeps all of it.
  const isHumid =
    airChanges > 0
      ? moistureExcess(standing.evaporation, airChanges, roomVolume) > humidRoomExcess
      : standing.evaporation > 0;
  if (!isHumid) return undefined;
  return {
    code: 'roomTakesWater',
    severity: 'look',
    subject: 'house',
    facts: {
      evaporation: quantity(standing.evaporation, 'evaporation'),
      room: volume(roomVolume),
      airChanges: quantity(airChanges, 'airChangeRate'),
      aired: word(standing.airChanges === null ? 'assumed' : 'stated'),
    },
    source:
      'balance of vapour in evenly mixed air, against what makes a dwelling a humid one (EN ISO 13788, from memory); half the air an hour where nobody says: common practice, no source',
    certainty: 'memory',
    remedy:
      'A cover, more airing or a dehumidifier; keep an eye on a hygrometer, window frames, outer corners and the wood of the stand, which swells.',
    needsLicensedPerson: false,
  };
}

/** Faces that nobody sees stay wet. */
export function hiddenFacesSweat({ standing }: DampFacts): CautionFinding | undefined {
  if (standing === null || standing.dampFaces === null) return undefined;
  const { when, faces, coldest, dewPoint } = standing.dampFaces;
  return {
    code: 'hiddenFacesSweat',
    severity: 'look',
    subject: 'house',
    facts: {
      when: word(when),
      faces: word(faces),
      coldest: temperature(coldest),
      dewPoint: temperature(dewPoint),
    },
    source: 'physics: a surface below the dew point gathers water; ISO 6946 surface resistances',
    certainty: 'physics',
    remedy:
      'A board that lies close, with closed cells and taped edges, keeps the air of the room from the cold face; dry the air, and look behind and below now and then: mould grows where it stays wet, and a wooden stand swells.',
    needsLicensedPerson: false,
  };
}

/** Formula records of this file. */
export const dampFormulas: readonly Formula[] = [
  {
    id: 'cautions.moistureExcess',
    title: 'Water a tank adds to the air of its room',
    result: {
      symbol: 'Δv',
      meaning: 'water in the air above that of the air outdoors',
      unit: 'kg/m³',
      quantity: 'density',
    },
    expression: 'E / (n * V)',
    symbols: {
      E: { meaning: 'water that evaporates', unit: 'kg/s', quantity: 'evaporation' },
      n: { meaning: 'air changes', unit: 'changes/s', quantity: 'airChangeRate' },
      V: { meaning: 'volume of the room', unit: 'm³', quantity: 'volume' },
    },
    source: 'balance of vapour',
    validity: 'evenly mixed air; nothing condenses or dries',
    file: 'src/cautions/rules/house/damp.ts',
    compute: (v) => moistureExcess(v.E!, v.n!, v.V!),
    examples: [
      { E: 3.4722e-5, n: 1.3889e-4, V: 40 },
      { E: 1.1e-5, n: 2.8e-4, V: 62 },
    ],
  },
];
