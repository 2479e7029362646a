// Each rule once speaking and once silent, near its border where it has one.
// Limits of flammability: EN 378-1:2016+A1:2020 Annex E. Machine limits and livestock temperatures are typical guides,
// from memory: the tests hold the rule to the figure, not the figure to the truth.

import { describe, expect, it } from 'vitest';
import {
  type CautionCode,
  type CautionFacts,
  cautionCodes,
  cautionFluid,
  cautionRules,
  chargeComparisons,
  findCautions,
  isFlammable,
  leakConcentration,
  leakLimit,
  leakSpaces,
  type OperatingFacts,
} from '../../src/cautions/index.ts';
import { catalogueEntry, refrigerantNames } from '../../src/matter/refrigerants/index.ts';
import { InputError } from '../../src/numerics/index.ts';
import type { Severity } from '../../src/quantities/index.ts';
import { propylene, quiet, r12, r134a, r290, r600a, running, state } from './sample.ts';
import { cases, enclosed, flammable, inRoom } from './speaking.ts';

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
    expect(findCautions(quiet).map((each) => each.code)).toEqual([
      'openingNeedsLicence',
      'oilTakesUpWater',
      'machineFailureCoolsTank',
    ]);
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
    expect(cutOut({ ...quiet, overTemperatureCutOut: 'none' })).toEqual({ value: 8000, quantity: 'duration' });
    expect(cutOut({ ...quiet, stuckOn: null, overTemperatureCutOut: 'none' })).toBeUndefined();
  });

  it('never judge by NaN, by no state, or by a flammable fluid without a limit', () => {
    expect(() => findCautions(running({ dischargeTemperature: Number.NaN }))).toThrow(
      /operating\.0\.dischargeTemperature/,
    );
    expect(() => findCautions({ ...quiet, operating: [] })).toThrow(InputError);
    expect(() => findCautions({ ...flammable, fluid: { ...r290, lowerFlammabilityLimit: null } })).toThrow(/R290/);
    expect(() => findCautions({ ...quiet, enclosure: { kind: 'hood', volume: 0 } })).toThrow(/enclosure\.volume/);
    expect(() => findCautions({ ...quiet, sunkenPlace: { kind: 'pit', volume: Number.NaN } })).toThrow(/sunkenPlace/);
    const ranges = { dischargeTemperature: { low: 320, high: Number.NaN } };
    expect(() => findCautions(running({ ranges }))).toThrow(/ranges\.dischargeTemperature\.high/);
    expect(() => findCautions({ ...quiet, ratedMassFlow: Number.NaN })).toThrow(/ratedMassFlow/);
  });
});

describe('a limit that only the end of a range passes', () => {
  // The likely value keeps each limit by a little, the end of the range passes it.
  const ends: readonly [CautionCode, Partial<OperatingFacts>, number][] = [
    ['evaporatingAboveApplication', { ranges: { evaporatingTemperature: { low: 270, high: 288.2 } } }, 288.2],
    ['evaporatingBelowApplication', { ranges: { evaporatingTemperature: { low: 258.1, high: 284 } } }, 258.1],
    ['dischargeNearHighest', { ranges: { dischargeTemperature: { low: 320, high: 394 } } }, 394],
    ['condensingAboveContinuous', { ranges: { condensingTemperature: { low: 300, high: 339 } } }, 339],
    ['pressureRatioTooLow', { ranges: { pressureRatio: { low: 1.9, high: 2.6 } } }, 1.9],
    ['pressureRatioAboveHighest', { ranges: { pressureRatio: { low: 2, high: 12.5 } } }, 12.5],
    ['suctionBelowAtmosphere', { ranges: { evaporatingPressure: { low: 1e5, high: 5e5 } } }, 1e5],
    ['frostOnEvaporator', { ranges: { evaporatingTemperature: { low: 272, high: 284 } } }, 272],
    ['highSideAboveUsualRating', { ranges: { condensingPressure: { low: 8e5, high: 15e5 } } }, 15e5],
  ];
  it.each(ends)('%s is a look that carries both numbers', (code, change, end) => {
    const finding = cautionRules[code](running(change));
    expect(finding?.severity).toBe('look');
    expect(finding?.facts.endOfRange).toMatchObject({ value: end });
    expect(cautionRules[code](running({}))).toBeUndefined();
  });

  it('is not told where the likely value passes it too', () => {
    const facts = running({
      evaporatingTemperature: 272.9,
      ranges: { evaporatingTemperature: { low: 270, high: 276 } },
    });
    expect(cautionRules.frostOnEvaporator(facts)?.facts.endOfRange).toBeUndefined();
  });

  it('does not make a stop: condensing above the peak only at the end of its range stays a look', () => {
    const facts = running({ ranges: { condensingTemperature: { low: 300, high: 360 } } });
    expect(findCautions(facts).filter(({ severity }) => severity === 'stop')).toEqual([]);
  });
});

