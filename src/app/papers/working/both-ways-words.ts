// What a person is told about a design that was reckoned both ways, with states from the equation and from tables.

import type { BothWaysAnswer } from '../../worker/both-ways.ts';

export function bothWaysWords(answer: BothWaysAnswer): readonly string[] {
  const { refrigerant, largest, figures, isSameStanding, exactTook, tablesTook, building, bytes } = answer;
  const standing = isSameStanding ? 'The answer is the same' : 'The answer is not the same: trust the equation';
  const moved =
    largest.share === 0
      ? `all ${figures} figures of the verdict are equal to the last digit`
      : `of the ${figures} figures of the verdict “${largest.label}” moves most, by one part in ${inOne(largest.share)}`;
  const made = building < 1 ? 'the table was there already' : `making the table took ${milliseconds(building)} once`;
  return [
    `${standing}; ${moved}.`,
    `From the equation of ${refrigerant} a whole verdict with all its ranges takes ${milliseconds(exactTook)}, from the table ${milliseconds(tablesTook)}; ${made}. ${asked(answer)} The table holds ${(bytes / 1e6).toFixed(1)} MB.`,
  ];
}

function asked({ byTable, byEquation }: BothWaysAnswer): string {
  const all = `Of ${grouped(byTable + byEquation)} states the table gave`;
  return byEquation === 0
    ? `${all} every one.`
    : `${all} ${grouped(byTable)}; the rest lay outside it and came from the equation.`;
}

/** How many times the share goes into one, to two figures. */
function inOne(share: number): string {
  return grouped(Number((1 / share).toPrecision(2)));
}

function milliseconds(time: number): string {
  return `${time < 10 ? time.toFixed(1) : Math.round(time)} ms`;
}

function grouped(count: number): string {
  return count.toLocaleString('en-US');
}
