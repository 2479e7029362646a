// Undo and redo as a list of values. Edits of one field in quick succession are one step.

export interface History<T> {
  readonly past: readonly T[];
  readonly present: T;
  readonly future: readonly T[];
  /** What the present was made by, so that further strokes of the same edit replace it. */
  readonly mark: string | undefined;
}

/** More steps than a person would walk back; keeps the page's memory bounded. */
const longest = 200;

export function startHistory<T>(present: T): History<T> {
  return { past: [], present, future: [], mark: undefined };
}

/** `mark` names the edit; a second edit with the same mark replaces the first instead of adding a step. */
export function advance<T>(history: History<T>, present: T, mark?: string): History<T> {
  const goesOn = mark !== undefined && mark === history.mark && history.past.length > 0;
  const past = goesOn ? history.past : [...history.past, history.present].slice(-longest);
  return { past, present, future: [], mark };
}

/** The next edit starts a step of its own. */
export function endEdit<T>(history: History<T>): History<T> {
  return history.mark === undefined ? history : { ...history, mark: undefined };
}

export function undo<T>(history: History<T>): History<T> {
  const before = history.past.at(-1);
  if (before === undefined) return history;
  return {
    past: history.past.slice(0, -1),
    present: before,
    future: [history.present, ...history.future],
    mark: undefined,
  };
}

export function redo<T>(history: History<T>): History<T> {
  const [after, ...future] = history.future;
  if (after === undefined) return history;
  return { past: [...history.past, history.present], present: after, future, mark: undefined };
}
