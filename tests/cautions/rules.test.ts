// Each rule once speaking and once silent, near its border where it has one.
// Limits of flammability: EN 378-1:2016+A1:2020 Annex E. Machine limits and livestock temperatures are typical guides,
// from memory: the tests hold the rule to the figure, not the figure to the truth.

import { describe, expect, it } from 'vitest';
import {
  type CautionCode,
  type CautionFacts,
  cautionCodes,
  cautionRules,
  findCautions,
  leakConcentration,
  leakLimit,
} from '../../src/cautions/index.ts';
import { InputError } from '../../src/numerics/index.ts';
import type { Severity } from '../../src/quantities/index.ts';
import { carbonDioxide, quiet, r12, r134a, r290, r600a, running, state } from './sample.ts';

interface Case {
  readonly speaks: CautionFacts;
  readonly severity: Severity;
  readonly silent: CautionFacts;
}

const flammable: CautionFacts = {
  ...quiet,
  fluid: r600a,
  madeFor: r600a,
  forFlammables: 'yes',
  charge: { low: 0.03, likely: 0.05, high: 0.07 },
};
const sea: CautionFacts = { ...quiet, water: 'sea', livestock: 'fish' };

const cases: Readonly<Record<CautionCode, Case>> = {
  flammableFluidInUnsuitableEquipment: {
    speaks: { ...flammable, madeFor: r134a, forFlammables: 'unknown' },
    severity: 'stop',
    silent: flammable,
  },
  flammableFluidEquipmentUnconfirmed: {
    speaks: { ...flammable, forFlammables: 'unknown' },
    severity: 'look',
    silent: flammable,
  },
  flammableFluid: { speaks: flammable, severity: 'note', silent: quiet },
  notForThisMachine: { speaks: { ...quiet, madeFor: r12 }, severity: 'stop', silent: quiet },
  oilNotForThisFluid: {
    speaks: { ...quiet, madeFor: r12 },
    severity: 'look',
    silent: { ...quiet, fluid: r290, madeFor: r134a },
  },
  ozoneDepletingFluid: { speaks: { ...quiet, fluid: r12, madeFor: r12 }, severity: 'look', silent: quiet },
  openingNeedsLicence: { speaks: quiet, severity: 'note', silent: { ...quiet, fluid: carbonDioxide } },
  // 11.4 g of R290 reach 0.038 kg/m³ in 0.3 m³.
  leakFlammableInEnclosure: {
    speaks: enclosed(0.01141, 0.3),
    severity: 'stop',
    silent: enclosed(0.01139, 0.3),
  },
  leakNearFlammableInEnclosure: {
    speaks: enclosed(0.01139, 0.3),
    severity: 'look',
    silent: enclosed(0.00227, 0.3),
  },
  leakFlammableInRoom: { speaks: inRoom(0.153, 4), severity: 'stop', silent: inRoom(0.151, 4) },
  // 150 g of R290 need 19.7 m³ to stay below 20 % of the limit.
  leakNearFlammableInRoom: { speaks: inRoom(0.15, 19.6), severity: 'look', silent: inRoom(0.15, 19.8) },
  leakAbovePracticalLimitInRoom: {
    speaks: { ...quiet, roomVolume: 0.79 },
    severity: 'look',
    silent: { ...quiet, roomVolume: 0.81 },
  },
  flammableFluidInOtherRoom: {
    speaks: { ...flammable, sourceIsTankRoom: false },
    severity: 'look',
    silent: flammable,
  },
  flammableChargeLarge: {
    speaks: { ...flammable, charge: { low: 0.1, likely: 0.13, high: 0.16 } },
    severity: 'look',
    silent: flammable,
  },
  evaporatingFarAboveApplication: {
    speaks: { ...running({ evaporatingTemperature: 278.2 }), ...lowApplication() },
    severity: 'stop',
    silent: { ...running({ evaporatingTemperature: 278.1 }), ...lowApplication() },
  },
  evaporatingAboveApplication: {
    speaks: running({ evaporatingTemperature: 288.2 }),
    severity: 'look',
    silent: running({ evaporatingTemperature: 288.1 }),
  },
  evaporatingBelowApplication: {
    speaks: running({ evaporatingTemperature: 258.1 }),
    severity: 'look',
    silent: running({ evaporatingTemperature: 258.2 }),
  },
  dischargeAboveHighest: {
    speaks: running({ dischargeTemperature: 403.2 }),
    severity: 'look',
    silent: running({ dischargeTemperature: 403.1 }),
  },
  dischargeNearHighest: {
    speaks: running({ dischargeTemperature: 403.1 }),
    severity: 'look',
    silent: running({ dischargeTemperature: 393.1 }),
  },
  condensingAbovePeak: {
    speaks: running({ condensingTemperature: 343.2 }),
    severity: 'stop',
    silent: running({ condensingTemperature: 343.1 }),
  },
  condensingAboveContinuous: {
    speaks: running({ condensingTemperature: 338.2 }),
    severity: 'look',
    silent: running({ condensingTemperature: 338.1 }),
  },
  pressureRatioTooLow: {
    speaks: running({ condensingPressure: 1.99 * 3.9e5 }),
    severity: 'look',
    silent: running({ condensingPressure: 2.01 * 3.9e5 }),
  },
  pressureRatioAboveHighest: {
    speaks: running({ condensingPressure: 12.1 * 3.9e5 }),
    severity: 'look',
    silent: running({ condensingPressure: 11.9 * 3.9e5 }),
  },
  pressureRatioHigh: {
    speaks: running({ condensingPressure: 10.1 * 3.9e5 }),
    severity: 'note',
    silent: running({ condensingPressure: 9.9 * 3.9e5 }),
  },
  suctionBelowAtmosphere: {
    speaks: running({ evaporatingPressure: 101_324 }),
    severity: 'look',
    silent: running({ evaporatingPressure: 101_326 }),
  },
  frostOnEvaporator: {
    speaks: running({ evaporatingTemperature: 273.1 }),
    severity: 'look',
    silent: running({ evaporatingTemperature: 273.2 }),
  },
  condensateOnEvaporator: {
    speaks: running({ sourceDewPoint: 282.15 }),
    severity: 'note',
    silent: running({ sourceDewPoint: null }),
  },
  copperInWater: {
    speaks: { ...sea, wettedMetal: 'cupronickel' },
    severity: 'stop',
    silent: { ...quiet, wettedMetal: 'copper' },
  },
  copperInFreshWater: {
    speaks: { ...quiet, wettedMetal: 'copper', livestock: 'unknown' },
    severity: 'look',
    silent: { ...quiet, wettedMetal: 'copper', livestock: 'plantsOnly' },
  },
  metalInWaterUnknown: {
    speaks: { ...quiet, wettedMetal: 'unknown' },
    severity: 'look',
    silent: { ...quiet, wettedMetal: 'unknown', livestock: 'plantsOnly' },
  },
  stainlessInSeaWater: {
    speaks: { ...sea, wettedMetal: 'stainless316' },
    severity: 'look',
    silent: { ...quiet, wettedMetal: 'stainless316' },
  },
  coilInTankSingleWall: {
    speaks: { ...quiet, condenserArrangement: 'coilInTank' },
    severity: 'look',
    silent: quiet,
  },
  overTemperatureCutOutMissing: {
    speaks: { ...quiet, overTemperatureCutOut: 'none' },
    severity: 'look',
    silent: quiet,
  },
  overTemperatureCutOutUnknown: {
    speaks: { ...quiet, overTemperatureCutOut: 'unknown' },
    severity: 'look',
    silent: { ...quiet, overTemperatureCutOut: 'none' },
  },
  waterAboveUsual: {
    speaks: { ...quiet, waterTemperature: 302.5, livestock: 'invertebrates' },
    severity: 'look',
    silent: { ...quiet, waterTemperature: 302.5, livestock: 'fish' },
  },
  waterBelowUsual: {
    speaks: { ...quiet, waterTemperature: 293 },
    severity: 'note',
    silent: { ...quiet, waterTemperature: 293, livestock: 'plantsOnly' },
  },
  reliesOnBackup: {
    speaks: running({ heatDelivered: 249 }),
    severity: 'look',
    silent: running({ heatDelivered: 250 }),
  },
  machineFailureCoolsTank: { speaks: quiet, severity: 'note', silent: running({ load: 0 }) },
  residualCurrentProtectionMissing: {
    speaks: { ...quiet, residualCurrentProtection: 'no' },
    severity: 'stop',
    silent: quiet,
  },
  residualCurrentProtectionUnknown: {
    speaks: { ...quiet, residualCurrentProtection: 'unknown' },
    severity: 'look',
    silent: { ...quiet, residualCurrentProtection: 'no' },
  },
};

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

  it('stop a motor only if even its coldest evaporation is far above the application', () => {
    const warm = { ...state, when: 'warmestMonth' as const, evaporatingTemperature: 290 };
    const cool = { ...state, evaporatingTemperature: 270 };
    const codes = findCautions({ ...quiet, ...lowApplication(), operating: [cool, warm] }).map((each) => each.code);
    expect(codes).toContain('evaporatingAboveApplication');
    expect(codes).not.toContain('evaporatingFarAboveApplication');
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

function enclosed(charge: number, volume: number): CautionFacts {
  return {
    ...quiet,
    fluid: r290,
    madeFor: r290,
    forFlammables: 'yes',
    charge: { low: charge / 2, likely: charge * 0.75, high: charge },
    enclosure: { kind: 'closedCabinet', volume },
  };
}

function inRoom(charge: number, volume: number): CautionFacts {
  return { ...enclosed(charge, 1), enclosure: { kind: 'openRoom' }, roomVolume: volume };
}

function lowApplication(): Pick<CautionFacts, 'application' | 'limits'> {
  return {
    application: 'low',
    limits: { ...quiet.limits, evaporating: { lowest: 233.15, highest: 263.15 } },
  };
}

function rank(severity: Severity): number {
  return ['stop', 'look', 'note'].indexOf(severity);
}
