// Between which ends a property of a material is believed; beyond them it is a misprint or a slip of the pen.

export interface Limits {
  readonly min: number;
  readonly max: number;
}

/** k, W/(m K): from below any foam of the trade to above silver. */
export const conductivityLimits: Limits = { min: 0.01, max: 450 };
/** k of what is offered as insulation, W/(m K). A widely copied open table lists cork tile as 65 for 0.065. */
export const insulationConductivityLimits: Limits = { min: 0.01, max: 0.1 };
/** ε: polished metal to a black body. */
export const emissivityLimits: Limits = { min: 0.01, max: 1 };
/** ρ, kg/m³. */
export const densityLimits: Limits = { min: 5, max: 25000 };
/** c_p, J/(kg K). */
export const specificHeatLimits: Limits = { min: 100, max: 5000 };
/** d, m: a foil to a thick wall. */
export const thicknessLimits: Limits = { min: 1e-6, max: 5 };
