// Keeps the answer in step with the design: asks the engine at every change, tells when it takes long, and when it was
// stopped.

import { type Dispatch, useCallback, useLayoutEffect, useState } from 'react';
import { type DesignDocument, serialiseDesign } from '../../design/index.ts';
import type { UnitView } from '../../quantities/index.ts';
import type { EngineClient } from '../worker/client.ts';
import type { WorkbenchAction } from './workbench.ts';
import { withWorkingsToCome } from './workings.ts';

/** Work that lasts longer than this is told [ms]. */
const noticeable = 150;

export interface AssessmentWork {
  readonly working: boolean;
  /** The person stopped it, and the design has no answer yet. */
  readonly stopped: boolean;
  readonly cancel: () => void;
  /** Asks once more after a stop. */
  readonly again: () => void;
}

export function useAssessment(
  engine: EngineClient,
  document: DesignDocument,
  view: UnitView,
  dispatch: Dispatch<WorkbenchAction>,
): AssessmentWork {
  const [working, setWorking] = useState(false);
  const [stopped, setStopped] = useState(false);
  const [asked, setAsked] = useState(0);
  // Asked as soon as the edit is made, not after the next frame: every edit's verdict waits for it. Asking again is a reason
  // of its own.
  useLayoutEffect(() => {
    let dropped = false;
    setStopped(false);
    const slow = setTimeout(() => setWorking(true), noticeable);
    void engine.ask({ kind: 'assess', text: serialiseDesign(document), view }).then((outcome) => {
      clearTimeout(slow);
      if (dropped) return;
      setWorking(false);
      if (outcome.outcome === 'answered') {
        dispatch({ type: 'answered', document, answer: withWorkingsToCome(outcome.answer) });
      }
      if (outcome.outcome === 'refused') dispatch({ type: 'refused', document, problems: outcome.problems });
    });
    return () => {
      dropped = true;
      clearTimeout(slow);
    };
  }, [engine, document, view, dispatch, asked]);
  const cancel = useCallback(() => {
    engine.cancel();
    setWorking(false);
    setStopped(true);
  }, [engine]);
  const again = useCallback(() => setAsked((count) => count + 1), []);
  return { working, stopped, cancel, again };
}
