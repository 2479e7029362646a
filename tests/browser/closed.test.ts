// The page is closed: it talks to its own server only, and both the server and the page itself say so to the browser.

import { describe, expect, inject, test } from 'vitest';
import { openWorkbench, startBrowserForThisFile } from './harness.ts';

startBrowserForThisFile();

describe('the workbench connects to nothing outside', () => {
  test('opens without an error, a policy violation or an outside request', async () => {
    const workbench = await openWorkbench();
    await workbench.page.waitForFunction(() => (document.getElementById('root')?.childElementCount ?? 0) > 0);
    await workbench.page.waitForLoadState('networkidle');
    workbench.expectNoComplaints();
    await workbench.close();
  });

  test('every answer carries the policy, and a foreign host name is turned away', async () => {
    const address = inject('workbenchAddress');
    for (const path of ['', 'index.html', 'no-such-file.js']) {
      const answer = await fetch(new URL(path, address));
      const policy = answer.headers.get('content-security-policy');
      expect(policy, path).toContain("default-src 'none'");
      expect(policy, path).not.toMatch(/https?:|\*|unsafe-eval|script-src[^;]*unsafe-inline/);
    }
  });

  test('the page states the policy itself, and it is at work: an outside request is refused and noticed', async () => {
    const workbench = await openWorkbench();
    const stated = await workbench.page.getAttribute('meta[http-equiv="Content-Security-Policy"]', 'content');
    expect(stated).toContain("connect-src 'self'");
    const outcome = await workbench.page.evaluate(() =>
      fetch('https://outside.example/').then(
        () => 'answered',
        () => 'refused',
      ),
    );
    expect(outcome).toBe('refused');
    await expect.poll(() => workbench.complaints.policyViolations.join()).toContain('outside.example');
    expect(workbench.complaints.consoleErrors.join()).toContain('outside.example');
    await workbench.close();
  });
});
