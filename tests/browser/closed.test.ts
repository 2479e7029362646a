// The page is closed: it talks to its own server at most, and says so to the browser itself.

import { describe, expect, test } from 'vitest';
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

  test('the page states the policy itself, and it is at work: an outside request is refused and noticed', async () => {
    const workbench = await openWorkbench();
    const stated = await workbench.page.getAttribute('meta[http-equiv="Content-Security-Policy"]', 'content');
    expect(stated).toMatch(/connect-src '(self|none)'/);
    expect(stated).not.toMatch(/https?:|\*|unsafe-eval|script-src[^;]*unsafe-inline/);
    const outcome = await workbench.page.evaluate(() =>
      fetch('https://outside.example/').then(
        () => 'answered',
        () => 'refused',
      ),
    );
    expect(outcome).toBe('refused');
    await expect.poll(() => workbench.complaints.policyViolations.join()).toContain('outside.example');
    await expect.poll(() => workbench.complaints.consoleErrors.join()).toContain('outside.example');
    await workbench.close();
  });

  test('a script that is not the page’s own is not run', async () => {
    const workbench = await openWorkbench();
    const ran = await workbench.page.evaluate(() => {
      const script = document.createElement('script');
      script.textContent = 'globalThis.strangeScriptRan = true';
      document.head.append(script);
      return 'strangeScriptRan' in globalThis;
    });
    expect(ran).toBe(false);
    await expect.poll(() => workbench.complaints.policyViolations.join()).toContain('script-src');
    await workbench.close();
  });
});
