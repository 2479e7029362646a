// Puts the varied numbers of the study into its answer: states, gains, measures, steps, the bars of the waterfall.

import { usualMeasures } from '../../../accounts/index.ts';
import type { DesignDocument, Resolution } from '../../../design/index.ts';
import { bandWithUnit } from '../../answers/pieces.ts';
import type { BandWithUnit } from '../../assessment/assessment.ts';
import type { Doubt } from '../../doubt/doubt.ts';
import type { TankAloneResults } from '../../stages/accounts/heater.ts';
import type { StagedDesign } from '../../stages/engine-assumptions.ts';
import type { OfferedMeasure } from '../../stages/wrapping/offered.ts';
import type { WrappedStates } from '../../stages/wrapping/states.ts';
import { pathLabel } from '../../wording/labels.ts';
import type {
  MeasureAlone,
  MeasureCost,
  MeasureNotApplied,
  WaterfallBar,
  WrappedState,
  WrappingAnswer,
  WrappingBasis,
  WrappingGain,
  WrappingStep,
} from './answer.ts';
import { itemOf } from './item.ts';
import type { InchTerms } from './last-inch.ts';
import { aloneName, type GainPart, gainParts, stateName, stateParts, stepName, togetherName } from './numbers.ts';
import { paybackRange } from './payback.ts';
import { changesOf, partName, reasonWords } from './words.ts';
import { wrappingWorkings } from './workings.ts';

/** What the study found. */
export interface Said {
  readonly document: DesignDocument;
  readonly resolution: Resolution;
  readonly design: StagedDesign;
  readonly results: TankAloneResults;
  readonly states: WrappedStates;
  readonly terms: InchTerms;
  /** The measures in turn, and how many of them pay. */
  readonly order: readonly string[];
  readonly payingCount: number;
  readonly doubt: Doubt;
}

type Told = Pick<
  WrappingAnswer,
  'basis' | 'asItIs' | 'measures' | 'notApplied' | 'inTurn' | 'payingSteps' | 'paying' | 'waterfall' | 'workings'
>;

export function sayStudy(said: Said): Told {
  const { order, payingCount, states } = said;
  const measures = states.applicable
    .map((offered): MeasureAlone => ({ ...measureOf(said, offered), alone: gainOf(said, aloneName(offered.id)) }))
    .sort((left, right) => right.alone.netValue.likely - left.alone.netValue.likely);
  const inTurn = order.map((id, index) => stepOf(said, id, index));
  return {
    basis: basisOf(said),
    asItIs: stateOf(said, 0),
    measures,
    notApplied: notApplied(said),
    inTurn,
    payingSteps: payingCount,
    paying: payingCount === 0 ? null : inTurn[payingCount - 1]!.cumulative,
    waterfall: waterfallOf(said, inTurn),
    workings: wrappingWorkings(said),
  };
}

function basisOf({ design, terms, results }: Said): WrappingBasis {
  const { prices, years, discountRate } = terms;
  return {
    years,
    discountRate,
    electricityPrice: prices.electricity,
    houseHeatPrice: prices.houseHeat,
    monthsHeated: design.room.monthsHeated,
    roomCooledInSummer: prices.roomCooledInSummer,
    dehumidifier: design.room.moisture.kind === 'dehumidifier',
    waterTemperature: design.tank.waterTemperature,
    roomTemperature: results.surroundings.spell.roomTemperature,
  };
}

function measureOf({ doubt, states, document }: Said, offered: OfferedMeasure): Omit<MeasureAlone, 'alone'> {
  const { id, kind, name, path, area } = offered;
  const cost = costOf(doubt, aloneName(id), offered.usual === null);
  return {
    id,
    kind,
    name,
    origin: path === null ? 'usual' : 'design',
    path,
    changes: changesOf(states.outcomesOf([id])[0]!),
    area,
    cost,
    item: itemOf(offered, document, cost),
  };
}

function costOf({ bands }: Doubt, gain: string, isTyped: boolean): MeasureCost {
  const { low, likely, high } = bands[`${gain}.cost`]!;
  return {
    low,
    likely,
    high,
    origin: isTyped ? 'typed' : 'assumed',
    source: isTyped ? 'as given' : usualMeasures.source,
  };
}

