// The state of the workbench and every way it can change, as one pure reducer: the design with its undo history, the
// last answer of the engine, what was refused, and how it is shown.

import type { DesignDocument } from '../../design/index.ts';
import type { UnitView, WorkingStep } from '../../quantities/index.ts';
import type { LightChoice } from '../ui/light.tsx';
import type { AssessAnswer, EngineProblem } from '../worker/messages.ts';
import { advance, endEdit, type History, redo, startHistory, undo } from './history.ts';
import type { Start } from './start.ts';

/** Something the person should read; the design is untouched by it. */
export interface Notice {
  /** Without one it tells of a fault. */
  readonly tone?: 'note';
  readonly title: string;
  readonly problems: readonly { readonly path: string | undefined; readonly message: string }[];
  readonly offers?: readonly NoticeOffer[];
}

/** What can be done at once about a notice. */
export type NoticeOffer =
  | { readonly kind: 'undo' }
  | { readonly kind: 'saveText'; readonly text: string; readonly name: string };

export interface WorkbenchState {
  readonly designs: History<DesignDocument>;
  readonly answer: AssessAnswer | undefined;
  /** The design the answer belongs to; another than the present one while the engine works or after it refused. */
  readonly answered: DesignDocument | undefined;
  /** Whether the answer may be of another design than the open one: one was opened, or a step undone or redone. */
  readonly answerIsOfAnother: boolean;
  /** Why the engine gave no answer for the present design. */
  readonly refusal: readonly EngineProblem[] | undefined;
  readonly notice: Notice | undefined;
  readonly view: UnitView;
  readonly light: LightChoice;
}

export type WorkbenchAction =
  | { readonly type: 'opened'; readonly document: DesignDocument }
  | { readonly type: 'edited'; readonly document: DesignDocument; readonly path: string }
  | { readonly type: 'editEnded' }
  | { readonly type: 'undone' }
  | { readonly type: 'redone' }
  | { readonly type: 'answered'; readonly document: DesignDocument; readonly answer: AssessAnswer }
  | {
      readonly type: 'workingsCame';
      /** Those of the answer that they belong to. */
      readonly inPlaceOf: readonly WorkingStep[];
      readonly workings: readonly WorkingStep[];
    }
  | { readonly type: 'refused'; readonly document: DesignDocument; readonly problems: readonly EngineProblem[] }
  | { readonly type: 'noticed'; readonly notice: Notice }
  | { readonly type: 'noticeClosed' }
  | { readonly type: 'viewChosen'; readonly view: UnitView }
  | { readonly type: 'lightChosen'; readonly light: LightChoice };

export function startState(document: DesignDocument, view: UnitView, light: LightChoice): WorkbenchState {
  return {
    designs: startHistory(document),
    answer: undefined,
    answered: undefined,
    answerIsOfAnother: false,
    refusal: undefined,
    notice: undefined,
    view,
    light,
  };
}

/** One step back from a design that came with a link is what would have been open without it. */
export function stateAtStart({ document, before, view, light, notice }: Start): WorkbenchState {
  const first = startState(before ?? document, view, light);
  return { ...(before === undefined ? first : reduce(first, { type: 'opened', document })), notice };
}

export function reduce(state: WorkbenchState, action: WorkbenchAction): WorkbenchState {
  switch (action.type) {
    case 'opened':
      return {
        ...state,
        designs: advance(state.designs, action.document),
        notice: undefined,
        answerIsOfAnother: true,
      };
    case 'edited':
      return { ...state, designs: advance(state.designs, action.document, action.path), notice: undefined };
    case 'editEnded':
      return { ...state, designs: endEdit(state.designs) };
    case 'undone':
      return { ...state, designs: undo(state.designs), notice: undefined, answerIsOfAnother: true };
    case 'redone':
      return { ...state, designs: redo(state.designs), notice: undefined, answerIsOfAnother: true };
    case 'answered':
      if (action.document !== state.designs.present) return state;
      return {
        ...state,
        answer: action.answer,
        answered: action.document,
        answerIsOfAnother: false,
        refusal: undefined,
      };
    case 'workingsCame': {
      const { answer } = state;
      if (answer?.assessment.workings !== action.inPlaceOf) return state;
      return { ...state, answer: { ...answer, assessment: { ...answer.assessment, workings: action.workings } } };
    }
    case 'refused':
      if (action.document !== state.designs.present) return state;
      // Results of an earlier state may stay beside the reason why there are none now; those of another design may not.
      return state.answerIsOfAnother
        ? { ...state, answer: undefined, answered: undefined, answerIsOfAnother: false, refusal: action.problems }
        : { ...state, refusal: action.problems };
    case 'noticed':
      return { ...state, notice: action.notice };
    case 'noticeClosed':
      return { ...state, notice: undefined };
    case 'viewChosen':
      return { ...state, view: action.view };
    case 'lightChosen':
      return { ...state, light: action.light };
  }
}
