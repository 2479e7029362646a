// Laws of the two sizings: the resistances carry the duty, sizes move the right way, and impossible requests are refused.

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { airFormulas } from '../../../src/matter/air/index.ts';
import { waterFormulas } from '../../../src/matter/water/index.ts';
import type { CondenserRequest, EvaporatorRequest } from '../../../src/parts/exchangers/index.ts';
import {
  condenserCoil,
  condenserWorking,
  effectivenessIsothermal,
  evaporatorFace,
  evaporatorWorking,
  exchangerAssumptions,
  exchangerFormulas,
  likelyCondenserAssumptions,
  likelyEvaporatorAssumptions,
  tubeMaterials,
  tubeWall,
} from '../../../src/parts/exchangers/index.ts';
import type { WorkingStep } from '../../../src/quantities/index.ts';
import { expectTraced } from '../../traced-steps.ts';

const coilRequest: CondenserRequest = {
  duty: 400,
  condensingTemperature: 309.15,
  waterTemperature: 299.15,
  salinity: 0,
  arrangement: 'intermediateLoop',
  tube: { outerDiameter: 0.0095, wallThickness: 0.0006, wallConductivity: 16.2 },
  assumed: likelyCondenserAssumptions(),
};

const faceRequest: EvaporatorRequest = {
  duty: 280,
  airTemperature: 292.15,
  relativeHumidity: 0.5,
  pressure: 101325,
  evaporatingTemperature: 282.15,
  faceVelocity: 1.5,
  assumed: likelyEvaporatorAssumptions(),
};

describe('law: condenser', () => {
  test.each(['coilInTank', 'intermediateLoop'] as const)('%s: every layer carries the duty', (arrangement) => {
    const coil = condenserCoil({ ...coilRequest, arrangement });
    const { tankCoil } = coil;
    const film = tankCoil.waterFilm * tankCoil.area * tankCoil.surfaceDifference;
    const behind = tankCoil.fouling + tankCoil.wallResistance + tankCoil.insideResistance;
    const rest = ((tankCoil.meanDifference - tankCoil.surfaceDifference) * tankCoil.area) / behind;
    expect(film / coilRequest.duty).toBeCloseTo(1, 9);
    expect(rest / coilRequest.duty).toBeCloseTo(1, 9);
    expect(tankCoil.conductance * tankCoil.meanDifference).toBeCloseTo(coilRequest.duty, 7);
    expect(tankCoil.area).toBeCloseTo(Math.PI * 0.0095 * tankCoil.length, 12);
  });

  test('the loop water carries the duty between its two ends and both exchangers see it', () => {
    const { loop, tankCoil } = condenserCoil(coilRequest);
    expect(loop).not.toBeNull();
    const { massFlow, tankCoilInlet, tankCoilOutlet, exchanger, meanDifferenceToTank } = loop!;
    // 4.18 kJ/(kg K) is the handbook value of water near 30 °C.
    expect((massFlow * 4180 * (tankCoilInlet - tankCoilOutlet)) / coilRequest.duty).toBeCloseTo(1, 2);
    expect(tankCoil.meanDifference).toBe(meanDifferenceToTank);
    expect(exchanger.overallCoefficient * exchanger.area * exchanger.meanDifference).toBeCloseTo(coilRequest.duty, 7);
    expect(tankCoilInlet).toBeLessThan(coilRequest.condensingTemperature);
    expect(tankCoilOutlet).toBeGreaterThan(coilRequest.waterTemperature);
  });

  test('sizes move the right way', () => {
    const length = (change: Partial<CondenserRequest>) =>
      condenserCoil({ ...coilRequest, arrangement: 'coilInTank', ...change }).tankCoil.length;
    const base = length({});
    expect(length({ duty: 800 })).toBeCloseTo(2 * base, 9);
    // 6 K instead of 10 K: more than the ratio, because the free-convection film weakens with its own difference.
    expect(length({ condensingTemperature: 305.15 })).toBeGreaterThan((10 / 6) * base);
    expect(length({ assumed: { ...coilRequest.assumed, fouling: 1e-3 } })).toBeGreaterThan(base);
    expect(length({ assumed: { ...coilRequest.assumed, refrigerantFilm: 800 } })).toBeGreaterThan(base);
    const { tube } = coilRequest;
    expect(length({ tube: { ...tube, wallConductivity: 0.4 } })).toBeGreaterThan(1.5 * base);
    // A cooler tank has stiffer water: a poorer film at the same approach.
    expect(length({ waterTemperature: 291.15, condensingTemperature: 301.15 })).toBeGreaterThan(base);
  });

  test('any usual coil has a finite size and a film between 100 and 2000 W/(m² K) (seed 1975)', () => {
    const cases = fc.record({
      duty: fc.double({ min: 30, max: 3000, noNaN: true }),
      waterTemperature: fc.double({ min: 283, max: 305, noNaN: true }),
      approach: fc.double({ min: 3, max: 25, noNaN: true }),
      salinity: fc.constantFrom(0, 0.02, 0.035),
      diameter: fc.double({ min: 0.006, max: 0.019, noNaN: true }),
      material: fc.constantFrom(...tubeMaterials),
      arrangement: fc.constantFrom('coilInTank' as const, 'intermediateLoop' as const),
    });
    fc.assert(
      fc.property(cases, ({ duty, waterTemperature, approach, salinity, diameter, material, arrangement }) => {
        const wall = tubeWall(material);
        const { tankCoil } = condenserCoil({
          duty,
          waterTemperature,
          condensingTemperature: waterTemperature + approach,
          salinity,
          arrangement,
          tube: {
            outerDiameter: diameter,
            wallThickness: wall.thickness.likely,
            wallConductivity: wall.conductivity.likely,
          },
          assumed: likelyCondenserAssumptions(),
        });
        expect(tankCoil.length).toBeGreaterThan(0);
        expect(Number.isFinite(tankCoil.length)).toBe(true);
        expect(tankCoil.waterFilm).toBeGreaterThan(100);
        expect(tankCoil.waterFilm).toBeLessThan(2000);
        expect(tankCoil.overallCoefficient).toBeLessThan(tankCoil.waterFilm);
        expect(tankCoil.surfaceDifference).toBeLessThan(tankCoil.meanDifference);
        expect(tankCoil.iterations).toBeLessThan(40);
        if (tankCoil.waterFilmSecondOpinion !== null) {
          expect(Math.abs(tankCoil.waterFilmSecondOpinion / tankCoil.waterFilm - 1)).toBeLessThan(0.22);
        }
      }),
      { seed: 1975, numRuns: 150 },
    );
  });

  test('fast loop water in one tube is named', () => {
    const fast = { ...coilRequest, duty: 1500, assumed: { ...coilRequest.assumed, loopTemperatureChange: 1 } };
    expect(condenserCoil(fast).warnings).toEqual(['loopVelocityHigh']);
    expect(condenserCoil(coilRequest).warnings).toEqual([]);
  });
});

