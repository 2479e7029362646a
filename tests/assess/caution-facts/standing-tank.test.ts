// What the rules of caution are told of the tank itself: at the temperature where the water comes to rest in summer, the whole
// assessment, asked for that water, finds nothing left to heat in the warmest month; wrapping makes it warmer; water weighs what
// it weighs; and the time without electricity is that of the cooling.

import { describe, expect, test } from 'vitest';
import { assessDesign, assessTankLoad, assessWrapping } from '../../../src/assess/index.ts';
import type { Finding } from '../../../src/quantities/index.ts';
import { demoTexts } from '../../designs.ts';

interface Change {
  readonly tank?: Readonly<Record<string, unknown>>;
  readonly load?: Readonly<Record<string, unknown>>;
  readonly room?: Readonly<Record<string, unknown>>;
  readonly wrapping?: unknown;
}

/** A closed tank of 250 L with strong pumps in a warm summer. */
function design({ tank, load, room, wrapping }: Change = {}) {
  return {
    ...base,
    tank: {
      waterTemperature: '25 °C',
      water: 'fresh',
      livestock: 'fish',
      ...tank,
      load: {
        kind: 'rectangular',
        length: '100 cm',
        width: '50 cm',
        height: '55 cm',
        waterDepth: '50 cm',
        wall: { material: 'glass', thickness: '10 mm' },
        surface: 'still',
        lid: 'tight',
        pumpPower: '80 W',
        lightPower: '60 W',
        lightHours: '10 h',
        ...load,
      },
    },
    room: { temperature: '20 °C', coldest: '17 °C', warmest: '27 °C', volume: '40 m3', ...room },
    wrapping: wrapping ?? { measures: [board] },
  };
}

const board = {
  kind: 'board',
  where: 'hidden',
  material: 'extrudedPolystyrene',
  thickness: '40 mm',
  cost: '1',
};

/** Everything but the tank and its room. */
const base = JSON.parse(demoTexts['propane-in-the-cabinet.json']!);

function codesAndFacts(document: unknown): ReadonlyMap<string, Finding> {
  const outcome = assessDesign(JSON.stringify(document), 'metric');
  if (!outcome.ok) throw new Error(JSON.stringify(outcome));
  const { findings, cautions } = outcome.assessment;
  return new Map([...findings, ...cautions].map((finding) => [finding.code, finding]));
}

function wrappingFindings(document: unknown): ReadonlyMap<string, Finding> {
  const outcome = assessWrapping(JSON.stringify(document));
  if (!outcome.ok) throw new Error(JSON.stringify(outcome));
  return new Map(outcome.answer.findings.map((finding) => [finding.code, finding]));
}

function told(finding: Finding | undefined, name: string): number {
  const fact = finding?.facts[name];
  if (fact === undefined || !('value' in fact)) throw new Error(`${finding?.code} tells no ${name}`);
  return fact.value;
}

describe('summer', () => {
  test('comes to rest where the warmest month needs no heat', () => {
    const found = codesAndFacts(design()).get('summerOverheating');
    const rest = told(found, 'settlesAt');
    expect(rest).toBeGreaterThan(303);
    const outcome = assessTankLoad(JSON.stringify(design({ tank: { waterTemperature: `${rest - 273.15} °C` } })));
    if (!outcome.ok) throw new Error(JSON.stringify(outcome));
    const loads = outcome.answer.tank.months.map(({ load }) => load.likely);
    // Found to a hundredth of a kelvin; a kelvin is worth some 10 W here.
    expect(Math.abs(Math.min(...loads))).toBeLessThan(0.2);
    expect(told(found, 'restLow')).toBeLessThan(rest);
    expect(told(found, 'restHigh')).toBeGreaterThan(rest);
  });

  test('is worse behind boards, and the study says the same', () => {
    const cold = design({ room: { temperature: '14 °C', coldest: '8 °C' } });
    const found = codesAndFacts(cold).get('summerOverheating');
    expect(told(found, 'wrapped')).toBeGreaterThan(told(found, 'settlesAt'));
    expect(wrappingFindings(cold).get('summerOverheating')?.facts).toEqual(found?.facts);
  });

  test('says nothing of a tank with few watts in it', () => {
    const cool = design({ load: { pumpPower: '2 W', lightPower: '5 W', lid: 'none' }, room: { warmest: '22 °C' } });
    expect([...codesAndFacts(cool).keys()]).not.toContain('summerOverheating');
  });
});

describe('what lies on and under the tank', () => {
  test('is told with the weight of the water: 0.25 m³ less walls, at the density of water', () => {
    const found = wrappingFindings(
      design({ wrapping: { measures: [{ ...board, kind: 'mat', where: undefined, cost: '900' }] } }),
    );
    const mass = told(found.get('boardUnderTank'), 'waterMass');
    // Fresh water at 25 °C: 997.05 kg/m³ (IAPWS-95).
    const inner = mass / 997.05;
    expect(inner).toBeGreaterThan(0.23);
    expect(inner).toBeLessThanOrEqual(0.2501);
    expect(found.get('insulationBurns')).toBeDefined();
    expect(found.get('wallBehindBoard')).toBeUndefined();
  });

  test('keeps a wall cold only where there is a wall', () => {
    const atWall = design({
      load: { faces: [{ face: 'back', exposure: { kind: 'againstWall', resistance: '1 m2 K/W' } }] },
    });
    expect(wrappingFindings(atWall).get('wallBehindBoard')).toBeDefined();
    expect(wrappingFindings(design()).get('wallBehindBoard')).toBeUndefined();
  });
});

test('without electricity the water falls to 20 °C in the time of the cooling', () => {
  const document = design({ room: { temperature: '12 °C', coldest: '5 °C' } });
  const found = codesAndFacts(document);
  const finding = found.get('powerFailureChillsFast') ?? found.get('powerFailureChillsTank');
  const outcome = assessTankLoad(JSON.stringify(document), { falls: [5] });
  if (!outcome.ok) throw new Error(JSON.stringify(outcome));
  expect(told(finding, 'timeToAlarm')).toBeCloseTo(outcome.answer.tank.falls[0]!.time!, 3);
});
