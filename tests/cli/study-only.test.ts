// A refrigerant of which class, flammability, limits or law was not read in a source: every command that answers about it says
// so, and no design on it is cleared. One whose entry is sourced is answered without that. Above its critical temperature
// carbon dioxide does not condense: an answer in words, not a crash.

import { describe, expect, test } from 'vitest';
import { main } from '../../src/cli/main.ts';
import { isStudyOnly, refrigerantNames } from '../../src/matter/refrigerants/index.ts';
import { demoTexts } from '../designs.ts';
import { plain } from './process.ts';
import { collected } from './streams.ts';

const said = 'is for study only: no source that was read confirms';

async function answer(args: readonly string[], input = '') {
  const { streams, output, errors } = collected(input);
  const code = await main(args, streams);
  return { code, output: output(), text: plain(`${output()} ${errors()}`).replaceAll(/\s+/g, ' ') };
}

/** A demo with another fluid in it. */
function reefOn(refrigerant: string): string {
  const document = JSON.parse(demoTexts['reef-in-the-study.json']!);
  document.machine.refrigerant = refrigerant;
  return JSON.stringify(document);
}

const state = (name: string) => ['state', '--refrigerant', name, '--temperature', '40 °C', '--quality', '1'];
const levels = ['--evaporating', '5 °C', '--condensing', '40 °C', '--superheat', '5 K', '--subcooling', '2 K'];
const cycle = (name: string) => ['cycle', '--refrigerant', name, ...levels, '--efficiency', '0.6'];

describe('state and cycle', () => {
  test.each(['R245fa', 'R718'])('%s is said to be for study only', async (name) => {
    for (const command of [state(name), cycle(name)]) {
      const { code, text } = await answer(command);
      expect(code).toBe(0);
      expect(text).toContain(
        `${name} ${said} its safety class, whether it burns and how much of it may leak into a room.`,
      );
      expect(JSON.parse((await answer([...command, '--json'])).output).studyOnly).toContain(said);
    }
  });

  test.each(['R134a', 'R124'])('%s is not', async (name) => {
    for (const command of [state(name), cycle(name)]) {
      expect((await answer(command)).text).not.toContain('study only:');
      expect(JSON.parse((await answer([...command, '--json'])).output)).not.toHaveProperty('studyOnly');
    }
  });

  test('a batch keeps to its keys', async () => {
    const request = '{"refrigerant":"R718","given":{"temperature":300,"pressure":100000}}';
    const { output } = await answer(['state', '--batch'], `${request}\n`);
    expect(JSON.parse(output)).not.toHaveProperty('studyOnly');
  });
});

describe('compare', () => {
  test('says it beside the fluid, without a machine and in one', async () => {
    const fluids = ['--fluids', 'R134a,R227ea,R718'];
    for (const args of [
      ['compare', ...fluids, ...levels, '--efficiency', '0.6'],
      ['compare', 'data/designs/reef-in-the-study.json', ...fluids],
    ]) {
      const { code, text } = await answer(args);
      expect(code).toBe(0);
      expect(text).toContain(`R227ea ${said} its safety class and whether it burns.`);
      expect(text).toContain(`R718 ${said}`);
      expect(text).not.toContain(`R134a ${said}`);
    }
  });

  test('in a machine it is a reason not to build, with a loop and without one', async () => {
    const args = ['compare', 'data/designs/reef-in-the-study.json', '--fluids', 'R134a,R227ea,R718', '--json'];
    const { columns } = JSON.parse((await answer(args)).output);
    const codesOf = (fluid: string) =>
      columns
        .find((column: { fluid: string }) => column.fluid === fluid)
        .stops.map(({ code }: { code: string }) => code);
    expect(codesOf('R227ea')).toContain('fluidForStudyOnly');
    expect(codesOf('R718')).toContain('fluidForStudyOnly');
    expect(codesOf('R134a')).toEqual([]);
  });
});

describe('check', () => {
  test.each(refrigerantNames.filter(isStudyOnly))('%s is never cleared', async (name) => {
    const { code, text } = await answer(['check', '-'], reefOn(name));
    expect([1, 3]).toContain(code);
    if (code === 1) expect(text).toContain(`${name} ${said}`);
    expect(text).not.toContain('CARRIES THE LOAD');
  });

  test('ammonia is stopped for its metals too', async () => {
    const { code, text } = await answer(['check', '-'], reefOn('R717'));
    expect(code).toBe(1);
    expect(text).toContain('R717 attacks copper');
    expect(text).toContain('R717 is toxic');
  });

  // Critical temperature of carbon dioxide: 30.98 °C (Span & Wagner 1996); the demo condenses at 35.5 °C.
  test('carbon dioxide that would condense above its critical temperature has no solution, in words', async () => {
    const { code, text } = await answer(['check', '-'], reefOn('R744'));
    expect(code).toBe(3);
    expect(text).toContain(
      'Above the critical point nothing condenses; cycles that work there are not in this version.',
    );
    expect(text).not.toMatch(/NaN|undefined|\bat .*\.ts:/);
  });
});
