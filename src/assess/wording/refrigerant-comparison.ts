// A comparison of refrigerants in words: the answer, the basis, why a fluid is not for this machine or has no loop, what
// differs beyond its range, and what to bear in mind. The table of the same comparison is made in refrigerant-table.ts.

import { listed, type QuantityName, sayBand, sayQuantity, type UnitView } from '../../quantities/index.ts';
import type {
  ComparisonBasis,
  ComparisonColumn,
  PairDifference,
  RefrigerantComparison,
} from '../studies/comparison/comparison.ts';
import { inputPhrase } from './labels.ts';
import { sayNoLoop } from './no-loop.ts';
import { type SaidGroup, saidGroups, saidSources } from './refrigerant-table.ts';
import { sayFinding } from './say-finding.ts';
import { studyOnlySentence } from './study-only.ts';

/** One column's head. */
export interface SaidColumn {
  readonly fluid: string;
  readonly standing: ComparisonColumn['standing'];
  /** "this compressor was made for it; the design runs on it". */
  readonly role: string;
  /** Why it is for study only, whatever the machine. */
  readonly studyOnly: string | undefined;
  /** Why it is not for this machine. */
  readonly reason: string | undefined;
  /** Why it has no loop here. */
  readonly problem: string | undefined;
}

/** Everything a person reads of a comparison, in the units of one view. */
export interface SaidComparison {
  readonly answer: string;
  readonly basisTitle: string;
  readonly basisWords: string;
  readonly columns: readonly SaidColumn[];
  readonly groups: readonly SaidGroup[];
  readonly differences: readonly string[];
  readonly notes: readonly string[];
  /** Where the facts were read, one line a source. */
  readonly sources: readonly string[];
}

/** What each basis is called. */
export const basisTitles: Readonly<Record<ComparisonBasis, string>> = {
  sameDome: 'The same temperatures',
  sameHeat: 'The same heat',
  sameParts: 'The same parts',
  textbook: 'Textbook cycle, not electricity',
};

export function sayRefrigerants(comparison: RefrigerantComparison, view: UnitView): SaidComparison {
  return {
    answer: answerOf(comparison, view),
    basisTitle: basisTitles[comparison.basis],
    basisWords: basisWords(comparison, view),
    columns: comparison.columns.map((column) => saidColumn(comparison, column, view)),
    groups: saidGroups(comparison, view),
    differences: saidDifferences(comparison),
    notes: notesOn(comparison),
    sources: saidSources(comparison),
  };
}

function answerOf(comparison: RefrigerantComparison, view: UnitView): string {
  const { columns, madeFor, basis } = comparison;
  const names = columns.map(({ fluid }) => fluid);
  if (madeFor === null) {
    return `${listed(names)} in the same textbook cycle, without a machine: work on the gas, not electricity.`;
  }
  const own = columns.find(({ standing }) => standing === 'forThisMachine');
  const others = columns.filter(({ standing }) => standing === 'notForThisMachine').map(({ fluid }) => fluid);
  if (own === undefined) {
    return `This compressor was made for ${madeFor}. ${listed(names)} ${names.length === 1 ? 'is' : 'are'} not for this machine and ${names.length === 1 ? 'stands' : 'stand'} here for study only.`;
  }
  const head = `Of ${listed(names)}, this compressor was made for ${madeFor} alone; ${listed(others)} ${others.length === 1 ? 'stands' : 'stand'} here for study only.`;
  if (!own.cycle.ok) return `${head} ${madeFor} itself has no loop here.`;
  const { heat, power, compressorCop } = own.cycle.values;
  const where = basis === 'sameParts' ? 'in these parts' : 'at these temperatures';
  return `${head} ${madeFor} gives ${sayBand(heat!, 'power', view)} ${where} for ${sayBand(power!, 'electricPower', view)} of electricity, a COP of ${sayBand(compressorCop!, 'ratio', view)}.`;
}

