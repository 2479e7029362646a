// Words in running text: numbers of the engine's messages in the reader's units, labels of inputs in the middle of a sentence,
// advice that can follow "to know better", and the sentence of every standing.

import { describe, expect, test } from 'vitest';
import type { LoopAgainst } from '../../../src/assess/index.ts';
import { inputPhrase } from '../../../src/assess/wording/labels.ts';
import { howToMeasure } from '../../../src/assess/wording/measure.ts';
import { messageInView } from '../../../src/assess/wording/si-text.ts';
import { verdictSentence } from '../../../src/assess/wording/verdict.ts';
import { fieldRecords } from '../../../src/design/index.ts';

const plain = (text: string) => text.replaceAll(/[\u00a0\u202f]/g, ' ');

describe('numbers of a message', () => {
  test.each([
    [
      'condensing temperature 400 K is outside 169.85 to 374.21 K',
      'metric',
      'condensing temperature 126.9 °C is outside −103.3 °C to 101.1 °C',
    ],
    [
      'condensing temperature 400 K is outside 169.85 to 374.21 K',
      'us',
      'condensing temperature 260.3 °F is outside −153.9 °F to 213.9 °F',
    ],
    [
      'temperature 20 K is outside 169.85 to 374.21 K',
      'metric',
      'temperature −253.1 °C is outside −103.3 °C to 101.1 °C',
    ],
    // A value just beyond a limit does not read like the limit.
    [
      'temperature 304.15 K is outside 216.592 to 304.1282 K',
      'metric',
      'temperature 31 °C is outside −56.56 °C to 30.98 °C',
    ],
    ['temperature 273.15 K is outside 273.16 to 647.096 K', 'us', 'temperature 32 °F is outside 32.02 °F to 705.1 °F'],
    [
      'pressure 7.00000001e7 Pa is outside 1e-30 to 7e7 Pa',
      'metric',
      'pressure 700.000001 bar abs is outside 1e-35 bar abs to 700 bar abs',
    ],
    ['Loop water that changes by 4 K does not fit.', 'us', 'Loop water that changes by 7.2 °F does not fit.'],
    ['pressure 1e9 Pa is outside 0 to 7e7 Pa', 'metric', 'pressure 10 000 bar abs is outside 0 bar abs to 700 bar abs'],
    ['enthalpy 629300 J/kg is too high', 'us', 'enthalpy 270.6 BTU/lb is too high'],
    [
      'overall efficiency 0.6 to 1.2, highest at 238.15 K evaporating and 333.15 K condensing',
      'metric',
      'overall efficiency 0.6 to 1.2, highest at −35 °C evaporating and 60 °C condensing',
    ],
    ['At a pressure ratio of 4.944 nothing flows.', 'us', 'At a pressure ratio of 4.944 nothing flows.'],
  ] as const)('%s (%s)', (message, view, expected) => {
    expect(plain(messageInView(message, view))).toBe(expected);
  });
});

describe('inputs in a sentence', () => {
  const uncertain = fieldRecords.filter(({ quantity }) => quantity !== undefined);

  test.each(uncertain.map(({ path, label }) => [path, label]))('%s', (path, label) => {
    const phrase = inputPhrase(path, label);
    // "What would settle most is …": a noun or a clause, small, no question, no full stop.
    expect(phrase).toMatch(/^(the|how|what|for how) /);
    expect(phrase).not.toMatch(/[?.…]$/);
    expect(phrase).not.toMatch(/^the [A-Z](?!OP )/);
    // "To know better, …": an imperative.
    expect(howToMeasure(path)).toMatch(
      /^(put|let|note|check|mark|read|leave|look|compare|take|reckon|replace|ask|measure) /,
    );
    expect(howToMeasure(path)).not.toMatch(/\.$/);
  });

  test('acronyms and fluids keep their capitals', () => {
    expect(inputPhrase('x', 'COP of the certified heat pump')).toBe('the COP of the certified heat pump');
    expect(inputPhrase('x', 'R134a in the circuit')).toBe('the R134a in the circuit');
    expect(inputPhrase('x', 'Power of the fan')).toBe('the power of the fan');
  });
});

