// What the rules of caution are told: a leak is judged at the largest charge in the smallest space, and what the catalogue
// does not know is not taken for harmless.

import { afterEach, describe, expect, test, vi } from 'vitest';
import { assessDesign } from '../../../src/assess/index.ts';
import { refrigerant, saturationAtTemperature } from '../../../src/matter/refrigerants/index.ts';
import { demoTexts } from '../../designs.ts';

const known = vi.hoisted(() => ({ asInCatalogue: true }));

vi.mock('../../../src/matter/refrigerants/index.ts', async (importOriginal) => {
  const original = await importOriginal<typeof import('../../../src/matter/refrigerants/index.ts')>();
  return {
    ...original,
    catalogueEntry(name: string) {
      const entry = original.catalogueEntry(name);
      if (known.asInCatalogue) return entry;
      const almostNothing = { value: 1, report: 'a test' };
      return { ...entry, globalWarmingPotential: almostNothing, ozoneDepletionPotential: null };
    },
  };
});

afterEach(() => {
  known.asInCatalogue = true;
});

/** Codes of all findings about a demo with these values put in, by path. */
function codes(demo: string, values: Readonly<Record<string, unknown>>): readonly string[] {
  const document = JSON.parse(demoTexts[demo]!);
  for (const [path, value] of Object.entries(values)) {
    const keys = path.split('.');
    const last = keys.pop()!;
    const parent = keys.reduce((part, key) => {
      part[key] ??= {};
      return part[key];
    }, document);
    parent[last] = value;
  }
  const outcome = assessDesign(JSON.stringify(document), 'metric');
  if (!outcome.ok) throw new Error(JSON.stringify(outcome));
  const { findings, cautions } = outcome.assessment;
  return [...findings, ...cautions].map((finding) => finding.code);
}

// R600a: a fifth of the lower flammability limit is 0.2 · 0.038 = 0.0076 kg/m³ (ASHRAE 34, EN 378-1).
describe('a leak of 150 g of R600a', () => {
  const demo = 'shrimp-rack-unknown-draughts.json';
  const charge = { 'machine.charge': '150 g' };

  test('in 25 to 45 m³ makes at most 0.006 kg/m³: nothing to say', () => {
    const rooms = { 'room.volume': '25 to 45 m3', 'source.volume': '25 to 45 m3' };
    expect(codes(demo, { ...charge, ...rooms })).not.toContain('leakNearFlammableInRoom');
  });

  test('in 15 to 55 m³ may make 0.01 kg/m³, though the likely room keeps it at 0.0043', () => {
    const rooms = { 'room.volume': '15 to 55 m3', 'source.volume': '25 to 45 m3' };
    expect(codes(demo, { ...charge, ...rooms })).toContain('leakNearFlammableInRoom');
  });

  test('under a hood of 2 to 10 m³ may make 0.075 kg/m³, above the limit, though the likely hood keeps it at 0.025', () => {
    const hood = { 'machine.enclosure': { kind: 'hood', volume: '2 to 10 m3' } };
    expect(codes(demo, { ...charge, ...hood })).toContain('leakFlammableInEnclosure');
  });
});

// ASHRAE low back pressure: evaporating −23.3 °C, condensing 54.4 °C, return gas 32.2 °C. R134a there, by CoolProp 8.0.0:
// 1.148426 and 14.698223 bar, 4.715918 kg/m³ (5.751579 kg/m³ with the 6 K of superheat of the design). Small domes fill 0.5 to
// 0.75 of their stroke there (own range from typical volumetric efficiencies, which reports more than it proves).
test('the flow a capillary was chosen for is that of the rating point, with the gas as warm as there', () => {
  const outcome = assessDesign(demoTexts['frag-tank-cold-garage.json']!, 'metric');
  if (!outcome.ok) throw new Error(JSON.stringify(outcome));
  const { findings, cautions, machine } = outcome.assessment;
  const found = [...findings, ...cautions].find(({ code }) => code === 'capillaryTooTight');
  const { value } = found!.facts.ratedMassFlow as { readonly value: number };
  const swept = machine.displacement.likely * 49;
  expect(value / (swept * 4.715918)).toBeGreaterThan(0.5);
  expect(value / (swept * 4.715918)).toBeLessThan(0.75);
});

test('a fluid whose effect on the ozone layer nobody knows is not cleared as harmless', () => {
  known.asInCatalogue = false;
  expect(codes('reef-in-the-study.json', {})).toContain('openingNeedsLicence');
});

// EN 378-2 takes the bubble point of a zeotropic blend (from memory of the standard).
test('a blend stands in a warm room at the pressure of its liquid', () => {
  const document = JSON.parse(demoTexts['reef-in-the-study.json']!);
  document.machine.refrigerant = 'R407C';
  document.room.warmest = '36 °C';
  const outcome = assessDesign(JSON.stringify(document), 'metric');
  if (!outcome.ok) throw new Error(JSON.stringify(outcome));
  const standing = outcome.assessment.findings.find(({ code }) => code === 'standingPressureAboveLowSide')!;
  const told = (fact: string) => (standing.facts[fact] as { readonly value: number }).value;
  const { liquid, vapour } = saturationAtTemperature(refrigerant('R407C'), told('warmest'));
  expect(told('standing')).toBe(liquid.pressure);
  expect(liquid.pressure).toBeGreaterThan(1.1 * vapour.pressure);
});
