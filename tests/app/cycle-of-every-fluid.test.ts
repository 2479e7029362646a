// The textbook cycle of the paper, of every refrigerant: where the temperatures of the start lie outside its dome it says so
// and offers others, which it then has; pictures and numbers are whole.

import { describe, expect, test } from 'vitest';
import {
  type CycleTexts,
  cycleRequest,
  isAsStarted,
  startTexts,
  withChosen,
  withLevels,
  withNumber,
} from '../../src/app/papers/cycle-alone/cycle-texts.ts';
import { sourceLines, transportTable } from '../../src/app/papers/cycle-alone/transport.tsx';
import { type CycleAnswer, replyToCycle } from '../../src/app/worker/cycle.ts';
import { isobarsFor, isothermsFor, stateTable } from '../../src/charts/index.ts';
import { refrigerant, refrigerantNames, transportMethods } from '../../src/matter/refrigerants/index.ts';
import type { UnitView } from '../../src/quantities/index.ts';

const views: readonly UnitView[] = ['metric', 'us'];

function replyTo(texts: CycleTexts, view: UnitView) {
  const form = { request: cycleRequest(texts)!, isotherms: isothermsFor(view), isobars: isobarsFor(view) };
  return replyToCycle({ id: 1, body: { kind: 'cycle', form, view } });
}

/** With the levels offered where those of the start are outside the dome. */
function answerTo(texts: CycleTexts, view: UnitView): CycleAnswer {
  const reply = replyTo(texts, view);
  if (reply.ok) return reply.answer as CycleAnswer;
  const { offer, message } = reply.problems[0]!;
  if (offer === undefined) throw new Error(message);
  const again = replyTo(withLevels(texts, offer), view);
  if (!again.ok) throw new Error(`${JSON.stringify(offer)}: ${again.problems[0]?.message}`);
  return again.answer as CycleAnswer;
}

function numbersIn(value: unknown): readonly number[] {
  if (typeof value === 'number') return [value];
  if (typeof value !== 'object' || value === null) return [];
  return Object.values(value).flatMap(numbersIn);
}

function startOn(refrigerant: string, view: UnitView): CycleTexts {
  return { ...startTexts(view), refrigerant };
}

describe.each(refrigerantNames)('%s', (name) => {
  test.each(views)('has a cycle and pictures without a hole, in %s units', (view) => {
    const answer = answerTo(startOn(name, view), view);
    expect(answer.cycle.refrigerant).toBe(name);
    expect(answer.cycle.heatingCop).toBeGreaterThan(1);
    const numbers = numbersIn(answer);
    expect(numbers.length).toBeGreaterThan(500);
    expect(numbers.filter((number) => !Number.isFinite(number))).toEqual([]);
    const { pressureEnthalpy, temperatureEntropy } = answer.diagram;
    for (const { lines } of [pressureEnthalpy, temperatureEntropy]) expect(lines.length).toBeGreaterThan(10);
    const table = stateTable(answer.cycle.points, view, answer.diagram.referenceState, answer.name);
    expect(table.rows.flat().join(' ')).not.toMatch(/NaN|undefined|Infinity/);
  });

  test('viscosity and conductivity of every state of one phase, estimates called so', () => {
    const { transport, cycle } = answerTo(startOn(name, 'metric'), 'metric');
    const methods = transportMethods(refrigerant(name));
    for (const { name: point, viscosity, conductivity } of transport.points) {
      const { quality } = cycle.points.find((each) => each.name === point)!;
      const isMixture = quality !== null && quality > 0 && quality < 1;
      expect([viscosity === null, conductivity === null], point).toEqual([isMixture, isMixture]);
    }
    for (const view of views) {
      const table = transportTable(transport, view);
      expect(table.rows.flat().join(' ')).not.toMatch(/NaN|undefined|Infinity/);
      expect(table.columns.map(({ label }) => /estimate/.test(label))).toEqual([
        false,
        methods.viscosity.isEstimate,
        methods.conductivity.isEstimate,
      ]);
    }
    for (const line of sourceLines(transport)) expect(line).toMatch(/^[VT].*: .*\d{4}.*\.$/);
  });
});

