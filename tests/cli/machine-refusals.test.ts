// Bad and partial descriptions of a machine through the command line: what is refused, with which code, at which place, in which words;
// what is only told; and what is taken as evidence.
// Reference: four calorimeter rows of F. Fortkamp 2022 (tests/reference/parts/compressor-r600a.json), written in other units by the
// conversions of NIST SP 811 (1 lb = 0.45359237 kg, 1 Btu_IT = 1055.05585 J, 1 kcal_IT = 4186.8 J, 1 hp = 745.699872 W).

import { describe, expect, test } from 'vitest';
import { main } from '../../src/cli/main.ts';
import { alone, fortkamp, type Part } from '../assess/studies/machine/machines.ts';
import { changedDesign, demoTexts } from '../designs.ts';
import dataSet from '../reference/parts/compressor-r600a.json';
import { plain } from './process.ts';
import { collected } from './streams.ts';

const reef = demoTexts['reef-in-the-study.json']!;
const pound = 0.45359237;
const btuPerHour = 1055.05585 / 3600;
const kilocaloriePerHour = 4186.8 / 3600;
const horsepower = 745.699872;

async function answer(args: readonly string[], input: string) {
  const { streams, output, errors } = collected(input);
  const code = await main(args, streams);
  return { code, output: plain(output()), errors: plain(errors()).replaceAll(/\s+/g, ' ') };
}

const at = ['machine', '-', '--at', '-10, 35'] as const;

