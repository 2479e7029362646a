// The table of a comparison in words of a view: groups of rows in a fixed order, law and safety first, one cell a fluid; and
// the list of sources behind its facts. Both the page and the command line show these cells.

import {
  formatNumber,
  listed,
  type QuantityName,
  quantityRecord,
  sayBandParts,
  sayQuantity,
  sayRange,
  sentenceStart,
  type UnitView,
} from '../../quantities/index.ts';
import type { BandWithUnit } from '../assessment/assessment.ts';
import { withheldWord } from '../findings/withheld.ts';
import type {
  ChargeFigures,
  ComparisonColumn,
  RefrigerantComparison,
  RowGroup,
  SourcedFact,
} from '../studies/comparison/comparison.ts';
import { sayFinding } from './say-finding.ts';

export interface SaidCell {
  readonly text: string;
  /** Range of a number: "310 to 420 W". */
  readonly range?: string;
  /** What to know of it: "unconfirmed", the report a figure stands in. */
  readonly note?: string;
}

export interface SaidRow {
  readonly name: string;
  readonly label: string;
  /** One cell a column, in the order of the columns. */
  readonly cells: readonly SaidCell[];
}

export interface SaidGroup {
  readonly group: RowGroup;
  readonly caption: string;
  readonly rows: readonly SaidRow[];
}

const captions: Readonly<Record<RowGroup, string>> = {
  law: 'Law, safety and oil',
  pressures: 'Pressures',
  lift: 'Lift and discharge',
  heat: 'Heat and electricity',
  environment: 'Environment',
};

const textbookHeat = 'Heat and work on the gas';

/** All rows: legal status, safety, charge limits, oil; then the loop's numbers; then the environment. */
export function saidGroups(comparison: RefrigerantComparison, view: UnitView): readonly SaidGroup[] {
  const numbers = (['pressures', 'lift', 'heat'] as const).map(
    (group): SaidGroup => ({
      group,
      caption: group === 'heat' && comparison.basis === 'textbook' ? textbookHeat : captions[group],
      rows: numberRows(comparison, group, view),
    }),
  );
  return [
    { group: 'law', caption: captions.law, rows: lawRows(comparison, view) },
    ...numbers,
    { group: 'environment', caption: captions.environment, rows: environmentRows(comparison) },
  ];
}

function numberRows({ rows, columns }: RefrigerantComparison, group: RowGroup, view: UnitView): readonly SaidRow[] {
  return rows
    .filter((row) => row.group === group)
    .map(({ name, label, quantity }) => ({
      name,
      label,
      cells: columns.map(({ cycle }) => (cycle.ok ? bandCell(cycle.values[name]!, quantity, view) : noNumber)),
    }));
}

/** Of a number without a range, so that fluids near one another can be told apart. */
const digitsOfExact = 3;

const noNumber: SaidCell = { text: 'no loop' };

function bandCell(band: BandWithUnit, quantity: QuantityName, view: UnitView): SaidCell {
  if (band.low === band.high) {
    const digits = Math.max(digitsOfExact, quantityRecord(quantity).digits);
    return { text: sayQuantity(band.likely, quantity, view, digits) };
  }
  const { likely, range } = sayBandParts(band, quantity, view);
  return range === undefined ? { text: likely } : { text: `about ${likely}`, range };
}

function lawRows({ columns, madeFor }: RefrigerantComparison, view: UnitView): readonly SaidRow[] {
  const row = (name: string, label: string, cell: (column: ComparisonColumn) => SaidCell): SaidRow => ({
    name,
    label,
    cells: columns.map(cell),
  });
  const ofMachine =
    madeFor === null
      ? []
      : [
          row('smallestFloorArea', 'floor a product standard would ask for', ({ charge, facts }) =>
            spaceCell(charge, 'smallestFloorArea', 'area', facts.lowerFlammabilityLimit.value === null, view),
          ),
          row('smallestRoomVolume', 'room that would stay below the limit of a leak', ({ charge }) =>
            spaceCell(charge, 'smallestRoomVolume', 'volume', false, view),
          ),
        ];
  return [
    row('legalStatus', 'legal status', ({ facts }) => factCell(facts.legalStatus, (text) => text)),
    row('safetyClass', 'safety class', ({ facts }) => factCell(facts.safetyClass, saidClass)),
    row('lowerFlammabilityLimit', 'burns in air from', ({ facts }) =>
      factCell(facts.lowerFlammabilityLimit, (limit) => concentration(limit, 'does not burn in air', view)),
    ),
    row('leakLimit', 'a leak should stay below', ({ facts }) =>
      factCell(facts.leakLimit, (limit) => concentration(limit, 'no limit known', view)),
    ),
    row('standardAmounts', 'amounts m1, m2, m3 of a product standard', ({ charge, facts }) =>
      amountsCell(charge, facts.lowerFlammabilityLimit.value === null, view),
    ),
    ...ofMachine,
    row('oil', 'usual oil', (column) => oilCell(column, madeFor)),
    ...(madeFor === null ? [] : [row('stops', 'do not build, because', (column) => stopsCell(column, view))]),
  ];
}

function concentration(limit: number | null, none: string, view: UnitView): string {
  return limit === null ? none : sayQuantity(limit, 'chargeDensity', view);
}

const toxicity: Readonly<Record<string, string>> = { A: 'lower toxicity', B: 'higher toxicity' };
const flammability: Readonly<Record<string, string>> = {
  '1': 'no flame propagation',
  '2L': 'burns slowly (lower flammability)',
  '2': 'flammable',
  '3': 'higher flammability',
};

