// Whether the engine is at work, with a way to stop it; or that it was stopped, with a way to ask again.

import type { ReactNode } from 'react';
import type { AssessmentWork } from '../state/use-assessment.ts';

export function WorkingNote({ work }: { readonly work: AssessmentWork }): ReactNode {
  return (
    <p className="working-note quiet" role="status">
      {work.working && (
        <>
          Working…{' '}
          <button type="button" className="linkish" onClick={work.cancel}>
            Stop
          </button>
        </>
      )}
      {work.stopped && (
        <>
          Stopped: there is no answer to the design as it stands.{' '}
          <button type="button" className="linkish" onClick={work.again}>
            Compute it
          </button>
        </>
      )}
    </p>
  );
}
