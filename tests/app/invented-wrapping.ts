// An invented answer of the study of wrapping, small enough to be followed by hand: a tank that loses 400 W and gets 50 W from
// pumps and lights; a lid takes off 200 W and pays, boards take off 60 W and pay until a heat pump is there, a second pane
// takes off 20 W and does not pay.

import type {
  BandWithUnit,
  MeasureAlone,
  MeasureKind,
  WrappedState,
  WrappingAnswer,
  WrappingGain,
  WrappingStep,
} from '../../src/assess/index.ts';

function band(likely: number, unit: string, share = 0.2): BandWithUnit {
  const reach = Math.abs(likely) * share;
  return { low: likely - reach, likely, high: likely + reach, unit, result: `wrapping.${unit}` };
}

const kilowattHour = 3.6e6;

function gain(watts: number, money: number, cost: number): WrappingGain {
  const net = 8.53 * money - cost;
  return {
    loadSaved: band(watts, 'W'),
    heatSaved: band(watts * 6 * kilowattHour, 'J'),
    waterSaved: band(0.1, 'm³'),
    electricitySaved: band(money * 1.5, '1'),
    roomCreditChange: band(-money * 0.5, '1'),
    coolingSaved: { low: 0, likely: 0, high: 0, unit: '1', result: 'wrapping.cooling' },
    netSaving: band(money, '1'),
    payback: { low: cost / money / 1.25, likely: cost / money, high: cost / money / 0.8 },
    discountedPayback: { low: cost / money / 1.2, likely: (cost / money) * 1.1, high: null },
    netValue: band(net, '1'),
    pays: net > 0,
    settled: true,
  };
}

function state(load: number): WrappedState {
  return {
    load: band(load, 'W'),
    heatNeeded: band(load * 6 * kilowattHour, 'J'),
    water: band(0.5, 'm³'),
    runningCost: band(load, '1'),
    paths: [
      { path: 'evaporation', label: 'evaporation', heat: load - 50 },
      { path: 'front', label: 'the front pane', heat: 100 },
    ],
    waterTemperature: 298.15,
  };
}

function measure(id: string, kind: MeasureKind, name: string, cost: number, alone: WrappingGain): MeasureAlone {
  return {
    id,
    kind,
    name,
    origin: 'usual',
    path: null,
    changes: [{ part: 'lid', words: `changes made by ${name.toLowerCase()}` }],
    area: 1,
    cost: {
      low: cost * 0.8,
      likely: cost,
      high: cost * 1.2,
      origin: 'assumed',
      source: 'so much for each square metre',
    },
    item: { kind: 'mat', name, material: 'extrudedPolystyrene', thickness: '20 mm', cost: `${cost} EUR` },
    alone,
  };
}

const parts = [
  { id: 'usual.lid', kind: 'lid', name: 'A tight lid', watts: 200, money: 100, cost: 60 },
  { id: 'usual.boards', kind: 'board', name: 'Boards behind and below', watts: 60, money: 25, cost: 90 },
  { id: 'usual.pane', kind: 'doubleGlazing', name: 'A second pane in front', watts: 20, money: 8, cost: 180 },
] as const;

const measures = parts.map(({ id, kind, name, watts, money, cost }) =>
  measure(id, kind, name, cost, gain(watts * 1.1, money * 1.1, cost)),
);

const inTurn = parts.map(({ id, name, watts, money, cost }, index): WrappingStep => {
  const before = 350 - parts.slice(0, index).reduce((sum, part) => sum + part.watts, 0);
  const own = gain(watts, money, cost);
  return {
    id,
    name,
    cost: measures[index]!.cost,
    before: state(before),
    after: state(before - watts),
    gain: own,
    cumulative: { ...own, cost: measures[index]!.cost },
    stopsPayingHere: index === 2,
  };
});