describe('law: evaporator', () => {
  test('the air gives up the duty and the conductance carries it', () => {
    const face = evaporatorFace(faceRequest);
    expect(face.capacityFlow * face.airTemperatureDrop).toBeCloseTo(faceRequest.duty, 9);
    expect(effectivenessIsothermal(face.transferUnits)).toBeCloseTo(face.effectiveness, 12);
    const [warm, cold] = [face.approach, face.approach - face.airTemperatureDrop];
    expect((face.conductance * (warm - cold)) / Math.log(warm / cold)).toBeCloseTo(faceRequest.duty, 7);
    expect(face.faceArea * faceRequest.faceVelocity).toBeCloseTo(face.volumeFlow, 12);
    // Handbook air at 19 °C: 1.2 kg/m³ and 1.01 kJ/(kg K).
    expect((face.volumeFlow * 1.2 * 1010) / face.capacityFlow).toBeCloseTo(1, 1);
  });

  test('sizes move the right way', () => {
    const area = (change: Partial<EvaporatorRequest>) => evaporatorFace({ ...faceRequest, ...change }).faceArea;
    const base = area({});
    expect(area({ duty: 560 })).toBeCloseTo(2 * base, 12);
    expect(area({ evaporatingTemperature: 287.15 })).toBeCloseTo(2 * base, 12);
    expect(area({ pressure: 80000 })).toBeGreaterThan(base);
    expect(area({ faceVelocity: 3 })).toBeCloseTo(base / 2, 12);
  });

  test('condensation and frost are named by dew point and freezing point', () => {
    const at = (evaporating: number, humidity: number) =>
      evaporatorFace({ ...faceRequest, evaporatingTemperature: evaporating, relativeHumidity: humidity }).warnings;
    // Dew point of 19 °C air: 8.4 °C at 50 % (psychrometric chart).
    expect(at(282.15, 0.5)).toEqual([]);
    expect(at(281.15, 0.5)).toEqual(['condensation']);
    expect(at(271.15, 0.5)).toEqual(['frost']);
    expect(at(271.15, 0)).toEqual([]);
  });
});

