// Powers of τ for the distinct exponents of the terms of an equation. Multiples of an eighth, as most are, come by
// multiplication of powers taken before, in an order found when the fluid is loaded: a third of the time of the exponential
// of t ln τ, by which the rest are taken.

import { exponentials } from './exponential.ts';

const EIGHTHS = 8;
const LARGEST = 64;

export class TauPowers {
  /** τ to each exponent at the places of `placeOf`, filled by `fill`. */
  readonly powers: Float64Array;
  private readonly places: ReadonlyMap<number, number>;
  /** The first powers by the exponential; then each the product of two before it. */
  private readonly exponents: Float64Array;
  private readonly byExponential: Float64Array;
  /** The place of τ itself; −1 if none of the exponents leads to it. */
  private readonly itself: number;
  private readonly first: Int32Array;
  private readonly second: Int32Array;

  constructor(exponents: readonly number[]) {
    const distinct = [...new Set(exponents)];
    const isProduct = (t: number) => t > 0 && t <= LARGEST && Number.isInteger(t * EIGHTHS);
    const chain = new ProductChain();
    for (const t of distinct.filter(isProduct).sort((a, b) => a - b)) chain.reach(t * EIGHTHS);
    const plain = [...chain.roots.map((eighths) => eighths / EIGHTHS), ...distinct.filter((t) => !isProduct(t))];
    const ordered = [...plain, ...chain.products.map(({ eighths }) => eighths / EIGHTHS)];
    this.places = new Map(ordered.map((t, place) => [t, place]));
    this.exponents = Float64Array.from(plain);
    this.powers = new Float64Array(ordered.length);
    this.byExponential = this.powers.subarray(0, plain.length);
    this.itself = plain.indexOf(1);
    this.first = Int32Array.from(chain.products, ({ first }) => this.places.get(first / EIGHTHS)!);
    this.second = Int32Array.from(chain.products, ({ second }) => this.places.get(second / EIGHTHS)!);
  }

  placeOf(exponent: number): number {
    return this.places.get(exponent)!;
  }

  fill(tau: number, lnTau: number): void {
    const { powers, exponents, byExponential, itself, first, second } = this;
    for (let k = 0; k < exponents.length; k++) byExponential[k] = exponents[k]! * lnTau;
    exponentials(byExponential);
    // Exactly, since its rounding would grow in the products.
    if (itself >= 0) powers[itself] = tau;
    for (let k = 0, place = exponents.length; k < first.length; k++, place++) {
      powers[place] = powers[first[k]!]! * powers[second[k]!]!;
    }
  }
}

/** Whole numbers reached by adding two reached before; those with no such two are roots. */
class ProductChain {
  readonly roots: number[] = [];
  readonly products: { readonly eighths: number; readonly first: number; readonly second: number }[] = [];
  private readonly reached = new Set<number>();

  reach(eighths: number): void {
    if (this.reached.has(eighths)) return;
    const pair = [...this.reached].find((first) => this.reached.has(eighths - first));
    if (pair !== undefined) {
      this.add(eighths, pair, eighths - pair);
      return;
    }
    // Half of it and the rest, down to 1, 2, 4 or 8 eighths.
    const lowest = EIGHTHS;
    if (eighths <= lowest) {
      this.roots.push(eighths);
      this.reached.add(eighths);
      return;
    }
    const whole = 2 ** Math.floor(Math.log2(eighths - 1));
    this.reach(whole);
    this.reach(eighths - whole);
    this.add(eighths, whole, eighths - whole);
  }

  private add(eighths: number, first: number, second: number): void {
    this.products.push({ eighths, first, second });
    this.reached.add(eighths);
  }
}
