// Running points on a stated basis: a published data set through the whole way from a pasted table, coefficients beside the model,
// superheat after Dabiri & Rice, and where each temperature of the basis is from.

import { describe, expect, test } from 'vitest';
import { type AskedBasis, assessMachinePoints, type MachinePoint } from '../../../../src/assess/index.ts';
import { InputError } from '../../../../src/numerics/index.ts';
import { alone, fortkamp, kelvin, type Part, straightSet } from './machines.ts';

function pointOf(
  compressor: Part,
  [evaporating, condensing]: readonly [number, number],
  basis: AskedBasis = {},
  more: { readonly refrigerant?: string; readonly machine?: Part } = {},
): MachinePoint {
  const { refrigerant, machine } = more;
  const at = [{ evaporating: kelvin(evaporating), condensing: kelvin(condensing) }];
  const asked = refrigerant === undefined ? { at, basis } : { at, basis, refrigerant };
  const outcome = assessMachinePoints(alone(compressor, machine), asked);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome));
  const [point] = outcome.points;
  if (point === undefined || 'error' in point) throw new Error(JSON.stringify(point));
  return point;
}

describe('a published data set, F. Fortkamp 2022 (R600a, 13.54 cm³, 60 Hz, 35 °C condensing)', () => {
  // Rows as printed: evaporating °C, capacity W, power W, flow kg/h.
  test.each([
    [-35, 167, 129, 1.79],
    [-25, 282, 160, 3.03],
    [-20, 362, 177, 3.89],
    [-10, 570, 217, 6.16],
  ])('%s °C', (evaporating, capacity, power, flow) => {
    const point = pointOf(fortkamp, [evaporating, 35]);
    expect(point.insideData).toBe(true);
    for (const [band, printed] of [
      [point.capacity, capacity],
      [point.power, power],
      [point.massFlow, flow / 3600],
    ] as const) {
      expect(band.low).toBeLessThan(printed);
      expect(band.high).toBeGreaterThan(printed);
      expect(Math.abs(band.likely / printed - 1)).toBeLessThan(0.03);
    }
  });

  test('another condensing temperature is beyond its data, and wider', () => {
    const inside = pointOf(fortkamp, [-20, 35]);
    const beyond = pointOf(fortkamp, [-20, 55]);
    expect(beyond.doubt).toContain('beyondCondensing');
    expect(width(beyond.power)).toBeGreaterThan(width(inside.power));
  });

  test('its own gas, liquid, air and mains hold where nothing is asked', () => {
    const { at } = pointOf(fortkamp, [-20, 35]);
    expect(at.returnGas).toMatchObject({ value: kelvin(32.2), from: 'itsOwnData' });
    expect(at.liquid).toMatchObject({ value: kelvin(32.2), from: 'itsOwnData' });
    expect(at.frequency).toMatchObject({ value: 60, from: 'itsOwnData' });
    expect(at.superheat).toBeCloseTo(52.2, 6);
  });

  test('liquid of the sheet that would be warmer than condensing keeps its subcooling, which is said', () => {
    const { at } = pointOf(fortkamp, [-20, 30]);
    expect(at.subcooling).toBeCloseTo(2.8, 6);
    expect(at.liquid.words).toContain('would be warmer');
  });

  test('a rating says gas and liquid at other levels too, the current of a plate none', () => {
    const at = { kind: 'conditions', evaporating: '-10 °C', condensing: '55 °C', returnGas: '32 °C', liquid: '55 °C' };
    const nameplate = { voltage: '230 V', frequency: '50 Hz', ratedCurrent: '2.4 A' };
    const rated = { madeFor: 'R134a', nameplate, ratings: [{ at, capacity: '380 W', power: '300 W' }] };
    // Nearer to where the current of the plate is taken to be drawn than to the rating.
    const { at: basis } = pointOf(rated, [-6.7, 50], {}, { machine: { application: 'medium' } });
    expect(basis.returnGas).toMatchObject({ value: kelvin(32), from: 'itsOwnData' });
    expect(basis.subcooling).toBeCloseTo(0, 6);
    expect(pointOf({ madeFor: 'R134a', nameplate }, [-10, 50]).at.returnGas.from).toBe('ratingPoint');
  });

  test('mains of the design go before those of the data', () => {
    const { at } = pointOf(fortkamp, [-20, 35], {}, { machine: { supply: { frequency: '50 Hz' } } });
    expect(at.frequency).toMatchObject({ value: 50, from: 'design' });
    expect(at.returnGas.value).toBeCloseTo(kelvin(32.2), 6);
  });
});

