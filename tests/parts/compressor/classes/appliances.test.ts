// The classes of appliances: every range is usable and has words for its source, sizes follow what the vapour of each fluid
// carries, and what is not known is refused.

import { describe, expect, test } from 'vitest';
import { catalogueEntry, isStudyOnly, refrigerantNames } from '../../../../src/matter/refrigerants/index.ts';
import {
  type Application,
  applianceClass,
  applianceClasses,
  applianceNames,
  applianceRanges,
  applicationLimits,
  compressorFluids,
} from '../../../../src/parts/compressor/index.ts';

const pairs = applianceClasses.flatMap((entry) => entry.fluids.map((fluid) => [entry.name, fluid] as const));

describe('law: ranges', () => {
  test('there is a class for each kind of appliance people salvage, names are unique, every fluid is one of the engine', () => {
    expect([...applianceNames].sort()).toEqual(
      [
        'bottleCooler',
        'chestFreezer',
        'coldRoomUnit',
        'dehumidifier',
        'householdRefrigerator',
        'iceMachine',
        'roomAirConditioner',
        'tumbleDryer',
        'uprightFreezer',
        'waterCooler',
      ].sort(),
    );
    for (const [, fluid] of pairs) {
      expect(refrigerantNames).toContain(fluid);
      expect(compressorFluids).toContain(fluid);
    }
  });

  test.each(pairs)('%s for %s: every range is assumed, ordered, and says its source', (name, fluid) => {
    const ranges = Object.values(applianceRanges(name, fluid));
    expect(ranges).toHaveLength(2);
    for (const { low, likely, high, origin, source } of ranges) {
      expect(origin).toBe('assumed');
      expect(source.length).toBeGreaterThan(5);
      expect(low).toBeGreaterThan(0);
      expect(low).toBeLessThanOrEqual(likely);
      expect(likely).toBeLessThanOrEqual(high);
    }
  });

  test('no class is made for a fluid for study only, or for one that attacks copper', () => {
    for (const fluid of compressorFluids) {
      expect(isStudyOnly(fluid), fluid).toBe(false);
      expect(catalogueEntry(fluid).metalsAttacked, fluid).toEqual([]);
    }
  });

  test('machines of the same appliance are smaller for a fluid whose vapour carries more heat', () => {
    const displacement = (fluid: string) => applianceRanges('roomAirConditioner', fluid).displacement.likely;
    expect(displacement('R410A') / displacement('R22')).toBeLessThan(0.8);
    expect(displacement('R32')).toBeLessThan(displacement('R410A'));
  });

  test('machines for R600a are larger than those for R134a in the same appliance: its vapour is thinner', () => {
    for (const { name, fluids } of applianceClasses) {
      if (!fluids.includes('R600a') || !fluids.includes('R134a')) continue;
      const ratio =
        applianceRanges(name, 'R600a').displacement.likely / applianceRanges(name, 'R134a').displacement.likely;
      expect(ratio).toBeGreaterThan(1.2);
      expect(ratio).toBeLessThan(2.1);
    }
  });
});

describe('limits and refusals', () => {
  test('limits of the applications rise together', () => {
    const low = applicationLimits('low');
    const high = applicationLimits('high');
    expect(low.evaporating.highest).toBeLessThan(high.evaporating.highest);
    expect(low.source).toContain('from memory');
  });

  test.each([
    ['appliance', () => applianceClass('toaster'), { code: 'unknownAppliance' }],
    ['appliance', () => applianceRanges('toaster', 'R134a'), { code: 'unknownAppliance' }],
    ['fluid', () => applianceRanges('householdRefrigerator', 'R22'), { code: 'fluidNotOfThisClass' }],
    ['application', () => applicationLimits('middling' as Application), { path: 'application' }],
  ] as const)('unknown %s', (_what, attempt, expected) => {
    expect(attempt).toThrow(expect.objectContaining(expected));
  });
});
