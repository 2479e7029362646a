// The three states, each told three ways: by shape, by ink and by word.

import type { ReactNode } from 'react';

export type StateKind = 'plain' | 'look' | 'stop';

const usualWord: Record<StateKind, string> = { plain: 'no limit found', look: 'look here', stop: 'stop' };

export function StateShape({ kind }: { kind: StateKind }): ReactNode {
  return (
    <svg className={`state-shape state-shape-${kind}`} viewBox="0 0 16 16" width="14" height="14" aria-hidden="true">
      {kind === 'plain' && <circle cx="8" cy="8" r="5" fill="none" stroke="currentColor" strokeWidth="2.5" />}
      {kind === 'look' && <path d="M8 1.2 14.8 8 8 14.8 1.2 8Z" fill="currentColor" />}
      {kind === 'stop' && (
        <>
          <rect x="1.5" y="1.5" width="13" height="13" fill="none" stroke="currentColor" strokeWidth="2" />
          <path d="M2 9 9 2M2 14 14 2M7 14 14 7" stroke="currentColor" strokeWidth="1.7" />
        </>
      )}
    </svg>
  );
}

export function StateMark({ kind, word }: { kind: StateKind; word?: string }): ReactNode {
  return (
    <span className={`state state-${kind}`}>
      <StateShape kind={kind} />
      <span>{word ?? usualWord[kind]}</span>
    </span>
  );
}
