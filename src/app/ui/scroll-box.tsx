// A box that scrolls sideways by itself where what it holds is wider than the screen. Only then does it take the focus,
// so that the arrow keys can move it.

import { type CSSProperties, type ReactNode, useLayoutEffect, useRef, useState } from 'react';

export interface ScrollBoxProps {
  readonly className: string;
  /** What it holds, for those who come to it by keyboard. */
  readonly label: string;
  readonly style?: CSSProperties;
  readonly children: ReactNode;
}

export function ScrollBox({ className, label, style, children }: ScrollBoxProps): ReactNode {
  const box = useRef<HTMLDivElement>(null);
  const [scrolls, setScrolls] = useState(false);
  useLayoutEffect(() => {
    const element = box.current;
    if (element === null) return;
    const watch = new ResizeObserver(() => setScrolls(element.scrollWidth > element.clientWidth + 1));
    watch.observe(element);
    for (const child of element.children) watch.observe(child);
    return () => watch.disconnect();
  }, []);
  const reachable = scrolls ? ({ role: 'group', tabIndex: 0, 'aria-label': label } as const) : {};
  return (
    <div ref={box} className={className} style={style} {...reachable}>
      {children}
    </div>
  );
}
