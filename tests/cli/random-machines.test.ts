// Random machines, described in every way there is, plausible, wrong or contradictory, and asked at random temperatures (seed 11):
// each is answered with ranges or refused with a reason and a code; no crash, nothing that is no number.

import { expect, test } from 'vitest';
import type { FitAnswer, MachinePoint, SettleAnswer } from '../../src/assess/index.ts';
import { main } from '../../src/cli/main.ts';
import { chance } from '../design/random-edits.ts';
import { plain } from './process.ts';
import { collected } from './streams.ts';

const machines = 40;

const by = chance(11);
const between = (low: number, high: number) => low + (high - low) * by.number();
const seldom = (share: number) => by.number() < share;
const fluids = ['R134a', 'R600a', 'R290', 'R12', 'R22', 'R404A', 'R407C'] as const;
const appliances = [
  'householdRefrigerator',
  'chestFreezer',
  'bottleCooler',
  'dehumidifier',
  'roomAirConditioner',
] as const;
const mains = () => `${by.pick([50, 60])} Hz`;
const number = (value: number) => String(Number(value.toPrecision(4)));

/** Watts of cold that a small machine gives there; now and then ten times as much, or a tenth. */
function capacityAt(size: number, evaporating: number): number {
  return size * 25 * Math.exp(0.04 * (evaporating + 25)) * by.pick([1, 1, 1, 1, 1, 1, 10, 0.1]);
}

function powerAt(size: number, evaporating: number, condensing: number): number {
  return size * (14 + 0.15 * (evaporating + 25) + 0.1 * (condensing - 45)) * between(0.8, 1.25);
}

function rating(size: number): object {
  const [evaporating, condensing] = [between(-35, 10), between(35, 60)];
  const at = seldom(0.4)
    ? { kind: 'named', point: by.pick(['ashraeLow', 'ashraeLow', 'ashraeHigh', 'cecomafLow', 'nowhere']) }
    : {
        kind: 'conditions',
        evaporating: `${number(evaporating)} °C`,
        condensing: `${number(condensing)} °C`,
        returnGas: by.pick(['32.2 °C', '20 °C', '-20 °C']),
        liquid: by.pick(['32.2 °C', '30 °C', '70 °C']),
      };
  return {
    at,
    ...(seldom(0.8) ? { capacity: `${number(capacityAt(size, evaporating))} W` } : {}),
    ...(seldom(0.8) ? { power: `${number(powerAt(size, evaporating, condensing))} W` } : {}),
    ...(seldom(0.7) ? { frequency: mains() } : {}),
  };
}

const basis = () => ({
  suction: seldom(0.5) ? { kind: 'superheat', superheat: '11.1 K' } : { kind: 'returnGas', returnGas: '32.2 °C' },
  liquid: seldom(0.5) ? { kind: 'subcooling', subcooling: '8.3 K' } : { kind: 'temperature', temperature: '30 °C' },
});

function table(size: number): object {
  const rows = Array.from({ length: Math.ceil(between(1, 14)) }, () => {
    const [evaporating, condensing] = [between(-35, 10), between(35, 58)];
    const capacity = size * 25 * Math.exp(0.04 * (evaporating + 25)) * between(0.95, 1.05);
    const power = powerAt(size, evaporating, condensing);
    return [evaporating, condensing, capacity, power].map(number).join(by.pick(['\t', '\t', ';']));
  });
  return {
    table: [
      by.pick([...Array(6).fill('te °C\ttc °C\tcapacity W\tpower W'), 'evap °F\tcond °F\tQ BTU/h\tP W', 'a\tb']),
      ...rows,
    ].join('\n'),
    basis: basis(),
    ...(seldom(0.8) ? { frequency: mains() } : {}),
  };
}

/** Per cubic centimetre of a made-up machine for R134a, in °C with kg/h, W and A; for any other fluid or unit they are wrong. */
const sheet = {
  massFlow: [1.33, 0.052, -0.0035, 0.00068, 0, 0, 0, 0, 0, 0],
  capacity: [74, 2.9, -0.42, 0.038, -0.008, 0, 0, 0, 0, 0],
  power: [9, 0.05, 0.24, -0.002, 0.006, 0, 0, 0, 0, 0],
  current: [0.08, 0.0005, 0.001, 0, 0, 0, 0, 0, 0, 0],
} as const;
const unitsOf = { massFlow: ['kg/h', 'lb/h'], capacity: ['W', 'BTU/h'], power: ['W'], current: ['A'] } as const;

function coefficients(size: number): object {
  const of = by.pick(['massFlow', 'capacity', 'power', 'current'] as const);
  return {
    of,
    values: sheet[of].map((value) => number(value * size * between(0.9, 1.1))).join(' '),
    temperatureUnit: by.pick(['celsius', 'celsius', 'celsius', 'fahrenheit']),
    unit: by.pick([...unitsOf[of], ...unitsOf[of], ...unitsOf[of], 'A', 'W', 'kg/h']),
    basis: basis(),
    evaporatingRange: by.pick(['-30 to 0 °C', '-20 to 10 °C']),
    condensingRange: by.pick(['35 to 55 °C', '30 to 65 °C']),
    ...(seldom(0.8) ? { frequency: mains() } : {}),
  };
}

