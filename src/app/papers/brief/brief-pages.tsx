// The pages of the brief inside the page, as they will be printed: in a tree of their own, so that neither takes styles
// from the other. What a person wrote was escaped where the pages were made.

import { type ReactNode, useLayoutEffect, useRef } from 'react';

interface BriefPagesProps {
  readonly body: string;
  readonly styles: string;
  readonly isOld: boolean;
}

export function BriefPages({ body, styles, isOld }: BriefPagesProps): ReactNode {
  const host = useRef<HTMLDivElement>(null);
  useLayoutEffect(() => {
    const element = host.current;
    if (element === null) return;
    const root = element.shadowRoot ?? element.attachShadow({ mode: 'open' });
    const sheet = new CSSStyleSheet();
    sheet.replaceSync(styles);
    root.adoptedStyleSheets = [sheet];
    root.innerHTML = body;
    const watch = new ResizeObserver(() => letKeyboardScroll(root));
    watch.observe(element);
    return () => watch.disconnect();
  }, [body, styles]);
  return <div className={isOld ? 'brief-host stale' : 'brief-host'} ref={host} />;
}

/** Only what is wider than the screen is a stop for the keyboard: it scrolls. */
function letKeyboardScroll(root: ShadowRoot): void {
  for (const box of root.querySelectorAll<HTMLElement>('[role="region"]')) {
    box.tabIndex = box.scrollWidth > box.clientWidth ? 0 : -1;
  }
}
