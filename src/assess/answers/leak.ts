// What a leak would make of each enclosed space, and the charge beside the figures of standards, as people and programs read
// them: with the field that could settle each, and whether its size was given.

import {
  type CautionFacts,
  type ComparisonName,
  chargeComparisons,
  leakSpaces,
  type SpaceName,
} from '../../cautions/index.ts';
import type { ResolvedDesign } from '../../design/index.ts';
import type { ChargeComparisonAnswer, SpaceAnswer } from '../assessment/assessment.ts';
import { howToMeasure } from '../wording/measure.ts';

const spaceLabels: Readonly<Record<SpaceName, string>> = {
  closedCabinet: 'the closed cabinet around the machine',
  hood: 'the hood around the machine',
  lowPlace: 'a place lower than the floor nearby',
  tankRoom: 'the room of the tank',
  otherRoom: 'the room the heat comes from',
  airPumpIntake: 'the intake of the air pump',
};

const spacePaths: Readonly<Record<SpaceName, string>> = {
  closedCabinet: 'machine.enclosure.volume',
  hood: 'machine.enclosure.volume',
  lowPlace: 'machine.sunkenPlace.kind',
  tankRoom: 'room.volume',
  otherRoom: 'source.volume',
  airPumpIntake: 'safeguards.airPumpIntake',
};

/** Each enclosed space by itself. */
export function spaceAnswers(facts: CautionFacts, { room, source }: ResolvedDesign): readonly SpaceAnswer[] {
  const isAssumed: Readonly<Partial<Record<SpaceName, boolean>>> = {
    tankRoom: room.volume.origin === 'assumed',
    otherRoom: source.kind === 'otherRoom' && source.volume.origin === 'assumed',
  };
  return leakSpaces(facts).map((space) => ({
    ...space,
    label: spaceLabels[space.space],
    path: spacePaths[space.space],
    isAssumed: isAssumed[space.space] ?? false,
    measure: howToMeasure(spacePaths[space.space]),
  }));
}

const comparisonLabels: Readonly<Record<ComparisonName, string>> = {
  householdAppliance: 'one circuit of a household refrigerator or freezer',
  heatPumpSmallest: 'a heat pump of which nothing is asked of the room (m1)',
  heatPumpFloorArea: 'a heat pump on the floor of a room this size',
  heatPumpLarge: 'a heat pump with further measures (m2)',
  commercialCabinet: 'one circuit of a shop’s refrigerated cabinet',
  roomConcentration: 'a leak that stays below its limit in the smallest room here',
  aboveGround: 'a system in a room above ground, open to anybody',
  belowGround: 'a system in a room below ground, open to anybody',
};

/** The charge beside figures of standards that do not apply to it. */
export function chargeComparisonAnswers(facts: CautionFacts): readonly ChargeComparisonAnswer[] {
  return chargeComparisons(facts).map((comparison) => ({ ...comparison, label: comparisonLabels[comparison.name] }));
}
