// Keeps the answer in step with the design: asks the engine at every change, tells when it takes long.

import { type Dispatch, useCallback, useEffect, useState } from 'react';
import { type DesignDocument, serialiseDesign } from '../../design/index.ts';
import type { UnitView } from '../../quantities/index.ts';
import type { EngineClient } from '../worker/client.ts';
import type { WorkbenchAction } from './workbench.ts';

/** Work that lasts longer than this is told [ms]. */
const noticeable = 150;

export interface AssessmentWork {
  readonly working: boolean;
  readonly cancel: () => void;
}

export function useAssessment(
  engine: EngineClient,
  document: DesignDocument,
  view: UnitView,
  dispatch: Dispatch<WorkbenchAction>,
): AssessmentWork {
  const [working, setWorking] = useState(false);
  useEffect(() => {
    let dropped = false;
    const slow = setTimeout(() => setWorking(true), noticeable);
    void engine.ask({ kind: 'assess', text: serialiseDesign(document), view }).then((outcome) => {
      clearTimeout(slow);
      if (dropped) return;
      setWorking(false);
      if (outcome.outcome === 'answered') dispatch({ type: 'answered', document, answer: outcome.answer });
      if (outcome.outcome === 'refused') dispatch({ type: 'refused', document, problems: outcome.problems });
    });
    return () => {
      dropped = true;
      clearTimeout(slow);
    };
  }, [engine, document, view, dispatch]);
  const cancel = useCallback(() => {
    engine.cancel();
    setWorking(false);
  }, [engine]);
  return { working, cancel };
}
