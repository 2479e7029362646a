// How the room's humidity enters the accounts, as findings: a dehumidifier is charged for the tank's vapour by the simplest
// balance, and airing the room is charged to nobody.

import type { Finding } from '../../quantities/index.ts';
import type { StagedDesign } from '../stages/engine-assumptions.ts';

/** Every code this file can report. */
const roomFindingCodes = ['dehumidifierSimplified', 'airingNotCharged'] as const;

export type RoomFindingCode = (typeof roomFindingCodes)[number];

/** Empty where the room's humidity is known and nothing holds it. */
export function roomFindings({ room }: StagedDesign): readonly Finding[] {
  switch (room.moisture.kind) {
    case 'humidityKnown':
      return [];
    case 'dehumidifier':
      return [
        finding(
          'dehumidifierSimplified',
          'Read the litres in its bucket for a week: they say how much of it is the tank’s, and a plug meter what each costs.',
        ),
      ];
    case 'ventilated':
      return [
        finding(
          'airingNotCharged',
          'If the room is aired more for the tank’s sake, count the heating of that air as well: some 0.33 Wh for each m³ and kelvin (common practice, no source).',
        ),
      ];
  }
}

function finding(code: RoomFindingCode, remedy: string): Finding {
  const source = 'own simplification, no source';
  return { code, severity: 'note', subject: 'model', facts: {}, source, remedy, needsLicensedPerson: false };
}
