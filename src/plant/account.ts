// The rule that an energy account must close. A result that does not is an error of the numbers that went in, never a result.

import { KettlefinError } from '../numerics/index.ts';

/** Heat in and heat out of a balance differ by more than rounding. */
export class EnergyAccountError extends KettlefinError {
  override readonly name = 'EnergyAccountError';
  readonly code = 'energyAccountOpen';
  readonly balance: string;
  readonly residual: number;
  readonly scale: number;

  constructor(balance: string, residual: number, scale: number) {
    super(`the energy account of ${balance} is open by ${residual} W at a scale of ${scale} W`);
    this.balance = balance;
    this.residual = residual;
    this.scale = scale;
  }

  facts() {
    return { balance: this.balance, residual: this.residual, scale: this.scale };
  }
}

/** Largest share of the biggest flow by which an account may fail to close: rounding and the solvers' last digits. */
export const accountTolerance = 1e-9;

/**
 * Residual of a balance, relative to its largest flow.
 *     r = (Σ in − Σ out) / max |flow|
 * @param balance  name of the balance, for the error
 * @param inward   flows in [W]
 * @param outward  flows out [W]
 * @returns        r [-]; 0 where every flow is 0
 * @throws EnergyAccountError if |r| > 1e-9 or not a number
 */
export function closeAccount(balance: string, inward: readonly number[], outward: readonly number[]): number {
  const residual = sum(inward) - sum(outward);
  const scale = Math.max(0, ...inward.map(Math.abs), ...outward.map(Math.abs));
  if (scale === 0) return 0;
  if (!(Math.abs(residual) <= accountTolerance * scale)) throw new EnergyAccountError(balance, residual, scale);
  return residual / scale;
}

function sum(flows: readonly number[]): number {
  return flows.reduce((total, flow) => total + flow, 0);
}
