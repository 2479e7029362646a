// `npm start`: one local address, every answer under the content security policy, another port if the usual one is taken.

import { type ChildProcess, spawn } from 'node:child_process';
import { createServer } from 'node:net';
import { fileURLToPath } from 'node:url';
import { afterEach, describe, expect, test } from 'vitest';

const root = fileURLToPath(new URL('../..', import.meta.url));
let child: ChildProcess | undefined;

afterEach(() => {
  child?.kill('SIGINT');
});

/** Starts it and waits for the closing line of what it prints. */
function start(port: number): Promise<string> {
  return new Promise((resolve, reject) => {
    let printed = '';
    child = spawn(process.execPath, ['src/app/start.mjs'], { cwd: root, env: { ...process.env, PORT: String(port) } });
    child.stdout?.setEncoding('utf8').on('data', (text) => {
      printed += text;
      if (printed.includes('Ctrl-C')) resolve(printed);
    });
    child.stderr?.setEncoding('utf8').on('data', (text) => {
      printed += text;
    });
    child.on('close', () => reject(new Error(`ended early: ${printed}`)));
  });
}

describe('npm start', () => {
  test('prints one local address that serves the page under the policy, beside a port that is taken', async () => {
    const occupant = createServer();
    await new Promise<void>((resolve) => occupant.listen(0, '127.0.0.1', resolve));
    const taken = (occupant.address() as { port: number }).port;
    try {
      const printed = await start(taken);
      const addresses = printed.match(/https?:\/\/\S+/g) ?? [];
      expect(addresses.length).toBe(1);
      const address = new URL(addresses[0]!);
      expect(address.hostname).toBe('127.0.0.1');
      expect(address.port).not.toBe(String(taken));
      const answer = await fetch(address);
      expect(answer.status).toBe(200);
      expect(answer.headers.get('content-security-policy')).toContain("default-src 'none'");
      expect(await answer.text()).toContain('<div id="root">');
    } finally {
      occupant.close();
    }
  });
});
