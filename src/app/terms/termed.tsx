// A sentence in which every term of the trade opens its explanation where it stands. The glossary is loaded once somebody is at
// the page; until then the sentence is there without.

import { type CSSProperties, Fragment, type ReactNode, useId, useRef, useState, useSyncExternalStore } from 'react';
import { atFirstAttention } from '../ui/first-attention.ts';
import type { TermFinder } from './find-terms.ts';
import type { Term } from './glossary.ts';

export function Termed({ children }: { readonly children: string }): ReactNode {
  const find = useSyncExternalStore(follow, () => finder);
  if (find === undefined) return children;
  return find(children).map(({ text, term }, index) => {
    // The pieces of a sentence have no identity but their place.
    return <Fragment key={index}>{term === undefined ? text : <TermButton term={term}>{text}</TermButton>}</Fragment>;
  });
}

function TermButton({ term, children }: { readonly term: Term; readonly children: string }): ReactNode {
  const id = useId();
  const button = useRef<HTMLButtonElement>(null);
  // The explanation is on the page only while it is open, so that the sentence reads and copies as it stands.
  const [place, setPlace] = useState<CSSProperties | undefined>(undefined);
  return (
    <>
      <button ref={button} type="button" className="term" popoverTarget={id}>
        {children}
      </button>
      <span
        id={id}
        popover="auto"
        className="term-meaning"
        style={place}
        onBeforeToggle={(event) => {
          setPlace(event.newState === 'open' && button.current !== null ? under(button.current) : undefined);
        }}
      >
        {place !== undefined && (
          <>
            <strong>{term.name}</strong> {term.meaning}
          </>
        )}
      </span>
    </>
  );
}

/** Wider than this an explanation is hard to read [px]. */
const widest = 340;
const edge = 12;

/** Under the word, or over it where there is no room below; inside the window. */
function under(button: HTMLElement): CSSProperties {
  const { left, top, bottom } = button.getBoundingClientRect();
  const width = Math.min(widest, innerWidth - 2 * edge);
  const fromLeft = Math.max(edge, Math.min(left, innerWidth - width - edge));
  const isLow = bottom > innerHeight * 0.65;
  return isLow
    ? { width, left: fromLeft, top: 'auto', bottom: innerHeight - top + 6 }
    : { width, left: fromLeft, top: bottom + 6, bottom: 'auto' };
}

let finder: TermFinder | undefined;
let isAwaited = false;
const followers = new Set<() => void>();

function follow(tell: () => void): () => void {
  if (!isAwaited) atFirstAttention(load);
  isAwaited = true;
  followers.add(tell);
  return () => followers.delete(tell);
}

/** Without the glossary the page says all it has to say, only less of it is explained. */
async function load(): Promise<void> {
  const [{ glossary }, { termFinder }] = await Promise.all([import('./glossary.ts'), import('./find-terms.ts')]);
  finder = termFinder(glossary);
  for (const tell of followers) tell();
}
