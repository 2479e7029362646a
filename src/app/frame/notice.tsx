// Something the person should read, and what can be done about it at once: a file that cannot be used, a design that came
// with a link, a design the engine has no answer for.

import { type ReactNode, useEffect, useRef } from 'react';
import { saveText } from '../state/files.ts';
import type { Notice, NoticeOffer } from '../state/workbench.ts';

export interface NoticeBoxProps {
  readonly notice: Notice;
  readonly close?: () => void;
  readonly undo?: () => void;
}

export function NoticeBox({ notice, close, undo }: NoticeBoxProps): ReactNode {
  const isFault = notice.tone === undefined;
  const box = useRef<HTMLDivElement>(null);
  const isAnswer = close !== undefined;
  // Each notice is brought into sight once.
  useEffect(() => {
    // An answer to what the person has just done, wherever the page was scrolled to.
    if (isAnswer) box.current?.scrollIntoView({ block: 'nearest' });
  }, [notice, isAnswer]);
  return (
    <div ref={box} className={isFault ? 'notice notice-stop' : 'notice'} role={isFault ? 'alert' : 'status'}>
      <div>
        <p>
          <strong>{notice.title}</strong>
        </p>
        <ul>
          {notice.problems.map((problem) => (
            <li key={`${problem.path} ${problem.message}`}>{problem.message}</li>
          ))}
        </ul>
      </div>
      <div className="notice-tools">
        {notice.offers?.map((offer) => (
          <button key={offer.kind} type="button" className="solid" onClick={() => take(offer, undo)}>
            {offer.kind === 'undo' ? 'Go back to what was open' : 'Save its text to a file'}
          </button>
        ))}
        {close !== undefined && (
          <button type="button" className="plain" onClick={close}>
            Close
          </button>
        )}
      </div>
    </div>
  );
}

function take(offer: NoticeOffer, undo: (() => void) | undefined): void {
  if (offer.kind === 'undo') undo?.();
  else saveText(offer.text, offer.name);
}