function bench(size: number): object {
  const [evaporating, condensing] = [between(-30, 5), between(30, 50)];
  return {
    evaporating: `${number(evaporating)} ± 2 °C`,
    condensing: `${number(condensing)} ± 2 °C`,
    suction: `${number(evaporating + between(0, 30))} °C`,
    liquid: `${number(condensing - between(0, 10))} °C`,
    ...(seldom(0.5) ? { discharge: `${number(condensing + between(10, 60))} °C` } : {}),
    surroundings: '22 °C',
    meter: { kind: 'watts', power: `${number(powerAt(size, evaporating, condensing))} W` },
    ...(seldom(0.7) ? { frequency: mains() } : {}),
  };
}

/** A list of so many parts, or nothing. */
function list(name: string, share: number, make: () => object): object {
  if (!seldom(share)) return {};
  return { [name]: Array.from({ length: by.pick([1, 1, 2]) }, make) };
}

function randomMachine(): string {
  const size = between(2, 20);
  const compressor = {
    ...(seldom(0.6) ? { appliance: by.pick(appliances) } : {}),
    ...(seldom(0.7) ? { madeFor: by.pick(fluids) } : {}),
    ...(seldom(0.3) ? { year: by.pick(['1985', '1998 to 2006', '2020']) } : {}),
    ...(seldom(0.5) ? { displacement: `${number(size * by.pick([1, 1, 1, 0.2]))} cm3` } : {}),
    ...(seldom(0.3)
      ? {
          nameplate: {
            ratedCurrent: `${number(size * 0.1)} A`,
            frequency: mains(),
            startType: by.pick(['relay', 'unknown']),
          },
        }
      : {}),
    ...list('ratings', 0.5, () => rating(size)),
    ...list('coefficients', 0.25, () => coefficients(size)),
    ...list('tables', 0.3, () => table(size)),
    ...list('bench', 0.25, () => bench(size)),
  };
  const refrigerant = seldom(0.3) ? { refrigerant: by.pick(fluids) } : {};
  return JSON.stringify({ formatVersion: 2, machine: { ...refrigerant, compressor } });
}

async function answer(args: readonly string[], input: string) {
  const { streams, output, errors } = collected(input);
  const code = await main(args, streams);
  return { code, output: output(), errors: plain(errors()) };
}

const finite = ({ low, likely, high }: { readonly low: number; readonly likely: number; readonly high: number }) =>
  [low, likely, high].every(Number.isFinite) && low <= likely && likely <= high;

/** Answered, or refused with a reason. The answer, if there is one. */
async function answeredOrRefused<Answer>(args: readonly string[], text: string): Promise<Answer | undefined> {
  const { code, output, errors } = await answer([...args, '--json'], text);
  expect(output, text).not.toMatch(/NaN|Infinity/);
  const json = JSON.parse(output);
  expect([0, 2, 3], text).toContain(code);
  if (code === 0) return json;
  expect(errors.trim().length, text).toBeGreaterThan(30);
  expect(errors, text).not.toMatch(/undefined|\[object|\n\s+at /);
  const { error } = json;
  expect(error.kind, text).toBe(code === 2 ? 'unusable' : 'noSolution');
  const reasons = code === 2 ? error.problems.map(({ expected }: { expected: string }) => expected) : [error.message];
  for (const reason of reasons) expect(reason.length, text).toBeGreaterThan(3);
  return undefined;
}

const numbers = [
  'capacity',
  'power',
  'massFlow',
  'current',
  'dischargeTemperature',
  'heat',
  'shellHeat',
  'volumetricEfficiency',
  'overallEfficiency',
] as const;

test(`${machines} random machines`, { timeout: 240_000 }, async () => {
  const counts = { answered: 0, refused: 0 };
  for (let index = 0; index < machines; index++) {
    const text = randomMachine();
    const at = `${number(between(-40, 15))}; ${number(between(25, 65))}`;
    const point = await answeredOrRefused<MachinePoint>(['machine', '-', '--at', at], text);
    if (point === undefined) counts.refused += 1;
    else {
      counts.answered += 1;
      for (const name of numbers) expect(finite(point[name]), `${name} ${text}`).toBe(true);
      expect(point.overallEfficiency.likely, text).toBeLessThan(1);
      expect(point.volumetricEfficiency.likely, text).toBeLessThanOrEqual(1);
      const left = point.capacity.likely + point.power.likely - point.heat.likely - point.shellHeat.likely;
      expect(Math.abs(left / point.heat.likely), text).toBeLessThan(1e-9);
    }
    const place = ['--source', number(between(-10, 25)), '--water', number(between(20, 30))];
    const settled = await answeredOrRefused<SettleAnswer>(['settle', '-', ...place], text);
    if (settled !== undefined) expect(finite(settled.heat) && finite(settled.current), text).toBe(true);
    const fitted = await answeredOrRefused<FitAnswer>(['fit', '-'], text);
    for (const { after } of fitted?.numbers ?? []) expect(finite(after), text).toBe(true);
  }
  expect(counts.answered).toBeGreaterThan(machines / 4);
  expect(counts.refused).toBeGreaterThan(0);
});