describe('the sentence', () => {
  const band = (low: number, likely: number, high: number) => ({ low, likely, high });
  const limit = {
    limit: 'evaporatingHighest',
    label: 'highest evaporating temperature',
    quantity: 'temperature' as const,
    value: 280,
    bound: 288.15,
    margin: 8.15,
    passed: false,
  };
  const facts = {
    tankLoad: band(190, 220, 260),
    heatDelivered: band(300, 340, 400),
    findings: [],
    limits: [limit],
    count: 1,
    influences: [],
    loopAgainst: [],
    currency: 'EUR',
  };

  test('of several machines says how many', () => {
    expect(plain(verdictSentence({ ...facts, count: 3, standing: 'carriesLoad' }, 'metric'))).toMatch(
      /^In the coldest spell the tank needs about 220 W \(190 to 260\) and 3 of these machines together bring about 340 W/,
    );
  });

  test('of a limit of current says it in amperes', () => {
    const current = { limit: 'currentContinuous', label: 'current it bears for long', quantity: 'current' as const };
    const limits = [{ ...current, value: 1.1, bound: 1.4, margin: 0.3, passed: false }];
    expect(plain(verdictSentence({ ...facts, limits, standing: 'carriesLoad' }, 'metric'))).toMatch(
      /the current it bears for long of 1\.4 A that is usual for such a machine: 0\.3 A are left\.$/,
    );
  });

  test('of a loop that carries the load says how near the first limit is', () => {
    expect(plain(verdictSentence({ ...facts, standing: 'carriesLoad' }, 'metric'))).toBe(
      'In the coldest spell the tank needs about 220 W (190 to 260) and this machine brings about 340 W (300 to 400). The limit it comes nearest to is the highest evaporating temperature of 15 °C that is usual for such a machine: 8.2 K are left.',
    );
  });

  test('says plainly that a limit is passed', () => {
    const limits = [{ ...limit, bound: 278.15, margin: -1.85, passed: true }];
    expect(plain(verdictSentence({ ...facts, standing: 'carriesLoad', limits }, 'us'))).toMatch(
      /It has passed a limit, though: the highest evaporating temperature of 41 °F that is usual for such a machine, by 3\.3 °F\.$/,
    );
  });

  test('of a loop that falls short says by how much at least', () => {
    const short = { ...facts, standing: 'fallsShort', heatDelivered: band(80, 100, 120) } as const;
    expect(plain(verdictSentence(short, 'metric'))).toMatch(/short by at least about 70 W\.$/);
  });

  test('of a doubtful loop names what would settle it', () => {
    const influence = {
      path: 'machine.compressor.displacement',
      label: 'Volume swept per revolution',
      marginAtLow: -50,
      marginAtHigh: 90,
      share: 0.8,
      measure: 'read the rating plate',
    };
    const sentence = verdictSentence({ ...facts, standing: 'uncertain', influences: [influence] }, 'metric');
    expect(sentence).toMatch(
      /What would settle most is the volume the compressor sweeps per revolution: read the rating plate\.$/,
    );
  });

  test('of a loop that is not worth it says whether the difference is beyond its own range', () => {
    const against = (low: number, likely: number, high: number): LoopAgainst => ({
      against: 'plainHeater',
      label: 'a plain heater',
      isCheapest: true,
      lifeCost: { low, likely, high, unit: '1', result: 'accounts.against.plainHeater.lifeCost' },
      ifBuilt: Math.max(0, high),
      ifNotBuilt: Math.max(0, -low),
      houseHeatPrice: { loopCostsLess: 'never', at: null },
      seasonCop: null,
    });
    const sentence = (...ends: [number, number, number]) =>
      plain(verdictSentence({ ...facts, standing: 'notWorthIt', loopAgainst: [against(...ends)] }, 'metric'));
    expect(sentence(20, 80, 140)).toMatch(
      /But over its life it costs about 80 EUR \(20 to 140\) a year more than a plain heater, tank and room counted together\. That holds at both ends of the range\.$/,
    );
    expect(sentence(-30, 80, 190)).toMatch(
      /But over its life it would likely cost about 80 EUR a year more than a plain heater, tank and room counted together\. The range of that difference does not settle it: from 30 EUR less to 190 EUR more\.$/,
    );
  });

  test('counts the reasons to stop', () => {
    const stop = (code: string) =>
      ({
        code,
        severity: 'stop',
        subject: 'person',
        facts: { madeFor: { word: 'R134a' }, fluid: { word: 'R290' }, safetyClass: { word: 'A3' } },
        source: '',
        remedy: '',
        needsLicensedPerson: true,
      }) as const;
    const two = [stop('notForThisMachine'), stop('flammableFluidInUnsuitableEquipment')];
    expect(verdictSentence({ ...facts, standing: 'doNotBuild', findings: two }, 'metric')).toMatch(
      /^Not for this machine, and there is one more reason to stop\. For study only: in the coldest spell/,
    );
  });
});
