// Where the words on a picture stand: each on its own line, clear of the loop, of the dome and of one another. Pure, in
// pixels of the plot: x to the right, y down, both from its upper left corner. Words that find no place are left out.

export interface Spot {
  readonly x: number;
  readonly y: number;
}

/** A rectangle by its middle. */
export interface Box extends Spot {
  readonly width: number;
  readonly height: number;
}

export interface WordsToPlace {
  readonly width: number;
  readonly height: number;
  /** The line they belong to, the preferred end first. */
  readonly line: readonly Spot[];
  /** How far above the line they stand; 0 is on it. */
  readonly above: number;
}

export interface Plot {
  readonly width: number;
  readonly height: number;
}

/** Distance between two places that are tried on one line. */
const stride = 6;

/** Space that words keep to one another and to the edge. */
const gap = 3;

/** One place per words, in the order given: the first find their places first. */
export function placeWords(
  words: readonly WordsToPlace[],
  taken: readonly Box[],
  plot: Plot,
): readonly (Spot | undefined)[] {
  const boxes = [...taken];
  return words.map(({ width, height, line, above }) => {
    for (const spot of along(line, stride)) {
      const box = { x: spot.x, y: spot.y - above, width: width + 2 * gap, height: height + gap };
      if (!isInside(box, plot) || boxes.some((other) => overlap(box, other))) continue;
      boxes.push(box);
      return { x: box.x, y: box.y };
    }
    return undefined;
  });
}

/** Boxes along a line that must stay free. */
export function boxesAlong(line: readonly Spot[], size: number): readonly Box[] {
  return [...along(line, size)].map((spot) => ({ ...spot, width: size, height: size }));
}

function* along(line: readonly Spot[], step: number): Generator<Spot> {
  let left = 0;
  for (const [index, end] of line.entries()) {
    const start = line[index - 1];
    if (start === undefined) {
      yield end;
      continue;
    }
    const length = Math.hypot(end.x - start.x, end.y - start.y);
    // Far outside the plot there is nothing to find, however long the line.
    if (!(length > 0 && length < 1e5)) continue;
    let at = step - left;
    for (; at <= length; at += step) {
      const share = at / length;
      yield { x: start.x + share * (end.x - start.x), y: start.y + share * (end.y - start.y) };
    }
    left = length - (at - step);
  }
}

function isInside(box: Box, plot: Plot): boolean {
  return (
    box.x - box.width / 2 >= 0 &&
    box.x + box.width / 2 <= plot.width &&
    box.y - box.height / 2 >= 0 &&
    box.y + box.height / 2 <= plot.height
  );
}

function overlap(a: Box, b: Box): boolean {
  return 2 * Math.abs(a.x - b.x) < a.width + b.width && 2 * Math.abs(a.y - b.y) < a.height + b.height;
}
