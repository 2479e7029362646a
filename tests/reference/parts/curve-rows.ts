// How often the bands of machines that part of a published curve identifies hold the rest of it.

import type { ValidationRow } from '../validation.ts';
import { type Counted, counted, curves, type Distance, foundBy, source, type Way } from './curves.ts';

/** Promised: a band is passed one time in ten. */
const promised = 90;

const where: Readonly<Record<Distance, string>> = {
  among: 'among the given points',
  near: 'up to 13 K beyond them',
  far: 'farther beyond',
};
const shownWays = [
  'three ratings at one condensing temperature',
  'a table of 15 points',
] as const satisfies readonly Way[];
const fewestShown = 20;

export function curveRows(): readonly ValidationRow[] {
  return shownWays.flatMap((way) => {
    const found = foundBy(way);
    const subject = `${curves.length} published machines, each told by ${way} of its colder half`;
    return (['flow', 'power'] as const).flatMap((kind) =>
      (Object.keys(where) as readonly Distance[]).flatMap((distance): readonly ValidationRow[] => {
        const here = counted(found[kind].filter((each) => each.distance === distance));
        if (here.count < fewestShown) return [];
        return [rowOf(subject, `${kind} ${where[distance]}: bands that hold the curve [of 100]`, here)];
      }),
    );
  });
}

function rowOf(
  subject: string,
  quantity: string,
  { count, held, bias, rootMeanSquare, halfWidth }: Counted,
): ValidationRow {
  const percent = (share: number) => `${(100 * share).toFixed(1).replace('-', '−')} %`;
  return {
    subject,
    quantity,
    source: `${source}: makers’ fits printed to four digits, not measured points, nearly all at 60 Hz`,
    published: promised,
    ours: Math.round(1000 * held) / 10,
    deviation: `bias ${percent(bias)}, root mean square ${percent(rootMeanSquare)}`,
    status: 'reference',
    reason: `${count} places, bands of ± ${percent(halfWidth)} (median); 90 are promised of the machine itself, which may be 5 % off its sheet: against the sheet more are held near the points`,
  };
}
