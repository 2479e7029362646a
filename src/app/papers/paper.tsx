// The frame of a paper: its title, one sentence that says what it answers, and a way to print it. The caution is printed
// on every page by the page's own frame.

import type { ReactNode } from 'react';
import type { UnitView } from '../../quantities/index.ts';
import { type PaperName, pageTitles } from '../pages.ts';
import { Termed } from '../terms/termed.tsx';
import { printPage } from '../ui/print-page.ts';
import type { AssessAnswer } from '../worker/messages.ts';

export interface PaperProps {
  /** Undefined until the engine has answered for the open design. */
  readonly answer: AssessAnswer | undefined;
  readonly view: UnitView;
  /** What the address names after the paper: a result, a field, a heading. */
  readonly part: string | undefined;
}

export interface PaperFrameProps {
  readonly name: PaperName;
  readonly answer: string;
  /** Buttons beside the one that prints. */
  readonly actions?: ReactNode;
  readonly children: ReactNode;
}

export function Paper({ name, answer, actions, children }: PaperFrameProps): ReactNode {
  return (
    <article className="station paper" aria-labelledby="page-title">
      <header className="station-head">
        <h2 id="page-title" tabIndex={-1}>
          {pageTitles[name]}
        </h2>
        <p className="station-answer">
          <Termed>{answer}</Termed>
        </p>
        <p className="paper-actions">
          <button type="button" className="solid" onClick={() => void printPage()}>
            Print
          </button>
          {actions}
        </p>
      </header>
      {children}
    </article>
  );
}
