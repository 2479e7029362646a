// `npm test`: everything, in this order: format and lint, types, unit tests (layers, formulas and data among them), the
// two builds of the workbench, served and in one file, and the browser tests against both. Every step runs even if an earlier one failed. The last line is
// "N passed, N failed": a test counts as one, and so does each of format and lint, types, build. A test that is skipped
// counts as failed, and so does a test file that cannot be loaded and a step that finds nothing to test.

import { spawn } from 'node:child_process';
import { mkdir, readFile, rm } from 'node:fs/promises';
import { basename, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { buildOneFile, buildWorkbench } from '../src/app/serve/serve.mjs';

const root = fileURLToPath(new URL('..', import.meta.url));
const workplace = join('dist', `test-run-${process.pid}`);
const built = join(workplace, 'built');

let passed = 0;
let failed = 0;
/** @type {string[]} */
const failures = [];

await mkdir(join(root, workplace), { recursive: true });
try {
  await one('format and lint', () => program('node_modules/@biomejs/biome/bin/biome', ['ci', '.']));
  await one('types', () => program('node_modules/typescript/bin/tsc', ['--noEmit']));
  await tests('unit tests', []);
  const isServable = await one('build of the workbench', () => buildWorkbench(join(built, 'app')));
  const isOneFile = await one('build of the one file', () => buildOneFile(built));
  if (isServable && isOneFile) await tests('browser tests', ['--config', 'tests/browser/vitest.config.ts']);
  else fail('browser tests: nothing to test, the workbench was not built');
} finally {
  await rm(join(root, workplace), { recursive: true, force: true });
}

for (const failure of failures) console.log(`failed: ${failure}`);
console.log(`${passed} passed, ${failed} failed`);
process.exitCode = failed === 0 && passed > 0 ? 0 : 1;

/**
 * A step that counts as one.
 * @param {string} name
 * @param {() => Promise<unknown>} work  throws if the step fails
 */
async function one(name, work) {
  console.log(`\n== ${name}`);
  try {
    await work();
    passed += 1;
    return true;
  } catch (error) {
    fail(`${name}: ${error instanceof Error ? error.message : String(error)}`);
    return false;
  }
}

/**
 * A step that counts every test.
 * @param {string} name
 * @param {string[]} options
 */
async function tests(name, options) {
  console.log(`\n== ${name}`);
  const report = join(workplace, 'report.json');
  await rm(join(root, report), { force: true });
  const reporters = ['--reporter=default', '--reporter=json', `--outputFile.json=${report}`];
  let ending = '';
  try {
    await program('node_modules/vitest/vitest.mjs', ['run', ...options, ...reporters]);
  } catch (error) {
    ending = error instanceof Error ? error.message : String(error);
  }
  /** @type {Report} */
  let answer;
  try {
    answer = JSON.parse(await readFile(join(root, report), 'utf8'));
  } catch {
    fail(`${name}: no report (${ending})`);
    return;
  }
  const before = failed;
  let found = 0;
  for (const file of answer.testResults) {
    const where = file.name.slice(root.length);
    let failedHere = 0;
    for (const test of file.assertionResults) {
      if (test.status === 'todo') continue;
      found += 1;
      if (test.status === 'passed') {
        passed += 1;
      } else {
        failedHere += 1;
        fail(`${where}: ${test.fullName}${test.status === 'failed' ? '' : ` (${test.status})`}`);
      }
    }
    if (file.status === 'failed' && failedHere === 0) fail(`${where}: ${firstLine(file.message)}`);
  }
  if (found === 0) fail(`${name}: nothing to test was found`);
  // An error outside any test, such as a rejection nobody waits for.
  if (ending !== '' && failed === before) fail(`${name}: ${ending}`);
}

/** @param {string} sentence */
function fail(sentence) {
  failed += 1;
  failures.push(sentence);
}

/**
 * @param {string} file  JavaScript file of a package, from the project's root
 * @param {string[]} args
 * @returns {Promise<void>} rejects unless it ends with exit code 0
 */
function program(file, args) {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [join(root, file), ...args], {
      cwd: root,
      stdio: ['ignore', 'inherit', 'inherit'],
      env: { ...process.env, KETTLEFIN_BUILT_WORKBENCH: built },
    });
    child.on('error', reject);
    child.on('exit', (code, signal) => {
      if (code === 0) resolve();
      else reject(new Error(`${basename(file, '.mjs')} ended with ${signal ?? `exit code ${code}`}`));
    });
  });
}

/** @param {string | undefined} text */
function firstLine(text) {
  return text?.trim().split('\n')[0] || 'could not be loaded';
}

/**
 * The part of the test runner's JSON report that is read here.
 * @typedef {{ testResults: { name: string, status: string, message?: string,
 *   assertionResults: { fullName: string, status: string }[] }[] }} Report
 */
