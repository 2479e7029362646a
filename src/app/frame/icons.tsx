// Drawn signs, so that no font has to hold them.

import type { ReactNode } from 'react';

/** The mark of the program: a fin over a water line. */
export function Brand(): ReactNode {
  return (
    <span className="brand">
      <svg viewBox="0 0 32 32" width="28" height="28" aria-hidden="true">
        <path
          d="M3 25c4-1 6-3 8-8C13.5 10 18 5 27 3c-3 4-4 8-3.5 12 .4 3.5 1.5 6.5 4.5 8.5"
          fill="var(--into-water-fill)"
        />
        <path d="M2 25.5q3.5-3.5 7 0t7 0t7 0t7 0" fill="none" stroke="var(--ink)" strokeWidth="2.4" />
      </svg>
      Kettlefin
    </span>
  );
}

export function UndoSign(): ReactNode {
  return (
    <svg viewBox="0 0 20 20" width="18" height="18" aria-hidden="true">
      <path d="M4 8h8a4 4 0 0 1 0 8H8M7.5 4 4 8l3.5 4" fill="none" stroke="currentColor" strokeWidth="1.8" />
    </svg>
  );
}

export function RedoSign(): ReactNode {
  return (
    <svg viewBox="0 0 20 20" width="18" height="18" aria-hidden="true">
      <path d="M16 8H8a4 4 0 0 0 0 8h4M12.5 4 16 8l-3.5 4" fill="none" stroke="currentColor" strokeWidth="1.8" />
    </svg>
  );
}
