// The tank alone: every number of its answer has its step, over tanks of every form; sums and laws; cooling against the closed
// form of a lumped heat capacity; dew against the handbook's dew point; a meter against the energy balance it stands for.

import { describe, expect, test } from 'vitest';
import {
  type Assessment,
  allFormulas,
  assessDesign,
  assessTankLoad,
  type BandWithUnit,
  type TankLoadAnswer,
  type TankLoadOptions,
} from '../../src/assess/index.ts';
import { fieldRecord } from '../../src/design/index.ts';
import {
  cylinderDesign,
  fullDesign,
  type Loose,
  measuredDesign,
  panelsDesign,
  sizedDesign,
} from '../design/examples.ts';
import { demoTexts } from '../designs.ts';
import { expectTraced } from '../traced-steps.ts';

function answerOf(design: Loose | string, options: TankLoadOptions = {}): TankLoadAnswer {
  const outcome = assessTankLoad(typeof design === 'string' ? design : JSON.stringify(design), options);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome));
  return outcome.answer;
}

/** The sized design with other parts of its tank, and of the room. */
function sized(load: Loose, room: Loose = {}, tank: Loose = {}): Loose {
  const design = sizedDesign();
  Object.assign(design.tank.load, load);
  Object.assign(design.room, room);
  Object.assign(design.tank, tank);
  return design;
}

const meter = {
  kind: 'heater',
  energy: '26 kWh',
  duration: '7 days',
  roomTemperature: '18 °C',
  waterTemperature: '26 °C',
};

function bandsIn(value: unknown): BandWithUnit[] {
  if (typeof value !== 'object' || value === null) return [];
  if ('likely' in value && 'result' in value) return [value as BandWithUnit];
  return Object.values(value).flatMap(bandsIn);
}

/**
 * Constants of the model: films, still air, the wall of a house, sections of a stack, standing water, days of a month, one
 * kelvin, a heater's coefficient of 1; losses computed anew a little warmer and cooler, and on the way down.
 */
const modelsOwn = [
  ...[
    'h_c',
    'h',
    'v',
    'n',
    'f',
    's',
    'S',
    'epsilon',
    'epsilon_w',
    'epsilon1',
    'epsilon2',
    'R_before',
    'R_f',
    'R_1',
    'R',
    'Nu',
  ],
  ...['t', 'dT', 'COP', 'COP_cool', 'Q_warmer', 'Q_cooler', 'Q_m', 'H', 'A', 'A_1', 'A_2'],
];

const designs: Readonly<Record<string, Loose | string>> = {
  ...demoTexts,
  sized: sizedDesign(),
  measured: measuredDesign(),
  'every part there is': fullDesign(),
  'piece by piece, under a hood': panelsDesign(),
  cylinder: cylinderDesign(),
  'a meter that is adopted': sized({ meter: { ...meter, adopt: 'yes' } }),
};

