// Text for a terminal without anything that a terminal would obey: a design's name or a file's name may hold control
// characters, and those could move the cursor or rewrite what stands above.

/** The text with line breaks kept and every other control or direction-changing character shown as a replacement mark. */
export function printable(text: string): string {
  // biome-ignore lint/suspicious/noControlCharactersInRegex: control characters are what is looked for
  return text.replaceAll(/[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u202a-\u202e\u2066-\u2069]/g, '\uFFFD');
}

/** The same on one line. */
export function printableLine(text: string): string {
  return printable(text.replaceAll(/\s*[\n\r]\s*/g, ' '));
}
