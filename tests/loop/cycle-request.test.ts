// What a cycle is refused for, each with the code and the key it names; the batch line around it; and random rubbish.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { answerCycleLine } from '../../src/cli/cycle/answer-line.ts';
import { type TextbookCycleRequest, textbookCycle } from '../../src/loop/index.ts';
import { refrigerant, refrigerantNames } from '../../src/matter/refrigerants/index.ts';
import { KettlefinError } from '../../src/numerics/index.ts';

const good = {
  refrigerant: 'R134a',
  evaporating: 263.15,
  condensing: 318.15,
  superheat: 5,
  subcooling: 5,
  isentropicEfficiency: 0.6,
};

function without(...keys: string[]): Record<string, unknown> {
  return Object.fromEntries(Object.entries(good).filter(([key]) => !keys.includes(key)));
}

function refused(request: unknown): KettlefinError {
  try {
    textbookCycle(request as TextbookCycleRequest);
  } catch (error) {
    if (error instanceof KettlefinError) return error;
    throw error;
  }
  throw new Error('expected a typed error');
}

describe('refused, with code and key', () => {
  it.each([
    ['badInput', 'request', null],
    ['badInput', 'request', [good]],
    ['badInput', 'request', 'R134a'],
    ['missing', 'refrigerant', without('refrigerant')],
    ['badInput', 'refrigerant', { ...good, refrigerant: 134 }],
    ['unknownRefrigerant', 'refrigerant', { ...good, refrigerant: 'R134b' }],
    ['unknownKey', 'evaporatingTemperature', { ...good, evaporatingTemperature: 263.15 }],
    ['unknownKey', 'massflow', { ...good, massflow: 1 }],
    ['missing', 'evaporating', without('evaporating')],
    ['missing', 'condensing', without('condensing')],
    ['missing', 'superheat', without('superheat')],
    ['missing', 'subcooling', without('subcooling')],
    ['missing', 'isentropicEfficiency', without('isentropicEfficiency')],
    ['bothGiven', 'evaporatingPressure', { ...good, evaporatingPressure: 2e5 }],
    ['bothGiven', 'condensingPressure', { ...good, condensingPressure: 1e6 }],
    ['bothGiven', 'suctionTemperature', { ...good, suctionTemperature: 270 }],
    ['bothGiven', 'liquidTemperature', { ...good, liquidTemperature: 310 }],
    ['bothGiven', 'dischargeTemperature', { ...good, dischargeTemperature: 350 }],
    ['badInput', 'evaporating', { ...good, evaporating: '263.15' }],
    ['badInput', 'evaporating', { ...good, evaporating: -10 }],
    ['badInput', 'condensing', { ...good, condensing: null }],
    ['badInput', 'condensing', { ...good, condensing: Number.NaN }],
    ['badInput', 'superheat', { ...good, superheat: -1 }],
    ['badInput', 'subcooling', { ...good, subcooling: -0.001 }],
    ['badInput', 'subcooling', { ...good, subcooling: 300 }],
    ['badInput', 'isentropicEfficiency', { ...good, isentropicEfficiency: 0 }],
    ['badInput', 'isentropicEfficiency', { ...good, isentropicEfficiency: 1.0001 }],
    ['badInput', 'isentropicEfficiency', { ...good, isentropicEfficiency: true }],
    ['badInput', 'deadState', { ...good, deadState: 25 }],
    ['badInput', 'referenceState', { ...good, referenceState: 'other' }],
    ['condensingBelowEvaporating', 'condensing', { ...good, condensing: 263.15 }],
    ['condensingBelowEvaporating', 'condensing', { ...good, condensing: 250 }],
    ['condensingBelowEvaporating', 'condensingPressure', { ...without('condensing'), condensingPressure: 1e5 }],
    ['badInput', 'evaporating', { ...good, evaporating: 400 }],
    ['badInput', 'evaporatingPressure', { ...without('evaporating'), evaporatingPressure: 5e6 }],
    ['suctionBelowEvaporating', 'suctionTemperature', { ...without('superheat'), suctionTemperature: 263 }],
    ['liquidAboveCondensing', 'liquidTemperature', { ...without('subcooling'), liquidTemperature: 318.2 }],
    [
      'dischargeBelowIsentropic',
      'dischargeTemperature',
      { ...without('isentropicEfficiency'), dischargeTemperature: 325 },
    ],
    [
      'dischargeBelowIsentropic',
      'dischargeTemperature',
      { ...without('isentropicEfficiency'), dischargeTemperature: 300 },
    ],
    [
      'saturatedPair',
      'dischargeTemperature',
      { ...without('isentropicEfficiency', 'superheat'), suctionQuality: 0.9, dischargeTemperature: 318.15 },
    ],
    ['bothGiven', 'suctionQuality', { ...good, suctionQuality: 0.9 }],
    ['badInput', 'suctionQuality', { ...without('superheat'), suctionQuality: 0 }],
    ['badInput', 'suctionPressure', { ...good, suctionPressure: 0 }],
    ['pressureRises', 'suctionPressure', { ...good, suctionPressure: 201e3 }],
    ['pressureRises', 'liquidPressure', { ...good, liquidPressure: 1.17e6 }],
    ['liquidPressureBelowEvaporating', 'liquidPressure', { ...good, liquidPressure: 2e5 }],
    [
      'liquidAboveCondensing',
      'liquidTemperature',
      { ...without('subcooling'), liquidTemperature: 315, liquidPressure: 1e6 },
    ],
    [
      'suctionBelowEvaporating',
      'suctionTemperature',
      { ...without('superheat'), suctionTemperature: 258, suctionPressure: 18e4 },
    ],
    ['badInput', 'heatExchangerEffectiveness', { ...good, heatExchangerEffectiveness: 0 }],
    ['badInput', 'heatExchangerEffectiveness', { ...good, heatExchangerEffectiveness: 1.01 }],
    [
      'bothGiven',
      'suctionTemperatureAfterExchanger',
      { ...good, heatExchangerEffectiveness: 0.5, suctionTemperatureAfterExchanger: 290 },
    ],
    [
      'bothGiven',
      'suctionTemperature',
      { ...without('superheat'), suctionTemperature: 270, heatExchangerEffectiveness: 0.5 },
    ],
    ['missing', 'superheat', { ...without('superheat'), heatExchangerEffectiveness: 0.5 }],
    [
      'bothGiven',
      'evaporatorOutletTemperature',
      { ...good, evaporatorOutletTemperature: 270, heatExchangerEffectiveness: 0.5 },
    ],
    ['partnerMissing', 'evaporatorOutletTemperature', { ...without('superheat'), evaporatorOutletTemperature: 270 }],
    [
      'wetSuctionWithExchanger',
      'suctionQuality',
      { ...without('superheat'), suctionQuality: 0.9, heatExchangerEffectiveness: 0.5 },
    ],
    [
      'suctionBelowEvaporating',
      'evaporatorOutletTemperature',
      { ...without('superheat'), evaporatorOutletTemperature: 260, heatExchangerEffectiveness: 0.5 },
    ],
    [
      'liquidColderThanSuction',
      'heatExchangerEffectiveness',
      { ...without('subcooling'), liquidTemperature: 268, heatExchangerEffectiveness: 0.5 },
    ],
    ['exchangerOutOfReach', 'suctionTemperatureAfterExchanger', { ...good, suctionTemperatureAfterExchanger: 268 }],
    ['exchangerOutOfReach', 'suctionTemperatureAfterExchanger', { ...good, suctionTemperatureAfterExchanger: 250 }],
    ['exchangerOutOfReach', 'suctionTemperatureAfterExchanger', { ...good, suctionTemperatureAfterExchanger: 314 }],
    ['bothGiven', 'heatingCapacity', { ...good, coolingCapacity: 5e3, heatingCapacity: 6e3 }],
    ['bothGiven', 'coolingCapacity', { ...good, massFlow: 0.05, coolingCapacity: 5e3 }],
    ['bothGiven', 'displacement', { ...good, compressorPower: 500, displacement: 0.002 }],
    ['partnerMissing', 'volumetricEfficiency', { ...good, volumetricEfficiency: 0.8 }],
    ['partnerMissing', 'volumetricEfficiency', { ...good, massFlow: 0.05, volumetricEfficiency: 0.8 }],
    ['badInput', 'volumetricEfficiency', { ...good, displacement: 0.002, volumetricEfficiency: 1.2 }],
    ['badInput', 'massFlow', { ...good, massFlow: 0 }],
    ['badInput', 'massFlow', { ...good, massFlow: 5e-324 }],
    ['badInput', 'coolingCapacity', { ...good, coolingCapacity: -5e3 }],
    ['badInput', 'compressorPower', { ...good, compressorPower: 1e300 }],
    ['heatFlowsUphill', 'sinkTemperature', { ...good, sinkTemperature: 340 }],
    ['heatFlowsUphill', 'sourceTemperature', { ...good, sourceTemperature: 255 }],
  ])('%s: %s', (code, path, request) => {
    expect(refused(request)).toMatchObject({ name: 'InputError', code, path });
  });

  it('names the nearest key for one that is not known', () => {
    expect(refused({ ...good, coolingCapacty: 5e3 }).message).toContain('did you mean coolingCapacity?');
  });

  it.each([
    ['condensing', { ...good, condensing: refrigerant('R134a').critical.temperature }],
    ['condensing', { ...good, condensing: 400 }],
    ['condensingPressure', { ...without('condensing'), condensingPressure: 4.0593e6 }],
  ])('condensing at or above the critical point: %s', (quantity, request) => {
    expect(refused(request)).toMatchObject({ name: 'OutOfModelError', code: 'condensingAboveCritical', quantity });
  });

  it.each([
    ['evaporating', { ...good, evaporating: 100 }],
    ['compressorOutlet', { ...good, isentropicEfficiency: 0.01 }],
    ['superheat', { ...good, superheat: 1000 }],
    ['suctionPressure', { ...good, suctionPressure: 10 }],
  ])('outside the equation of state, naming the step: %s', (step, request) => {
    const error = refused(request);
    expect(error.name).toBe('OutOfModelError');
    expect(error.message).toMatch(new RegExp(`^${step}: `));
  });
});

