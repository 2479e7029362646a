// Each enclosed space by itself: what the whole charge would make of its air, evenly mixed, beside the concentration a leak
// should stay below. The upper end of the charge counts and the lower end of the space. No space is cleared by it: heavy
// gas lies on the floor, and evenly mixed is the mildest case.

import type { CautionFacts } from '../../facts.ts';
import { atIntake } from './air-pump.ts';
import { leakConcentration, leakLimit } from './leak.ts';

export type SpaceFacts = Pick<
  CautionFacts,
  'fluid' | 'charge' | 'enclosure' | 'roomVolume' | 'otherRoomVolume' | 'sunkenPlace' | 'airPumpIntake'
>;

export type SpaceName = 'closedCabinet' | 'hood' | 'tankRoom' | 'otherRoom' | 'lowPlace' | 'airPumpIntake';

/** `unknown`: nobody has said whether or how large it is; `noLimit`: the catalogue knows no limit of the fluid. */
export type SpaceState = 'belowLimit' | 'aboveLimit' | 'flammable' | 'unknown' | 'noLimit';

/** A space and the whole charge in it; densities [kg/m³]. */
export interface LeakSpace {
  readonly space: SpaceName;
  /** [m³]; null where unknown, and for the intake of an air pump, which has the volume of where it draws. */
  readonly volume: number | null;
  readonly concentration: number | null;
  /** Concentration a leak should stay below; null where the catalogue knows none. */
  readonly limit: number | null;
  readonly state: SpaceState;
}

/** Every space the design names, the smallest kind first. */
export function leakSpaces(facts: SpaceFacts): readonly LeakSpace[] {
  const { enclosure, roomVolume, otherRoomVolume, sunkenPlace } = facts;
  return [
    ...(enclosure.kind === 'openRoom' ? [] : [spaceOf(enclosure.kind, enclosure.volume, facts)]),
    ...(sunkenPlace.kind === 'none' ? [] : [spaceOf('lowPlace', volumeOf(sunkenPlace), facts)]),
    spaceOf('tankRoom', roomVolume, facts),
    ...(otherRoomVolume === null ? [] : [spaceOf('otherRoom', otherRoomVolume, facts)]),
    ...intakeOf(facts),
  ];
}

function volumeOf(place: CautionFacts['sunkenPlace']): number | null {
  return place.kind === 'pit' ? place.volume : null;
}

function spaceOf(space: SpaceName, volume: number | null, facts: SpaceFacts): LeakSpace {
  const concentration = volume === null ? null : leakConcentration(facts.charge.high, volume);
  return judged(space, volume, concentration, facts);
}

function intakeOf(facts: SpaceFacts): readonly LeakSpace[] {
  switch (facts.airPumpIntake) {
    case 'none':
    case 'elsewhere':
      return [];
    case 'unknown':
      return [judged('airPumpIntake', null, null, facts)];
    case 'sameRoom':
    case 'besideMachine':
      return [judged('airPumpIntake', null, atIntake(facts), facts)];
  }
}

function judged(
  space: SpaceName,
  volume: number | null,
  concentration: number | null,
  { fluid }: SpaceFacts,
): LeakSpace {
  const limit = leakLimit(fluid);
  return { space, volume, concentration, limit, state: stateOf(concentration, limit, fluid.lowerFlammabilityLimit) };
}

function stateOf(concentration: number | null, limit: number | null, flammability: number | null): SpaceState {
  if (concentration === null) return 'unknown';
  if (flammability !== null && concentration >= flammability) return 'flammable';
  if (limit === null) return 'noLimit';
  return concentration > limit ? 'aboveLimit' : 'belowLimit';
}