describe('law: the workings repeat the results, and each symbol comes from outside or from another step', () => {
  const formulas = [...exchangerFormulas, ...airFormulas, ...waterFormulas];
  const origins = {
    duty: 'given.duty',
    condensingTemperature: 'given.condensing',
    waterTemperature: 'given.water',
    salinity: 'given.salinity',
    approach: 'given.approach',
    tubeDiameter: 'given.tube',
    wallThickness: 'given.wall',
    wallConductivity: 'given.conductivity',
    assumed: {
      fouling: 'given.fouling',
      refrigerantFilm: 'given.film',
      loopSideFilm: 'given.loopFilm',
      tankCoilShare: 'given.share',
      loopTemperatureChange: 'given.change',
    },
  };
  const airOrigins = {
    duty: 'given.duty',
    approach: 'given.approach',
    airTemperature: 'given.air',
    pressure: 'given.pressure',
    faceVelocity: 'given.velocity',
    humidity: 'given.humidity',
    assumed: { effectiveness: 'given.effectiveness', finnedCoefficient: 'given.coefficient' },
  };
  // Only the fresh water of the loop is the model's own.
  const traced = (steps: readonly WorkingStep[]) =>
    expectTraced(steps, formulas, (origin) => origin.startsWith('given.'), ['S']);

  test.each([
    ['coilInTank', coilRequest.duty],
    ['intermediateLoop', coilRequest.duty],
    // One tenth and a third of the flow: laminar, and between laminar and turbulent.
    ['intermediateLoop', coilRequest.duty * 0.1],
    ['intermediateLoop', coilRequest.duty * 0.3],
  ] as const)('condenser, %s, %s W', (arrangement, duty) => {
    const request = { ...coilRequest, arrangement, duty };
    const coil = condenserCoil(request);
    const steps = condenserWorking(request, coil, origins);
    const values = Object.fromEntries(traced(steps));
    expect(values['condenser.length']).toBe(coil.tankCoil.length);
    expect(values['condenser.overallCoefficient']).toBe(coil.tankCoil.overallCoefficient);
    expect(values['condenser.loopSide.area']).toBe(coil.loop?.exchanger.area);
  });

  test('evaporator', () => {
    const face = evaporatorFace(faceRequest);
    const steps = evaporatorWorking(faceRequest, face, airOrigins);
    const values = Object.fromEntries(traced(steps));
    expect(values['evaporator.faceArea']).toBe(face.faceArea);
    expect(values['evaporator.conductance']).toBe(face.conductance);
    expect(values['evaporator.finnedArea']).toBe(face.finnedArea);
  });
});

describe('refusals', () => {
  const refused = (change: Partial<CondenserRequest>, expected: object) =>
    expect(() => condenserCoil({ ...coilRequest, ...change })).toThrow(expect.objectContaining(expected));

  test('condenser', () => {
    refused({ duty: 0 }, { name: 'InputError', path: 'duty' });
    refused({ condensingTemperature: 299.15 }, { name: 'NoSolutionError', code: 'noApproach' });
    refused({ condensingTemperature: Number.NaN }, { name: 'InputError' });
    refused({ waterTemperature: 260 }, { name: 'OutOfModelError' });
    refused({ salinity: -1 }, { name: 'OutOfModelError' });
    refused({ tube: { ...coilRequest.tube, wallThickness: 0.005 } }, { path: 'tube.wallThickness' });
    refused({ arrangement: 'elsewhere' as 'coilInTank' }, { path: 'arrangement' });
    refused({ assumed: { ...coilRequest.assumed, fouling: -1 } }, { path: 'assumed.fouling' });
    refused({ assumed: { ...coilRequest.assumed, tankCoilShare: 1 } }, { path: 'assumed.tankCoilShare' });
    refused({ assumed: { ...coilRequest.assumed, loopTemperatureChange: 9 } }, { code: 'loopOutsideApproach' });
    expect(() => tubeWall('lead' as 'copper')).toThrow(expect.objectContaining({ path: 'tubeMaterial' }));
  });

  test.each([
    [{ duty: -1 }, { path: 'duty' }],
    [{ evaporatingTemperature: 292.15 }, { code: 'noApproach' }],
    [{ relativeHumidity: 1.2 }, { path: 'relativeHumidity' }],
    [{ faceVelocity: 0 }, { path: 'faceVelocity' }],
    [{ pressure: Number.NaN }, { path: 'pressure' }],
    [{ assumed: { effectiveness: 1, finnedCoefficient: 25 } }, { code: 'effectivenessOne' }],
    [{ assumed: { effectiveness: 0.6, finnedCoefficient: 0 } }, { path: 'assumed.finnedCoefficient' }],
  ] as [Partial<EvaporatorRequest>, object][])('evaporator %o', (change, expected) => {
    expect(() => evaporatorFace({ ...faceRequest, ...change })).toThrow(expect.objectContaining(expected));
  });
});

test('every assumption is an ordered range with words for its source', () => {
  const walls = tubeMaterials.flatMap((material) => Object.values(tubeWall(material)));
  const ranges = [...Object.values(exchangerAssumptions), ...walls];
  expect(ranges.length).toBeGreaterThan(10);
  for (const range of ranges) {
    expect(range.low).toBeGreaterThan(0);
    expect(range.low).toBeLessThanOrEqual(range.likely);
    expect(range.likely).toBeLessThanOrEqual(range.high);
    expect(range.source.length).toBeGreaterThan(5);
  }
});
