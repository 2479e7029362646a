// What the accessibility engine axe-core finds on a page, against WCAG 2.2 A and AA and its own good practice.

import axe from 'axe-core';
import type { Page } from 'playwright-core';

/**
 * Faults in words, with the element of each; empty where none is found.
 * @param within  selector of the part that is looked at; the whole page where absent
 */
export async function accessibilityFaults(page: Page, within?: string): Promise<readonly string[]> {
  await page.evaluate(axe.source);
  return page.evaluate(async (selector) => {
    // What stays at the edges of the window covers something at every scroll; that it never covers the focus is a test
    // of its own.
    const edges = [...document.querySelectorAll<HTMLElement>('.top, .pages, .caution-line')];
    for (const edge of edges) edge.style.position = 'static';
    const engine = (globalThis as unknown as { axe: typeof import('axe-core') }).axe;
    const levels = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];
    // Good practice speaks of the page as a whole.
    const { violations } = await engine.run(selector ?? document, {
      runOnly: selector === undefined ? [...levels, 'best-practice'] : levels,
    });
    for (const edge of edges) edge.style.position = '';
    return violations.flatMap(({ id, nodes }) =>
      nodes.map((node) => `${id}: ${node.target.join(' ')} ${node.failureSummary}`),
    );
  }, within);
}