/** "A3: lower toxicity, higher flammability", in the words of ISO 817. */
function saidClass(safetyClass: string): string {
  const words = [toxicity[safetyClass.charAt(0)], flammability[safetyClass.slice(1)]];
  return `${safetyClass}: ${words.join(', ')}`;
}

const withheld: SaidCell = { text: withheldWord, note: 'something here must not be built' };

function amountsCell(charge: ChargeFigures, isHarmless: boolean, view: UnitView): SaidCell {
  if (isHarmless) return { text: 'none: it does not burn' };
  if (charge.kind === 'withheld' || charge.amounts === null) return withheld;
  const { m1, m2, m3 } = charge.amounts;
  const text = [m1, m2, m3].map(({ likely }) => sayQuantity(likely, 'mass', view)).join(', ');
  return { text, note: 'comparison only' };
}

function spaceCell(
  charge: ChargeFigures,
  figure: 'smallestFloorArea' | 'smallestRoomVolume',
  quantity: QuantityName,
  isHarmless: boolean,
  view: UnitView,
): SaidCell {
  if (isHarmless) return { text: 'none: it does not burn' };
  switch (charge.kind) {
    case 'withheld':
      return withheld;
    case 'unknown':
      return {
        text: 'not known',
        ...(charge.chargeOf === null ? {} : { note: `the charge in the design is of ${charge.chargeOf}` }),
      };
    case 'shown': {
      const band = charge[figure];
      if (band === null) return { text: 'no limit known' };
      const note = `for a charge of ${sayRange(charge.charge, 'mass', view)}; comparison only`;
      return { ...bandCell(band, quantity, view), note };
    }
  }
}

function oilCell({ facts, fluid }: ComparisonColumn, madeFor: string | null): SaidCell {
  const { usualOils, oilSuitsMachine } = facts;
  const cell = factCell(usualOils, (oils) => (oils.length === 0 ? 'none: it runs without oil' : listed(oils, 'or')));
  if (oilSuitsMachine === null || fluid === madeFor) return cell;
  const words = oilSuitsMachine
    ? `usual with ${madeFor} too`
    : `none of the oils usual with ${madeFor}, for which this compressor was made`;
  return { ...cell, note: [words, ...(cell.note === undefined ? [] : [cell.note])].join('; ') };
}

function stopsCell({ stops }: ComparisonColumn, view: UnitView): SaidCell {
  if (stops.length === 0) return { text: 'no stop found by the rules applied' };
  return { text: stops.map((finding) => `${sayFinding(finding, view).title}.`).join(' ') };
}

function environmentRows({ columns }: RefrigerantComparison): readonly SaidRow[] {
  const figure = (fact: SourcedFact<number | null>, withReport: boolean): SaidCell => {
    const notes = [
      ...(withReport ? [reportOf(fact.source)] : []),
      ...(fact.note === null ? [] : [fact.note]),
      ...(fact.confirmed ? [] : ['unconfirmed']),
    ];
    return {
      text: fact.value === null ? 'no figure' : formatNumber(fact.value, 5),
      ...(notes.length === 0 ? {} : { note: notes.join('; ') }),
    };
  };
  const rows = [
    ['ozoneDepletionPotential', 'ozone depletion potential (ODP)', false],
    ['globalWarmingPotential', 'global warming potential, 100 years (GWP100)', true],
    ['laterGlobalWarmingPotential', 'GWP100 in a later report', true],
  ] as const;
  return rows.map(([name, label, withReport]) => ({
    name,
    label,
    cells: columns.map(({ facts }) => figure(facts[name], withReport)),
  }));
}

/** The report's name at the head of a source. */
function reportOf(source: string): string {
  return source.split(/[,;]/)[0]!.trim();
}

function factCell<Value>({ value, confirmed }: SourcedFact<Value>, say: (value: Value) => string): SaidCell {
  return confirmed ? { text: say(value) } : { text: say(value), note: 'unconfirmed' };
}

const factWords: readonly (readonly [keyof ComparisonColumn['facts'], string])[] = [
  ['legalStatus', 'legal status'],
  ['safetyClass', 'safety class'],
  ['lowerFlammabilityLimit', 'flammability limit'],
  ['leakLimit', 'limit of a leak'],
  ['usualOils', 'oil'],
  ['ozoneDepletionPotential', 'ODP'],
  ['globalWarmingPotential', 'GWP100'],
  ['laterGlobalWarmingPotential', 'later GWP100'],
];

/** "IPCC AR6 (2021), …: later GWP100 of R134a, R12; unconfirmed", one line a source. */
export function saidSources({ columns }: RefrigerantComparison): readonly string[] {
  const uses = new Map<string, Map<string, string[]>>();
  for (const { fluid, facts } of columns) {
    for (const [name, words] of factWords) {
      const { source, confirmed } = facts[name] as SourcedFact<unknown>;
      const key = confirmed ? source : `${source} (unconfirmed)`;
      const facet = uses.get(key) ?? new Map<string, string[]>();
      facet.set(words, [...(facet.get(words) ?? []), fluid]);
      uses.set(key, facet);
    }
  }
  return [...uses].map(
    ([source, facets]) =>
      `${sentenceStart(source)}: ${[...facets].map(([words, fluids]) => `${words} of ${fluids.join(', ')}`).join('; ')}.`,
  );
}
