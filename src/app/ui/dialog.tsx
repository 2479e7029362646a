// A native dialog: modal, closed by Escape, focus goes back to where it came from.

import { type ReactNode, useId, useLayoutEffect, useRef } from 'react';
import { CautionLine } from '../frame/caution.tsx';

export interface DialogProps {
  readonly title: string;
  readonly close: () => void;
  readonly children: ReactNode;
}

export function Dialog({ title, close, children }: DialogProps): ReactNode {
  const dialog = useRef<HTMLDialogElement>(null);
  const titleId = useId();
  // Before the next frame: nobody sees it closed, and the focus is back as soon as it is gone.
  useLayoutEffect(() => {
    const element = dialog.current;
    if (element === null) return;
    const before = document.activeElement;
    element.showModal();
    return () => {
      element.close();
      if (before instanceof HTMLElement && before.isConnected) before.focus();
    };
  }, []);
  return (
    <dialog
      ref={dialog}
      aria-labelledby={titleId}
      onCancel={(event) => {
        event.preventDefault();
        close();
      }}
    >
      <div className="dialog-head">
        <h2 id={titleId}>{title}</h2>
        <button type="button" className="plain" onClick={close}>
          Close
        </button>
      </div>
      <div className="dialog-body">{children}</div>
      <CautionLine />
    </dialog>
  );
}
