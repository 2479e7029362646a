// `cycle` and `state` with options: quantities as people write them, in both unit views, and every way of getting an option
// wrong, told in one sentence with the names that were typed.

import { describe, expect, test } from 'vitest';
import { refusalSchema } from '../../src/assess/schema/assessment-schema.ts';
import { caution } from '../../src/cautions/index.ts';
import { main } from '../../src/cli/main.ts';
import { textbookCycle } from '../../src/loop/index.ts';
import { derivedAt, refrigerant, stateAt } from '../../src/matter/refrigerants/index.ts';
import { plain } from './process.ts';
import { collected } from './streams.ts';

async function answer(...args: string[]) {
  const { streams, output, errors } = collected();
  const code = await main(args, streams);
  return { code, output: plain(output()), errors: plain(errors()) };
}

const cycleOptions = {
  refrigerant: 'R134a',
  evaporating: '-10 °C',
  condensing: '45 °C',
  superheat: '5 K',
  subcooling: '5 K',
  efficiency: '0.6',
};

/** The options of a usual cycle with others on top; an empty text leaves one out. */
function cycle(others: Readonly<Record<string, string>> = {}, ...flags: string[]) {
  const options = Object.entries({ ...cycleOptions, ...others }).filter(([, text]) => text !== '');
  return answer('cycle', ...options.flatMap(([name, text]) => [`--${name}`, text]), ...flags);
}

const unwrapped = (text: string) => text.replaceAll(/\s+/g, ' ');