describe.each(Object.entries(designs))('%s', (_, design) => {
  const answer = answerOf(design);
  const { tank } = answer;

  test('each step holds, each number comes from somewhere, each band has its step', () => {
    const absent = answer.workings.flatMap(({ inputs, from }) =>
      Object.keys(inputs).filter((symbol) => inputs[symbol] === 0 && !(symbol in from)),
    );
    const isGiven = (origin: string) => fieldRecord(origin) !== undefined || /^(engine|tank\.load)\./.test(origin);
    const values = expectTraced(answer.workings, allFormulas, isGiven, [...modelsOwn, ...absent]);
    for (const { result, likely } of bandsIn(answer)) {
      expect(values.has(result), result).toBe(true);
      expect(Math.abs(values.get(result)! - likely), result).toBeLessThanOrEqual(1e-9 * Math.abs(likely) + 1e-12);
    }
    for (const { result, time } of tank.falls) expect(values.get(result)).toBe(time ?? undefined);
  });

  test('paths sum to the loss, vessels and the rest too, months to the year', () => {
    const sum = (bands: readonly { readonly likely: number }[]) =>
      bands.reduce((total, { likely }) => total + likely, 0);
    expect(sum(tank.paths.map(({ heat }) => heat)) / tank.loss.likely).toBeCloseTo(1, 9);
    const rest = tank.paths.filter(({ vessel }) => vessel === null).map(({ heat }) => heat);
    if (tank.vessels.length > 0) {
      expect((sum(tank.vessels.map(({ loss }) => loss)) + sum(rest)) / tank.loss.likely).toBeCloseTo(1, 9);
    }
    expect(tank.months).toHaveLength(12);
    for (const { loss, paths } of tank.months) {
      expect(sum(paths.map(({ heat }) => heat)) / loss.likely).toBeCloseTo(1, 9);
    }
    const year = sum(tank.months.map(({ heatNeeded }) => heatNeeded));
    expect(year / tank.yearHeatNeeded.likely).toBeCloseTo(1, 9);
    expect(answer.heaterAccount.electricity.likely / year).toBeCloseTo(1, 9);
  });

  test('every band holds its likely value, and every fall takes longer than the one before', () => {
    for (const { low, likely, high, result } of bandsIn(answer)) {
      expect(low, result).toBeLessThanOrEqual(likely);
      expect(high, result).toBeGreaterThanOrEqual(likely);
    }
    const { falls } = tank;
    expect(falls.map(({ by }) => by)).toEqual([1, 2, 3, 5]);
    for (const [index, { time, range }] of falls.entries()) {
      if (time === null) continue;
      expect(range!.low).toBeLessThanOrEqual(time);
      expect(range!.high ?? time).toBeGreaterThanOrEqual(time);
      if (index > 0) expect(time / falls[index]!.by).toBeGreaterThan(falls[index - 1]!.time! / falls[index - 1]!.by);
    }
  });

  test('a panel: temperatures run from the water to what lies beyond, resistances make its heat', () => {
    for (const panel of tank.panels) {
      const { insideTemperature, waterFilmResistance, layers, outerTemperature, outerResistance, sinkTemperature } =
        panel;
      const inner = waterFilmResistance + layers.reduce((sum, { resistance }) => sum + resistance, 0);
      expect(panel.transmittance * (inner + outerResistance), panel.panel).toBeCloseTo(1, 9);
      const way = [
        insideTemperature,
        ...layers.map((layer) => layer.outerTemperature),
        outerTemperature,
        sinkTemperature,
      ];
      const down = insideTemperature >= sinkTemperature ? 1 : -1;
      for (const [index, temperature] of way.entries()) {
        if (index > 0) expect(down * (way[index - 1]! - temperature), panel.panel).toBeGreaterThanOrEqual(-1e-9);
      }
      if (panel.panel === 'hood') continue;
      const factor = tank.meter?.adopted === true ? tank.meter.ratio.likely : 1;
      const heat = factor * panel.area * panel.transmittance * (insideTemperature - sinkTemperature);
      expect(panel.heat.likely / heat, panel.panel).toBeCloseTo(1, 9);
    }
  });
});

test.each(Object.entries(demoTexts))('%s: the same in the whole assessment', (_, text) => {
  const { tank, heaterAccount } = answerOf(text);
  const outcome = assessDesign(text, 'metric');
  if (!outcome.ok) throw new Error(JSON.stringify(outcome));
  const whole: Assessment = outcome.assessment;
  expect(whole.tank.months.map(({ load }) => load.likely)).toEqual(tank.months.map(({ load }) => load.likely));
  expect(whole.tank.panels).toHaveLength(tank.panels.length);
  for (const [index, { range }] of tank.falls.entries()) {
    expect(whole.tank.falls[index]!.range!.low / range!.low).toBeCloseTo(1, 9);
  }
  const heater = whole.accounts.find(({ scenario }) => scenario === 'plainHeater')!;
  for (const part of ['electricity', 'roomCredit', 'coolingCost', 'runningCost'] as const) {
    for (const end of ['low', 'likely', 'high'] as const) {
      expect(heaterAccount[part][end], part).toBeCloseTo(heater[part][end], 6);
    }
  }
});

