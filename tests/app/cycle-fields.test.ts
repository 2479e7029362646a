// The textbook cycle's fields: partners replace one another without changing the cycle, texts become a request of plain
// numbers, what cannot be is refused in the reader's units, and nothing kept by the browser can break the page.

import { describe, expect, test } from 'vitest';
import { cycleFacts, flowFields } from '../../src/app/papers/cycle-alone/cycle-fields.ts';
import {
  cycleRequest,
  givenByPartner,
  givenFields,
  keptText,
  partnersOf,
  readKept,
  readOne,
  startTexts,
  withChosen,
  withNumber,
} from '../../src/app/papers/cycle-alone/cycle-texts.ts';
import { exergySentence } from '../../src/app/papers/cycle-alone/exergy-lost.tsx';
import { replyToCycle } from '../../src/app/worker/cycle.ts';
import { formulaTexts } from '../../src/app/worker/formulas.ts';
import { type TextbookCycleRequest, textbookCycle } from '../../src/loop/index.ts';

const start = startTexts('metric');
const request = cycleRequest(start)!;
const cycle = textbookCycle(request);

function reply(change: Record<string, number | undefined>, view: 'metric' | 'us' = 'metric') {
  const asked = Object.fromEntries(
    Object.entries({ ...request, ...change }).filter(([, value]) => value !== undefined),
  );
  const form = { request: asked as unknown as TextbookCycleRequest, isotherms: [], isobars: [] };
  return replyToCycle({ id: 1, body: { kind: 'cycle', form, view } });
}

function refusal(change: Record<string, number | undefined>, view: 'metric' | 'us' = 'metric'): string {
  const answer = reply(change, view);
  return plain(answer.ok ? 'no refusal' : answer.problems.map(({ message }) => message).join(' '));
}

/** With common spaces in place of those that keep number and unit together. */
function plain(text: string): string {
  return text.replaceAll('\u00a0', ' ');
}

describe('partners', () => {
  test.each(cycleFacts.map(([first, second]) => [first.key, second!.key, first, second!] as const))(
    '%s or %s: the same cycle',
    (_first, second, field, partner) => {
      const texts = givenByPartner(start, [field, partner], cycle, 'metric');
      expect(texts.numbers[field.key]).toBeUndefined();
      expect(givenFields(texts).map(({ key }) => key)).toContain(second);
      const again = textbookCycle(cycleRequest(texts)!);
      expect(again.heatingCop / cycle.heatingCop).toBeCloseTo(1, 3);
    },
  );
});

describe('a heat exchanger', () => {
  const hot = withNumber(withNumber(start, 'superheat', ''), 'suctionTemperature', '8 °C');
  const exchanged = withChosen(hot, 'exchanger', 'heatExchangerEffectiveness', () => '60 %');

  test('takes the gas where it leaves the evaporator, and gives it back to the compressor when taken away', () => {
    expect(exchanged.numbers).toMatchObject({ evaporatorOutletTemperature: '8 °C' });
    expect(exchanged.numbers.suctionTemperature).toBeUndefined();
    expect(textbookCycle(cycleRequest(exchanged)!).heatExchanger?.effectiveness).toBe(0.6);
    const back = withChosen(exchanged, 'exchanger', '', () => '');
    expect(back.numbers).toEqual(hot.numbers);
  });

  test('begins dry where the gas was wet, and offers no wet gas', () => {
    const wet = withNumber(withNumber(start, 'superheat', ''), 'suctionQuality', '95 %');
    const dried = withChosen(wet, 'exchanger', 'heatExchangerEffectiveness', () => '60 %');
    expect(dried.numbers).toMatchObject({ superheat: '0 K' });
    const gas = givenFields(dried)[2]!;
    expect(partnersOf(gas, dried).map(({ key }) => key)).toEqual(['evaporatorOutletTemperature']);
  });
});

test.each(flowFields.map((field) => [field.key, field] as const))('a flow from %s begins as it can be read', (key) => {
  for (const view of ['metric', 'us'] as const) {
    const texts = withChosen(start, 'flow', key, (field) => field.start(view, cycle));
    expect(textbookCycle(cycleRequest(texts)!).perSecond?.given).toBe(key);
    const efficient = withNumber(texts, 'volumetricEfficiency', '80 %');
    expect(withChosen(efficient, 'flow', '', () => '').numbers.volumetricEfficiency).toBeUndefined();
  }
});

test('the first texts are round in either view and make a cycle', () => {
  for (const view of ['metric', 'us'] as const) {
    expect(textbookCycle(cycleRequest(startTexts(view))!).heatingCop).toBeGreaterThan(3);
  }
  expect(Object.values(startTexts('us').numbers).join()).not.toContain('°C');
});

test('one value each: a range is refused, not read as its middle', () => {
  expect(readOne('0 to 5 °C', 'temperature')).toMatchObject({ ok: false });
  expect(cycleRequest(withNumber(start, 'evaporating', '0 to 5 °C'))).toBeUndefined();
  // 14.6959 psi is one standard atmosphere: NIST Special Publication 811, appendix B.8.
  expect(readOne('15.3041 psig', 'pressure')).toMatchObject({ ok: true, value: expect.closeTo(206_843, -1) });
  expect(readOne('30 psia', 'pressure')).toMatchObject({ ok: true, value: expect.closeTo(206_843, 0) });
});

