// Reads JSON text with the place of the first fault, in words that do not depend on the JavaScript engine, and refuses a
// key given twice (JSON.parse would silently keep the last). A text that passes is then parsed by JSON.parse.

import type { DesignProblem } from './problems.ts';

export type JsonResult =
  | { readonly ok: true; readonly value: unknown }
  | { readonly ok: false; readonly problem: DesignProblem };

const deepest = 40;

/** The value of a JSON text, or where and why it is none. */
export function readJson(text: string): JsonResult {
  const source = text.startsWith('\uFEFF') ? text.slice(1) : text;
  const fault = new Scanner(source).scan();
  return fault === undefined ? { ok: true, value: JSON.parse(source) } : { ok: false, problem: fault };
}

class Fault extends Error {
  readonly problem: DesignProblem;

  constructor(problem: DesignProblem) {
    super(problem.code);
    this.problem = problem;
  }
}

/** Any character but the quotation mark, the backslash and the control characters below the blank. */
const stringToken = /"(?:[ !#-[\]-\uffff]|\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4}))*"/y;
const plainToken = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?|true|false|null/y;

class Scanner {
  readonly #text: string;
  #at = 0;

  constructor(text: string) {
    this.#text = text;
  }

  scan(): DesignProblem | undefined {
    try {
      this.#value('', 0);
      this.#blanks();
      if (this.#at < this.#text.length) this.#fail('nothing after the closing brace');
      return undefined;
    } catch (error) {
      if (error instanceof Fault) return error.problem;
      throw error;
    }
  }

  #value(path: string, depth: number): void {
    if (depth > deepest) this.#fail(`at most ${deepest} levels`, 'tooDeep', path);
    this.#blanks();
    const next = this.#text[this.#at];
    if (next === '{') this.#object(path, depth);
    else if (next === '[') this.#list(path, depth);
    else if (next === '"') this.#token(stringToken, 'a text that ends with a quotation mark');
    else this.#token(plainToken, 'a value: a text in quotation marks or { … }');
  }

  #object(path: string, depth: number): void {
    const keys = new Set<string>();
    this.#at++;
    this.#blanks();
    if (this.#take('}')) return;
    do {
      this.#blanks();
      const start = this.#at;
      if (this.#text[this.#at] !== '"') this.#fail('a key in quotation marks');
      const key = JSON.parse(this.#token(stringToken, 'a key that ends with a quotation mark')) as string;
      const inner = path === '' ? key : `${path}.${key}`;
      if (keys.has(key)) {
        this.#at = start;
        this.#fail('each key once', 'duplicateKey', inner);
      }
      keys.add(key);
      this.#blanks();
      if (!this.#take(':')) this.#fail('a colon after the key');
      this.#value(inner, depth + 1);
      this.#blanks();
    } while (this.#take(','));
    if (!this.#take('}')) this.#fail('a comma or a closing brace');
  }

  #list(path: string, depth: number): void {
    this.#at++;
    this.#blanks();
    if (this.#take(']')) return;
    let index = 0;
    do {
      this.#value(`${path}.${index++}`, depth + 1);
      this.#blanks();
    } while (this.#take(','));
    if (!this.#take(']')) this.#fail('a comma or a closing bracket');
  }

  #token(pattern: RegExp, expected: string): string {
    pattern.lastIndex = this.#at;
    const found = pattern.exec(this.#text)?.[0];
    if (found === undefined || found === '') return this.#failToken(expected);
    this.#at += found.length;
    return found;
  }

  /** A text without its closing mark before the end means that the file is cut off. */
  #failToken(expected: string): never {
    const isOpenText = this.#text[this.#at] === '"' && !this.#text.slice(this.#at + 1).includes('"');
    if (isOpenText && !/[\r\n]/.test(this.#text.slice(this.#at))) this.#at = this.#text.length;
    return this.#fail(expected);
  }

  #blanks(): void {
    while (/[ \t\r\n]/.test(this.#text[this.#at] ?? '')) this.#at++;
  }

  #take(mark: string): boolean {
    if (this.#text[this.#at] !== mark) return false;
    this.#at++;
    return true;
  }

  #fail(expected: string, code?: DesignProblem['code'], path = ''): never {
    const before = this.#text.slice(0, this.#at);
    const atEnd = this.#at >= this.#text.length;
    throw new Fault({
      path,
      code: code ?? (atEnd ? 'truncated' : 'notJson'),
      received: atEnd ? 'end of the text' : this.#text.slice(this.#at, this.#at + 20).replace(/\s+/g, ' '),
      expected,
      line: before.split('\n').length,
      column: this.#at - before.lastIndexOf('\n'),
    });
  }
}