function basisWords({ basis, conditions, designFluid, madeFor }: RefrigerantComparison, view: UnitView): string {
  const say = (value: number, quantity: QuantityName) => sayQuantity(value, quantity, view);
  const { evaporatingTemperature, condensingTemperature, superheat, subcooling, heat } = conditions;
  const levels = `evaporates at ${say(evaporatingTemperature, 'temperature')} and condenses at ${say(condensingTemperature, 'temperature')}`;
  const gains = `${say(superheat, 'temperatureDifference')} superheat and ${say(subcooling, 'temperatureDifference')} subcooling`;
  const given = conditions.sourceTemperature === null;
  const asInSpell = given ? 'as was asked' : `as ${designFluid} would in this design’s coldest spell`;
  const sameMachine = `in a compressor of the same displacement, ${say(conditions.displacement ?? 0, 'displacement')} per revolution, with the numbers found for ${madeFor}; they give each fluid its own flow and efficiency at its own pressures`;
  const held = 'Both temperatures are held: no doubt in them is in the ranges.';
  switch (basis) {
    case 'sameDome':
      return `Each fluid ${levels}, ${asInSpell}, with ${gains}, ${sameMachine}. ${held}`;
    case 'sameHeat': {
      const amount = heat === null ? '' : `, ${sayBand(heat, 'power', view)}`;
      return `Each fluid ${levels}, ${asInSpell}, with ${gains}. The machine is made larger or smaller, a machine alike of another size, until each gives the heat that ${designFluid}, the fluid of the design, gives out of the condenser${amount}: displacement and motor in proportion, the shell’s surface with the two-thirds power. ${held}`;
    }
    case 'sameParts': {
      const source = say(conditions.sourceTemperature ?? 0, 'temperature');
      const water = say(conditions.waterTemperature ?? 0, 'temperature');
      return `The whole machine as the design describes it, with each fluid in turn, in the coldest spell: source at ${source}, water at ${water}, the same approaches, fan, pump and controls. The ranges hold every uncertain input of the design. The approaches are held too: in real exchangers a fluid that carries more heat would settle at a larger lift.`;
    }
    case 'textbook':
      return `Each fluid ${levels} with ${gains} and an isentropic efficiency of ${say(conditions.isentropicEfficiency ?? 0, 'fraction')}, in a cycle without motor, shell, lines or fans. Plain values without ranges. Gauge pressures count from ${say(conditions.atmosphericPressure, 'pressure')}.`;
  }
}

function saidColumn(comparison: RefrigerantComparison, column: ComparisonColumn, view: UnitView): SaidColumn {
  const { fluid, standing, reason, cycle } = column;
  return {
    fluid,
    standing,
    role: roleOf(comparison, column),
    studyOnly: column.facts.unconfirmed.length === 0 ? undefined : studyOnlySentence(fluid, column.facts.unconfirmed),
    reason: reason === null ? undefined : sayFinding(reason, view).text,
    problem: cycle.ok ? undefined : sayNoLoop(cycle.error, fluid, view),
  };
}

function roleOf({ designFluid }: RefrigerantComparison, { fluid, standing }: ComparisonColumn): string {
  const runsOnIt = fluid === designFluid ? ['the design runs on it'] : [];
  if (standing === 'noMachine') return '';
  return [standing === 'forThisMachine' ? 'this compressor was made for it' : 'for study only', ...runsOnIt].join('; ');
}

/** Rows as they are called inside a sentence. */
const rowWords: Readonly<Record<string, string>> = {
  evaporatingPressure: 'evaporating pressure',
  condensingPressure: 'condensing pressure',
  pressureRatio: 'pressure ratio',
  dischargeTemperature: 'discharge temperature',
  heat: 'heat',
  displacementNeeded: 'displacement',
  power: 'electricity',
  current: 'current',
  motorLoad: 'load of the motor',
  compressorCop: 'COP',
  volumetricHeatingCapacity: 'heat per volume',
};

/** What may be ranked, and one sentence a pair on what differs beyond the range of its difference. No score, no order. */
function saidDifferences({ differences, columns, madeFor, basis }: RefrigerantComparison): readonly string[] {
  if (madeFor === null) return [];
  const forThis = columns.filter(({ standing }) => standing === 'forThisMachine').map(({ fluid }) => fluid);
  const ranked = differences.filter(({ mayBeRanked }) => mayBeRanked);
  const study = differences.filter(({ mayBeRanked }) => !mayBeRanked);
  const head =
    forThis.length === 0
      ? ['None of these fluids is for this machine, so nothing is ranked.']
      : forThis.length === 1
        ? [`Only ${forThis[0]} is for this machine, so nothing is ranked.`]
        : [];
  const made = basis === 'sameHeat' ? ['Heat is made equal by this basis.'] : [];
  return [
    ...head,
    ...ranked.map((pair) => pairSentence(pair)),
    ...study.map((pair) => `For study only: ${pairSentence(pair)}`),
    ...(differences.length === 0 ? [] : made),
  ];
}