describe('what is not sure', () => {
  /** Stops on figures from memory, each with a margin beyond what is said to be bearable (docs/theory/cautions.md). */
  const withMargin: readonly CautionCode[] = ['condensingAbovePeak', 'motorOverloaded', 'motorWouldTrip'];

  it.each(cautionCodes)('%s says how sure it is, and does not stop on memory or practice', (code) => {
    const finding = cautionRules[code](cases[code].speaks)!;
    const isSure = ['confirmed', 'physics', 'stated'].includes(finding.certainty);
    if (finding.severity === 'stop' && !withMargin.includes(code)) expect(isSure).toBe(true);
    if (withMargin.includes(code)) expect(finding.certainty).toBe('memory');
    if (/common practice|own judgement/.test(finding.source)) expect(finding.certainty).not.toBe('confirmed');
  });

  it('clears nothing: silence of every rule leaves what always holds, and no finding says that a limit is kept', () => {
    for (const code of cautionCodes) {
      for (const { remedy, source } of findCautions(cases[code].silent)) {
        expect(`${remedy} ${source}`).not.toMatch(
          /\b(?:no danger|harmless|allowed|permitted|within limits|may be built)\b/i,
        );
      }
    }
  });

  it('is as sure of a practical limit as its source', () => {
    const certaintyOf = (name: string) =>
      cautionRules.leakAbovePracticalLimitInRoom({
        ...quiet,
        fluid: cautionFluid(catalogueEntry(name)),
        roomVolume: 0.01,
      })?.certainty;
    expect(certaintyOf('R12')).toBe('memory');
    expect(certaintyOf('R134a')).toBe('confirmed');
  });
});

describe('each enclosed space by itself', () => {
  const named = (facts: CautionFacts) => Object.fromEntries(leakSpaces(facts).map((each) => [each.space, each]));

  it('takes the whole charge, upper end, in each', () => {
    const facts: CautionFacts = {
      ...enclosed(0.06, 0.3),
      sunkenPlace: { kind: 'pit', volume: 2 },
      otherRoomVolume: 6,
      airPumpIntake: 'besideMachine',
    };
    const spaces = named(facts);
    expect(spaces.closedCabinet).toMatchObject({ concentration: 0.2, state: 'flammable' });
    expect(spaces.lowPlace).toMatchObject({ concentration: 0.03, state: 'aboveLimit' });
    expect(spaces.otherRoom).toMatchObject({ concentration: 0.01, state: 'aboveLimit' });
    expect(spaces.tankRoom).toMatchObject({ concentration: 0.0015, state: 'belowLimit' });
    expect(spaces.airPumpIntake).toMatchObject({ concentration: 0.2, volume: null, state: 'flammable' });
  });

  it('says unknown, never below, of a space nobody has described', () => {
    const spaces = named({ ...quiet, sunkenPlace: { kind: 'unknown' }, airPumpIntake: 'unknown' });
    expect(spaces.lowPlace).toMatchObject({ concentration: null, state: 'unknown' });
    expect(spaces.airPumpIntake).toMatchObject({ concentration: null, state: 'unknown' });
  });

  it('knows no state below a limit for a fluid without one', () => {
    const fluid = { ...r134a, practicalLimit: null, toxicityLimit: null };
    expect(leakSpaces({ ...quiet, fluid }).map(({ state }) => state)).toEqual(['noLimit']);
  });

  it('is judged in the smaller of the two rooms', () => {
    const finding = cautionRules.leakNearFlammableInRoom({ ...inRoom(0.15, 40), otherRoomVolume: 10 });
    expect(finding?.facts.room).toEqual({ word: 'otherRoom' });
    expect(finding?.facts.concentration).toMatchObject({ value: 0.015 });
  });
});

describe('the charge beside figures of standards', () => {
  const of = (facts: CautionFacts) => Object.fromEntries(chargeComparisons(facts).map((each) => [each.name, each]));

  it('is below, above or between', () => {
    const figures = of({ ...inRoom(0.4, 40), floorArea: 10 });
    expect(figures.householdAppliance).toMatchObject({ limit: 0.15, charge: 'above' });
    expect(figures.heatPumpFloorArea?.limit).toBeCloseTo(0.0796, 4);
    expect(figures.roomConcentration?.limit).toBeCloseTo(0.304, 3);
    expect(figures.roomConcentration?.charge).toBe('between');
    // 13 m³ at 0.038 kg/m³, from memory of IEC 60335-2-89.
    expect(figures.commercialCabinet?.limit).toBeCloseTo(0.494, 3);
    expect(figures.commercialCabinet?.charge).toBe('below');
    expect(figures.heatPumpLarge?.limit).toBeCloseTo(0.988, 3);
  });

  it('of a fluid that does not burn is held against what can be breathed alone', () => {
    // ATEL/ODL of R134a, 0.21 kg/m³, below its practical limit: 8.4 kg in 40 m³.
    expect(chargeComparisons(quiet).map(({ name, limit }) => [name, limit])).toEqual([
      ['roomConcentration', expect.closeTo(8.4, 9)],
    ]);
  });
});

