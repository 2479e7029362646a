// The name of a symbol in a formula record, as it is set and as it is read aloud: 'rho_1' → ρ with a lowered 1,
// 'dT_sh' → ΔT with a lowered sh, 'a1' → a with a lowered 1. What is no name of a Greek letter stands as it is.

/** A symbol ready to be set: its letters, and what stands lowered beside them. */
export interface SetSymbol {
  /** True where the letters begin with the sign of a difference. */
  readonly difference: boolean;
  readonly letters: string;
  readonly lowered: string | undefined;
}

const greek: Readonly<Record<string, string>> = {
  alpha: 'α',
  beta: 'β',
  gamma: 'γ',
  delta: 'δ',
  epsilon: 'ε',
  eps: 'ε',
  zeta: 'ζ',
  eta: 'η',
  theta: 'θ',
  kappa: 'κ',
  lambda: 'λ',
  mu: 'µ',
  nu: 'ν',
  xi: 'ξ',
  pi: 'π',
  rho: 'ρ',
  sigma: 'σ',
  tau: 'τ',
  phi: 'φ',
  chi: 'χ',
  psi: 'ψ',
  omega: 'ω',
};

/** A difference is a small d before one letter that stands for a quantity: dT, dQ_1, dh_s, but d alone is a thickness. */
const differencePattern = /^d(?=[A-Zhp](?:_|\d|$))/;

export function setSymbol(name: string): SetSymbol {
  const difference = differencePattern.test(name);
  const whole = difference ? name.slice(1) : name;
  const [first = '', ...rest] = whole.split('_');
  const numbered = rest.length === 0 ? /^([A-Za-z]+?)(\d+)$/.exec(first) : null;
  const letters = numbered?.[1] ?? first;
  const lowered = numbered?.[2] ?? (rest.length === 0 ? undefined : rest.join(' '));
  return { difference, letters: greek[letters] ?? letters, lowered };
}

/** The symbol as it is read aloud: "delta T sh", "rho 1". */
export function symbolWords(name: string): string {
  const difference = differencePattern.test(name);
  const spoken = (difference ? name.slice(1) : name).replaceAll('_', ' ').replace(/^([A-Za-z]+?)(\d+)$/, '$1 $2');
  return `${difference ? 'delta ' : ''}${spoken.replace(/^eps\b/, 'epsilon')}`;
}
