// First and second law at every operating point of the demos and of 200 random designs: the coldest spell and each month. Enthalpies
// and entropies are taken anew from the fluid's equation at the density and temperature told, so that a flash that missed its target
// or a heat that went astray shows. What is told must satisfy: h2 = h1 + (W − Q_shell)/ṁ, Q_c = ṁ (h2 − h3), Q_e = ṁ (h_dew − h4),
// Q_e + W = Q_c + Q_shell, all to 1e-9; no efficiency at or above 1; no entropy destroyed, in the machine or in all.

import { describe, expect, test } from 'vitest';
import { StageRunner } from '../../src/assess/stage.ts';
import { type StagedDesign, stagedDesign } from '../../src/assess/stages/engine-assumptions.ts';
import { type StageResults, stages } from '../../src/assess/stages/index.ts';
import { aroundShell, type MachinePlace } from '../../src/assess/stages/machine.ts';
import { fieldsOf, parseDesign, resolveDesign } from '../../src/design/index.ts';
import type { OperatingPoint } from '../../src/loop/index.ts';
import { type Refrigerant, refrigerant, stateInLoop } from '../../src/matter/refrigerants/index.ts';
import { KettlefinError } from '../../src/numerics/index.ts';
import { chance, textFor } from '../design/random-edits.ts';
import { demoTexts } from '../designs.ts';

const tolerance = 1e-9;
const needed: readonly string[] = ['surroundings', 'identified', 'compressor', 'operating', 'monthOperating'];

/** An operating point with the temperatures it exchanges heat with [K]. */
interface PlacedPoint {
  readonly fluid: Refrigerant;
  readonly point: OperatingPoint;
  readonly source: number;
  readonly water: number;
  readonly around: number;
}

/** Every point of a design that runs at its coldest spell. @throws what the stages throw */
function pointsOf(design: StagedDesign): readonly PlacedPoint[] {
  const runner = new StageRunner<StageResults>(stages.filter(({ name }) => needed.includes(name)));
  const { operating, monthOperating, surroundings } = runner.run(design);
  const placed = (point: OperatingPoint, place: MachinePlace): PlacedPoint => ({
    fluid: refrigerant(design.machine.refrigerant),
    point,
    source: place.sourceTemperature,
    water: design.tank.waterTemperature,
    around: aroundShell(design.machine.shellPlace, place),
  });
  const months = surroundings.months.flatMap((place, index) => {
    const point = monthOperating[index]!;
    return point === null ? [] : [placed(point, place)];
  });
  return [placed(operating, surroundings.spell), ...months];
}

function designOf(text: string): StagedDesign | undefined {
  const parsed = parseDesign(text);
  return parsed.ok ? stagedDesign(resolveDesign(parsed.document).design) : undefined;
}

/** What a point breaks; empty where it keeps every law. */
function faultsOf({ fluid, point, source, water, around }: PlacedPoint): readonly string[] {
  const faults: string[] = [];
  const hold = (what: string, left: number, right: number, scale: number) => {
    if (!(Math.abs(left - right) <= tolerance * Math.abs(scale))) faults.push(`${what}: ${left}, ${right}`);
  };
  const require = (what: string, is: boolean) => {
    if (!is) faults.push(what);
  };
  const anew = ({ density, temperature }: { readonly density: number; readonly temperature: number }) =>
    stateInLoop(fluid, { density, temperature });
  const [inlet, isentropic, outlet, liquid, expanded] = point.points;
  const { massFlow, compressorPower: power, shellHeat, heatDelivered, heatTaken } = point;
  const [h1, h2, h3] = [anew(inlet), anew(outlet), anew(liquid)].map(({ enthalpy }) => enthalpy) as [
    number,
    number,
    number,
  ];
  hold('discharge enthalpy', h2, h1 + (power - shellHeat) / massFlow, h2);
  hold('heat of the condenser', heatDelivered, massFlow * (h2 - h3), massFlow * h2);
  hold('heat of the evaporator', heatTaken, massFlow * (h1 - h3), massFlow * h1);
  hold('valve at constant enthalpy', expanded.enthalpy, h3, h3);
  hold('first law of the loop', heatTaken + power, heatDelivered + shellHeat, heatDelivered);
  const ideal = anew(isentropic);
  hold('isentropic end', ideal.entropy, anew(inlet).entropy, ideal.entropy);
  hold('overall efficiency', point.overallEfficiency, (massFlow * (ideal.enthalpy - h1)) / power, 1);
  hold('COP', point.compressorCop, heatDelivered / power, point.compressorCop);
  hold('pressure ratio', point.pressureRatio, outlet.pressure / inlet.pressure, point.pressureRatio);
  require('overall efficiency below 1', point.overallEfficiency > 0 && point.overallEfficiency < 1);
  require('volumetric efficiency below 1', point.volumetricEfficiency > 0 && point.volumetricEfficiency < 1);
  require('motor efficiency below 1', point.compressor.shaftPower < power);
  const made = massFlow * (anew(outlet).entropy - anew(inlet).entropy) + shellHeat / point.compressor.wallTemperature;
  require('machine makes entropy', made > 0);
  require('all together make entropy', heatDelivered / water + shellHeat / around - heatTaken / source > 0);
  return faults;
}

