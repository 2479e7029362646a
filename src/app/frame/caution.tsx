// The caution: in full at the top of the page, and in short at the foot of the window and of every dialog, so that it is
// in sight wherever the page is scrolled to.

import type { ReactNode } from 'react';
import { caution } from '../../cautions/index.ts';

export function Caution(): ReactNode {
  return (
    <aside className="caution" aria-label="Caution">
      <span className="hatch-bar" aria-hidden="true" />
      <p>{caution}</p>
    </aside>
  );
}

const inShort =
  'For study and discussion only: not permission to build. Certified or licensed people only; local law comes first.';

export function CautionLine(): ReactNode {
  return (
    <aside className="caution-line" aria-label="Caution in short">
      <span className="hatch-bar" aria-hidden="true" />
      <p>{inShort}</p>
    </aside>
  );
}
