// What every part of the page may reach: the state, the one way to change it, the engine, and editing a field by path.

import { createContext, type Dispatch, useContext } from 'react';
import type { DesignDocument, DesignProblem, EditResult } from '../../design/index.ts';
import type { EngineClient } from '../worker/client.ts';
import type { Keeper } from './storage.ts';
import type { OpenPage } from './use-page.ts';
import type { WorkbenchAction, WorkbenchState } from './workbench.ts';

export interface Workbench {
  readonly state: WorkbenchState;
  readonly dispatch: Dispatch<WorkbenchAction>;
  readonly engine: EngineClient;
  /** What the browser keeps between visits. */
  readonly keeper: Keeper;
  readonly document: DesignDocument;
  /** Takes over the outcome of an edit, marked by the path it is of, or answers what was wrong. */
  readonly edit: (outcome: EditResult, path: string) => readonly DesignProblem[];
  readonly open: OpenPage;
}

export const WorkbenchContext = createContext<Workbench | undefined>(undefined);

export function useWorkbench(): Workbench {
  const workbench = useContext(WorkbenchContext);
  if (workbench === undefined) throw new Error('useWorkbench is used outside the workbench');
  return workbench;
}