const demos = Object.entries(demoTexts).map(([name, text]) => [name, pointsOf(designOf(text)!)] as const);

describe.each(demos)('%s', (_name, points) => {
  test('keeps both laws in the coldest spell and in every month', () => {
    expect(points.length).toBe(13);
    expect(points.flatMap(faultsOf)).toEqual([]);
  });
});

const designs = 200;
const changesEach = 8;

/** A demo with some of its fields of any kind changed at random. */
function randomText(by: ReturnType<typeof chance>): string {
  const text = demoTexts[by.pick(Object.keys(demoTexts))]!;
  const parsed = parseDesign(text);
  if (!parsed.ok) throw new Error('a demo is no design');
  const fields = fieldsOf(parsed.document).filter(
    ({ path, type }) => type !== 'kind' && type !== 'text' && /^(room|source|machine|exchangers|place)\./.test(path),
  );
  const design = JSON.parse(text);
  for (let change = 0; change < changesEach; change++) {
    const field = by.pick(fields);
    const keys = field.path.split('.');
    const last = keys.pop()!;
    let part = design;
    for (const key of keys) part = part[key] ??= {};
    const written = textFor(by, field);
    if (written !== undefined) part[last] = written;
  }
  return JSON.stringify(design);
}

test(`${designs} random designs keep both laws (seed 26)`, () => {
  const by = chance(26);
  let answered = 0;
  let points = 0;
  const fluids = new Set<string>();
  for (let tries = 0; answered < designs && tries < 20 * designs; tries++) {
    const text = randomText(by);
    const design = designOf(text);
    if (design === undefined) continue;
    try {
      const placed = pointsOf(design);
      for (const each of placed) expect(faultsOf(each), text).toEqual([]);
      fluids.add(placed[0]!.fluid.name);
      points += placed.length;
      answered++;
    } catch (error) {
      // Physics or the model may allow no operating point.
      if (!(error instanceof KettlefinError)) throw error;
    }
  }
  expect(answered).toBe(designs);
  expect(points).toBeGreaterThan(5 * designs);
  expect(fluids.size).toBeGreaterThan(5);
});

describe('planted faults are found', () => {
  const [, points] = demos[0]!;
  const whole = points[0]!;
  const withChanges = (changes: Partial<OperatingPoint>): readonly string[] =>
    faultsOf({ ...whole, point: { ...whole.point, ...changes } });
  const { point } = whole;
  const warmer = point.points.map((each, index) =>
    index === 2 ? { ...each, temperature: each.temperature * (1 + 1e-7) } : each,
  ) as unknown as OperatingPoint['points'];

  test.each([
    ['a ten-millionth of the power', withChanges({ compressorPower: point.compressorPower * (1 + 1e-7) }), /first law/],
    ['shell heat of the other sign', withChanges({ shellHeat: -point.shellHeat }), /discharge enthalpy/],
    ['discharge a little warmer than told', withChanges({ points: warmer }), /discharge enthalpy/],
    ['flow of another machine', withChanges({ massFlow: point.massFlow * 1.001 }), /heat of the condenser/],
    ['an efficiency above 1', withChanges({ overallEfficiency: 1.02 }), /overall efficiency below 1/],
    ['heat out of nothing', withChanges({ heatTaken: 0.2 * point.heatTaken }), /heat of the evaporator/],
    ['a machine better than any', withChanges({ heatTaken: 1.4 * point.heatDelivered }), /all together make entropy/],
  ] as const)('%s', (_what, faults, complaint) => {
    expect(faults.join('\n')).toMatch(complaint);
  });
});
