// Public names of the measures against heat loss.

export { applyMeasures, type WrappedTank } from './apply.ts';
export { applyToBuilt } from './apply-built.ts';
export type {
  ChangedPart,
  LidSheet,
  Measure,
  MeasureOutcome,
  NoEffect,
  NoEffectReason,
  PanelPlace,
} from './measure.ts';
export { areaOf, type PanelGroup, panelGroups, panelsOf } from './places.ts';
