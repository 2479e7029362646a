// The search for a conformal state: least squares in two unknowns, the distances in ln T0 and ln ρ0 from plain corresponding
// states, by Levenberg's and Marquardt's method with the curvature of the misfits learnt on the way (after Dennis, Gay and
// Welsch 1981, ACM Trans. Math. Softw. 7, 348), without which it is slow where no state meets both conditions.

import type { HelmholtzEquation } from '../../equation/equation.ts';

/**
 * Weight of the distance from plain corresponding states against the misfit of both conditions as a share of what is to be
 * matched. So small that viscosity and conductivity of a dense state change by less than 5e-7; in a thin gas, where both
 * conditions say nearly the same, it decides.
 */
const HOLD = 4e-4;
const HOLD_SQUARED = HOLD * HOLD;
/** A step in the logarithms that is none, and one that is too long to be believed. */
const SMALLEST_STEP = 1e-7;
const LONGEST_STEP = 1;
const MOST_STEPS = 100;

/** Where the search stands. Misfits and slopes are shares of what is to be matched. */
interface Standing {
  /** Distances from the start in ln T0 and ln ρ0. */
  t: number;
  rho: number;
  /** Misfits in φʳ and in Z, and their slopes over ln T0 and over ln ρ0. */
  energy: number;
  factor: number;
  energyByT: number;
  energyByRho: number;
  factorByT: number;
  factorByRho: number;
  /** Half the slopes of the cost. */
  slopeT: number;
  slopeRho: number;
  cost: number;
}

const nowhere = (): Standing => ({
  t: 0,
  rho: 0,
  energy: 0,
  factor: 0,
  energyByT: 0,
  energyByRho: 0,
  factorByT: 0,
  factorByRho: 0,
  slopeT: 0,
  slopeRho: 0,
  cost: 0,
});

export class ConformalSearch {
  private readonly scale: number;
  private here = nowhere();
  private next = nowhere();
  /** Learnt curvature: part of half the cost's second derivatives that the slopes of the misfits do not give. */
  private curvedTT = 0;
  private curvedTRho = 0;
  private curvedRhoRho = 0;

  /**
   * @param equation          of the reference fluid
   * @param energy            φʳ to be matched [-]
   * @param pressureTerm      Z − 1 to be matched [-]
   * @param startTemperature  [K]
   * @param startDensity      [kg/m³]
   */
  constructor(
    private readonly equation: HelmholtzEquation,
    private readonly energy: number,
    private readonly pressureTerm: number,
    private readonly startTemperature: number,
    private readonly startDensity: number,
  ) {
    this.scale = 1 / Math.hypot(energy, pressureTerm);
  }

  /** Searches. False where it does not settle. */
  settle(): boolean {
    this.stand(this.here, 0, 0);
    if (this.isBetter(0, -densityCorrection(this.here))) this.move();
    let caution = 0;
    for (let count = 0; count < MOST_STEPS; count++) {
      const { here } = this;
      const [stepT, stepRho] = this.step(caution);
      const size = Math.max(Math.abs(stepT), Math.abs(stepRho));
      if (!Number.isFinite(size)) return false;
      const isBetter = size <= LONGEST_STEP && this.isBetter(here.t + stepT, here.rho + stepRho);
      if (isBetter) this.move();
      if (size < SMALLEST_STEP) return true;
      if (isBetter) caution = caution < 1e-6 ? 0 : caution / 10;
      else caution = Math.max(10 * caution, 1e-4);
    }
    return false;
  }

  get temperature(): number {
    return this.startTemperature * Math.exp(this.here.t);
  }
  get density(): number {
    return this.startDensity * Math.exp(this.here.rho);
  }

  /**
   * Whether a place is better than here, as it is or with its density set right by one step of Newton's: in a thin gas the
   * places that meet both conditions alike lie along a bent line, from which a straight step leads away.
   */
  private isBetter(t: number, rho: number): boolean {
    const { here, next } = this;
    if (this.stand(next, t, rho).cost <= here.cost) return true;
    const correction = densityCorrection(next);
    return Math.abs(correction) <= LONGEST_STEP && this.stand(next, t, rho - correction).cost <= here.cost;
  }

