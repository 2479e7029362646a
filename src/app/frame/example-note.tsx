// Says that what is open is an invented example, and leads on to one's own tank.

import type { ReactNode } from 'react';

export function ExampleNote({ startOwn }: { readonly startOwn: () => void }): ReactNode {
  return (
    <aside className="example-note" aria-label="About this example">
      This is an invented example. Change anything and watch the verdict, or{' '}
      <button type="button" className="linkish" onClick={startOwn}>
        answer seven questions
      </button>{' '}
      about your own tank: two minutes.
    </aside>
  );
}
