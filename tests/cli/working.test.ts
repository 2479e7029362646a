// `working`, and the hand-in and the table of `cycle`: what can be asked for, the chain behind one result as people and
// programs get it, where it begins, and what is refused.

import { all, create } from 'mathjs';
import { describe, expect, test } from 'vitest';
import { caution } from '../../src/cautions/index.ts';
import { main } from '../../src/cli/main.ts';
import { demoTexts } from '../designs.ts';
import { plain } from './process.ts';
import { collected } from './streams.ts';

const math = create(all!, {});
const file = 'frag-tank-cold-garage.json';

async function answer(args: readonly string[], input = demoTexts[file]!) {
  const { streams, output, errors } = collected(input);
  const code = await main(args, streams);
  return { code, output: plain(output()), errors: plain(errors()) };
}

describe('results that can be asked for', () => {
  test('by group, with name, words and value in the view', async () => {
    const metric = await answer(['working', '-']);
    expect(metric.code).toBe(0);
    for (const group of ['Tank', 'Machine', 'Year', 'Accounts'])
      expect(metric.output).toMatch(new RegExp(`^${group}$`, 'm'));
    expect(metric.output).toMatch(/tank\.load +heat the tank needs +about \d+ W/);
    const us = await answer(['working', '-', '--units', 'us']);
    expect(us.output).toMatch(/tank\.load +heat the tank needs +about \d+ BTU\/h/);
    expect(us.output).toMatch(/operating\.points\.compressorInlet\.enthalpy .* BTU\/lb/);
    expect(us.output.replaceAll(/\s+/g, ' ')).toContain(caution);
  });

  test('each of them has its chain', async () => {
    const { output } = await answer(['working', '-', '--json']);
    const { results } = JSON.parse(output);
    expect(results.length).toBeGreaterThan(300);
    for (const name of ['tank.load', 'operating.points.evaporatorInlet.quality', 'accounts.thisLoop.annualCost']) {
      expect(results.map((result: { name: string }) => result.name)).toContain(name);
      expect((await answer(['working', '-', name])).code).toBe(0);
    }
  });
});

describe('one result', () => {
  test('formula, numbers put in, result in SI and in the view, source, range, origin', async () => {
    const { code, output } = await answer(['working', '-', 'operating.compressor.massFlow', '--units', 'us']);
    expect(code).toBe(0);
    expect(output).toMatch(/T_c = T_water \+ dT_c\n {9}= [\d.]+ \+ 10\n {9}= 308\.98 K \(96\.5 °F\)/);
    expect(output).toMatch(
      /m = rho_f \* V_d \* N [^\n]*\n {7}= [\d.]+ \* 3\.76902e-6 \* [\d.]+ [^\n]*\n {7}= 0\.00\d+ kg\/s/,
    );
    expect(output).toMatch(/N +speed of the shaft: [\d.]+ 1\/s \([\d.]+ rpm\), from step \d+/);
    expect(output).toMatch(/Source: .*\n/);
    expect(output).toMatch(/Holds for: .*\n/);
    expect(output).toMatch(/machine\.compressor\.displacement +Volume swept per revolution: "0\.23 in3 ± 3 %"/);
    expect(output).toMatch(/and to what is assumed[\s\S]*exchangers\.condenserApproach/);
    expect(output.replaceAll(/\s+/g, ' ')).toContain(caution);
  });

  test('a coefficient of performance is no percentage', async () => {
    const { output } = await answer(['working', '-', 'plant.systemCop']);
    expect(output).toMatch(/COP_sys = .*\n *= [\d.]+ \/ \(.*\)\n *= \d\.\d{4}\n/);
  });

  test('what the models assume of a part that the design does not have is no beginning', async () => {
    const { code, output } = await answer(
      ['working', '-', 'plant.heatReachingWater'],
      demoTexts['propane-in-the-cabinet.json'],
    );
    expect(code).toBe(0);
    expect(output.slice(output.indexOf('It goes back to'))).not.toContain('engine.loopPumpShareToWater');
    const withPump = await answer(['working', '-', 'plant.heatReachingWater']);
    expect(withPump.output).toMatch(/engine\.loopPumpShareToWater +share of the loop pump/);
  });

  test('a place in the answer leads to the same', async () => {
    const byPlace = await answer(['working', '-', 'operating.massFlow']);
    expect(byPlace.output).toBe((await answer(['working', '-', 'operating.compressor.massFlow'])).output);
  });

  test('as JSON the printed numbers lead to the printed results', async () => {
    const { output } = await answer(['working', '-', 'plant.systemCop', '--json']);
    const { result, steps, beginnings } = JSON.parse(output);
    expect(result).toBe('plant.systemCop');
    expect(steps.at(-1).result).toBe(result);
    for (const step of steps) {
      const values = Object.fromEntries(
        step.inputs.map((input: { symbol: string; value: { text: string } }) => [
          input.symbol,
          Number(input.value.text),
        ]),
      );
      const found = Number(math.evaluate(step.expression, values));
      expect(found === 0 ? 0 : Number(found.toPrecision(5)), step.result).toBe(Number(step.value.text));
    }
    const given = beginnings.find((each: { path: string }) => each.path === 'machine.compressor.displacement');
    expect(given).toMatchObject({ isGiven: true, words: '"0.23 in3 ± 3 %"' });
  });
});

