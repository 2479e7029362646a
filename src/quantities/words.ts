// Words where they are put together into sentences: beginnings, middles and lists.

/** "june" → "June", where a sentence or a label begins. */
export function sentenceStart(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** A label that begins a sentence elsewhere, put inside one: "Open in the room" → "open in the room", but "R134a", "I know". */
export function insideSentence(text: string): string {
  return /^(?:A |[A-Z][a-z’-])/.test(text) ? text.charAt(0).toLowerCase() + text.slice(1) : text;
}

/** "a, b and c"; with another joint "a, b or c". */
export function listed(parts: readonly string[], joint: 'and' | 'or' = 'and'): string {
  return parts.length < 2 ? parts.join('') : `${parts.slice(0, -1).join(', ')} ${joint} ${parts.at(-1)}`;
}
