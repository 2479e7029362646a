// `npm start`: builds the workbench, serves it on this machine and prints its one address.

import { buildWorkbench, serveWorkbench } from './serve/serve.mjs';

const folder = 'dist/app';
const usualPort = 4173;

try {
  console.log('Building the workbench ...');
  await buildWorkbench(folder);
  const { address } = await serveWorkbench(folder, Number(process.env.PORT ?? usualPort));
  console.log(`Kettlefin is at ${address}`);
  console.log('It runs until you press Ctrl-C here, and connects to nothing outside this machine.');
} catch (error) {
  console.error(`The workbench could not be started: ${error instanceof Error ? error.message : String(error)}`);
  process.exitCode = 1;
}
