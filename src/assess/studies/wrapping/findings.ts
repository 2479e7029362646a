// What is to be known beside the numbers of wrapping: what it is simplified by, and what covering, calming and cooling the water may
// do to the animals.

import type { Fact, Finding, Severity, Subject } from '../../../quantities/index.ts';
import { roomFindings } from '../../findings/room-findings.ts';
import type { StagedDesign } from '../../stages/engine-assumptions.ts';
import type { WrappedStates } from '../../stages/wrapping/states.ts';

/** Every code this file can report. */
const wrappingFindingCodes = [
  'wrappingSimplified',
  'lessAirOverWater',
  'coolerWaterForAnimals',
  'warmLoopTakenAsIs',
] as const;

export type WrappingFindingCode = (typeof wrappingFindingCodes)[number];

const practice = 'common practice, no source';
const own = 'own simplification, no source';

export function wrappingFindings(design: StagedDesign, states: WrappedStates): readonly Finding[] {
  const kinds = new Set(states.applicable.map(({ measure }) => measure?.kind));
  const isAired = design.room.moisture.kind === 'ventilated';
  return [
    finding(
      'wrappingSimplified',
      'note',
      'model',
      own,
      'Take the ranges for what they are, and wrap the first measure before you buy the second.',
      {
        aired: { word: isAired ? 'aired' : 'held' },
      },
    ),
    ...(kinds.has('lid') || kinds.has('calmerSurface')
      ? [
          finding(
            'lessAirOverWater',
            'look',
            'livestock',
            practice,
            'Keep an opening or an air stone, and watch the animals in the first days, at night and in hot weather above all.',
          ),
        ]
      : []),
    ...(kinds.has('cooler')
      ? [
          finding(
            'coolerWaterForAnimals',
            'look',
            'livestock',
            practice,
            'Look up what your animals bear before you lower the thermostat, and lower it over days.',
          ),
        ]
      : []),
    ...roomFindings(design),
    ...(kinds.has('cooler')
      ? [
          finding(
            'warmLoopTakenAsIs',
            'note',
            'model',
            own,
            'A machine does a little better on cooler water than is shown.',
          ),
        ]
      : []),
  ];
}

function finding(
  code: WrappingFindingCode,
  severity: Severity,
  subject: Subject,
  source: string,
  remedy: string,
  facts: Readonly<Record<string, Fact>> = {},
): Finding {
  return { code, severity, subject, facts, source, remedy, needsLicensedPerson: false };
}
