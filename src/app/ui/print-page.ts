// Prints the page once what is on it is drawn: pictures not yet looked at are drawn first.

const undrawn = new Set<() => void>();

/** Longest that printing waits for pictures [ms]; one that failed by then stands as its table. */
const longestWait = 8000;
const pause = 50;

/** Tells of a picture or a page still to be drawn, by the function that draws it; the answer takes it back. */
export function drawBeforePrinting(draw: () => void): () => void {
  undrawn.add(draw);
  return () => undrawn.delete(draw);
}

export async function printPage(): Promise<void> {
  for (let waited = 0; undrawn.size > 0 && waited < longestWait; waited += pause) {
    // Anew each time: of a picture whose parts had to be fetched there is more to draw now.
    for (const draw of undrawn) draw();
    await new Promise((resolve) => setTimeout(resolve, pause));
  }
  window.print();
}
