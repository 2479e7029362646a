// Links in and out: copies the link that carries the open design, or shows it where the browser denies its clipboard; and
// opens a link that somebody sent, wherever it leads to.

import { type ReactNode, useEffect, useId, useLayoutEffect, useRef, useState } from 'react';
import { linkWith } from './design-link.ts';
import './link-tools.css';

export interface LinkToolsProps {
  /** Of the open design. */
  readonly text: string;
  readonly openLink: (link: string) => void;
}

export function LinkTools({ text, openLink }: LinkToolsProps): ReactNode {
  // Made before it is asked for: some browsers give the clipboard only to the very moment of the press.
  const [link, setLink] = useState<string | undefined>(undefined);
  const [outcome, setOutcome] = useState<'copied' | 'denied' | undefined>(undefined);
  useEffect(() => {
    let isOld = false;
    setOutcome(undefined);
    void linkWith(location.href, text).then((made) => {
      if (!isOld) setLink(made);
    });
    return () => {
      isOld = true;
    };
  }, [text]);
  const copy = (made: string) => {
    // Without a secure context there is no clipboard at all.
    const written = navigator.clipboard?.writeText(made) ?? Promise.reject(new Error('no clipboard'));
    void written.then(
      () => setOutcome('copied'),
      () => setOutcome('denied'),
    );
  };
  return (
    <section className="link-tools" aria-labelledby="links-title">
      <h2 id="links-title">Pass it on as a link</h2>
      <button
        type="button"
        className="plain"
        disabled={link === undefined}
        onClick={() => link !== undefined && copy(link)}
      >
        Copy link
      </button>
      <div role="status">
        {outcome === 'copied' && <p>Copied. The link carries the whole design, and says that it is for study only.</p>}
        {outcome === 'denied' && link !== undefined && <LinkToCopy link={link} />}
      </div>
      {outcome !== undefined && isOnlyHere() && (
        <p className="quiet">
          The link leads to this machine. Someone else opens it with “Open a link” in a workbench of their own.
        </p>
      )}
      <OpenLink openLink={openLink} />
    </section>
  );
}

/** The clipboard was denied: the link stands in a field, selected. */
function LinkToCopy({ link }: { link: string }): ReactNode {
  const field = useRef<HTMLInputElement>(null);
  const id = useId();
  useLayoutEffect(() => {
    field.current?.focus();
    // Backwards, so that the beginning stays in sight.
    field.current?.setSelectionRange(0, field.current.value.length, 'backward');
  }, []);
  return (
    <>
      <label htmlFor={id}>The browser denies its clipboard. Copy the link from here:</label>
      <input id={id} ref={field} type="text" readOnly value={link} />
    </>
  );
}

function OpenLink({ openLink }: { openLink: (link: string) => void }): ReactNode {
  const [text, setText] = useState('');
  const id = useId();
  return (
    <form
      onSubmit={(event) => {
        event.preventDefault();
        if (text.trim() === '') return;
        setText('');
        openLink(text.trim());
      }}
    >
      <label htmlFor={id}>Open a link that somebody sent</label>
      <span className="link-row">
        <input
          id={id}
          type="text"
          autoComplete="off"
          spellCheck={false}
          value={text}
          onChange={(event) => setText(event.target.value)}
        />
        <button type="submit" className="plain">
          Open link
        </button>
      </span>
    </form>
  );
}

/** Whether the page's address means nothing on another machine. */
function isOnlyHere(): boolean {
  return location.protocol === 'file:' || /^(localhost|127\.|\[::1\])/.test(location.hostname);
}
