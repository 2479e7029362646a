// Random requests of `cycle --batch`: half of them anything at all, half of them near the states of a cycle that exists, with
// pressures lost, heat exchangers, flows and bodies in every combination. Each is a cycle whose energy and exergy accounts
// close, or a typed error in a sentence; nothing else. Numbers and choices from a seeded generator (seed 7).

import { expect, test } from 'vitest';
import { answerCycleLine } from '../../src/cli/cycle/answer-line.ts';
import type { TextbookCycle, TextbookCycleRequest } from '../../src/loop/index.ts';
import { refrigerantNames } from '../../src/matter/refrigerants/index.ts';

const requests = 2000;

/** Linear congruential generator of Numerical Recipes: enough to choose with. */
let seed = 7;
function random(): number {
  seed = (seed * 1664525 + 1013904223) % 2 ** 32;
  return seed / 2 ** 32;
}

function pick<Item>(list: readonly Item[]): Item {
  return list[Math.floor(random() * list.length)]!;
}

const sometimes = (share: number) => random() < share;

type Loose = Record<string, unknown>;
type Answer = TextbookCycle | { readonly error: { readonly code: string; readonly message: string } };

const nonsense = [0, -0, -1, 1e308, 1e-308, 5e-324, 1e-12, 1e12, null, 'NaN', '5', true, [], {}, 1 - 1e-12, 1];

/** Where values of each key may lie, wider than any cycle reaches. */
const ranges: Readonly<Record<string, readonly [number, number]>> = {
  evaporating: [180, 330],
  evaporatingPressure: [1e4, 2e6],
  condensing: [260, 430],
  condensingPressure: [2e5, 6e6],
  superheat: [0, 60],
  suctionTemperature: [200, 360],
  suctionQuality: [0.3, 1],
  subcooling: [0, 60],
  liquidTemperature: [200, 350],
  isentropicEfficiency: [0.05, 1],
  dischargeTemperature: [260, 500],
  suctionPressure: [1e4, 1e6],
  liquidPressure: [1e5, 4e6],
  evaporatorOutletTemperature: [220, 340],
  heatExchangerEffectiveness: [0.01, 1],
  suctionTemperatureAfterExchanger: [240, 360],
  massFlow: [1e-9, 1],
  coolingCapacity: [10, 1e9],
  heatingCapacity: [10, 1e5],
  compressorPower: [10, 1e4],
  displacement: [1e-5, 1e-1],
  volumetricEfficiency: [0.1, 1],
  deadState: [200, 400],
  sinkTemperature: [200, 400],
  sourceTemperature: [200, 400],
};
const keys = Object.keys(ranges);
const flowKeys = ['massFlow', 'coolingCapacity', 'heatingCapacity', 'compressorPower', 'displacement'];

function value(key: string): unknown {
  const [low, high] = ranges[key]!;
  if (sometimes(0.05)) return pick(nonsense);
  return pick([low, high, low + random() * (high - low), low + random() * (high - low)]);
}

/** Whatever keys: too few, too many, partners together. */
function anything(): Loose {
  const asked: Loose = { refrigerant: pick([...refrigerantNames, '', 'R999', '__proto__', 7]) };
  const groups = [
    ['evaporating', 'evaporatingPressure'],
    ['condensing', 'condensingPressure'],
    ['superheat', 'suctionTemperature', 'suctionQuality', 'evaporatorOutletTemperature'],
    ['subcooling', 'liquidTemperature'],
    ['isentropicEfficiency', 'dischargeTemperature'],
  ];
  for (const group of groups) {
    const key = pick(group);
    if (sometimes(0.98)) asked[key] = value(key);
  }
  for (let more = Math.floor(random() * 4); more > 0; more--) {
    const key = pick(keys);
    asked[key] = value(key);
  }
  if (sometimes(0.2)) asked.referenceState = pick(['iir', 'ashrae', 'normalBoilingPoint', 'nope', 7]);
  return asked;
}

