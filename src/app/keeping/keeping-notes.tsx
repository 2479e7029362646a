// What the person should know about the open design being kept: that another tab keeps a different one, and what this
// browser does not keep at all. They stay until it is settled; loaded only when there is something to say.

import type { ReactNode } from 'react';
import { listed } from '../../quantities/index.ts';
import { useWorkbench } from '../state/context.tsx';
import type { Refused } from '../state/storage.ts';
import type { DesignKeeping } from './design-keeping.ts';
import { designNameIn } from './set-aside-list.tsx';

/** What each key holds, as a person would call it. */
const things: Readonly<Record<string, string>> = {
  design: 'the open design',
  view: 'the units',
  light: 'the light',
  cycle: 'the cycle of Cycle alone',
  'brief-contact': 'who asks in the Brief',
  'set-aside': 'the designs set aside',
};

export interface KeepingNotesProps {
  readonly keeping: DesignKeeping;
  /** The text another tab keeps, while the person has not chosen. */
  readonly theirs: string | undefined;
  readonly refused: Refused;
  /** False where the text cannot be used. */
  readonly openText: (text: string, name: string) => boolean;
  /** Saves the open design to a file. */
  readonly save: () => void;
}

export function KeepingNotes({ keeping, theirs, refused, openText, save }: KeepingNotesProps): ReactNode {
  const { dispatch } = useWorkbench();
  const chooseTheirs = (text: string) => {
    if (openText(text, 'The other tab’s design')) keeping.chooseTheirs();
  };
  const chooseMine = (text: string) => {
    if (keeping.chooseMine()) return;
    const message = 'Save it to a file first, or make room by removing designs that are set aside under Designs.';
    dispatch({
      type: 'noticed',
      notice: {
        title: 'This browser cannot set the other tab’s design aside. Nothing was changed.',
        problems: [{ path: undefined, message }],
        offers: [{ kind: 'saveText', text, name: 'design-of-the-other-tab.json' }],
      },
    });
  };
  return (
    <>
      {theirs !== undefined && (
        <div ref={bringIntoSight} className="notice" role="status">
          <div>
            <p>
              <strong>Another tab has changed the design that this browser keeps: “{designNameIn(theirs)}”</strong>
            </p>
            <p>
              Until you choose, this tab keeps nothing over it. The one you do not choose is set aside under Designs.
            </p>
          </div>
          <div className="notice-tools">
            <button type="button" className="solid" onClick={() => chooseTheirs(theirs)}>
              Take over the other tab’s
            </button>
            <button type="button" className="solid" onClick={() => chooseMine(theirs)}>
              Keep this tab’s
            </button>
          </div>
        </div>
      )}
      {refused.size > 0 && <NotKept refused={refused} save={save} />}
    </>
  );
}

/** Nobody was typing here when another tab kept its design, so nothing is lost by scrolling. */
function bringIntoSight(note: HTMLElement | null): void {
  note?.scrollIntoView({ block: 'nearest' });
}

function NotKept({ refused, save }: { refused: Refused; save: () => void }): ReactNode {
  const names = [...refused.keys()].map((key) => things[key] ?? 'what you wrote on a paper');
  const isFull = [...refused.values()].includes('full');
  return (
    <div className="notice" role="status">
      <div>
        <p>
          <strong>This browser does not keep {listed([...new Set(names)])}.</strong>
        </p>
        <p>
          {isFull
            ? 'Its storage for this page is full.'
            : 'It allows this page no storage: a setting forbids it, or the window is private.'}{' '}
          What is not kept is gone when the page is closed. The next change is tried again.
        </p>
      </div>
      {refused.has('design') && (
        <div className="notice-tools">
          <button type="button" className="solid" onClick={save}>
            Save the design to a file
          </button>
        </div>
      )}
    </div>
  );
}
