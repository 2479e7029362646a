// A link to a page of the workbench, or to a part of it: an address as any other, followed without loading the page anew.

import type { ReactNode } from 'react';
import { addressOf, type PageName } from '../pages.ts';
import { useWorkbench } from '../state/context.tsx';

export interface PageLinkProps {
  readonly page: PageName;
  readonly part?: string;
  readonly className?: string;
  /** What it is called where its words alone say too little; the words are part of it. */
  readonly label?: string;
  readonly children: ReactNode;
}

export function PageLink({ page, part, className, label, children }: PageLinkProps): ReactNode {
  const { open } = useWorkbench();
  return (
    <a
      className={className}
      aria-label={label}
      href={addressOf({ page, part })}
      onClick={(event) => {
        // With a key held, the browser opens it in a tab or window of its own.
        if (event.ctrlKey || event.metaKey || event.shiftKey) return;
        event.preventDefault();
        open(page, part);
      }}
    >
      {children}
    </a>
  );
}
