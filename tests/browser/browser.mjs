// Starts a browser for tests, benchmarks and pictures. The one carried by an npm package is unpacked once into
// node_modules/.cache, libraries and a font included, so nothing but Node.js has to be on the machine. The environment
// variable KETTLEFIN_BROWSER names the program of another Chromium-like browser to use instead.

import { execFile } from 'node:child_process';
import { existsSync } from 'node:fs';
import { mkdir, readFile, rename, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { chromium } from 'playwright-core';

const root = fileURLToPath(new URL('../..', import.meta.url));

const fixedArguments = [
  // The carried browser has no set-user-id helper for its sandbox; it is only ever shown our own page.
  '--no-sandbox',
  '--disable-gpu',
  '--disable-dev-shm-usage',
  '--font-render-hinting=none',
  // No name is ever looked up, so nothing outside this machine can be reached whatever the page tries.
  '--host-resolver-rules=MAP * ~NOTFOUND, EXCLUDE 127.0.0.1, EXCLUDE localhost',
];

/**
 * @param {readonly string[]} [moreArguments]
 * @returns {Promise<import('playwright-core').Browser>}
 */
export async function startBrowser(moreArguments = []) {
  const args = [...fixedArguments, ...moreArguments];
  const named = process.env.KETTLEFIN_BROWSER;
  if (named !== undefined && named !== '') {
    if (!existsSync(named)) throw new Error(`KETTLEFIN_BROWSER names "${named}", which does not exist.`);
    return chromium.launch({ executablePath: named, headless: true, args });
  }
  const folder = await unpackedBrowser();
  return chromium.launch({
    executablePath: join(folder, 'chromium'),
    headless: true,
    args,
    env: {
      ...definedEnvironment(),
      LD_LIBRARY_PATH: join(folder, 'al2023', 'lib'),
      FONTCONFIG_FILE: join(folder, 'fonts.conf'),
    },
  });
}

/** @returns {Promise<string>} the folder that holds the unpacked browser, unpacked now if it is not there yet */
async function unpackedBrowser() {
  const facts = JSON.parse(await readFile(join(root, 'node_modules/@sparticuz/chromium/package.json'), 'utf8'));
  const folder = join(root, 'node_modules', '.cache', `browser-${facts.version}`);
  if (existsSync(folder)) return folder;
  const unfinished = `${folder}-unfinished-${process.pid}`;
  await rm(unfinished, { recursive: true, force: true });
  await mkdir(unfinished, { recursive: true });
  // The package unpacks into the temporary folder, with its libraries only if told it is on a certain cloud; both are
  // said through the environment, hence a process of its own.
  await promisify(execFile)(
    process.execPath,
    [
      '--input-type=module',
      '--eval',
      'const { default: carried } = await import("@sparticuz/chromium"); await carried.executablePath();',
    ],
    { cwd: root, env: { ...process.env, TMPDIR: unfinished, AWS_LAMBDA_JS_RUNTIME: 'nodejs20.x' } },
  );
  // The paths name the final folder: the unfinished one is renamed in a moment.
  await writeFile(join(unfinished, 'fonts.conf'), fontConfiguration(folder));
  try {
    await rename(unfinished, folder);
  } catch (error) {
    if (!existsSync(folder)) throw error;
    await rm(unfinished, { recursive: true, force: true });
  }
  return folder;
}

/** @param {string} folder */
function fontConfiguration(folder) {
  return `<?xml version="1.0"?>
<!DOCTYPE fontconfig SYSTEM "fonts.dtd">
<fontconfig>
  <dir>${folder}/fonts/fonts</dir>
  <dir>/usr/share/fonts</dir>
  <cachedir>${folder}/font-cache</cachedir>
</fontconfig>
`;
}

/** @returns {Record<string, string>} */
function definedEnvironment() {
  /** @type {Record<string, string>} */
  const environment = {};
  for (const [name, value] of Object.entries(process.env)) if (value !== undefined) environment[name] = value;
  return environment;
}
