// Every code that a rule can speak has words, in both views, with all numbers put in.

import { describe, expect, it } from 'vitest';
import { findingSentence, hasFindingWords } from '../../../src/assess/wording/findings.ts';
import { sayFinding } from '../../../src/assess/wording/say-finding.ts';
import { textInView } from '../../../src/assess/wording/text-in-view.ts';
import {
  type CautionCode,
  type CautionFacts,
  type CautionFluid,
  cautionCodes,
  cautionRules,
} from '../../../src/cautions/index.ts';
import { InputError } from '../../../src/numerics/index.ts';
import { isQuantityName } from '../../../src/quantities/index.ts';
import { ammonia, quiet, r290, running } from '../../cautions/sample.ts';
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
  // Molar masses: ammonia 17.03 g/mol, dry air 28.96 (ISO 2533), propane 44.10.
  it('never let ammonia lie on the floor: its vapour is lighter than air', () => {
    const circuit = {
      ...quiet,
      forFlammables: 'yes',
      charge: { low: 0.3, likely: 0.4, high: 0.5 },
      roomVolume: 8,
      floorArea: 3,
      otherRoomVolume: 8,
    } as const;
    const codes = [
      'flammableFluidInOtherRoom',
      'flammableChargeAboveFloorArea',
      'leakGathersInLowPlace',
      'lowPlaceUnknown',
    ] as const;
    const placeFor = (code: CautionCode): CautionFacts['sunkenPlace'] =>
      code === 'lowPlaceUnknown' ? { kind: 'unknown' } : { kind: 'pit', volume: 0.5 };
    const said = (fluid: CautionFluid, molarMass: number) =>
      codes.map((code) => {
        const finding = cautionRules[code]({ ...circuit, sunkenPlace: placeFor(code), fluid, molarMass })!;
        const { text, remedy, source } = sayFinding(finding, 'metric');
        return `${text} ${remedy} ${source}`;
      });
    for (const words of said(ammonia, 0.01703)) {
      expect(words).toMatch(/rises|lighter than air/);
      expect(words).not.toMatch(/is heavier than air|a heavy gas|near the floor/);
    }
    for (const words of said(r290, 0.0441)) {
      expect(words).toMatch(/heavier than air|a heavy gas|near the floor/);
      expect(words).not.toMatch(/rises|lighter than air/);
    }
  });

  it('put the numbers in as the view says them', () => {
    const finding = cautionRules.frostOnEvaporator(running({ evaporatingTemperature: 263.15 }))!;
    expect(findingSentence(finding, 'metric').text).toContain('-10 °C'.replace('-', '−').replace(' ', '\u00a0'));
    expect(findingSentence(finding, 'us').text).toContain('14\u00a0°F');
  });

  it('say both numbers where only the end of a range passes a limit, and no limit that looks kept', () => {
    const textAt = (low: number) => {
      const finding = cautionRules.pressureRatioTooLow(running({ ranges: { pressureRatio: { low, high: 2.6 } } }))!;
      return findingSentence(finding, 'metric').text;
    };
    expect(textAt(1.8)).toContain('a factor of 2.3, at the end of its range 1.8, in the coldest spell');
    expect(textAt(1.9999)).toContain('at the end of its range just past the limit');
    const frost = cautionRules.frostOnEvaporator(
      running({ ranges: { evaporatingTemperature: { low: 270.15, high: 290 } } }),
    )!;
    expect(findingSentence(frost, 'us')).toMatchObject({
      title: 'The evaporator may frost up',
      text: expect.stringMatching(/46\.4\s°F, at the end of its range 26\.6\s°F/),
    });
  });

  it('give remedy and source in the view too', () => {
    const cutOut = cautionRules.overTemperatureCutOutMissing({ ...quiet, overTemperatureCutOut: 'none' })!;
    expect(sayFinding(cutOut, 'metric').source).toContain('29 to 31 °C');
    expect(sayFinding(cutOut, 'us').source).toMatch(/84\s°F to 88\s°F/);
    expect(textInView('Some 50 to 100 W/K, within 0.5 K.', 'us')).toMatch(
      /^Some 95\sBTU\/\(h\s°F\) to 190\sBTU\/\(h\s°F\), within 0\.9\s°F\.$/,
    );
    expect(textInView('IEC 60335-2-40 and EN 378-2 of 2016', 'us')).toBe('IEC 60335-2-40 and EN 378-2 of 2016');
  });

  it('put the law of the region in general words', () => {
    const textFor = (region: CautionFacts['region']) =>
      findingSentence(cautionRules.openingNeedsLicence({ ...quiet, region })!, 'metric').text;
    expect(textFor('unitedStates')).toMatch(/^In the United States/);
    expect(textFor('europeanUnion')).toMatch(/^In the European Union/);
    expect(textFor('unknown')).toMatch(/^In most countries/);
    for (const region of ['europeanUnion', 'unitedKingdom', 'unitedStates', 'elsewhere', 'unknown'] as const) {
      expect(textFor(region)).toMatch(/Check locally/);
    }
  });

  it.each(cautionCodes)('%s in the US view has no metric number in any sentence', (code) => {
    const said = Object.values(sayFinding(cautionRules[code](speaking[code])!, 'us')).join(' ');
    expect(said).not.toMatch(/°C|\d\s?K\b|W\/K|kelvin|\d\s(?:bar|kPa|m³|m²|kg|g|L)\b/);
  });

  it.each(cautionCodes)('%s holds together where the charge is withheld', (code) => {
    const finding = cautionRules[code](speaking[code])!;
    const { chargeLow: _low, chargeHigh: _high, ...facts } = finding.facts;
    const { text } = findingSentence({ ...finding, facts }, 'metric');
    expect(text).toMatch(/^[A-Z0-9].*\.$/);
    expect(text).not.toMatch(/undefined/);
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
