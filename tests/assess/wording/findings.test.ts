// Every code that a rule can speak has words, in both views, with all numbers put in.

import { describe, expect, it } from 'vitest';
import { findingSentence, hasFindingWords } from '../../../src/assess/wording/findings.ts';
import { cautionCodes, cautionRules } from '../../../src/cautions/index.ts';
import { InputError } from '../../../src/numerics/index.ts';
import { isQuantityName } from '../../../src/quantities/index.ts';
import { quiet, running } from '../../cautions/sample.ts';
import { speaking } from '../../cautions/speaking.ts';

describe.each(cautionCodes)('%s', (code) => {
  const finding = cautionRules[code](speaking[code])!;

  it.each(['metric', 'us'] as const)('has words in the %s view', (view) => {
    const { title, text } = findingSentence(finding, view);
    expect(title).toMatch(/^[A-Z].*[^.]$/);
    expect(text).toMatch(/^[A-Z0-9].*\.$/);
    expect(`${title} ${text}`).not.toMatch(/undefined|NaN|null|\b(?:safe|safely|approved|compliant)\b/i);
  });

  it('speaks of quantities that the table knows', () => {
    for (const fact of Object.values(finding.facts)) {
      if ('quantity' in fact) expect(isQuantityName(fact.quantity), fact.quantity).toBe(true);
    }
  });
});

describe('the words', () => {
  it('put the numbers in as the view says them', () => {
    const finding = cautionRules.frostOnEvaporator(running({ evaporatingTemperature: 263.15 }))!;
    expect(findingSentence(finding, 'metric').text).toContain('-10 °C'.replace('-', '−').replace(' ', '\u00a0'));
    expect(findingSentence(finding, 'us').text).toContain('14\u00a0°F');
  });

  it('differ for a cut-out with and without a surplus of heat', () => {
    const with150 = cautionRules.overTemperatureCutOutMissing({ ...quiet, overTemperatureCutOut: 'none' })!;
    const without = { ...with150, facts: {} };
    expect(findingSentence(with150, 'metric').text).toContain('Stuck on');
    expect(findingSentence(without, 'metric').text).not.toContain('Stuck on');
  });

  it('refuse a code without words, and a fact that is missing', () => {
    const finding = cautionRules.machineFailureCoolsTank(quiet)!;
    expect(hasFindingWords('somethingElse')).toBe(false);
    expect(() => findingSentence({ ...finding, code: 'somethingElse' }, 'metric')).toThrow(InputError);
    expect(() => findingSentence({ ...finding, facts: {} }, 'metric')).toThrow(/facts/);
  });
});