describe('outside the dome', () => {
  test('carbon dioxide does not condense at 40 °C: it says so and offers what it does', () => {
    for (const [view, critical, offer] of [
      ['metric', '31', { condensing: '25 °C' }],
      ['us', '87.8', { condensing: '75 °F' }],
    ] as const) {
      const reply = replyTo(startOn('R744', view), view);
      const problem = reply.ok ? undefined : reply.problems[0];
      expect(problem?.code).toBe('condensingAboveCritical');
      expect(problem?.message).toContain(critical);
      expect(problem?.offer).toEqual(offer);
    }
  });

  test('water neither boils nor condenses below its triple point', () => {
    const reply = replyTo(startOn('R718', 'metric'), 'metric');
    const problem = reply.ok ? undefined : reply.problems[0];
    expect(problem?.message.replaceAll('\u00a0', ' ')).toMatch(/^R718 boils and condenses between 0.01 °C and 373.9/);
    expect(problem?.offer).toEqual({ evaporating: '5 °C' });
  });

  test('a level that leaves no lift under the critical point is offered lower', () => {
    const high = withNumber(startOn('R744', 'metric'), 'evaporating', '20 °C');
    const reply = replyTo(high, 'metric');
    expect(reply.ok ? undefined : reply.problems[0]?.offer).toEqual({ evaporating: '15 °C', condensing: '25 °C' });
    expect(answerTo(high, 'metric').cycle.heatingCop).toBeGreaterThan(1);
  });

  test('both pressures may be replaced, or the one that is outside', () => {
    const { evaporating: _, condensing: __, ...rest } = startTexts('metric').numbers;
    const pressed: CycleTexts = {
      ...startOn('R744', 'metric'),
      numbers: { ...rest, evaporatingPressure: '2 bar', condensingPressure: '90 bar' },
    };
    expect(answerTo(pressed, 'metric').cycle.condensing.pressure).toBeLessThan(73.8e5);
    const half = withNumber(pressed, 'evaporatingPressure', '30 bar');
    const reply = replyTo(half, 'metric');
    expect(reply.ok ? undefined : reply.problems[0]?.offer).toEqual({ condensing: '25 °C' });
    expect(answerTo(half, 'metric').cycle.evaporating.pressure).toBeCloseTo(30e5, 0);
  });

  test('no levels are offered where others would not help', () => {
    const hot = withNumber(startOn('R134a', 'metric'), 'evaporating', '50 °C');
    const reply = replyTo(hot, 'metric');
    expect(reply.ok ? undefined : reply.problems[0]).toMatchObject({ code: 'condensingBelowEvaporating' });
    expect(reply.ok || 'offer' in reply.problems[0]!).toBe(false);
  });

  // Water freezes at 0 °C, and carbon dioxide has no liquid below 5.18 bar: neither has one where these zeros are.
  test.each([
    ['R718', 'ashrae', '5 °C', '40 °C'],
    ['R744', 'normalBoilingPoint', '-10 °C', '20 °C'],
  ] as const)(
    '%s has no liquid at the zero chosen, and that is what is named',
    (name, zero, evaporating, condensing) => {
      const texts = withLevels(startOn(name, 'metric'), { evaporating, condensing });
      const reply = replyTo({ ...texts, referenceState: zero }, 'metric');
      expect(reply.ok ? [] : reply.problems.map(({ message }) => message)).toEqual([
        expect.stringMatching(new RegExp(`^${name} has no boiling liquid to count from .* Choose another zero`)),
      ]);
      expect(replyTo(texts, 'metric').ok).toBe(true);
    },
  );

  test('an unknown refrigerant is refused by name, without an offer', () => {
    const reply = replyTo(startOn('R999', 'metric'), 'metric');
    expect(reply.ok ? undefined : reply.problems[0]?.code).toBe('unknownRefrigerant');
    expect(reply.ok || 'offer' in reply.problems[0]!).toBe(false);
  });
});

test('fields are as started until a number changes, whatever the fluid', () => {
  const start = startOn('R744', 'metric');
  expect(isAsStarted(start, 'metric')).toBe(true);
  expect(isAsStarted(start, 'us')).toBe(false);
  expect(isAsStarted(withNumber(start, 'superheat', '6 K'), 'metric')).toBe(false);
  expect(isAsStarted(withLevels(start, { evaporating: '0 °C', condensing: '25 °C' }), 'metric')).toBe(false);
  expect(
    isAsStarted(
      withChosen(start, 'flow', 'massFlow', () => '5 g/s'),
      'metric',
    ),
  ).toBe(false);
});
