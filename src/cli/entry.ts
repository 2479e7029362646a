// Where Node.js enters the command line: real streams in, exit code out.

import { main } from './main.ts';

// A pipe's reader may stop early; main() answers the same fault where a write is awaited.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code === 'EPIPE') process.exit(0);
  throw error;
});

process.exitCode = await main(process.argv.slice(2), {
  input: process.stdin,
  output: process.stdout,
  errors: process.stderr,
});
