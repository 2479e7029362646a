// `kettlefin load`: its report in both views over tanks of every form, the fall that is asked for, and what it refuses.

import { describe, expect, test } from 'vitest';
import type { TankLoadAnswer } from '../../src/assess/index.ts';
import { caution } from '../../src/cautions/index.ts';
import { main } from '../../src/cli/main.ts';
import { cylinderDesign, fullDesign, measuredDesign, panelsDesign, sizedDesign } from '../design/examples.ts';
import { demoTexts } from '../designs.ts';
import { plain } from './process.ts';
import { collected } from './streams.ts';

const designs: Readonly<Record<string, string>> = {
  ...demoTexts,
  sized: JSON.stringify(sizedDesign()),
  measured: JSON.stringify(measuredDesign()),
  'every part there is': JSON.stringify(fullDesign()),
  'piece by piece': JSON.stringify(panelsDesign()),
  cylinder: JSON.stringify(cylinderDesign()),
};

async function answer(args: readonly string[], input: string) {
  const { streams, output, errors } = collected(input);
  const code = await main(args, streams);
  return { code, output: plain(output()), errors: plain(errors()) };
}

const unwrapped = (text: string) => text.replaceAll(/\s+/g, ' ');

async function said(text: string, ...options: readonly string[]): Promise<string> {
  const { code, output, errors } = await answer(['load', '-', ...options], text);
  expect({ code, errors }).toEqual({ code: 0, errors: '' });
  return output;
}

describe.each(Object.entries(designs))('%s', (_, text) => {
  test.each(['metric', 'us'])('reads well in the %s view', async (units) => {
    const output = await said(text, '--units', units);
    expect(output).not.toMatch(/undefined|NaN|Infinity|null|\[object/);
    expect(output).not.toMatch(/\b(safe|approved|compliant)\b/i);
    expect(Math.max(...output.split('\n').map((line) => line.length))).toBeLessThanOrEqual(104);
    expect(unwrapped(output).endsWith(`${caution} `)).toBe(true);
    expect(output).not.toMatch(/\n\n\n/);
    for (const title of [
      'What leaves the tank',
      'Through the year',
      'What a plain heater costs',
      'How the water cools',
    ]) {
      expect(output).toContain(title);
    }
    if (units === 'us') expect(output).not.toMatch(/\d (°C|K|kg|mm|cm|kPa|kJ|m²)\b/);
    else expect(output).not.toMatch(/\d (°F|BTU|ft|psi|lb|oz|gal)\b/);
  });
});

test('ways out stand under the vessel they leave', async () => {
  const output = await said(demoTexts['bare-glass-above-an-open-sump.json']!);
  expect(output).toMatch(/\n {2}display tank +about \d+ W.*\n {4}evaporation /);
  expect(output).toMatch(/\n {2}sump +about \d+ W.*\n {4}evaporation /);
  expect(output).toMatch(/\n {2}warming make-up water /);
});

describe('a meter beside the sizes', () => {
  const withMeter = (meter: object) => {
    const design = sizedDesign();
    design.tank.load.meter = {
      kind: 'heater',
      energy: '16 kWh',
      duration: '7 days',
      roomTemperature: '18 °C',
      ...meter,
    };
    return JSON.stringify(design);
  };

  test('is held against the model, with what could explain the difference and how to check it', async () => {
    const told = unwrapped(await said(withMeter({})));
    expect(told).toMatch(
      /With the water at 26 °C and the room at 18 °C the tank lost .* by the meter and .* by the model/,
    );
    expect(told).toMatch(/to take the measurement instead, set tank\.load\.meter\.adopt to yes/);
    expect(told).toMatch(/(Any one of these alone could explain it|These could only beyond their range)/);
  });

  test('says so where it is adopted', async () => {
    expect(unwrapped(await said(withMeter({ adopt: 'yes' })))).toMatch(/The measurement is the load here/);
  });
});

describe('--fall', () => {
  const text = demoTexts['propane-in-the-cabinet.json']!;

  test('asks for one fall, in any unit', async () => {
    expect(await said(text, '--fall', '4 K')).toMatch(/\n {2}by 4 K in +about [\d.]+ h/);
    expect(await said(text, '--fall', '7.2 °F', '--units', 'us')).toMatch(/\n {2}by 7\.2 °F in +about [\d.]+ h/);
    const { tank } = JSON.parse(await said(text, '--fall', '4 K', '--json')) as TankLoadAnswer;
    expect(tank.falls.map(({ by }) => by)).toEqual([4]);
  });

  test('a fall that is never reached is said to be so', async () => {
    expect(await said(text, '--fall', '30 K')).toMatch(/by 30 K in +never/);
  });

  test.each(['0 K', '-2 K', 'far', '4 m'])('refuses %s', async (fall) => {
    const { code, errors, output } = await answer(['load', '-', '--fall', fall], text);
    expect({ code, output }).toEqual({ code: 2, output: '' });
    expect(errors).toContain('--fall');
  });
});