describe('cooling', () => {
  // Lumped heat capacity (Incropera & DeWitt, section 5.1; formula from memory of the source), reckoned by hand: 200 kg at
  // 4182 J/(kg K), 8 W/K, from 26 °C in 18 °C: time constant 29.042 h, 8.355 h to 24 °C.
  test('a measured tank without vapour is linear: time constant and time to 24 °C', () => {
    const design = measuredDesign();
    // 64 W: 8 W/K over 8 K, nothing from pumps and lights.
    Object.assign(design.tank.load, {
      energy: '10.752 kWh',
      duration: '7 days',
      roomTemperature: '18 °C',
      waterTemperature: '26 °C',
      volume: '200 L',
      evaporationShare: '0 %',
      pumpPower: '0 W',
      lightPower: '0 W',
    });
    design.room = { temperature: '18 °C', coldest: '18 °C' };
    const { tank } = answerOf(design, { falls: [2] });
    const asReckoned = (200 * 4182) / tank.heatCapacity;
    expect((tank.timeConstant.likely * asReckoned) / 3600).toBeCloseTo(29.042, 2);
    expect(tank.falls.map(({ by }) => by)).toEqual([2]);
    expect((tank.falls[0]!.time! * asReckoned) / 3600).toBeCloseTo(8.355, 3);
  });

  test('never falls below where it loses nothing: without end, or without an end for sure', () => {
    const { tank } = answerOf(sized({}, { temperature: '25 °C', coldest: '23 to 25 °C', warmest: '27 °C' }), {
      falls: [1, 2, 5],
    });
    const [first, second, last] = tank.falls;
    expect(first!.time).toBeGreaterThan(0);
    expect(second).toMatchObject({ range: { high: null } });
    expect(last).toMatchObject({ time: null, range: null });
  });
});

describe('dew on the outside', () => {
  // ASHRAE Handbook Fundamentals 2017, chapter 1, by PsychroLib: air of 25 °C and 50 % has its dew point at 13.864 °C.
  const room = { temperature: '25 °C', coldest: '25 °C', warmest: '25 °C', relativeHumidity: '50 %' };
  const codes = (answer: TankLoadAnswer) => answer.findings.map(({ code }) => code);

  test('a cold-water tank sweats on panes that are below the dew point, and a board keeps them dry', () => {
    const bare = answerOf(sized({ lid: 'none' }, room, { waterTemperature: '10 °C' }));
    expect(bare.tank.roomDewPoint! - 273.15).toBeCloseTo(13.864, 2);
    expect(bare.tank.panels.every(({ condenses }) => condenses)).toBe(true);
    expect(codes(bare)).toContain('surfaceBelowDewPoint');
    const board = { material: 'extrudedPolystyrene', thickness: '30 mm' };
    const wrapped = answerOf(sized({ lid: 'none', insulation: { back: board } }, room, { waterTemperature: '10 °C' }));
    expect(wrapped.tank.panels.find(({ panel }) => panel === 'back')!.condenses).toBe(false);
  });

  test('a tank warmer than the dew point stays dry', () => {
    const answer = answerOf(sized({ lid: 'none' }, room, { waterTemperature: '15 °C' }));
    expect(answer.tank.panels.some(({ condenses }) => condenses)).toBe(false);
    expect(codes(answer)).not.toContain('surfaceBelowDewPoint');
  });
});

