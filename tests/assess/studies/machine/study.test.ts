// The study of a machine over every demo: laws of its map, what its limits and marks say of each other and of the assessment, what
// the remedies do, and how many are needed.

import { describe, expect, test } from 'vitest';
import {
  assessDesign,
  assessMachine,
  assessSettle,
  type MachineStudy,
  type Remedy,
  tableStates,
} from '../../../../src/assess/index.ts';
import { changedDesign, demoTexts } from '../../../designs.ts';

const reef = demoTexts['reef-in-the-study.json']!;

function studyOf(text: string): MachineStudy {
  const outcome = assessMachine(text);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome));
  return outcome.study;
}

const studies = Object.entries(demoTexts).map(([name, text]) => [name, studyOf(text), text] as const);

describe.each(studies)('%s', (_, study, text) => {
  const points = study.map.flatMap(({ condensing, points: line }) => line.map((point) => ({ condensing, ...point })));
  const answered = points.filter(({ values }) => values !== null);

  test('every number is one, and lies in its range', () => {
    expect(answered.length).toBeGreaterThan(points.length / 2);
    for (const { values } of answered) {
      for (const { low, likely, high } of Object.values(values!)) {
        expect([low, likely, high].every(Number.isFinite)).toBe(true);
        expect(low).toBeLessThanOrEqual(likely);
        expect(likely).toBeLessThanOrEqual(high);
      }
    }
    expect(JSON.stringify(study)).not.toMatch(/NaN|Infinity/);
    for (const { values, reason } of points) expect(values === null).toBe(reason !== null);
  });

  test('warmer evaporation gives more flow, heat and a better ratio; warmer condensing less of each', () => {
    for (const { points: line } of study.map) {
      const likely = line.flatMap(({ values }) => (values === null ? [] : [values]));
      for (const [index, right] of likely.entries()) {
        const left = likely[index - 1];
        if (left === undefined) continue;
        for (const name of ['massFlow', 'heat', 'cop'] as const) {
          expect(right[name].likely).toBeGreaterThan(left[name].likely);
        }
      }
    }
    const [first, second] = study.map;
    for (const [index, point] of first!.points.entries()) {
      const warmer = second!.points[index]!;
      if (point.values === null || warmer.values === null) continue;
      expect(warmer.values.massFlow.likely).toBeLessThan(point.values.massFlow.likely);
      expect(warmer.values.cop.likely).toBeLessThan(point.values.cop.likely);
    }
  });

  test('a point is beyond a limit on the side of its edge that the limit says', () => {
    expect(study.limits.length).toBeGreaterThan(4);
    for (const { limit, edges } of study.limits) {
      for (const { condensing, beyond, at } of edges) {
        const line = answered.filter((point) => point.condensing === condensing);
        const own = edges.filter((edge) => edge.condensing === condensing);
        for (const { evaporating, passed } of line) {
          if (at === null) expect(passed).not.toContain(limit);
          else if (at === 'all') expect(passed).toContain(limit);
          else if (own.length === 1) {
            const isBeyond = beyond === 'above' ? evaporating > at : evaporating < at;
            expect(passed.includes(limit)).toBe(isBeyond);
          }
        }
      }
    }
  });

  test('the coldest spell is that of the assessment', () => {
    const outcome = assessDesign(text, 'metric', { states: tableStates });
    if (!outcome.ok) throw new Error('no assessment');
    const { operating, compressorPower, machine, tankLoad } = outcome.assessment;
    const [mark] = study.marks;
    expect(mark!.when).toBe('coldestSpell');
    expect(mark!.evaporating).toBeCloseTo(operating.evaporatingTemperature.likely, 6);
    for (const end of ['low', 'likely', 'high'] as const) {
      const ofOne = machine.power[end];
      expect(mark!.values.power[end] / ofOne).toBeCloseTo(1, 3);
      expect(mark!.values.heat[end] / machine.heat[end]).toBeCloseTo(1, 3);
      expect(study.howMany.load[end] / tankLoad[end]).toBeCloseTo(1, 6);
    }
    expect(compressorPower.likely / machine.power.likely).toBeCloseTo(machine.count, 6);
    expect(study.sentence.heat).toEqual(mark!.values.heat);
    expect(study.sentence.builtFor).toEqual(machine.builtFor);
  });

  test('more machines give as much more heat, and those needed carry the load', () => {
    const { rows, needed, load } = study.howMany;
    const [one, two] = rows;
    expect(rows.map(({ machines }) => machines)).toEqual(rows.map((_row, index) => index + 1));
    expect(two!.coldestSpell.likely).toBeGreaterThan(1.9 * one!.coldestSpell.likely);
    const likely = rows.find(({ machines }) => machines === needed.likely);
    if (likely !== undefined) expect(likely.coldestSpell.likely).toBeGreaterThanOrEqual(load.likely);
    const fewer = rows.find(({ machines }) => machines === (needed.likely ?? 0) - 1);
    if (fewer !== undefined) expect(fewer.coldestSpell.likely).toBeLessThan(load.likely);
    expect(study.howMany.months).toHaveLength(12);
    for (const { running, shareOfLast } of study.howMany.months) {
      if (running === null || shareOfLast === null) continue;
      expect(shareOfLast).toBeGreaterThanOrEqual(0);
      expect(shareOfLast).toBeLessThanOrEqual(1);
    }
  });

  test('one machine that carries a month runs for the same share of it as in the year of the assessment', () => {
    const outcome = assessDesign(text, 'metric');
    if (!outcome.ok) throw new Error(JSON.stringify(outcome));
    let compared = 0;
    for (const { month, running, shareOfLast } of study.howMany.months) {
      if (study.howMany.planned !== 1 || running !== 1) continue;
      const { runFraction } = outcome.assessment.year.find((each) => each.month === month)!;
      // Study and assessment differ by the tables of the fluid alone.
      expect(Math.abs(shareOfLast! - runFraction)).toBeLessThan(1e-5);
      compared++;
    }
    expect(compared).toBeGreaterThan(0);
  });

  test('only the fluid it was made for is not for study alone', () => {
    const [own, ...others] = study.otherFluids;
    expect(own).toMatchObject({ isMadeFor: true, fluid: study.sentence.madeFor });
    expect(others.length).toBeGreaterThan(5);
    for (const { forStudyOnly, stops } of others) {
      expect(forStudyOnly).toBe(true);
      expect(stops.map(({ code }) => code)).toContain('notForThisMachine');
    }
  });

  test('every start fact says where it is from', () => {
    expect(study.starting.length).toBeGreaterThan(4);
    for (const { source, words } of study.starting) expect(source.length * words.length).toBeGreaterThan(0);
  });
});

