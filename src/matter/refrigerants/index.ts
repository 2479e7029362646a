// Public names of the refrigerants: fluids, states, saturation, derivatives, viscosity and conductivity, tables, reference
// states, what is known of a fluid besides, and how its numbers were computed.

export {
  type AttackedMetal,
  type CatalogueEntry,
  type CatalogueField,
  catalogueEntry,
  type FieldSource,
  type Oil,
  type SafetyClass,
} from './catalogue/catalogue.ts';
export { isStudyOnly, type StudyOnlyReason, studyOnlyReasons, unconfirmedOf } from './catalogue/study-only.ts';
export {
  type Derivatives,
  type Derived,
  derivativesAt,
  derivedAt,
  saturationPressureSlope,
} from './derivatives/derived.ts';
export { partialDerivative, type StateVariable } from './derivatives/partial.ts';
export { glideOf } from './dome/glide.ts';
export { saturationAtBubbleTemperature, saturationAtDewTemperature } from './dome/levels.ts';
export { glideWorking } from './dome/line-working.ts';
export { stateAt, supportedPairs } from './flash/entropy-pairs/state-at.ts';
export { saturationAtPressure, saturationAtTemperature, stateInLoop } from './flash/flash.ts';
export { meltingPressure, meltingTemperature } from './flash/melting-line.ts';
export { refrigerantFormulas } from './formulas.ts';
export { addCoefficientFile, hasCoefficientFile, refrigerant } from './library.ts';
export { fluidsNeededBy, refrigerantAliases, refrigerantName, refrigerantNamed, refrigerantNames } from './names.ts';
export { type ReferenceState, type ReferenceStateName, referenceOffset, referenceStates } from './reference-states.ts';
export { surfaceTensionAt } from './surface-tension.ts';
export {
  AROUND_CRITICAL,
  loopRegion,
  type PropertyTable,
  type TableRegion,
  type TableStates,
  type TabulatedRefrigerant,
  tabulated,
} from './tables/index.ts';
export {
  type TransportMethod,
  type TransportMethodName,
  type TransportMethods,
  transportMethods,
} from './transport/methods.ts';
export { type Transport, transportAt } from './transport/transport.ts';
export type { SourceRange } from './transport/transport-data.ts';
export type { LoopPair, Phase, Refrigerant, Saturation, State, StateInput } from './types.ts';
export {
  type CaloricShift,
  type DomeOrigins,
  furtherPropertiesWorking,
  internalEnergyWorking,
  type StateOrigins,
  saturatedSidesWorking,
  saturationPressureWorking,
  saturationTemperatureWorking,
  stateWorking,
} from './working.ts';