describe('a meter beside the sizes', () => {
  const certain = { coldest: '18 °C', relativeHumidity: '50 %' };
  const gains = { pumpPower: '10 W', pumpShareToWater: '90 %', lightPower: '0 W' };

  test('measured loss is the heater and the gains, the ratio what it is over the model', () => {
    const { tank } = answerOf(sized({ meter, ...gains }));
    const power = (26 * 3.6e6) / (7 * 86400);
    expect(tank.meter!.meanPower.likely).toBeCloseTo(power, 9);
    expect(tank.meter!.measuredLoss.likely).toBeCloseTo(power + 9, 9);
    expect(tank.meter!.ratio.likely).toBeCloseTo((power + 9) / tank.meter!.modelledLoss.likely, 12);
    // The model of those days is that of a coldest spell with these temperatures.
    const then = answerOf(sized(gains, { ...certain }));
    expect(tank.meter!.modelledLoss.likely).toBeCloseTo(then.tank.loss.likely, 6);
  });

  test('changes no load before it is adopted', () => {
    expect(answerOf(sized({ meter, ...gains })).tankLoad).toEqual(answerOf(sized(gains)).tankLoad);
  });

  test('adopted, the load at the measured temperatures is the heater’s own, with the doubt of the meter alone', () => {
    const ranged = { ...meter, energy: '24 to 28 kWh', adopt: 'yes' };
    const { tank } = answerOf(sized({ meter: ranged, ...gains }, certain));
    const power = (energy: number) => (energy * 3.6e6) / (7 * 86400);
    expect(tank.load.likely).toBeCloseTo(power(26), 6);
    expect(tank.load.low).toBeCloseTo(power(24), 6);
    expect(tank.load.high).toBeCloseTo(power(28), 6);
    expect(tank.load.high - tank.load.low).toBeLessThan(
      0.5 * (answerOf(sized(gains, certain)).tank.load.high - answerOf(sized(gains, certain)).tank.load.low),
    );
  });

  test('adopted, it carries every path alike, and stays above 0 under any wrap', () => {
    const adopted = answerOf(sized({ meter: { ...meter, adopt: 'yes' }, ...gains }));
    const plain = answerOf(sized(gains));
    for (const [index, { heat, path }] of adopted.tank.paths.entries()) {
      expect(heat.likely / plain.tank.paths[index]!.heat.likely, path).toBeCloseTo(adopted.tank.meter!.ratio.likely, 9);
    }
    expect(adopted.findings.map(({ code }) => code)).toContain('meterAdopted');
  });

  test('an input that could explain the gap, set to the value told, brings model and meter together', () => {
    const open = { lid: 'none', ...gains, meter: { ...meter, energy: '34 kWh' } };
    const { explanations, ratio } = answerOf(sized(open)).tank.meter!;
    expect(Math.abs(ratio.likely - 1)).toBeGreaterThan(0.02);
    const factor = explanations.find(({ path }) => path === 'tank.load.evaporationFactor')!;
    const told = answerOf(sized({ ...open, evaporationFactor: String(factor.value) })).tank.meter!;
    expect(told.ratio.likely).toBeCloseTo(1, 3);
    const depth = explanations.map(({ isWithin }) => isWithin);
    expect(depth).toEqual([...depth].sort((left, right) => Number(right) - Number(left)));
    for (const { isWithin, value, input } of explanations) {
      expect(isWithin).toBe(value !== null && value >= input.low - 1e-9 && value <= input.high + 1e-9);
    }
  });

  test('what no range explains is said', () => {
    const answer = answerOf(sized({ meter: { ...meter, energy: '120 kWh' }, ...gains }));
    expect(answer.tank.meter!.agrees).toBe(false);
    expect(answer.findings.map(({ code }) => code)).toContain('meterDisagrees');
    expect(answer.tank.meter!.explanations.every(({ isWithin }) => !isWithin)).toBe(true);
  });

  test('a room warmer than the water says nothing about losses', () => {
    const outcome = assessTankLoad(JSON.stringify(sized({ meter: { ...meter, roomTemperature: '33 °C' }, ...gains })));
    expect(outcome).toMatchObject({
      ok: false,
      kind: 'unusable',
      problems: [expect.objectContaining({ path: 'tank.load.meter.roomTemperature' })],
    });
  });
});