describe('remedies', () => {
  // Built for a freezer, run far above its evaporating range.
  const text = changedDesign(reef, {
    'machine.compressor': { appliance: 'chestFreezer', madeFor: 'R134a', nameplate: { ratedCurrent: '1 A' } },
    'machine.count': '3',
  });
  const study = studyOf(text);
  const of = (name: Remedy['name']) => study.remedies.find((remedy) => remedy.name === name)!;

  test('stand in one order, each at the state that loads the motor most', () => {
    expect(study.remedies.map(({ name }) => name)).toEqual([
      'suctionPressureLimit',
      'lowerCondensing',
      'smallerMachine',
      'intermittent',
    ]);
    const loads = study.marks.map(({ values }) => values.motorLoad.likely);
    expect(of('intermittent').before.motorLoad).toBeCloseTo(Math.max(...loads), 9);
  });

  test('a valve holds the suction pressure, unloads the motor and costs heat', () => {
    const { before, after, setting, cures } = of('suctionPressureLimit');
    expect(before.suctionPressure).toBeGreaterThan(setting.value);
    expect(after!.suctionPressure).toBeCloseTo(setting.value, 6);
    // Less heat through the same evaporator: it settles nearer to its source.
    expect(after!.evaporating).toBeGreaterThan(before.evaporating + 0.5);
    expect(after!.condensing).toBeLessThan(before.condensing - 0.1);
    expect(after!.motorLoad).toBeLessThan(before.motorLoad);
    expect(after!.heat).toBeLessThan(before.heat);
    expect(cures).toContain('suctionPressureHighest');
  });

  test('a lower condensing temperature costs less electricity for more heat', () => {
    const { before, after, setting } = of('lowerCondensing');
    const waterTemperature = 298.65;
    expect(after!.condensing).toBeLessThan(before.condensing);
    expect(setting.value).toBe(after!.condensing);
    // Twice the coil passes a little more heat with a little more than half the difference.
    const { heat } = before;
    const approach = before.condensing - waterTemperature;
    expect((after!.condensing - waterTemperature) / approach).toBeCloseTo((0.5 * after!.heat) / heat, 6);
    expect(after!.heat).toBeGreaterThan(before.heat);
    expect(after!.motorLoad).toBeLessThan(before.motorLoad);
  });

  test('resting changes nothing while it runs', () => {
    const { before, after } = of('intermittent');
    expect(after!.motorLoad).toBe(before.motorLoad);
    expect(after!.meanHeat).toBeCloseTo(after!.share * before.heat, 9);
  });

  test('a smaller machine gives a little more than its share of the heat, since the same exchangers pass it more easily', () => {
    const plate = changedDesign(reef, { 'machine.compressor.nameplate': { ratedCurrent: '1 A' } });
    const { before, after, setting, cures } = studyOf(plate).remedies.find(({ name }) => name === 'smallerMachine')!;
    expect(setting.value).toBeLessThan(1);
    expect(after!.evaporating).toBeGreaterThan(before.evaporating);
    expect(after!.condensing).toBeLessThan(before.condensing);
    expect(after!.heat / before.heat / setting.value).toBeGreaterThan(1);
    expect(after!.heat / before.heat / setting.value).toBeLessThan(1.3);
    // Its own plate would state less current: it is hardly less loaded for being smaller, only for the smaller lift.
    for (const share of [
      after!.motorLoad / before.motorLoad,
      after!.currentShare! / before.currentShare!,
      after!.current / before.current / setting.value,
    ]) {
      expect(share).toBeGreaterThan(0.85);
      expect(share).toBeLessThan(1.05);
    }
    expect(cures.filter((limit) => limit.startsWith('current'))).toEqual([]);
  });

  test('a valve that is there already is no remedy', () => {
    const withValve = changedDesign(text, { 'exchangers.suctionPressureLimit': '1.5 bar' });
    const { before } = studyOf(withValve).remedies[0]!;
    expect(before.suctionPressure).toBeLessThanOrEqual(1.5e5 + 1e-6);
  });
});

test('several machines as planned', () => {
  const { howMany } = studyOf(changedDesign(reef, { 'machine.count': '3' }));
  expect(howMany.planned).toBe(3);
  expect(howMany.chargeOfAll.likely).toBeCloseTo(3 * howMany.chargePerCircuit.likely, 12);
});

test('a valve before the machine spares its motor and leaves what the motor bears as it was', () => {
  const text = changedDesign(reef, { 'exchangers.suctionPressureLimit': '3 bar' });
  const assessed = assessDesign(text, 'metric');
  const settled = assessSettle(text, {});
  if (!assessed.ok || !settled.ok) throw new Error('no answer');
  const bound = (limits: readonly { readonly limit: string; readonly bound: number }[]) =>
    limits.find(({ limit }) => limit === 'motorLoadHighest')!.bound;
  expect(bound(settled.answer.limits)).toBeCloseTo(bound(assessed.assessment.operating.limits), 9);
});