  private stand(into: Standing, t: number, rho: number): Standing {
    const { scale } = this;
    const { residual } = this.equation.residualAt(
      this.startTemperature * Math.exp(t),
      this.startDensity * Math.exp(rho),
    );
    into.t = t;
    into.rho = rho;
    into.energy = scale * (residual[0]! - this.energy);
    into.factor = scale * (residual[1]! - this.pressureTerm);
    into.energyByT = -scale * residual[2]!;
    into.energyByRho = scale * residual[1]!;
    into.factorByT = -scale * residual[4]!;
    into.factorByRho = scale * (residual[1]! + residual[3]!);
    into.slopeT = into.energyByT * into.energy + into.factorByT * into.factor + HOLD_SQUARED * t;
    into.slopeRho = into.energyByRho * into.energy + into.factorByRho * into.factor + HOLD_SQUARED * rho;
    into.cost = into.energy ** 2 + into.factor ** 2 + HOLD_SQUARED * (t * t + rho * rho);
    return into;
  }

  /** The next step: Newton's with the learnt curvature while that bends upwards, Gauss and Newton's otherwise. */
  private step(caution: number): readonly [number, number] {
    const { energyByT, energyByRho, factorByT, factorByRho, slopeT, slopeRho } = this.here;
    let tt = energyByT ** 2 + factorByT ** 2 + HOLD_SQUARED;
    let tRho = energyByT * energyByRho + factorByT * factorByRho;
    let rhoRho = energyByRho ** 2 + factorByRho ** 2 + HOLD_SQUARED;
    const bentTT = tt + this.curvedTT;
    const bentTRho = tRho + this.curvedTRho;
    const bentRhoRho = rhoRho + this.curvedRhoRho;
    if (bentTT > 0 && bentTT * bentRhoRho > bentTRho * bentTRho) {
      tt = bentTT;
      tRho = bentTRho;
      rhoRho = bentRhoRho;
    }
    tt *= 1 + caution;
    rhoRho *= 1 + caution;
    const determinant = tt * rhoRho - tRho * tRho;
    return [(tRho * slopeRho - rhoRho * slopeT) / determinant, (tRho * slopeT - tt * slopeRho) / determinant];
  }

  /** Takes the step, and learns from how the slopes changed along it. */
  private move(): void {
    const { here, next } = this;
    const stepT = next.t - here.t;
    const stepRho = next.rho - here.rho;
    const changeT = next.slopeT - here.slopeT;
    const changeRho = next.slopeRho - here.slopeRho;
    const along = changeT * stepT + changeRho * stepRho;
    if (along > 0) {
      const bendT = (next.energyByT - here.energyByT) * next.energy + (next.factorByT - here.factorByT) * next.factor;
      const bendRho =
        (next.energyByRho - here.energyByRho) * next.energy + (next.factorByRho - here.factorByRho) * next.factor;
      this.learn(stepT, stepRho, changeT / along, changeRho / along, bendT, bendRho);
    }
    this.here = next;
    this.next = here;
  }

  /** Makes the learnt curvature bend as seen along the step, and changes it as little as can be otherwise. */
  private learn(stepT: number, stepRho: number, yT: number, yRho: number, bendT: number, bendRho: number): void {
    const seen = stepT * bendT + stepRho * bendRho;
    const believed =
      this.curvedTT * stepT ** 2 + 2 * this.curvedTRho * stepT * stepRho + this.curvedRhoRho * stepRho ** 2;
    const size = believed === 0 ? 0 : Math.min(1, Math.abs(seen / believed));
    const errorT = bendT - size * (this.curvedTT * stepT + this.curvedTRho * stepRho);
    const errorRho = bendRho - size * (this.curvedTRho * stepT + this.curvedRhoRho * stepRho);
    const along = errorT * stepT + errorRho * stepRho;
    this.curvedTT = size * this.curvedTT + 2 * errorT * yT - along * yT * yT;
    this.curvedTRho = size * this.curvedTRho + errorT * yRho + errorRho * yT - along * yT * yRho;
    this.curvedRhoRho = size * this.curvedRhoRho + 2 * errorRho * yRho - along * yRho * yRho;
  }
}

/** How far ln ρ0 lies above the least cost at this temperature, by Newton's method. */
function densityCorrection({ slopeRho, energyByRho, factorByRho }: Standing): number {
  return slopeRho / (energyByRho ** 2 + factorByRho ** 2 + HOLD_SQUARED);
}
