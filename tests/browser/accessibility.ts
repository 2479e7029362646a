// What the accessibility engine axe-core finds on a page, against WCAG 2.2 A and AA and its own good practice.

import axe from 'axe-core';
import type { Page } from 'playwright-core';

/**
 * Faults in words, with the element of each; empty where none is found.
 * @param within  selector of the part that is looked at; the whole page where absent
 */
export function accessibilityFaults(page: Page, within?: string): Promise<readonly string[]> {
  const levels = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];
  // Good practice speaks of the page as a whole.
  return faults(page, within === undefined ? [...levels, 'best-practice'] : levels, within);
}

/** The same of what another light alone can change: the elements of a page are those that were looked at in the first one. */
export function colourFaults(page: Page): Promise<readonly string[]> {
  return faults(page, { type: 'rule', values: ['color-contrast', 'link-in-text-block'] });
}

type Rules = NonNullable<axe.RunOptions['runOnly']>;

async function faults(page: Page, runOnly: Rules, within?: string): Promise<readonly string[]> {
  await page.evaluate(axe.source);
  return page.evaluate(
    async ([rules, selector]) => {
      // What stays at the edges of the window covers something at every scroll; that it never covers the focus is a test
      // of its own.
      const edges = [...document.querySelectorAll<HTMLElement>('.top, .pages, .caution-line')];
      for (const edge of edges) edge.style.position = 'static';
      // Colours on their way from one light to the other are neither's.
      await Promise.allSettled(document.getAnimations().map((animation) => animation.finished));
      const engine = (globalThis as unknown as { axe: typeof import('axe-core') }).axe;
      const { violations } = await engine.run(selector ?? document, { runOnly: rules });
      for (const edge of edges) edge.style.position = '';
      return violations.flatMap(({ id, nodes }) =>
        nodes.map((node) => `${id}: ${node.target.join(' ')} ${node.failureSummary}`),
      );
    },
    [runOnly, within] as const,
  );
}
