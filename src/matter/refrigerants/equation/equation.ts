// The fundamental equation of a fluid, a(ρ,T)/(R T) = φ⁰(δ,τ) + φʳ(δ,τ) with δ = ρ/ρ_r and τ = T_r/T, and every property
// that follows from it and its first and second derivatives. Works on plain numbers and reused arrays: the solvers above
// call it many times per state. One evaluation leaves its result in the fields of the equation until the next one; no
// value depends on what was evaluated before.

import type { FluidData, NonAnalyticTermData, ResidualTermData } from './fluid-data.ts';
import {
  enthalpyOf,
  entropyOf,
  heatCapacityAtConstantPressure,
  heatCapacityAtConstantVolume,
  pressureOf,
  soundSpeedOf,
  stiffnessOf,
  thermalPushOf,
} from './relations.ts';
import { IdealTerms } from './terms/ideal.ts';
import { NonAnalyticTerms } from './terms/non-analytic.ts';
import { type SeparableTermData, SeparableTerms } from './terms/separable.ts';

/** The part of a coefficient file that makes an equation. */
export type EquationData = Pick<FluidData, 'gasConstant' | 'molarMass' | 'reducing' | 'ideal' | 'residual'>;

/**
 * One fluid's equation. `at(T, ρ)` evaluates it with all first and second derivatives; the getters then give properties
 * by the relations of relations.ts.
 * Temperatures [K], densities [kg/m³], R [J/(kg K)]; the caller guarantees T > 0 and ρ > 0.
 * Source: as given in each fluid's citation; form after R. Span (2000), Multiparameter Equations of State, chapter 3.
 */
export class HelmholtzEquation {
  /** R [J/(kg K)]. */
  readonly gasConstant: number;
  readonly reducingTemperature: number;
  readonly reducingDensity: number;
  /** Added to h and s so that they count from the chosen zero. */
  enthalpyZero = 0;
  entropyZero = 0;

  temperature = Number.NaN;
  density = Number.NaN;
  /** φʳ, δφʳ_δ, τφʳ_τ, δ²φʳ_δδ, δτφʳ_δτ, τ²φʳ_ττ. */
  readonly residual = new Float64Array(6);
  /** φ⁰ without ln δ, τφ⁰_τ, τ²φ⁰_ττ. */
  readonly ideal = new Float64Array(3);

  private readonly separable: SeparableTerms;
  private readonly nonAnalytic: NonAnalyticTerms | undefined;
  private readonly idealTerms: IdealTerms;
  private tau = Number.NaN;
  private lnTau = Number.NaN;
  private reducedDensity = Number.NaN;
  private idealAt = Number.NaN;

  constructor(data: EquationData) {
    this.gasConstant = data.gasConstant / data.molarMass;
    this.reducingTemperature = data.reducing.temperature;
    this.reducingDensity = data.reducing.molarDensity * data.molarMass;
    const nonAnalytic = data.residual.filter(isNonAnalytic);
    this.separable = new SeparableTerms(data.residual.filter(isSeparable));
    this.nonAnalytic = nonAnalytic.length > 0 ? new NonAnalyticTerms(nonAnalytic) : undefined;
    this.idealTerms = new IdealTerms(data.ideal);
  }

  /** Evaluates the residual part only: enough for pressure and for the conditions of equilibrium. */
  residualAt(temperature: number, density: number): this {
    if (temperature !== this.temperature) {
      this.temperature = temperature;
      this.tau = this.reducingTemperature / temperature;
      this.lnTau = Math.log(this.tau);
    }
    const { tau, lnTau, residual } = this;
    const delta = density / this.reducingDensity;
    this.density = density;
    this.reducedDensity = delta;
    this.separable.sum(tau, lnTau, delta, residual);
    if (this.nonAnalytic !== undefined) this.nonAnalytic.add(tau, delta, residual);
    return this;
  }

