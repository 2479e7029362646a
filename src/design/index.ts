// Public names of the design: reading, checking, editing and resolving the document, and its field records.

export { noticesOf } from './checks/machine-notices.ts';
export {
  addItem,
  type EditResult,
  fieldsOfItem,
  fieldsOfKind,
  getField,
  itemsOf,
  moveItem,
  removeItem,
  setField,
  setKind,
} from './edit.ts';
export {
  type FieldRecord,
  fieldRecord,
  fieldRecords,
  fieldsOf,
  fullLabel,
  isPlaceInDesign,
  type ListRecord,
  listRecord,
  listRecords,
  listsOf,
  type UnionKind,
} from './field-records.ts';
export { designJsonSchema } from './json-schema.ts';
export { readJson } from './json-text.ts';
export { type DesignNotice, type DesignNoticeCode, sayNotice } from './notices.ts';
export { checkDesign, longestDesignText, parseDesign, type ReadDesign, serialiseDesign } from './parse.ts';
export { partAt, textAt } from './paths.ts';
export {
  type ApplicationName,
  type Assumption,
  type DesignOf,
  type PlainDesign,
  plainDesign,
  type ResolvedDesign,
  withValue,
  type YesNo,
  type YesNoUnknown,
} from './plain.ts';
export type {
  BenchOf,
  CoefficientQuantityName,
  CoefficientSetOf,
  CompressorOf,
  LiquidBasisOf,
  NameplateOf,
  OilName,
  PointTableOf,
  RatingOf,
  SaturationName,
  Span,
  StartTypeName,
  SuctionBasisOf,
  SupplyOf,
} from './plain-machine.ts';
export type {
  BoardOf,
  ExposureOf,
  FaceName,
  FaceOf,
  FacePartsOf,
  LayerOf,
  LoadOf,
  MeterOf,
  PanelOf,
  PipeOf,
  SheetOf,
  SideVesselOf,
  SizedLoadOf,
  WrappingMeasureOf,
} from './plain-tank.ts';
export { type DesignProblem, type DesignProblemCode, type Result, sayProblem } from './problems.ts';
export { type Follower, withFollowers } from './resolving/followers.ts';
export { fluidsOf } from './resolving/machine-origin.ts';
export { type Resolution, resolveDesign, type UncertainInput, uncertainInputs } from './resolving/resolve.ts';
export { resolveSizedLoad } from './resolving/sized-tank.ts';
export { addSizedLoads } from './resolving/tank.ts';
export { type DesignDocument, formatVersion } from './schema/design.ts';
export {
  type Choice,
  type DefaultRecord,
  type FieldProblem,
  type Level,
  mostItems,
  quantityFieldProblem,
} from './schema/field.ts';
export {
  askedFields,
  newDesign,
  type StartAnswers,
  type StartField,
  type StartQuestion,
  startQuestions,
  startRecord,
} from './start.ts';
