// Round numbers along an axis: steps of 1, 2 or 5 on a linear one; 1, 2 and 5 of each decade on a logarithmic one.

export interface Tick {
  readonly value: number;
  readonly label: string;
}

/**
 * @param low   lower end of the axis
 * @param high  upper end, above it
 * @param most  how many steps there is room for, at least 1
 */
export function linearTicks(low: number, high: number, most: number): readonly Tick[] {
  const step = roundStep((high - low) / Math.max(1, most));
  const decimals = Math.max(0, -Math.floor(Math.log10(step) + 1e-9));
  const first = Math.ceil(low / step - 1e-9);
  const last = Math.floor(high / step + 1e-9);
  return Array.from({ length: last - first + 1 }, (_, index) => {
    const value = Number(((first + index) * step).toFixed(decimals));
    return { value, label: tickLabel(value, decimals) };
  });
}

/** The smallest of 1, 2 or 5 times a power of ten that is not below a number. */
export function roundStep(atLeast: number): number {
  const power = 10 ** Math.floor(Math.log10(atLeast) + 1e-12);
  const times = [1, 2, 5, 10].find((factor) => factor * power >= atLeast * (1 - 1e-9)) ?? 10;
  return times * power;
}

/** Ends above zero. An axis that spans less than a factor of three has the steps of a linear one. */
export function logarithmicTicks(low: number, high: number, most: number): readonly Tick[] {
  if (high / low < 3) return linearTicks(low, high, most);
  const decades = Array.from(
    { length: Math.ceil(Math.log10(high)) - Math.floor(Math.log10(low)) + 1 },
    (_, index) => Math.floor(Math.log10(low)) + index,
  );
  const inside = (factors: readonly number[]) =>
    decades
      .flatMap((decade) => factors.map((factor) => ({ factor, decade })))
      .filter(({ factor, decade }) => {
        const value = factor * 10 ** decade;
        return value >= low * (1 - 1e-9) && value <= high * (1 + 1e-9);
      })
      .map(({ factor, decade }) => {
        const decimals = Math.max(0, -decade);
        const value = Number((factor * 10 ** decade).toFixed(decimals));
        return { value, label: tickLabel(value, decimals) };
      });
  const fine = inside([1, 2, 5]);
  return fine.length <= Math.max(2, most) ? fine : inside([1]);
}

function tickLabel(value: number, decimals: number): string {
  const digits = Math.abs(value).toFixed(decimals);
  const [whole = '', rest] = digits.split('.');
  const grouped = whole.length < 5 ? whole : whole.replace(/\B(?=(\d{3})+$)/g, '\u202f');
  return `${value < 0 ? '−' : ''}${grouped}${rest === undefined ? '' : `.${rest}`}`;
}