  /** Evaluates both parts: enough for every property. */
  at(temperature: number, density: number): this {
    this.residualAt(temperature, density);
    if (temperature !== this.idealAt) {
      this.idealAt = temperature;
      this.idealTerms.sum(this.tau, this.lnTau, this.ideal);
    }
    return this;
  }

  get delta(): number {
    return this.reducedDensity;
  }
  /** p [Pa]. */
  get pressure(): number {
    return pressureOf(this.density, this.gasConstant, this.temperature, this.residual[1]!);
  }
  /** K [-], see stiffnessOf. */
  get stiffness(): number {
    return stiffnessOf(this.residual[1]!, this.residual[3]!);
  }
  /** (∂p/∂ρ)_T [J/kg]. */
  get pressureByDensity(): number {
    return this.gasConstant * this.temperature * this.stiffness;
  }
  /** (∂p/∂T)_ρ / (ρ R) [-], see thermalPushOf. */
  get thermalPush(): number {
    return thermalPushOf(this.residual[1]!, this.residual[4]!);
  }
  /** (∂p/∂T)_ρ [Pa/K]. */
  get pressureByTemperature(): number {
    return this.density * this.gasConstant * this.thermalPush;
  }
  /** The part of g/(R T) that differs between phases at one temperature: φʳ + δφʳ_δ + ln δ. */
  get chemicalPart(): number {
    return this.residual[0]! + this.residual[1]! + Math.log(this.reducedDensity);
  }
  /** τ (φ⁰_τ + φʳ_τ) [-]. */
  get tauSlope(): number {
    return this.ideal[1]! + this.residual[2]!;
  }
  /** τ² (φ⁰_ττ + φʳ_ττ) [-]. */
  get tauCurvature(): number {
    return this.ideal[2]! + this.residual[5]!;
  }
  /** φ⁰ + φʳ [-]. */
  get reducedEnergy(): number {
    return this.ideal[0]! + Math.log(this.reducedDensity) + this.residual[0]!;
  }
  /** h [J/kg]. */
  get enthalpy(): number {
    return enthalpyOf(this.gasConstant, this.temperature, this.residual[1]!, this.tauSlope, this.enthalpyZero);
  }
  /** s [J/(kg K)]. */
  get entropy(): number {
    return entropyOf(this.gasConstant, this.tauSlope, this.reducedEnergy, this.entropyZero);
  }
  /** c_v [J/(kg K)]. */
  get cv(): number {
    return heatCapacityAtConstantVolume(this.gasConstant, this.tauCurvature);
  }
  /** c_p [J/(kg K)]. */
  get cp(): number {
    return heatCapacityAtConstantPressure(this.gasConstant, this.tauCurvature, this.thermalPush, this.stiffness);
  }
  /** w [m/s]. */
  get soundSpeed(): number {
    const { gasConstant, temperature, tauCurvature, thermalPush, stiffness } = this;
    return soundSpeedOf(gasConstant, temperature, tauCurvature, thermalPush, stiffness);
  }
  /** (∂h/∂ρ)_T [J m³/kg²]. */
  get enthalpyByDensity(): number {
    const { residual } = this;
    const reducedSlope = residual[1]! + residual[3]! + residual[4]!;
    return (this.gasConstant * this.temperature * reducedSlope) / this.density;
  }
  /** (∂h/∂T)_ρ [J/(kg K)]. */
  get enthalpyByTemperature(): number {
    return this.cv + this.gasConstant * this.thermalPush;
  }
  /** (∂s/∂ρ)_T [J m³/(kg² K)]. */
  get entropyByDensity(): number {
    return (-this.gasConstant * this.thermalPush) / this.density;
  }
}

function isNonAnalytic(data: ResidualTermData): data is NonAnalyticTermData & { readonly type: 'nonAnalytic' } {
  return data.type === 'nonAnalytic';
}

function isSeparable(data: ResidualTermData): data is SeparableTermData {
  return data.type !== 'nonAnalytic';
}
