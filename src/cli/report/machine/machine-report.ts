// The study of a machine as a person reads it in a terminal: the plain sentence, its map, where its motor would trip, remedies, how
// many of them, other fluids, starts.

import {
  limitLabel,
  type MachineStudy,
  type MapFamily,
  type MapTrip,
  type RemedyState,
  remedyBasis,
  remedyReasons,
  remedyWords,
  sayMachine,
  whenWords,
} from '../../../assess/index.ts';
import {
  type Band,
  isQuantityName,
  listed,
  type QuantityName,
  sayBand,
  sayQuantity,
  sayRange,
  sentenceStart,
  type UnitView,
} from '../../../quantities/index.ts';
import { printableLine } from '../printable.ts';
import { findingsSection } from '../report-sections.ts';
import { columnAndText, columns, paragraph, section } from '../text-table.ts';
import { howManySections } from './how-many.ts';
import { otherFluidsSections } from './other-fluids.ts';

export function machineReport(study: MachineStudy, view: UnitView): string {
  const { sentence } = study;
  return [
    printableLine(study.designName),
    paragraph(sayMachine(sentence, sentence.refrigerant, view)),
    '',
    paragraph(basisWords(study, view)),
    '',
    ...study.map.map((family) => familySection(family, view)),
    tripsSection(study.trips, view),
    marksSection(study, view),
    remediesSection(study, view),
    ...howManySections(study.howMany, view),
    ...otherFluidsSections(study.otherFluids, view),
    startingSection(study, view),
    findingsSection('What to know beside these numbers', study.findings, view),
    paragraph(study.caution),
  ].join('\n');
}

function basisWords({ basis }: MachineStudy, view: UnitView): string {
  const apart = (value: number) => sayQuantity(value, 'temperatureDifference', view);
  const air = sayQuantity(basis.surroundings, 'temperature', view);
  const mains = `${sayQuantity(basis.frequency, 'mainsFrequency', view)} and ${sayQuantity(basis.voltage, 'voltage', view)}`;
  return `One machine on ${basis.refrigerant}, both temperatures dew: gas ${apart(basis.superheat)} above evaporating, liquid ${apart(basis.subcooling)} below bubble, air around the shell at ${air}, mains of ${mains}. A star marks what lies beyond a limit usual for such a machine; brackets hold ranges.`;
}

function familySection({ condensing, points }: MapFamily, view: UnitView): string {
  const level = (value: number) => sayQuantity(value, 'temperature', view);
  const head = ['evaporating', 'heat', 'electricity', 'COP', 'current', 'discharge gas'];
  const rows = points.map(({ evaporating, values, reason, passed }) => {
    const star = passed.length === 0 ? ' ' : '*';
    if (values === null) return [`${star} ${level(evaporating)}`, printableLine(shortened(reason ?? ''))];
    const { heat, power, cop, current, dischargeTemperature } = values;
    return [
      `${star} ${level(evaporating)}`,
      short(heat, 'power', view),
      short(power, 'electricPower', view),
      short(cop, 'ratio', view),
      short(current, 'current', view),
      level(dischargeTemperature.likely),
    ];
  });
  return section(
    `Condensing at ${level(condensing)}`,
    columns([head.map((cell, at) => (at === 0 ? `  ${cell}` : cell)), ...rows]),
  );
}

const longestReason = 60;

function shortened(text: string): string {
  return text.length <= longestReason ? text : `${text.slice(0, longestReason)}…`;
}

/** "350 W (310 to 420)" without the word that says it is about. */
function short(band: Band, quantity: QuantityName, view: UnitView): string {
  return sayBand(band, quantity, view).replace(/^about /, '');
}

const tripWords: Readonly<Record<NonNullable<MapTrip['by']>, string>> = {
  motorLoad: 'the load of its motor passes that of the hardest point it was built for',
  current: 'the current passes what it bears for long',
  stall: 'the motor stalls',
};

function tripsSection(trips: readonly MapTrip[], view: UnitView): string {
  const level = (value: number) => sayQuantity(value, 'temperature', view);
  const rows = trips.map(({ condensing, evaporating, by, searchedUpTo }): readonly [string, string] => {
    const head = `condensing at ${level(condensing)}`;
    if (evaporating !== null && by !== null) return [head, `from ${level(evaporating)} evaporating ${tripWords[by]}`];
    return [
      head,
      searchedUpTo === null ? 'no running point to search from' : `not met up to ${level(searchedUpTo)} evaporating`,
    ];
  });
  return section('Where its motor would likely trip', columnAndText(rows));
}

function marksSection({ marks }: MachineStudy, view: UnitView): string {
  const rows = marks.flatMap(({ when, evaporating, condensing, sourceTemperature, values, passed }) => {
    const level = (value: number) => sayQuantity(value, 'temperature', view);
    const words = `source ${level(sourceTemperature)}, evaporating at ${level(evaporating)}, condensing at ${level(condensing)}: ${sayBand(values.heat, 'power', view)} of heat from ${sayBand(values.power, 'electricPower', view)}, ${sayBand(values.current, 'current', view)}; ${passedWords(passed)}`;
    return [[sentenceStart(whenWords[when]), words] as const];
  });
  return section('Where it would run', columnAndText(rows));
}

function passedWords(passed: readonly string[]): string {
  return passed.length === 0
    ? 'no limit found that it passes'
    : `beyond: ${listed(passed.map((name) => limitLabel(name)))}`;
}

function remediesSection({ remedies }: MachineStudy, view: UnitView): string {
  const [first] = remedies;
  if (first === undefined) return section('What would help', '  Nothing to simulate.');
  const told = remedies.map((remedy) => {
    const { after, reason, cures } = remedy;
    const head = `${remedyWords(remedy, view)}.`;
    if (after === null) return `${head} ${reason === null ? '' : remedyReasons[reason]}`;
    const cured = cures.length === 0 ? '' : ` No longer beyond: ${listed(cures.map((name) => limitLabel(name)))}.`;
    const still =
      after.passed.length === 0 ? '' : ` Beyond with it: ${listed(after.passed.map((name) => limitLabel(name)))}.`;
    return `${head} ${stateWords(after, view)}.${cured}${still}`;
  });
  const without = `As it is, running without a pause ${whenWords[first.when]}: ${stateWords(first.before, view)}.`;
  return section('What would help', [without, ...told, remedyBasis].map((each) => paragraph(each, '  ')).join('\n'));
}

function stateWords(state: RemedyState, view: UnitView): string {
  const mean = state.share < 1 ? `, ${sayQuantity(state.meanHeat, 'power', view)} in the mean` : '';
  const share = state.currentShare === null ? '' : ` (${sayQuantity(state.currentShare, 'fraction', view)} of rated)`;
  return `${sayQuantity(state.heat, 'power', view)} of heat${mean}, ${sayQuantity(state.power, 'electricPower', view)} of electricity, ${sayQuantity(state.current, 'current', view)}${share}, motor at ${sayQuantity(state.motorLoad, 'fraction', view)} of its best load, discharge gas ${sayQuantity(state.dischargeTemperature, 'temperature', view)}`;
}

function startingSection({ starting }: MachineStudy, view: UnitView): string {
  const rows = starting.map(({ label, band, words }): readonly [string, string] => {
    if (band === null) return [label, words];
    const quantity = isQuantityName(band.quantity) ? band.quantity : 'ratio';
    return [label, `${sayRange(band, quantity, view)}. ${words}`];
  });
  return section('Starts', columnAndText(rows));
}