describe('one line of the batch', () => {
  it('answers the published request with all its keys', () => {
    const answer = JSON.parse(answerCycleLine(JSON.stringify(good)));
    expect(answer.points.map((point: { name: string }) => point.name)).toEqual([
      'compressorInlet',
      'compressorOutletIsentropic',
      'compressorOutlet',
      'condenserOutlet',
      'evaporatorInlet',
    ]);
    for (const key of ['temperature', 'pressure', 'density', 'enthalpy', 'entropy', 'internalEnergy', 'phase']) {
      for (const point of answer.points) expect(point[key]).toBeDefined();
    }
    expect(answer.basis).toBe('textbook cycle, not electricity');
    expect(answer.referenceState).toContain('0 °C');
    for (const key of ['pressureRatio', 'specificWork', 'heatingCop', 'coolingCop', 'volumetricHeatingCapacity']) {
      expect(answer[key]).toBeGreaterThan(0);
    }
    expect(Object.keys(answer.exergyDestruction)).toEqual([
      'compressor',
      'condenser',
      'expansion',
      'evaporator',
      'total',
    ]);
  });

  it.each([
    ['notJson', 'not json'],
    ['notJson', '{"refrigerant":"R134a"'],
    ['notJson', `${'x'.repeat(100000)}`],
    ['badInput', '[]'],
    ['badInput', 'null'],
    ['missing', '{}'],
    ['unknownKey', '{"__proto__":{"evaporating":1},"fluid":"R134a"}'],
  ])('answers %s on its line, one line long', (code, line) => {
    const answer = answerCycleLine(line);
    expect(answer).not.toContain('\n');
    expect(answer.length).toBeLessThan(600);
    expect(JSON.parse(answer).error).toMatchObject({ code, message: expect.any(String) });
  });
});