function pairSentence({ fluid, beside, rows }: PairDifference): string {
  const named = (beyond: boolean) =>
    rows.filter(({ beyondRange }) => beyondRange === beyond).map(({ row }) => rowWords[row] ?? row);
  const apart = named(true);
  const alike = named(false);
  const pair = `${fluid} and ${beside}`;
  if (apart.length === 0) return `${pair}: nothing differs beyond the range of the difference.`;
  const rest = alike.length === 0 ? '' : `; ${listed(alike)} ${alike.length === 1 ? 'does' : 'do'} not`;
  return `${pair}: ${listed(apart)} ${apart.length === 1 ? 'differs' : 'differ'} beyond the range of the difference${rest}.`;
}

/** What is said of blends, whose boiling and condensing temperatures glide. */
function glideNotes({ columns, conditions, basis }: RefrigerantComparison): readonly string[] {
  const gliding = columns.filter(({ cycle }) => cycle.ok && cycle.values.condensingGlide!.likely > 0);
  if (gliding.length === 0) return [];
  const names = listed(gliding.map(({ fluid }) => fluid));
  const isFromApproaches = basis !== 'textbook' && conditions.sourceTemperature !== null;
  const meant = isFromApproaches
    ? `The stated condensing temperature is ${gliding.length === 1 ? 'its' : 'their'} bubble temperature, the nearest that condensing comes to the water; dew temperatures stand in the table.`
    : 'The stated temperatures are dew temperatures; while they boil and condense, blends are colder by up to the glide.';
  return [
    `${names} ${gliding.length === 1 ? 'is a blend: its' : 'are blends: their'} temperature glides from bubble to dew while boiling and condensing. ${meant} Between the two, temperature, enthalpy and entropy are taken as linear in the share of vapour (glide approximation).`,
  ];
}

function notesOn(comparison: RefrigerantComparison): readonly string[] {
  const { columns, madeFor, differences, basis } = comparison;
  const isCarried = columns.some(({ standing }) => standing === 'notForThisMachine');
  const hasAmounts = columns.some(({ charge }) => charge.kind !== 'withheld' && charge.amounts !== null);
  const unanswered = columns.flatMap(({ fluid, cycle }) =>
    cycle.ok ? cycle.unanswered.map((end) => ({ fluid, ...end })) : [],
  );
  return [
    ...glideNotes(comparison),
    ...(isCarried
      ? [
          `The compressor’s numbers are those found for ${madeFor}. They are carried over to the other fluids, whose ranges are wider for it: nobody has measured this machine on them.`,
        ]
      : []),
    ...(differences.length > 0
      ? [
          'In the range of a difference, what both fluids share moves both at once: temperatures, and how the compressor is built. How well it works with a fluid it was not made for is an unknown of its own.',
        ]
      : []),
    ...(basis === 'sameParts'
      ? [
          'With approaches held, evaporating and condensing temperatures are those of “The same temperatures”; fan, pump, controls and the doubt about source, water and approaches come on top.',
        ]
      : []),
    ...(hasAmounts
      ? [
          'The amounts m1, m2 and m3 are those of IEC 60335-2-40 for products built to it; a floor is set for charges above m1, for a machine on the floor. A machine made at home is not such a product: these are comparisons, they allow nothing.',
        ]
      : []),
    ...(columns.some(({ charge }) => charge.kind === 'withheld')
      ? ['What follows from a charge is withheld where something must not be built; the limits of concentration stay.']
      : []),
    'Unconfirmed: from memory or common practice. Such a figure may warn; it never clears anything.',
    ...unanswered.map(
      ({ fluid, path, label, end }) =>
        `${fluid} has no loop with ${inputPhrase(path, label)} at its ${end} end: its ranges are too narrow there.`,
    ),
  ];
}