function bandOf({ doubt }: Said, group: string, part: string): BandWithUnit {
  const name = `${group}.${part}`;
  return bandWithUnit(name, { ...stateParts, ...gainParts }[part as GainPart], doubt.bands[name]!);
}

function stateOf(said: Said, step: number): WrappedState {
  const { states, order, design } = said;
  const ids = order.slice(0, step);
  const band = (part: keyof typeof stateParts) => bandOf(said, stateName(step), part);
  const cooler = states.applicable.reduce(
    (sum, { id, measure }) => sum + (ids.includes(id) && measure?.kind === 'cooler' ? measure.by : 0),
    0,
  );
  return {
    load: band('load'),
    heatNeeded: band('heatNeeded'),
    water: band('water'),
    runningCost: band('runningCost'),
    paths: states.spellWith(ids).paths.map(({ path, heat }) => ({ path, label: pathLabel(path), heat })),
    waterTemperature: design.tank.waterTemperature - cooler,
  };
}

function gainOf(said: Said, group: string): WrappingGain {
  const band = (part: GainPart) => bandOf(said, group, part);
  const netValue = band('netValue');
  const pays = netValue.likely > 0;
  return {
    loadSaved: band('loadSaved'),
    heatSaved: band('heatSaved'),
    waterSaved: band('waterSaved'),
    electricitySaved: band('electricitySaved'),
    roomCreditChange: band('roomCreditChange'),
    coolingSaved: band('coolingSaved'),
    netSaving: band('netSaving'),
    payback: paybackRange(said.doubt, group, 0),
    discountedPayback: paybackRange(said.doubt, group, said.terms.discountRate),
    netValue,
    pays,
    settled: pays ? netValue.low > 0 : netValue.high <= 0,
  };
}

function stepOf(said: Said, id: string, index: number): WrappingStep {
  const offered = said.states.applicable.find((each) => each.id === id)!;
  const isTyped = offered.usual === null;
  return {
    id,
    name: offered.name,
    cost: costOf(said.doubt, stepName(index + 1), isTyped),
    before: stateOf(said, index),
    after: stateOf(said, index + 1),
    gain: gainOf(said, stepName(index + 1)),
    cumulative: {
      ...gainOf(said, togetherName(index + 1)),
      cost: costOf(said.doubt, togetherName(index + 1), isTyped),
    },
    stopsPayingHere: index === said.payingCount,
  };
}

function notApplied({ states }: Said): readonly MeasureNotApplied[] {
  return states.offered.flatMap(({ id, name, measure, kind }): readonly MeasureNotApplied[] => {
    if (measure === null) return [{ id, name, part: kind, reason: 'noSuchPart', words: reasonWords('noSuchPart') }];
    const { unchanged } = states.outcomesOf([id])[0]!;
    // What holds for the whole tank is said once for a measure, not once for each of its panels.
    const told = unchanged.filter(({ reason }, index) => reason !== 'sizesUnknown' || index === 0);
    return told.map(({ part, reason }) => ({ id, name, part: partName(part), reason, words: reasonWords(reason) }));
  });
}

function waterfallOf(said: Said, steps: readonly WrappingStep[]): readonly WaterfallBar[] {
  const first = stateOf(said, 0);
  const last = steps.at(-1)?.after ?? first;
  return [
    bar('asItIs', null, 'as it is', [0, first.load.likely], [0, first.heatNeeded.likely]),
    ...steps.map(({ id, name, before, after, gain }) =>
      bar(
        gain.pays ? 'saves' : 'savesWithoutPaying',
        id,
        name,
        [before.load.likely, after.load.likely],
        [before.heatNeeded.likely, after.heatNeeded.likely],
      ),
    ),
    bar('left', null, 'what is left', [0, last.load.likely], [0, last.heatNeeded.likely]),
  ];
}

function bar(
  kind: WaterfallBar['kind'],
  id: string | null,
  label: string,
  [from, to]: readonly [number, number],
  [yearFrom, yearTo]: readonly [number, number],
): WaterfallBar {
  return { kind, id, label, from, to, yearFrom, yearTo };
}