describe('refused in words of the view', () => {
  test('condensing above the critical point', () => {
    expect(refusal({ condensing: 400 })).toMatch(/critical point \(101\.1 °C, 40\.6 bar abs\)/);
    expect(refusal({ condensing: 400 }, 'us')).toMatch(/critical point \(21[34](\.\d)? °F, 589 psia\)/);
  });

  test('each impossible number names itself and what it takes, without kelvins or pascals', () => {
    const cases = [
      [{ condensing: 263.15 }, /condensing temperature cannot be −10 °C/],
      [{ superheat: undefined, suctionTemperature: 263.15 }, /suction temperature cannot be −10 °C/],
      [{ subcooling: undefined, liquidTemperature: 320 }, /liquid temperature cannot be 46\.85 °C/],
      [{ isentropicEfficiency: undefined, dischargeTemperature: 300 }, /discharge temperature cannot be 26\.85 °C/],
      [{ isentropicEfficiency: 1.2 }, /isentropic efficiency cannot be 120 %/],
      [{ evaporating: 100 }, /evaporating temperature/],
    ] as const;
    for (const [change, words] of cases) {
      const said = refusal(change);
      expect(said).toMatch(words);
      expect(said).not.toMatch(/\d K\b|\d Pa\b/);
      expect(refusal(change, 'us')).not.toMatch(/°C|bar|\d K\b/);
    }
  });
});

test('every step of the cycle has its formula', () => {
  const answer = reply({});
  if (!answer.ok || answer.kind !== 'cycle') throw new Error('no answer');
  const formulas = formulaTexts();
  expect(answer.answer.workings.length).toBeGreaterThan(12);
  for (const step of answer.answer.workings) expect(formulas[step.formula], step.formula).toBeDefined();
});

test('the basis of the losses is said in the view', () => {
  expect(plain(exergySentence(cycle, 'metric'))).toContain('25 °C');
  expect(plain(exergySentence(cycle, 'us'))).toContain('77 °F');
  const between = textbookCycle({ ...request, sinkTemperature: 308.15, sourceTemperature: 278.15 });
  expect(plain(exergySentence(between, 'us'))).toMatch(/95 °F.*41 °F.*of the work put in/);
});

test('another zero moves pictures and table together', () => {
  const answer = replyToCycle({
    id: 1,
    body: {
      kind: 'cycle',
      form: { request: { ...request, referenceState: 'ashrae' }, isotherms: [], isobars: [] },
      view: 'metric',
    },
  });
  if (!answer.ok || answer.kind !== 'cycle') throw new Error('no answer');
  const { diagram, cycle: moved } = answer.answer;
  expect(diagram.path[0]?.enthalpy).toBeCloseTo(moved.points[0].enthalpy, 3);
  // On every isentrope the states of the loop would have its own entropy: the vertical through state 1 in T-s.
  const dew = diagram.temperatureEntropy.lines.find((line) => line.kind === 'dew');
  const original = reply({});
  if (!original.ok || original.kind !== 'cycle') throw new Error('no answer');
  const before = original.answer.diagram.temperatureEntropy.lines.find((line) => line.kind === 'dew');
  const shift = moved.points[0].entropy - original.answer.cycle.points[0].entropy;
  expect((dew?.x[3] ?? 0) - (before?.x[3] ?? 0)).toBeCloseTo(shift, 6);
  const [one, other] = [diagram, original.answer.diagram].map(
    ({ pressureEnthalpy }) => pressureEnthalpy.lines.find((line) => line.kind === 'isentrope')?.value ?? 0,
  );
  expect((one ?? 0) - (other ?? 0)).toBeCloseTo(shift, 6);
});

test('what the browser kept is taken up again; rubbish is not', () => {
  const [temperature, pressure] = cycleFacts[1]!;
  const texts = givenByPartner(start, [temperature, pressure!], cycle, 'metric');
  const pair = { first: texts, second: start };
  expect(readKept(keptText(pair))).toEqual(pair);
  // As it was kept when there was one cycle only.
  expect(readKept(JSON.stringify(texts))).toEqual({ first: texts, second: undefined });
  const broken = { first: texts, second: { ...start, referenceState: 'none' } };
  expect(readKept(JSON.stringify(broken))).toEqual({ first: texts, second: undefined });
  for (const second of [null, 0, '', 'rubbish', [], {}]) {
    expect(readKept(JSON.stringify({ first: texts, second }))).toEqual({ first: texts, second: undefined });
  }
  const whole = JSON.parse(JSON.stringify(start));
  const rubbish = [
    undefined,
    '',
    '{',
    'null',
    '{"numbers":{}}',
    JSON.stringify({ ...whole, referenceState: 'none' }),
    JSON.stringify({ ...whole, numbers: { ...whole.numbers, condensing: 'warm' } }),
    JSON.stringify({ ...whole, numbers: { ...whole.numbers, condensingPressure: '10 bar' } }),
  ];
  for (const text of rubbish) expect(readKept(text), text).toBeUndefined();
});