async function refused(compressor: Part, args: readonly string[] = at) {
  const { code, errors } = await answer(args, alone(compressor));
  // What was typed is quoted.
  expect(errors.replaceAll(/"[^"]*"/g, '')).not.toMatch(/undefined|NaN|Infinity|\[object/);
  return { code, errors };
}

async function accepted(compressor: Part, args: readonly string[] = at, more: Part = {}) {
  const { code, output, errors } = await answer([...args, '--json'], alone(compressor, more));
  expect({ code, errors: code === 0 ? '' : errors }).toEqual({ code: 0, errors: '' });
  return { told: JSON.parse(output), errors };
}

const rows = dataSet.rows as unknown as readonly Row[];
type Row = readonly [te: number, capacity: number, power: number, flow: number];

function table(head: string, cells: (row: Row) => readonly number[], more: Part = {}): Part {
  const lines = rows.map((row) =>
    cells(row)
      .map((cell) => cell.toPrecision(6))
      .join(';'),
  );
  const [{ basis, frequency }] = fortkamp.tables;
  return { madeFor: 'R600a', tables: [{ table: [head, ...lines].join('\n'), basis, frequency }], ...more };
}

const holding = {
  temperatureUnit: 'celsius',
  basis: { suction: { kind: 'superheat', superheat: '10 K' } },
  evaporatingRange: '-25 to -20 °C',
  condensingRange: '50 to 55 °C',
  frequency: '50 Hz',
};

const degrees = 't_e °C;t_c °C;';
const typed = { displacement: '13.54 cm3' };

describe('a table whose head names another unit than its numbers are in', () => {
  const fahrenheit = (celsius: number) => 1.8 * celsius + 32;

  test.each<[string, Part, RegExp]>([
    ['flow kg/h headed lb/h', table(`${degrees}m lb/h;P W`, ([t, , p, m]) => [t, 35, m, p]), /massFlow in kg\/h/],
    [
      'the same with a displacement',
      table(`${degrees}m lb/h;P W`, ([t, , p, m]) => [t, 35, m, p], typed),
      /massFlow in kg\/h/,
    ],
    [
      'flow lb/h headed kg/h',
      table(`${degrees}m kg/h;P W`, ([t, , p, m]) => [t, 35, m / pound, p]),
      /massFlow in lb\/h/,
    ],
    [
      'flow alone, with a displacement',
      table(`${degrees}m kg/h`, ([t, , , m]) => [t, 35, m / pound], typed),
      /massFlow in lb\/h/,
    ],
    ['flow g/s headed kg/h', table(`${degrees}m kg/h;P W`, ([t, , p, m]) => [t, 35, m / 3.6, p]), /massFlow in g\/s/],
    [
      'capacity BTU/h headed W',
      table(`${degrees}Q W;P W`, ([t, q, p]) => [t, 35, q / btuPerHour, p]),
      /capacity in BTU\/h/,
    ],
    ['capacity W headed BTU/h', table(`${degrees}Q BTU/h;P W`, ([t, q, p]) => [t, 35, q, p]), /capacity in W/],
    ['capacity kW headed W', table(`${degrees}Q W;P W`, ([t, q, p]) => [t, 35, q / 1000, p]), /capacity in kW/],
    ['power kW headed W', table(`${degrees}Q W;P W`, ([t, q, p]) => [t, 35, q, p / 1000]), /power in kW/],
    ['power W headed kW', table(`${degrees}Q W;P kW`, ([t, q, p]) => [t, 35, q, p]), /power in W/],
    ['power hp headed W', table(`${degrees}Q W;P W`, ([t, q, p]) => [t, 35, q, p / horsepower]), /power in hp/],
    ['power alone kW', table(`${degrees}P kW`, ([t, , p]) => [t, 35, p]), /power in W/],
    [
      'capacity BTU/h headed W beside a flow',
      table(`${degrees}Q W;m kg/h;P W`, ([t, q, p, m]) => [t, 35, q / btuPerHour, m, p]),
      /capacity 3\.4\d times what the flow beside it gives.*capacity in BTU\/h/,
    ],
    ['°C headed °F', table('t_e °F;t_c °F;Q W;P W', ([t, q, p]) => [t, 35, q, p]), /evaporating in °C/],
    [
      'kelvins headed °C',
      table(`${degrees}Q W;P W`, ([t, q, p]) => [t + 273.15, 308.15, q, p]),
      /evaporating in K and/,
    ],
    ['mA headed A', table(`${degrees}P W;I A`, ([t, , p]) => [t, 35, p, (p / 115 / 0.7) * 1000]), /mA for A\?/],
    [
      'power above volts times amperes',
      table(`${degrees}P W;I A`, ([t, , p]) => [t, 35, p, 0.4]),
      /at most volts times/,
    ],
  ])('%s is refused with the unit that would make sense', async (_, compressor, words) => {
    const { code, errors } = await refused(compressor);
    expect(errors).toMatch(words);
    expect(errors).toContain('machine.compressor.tables.0');
    expect(code).toBe(2);
  });

  test.each<[string, Part, RegExp]>([
    [
      '°F headed °C',
      table(`${degrees}Q W;P W`, ([t, q, p]) => [fahrenheit(t), 95, q, p], typed),
      /evaporating in °F and .*condensing in °F/,
    ],
    [
      'capacity kcal/h headed W beside a flow: another liquid would do the same',
      table(`${degrees}Q W;m kg/h;P W`, ([t, q, p, m]) => [t, 35, q / kilocaloriePerHour, m, p]),
      /capacity 0\.86\d* times what the flow beside it gives/,
    ],
  ])('%s is told or refused', async (_, compressor, words) => {
    const { code, output, errors } = await answer(at, alone(compressor));
    expect([0, 2]).toContain(code);
    expect(`${errors} ${output.replaceAll(/\s+/g, ' ')}`).toMatch(words);
  });

  test('the rows in their own units, in any unit, are met and nothing is said', async () => {
    for (const compressor of [
      table(`${degrees}m lb/h;P W`, ([t, , p, m]) => [t, 35, m / pound, p], typed),
      table(`${degrees}Q kcal/h;P W`, ([t, q, p]) => [t, 35, q / kilocaloriePerHour, p]),
      table('t_e °F;t_c °F;Q BTU/h;m kg/h;P kW', ([t, q, p, m]) => [fahrenheit(t), 95, q / btuPerHour, m, p / 1000]),
    ]) {
      const { told } = await accepted(compressor);
      expect(Math.abs(told.capacity.likely / 570 - 1)).toBeLessThan(0.05);
      expect(told.findings).toEqual([]);
    }
  });

  test('unusable input has one exit code whatever asks', async () => {
    const wrong = table(`${degrees}Q kW;P W`, ([t, q, p]) => [t, 35, q, p]);
    for (const args of [at, ['settle', '-', '--source', '10', '--water', '25'], ['fit', '-']]) {
      expect((await refused(wrong, args)).code).toBe(2);
    }
    const { code, output } = await answer(
      ['check', '-', '--json'],
      changedDesign(reef, { 'machine.compressor': wrong }),
    );
    expect(code).toBe(2);
    expect(JSON.parse(output).error).toMatchObject({
      kind: 'unusable',
      problems: [{ code: 'implausibleUnit', path: 'machine.compressor.tables.0.capacity' }],
    });
  });
});

describe('ratings', () => {
  const named = { kind: 'named', point: 'ashraeLow' };
  const rated = (more: Part, machine: Part = {}) => ({
    madeFor: 'R134a',
    ratings: [{ at: named, frequency: '50 Hz', ...more }],
    ...machine,
  });
  const width = ({ low, high }: { low: number; high: number }) => Math.log(high / low);

  test('a current alone is evidence of power, as wide as the power factor is', async () => {
    const args = ['machine', '-', '--at', '-23.3, 54.4'];
    const { told: bare } = await accepted({ madeFor: 'R134a' }, args);
    const { told } = await accepted(rated({ current: '0.9 A', voltage: '230 V' }), args);
    expect(told.residuals).toMatchObject([{ quantity: 'current', given: 0.9 }]);
    expect(width(told.power)).toBeLessThan(0.6 * width(bare.power));
    // Power factors of small single-phase motors: 0.4 to 1 (common range, no source).
    expect(told.power.low / (230 * 0.9)).toBeGreaterThan(0.3);
    expect(told.power.high / (230 * 0.9)).toBeLessThan(1.1);
    expect(width(told.power)).toBeGreaterThan(0.15);
  });

  const four = { kind: 'conditions', evaporating: '-10 °C', condensing: '45 °C', returnGas: '20 °C', liquid: '40 °C' };

  test.each<[string, Part, RegExp]>([
    ['of nothing', rated({}), /capacity is missing.*power or a current/],
    ['BTU/h typed for W', rated({ capacity: '160 BTU/h', power: '120 W' }), /capacity in W in place of BTU\/h/],
    [
      'W typed for BTU/h, with less power than isentropic compression takes',
      rated({ capacity: '546 W', power: '120 W' }),
      /ratings\.0\.capacity: overall efficiency 1\.\d.*capacity in BTU\/h in place of W \(efficiency 0\.4/,
    ],
    [
      'the same of a power in kW',
      rated({ capacity: '8 kW', power: '5.9 W' }),
      /ratings\.0: overall efficiency \d{3}.*power in kW in place of W/,
    ],
    ['more watts than volts times amperes', rated({ power: '120 W', current: '0.2 A', voltage: '230 V' }), /46 W/],
    [
      'liquid colder than it evaporates',
      rated({ at: { ...four, liquid: '-20 °C' }, power: '120 W' }),
      /at\.liquid: "-20 °C".*at least the evaporating temperature, −10 °C/,
    ],
    [
      'condensing above the critical point',
      rated({ at: { ...four, condensing: '90 °C' }, power: '300 W' }, { madeFor: 'R410A' }),
      /ratings\.0\.at\.condensing 90 °C is outside −73\.1 °C to 71\.3 °C: where R410A has liquid and vapour/,
    ],
  ])('%s', async (_, compressor, words) => {
    const { code, errors } = await refused(compressor);
    expect(errors).toMatch(words);
    expect(code).toBe(2);
  });

  test('the range is said in the units of the view', async () => {
    const hot = rated({ at: { ...four, condensing: '90 °C' }, power: '300 W' }, { madeFor: 'R410A' });
    expect((await refused(hot, [...at, '--units', 'us'])).errors).toMatch(/condensing 194 °F is outside .*°F/);
  });
});

describe('a level above the critical point', () => {
  const machine = {
    madeFor: 'R134a',
    ratings: [{ at: { kind: 'named', point: 'ashraeLow' }, capacity: '160 W', power: '120 W', frequency: '50 Hz' }],
  };

  test('is asked of nobody who asks below it: R744 critical at 30.98 °C, the rating at 54.4 °C', async () => {
    const { told } = await accepted(machine, ['machine', '-', '--at', '-10, 20', '--refrigerant', 'R744']);
    expect(told.at.refrigerant).toBe('R744');
    expect(told.at.subcooling).toBeCloseTo(54.4 - 32.2, 1);
  });

  test('takes no other point with it', async () => {
    const args = ['machine', '-', '--at', '-10, 20', '--at', '-10, 40', '--refrigerant', 'R744'];
    const { told } = await accepted(machine, args);
    expect(told.points[0].capacity.unit).toBe('W');
    expect(told.points[1]).toMatchObject({ at: { refrigerant: 'R744' }, error: { code: 'condensingAboveCritical' } });
  });

  test('alone says where the level is from', async () => {
    const { code, errors } = await refused(machine, ['machine', '-', '--at', '-10, 40', '--refrigerant', 'R744']);
    expect(code).toBe(3);
    expect(errors).toMatch(/condensing temperature 40 °C .* 31 °C.*--at.*tank\.waterTemperature/);
  });
});

describe('domes', () => {
  test.each<[Part, RegExp]>([
    [{ domeHeight: '1 m' }, /domeHeight: "1 m".*the domes known here measure 13 cm to 35 cm/],
    [{ domeDiameter: '1 m' }, /domeDiameter: "1 m".*measure 10 cm to 24 cm/],
    [{ domeHeight: '40 cm', domeDiameter: '30 cm' }, /does not go with .*those sweep .* a dome of this size/],
  ])('%o is refused', async (dome, words) => {
    const { code, errors } = await refused({ appliance: 'householdRefrigerator', ...dome });
    expect(errors).toMatch(words);
    expect(code).toBe(2);
  });

  test.each<Part>([
    {},
    { domeHeight: '30 cm', domeDiameter: '20 cm' },
    { domeHeight: '11 cm', domeDiameter: '9 cm' },
    { madeFor: 'R600a', nameplate: { oil: 'mineral' } },
    { appliance: 'coldRoomUnit' },
  ])('%o has a range above zero', async (compressor) => {
    for (const pair of ['-10, 45', '-20, 45', '0, 40']) {
      const { told } = await accepted(compressor, ['machine', '-', '--at', pair]);
      for (const name of ['capacity', 'power', 'massFlow', 'current', 'heat']) {
        expect(told[name].low, `${name} at ${pair}`).toBeGreaterThan(0);
      }
    }
  });
});

describe('what contradicts itself', () => {
  const plate = (nameplate: Part, more: Part = {}) => ({ madeFor: 'R134a', nameplate, ...more });

  test.each<[Part, RegExp]>([
    [plate({ voltage: '230 V', ratedCurrent: '0.6 A', power: '300 W' }), /nameplate\.power: "300 W".*volts times amps/],
    [plate({ ratedCurrent: '1.2 A', lockedRotorCurrent: '1 A' }), /lockedRotorCurrent: "1 A".*rated current of 1\.2 A/],
    [{ coefficients: [{ ...holding, of: 'massFlow', unit: 'kg/h', values: '1e308 1 1 1 1 1 1 1 1 1' }] }, /"1e308"/],
    [{ coefficients: [{ ...holding, of: 'massFlow', unit: 'kg/h', values: '1 1 1 1 1 NaN 1 1 1 1' }] }, /"NaN"/],
  ])('%o is refused', async (compressor, words) => {
    const { code, errors } = await refused(compressor);
    expect(errors).toMatch(words);
    expect(code).toBe(2);
  });

  test.each<[Part, RegExp]>([
    [plate({ oil: 'mineral' }), /nameplate\.oil: "mineral" is unusual: machines for R134a .* polyolester/],
    [plate({ horsepower: '1/2 hp', power: '60 W' }), /"1\/2 hp" is usually the name of a much larger machine/],
    [plate({ horsepower: '1/8 hp', power: '2000 W' }), /"1\/8 hp" is usually the name of a much smaller machine/],
  ])('%o is accepted and told', async (compressor, words) => {
    expect((await accepted(compressor)).errors).toMatch(words);
  });

  test('a horsepower that goes with the power is not spoken of', async () => {
    expect((await accepted(plate({ horsepower: '1/5 hp', power: '180 W' }))).errors).toBe('');
  });

  test('application and rating point', async () => {
    const rating = { at: { kind: 'named', point: 'ashraeLow' }, capacity: '160 W', power: '120 W', frequency: '50 Hz' };
    const { errors } = await accepted({ madeFor: 'R134a', ratings: [rating] }, at, { application: 'high' });
    expect(errors).toMatch(/machine\.application: "high" back pressure stands beside a rating at ASHRAE low/);
  });

  test('a locked-rotor current of fifty times, a capacity far below the displacement', async () => {
    const locked = await accepted(plate({ voltage: '230 V', ratedCurrent: '0.6 A', lockedRotorCurrent: '30 A' }));
    expect(codesOf(locked.told)).toContain('nameplateContradictsItself');
    const rating = { at: { kind: 'named', point: 'ashraeLow' }, capacity: '60 W', power: '60 W', frequency: '50 Hz' };
    const small = await accepted({ madeFor: 'R134a', displacement: '20 cm3', ratings: [rating] });
    expect(codesOf(small.told)).toContain('numbersUnusual');
  });
});

function codesOf({ findings }: { readonly findings: readonly { readonly code: string }[] }): readonly string[] {
  return findings.map(({ code }) => code);
}
