// `kettlefin cycle` beyond the plain cycle: lost pressure, heat exchanger, flow, words for the zero of enthalpy, a second
// cycle out of a file and the picture, which never replaces a file unasked.

import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { caution } from '../../src/cautions/index.ts';
import { referenceStateGiven } from '../../src/cli/cycle/reference-state.ts';
import { main } from '../../src/cli/main.ts';
import { textbookCycle } from '../../src/loop/index.ts';
import { plain } from './process.ts';
import { collected } from './streams.ts';

async function cycle(others: Readonly<Record<string, string>> = {}, flags: readonly string[] = [], input = '') {
  const usual = {
    refrigerant: 'R134a',
    evaporating: '-10 °C',
    condensing: '40 °C',
    superheat: '0 K',
    subcooling: '0 K',
    efficiency: '0.7',
  };
  const options = Object.entries({ ...usual, ...others }).filter(([, text]) => text !== '');
  const { streams, output, errors } = collected(input);
  const code = await main(['cycle', ...options.flatMap(([name, text]) => [`--${name}`, text]), ...flags], streams);
  return { code, output: plain(output()), errors: plain(errors()), raw: output() };
}

const unwrapped = (text: string) => text.replaceAll(/\s+/g, ' ');

const secondRequest = {
  refrigerant: 'R290',
  evaporating: 263.15,
  condensing: 313.15,
  superheat: 5,
  subcooling: 3,
  isentropicEfficiency: 0.7,
};

let folder = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'kettlefin-'));
  writeFileSync(join(folder, 'second.json'), JSON.stringify(secondRequest, null, 2));
});
afterAll(() => rmSync(folder, { recursive: true }));

describe('what is beyond the plain cycle', () => {
  // Çengel & Boles, 8th ed., example 11-2 (from memory of the source): 7.93 kW, 2.02 kW, COP 3.93, efficiency 0.939.
  test('lost pressure and a mass flow, as a textbook states them', async () => {
    const { code, output } = await cycle({
      evaporating: '',
      'evaporating-pressure': '0.15 MPa',
      'suction-pressure': '0.14 MPa',
      superheat: '',
      'suction-temperature': '-10 °C',
      condensing: '',
      'condensing-pressure': '0.8 MPa',
      efficiency: '',
      'discharge-temperature': '50 °C',
      'liquid-pressure': '0.72 MPa',
      subcooling: '',
      'liquid-temperature': '26 °C',
      'mass-flow': '3 kg/min',
      'reference-state': 'zero at -40 °C',
    });
    expect(code).toBe(0);
    expect(output).toMatch(/mass flow\s+50 g\/s\s+given/);
    expect(output).toMatch(/cooling capacity\s+7926 W/);
    expect(output).toMatch(/power of the shaft into the gas\s+2017 W\s+not electricity/);
    expect(output).toMatch(/cooling COP\s+3\.93/);
    expect(output).toMatch(/isentropic efficiency\s+0\.9374/);
    expect(output).toMatch(/pressure lost before the compressor\s+10 kPa/);
    expect(output).toMatch(/compressor\s+2\.34 kJ\/kg\s+117 W\s+5\.8 % of the work/);
    expect(output).toContain('counted with the condenser and the evaporator');
  });

  test('a heat exchanger: its states in order of flow, its heat, its loss, and what superheat means', async () => {
    const { output } = await cycle({ 'exchanger-effectiveness': '60 %' });
    const numbers = [...output.matchAll(/^ {2}(\d\S?) {2,3}\w/gm)].map((match) => match[1]);
    expect(numbers).toEqual(['1', '2s', '2', '3', '3′', '4', '4′']);
    expect(output).toMatch(/heat from the liquid to the suction gas\s+25\.92 kJ\/kg/);
    expect(output).toMatch(/1 {3}compressor inlet\s+20\.3 °C/);
    expect(output).toMatch(/3′ {2}expansion inlet\s+22\.1 °C/);
    expect(output).toMatch(/heat exchanger\s+2\.389 kJ\/kg/);
    expect(unwrapped(output)).toContain('0 K superheat out of the evaporator');
    expect(unwrapped(output)).toContain('Effectiveness counts on enthalpy');
  });

  test('tons of refrigeration in, and capacities in US units out', async () => {
    const { output } = await cycle({ 'cooling-capacity': '1.5 tons of refrigeration', units: 'us' });
    expect(output).toMatch(/cooling capacity\s+18.?000 BTU\/h/);
    expect(output).toMatch(/mass flow\s+[\d.]+ lb\/h\s+from the cooling capacity/);
  });

  test('a displacement alone names the volumetric efficiency that was assumed', async () => {
    const alone = await cycle({ displacement: '6 m3/h' });
    expect(alone.output).toMatch(/volumetric efficiency\s+1\s+assumed, since none was given/);
    const both = await cycle({ displacement: '6 m3/h', 'volumetric-efficiency': '80 %' });
    expect(both.output).toMatch(/volumetric efficiency\s+0\.8\s+given/);
    expect(both.output).toMatch(/gas drawn in, at the compressor inlet\s+4\.8 m³\/h/);
  });

  test('wet gas is told, not refused', async () => {
    const { code, output } = await cycle({ superheat: '', 'suction-quality': '0.9' });
    expect(code).toBe(0);
    expect(unwrapped(output)).toContain('gas of quality 0.9');
    expect(unwrapped(output)).toContain('Liquid enters the compressor');
  });
});

