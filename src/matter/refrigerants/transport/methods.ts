// How viscosity, conductivity and surface tension of a fluid are come by: what a person is to know beside such a number.

import type { Refrigerant } from '../types.ts';
import type { ConductivityData, SourceRange, ViscosityData } from './transport-data.ts';

/**
 * `ownCorrelation`: fitted to measurements of the fluid itself. `residualEntropy`: one curve over the residual entropy for many
 * fluids, with one factor fitted. `correspondingStates`: from a reference fluid at the state that corresponds, with a density
 * factor fitted. The last two are estimates.
 */
export type TransportMethodName = 'ownCorrelation' | 'residualEntropy' | 'correspondingStates';

export interface TransportMethod {
  readonly method: TransportMethodName;
  /** The paper or release. */
  readonly source: string;
  readonly isEstimate: boolean;
  /** Own name of the refrigerant that corresponding states reckon with. */
  readonly referenceFluid?: string;
  /** Where the source states that it was made [K, Pa]; unknown where it is missing. */
  readonly range?: SourceRange;
  /** What is known of how far values lie from the truth, in words; nothing where it is missing. */
  readonly truth?: string;
}

export interface TransportMethods {
  readonly viscosity: TransportMethod;
  readonly conductivity: TransportMethod;
  readonly surfaceTension: TransportMethod;
}

/** The methods behind transportAt and surfaceTensionAt of a fluid, from its coefficient file. */
export function transportMethods(fluid: Refrigerant): TransportMethods {
  const { viscosity, conductivity, truth = {} } = fluid.transport;
  return {
    viscosity: { ...methodOf(viscosity), ...told(truth.viscosity) },
    conductivity: { ...methodOf(conductivity), ...told(truth.conductivity) },
    surfaceTension: {
      method: 'ownCorrelation',
      source: fluid.citations.surfaceTension,
      isEstimate: false,
      ...told(truth.surfaceTension),
    },
  };
}

function methodOf(data: ViscosityData | ConductivityData): TransportMethod {
  const method = data.type === 'water' || data.type === 'correlation' ? 'ownCorrelation' : data.type;
  return {
    method,
    source: data.source,
    isEstimate: method !== 'ownCorrelation',
    ...(data.type === 'correspondingStates' ? { referenceFluid: data.referenceFluid } : {}),
    ...(data.range === undefined ? {} : { range: data.range }),
  };
}

function told(truth: string | undefined): { readonly truth?: string } {
  return truth === undefined ? {} : { truth };
}