describe('cycle', () => {
  test('for people, followed by the caution', async () => {
    const { code, output, errors } = await cycle();
    expect({ code, errors }).toEqual({ code: 0, errors: '' });
    expect(output).toMatch(/evaporating at −10 °C, condensing at 45 °C/);
    expect(output).toMatch(/heating COP\s+3\.243/);
    expect(unwrapped(output).endsWith(`${caution} `)).toBe(true);
  });

  test('in US units, typed in either', async () => {
    const { output } = await cycle({ evaporating: '14 °F', superheat: '9 °F', units: 'us' });
    expect(output).toMatch(/evaporating at 14 °F, condensing at 113 °F/);
    expect(output).toMatch(/heating COP\s+3\.243/);
  });

  test('as JSON: the keys of a batch answer and the caution', async () => {
    const { output } = await cycle({}, '--json');
    const request = {
      refrigerant: 'R134a',
      evaporating: 263.15,
      condensing: 318.15,
      superheat: 5,
      subcooling: 5,
      isentropicEfficiency: 0.6,
    };
    expect(JSON.parse(output)).toEqual({ caution, ...textbookCycle(request) });
  });

  test('by pressures, gauge where the altitude is given', async () => {
    const gauge = { evaporating: '', condensing: '', altitude: '0 m' };
    const { code, output } = await cycle({
      ...gauge,
      'evaporating-pressure': '14.4 psig',
      'condensing-pressure': '153.5 psig',
    });
    expect(code).toBe(0);
    expect(output).toMatch(/evaporating at −10 °C, condensing at 45 °C/);
    const without = await cycle({ ...gauge, altitude: '', 'evaporating-pressure': '14.4 psig' });
    expect(without).toMatchObject({ code: 2, output: '' });
    expect(without.errors).toMatch(/--evaporating-pressure: "14.4 psig" is not accepted\. .*--altitude/);
  });

  test('by temperatures in place of differences', async () => {
    const { code, output } = await cycle({
      superheat: '',
      subcooling: '',
      'suction-temperature': '-5 °C',
      'liquid-temperature': '40 °C',
    });
    expect(code).toBe(0);
    expect(output).toMatch(/heating COP\s+3\.243/);
  });

  test.each([
    [{ condensing: '120 °C' }, 3, /--condensing 120 °C is outside .* to 101\.1 °C\. Above the critical point/],
    [{ condensing: '102 °C', units: 'us' }, 3, /--condensing 215\.6 °F is outside .* to 213\.9 °F/],
    [{ evaporating: '-200 °C' }, 3, /temperature −200 °C is outside −103\.3 °C/],
    [{ efficiency: '0.0001' }, 3, /compressor outlet: enthalpy/],
    [{ evaporating: '50 °C' }, 2, /--condensing: 45 °C is not accepted\. Expected above the evaporator's 50 °C/],
    [{ evaporating: '45 °C' }, 2, /--condensing: 45 °C is not accepted/],
    [{ efficiency: '' }, 2, /--efficiency is missing\. Expected --efficiency or --discharge-temperature/],
    [{ refrigerant: '' }, 2, /--refrigerant is missing/],
    [{ refrigerant: 'R1134a' }, 2, /R1134a is not accepted\. .*the nearest is R134a/],
    [{ refrigerant: '__proto__' }, 2, /__proto__ is not accepted/],
    [{ 'evaporating-pressure': '2 bar' }, 2, /Expected either --evaporating or --evaporating-pressure, not both/],
    [{ evaporating: '-10 to -5 °C' }, 2, /one value, not a range/],
    [{ evaporating: '-10' }, 2, /--evaporating: "-10" is not accepted\. .*°C, °F, K/],
    [{ evaporating: '-10 parsec' }, 2, /--evaporating: "-10 parsec"/],
    [{ superheat: '-5 K' }, 2, /--superheat: −5 K is not accepted\. .*0 or above/],
    [{ efficiency: '120 %' }, 2, /--efficiency: 120 % is not accepted/],
    [{ subcooling: '500 K' }, 2, /--subcooling: 500 K is not accepted/],
    [{ efficiency: '', 'discharge-temperature': '20 °C' }, 2, /--discharge-temperature: 20 °C is not accepted/],
    [{ 'reference-state': 'mine' }, 2, /iir, ashrae, normalBoilingPoint/],
    [{ units: 'imperial' }, 2, /--units: imperial is not accepted\. Expected metric or us/],
    [{ temperatur: '3 K' }, 2, /There is no option --temperatur\. /],
  ] as const)('%j exits with %d and says so', async (others, expectedCode, words) => {
    const { code, output, errors } = await cycle(others);
    expect(code).toBe(expectedCode);
    expect(output).toBe('');
    expect(errors).toMatch(words);
    expect(errors).not.toMatch(/ Pa\b|\d K\b(?<!5 K|500 K)|undefined|NaN|object Object/);
  });
});

describe('state', () => {
  const state = (...options: string[]) => answer('state', '--refrigerant', 'R134a', ...options);

  // Saturation pressure of R134a at 20 °C: R. Tillner-Roth, H. D. Baehr (1994), 0.57171 MPa.
  test('for people, followed by the caution', async () => {
    const { code, output } = await state('--temperature', '20 °C', '--quality', '1');
    expect(code).toBe(0);
    expect(output).toMatch(/^R134a, saturated vapour\n {2}temperature {2,}20 °C\n {2}pressure {2,}5\.717\d* bar abs/);
    expect(unwrapped(output).endsWith(`${caution} `)).toBe(true);
  });

  test('a quality inside the dome of a blend goes with a pressure', async () => {
    const { code, errors } = await answer(
      'state',
      '--refrigerant',
      'R407C',
      '--temperature',
      '20 °C',
      '--quality',
      '0.4',
    );
    expect(code).toBe(2);
    expect(errors).toMatch(
      /^--quality: 40 % is not accepted\. Expected 0 or 1 with a temperature, or pressure and quality/,
    );
  });

  test('a temperature just beyond a limit does not read like the limit', async () => {
    const { errors } = await answer('state', '--refrigerant', 'R744', '--temperature', '31 °C', '--quality', '1');
    expect(errors).toMatch(/^--temperature 31 °C is outside −56\.56 °C to 30\.98 °C\./);
  });

  test('in US units with gauge pressure and the air pressure used', async () => {
    const { output } = await state('--pressure', '13 psig', '--quality', '1', '--altitude', '0 m', '--units', 'us');
    expect(output).toMatch(/pressure\s+27\.69\d* psia\n\s+above the air’s\s+13 psig\n\s+air pressure\s+14\.696 psia/);
    expect(output).toMatch(/BTU\/lb/);
  });

  test('as JSON: the keys of a batch answer, what is derived, and the caution', async () => {
    const { output } = await state('--temperature', '293.15 K', '--quality', '1', '--json');
    const fluid = refrigerant('R134a');
    const expected = stateAt(fluid, { temperature: 293.15, quality: 1 });
    const parsed = JSON.parse(output);
    expect(parsed).toMatchObject({ caution, refrigerant: 'R134a', ...expected });
    expect(parsed.derived).toEqual(derivedAt(fluid, expected));
    expect(Object.keys(parsed).slice(0, 5)).toEqual(['caution', 'refrigerant', 'temperature', 'pressure', 'density']);
  });

  test('viscosity and conductivity for people: what is an estimate, and what is known of its truth', async () => {
    const { output } = await answer(
      ...['state', '--refrigerant', 'R152a', '--temperature', '20 °C', '--pressure', '2 bar'],
    );
    expect(output).toMatch(/viscosity +\d+\.\d+ µPa s, estimate\n {2}conductivity +0\.01\d+ W\/\(m K\)\n/);
    expect(output).toMatch(/ {2}Viscosity: .*9 %/s);
    expect((await state('--temperature', '20 °C', '--pressure', '2 bar')).output).not.toMatch(/estimate/);
  });

  test('as JSON: the methods of transport properties', async () => {
    const { output } = await state('--temperature', '293.15 K', '--pressure', '2 bar', '--json');
    const { methods, extrapolated, viscosity, conductivity } = JSON.parse(output);
    expect(methods.viscosity).toMatchObject({ method: 'ownCorrelation', isEstimate: false });
    expect(extrapolated).toEqual([]);
    expect(viscosity).toBeGreaterThan(1e-6);
    expect(conductivity).toBeGreaterThan(1e-3);
  });

  test('inside the dome nothing is derived', async () => {
    const { output } = await state('--temperature', '293.15 K', '--quality', '0.5', '--json');
    expect(JSON.parse(output).derived).toBeNull();
    expect((await state('--temperature', '293.15 K', '--quality', '0.5')).output).not.toMatch(/Joule/);
  });

  test('derived properties for people, in the units of the view', async () => {
    const options = ['--temperature', '20 °C', '--pressure', '2 bar'];
    const metric = (await state(...options)).output;
    const us = (await state(...options, '--units', 'us')).output;
    const coefficient = (text: string, unit: string) =>
      Number(new RegExp(`Joule–Thomson coefficient +(\\S+) ${unit}`).exec(text)?.[1]);
    // 1 K/bar is 1.8 °F per 14.5038 psi.
    expect(coefficient(us, '°F/psi') / coefficient(metric, 'K/bar')).toBeCloseTo(1.8 / 14.5038, 4);
    expect(metric).toMatch(/isentropic exponent +1\.\d+\n/);
  });

  test.each([
    [['--temperature', '700 °C', '--pressure', '1 bar'], 3, /--temperature 700 °C is outside −103\.3 °C to 181\.9 °C/],
    [['--temperature', '110 °C', '--quality', '0.5'], 3, /110 °C is outside .* to 101\.1 °C/],
    [['--pressure', '1 bar', '--enthalpy', '9000 kJ/kg'], 3, /--enthalpy 9000 kJ\/kg is outside/],
    [['--temperature', '20 °C'], 2, /do not make a pair: temperature/],
    [[], 2, /A pair of properties is missing/],
    [['--temperature', '20 °C', '--pressure', '1 bar', '--quality', '1'], 2, /do not make a pair/],
    [['--enthalpy', '400 kJ/kg', '--quality', '1'], 2, /do not make a pair/],
    [['--enthalpy', '400 kJ/kg', '--entropy', '0.1 kJ/(kg K)'], 3, /--entropy 0\.1 kJ\/\(kg K\) is outside/],
    [['--temperature', '1.7e308 K', '--pressure', '1 bar'], 3, /--temperature 1\.7e308 (K|°C) is outside/],
    [['--pressure', '1 bar', '--quality', '120 %'], 2, /--quality: 120 % is not accepted/],
    [['--pressure', '-1 bar', '--quality', '1'], 2, /--pressure/],
    [['--temperature', '-300 °C', '--quality', '1'], 2, /above −273\.15 °C/],
  ] as const)('%j exits with %d and says so', async (options, expectedCode, words) => {
    const { code, output, errors } = await state(...options);
    expect(code).toBe(expectedCode);
    expect(output).toBe('');
    expect(errors).toMatch(words);
  });
});

describe('any command', () => {
  test.each([
    [['cycle', 'R134a'], /"R134a" is more than this command takes/],
    [['cycle', '--batch', '--csv'], /--batch does not go with what else is given/],
    [['cycle', '--units', 'us', '--units', 'us'], /--units is given twice/],
    [['cycle', '--refrigerant'], /--refrigerant has no value/],
    [['cycle', '--refrigerant', '--csv'], /--refrigerant has no value/],
    [['cycle', '--json=1'], /--json: 1 is not accepted/],
    [['state', '-j'], /There is no option -j/],
    [['check'], /FILE is missing/],
    [['check', ''], /FILE is missing/],
    [['check', 'a.json', 'b.json'], /"b\.json" is more/],
    [['check', '--unit', 'us', 'a.json'], /There is no option --unit\. .*Did you mean --units\?/],
    [['chek', 'a.json'], /no command "chek"\. .*Did you mean "check"\?/],
    [['__proto__'], /no command/],
  ])('%j is unusable input', async (args, words) => {
    const { code, output, errors } = await answer(...args);
    expect({ code, output }).toEqual({ code: 2, output: '' });
    expect(errors).toMatch(words);
  });

  test.each([
    [['cycle', '--batch', '--json'], '--batch', 'bothGiven'],
    [['cycle', '--refrigerant', '--json'], '--refrigerant', 'valueMissing'],
    [['cycle', '--refrigerant', 'R134a', '--efficiency', '2', '--json'], '--efficiency', 'badInput'],
    [
      ['state', '--refrigerant', 'R999', '--temperature', '20 °C', '--quality', '1', '--json'],
      '--refrigerant',
      /unknown/,
    ],
    [['state', '--refrigerant', 'R134a', '--pressure', '1 bar', '--quality', '2', '--json'], '--quality', 'badInput'],
    [['check', '--json'], 'FILE', 'missing'],
    [['check', '--json', '--unit', 'us'], '--unit', 'unknownOption'],
    [['compare', '--json', '--fluids', '\u001b[31mR1,R134a'], '--evaporating', 'missing'],
    [['brief', 'a.json', '--json', '--force'], '--force', 'bothGiven'],
  ])('%j tells programs too what cannot be used', async (args, path, code) => {
    const refused = await answer(...args);
    expect(refused.code).toBe(2);
    const answered = refusalSchema.parse(JSON.parse(refused.output));
    if (answered.error.kind !== 'unusable') throw new Error(answered.error.kind);
    expect(answered.caution).toBe(caution);
    expect(answered.error.problems).toEqual([
      expect.objectContaining({ path, code: typeof code === 'string' ? code : expect.stringMatching(code) }),
    ]);
    expect(refused.errors).toContain(plain(answered.error.problems[0]!.message));
  });

  test.each([
    ['state', '--refrigerant', 'R134a', '--temperature', '110 °C', '--quality', '1', '--json'],
    ['cycle', ...Object.entries(cycleOptions).flatMap(([name, text]) => [`--${name}`, text]), '--json'],
  ])('%s without a solution tells programs so', async (...args) => {
    const refused = await answer(...args.map((arg) => (arg === '45 °C' ? '120 °C' : arg)));
    expect(refused.code).toBe(3);
    const { error } = refusalSchema.parse(JSON.parse(refused.output));
    expect(error.kind).toBe('noSolution');
  });

  test('an altitude outside the standard atmosphere is unusable input', async () => {
    const high = await cycle({ altitude: '1e308 m' });
    expect(high.code).toBe(2);
    expect(high.errors).toMatch(
      /^--altitude: "1e308 m" is not accepted\. Expected an altitude from -5000 to 11000 m\./,
    );
  });

  test('without a command, the list of commands stands on the error stream', async () => {
    const { code, output, errors } = await answer();
    expect({ code, output }).toEqual({ code: 2, output: '' });
    expect(errors).toMatch(
      /check .*\n {2}load .*\n {2}machine .*\n {2}settle .*\n {2}fit .*\n {2}working .*\n {2}compare .*\n {2}cycle .*\n {2}state .*\n {2}brief /,
    );
  });

  test('--help lists what exists, with the caution', async () => {
    const { code, output } = await answer('--help');
    expect(code).toBe(0);
    expect(unwrapped(output)).toContain(caution);
    const names = [...output.matchAll(/^ {2}([a-z]+) {2,}/gm)].map((match) => match[1]!);
    expect(names).toEqual([
      'check',
      'load',
      'machine',
      'settle',
      'fit',
      'working',
      'compare',
      'cycle',
      'state',
      'brief',
    ]);
    for (const name of names) {
      const help = await answer(name, '--help');
      expect(help.code).toBe(0);
      expect(help.output).toMatch(new RegExp(`^kettlefin ${name} `));
      expect(help.output).toMatch(/Exit codes: 0/);
      expect(await answer('help', name)).toEqual(help);
    }
  });

  test('every option that a help text names is one, and every option is named', async () => {
    for (const name of ['check', 'load', 'cycle', 'state']) {
      const { output } = await answer(name, '--help');
      const named = new Set([...output.matchAll(/--([a-z-]+)/g)].map((match) => match[1]!));
      const { errors } = await answer(name, '--no-such-option');
      const accepted = new Set([...errors.matchAll(/--([a-z-]+)/g)].map((match) => match[1]!));
      accepted.delete('no-such-option');
      accepted.delete('help');
      named.delete('help');
      expect(named).toEqual(accepted);
    }
  });
});