/** A cycle that exists, and then keys near its own states, so that many of them can be met and many only just cannot. */
function nearACycle(): Loose {
  const evaporating = 225 + random() * 70;
  const plain = {
    refrigerant: pick(refrigerantNames),
    evaporating,
    condensing: evaporating + 5 + random() * 60,
    superheat: pick([0, random() * 30]),
    subcooling: pick([0, random() * 20]),
    isentropicEfficiency: pick([1, 0.3 + 0.7 * random()]),
  } satisfies TextbookCycleRequest;
  const answer = JSON.parse(answerCycleLine(JSON.stringify(plain))) as Answer;
  if ('error' in answer) return plain;
  const [gas, , discharge, liquid, cold] = answer.points;
  const near = (number: number, share: number) => pick([number, number * (1 - share * random())]);
  const asked: Loose = { ...plain };
  const replace = (key: string, by: string, number: number) => {
    delete asked[key];
    asked[by] = number;
  };
  if (sometimes(0.5)) asked.suctionPressure = near(answer.evaporating.pressure, 0.4);
  if (sometimes(0.5)) asked.liquidPressure = near(answer.condensing.pressure, 0.4);
  if (sometimes(0.5)) {
    if (sometimes(0.5)) asked.heatExchangerEffectiveness = pick([1, 1e-12, random()]);
    else {
      const apart = liquid.temperature - gas.temperature;
      asked.suctionTemperatureAfterExchanger = gas.temperature + pick([0, 1e-7, random() * apart, apart]);
    }
    if (sometimes(0.3)) replace('superheat', 'evaporatorOutletTemperature', gas.temperature);
  } else if (random() < 0.5) {
    if (sometimes(0.5)) replace('superheat', 'suctionTemperature', near(gas.temperature, 0.01));
    else replace('superheat', 'suctionQuality', pick([1, 1 - 1e-12, 0.5 + random() / 2]));
  }
  if (sometimes(0.3)) replace('subcooling', 'liquidTemperature', near(liquid.temperature, 0.02));
  if (sometimes(0.3)) replace('isentropicEfficiency', 'dischargeTemperature', near(discharge.temperature, 0.02));
  if (sometimes(0.3)) replace('condensing', 'condensingPressure', answer.condensing.pressure);
  if (sometimes(0.5)) {
    const key = pick(flowKeys);
    asked[key] = value(key);
  }
  if (sometimes(0.2)) asked.sinkTemperature = near(liquid.temperature, 0.05);
  if (sometimes(0.2)) asked.sourceTemperature = pick([cold.temperature, cold.temperature + 20 * random()]);
  if (sometimes(0.2)) asked.referenceState = pick(['iir', 'ashrae', 'normalBoilingPoint']);
  return asked;
}

/** Every number in the answer is one, which JSON would have turned into null where it was none. */
function expectAccountsToClose(cycle: TextbookCycle, line: string): void {
  const { heatDelivered, heatTaken, specificWork, exergyDestruction, exergyBasis, points, perSecond } = cycle;
  const named = new Map(points.map((point) => [point.name, point]));
  const enthalpy = (name: (typeof points)[number]['name']) => named.get(name)!.enthalpy;
  const outlet = named.has('evaporatorOutlet') ? 'evaporatorOutlet' : 'compressorInlet';
  const closes = (left: number, right: number, scale: number) =>
    expect(Math.abs(left - right) / scale, line).toBeLessThanOrEqual(1e-9);
  closes(heatDelivered, heatTaken + specificWork, heatDelivered);
  const scale = Math.max(...points.map((point) => Math.abs(point.enthalpy)), heatDelivered);
  closes(enthalpy('compressorOutlet') - enthalpy('compressorInlet'), specificWork, scale);
  closes(enthalpy('compressorOutlet') - enthalpy('condenserOutlet'), heatDelivered, scale);
  closes(enthalpy(outlet) - enthalpy('evaporatorInlet'), heatTaken, scale);
  const { total, ...parts } = exergyDestruction;
  closes(
    Object.values(parts).reduce((sum, part) => sum + part, 0),
    total,
    heatDelivered,
  );
  closes(total + exergyBasis.minimumWork, specificWork, heatDelivered);
  for (const part of [parts.compressor, parts.expansion, parts.heatExchanger ?? 0]) {
    expect(part / heatDelivered, line).toBeGreaterThan(-1e-6);
  }
  expect(specificWork, line).toBeGreaterThan(0);
  expect(Math.min(cycle.superheat, cycle.subcooling), line).toBeGreaterThanOrEqual(0);
  expect(cycle.isentropicEfficiency, line).toBeLessThanOrEqual(1 + 1e-9);
  if (perSecond === undefined) return;
  closes(perSecond.heatingCapacity, perSecond.coolingCapacity + perSecond.compressorPower, perSecond.heatingCapacity);
}

test(`${requests} random requests`, () => {
  const codes = new Set<string>();
  let cycles = 0;
  for (let index = 0; index < requests; index++) {
    const line = JSON.stringify(index % 2 === 0 ? anything() : nearACycle());
    const text = answerCycleLine(line);
    const answer = JSON.parse(text) as Answer;
    if ('error' in answer) {
      codes.add(answer.error.code);
      expect(answer.error.message, line).toMatch(/^.{10,900}$/);
      expect(answer.error.message.replaceAll('"NaN"', ''), line).not.toMatch(/NaN|Infinity|undefined|\[object/);
    } else {
      cycles += 1;
      expectAccountsToClose(answer, line);
    }
  }
  expect(cycles).toBeGreaterThan(requests / 5);
  // The generator reaches the refusals that need physics, not only those at the door.
  for (const code of ['exchangerOutOfReach', 'liquidColderThanSuction', 'pressureRises', 'dischargeBelowIsentropic']) {
    expect([...codes]).toContain(code);
  }
});