describe('whatever is asked (seed 2201 to 2204)', () => {
  const noNumberIsBroken = (value: unknown): void => {
    if (typeof value === 'number') expect(Number.isFinite(value)).toBe(true);
    else if (typeof value === 'object' && value !== null) Object.values(value).forEach(noNumberIsBroken);
  };
  const answersOrRefuses = (request: unknown): void => {
    try {
      noNumberIsBroken(textbookCycle(request as TextbookCycleRequest));
    } catch (error) {
      if (!(error instanceof KettlefinError)) throw error;
      expect(error.code).toMatch(/^[a-zA-Z]+$/);
    }
  };
  const wildNumber = fc.oneof(
    fc.double(),
    fc.double({ min: 200, max: 400, noNaN: true }),
    fc.constantFrom(0, -0, 5e-324, 1.7976931348623157e308, -1, Number.NaN, Number.POSITIVE_INFINITY),
  );

  it('wild numbers in a well-formed request give a finite cycle or a typed error', () => {
    const keys = Object.keys(good).filter((key) => key !== 'refrigerant');
    const changes = fc.array(fc.tuple(fc.constantFrom(...keys), wildNumber), { minLength: 1, maxLength: 3 });
    fc.assert(
      fc.property(changes, (changed) => answersOrRefuses({ ...good, ...Object.fromEntries(changed) })),
      { seed: 2201, numRuns: 500 },
    );
  });

  it('any mixture of keys and values gives a finite cycle or a typed error', () => {
    const value = fc.oneof(wildNumber, fc.string(), fc.boolean(), fc.constant(null), fc.constant([1]), fc.constant({}));
    const others = ['evaporatingPressure', 'liquidTemperature', 'deadState', 'suctionQuality', 'displacement', 'x'];
    const key = fc.constantFrom(...Object.keys(good), ...others);
    fc.assert(
      fc.property(fc.dictionary(key, value), (request) => answersOrRefuses(request)),
      { seed: 2202, numRuns: 500 },
    );
  });

  it('near-sensible requests give a finite cycle or a typed error', () => {
    const request = fc.record({
      refrigerant: fc.constantFrom('R134a', 'R600a', 'R290', 'R12', 'R22'),
      evaporating: fc.double({ min: 150, max: 420, noNaN: true }),
      condensing: fc.double({ min: 150, max: 420, noNaN: true }),
      superheat: fc.double({ min: 0, max: 120, noNaN: true }),
      subcooling: fc.double({ min: 0, max: 120, noNaN: true }),
      dischargeTemperature: fc.double({ min: 200, max: 500, noNaN: true }),
      deadState: fc.double({ min: 100, max: 1000, noNaN: true }),
    });
    fc.assert(fc.property(request, answersOrRefuses), { seed: 2203, numRuns: 500 });
  });

  it('near-sensible requests with losses, exchanger and flow give a finite cycle or a typed error (seed 2204)', () => {
    const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    const request = fc.record(
      {
        refrigerant: fc.constantFrom(...refrigerantNames),
        evaporating: number(200, 380),
        condensing: number(250, 400),
        superheat: number(0, 60),
        subcooling: number(0, 60),
        isentropicEfficiency: number(0.3, 1),
        suctionPressure: number(1e3, 5e5),
        liquidPressure: number(1e5, 2e6),
        heatExchangerEffectiveness: number(0, 1.05),
        displacement: number(0, 1),
        volumetricEfficiency: number(0, 1),
      },
      {
        requiredKeys: ['refrigerant', 'evaporating', 'condensing', 'superheat', 'subcooling', 'isentropicEfficiency'],
      },
    );
    fc.assert(fc.property(request, answersOrRefuses), { seed: 2204, numRuns: 1000 });
  });
});
