// The classes of appliances: every range is usable, has words for its source, and gives machines whose efficiencies fall
// into the widest bands of handbooks (from memory: a check of plausibility, not of truth).

import { describe, expect, test } from 'vitest';
import {
  catalogueEntry,
  isStudyOnly,
  refrigerant,
  refrigerantNames,
  saturationAtTemperature,
  stateAt,
} from '../../../src/matter/refrigerants/index.ts';
import type { Application, CompressorModel, SourcedEstimate } from '../../../src/parts/compressor/index.ts';
import {
  applianceClass,
  applianceClasses,
  applianceNames,
  applianceRanges,
  applicationLimits,
  applications,
  compressorFluids,
  compressorPoint,
  genericRanges,
  speedForMains,
} from '../../../src/parts/compressor/index.ts';

const pairs = applianceClasses.flatMap((entry) => entry.fluids.map((fluid) => [entry.name, fluid] as const));
const typicalConditions: Record<Application, readonly [evaporating: number, condensing: number, gas: number]> = {
  low: [249.85, 327.55, 305.35],
  medium: [263.15, 328.15, 305.15],
  high: [280.35, 327.55, 308.15],
};

describe('law: ranges', () => {
  test('there are classes, names are unique, every fluid is one of the engine', () => {
    expect(applianceNames.length).toBeGreaterThanOrEqual(8);
    expect(new Set(applianceNames).size).toBe(applianceNames.length);
    for (const [, fluid] of pairs) expect(refrigerantNames).toContain(fluid);
  });

  test.each(pairs)('%s for %s: every range is assumed, ordered, and says its source', (name, fluid) => {
    const { oil, oilSource, ...ranges } = applianceRanges(name, fluid);
    expect(oil.length).toBeGreaterThan(3);
    expect(oilSource.length).toBeGreaterThan(3);
    const entries = Object.values(ranges);
    expect(entries).toHaveLength(9);
    for (const range of entries) expectUsable(range);
  });

  test('generic ranges exist for each application and each fluid of a class, and are refused for any other', () => {
    expect([...compressorFluids].sort()).toEqual([...new Set(pairs.map(([, fluid]) => fluid))].sort());
    for (const application of applications) {
      for (const fluid of refrigerantNames) {
        if (compressorFluids.includes(fluid)) {
          const ranges = Object.values(genericRanges(application, fluid));
          expect(ranges).toHaveLength(7);
          for (const range of ranges) expectUsable(range);
        } else {
          expect(
            caught(() => genericRanges(application, fluid)),
            fluid,
          ).toMatchObject({ code: 'fluidWithoutFriction' });
        }
      }
    }
  });

  test('no class is made for a fluid for study only, or for one that attacks copper', () => {
    for (const fluid of compressorFluids) {
      expect(isStudyOnly(fluid), fluid).toBe(false);
      expect(catalogueEntry(fluid).metalsAttacked, fluid).toEqual([]);
    }
  });

  // What the source of these ranges says of them: in proportion to saturation pressure at 40 °C; rounded to 1 kPa, twice.
  test('friction of a fluid is in proportion to its saturation pressure at 40 °C', () => {
    const pressureOf = (fluid: string) => {
      const { liquid, vapour } = saturationAtTemperature(refrigerant(fluid), 313.15);
      return (liquid.pressure + vapour.pressure) / 2;
    };
    for (const application of applications) {
      const own = genericRanges(application, 'R134a').frictionPressure;
      for (const fluid of compressorFluids) {
        const { low, likely, high } = genericRanges(application, fluid).frictionPressure;
        const times = pressureOf(fluid) / pressureOf('R134a');
        for (const [value, beside] of [
          [low, own.low],
          [likely, own.likely],
          [high, own.high],
        ] as const) {
          expect(value / (beside * times), `${fluid}, ${application}`).toBeGreaterThan(0.92);
          expect(value / (beside * times), `${fluid}, ${application}`).toBeLessThan(1.08);
        }
      }
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

  test('speed is below the synchronous speed of its mains', () => {
    expect(speedForMains(50).high).toBeLessThan(50);
    expect(speedForMains(60).high).toBeLessThan(60);
  });
});

describe('what the classes give at the conditions they were rated for', () => {
  test.each(pairs)('%s for %s: efficiencies inside the widest handbook bands (from memory)', (name, fluidName) => {
    const point = likelyPoint(name, fluidName);
    expect(point.volumetricEfficiency).toBeGreaterThan(0.55);
    expect(point.volumetricEfficiency).toBeLessThan(0.98);
    expect(point.overallEfficiency).toBeGreaterThan(0.35);
    expect(point.overallEfficiency).toBeLessThan(0.72);
    expect(point.warnings).toEqual([]);
  });
});

describe('limits and refusals', () => {
  test('limits of the applications rise together', () => {
    const low = applicationLimits('low');
    const high = applicationLimits('high');
    expect(low.evaporating.highest).toBeLessThan(high.evaporating.highest);
    expect(low.source).toContain('from memory');
  });

  test('unknown appliance, fluid, application, mains', () => {
    expect(caught(() => applianceClass('toaster'))).toMatchObject({ code: 'unknownAppliance' });
    expect(caught(() => applianceRanges('toaster', 'R134a'))).toMatchObject({ code: 'unknownAppliance' });
    expect(caught(() => applianceRanges('householdRefrigerator', 'R22'))).toMatchObject({
      code: 'fluidNotOfThisClass',
    });
    expect(caught(() => genericRanges('low', 'R999'))).toMatchObject({ code: 'fluidWithoutFriction' });
    expect(caught(() => genericRanges('middling' as Application, 'R134a'))).toMatchObject({ path: 'application' });
    expect(caught(() => applicationLimits('middling' as Application))).toMatchObject({ path: 'application' });
    expect(caught(() => speedForMains(16 as 50))).toMatchObject({ path: 'frequency' });
  });
});

function likelyPoint(name: string, fluidName: string) {
  const fluid = refrigerant(fluidName);
  const ranges = applianceRanges(name, fluidName);
  const [evaporating, condensing, gas] = typicalConditions[applianceClass(name).application];
  const model: CompressorModel = {
    displacement: ranges.displacement.likely,
    speed: ranges.speed.likely,
    clearanceRatio: ranges.clearanceRatio.likely,
    reexpansionExponent: ranges.reexpansionExponent.likely,
    fillingFactor: ranges.fillingFactor.likely,
    compressionEfficiency: ranges.compressionEfficiency.likely,
    frictionPressure: ranges.frictionPressure.likely,
    shellHeatShare: ranges.shellHeatShare.likely,
  };
  const pressure = saturationAtTemperature(fluid, evaporating).vapour.pressure;
  return compressorPoint(model, fluid, {
    suction: stateAt(fluid, { temperature: gas, pressure }),
    dischargePressure: saturationAtTemperature(fluid, condensing).vapour.pressure,
  });
}

function expectUsable(range: SourcedEstimate): void {
  expect(range.origin).toBe('assumed');
  expect(range.source.length).toBeGreaterThan(5);
  expect(range.low).toBeLessThanOrEqual(range.likely);
  expect(range.likely).toBeLessThanOrEqual(range.high);
  expect(range.low).toBeGreaterThanOrEqual(0);
  expect(Number.isFinite(range.high)).toBe(true);
}

function caught(attempt: () => unknown): unknown {
  try {
    attempt();
  } catch (error) {
    return error;
  }
  throw new Error('expected an error');
}
