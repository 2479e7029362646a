// Finds what a link leads to, wherever on the open page it stands: folds around it are opened on the way.

/** The input of the field at a path of the design, or of the textbook cycle; undefined where the page has none. */
export function findField(path: string): HTMLElement | undefined {
  return inSight(document.querySelector<HTMLElement>(`#main [data-field="${CSS.escape(path)}"]`));
}

/** The element of that name, such as the heading of a part or the summary of one that is folded. */
export function findNamed(id: string): HTMLElement | undefined {
  return inSight(document.getElementById(id));
}

function inSight(found: HTMLElement | null): HTMLElement | undefined {
  for (let fold = found?.closest('details'); fold != null; fold = fold.parentElement?.closest('details')) {
    fold.open = true;
  }
  return found ?? undefined;
}
