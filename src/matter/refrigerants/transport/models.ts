// From the block `transport` of a coefficient file to models that answer: one for viscosity, one for conductivity. They are
// made when a fluid is first asked for either, so that whoever never asks need not load them.

import type { Refrigerant } from '../types.ts';
import { criticalConductivityTufeu1984 } from './ammonia.ts';
import { batschinskiHildebrand, type OfTemperatureAndDensity } from './batschinski-hildebrand.ts';
import {
  diluteConductivityHuber2016,
  diluteViscosityLaesecke2017,
  residualViscosityLaesecke2017,
} from './carbon-dioxide.ts';
import { olchowySengers } from './critical-enhancement.ts';
import { conductivityByStates, viscosityByStates } from './estimates/corresponding-states.ts';
import { residualEntropyViscosity } from './estimates/residual-entropy.ts';
import { diluteViscosity, secondViscosityVirial } from './low-density.ts';
import type { TransportPoint } from './point.ts';
import { PowerSum, polynomial } from './power-sum.ts';
import type {
  ConductivityCorrelationData,
  ConductivityData,
  LennardJonesData,
  TransportData,
  ViscosityCorrelationData,
  ViscosityData,
} from './transport-data.ts';
import { conductivityOfWater, viscosityOfWater } from './water.ts';

export interface ViscosityModel {
  readonly data: ViscosityData;
  /** η [Pa s]; NaN where the model says nothing. `reference` is the fluid that the data name, if they name one. */
  readonly at: (point: TransportPoint, fluid: Refrigerant, reference: ReferenceFluid | undefined) => number;
  /** What η gains over that of the dilute gas, by temperature [K] and density [mol/m³]; correlations alone have it. */
  readonly background?: OfTemperatureAndDensity;
}

export interface ConductivityModel {
  readonly data: ConductivityData;
  /** λ [W/(m K)] at a state of known viscosity [Pa s]; NaN where the model says nothing. */
  readonly at: (
    point: TransportPoint,
    viscosity: number,
    fluid: Refrigerant,
    reference: ReferenceFluid | undefined,
  ) => number;
  /** What λ gains over that of the dilute gas away from the critical point, by temperature [K] and density [kg/m³]. */
  readonly background?: OfTemperatureAndDensity;
}

export interface TransportModels {
  readonly viscosity: ViscosityModel;
  readonly conductivity: ConductivityModel;
  /** The other refrigerant that a model of this one reckons with, by its own name. */
  readonly referenceFluid: string | undefined;
}

/** The other refrigerant that corresponding states reckon with. */
export interface ReferenceFluid {
  readonly fluid: Refrigerant;
  readonly models: TransportModels;
}

// Making the models is a pure function of the block: keeping its result changes no answer, only the time.
const made = new WeakMap<TransportData, TransportModels>();

/** The models of a fluid; the same object at each call. */
export function transportModelsOf({ transport, molarMass }: Refrigerant): TransportModels {
  const known = made.get(transport);
  if (known !== undefined) return known;
  const { lennardJones, viscosity, conductivity } = transport;
  const named = [viscosity, conductivity].find((model) => model.type === 'correspondingStates');
  const models = {
    viscosity: viscosityModel(viscosity, lennardJones, molarMass),
    conductivity: conductivityModel(conductivity, lennardJones, molarMass),
    referenceFluid: named?.referenceFluid,
  };
  made.set(transport, models);
  return models;
}

// That molecules are described where a model reckons with them, the check of the file has seen to.
function viscosityModel(
  data: ViscosityData,
  molecules: LennardJonesData | undefined,
  molarMass: number,
): ViscosityModel {
  switch (data.type) {
    case 'correlation':
      return viscosityCorrelation(data, molecules, molarMass);
    case 'residualEntropy':
      return { data, at: residualEntropyViscosity(data, molecules!, molarMass) };
    case 'correspondingStates':
      return viscosityByStates(data, molecules!, molarMass);
    case 'water':
      return { data, at: viscosityOfWater };
    default:
      return data satisfies never;
  }
}

function conductivityModel(
  data: ConductivityData,
  molecules: LennardJonesData | undefined,
  molarMass: number,
): ConductivityModel {
  switch (data.type) {
    case 'correlation':
      return conductivityCorrelation(data);
    case 'correspondingStates':
      return conductivityByStates(data, molecules!, molarMass);
    case 'water':
      return { data, at: conductivityOfWater };
    default:
      return data satisfies never;
  }
}

/** η = η₀(T) (1 + B(T) ρ) + Δη(T, ρ). */
function viscosityCorrelation(
  data: ViscosityCorrelationData,
  molecules: LennardJonesData | undefined,
  molarMass: number,
): ViscosityModel {
  const { dilute, initialDensity, residual } = data;
  const gas =
    dilute.type === 'carbonDioxide' ? diluteViscosityLaesecke2017 : diluteViscosity(dilute, molecules, molarMass);
  const virial = initialDensity === undefined ? () => 0 : secondViscosityVirial(initialDensity, molecules!);
  const dense: OfTemperatureAndDensity =
    residual.type === 'carbonDioxide'
      ? (temperature, molarDensity) => residualViscosityLaesecke2017(temperature, molarDensity * molarMass)
      : batschinskiHildebrand(residual);
  return {
    data,
    at: ({ temperature, molarDensity }) =>
      viscosityOf(gas(temperature), virial(temperature), molarDensity, dense(temperature, molarDensity)),
    background: (temperature, molarDensity) =>
      gas(temperature) * virial(temperature) * molarDensity + dense(temperature, molarDensity),
  };
}

/**
 * Viscosity from its parts.
 *     η = η₀ (1 + B ρ) + Δη
 * η₀ dilute gas [Pa s], B second viscosity virial coefficient [m³/mol], ρ [mol/m³], Δη gain at higher density [Pa s].
 */
export function viscosityOf(dilute: number, virial: number, molarDensity: number, gain: number): number {
  return dilute * (1 + virial * molarDensity) + gain;
}

/** λ = λ₀(T) + Δλ(T, ρ) + Δλ_c(T, ρ). */
function conductivityCorrelation(data: ConductivityCorrelationData): ConductivityModel {
  const { dilute, residual, critical } = data;
  const gas =
    dilute.type === 'carbonDioxide'
      ? diluteConductivityHuber2016
      : (temperature: number) => polynomial(dilute.c, temperature / dilute.reducingTemperature);
  const powers = new PowerSum(residual);
  const background: OfTemperatureAndDensity = (temperature, density) =>
    powers.at(density / residual.reducingDensity, residual.reducingTemperature / temperature);
  const near = (point: TransportPoint, viscosity: number): number => {
    switch (critical.type) {
      case 'olchowySengers':
        return olchowySengers(point, viscosity, critical);
      case 'ammonia':
        return criticalConductivityTufeu1984(point.temperature, point.density);
      case 'none':
        return 0;
      default:
        return critical satisfies never;
    }
  };
  return {
    data,
    at: (point, viscosity) =>
      conductivityOf(gas(point.temperature), background(point.temperature, point.density), near(point, viscosity)),
    background,
  };
}

/**
 * Thermal conductivity from its parts.
 *     λ = λ₀ + Δλ + Δλ_c
 * λ₀ dilute gas, Δλ gain at higher density, Δλ_c gain near the critical point [W/(m K)].
 */
export function conductivityOf(dilute: number, gain: number, critical: number): number {
  return dilute + gain + critical;
}