describe('where refrigerant gathers', () => {
  it('looks at a compressor outdoors, and at one in a cold place beside the evaporator', () => {
    expect(cautionRules.migrationToCompressor({ ...quiet, shellSurroundings: null })).toBeDefined();
    const cellar = { ...running({ sourceTemperature: 278.15 }), otherRoomVolume: 30, shellSurroundings: 278.15 };
    expect(cautionRules.migrationToCompressor(cellar)).toBeDefined();
    expect(cautionRules.migrationToCompressor({ ...cellar, shellSurroundings: 291.15 })).toBeUndefined();
  });
});

describe('leak figures', () => {
  it('take the smallest of practical limit, limit for breathing and a fifth of the flammability limit (EN 378-1:2016)', () => {
    expect(leakLimit(r290)).toBeCloseTo(0.0076, 12);
    expect(leakLimit(r600a)).toBeCloseTo(0.0076, 12);
    expect(leakLimit(r134a)).toBe(0.21);
    expect(leakLimit({ ...r134a, toxicityLimit: null })).toBe(0.25);
    expect(leakLimit(propylene)).toBe(0.0017);
    expect(leakLimit({ ...r134a, practicalLimit: null, toxicityLimit: null })).toBeNull();
  });

  it('are charge over volume', () => {
    expect(leakConcentration(0.0114, 0.3)).toBeCloseTo(0.038, 12);
  });
});

function rank(severity: Severity): number {
  return ['stop', 'look', 'note'].indexOf(severity);
}

describe('facts out of the catalogue', () => {
  const codesOf = (name: string, change: Partial<CautionFacts> = {}) => {
    const fluid = cautionFluid(catalogueEntry(name));
    return findCautions({ ...quiet, ...change, fluid, madeFor: fluid, forFlammables: 'yes' }).map(({ code }) => code);
  };

  it('stop every fluid of which class or limits were not read, and no other', () => {
    const stopped = refrigerantNames.filter((name) => codesOf(name).includes('fluidForStudyOnly'));
    expect(stopped).toEqual(['R245fa', 'R142b', 'R227ea', 'R236fa', 'R718']);
  });

  it('stop ammonia for its metals and its toxicity, even at 20 g in 40 m³', () => {
    const charge = { low: 0.01, likely: 0.015, high: 0.02 };
    expect(codesOf('R717', { charge })).toEqual(
      expect.arrayContaining(['fluidAttacksCopper', 'toxicFluid', 'leakToxicInRoom', 'flammableFluid']),
    );
    for (const name of refrigerantNames) {
      if (name !== 'R717') expect(codesOf(name, { charge }), name).not.toContain('fluidAttacksCopper');
    }
  });

  // R1270: 0.0017 kg/m³ can be breathed, a fifth of the flammability limit is 0.0092 kg/m³: 100 g in 40 m³ are 0.0025.
  it('speak of breathing where that limit lies below the flammability limit', () => {
    const charge = { low: 0.1, likely: 0.1, high: 0.1 };
    expect(codesOf('R1270', { charge })).toContain('leakAboveBreathingLimitInRoom');
    expect(codesOf('R1270', { charge })).not.toContain('leakNearFlammableInRoom');
    expect(codesOf('R290', { charge })).not.toContain('leakAboveBreathingLimitInRoom');
  });

  // Above 2,500 by AR4, the report EU law keeps: R404A 3922, R507A 3985, R125 3500, R143a 4470, R227ea 3220, R236fa 9810.
  it('speak of what may no longer be serviced', () => {
    const named = refrigerantNames.filter((name) => codesOf(name).includes('highWarmingFluid'));
    expect(named).toEqual(['R404A', 'R507A', 'R125', 'R143a', 'R227ea', 'R236fa']);
  });

  it('speak of every fluid that depletes the ozone layer', () => {
    const named = refrigerantNames.filter((name) => codesOf(name).includes('ozoneDepletingFluid'));
    expect(named).toEqual(['R12', 'R22', 'R142b', 'R124']);
  });

  it('know the oils that take up water by the names of the catalogue', () => {
    expect(codesOf('R134a')).toContain('oilTakesUpWater');
    expect(codesOf('R600a')).not.toContain('oilTakesUpWater');
  });

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
    for (const name of refrigerantNames) {
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