describe('what is refused', () => {
  test('a name that nobody computed, with the nearest', async () => {
    const { code, errors, output } = await answer(['working', '-', 'plant.sytemCop']);
    expect([code, output]).toEqual([2, '']);
    expect(errors).toContain('did you mean plant.systemCop?');
  });

  test('a field of the design: it is given, not computed', async () => {
    const { code, errors } = await answer(['working', '-', 'tank.waterTemperature']);
    expect(code).toBe(2);
    expect(errors).toContain('a field of the design');
  });

  test('two results, no file, a file that is no design', async () => {
    expect((await answer(['working', '-', 'tank.load', 'tank.loss'])).code).toBe(2);
    expect((await answer(['working'])).code).toBe(2);
    expect((await answer(['working', '-'], '{}')).code).toBe(2);
  });
});

describe('cycle', () => {
  const options = ['cycle', '--refrigerant', 'R290', '--evaporating', '14 °F', '--condensing', '45 °C'];
  const rest = ['--superheat', '5 K', '--subcooling', '5 K', '--efficiency', '0.6'];

  test('--working begins with what was typed and ends with every result', async () => {
    const { code, output } = await answer([...options, ...rest, '--working'], '');
    expect(code).toBe(0);
    expect(output).toMatch(/--evaporating +"14 °F"/);
    const headings = [...output.matchAll(/^[A-Z]{4}.*$/gm)].map(([line]) => line);
    expect(headings.slice(0, 6)).toEqual([
      'LEVELS',
      'STATE 1: compressor inlet',
      'STATE 2s: compressor outlet without losses',
      'STATE 2: compressor outlet',
      'STATE 3: condenser outlet',
      'STATE 4: evaporator inlet',
    ]);
    expect(output).toMatch(/COP_H = q_H \/ w\n +=.*\n +=/);
    expect(output).toContain('from --evaporating');
    expect(output.replaceAll(/\s+/g, ' ')).toContain(caution);
  });

  test('--csv is the table alone, the caution first', async () => {
    const { code, output } = await answer([...options, ...rest, '--csv', '--units', 'us'], '');
    expect(code).toBe(0);
    expect(output.split('\r\n')[0]).toBe(`# ${caution}`);
    expect(output).toContain('temperature [°F]');
  });

  test.each([
    ['--csv', '--working'],
    ['--json', '--working'],
    ['--json', '--csv'],
  ])('not %s with %s', async (one, other) => {
    const { code, errors } = await answer([...options, ...rest, one, other], '');
    expect(code).toBe(2);
    expect(errors).toContain('does not go with');
  });
});