describe('what is asked', () => {
  const asked = (basis: AskedBasis) => pointOf(fortkamp, [-20, 35], basis).at;

  test('holds', () => {
    expect(asked({ superheat: 10 }).returnGas).toMatchObject({ value: kelvin(-10), from: 'asked' });
    expect(asked({ returnGas: kelvin(5) }).superheat).toBeCloseTo(25, 9);
    expect(asked({ subcooling: 5 }).liquid.value).toBeCloseTo(kelvin(30), 9);
    expect(asked({ liquid: kelvin(20) }).subcooling).toBeCloseTo(15, 9);
    expect(asked({ surroundings: 300 }).surroundings).toMatchObject({ value: 300, from: 'asked' });
    expect(asked({ frequency: 50, voltage: 115 }).voltage).toMatchObject({ value: 115, from: 'asked' });
  });

  test.each([
    [{ returnGas: 250, superheat: 5 }, 'bothGiven'],
    [{ liquid: 290, subcooling: 5 }, 'bothGiven'],
    [{ returnGas: kelvin(-30) }, 'returnGasBelowEvaporating'],
    [{ liquid: kelvin(40) }, 'liquidAboveCondensing'],
  ] as const)('%o is refused as %s', (basis, code) => {
    const text = alone(fortkamp);
    const at = [{ evaporating: kelvin(-20), condensing: kelvin(35) }];
    expect(codeOf(() => assessMachinePoints(text, { at, basis }))).toBe(code);
  });

  test('more superheat: less flow; less subcooling: less capacity, the same flow', () => {
    const point = (basis: AskedBasis) => pointOf(fortkamp, [-20, 35], basis);
    expect(point({ superheat: 60 }).massFlow.likely).toBeLessThan(point({ superheat: 20 }).massFlow.likely);
    expect(point({ subcooling: 0 }).capacity.likely).toBeLessThan(point({ subcooling: 10 }).capacity.likely);
    expect(point({ subcooling: 0 }).massFlow.likely).toBeCloseTo(point({ subcooling: 10 }).massFlow.likely, 12);
  });
});

test('a machine nobody has measured is told at the rating point of its application', () => {
  const point = pointOf({ appliance: 'householdRefrigerator', madeFor: 'R134a' }, [-23.3, 54.4]);
  expect(point.at.returnGas).toMatchObject({ value: expect.closeTo(kelvin(32.2), 9), from: 'ratingPoint' });
  expect(point.at.frequency.from).toBe('design');
  expect(point.doubt).toEqual(['noPoints']);
  expect(point.polynomial).toBeNull();
});

describe('coefficients beside the model', () => {
  const sets = [straightSet('massFlow', 3.6, 0.16, 'kg/h'), straightSet('power', 120, 2, 'W')];
  const machine = { madeFor: 'R134a', coefficients: sets } as const;

  test('inside their ranges their own value is told', () => {
    const { polynomial, insideData } = pointOf(machine, [-23.3, 54.4]);
    expect(insideData).toBe(true);
    expect(polynomial?.map(({ of, own }) => [of, own])).toEqual([
      ['massFlow', expect.closeTo(0.001, 12)],
      ['power', expect.closeTo(120, 9)],
    ]);
    expect(polynomial!.every(({ own, corrected }) => Math.abs(corrected! / own - 1) < 1e-9)).toBe(true);
  });

  // R134a −23.3/54.4 °C, gas 32.2 → 4.4 °C: density ratio, F = 0.75 and isentropic work by CoolProp 8.0.0, worked outside.
  test('another superheat after Dabiri & Rice', () => {
    const { polynomial } = pointOf(machine, [-23.3, 54.4], { returnGas: kelvin(4.4) });
    const [flow, power] = polynomial!;
    expect(flow!.corrected! / flow!.own).toBeCloseTo(1.083, 3);
    expect(power!.corrected! / power!.own).toBeCloseTo(0.9716, 3);
  });

  test('outside their ranges, and in another fluid, they say nothing', () => {
    expect(pointOf(machine, [-10, 54.4]).polynomial).toBeNull();
    expect(pointOf(machine, [-23.3, 45]).polynomial).toBeNull();
    expect(pointOf(machine, [-23.3, 54.4], {}, { refrigerant: 'R600a' }).polynomial).toBeNull();
  });
});

test('another fluid is stopped, and told all the same', () => {
  const point = pointOf(fortkamp, [-20, 35], {}, { refrigerant: 'R134a' });
  expect(point.at.refrigerant).toBe('R134a');
  expect(point.doubt).toContain('otherFluid');
  expect(point.findings.filter(({ severity }) => severity === 'stop').map(({ code }) => code)).toContain(
    'notForThisMachine',
  );
});

test('first law: heat is capacity and power less what leaves through the shell', () => {
  for (const at of [
    [-25, 35],
    [0, 45],
  ] as const) {
    const { capacity, power, heat, shellHeat, overallEfficiency, volumetricEfficiency } = pointOf(fortkamp, at);
    const left = capacity.likely + power.likely - heat.likely - shellHeat.likely;
    expect(Math.abs(left / heat.likely)).toBeLessThan(1e-9);
    expect(overallEfficiency.likely).toBeLessThan(1);
    expect(volumetricEfficiency.likely).toBeLessThan(1);
  }
});

function width({
  low,
  likely,
  high,
}: {
  readonly low: number;
  readonly likely: number;
  readonly high: number;
}): number {
  return (high - low) / likely;
}

function codeOf(run: () => unknown): string {
  try {
    run();
  } catch (error) {
    if (error instanceof InputError) return error.code;
    throw error;
  }
  throw new Error('nothing was refused');
}