describe('refused in the words of the options', () => {
  test.each([
    [{ 'suction-pressure': '3 bar abs' }, /--suction-pressure: 3 bar abs .*the evaporator's 2\.006 bar abs/],
    [{ 'liquid-pressure': '1 bar abs' }, /--liquid-pressure: 1 bar abs .*flows through the valve/],
    [{ superheat: '60 K', 'exchanger-effectiveness': '0.5' }, /liquid is at 40 °C, the gas at 50 °C/],
    [{ superheat: '60 K', 'exchanger-effectiveness': '0.5', units: 'us' }, /liquid is at 104 °F, the gas at 122 °F/],
    [{ 'suction-temperature-after-exchanger': '50 °C' }, /at most the liquid's 40 °C/],
    [{ superheat: '', 'suction-temperature': '0 °C', 'exchanger-effectiveness': '0.5' }, /--evaporator-outlet-temp/],
    [{ superheat: '', 'suction-quality': '0.9', 'exchanger-effectiveness': '0.5' }, /dry gas out of the evaporator/],
    [
      { superheat: '', 'evaporator-outlet-temperature': '0 °C' },
      /--evaporator-outlet-temperature: 0 °C .*--suction-te/,
    ],
    [{ 'cooling-capacity': '5 kW', 'heating-capacity': '6 kW' }, /either --cooling-capacity or --heating-capacity/],
    [{ 'volumetric-efficiency': '0.8' }, /--volumetric-efficiency: 80 % .*a displacement beside it/],
    [{ efficiency: '', 'discharge-temperature': '35 °C' }, /--discharge-temperature: 35 °C .*at least as hot/],
    [{ 'liquid-temperature': '50 °C', subcooling: '' }, /--liquid-temperature: 50 °C .*bubble temperature, 40 °C/],
    [{ condensing: '-12 °C' }, /--condensing: −12 °C .*above the evaporator's −10 °C/],
    [{ 'reference-state': 'normal boilng point' }, /did you mean "normal boiling point"\?$/m],
    [{ diagram: 'p-h' }, /--diagram does not go .*--svg FILE beside it/],
    [{ svg: '-', diagram: 'pressure-entropy' }, /did you mean pressure-enthalpy\?$/m],
    [{ 'cooling-capacty': '5 kW' }, /no option --cooling-capacty\. .*Did you mean --cooling-capacity\?/],
  ])('%j', async (others, words) => {
    const { code, output, errors } = await cycle(others as Readonly<Record<string, string>>);
    expect(code).toBe(2);
    expect(output).toBe('');
    expect(errors).toMatch(words);
    expect(errors).not.toMatch(/ Pa\b|undefined|NaN|object Object/);
  });

  test('superheat beyond the equation has no solution', async () => {
    const { code, errors } = await cycle({ superheat: '900 K' });
    expect(code).toBe(3);
    expect(errors).toMatch(/--superheat: temperature 890 °C is outside .* to 181\.9 °C/);
  });
});

describe('the zero of enthalpy in words', () => {
  test.each([
    ['iir', 'iir'],
    ['200 kJ/kg at 0 °C', 'iir'],
    ['ASHRAE', 'ashrae'],
    ['zero at -40 °C', 'ashrae'],
    ['zero at −40 C', 'ashrae'],
    ['zero at -40 degrees Fahrenheit', 'ashrae'],
    ['-40 °C', 'ashrae'],
    ['normalBoilingPoint', 'normalBoilingPoint'],
    ['normal boiling point', 'normalBoilingPoint'],
    ['Zero at the normal boiling point', 'normalBoilingPoint'],
  ])('%s', (text, name) => {
    expect(referenceStateGiven(text)).toBe(name);
  });
});

describe('a second cycle', () => {
  test('each on its own, then side by side; different refrigerants count from different zeros', async () => {
    const { code, output } = await cycle({ second: join(folder, 'second.json') });
    expect(code).toBe(0);
    expect(output).toMatch(/^Cycle A\n.*R134a/);
    expect(output).toMatch(/\nCycle B\n.*R290/);
    const cop = [textbookCycle({ ...secondRequest }).heatingCop.toPrecision(4)];
    expect(output).toMatch(new RegExp(`heating COP\\s+[\\d.]+\\s+${cop[0]!.replace('.', '\\.')}\\n`));
    expect(output).toContain('count from different zeros');
  });

  test('as JSON, and from standard input', async () => {
    const { raw } = await cycle({ second: '-' }, ['--json'], JSON.stringify(secondRequest));
    const answer = JSON.parse(raw);
    expect(answer.caution).toBe(caution);
    expect(answer.refrigerant).toBe('R134a');
    expect(answer.second).toEqual(textbookCycle(secondRequest));
  });

  test.each([
    ['{"refrigerant":', /its text: .*one JSON object/],
    ['{"refrigerant":"R290"}', /evaporating is missing/],
    ['{"refrigerant":"R290","evaporatng":263}', /did you mean evaporating\?/],
    [JSON.stringify({ ...secondRequest, condensing: 250 }), /condensing: 250 .*263\.15 K/],
  ])('%s is refused under the name of the file', async (input, words) => {
    const { code, output, errors } = await cycle({ second: '-' }, [], input);
    expect({ code, output }).toEqual({ code: 2, output: '' });
    expect(errors).toMatch(/^In the second cycle, standard input: /);
    expect(errors).toMatch(words);
  });
});

describe('the picture', () => {
  test('goes to a new file, beside the report', async () => {
    const file = join(folder, 'new.svg');
    const { code, output } = await cycle({ svg: file });
    expect(code).toBe(0);
    expect(output).toContain(`The diagram is drawn in ${file}.`);
    const svg = readFileSync(file, 'utf8');
    expect(svg).toMatch(/^<svg xmlns="http:\/\/www\.w3\.org\/2000\/svg"/);
    expect(svg).toContain('Pressure and enthalpy of R134a');
    expect(svg.replaceAll(/<[^>]*>|\s+/g, ' ')).toContain('not permission to build');
  });

  test('replaces a file only when that is asked for', async () => {
    const file = join(folder, 'kept.svg');
    writeFileSync(file, 'mine');
    const refused = await cycle({ svg: file });
    expect(refused).toMatchObject({ code: 2, output: '' });
    expect(refused.errors).toMatch(/kept\.svg exists already and is left as it is\. .*--force/);
    expect(readFileSync(file, 'utf8')).toBe('mine');
    const forced = await cycle({ svg: file }, ['--force']);
    expect(forced.code).toBe(0);
    expect(readFileSync(file, 'utf8')).toMatch(/^<svg/);
  });

  test('stands alone on standard output, with both cycles in it', async () => {
    const second = join(folder, 'second.json');
    const { code, raw } = await cycle({ svg: '-', second, diagram: 'temperature-entropy', units: 'us' });
    expect(code).toBe(0);
    expect(raw).toMatch(/^<svg[\s\S]*<\/svg>\n$/);
    expect(raw).toContain('Temperature and entropy of A, R134a (whole), and B, R290 (broken)');
  });

  test.each([
    [{ svg: '/no/such/folder/a.svg' }, [], /lies in no folder that exists/],
    [{ svg: tmpdir() }, ['--force'], /is a folder/],
    [{ svg: '-' }, ['--json'], /--json does not go/],
    [{}, ['--force'], /--force does not go/],
  ])('%j %j is refused', async (others, flags, words) => {
    const { code, errors } = await cycle(others as Readonly<Record<string, string>>, flags);
    expect(code).toBe(2);
    expect(errors).toMatch(words);
  });

  test('a batch heeds no other option', async () => {
    const { streams, errors } = collected();
    expect(await main(['cycle', '--batch', '--force'], streams)).toBe(2);
    expect(errors()).toContain('--batch alone');
  });
});
