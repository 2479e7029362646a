// What only a served page has: headers. They state the policy for every answer, also for what is not there.

import { describe, expect, inject, test } from 'vitest';

describe('the server', () => {
  test('every answer carries the policy', async () => {
    const address = inject('workbenchAddress');
    for (const path of ['', 'index.html', 'no-such-file.js']) {
      const answer = await fetch(new URL(path, address));
      const policy = answer.headers.get('content-security-policy');
      expect(policy, path).toContain("default-src 'none'");
      expect(policy, path).not.toMatch(/https?:|\*|unsafe-eval|script-src[^;]*unsafe-inline/);
    }
  });
});
