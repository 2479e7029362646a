// Words that only some designs need: handed over with what reckons these designs (../../every-machine/, ../../every-tank/).

/** The value of a fact in the reader's units, by its name. */
export type Tell = (fact: string) => string;

export interface ModelWords {
  readonly title: string;
  readonly text: (tell: Tell) => string;
}

const words = new Map<string, ModelWords>();

export function addModelWords(added: Readonly<Record<string, ModelWords>>): void {
  for (const [code, each] of Object.entries(added)) words.set(code, each);
}

export function modelWordsOf(code: string): ModelWords | undefined {
  return words.get(code);
}
