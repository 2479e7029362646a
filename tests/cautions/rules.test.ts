// Each rule once speaking and once silent, near its border where it has one.
// Limits of flammability: EN 378-1:2016+A1:2020 Annex E. Machine limits and livestock temperatures are typical guides,
// from memory: the tests hold the rule to the figure, not the figure to the truth.

import { describe, expect, it } from 'vitest';
import {
  type CautionFacts,
  cautionCodes,
  cautionFluid,
  cautionRules,
  findCautions,
  isFlammable,
  leakConcentration,
  leakLimit,
  type OperatingFacts,
} from '../../src/cautions/index.ts';
import { catalogueEntry } from '../../src/matter/refrigerants/index.ts';
import { InputError } from '../../src/numerics/index.ts';
import type { Severity } from '../../src/quantities/index.ts';
import { quiet, r12, r134a, r290, r600a, running, state } from './sample.ts';
import { cases, enclosed, flammable } from './speaking.ts';

describe.each(cautionCodes)('%s', (code) => {
  const { speaks, severity, silent } = cases[code];

  it('speaks', () => {
    const finding = cautionRules[code](speaks);
    expect(finding?.code).toBe(code);
    expect(finding?.severity).toBe(severity);
    expect(finding?.source.length).toBeGreaterThan(5);
    expect(finding?.remedy).toMatch(/\.$/);
    expect(findCautions(speaks).map((each) => each.code)).toContain(code);
  });

  it('is silent', () => {
    expect(cautionRules[code](silent)).toBeUndefined();
    expect(findCautions(silent).map((each) => each.code)).not.toContain(code);
  });
});

describe('all rules together', () => {
  it('say only what always holds of a quiet design', () => {
    expect(findCautions(quiet).map((each) => each.code)).toEqual(['openingNeedsLicence', 'machineFailureCoolsTank']);
  });

  it('come worst first', () => {
    const severities = findCautions({ ...quiet, madeFor: r12, wettedMetal: 'unknown' }).map((each) => each.severity);
    expect(severities).toEqual([...severities].sort((left, right) => rank(left) - rank(right)));
    expect(severities[0]).toBe('stop');
  });

  it('look at every state and speak of the worst', () => {
    const facts = {
      ...quiet,
      operating: [state, { ...state, when: 'warmestMonth' as const, evaporatingTemperature: 290 }],
    };
    const finding = findCautions(facts).find((each) => each.code === 'evaporatingAboveApplication');
    expect(finding?.facts.when).toEqual({ word: 'warmestMonth' });
    expect(finding?.facts.evaporatingTemperature).toEqual({ value: 290, quantity: 'temperature' });
  });

  it('stop a motor that takes much more than at its hardest allowed point, and only where it evaporates too warm', () => {
    const codesOf = (states: readonly OperatingFacts[], allowed: number | null = quiet.hardestAllowedPower) =>
      findCautions({ ...quiet, hardestAllowedPower: allowed, operating: states }).map((each) => each.code);
    const warm = { ...state, when: 'warmestMonth' as const, evaporatingTemperature: 290 };
    expect(codesOf([state, { ...warm, compressorPower: 150 }])).toContain('motorOverloaded');
    expect(codesOf([state, { ...warm, compressorPower: 150 }])).not.toContain('evaporatingAboveApplication');
    expect(codesOf([state, warm])).toContain('evaporatingAboveApplication');
    expect(codesOf([state, warm])).not.toContain('motorOverloaded');
    expect(codesOf([{ ...state, compressorPower: 150 }])).not.toContain('motorOverloaded');
    expect(codesOf([{ ...warm, compressorPower: 150 }], null)).toContain('evaporatingAboveApplication');
  });

  it('take the upper end of the charge', () => {
    const facts = { ...enclosed(0.001, 0.3), charge: { low: 0.001, likely: 0.002, high: 0.05 } };
    expect(findCautions(facts).map((each) => each.code)).toContain('leakFlammableInEnclosure');
  });

  it('say how fast a stuck relay warms the tank, and leave it out where it could not', () => {
    const cutOut = (facts: CautionFacts) => cautionRules.overTemperatureCutOutMissing(facts)?.facts.timePerKelvin;
    expect(cutOut({ ...quiet, overTemperatureCutOut: 'none' })).toEqual({ value: 1.2e6 / 150, quantity: 'duration' });
    expect(cutOut({ ...running({ heatDelivered: 200 }), overTemperatureCutOut: 'none' })).toBeUndefined();
  });

  it('never judge by NaN, by no state, or by a flammable fluid without a limit', () => {
    expect(() => findCautions(running({ dischargeTemperature: Number.NaN }))).toThrow(
      /operating\.0\.dischargeTemperature/,
    );
    expect(() => findCautions({ ...quiet, operating: [] })).toThrow(InputError);
    expect(() => findCautions({ ...flammable, fluid: { ...r290, lowerFlammabilityLimit: null } })).toThrow(/R290/);
    expect(() => findCautions({ ...quiet, enclosure: { kind: 'hood', volume: 0 } })).toThrow(/enclosure\.volume/);
  });
});

describe('leak figures', () => {
  it('take the smaller of practical limit and a fifth of the flammability limit (EN 378-1:2016)', () => {
    expect(leakLimit(r290)).toBeCloseTo(0.0076, 12);
    expect(leakLimit(r600a)).toBeCloseTo(0.0076, 12);
    expect(leakLimit(r134a)).toBe(0.25);
    expect(leakLimit({ ...r134a, practicalLimit: null })).toBeNull();
  });

  it('are charge over volume', () => {
    expect(leakConcentration(0.0114, 0.3)).toBeCloseTo(0.038, 12);
  });
});

function rank(severity: Severity): number {
  return ['stop', 'look', 'note'].indexOf(severity);
}

describe('facts out of the catalogue', () => {
  it('say of a practical limit from memory that it is', () => {
    const sourceFor = (name: string) =>
      cautionRules.leakAbovePracticalLimitInRoom({
        ...quiet,
        fluid: cautionFluid(catalogueEntry(name)),
        roomVolume: 0.01,
      })?.source;
    for (const name of ['R12', 'R22']) expect(sourceFor(name)).toMatch(/EN 378-1.*from memory/);
    expect(sourceFor('R134a')).toMatch(/EN 378-1/);
    expect(sourceFor('R134a')).not.toMatch(/memory/);
  });

  it('carry every figure the rules read', () => {
    for (const name of ['R134a', 'R600a', 'R290', 'R12', 'R22']) {
      const fluid = cautionFluid(catalogueEntry(name));
      expect(fluid.name).toBe(name);
      expect(isFlammable(fluid)).toBe(fluid.lowerFlammabilityLimit !== null);
    }
    expect(cautionFluid(catalogueEntry('R600a')).lowerFlammabilityLimit).toBe(0.038);
    expect(cautionRules.ozoneDepletingFluid({ ...quiet, fluid: cautionFluid(catalogueEntry('R22')) })).toBeDefined();
    expect(
      cautionRules.ozoneDepletingFluid({ ...quiet, fluid: { ...r12, ozoneDepletionPotential: null } }),
    ).toBeUndefined();
  });
});
