// `kettlefin load --wrap` and `--map`: reports for people, JSON and CSV for programs, options that exclude one another.

import { describe, expect, it } from 'vitest';
import type { WrappingAnswer } from '../../src/assess/index.ts';
import { loadCommand } from '../../src/cli/commands/load.ts';
import { main } from '../../src/cli/main.ts';
import { collected } from './streams.ts';

const wrapping = 'data/designs/bare-glass-above-an-open-sump.json';
const metered = 'data/designs/reef-in-the-study.json';

async function load(...args: readonly string[]) {
  const { streams, output, errors } = collected();
  const code = await main(['load', ...args], streams);
  return { code, output: output(), errors: errors() };
}

describe('load --wrap', () => {
  it('says what to wrap first, where to stop, and cautions', async () => {
    const { code, output } = await load(wrapping, '--wrap');
    expect(code).toBe(0);
    expect(output).toMatch(/saves\s+about/);
    expect(output).toContain('The next best in turn');
    expect(output).toContain('from here on it does not pay');
    expect(output).toContain('For study and discussion only');
    expect(output).not.toMatch(/NaN|undefined|Infinity/);
  });

  it('gives the same as JSON', async () => {
    const { code, output } = await load(wrapping, '--wrap', '--json');
    expect(code).toBe(0);
    const answer = JSON.parse(output) as WrappingAnswer;
    expect(answer.wrappingVersion).toBe(1);
    expect(answer.measuresFrom).toBe('design');
    expect(answer.inTurn).toHaveLength(answer.measures.length);
    expect(answer.waterfall).toHaveLength(answer.inTurn.length + 2);
  });

  it('says why only cooler water applies to a tank known by its meter', async () => {
    const { code, output } = await load(metered, '--wrap', '--units', 'us');
    expect(code).toBe(0);
    expect(output).toContain('What changes nothing here');
    expect(output).toContain('known by its meter alone');
  });

  it('does not answer two questions at once', async () => {
    const { code, errors } = await load(wrapping, '--wrap', '--map');
    expect(code).toBe(2);
    expect(errors).toContain('--map');
    expect((await load(wrapping, '--fall', '2 K', '--wrap')).code).toBe(2);
  });

  it('is told in the help', () => {
    expect(loadCommand.usage).toContain('--wrap');
    expect(loadCommand.usage).toContain('--map');
  });
});

describe('load --map', () => {
  it('prints a line a point, with the caution and the error in front', async () => {
    const { code, output } = await load(wrapping, '--map');
    expect(code).toBe(0);
    const lines = output.trim().split('\r\n');
    expect(lines[0]).toMatch(/^# For study/);
    expect(lines[1]).toMatch(/^# Likely values/);
    expect(lines[2]).toMatch(/^room \[°C\],relative humidity \[%\],water \[°C\],heat needed \[W\]/);
    expect(lines).toHaveLength(3 + 15 * 8 * 7);
    for (const line of lines.slice(3))
      expect(line.split(',').every((cell) => Number.isFinite(Number(cell)))).toBe(true);
  });

  it('gives axes, columns and the largest error as JSON', async () => {
    const { output } = await load(wrapping, '--map', '--json');
    const answer = JSON.parse(output) as { columns: { load: number[] }; largestError: { load: number } };
    expect(answer.columns.load).toHaveLength(15 * 8 * 7);
    expect(answer.largestError.load).toBeGreaterThan(0);
    expect(answer.largestError.load / Math.max(...answer.columns.load)).toBeLessThan(0.02);
  });
});
