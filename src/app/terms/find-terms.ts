// Finds the terms of a glossary in a sentence: each at its first place only, the longest form first, whole words.

import type { Term } from './glossary.ts';

/** A stretch of a sentence, and the term it is where it is one. */
export interface Piece {
  readonly text: string;
  readonly term: Term | undefined;
}

export type TermFinder = (text: string) => readonly Piece[];

export function termFinder(terms: readonly Term[]): TermFinder {
  const byForm = new Map(terms.flatMap((term) => term.forms.map((form) => [form, term] as const)));
  const longestFirst = [...byForm.keys()].sort((left, right) => right.length - left.length);
  const pattern = new RegExp(`\\b(?:${longestFirst.map(escaped).join('|')})\\b`, 'gi');
  return (text) => {
    const pieces: Piece[] = [];
    const found = new Set<Term>();
    let from = 0;
    for (const match of text.matchAll(pattern)) {
      const term = byForm.get(match[0].toLowerCase());
      if (term === undefined || found.has(term)) continue;
      found.add(term);
      if (match.index > from) pieces.push({ text: text.slice(from, match.index), term: undefined });
      pieces.push({ text: match[0], term });
      from = match.index + match[0].length;
    }
    if (from < text.length) pieces.push({ text: text.slice(from), term: undefined });
    return pieces;
  };
}

function escaped(text: string): string {
  return text.replaceAll(/[.*+?^${}()|[\]\\]/g, '\\$&');
}
