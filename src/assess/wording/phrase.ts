// What a finding's words are made of: a title and one or two sentences that read its facts as the reader's view says them.

/** Reads the facts of one finding: numbers as text in the view, words in plain language. */
export interface Told {
  (name: string): string;
  has(name: string): boolean;
  /** A difference of 1 K as the view says it. */
  readonly kelvin: string;
}

export interface Phrase {
  readonly title: string | ((told: Told) => string);
  readonly text: (told: Told) => string;
}

/** "12 °C in the coldest spell", or, where only the end of its range passes a limit, that end beside it. */
export function whenAndRange(told: Told, name: string): string {
  if (!told.has('endOfRange')) return `${told(name)} ${told('when')}`;
  const isAlike = told.has('limit') && told('endOfRange') === told('limit');
  const end = isAlike ? 'just past the limit' : told('endOfRange');
  return `${told(name)}, at the end of its range ${end}, ${told('when')}`;
}
