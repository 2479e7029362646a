// Finds the input that holds a field, wherever on the open page it stands: folds around it are opened on the way.

/** The input of the field at a path of the design, or of the textbook cycle; undefined where the page has none. */
export function findField(path: string): HTMLElement | undefined {
  const found = document.querySelector<HTMLElement>(`#main [data-field="${CSS.escape(path)}"]`) ?? undefined;
  for (let fold = found?.closest('details'); fold != null; fold = fold.parentElement?.closest('details')) {
    fold.open = true;
  }
  return found;
}
