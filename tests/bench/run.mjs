// `npm run bench`: measures the parts of the program and prints each beside its budget. `--json` for programs; words
// after the options choose cases whose name begins with one of them: `npm run bench -- refrigerants loop.map`. Some cases are
// measured only when chosen: what each pair of properties costs in each phase of four refrigerants.
// Budgets are for a two-core machine with nothing else to do. Nothing is asserted: exit code 0 whatever was measured.

import { rm } from 'node:fs/promises';
import { cpus, platform, release } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { parseArgs } from 'node:util';
import { buildForNode, root } from '../../src/cli/build.mjs';
import { measureWorkbench } from './workbench.mjs';

const { values: options, positionals: wanted } = parseArgs({
  options: { json: { type: 'boolean', default: false } },
  allowPositionals: true,
});

/** @param {string} id */
const isWanted = (id) => wanted.length === 0 || wanted.some((name) => id.startsWith(name));

const folder = join(root, 'dist', `bench-${process.pid}`);
try {
  await buildForNode(join(root, 'tests', 'bench', 'engine.ts'), folder);
  const { measureEngine } = await import(pathToFileURL(join(folder, 'entry.js')).href);
  const { rows, checksum } = measureEngine(isWanted, wanted.length > 0);
  rows.push(...(await measureWorkbench(isWanted)));
  const machine = {
    processor: cpus()[0]?.model.trim() ?? 'unknown',
    cores: cpus().length,
    system: `${platform()} ${release()}`,
    runtime: `Node.js ${process.version}`,
  };
  if (rows.length === 0) {
    console.error(`No case is named like ${wanted.join(' ')}.`);
    process.exitCode = 2;
  } else if (options.json) {
    console.log(JSON.stringify({ machine, rows, checksum }));
  } else {
    console.log(`${machine.processor}, ${machine.cores} cores, ${machine.system}, ${machine.runtime}\n`);
    print(rows);
  }
} finally {
  await rm(folder, { recursive: true, force: true });
}

/** @param {import('./engine.ts').BenchRow[]} rows */
function print(rows) {
  const header = ['what', 'budget', 'median', 'best', 'spread', 'runs', 'within'];
  const lines = rows.map(({ title, unit, budget, measured, missing }) => {
    const limit = budget === undefined ? '-' : write(budget, unit);
    if (measured === undefined) return [title, limit, missing ?? '', '', '', '', ''];
    const within =
      budget === undefined
        ? '-'
        : (unit === '1/s' ? measured.judged >= budget : measured.judged <= budget)
          ? 'yes'
          : 'NO';
    const judged = measured.judged === measured.median ? '' : ` (95th: ${write(measured.judged, unit)})`;
    return [
      title,
      limit,
      write(measured.median, unit) + judged,
      write(measured.minimum, unit),
      measured.runs > 1 ? `±${(measured.spread * 100).toFixed(0)} %` : '',
      String(measured.runs),
      within,
    ];
  });
  const widths = header.map((name, column) =>
    Math.max(...[header, ...lines].map((line) => (line[column] ?? name).length)),
  );
  for (const line of [header, ...lines]) {
    console.log(
      line
        .map((cell, column) => cell.padEnd(widths[column] ?? 0))
        .join('  ')
        .trimEnd(),
    );
  }
}

/**
 * @param {number} value
 * @param {'s' | 'byte' | '1/s'} unit
 */
function write(value, unit) {
  if (unit === '1/s') return `${Math.round(value).toLocaleString('en-US')} /s`;
  if (unit === 'byte') return value >= 1e6 ? `${(value / 1e6).toFixed(1)} MB` : `${(value / 1e3).toFixed(0)} kB`;
  if (value < 1e-6) return `${(value * 1e9).toPrecision(3)} ns`;
  if (value < 1e-3) return `${(value * 1e6).toPrecision(3)} µs`;
  if (value < 1) return `${(value * 1e3).toPrecision(3)} ms`;
  return `${value.toPrecision(3)} s`;
}
