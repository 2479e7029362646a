// The machine running on with its thermostat stuck: the first rate is a balance, and at the temperature where the water
// comes to rest the whole assessment, asked for that water, finds heat brought equal to heat needed.

import { describe, expect, test } from 'vitest';
import { assessDesign } from '../../../src/assess/index.ts';
import { demoTexts } from '../../designs.ts';

function assessed(document: unknown) {
  const outcome = assessDesign(JSON.stringify(document), 'metric');
  if (!outcome.ok) throw new Error(JSON.stringify(outcome));
  return outcome.assessment;
}

/** A demo whose room and source are the same all year, so that the coldest spell is every moment. */
function steady(waterTemperature: string, cutOut: string) {
  const design = JSON.parse(demoTexts['reef-in-the-study.json']!);
  Object.assign(design.room, { temperature: '20 °C', coldest: '20 °C', warmest: '20 °C' });
  design.source = { kind: 'otherRoom', temperature: '13 °C', coldest: '13 °C', warmest: '13 °C' };
  design.tank.waterTemperature = waterTemperature;
  design.tank.load.waterTemperature = '25.5 °C';
  design.safeguards.overTemperatureCutOut = cutOut;
  return design;
}

function stuckOn(design: unknown) {
  const { findings, cautions } = assessed(design);
  const finding = [...findings, ...cautions].find(({ code }) => code === 'overTemperatureCutOutUnknown');
  const { timePerKelvin, settlesAt } = finding!.facts;
  if (timePerKelvin === undefined || !('value' in timePerKelvin)) throw new Error('no rate was told');
  if (settlesAt === undefined || !('value' in settlesAt)) throw new Error('no end was told');
  return { timePerKelvin: timePerKelvin.value, settlesAt: settlesAt.value };
}

describe('a thermostat that sticks', () => {
  test('warms the water at first by surplus over heat capacity', () => {
    const design = steady('25.5 °C', 'unknown');
    const { tank, tankLoad, heatDelivered } = assessed(design);
    const surplus = heatDelivered.likely - tankLoad.likely;
    expect(surplus).toBeGreaterThan(0);
    expect(stuckOn(design).timePerKelvin).toBeCloseTo(tank.heatCapacity / surplus, 3);
  });

  test('brings the water to rest where heat brought is heat needed', () => {
    const { settlesAt } = stuckOn(steady('25.5 °C', 'unknown'));
    expect(settlesAt).toBeGreaterThan(300);
    const there = assessed(steady(`${settlesAt - 273.15} °C`, 'independent'));
    const lack = there.tankLoad.likely - there.heatDelivered.likely;
    // Found to 0.2 K; a kelvin is worth some tens of watts here.
    expect(Math.abs(lack)).toBeLessThan(10);
  });
});
