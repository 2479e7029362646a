// Designs set aside in this browser, so that none is lost when another takes its place: text that can no longer be read,
// the design that was open before a link's, and the one not chosen where two tabs had different ones.

import type { Keeper } from '../state/storage.ts';

export type WhySetAside = 'unreadable' | 'link' | 'otherTab';

export interface SetAside {
  readonly why: WhySetAside;
  /** Date and time, ISO 8601. */
  readonly at: string;
  readonly text: string;
}

/** The newest that are kept. */
export const mostSetAside = 12;

const key = 'set-aside';

/** Newest first. */
export function allSetAside(keeper: Keeper): readonly SetAside[] {
  const kept = keeper.read(key);
  if (kept === undefined) return [];
  try {
    const list: unknown = JSON.parse(kept);
    if (Array.isArray(list) && list.every(isSetAside)) return list;
  } catch {
    // Said below: what is not a list is itself a text that cannot be read.
  }
  return [{ why: 'unreadable', at: '', text: kept }];
}

/**
 * The same text is set aside once.
 * @param keeper     what the browser keeps for all tabs
 * @param one        what is set aside
 * @param insteadOf  a text set aside before, which this one replaces
 * @returns false where the browser did not keep it
 */
export function setAside(keeper: Keeper, one: SetAside, insteadOf?: string): boolean {
  const others = allSetAside(keeper).filter(({ text }) => text !== one.text && text !== insteadOf);
  return write(keeper, [one, ...others].slice(0, mostSetAside));
}

export function dropSetAside(keeper: Keeper, text: string): void {
  const all = allSetAside(keeper);
  const others = all.filter((each) => each.text !== text);
  if (others.length < all.length) write(keeper, others);
}

function write(keeper: Keeper, list: readonly SetAside[]): boolean {
  return keeper.write(key, JSON.stringify(list));
}

function isSetAside(value: unknown): value is SetAside {
  if (typeof value !== 'object' || value === null) return false;
  const { why, at, text } = value as Partial<Record<keyof SetAside, unknown>>;
  return (
    (why === 'unreadable' || why === 'link' || why === 'otherTab') && typeof at === 'string' && typeof text === 'string'
  );
}