export const inventedWrapping: WrappingAnswer = {
  wrappingVersion: 1,
  caution: '',
  designName: 'An invented tank',
  currency: 'EUR',
  basis: {
    years: 10,
    discountRate: 0.03,
    electricityPrice: 0.3 / kilowattHour,
    houseHeatPrice: 0.12 / kilowattHour,
    monthsHeated: 7,
    roomCooledInSummer: false,
    dehumidifier: false,
    waterTemperature: 298.15,
    roomTemperature: 291.15,
  },
  measuresFrom: 'usual',
  asItIs: state(350),
  measures,
  notApplied: [
    {
      id: 'usual.calmer',
      name: 'A calmer surface',
      part: 'surface',
      reason: 'alreadyCalm',
      words: 'the surface is as calm already.',
    },
  ],
  inTurn,
  payingSteps: 2,
  paying: { ...gain(260, 125, 150), cost: { low: 120, likely: 150, high: 180, origin: 'assumed', source: 'as above' } },
  waterfall: [
    { kind: 'asItIs', id: null, label: 'Heat needed as it is', from: 0, to: 350, yearFrom: 0, yearTo: 350 },
    { kind: 'saves', id: 'usual.lid', label: 'A tight lid', from: 350, to: 150, yearFrom: 0, yearTo: 0 },
    { kind: 'saves', id: 'usual.boards', label: 'Boards behind and below', from: 150, to: 90, yearFrom: 0, yearTo: 0 },
    {
      kind: 'savesWithoutPaying',
      id: 'usual.pane',
      label: 'A second pane in front',
      from: 90,
      to: 70,
      yearFrom: 0,
      yearTo: 0,
    },
    { kind: 'left', id: null, label: 'Left', from: 0, to: 70, yearFrom: 0, yearTo: 70 },
  ],
  withHeatPump: [
    {
      heat: 'certifiedHeatPump',
      label: 'a complete certified heat pump',
      seasonCop: 4,
      priceOfHeat: 0.075 / kilowattHour,
      steps: parts.map(({ id, name, money, cost }, index) => ({
        id,
        name,
        netSaving: money / 4,
        payback: (4 * cost) / money,
        netValue: (8.53 * money) / 4 - cost,
        pays: index === 0,
        stopsPaying: index === 1,
      })),
      stopPaying: ['Boards behind and below'],
    },
  ],
  prices: {
    electricityPrices: [0.15 / kilowattHour, 0.3 / kilowattHour, 0.45 / kilowattHour],
    discountRates: [0, 0.03, 0.06],
    ownPrice: 1,
    ownRate: 1,
    cells: [1, 2, 3].map((price) =>
      [0, 0.03, 0.06].map((discountRate) => ({
        electricityPrice: (0.15 * price) / kilowattHour,
        discountRate,
        netValue: 400 * price * (1 - 3 * discountRate),
        paying: price === 1 ? ['usual.lid'] : ['usual.lid', 'usual.boards'],
        alone: { 'usual.lid': 300 * price, 'usual.boards': 50 * price, 'usual.pane': -100 },
      })),
    ),
  },
  lastInch: [
    {
      id: 'usual.boards',
      name: 'Boards behind and below',
      material: 'extrudedPolystyrene',
      materialLabel: 'Extruded polystyrene',
      area: 1.2,
      costPerVolume: 300,
      costSource: 'common practice, no source',
      points: Array.from({ length: 21 }, (_, index) => {
        const thickness = index * 0.00508;
        return {
          thickness,
          load: 350 - (80 * thickness) / (thickness + 0.02),
          heatNeeded: 350 * 6 * kilowattHour,
          netSaving: (30 * thickness) / (thickness + 0.02),
          lastInch:
            index < 5
              ? null
              : {
                  loadSaved: 40 / (index - 3),
                  heatSaved: (240 * kilowattHour) / (index - 3),
                  netSaving: 15 / (index - 3),
                  worth: 120 / (index - 3),
                  cost: 300 * 1.2 * 0.0254,
                },
        };
      }),
      worthUpTo: 0.0762,
      chosen: 0.03,
    },
  ],
  assumptions: [],
  findings: [],
  unanswered: [],
  workings: [],
};
