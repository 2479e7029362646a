// What goes to and comes from the engine's worker: one typed union each way, every message with the id of its request.
// Errors cross as data. Sentences of findings are made in the worker too, so that the page needs no engine for words.

import type { Assessment, BareAssessment, LoopAgainstWords, ResultRange } from '../../assess/index.ts';
import type { Diagram, DiagramRequest } from '../../charts/index.ts';
import type { FormulaText, UnitView, WorkingStep } from '../../quantities/index.ts';
import type { BothWaysAnswer } from './both-ways.ts';
import type { BriefAnswer, BriefForm } from './brief.ts';
import type { CompareAnswer, CompareForm } from './compare.ts';
import type { CycleAnswer, CycleForm } from './cycle.ts';
import type { CycleOffer } from './cycle-offer.ts';
import type { MachineReply } from './machine.ts';
import type { WrappingReply } from './wrapping.ts';

/** Formulas by their id. */
export type FormulaTexts = Readonly<Record<string, FormulaText>>;

export interface AssessRequest {
  readonly kind: 'assess';
  /** The design's own text, as it would be saved. */
  readonly text: string;
  readonly view: UnitView;
}

/** Figures of the charge are withheld in it where the answer is not to build. */
export interface WordsOfFinding {
  readonly title: string;
  readonly text: string;
  readonly remedy: string;
  readonly source: string;
}

/** How the numbers were computed is asked for apart. */
export interface BareAnswer {
  readonly assessment: BareAssessment;
  /** Words per finding and per caution, in the order of the Assessment, in the view's units. */
  readonly findingWords: readonly WordsOfFinding[];
  readonly cautionWords: readonly WordsOfFinding[];
  /** Sentences on this loop against each other way, in the order of the Assessment. */
  readonly loopAgainstWords: readonly LoopAgainstWords[];
  /** How long the engine took [ms]. */
  readonly took: number;
}

/** The answer as the page holds it: its workings may still be to come, see state/workings.ts. */
export interface AssessAnswer extends BareAnswer {
  readonly assessment: Assessment;
}

/** How every number of a design was computed. */
export interface WorkingsRequest {
  readonly kind: 'workings';
  /** The design's own text, as it would be saved. */
  readonly text: string;
  readonly view: UnitView;
}

export interface CycleRequest {
  readonly kind: 'cycle';
  readonly form: CycleForm;
  readonly view: UnitView;
}

/** The cycle laid over the first: asked beside it, so that neither waits for nor replaces the other. */
export interface SecondCycleRequest extends Omit<CycleRequest, 'kind'> {
  readonly kind: 'secondCycle';
}

export interface DiagramMessage {
  readonly kind: 'diagram';
  readonly request: DiagramRequest;
  readonly view: UnitView;
}

/** The range of one result of the design that was answered last. */
export interface RangeRequest {
  readonly kind: 'range';
  /** Name of the result: 'tank.load'. */
  readonly result: string;
}

/** Refrigerants in the machine of the design, side by side. */
export interface CompareRequest {
  readonly kind: 'compare';
  readonly form: CompareForm;
  readonly view: UnitView;
}

/** The printed pages for a licensed technician, of an assessment the page has. */
export interface BriefRequest {
  readonly kind: 'brief';
  readonly form: BriefForm;
  readonly view: UnitView;
}

/** Every formula of the engine, for showing how numbers were computed. */
export interface FormulasRequest {
  readonly kind: 'formulas';
}

/** The design reckoned with states from the equation and with states from tables. */
export interface BothWaysRequest {
  readonly kind: 'bothWays';
  /** The design's own text, as it would be saved. */
  readonly text: string;
  readonly view: UnitView;
}

/** What to wrap: each measure alone and in turn. */
export interface WrappingRequest {
  readonly kind: 'wrapping';
  /** The design's own text, as it would be saved. */
  readonly text: string;
  readonly view: UnitView;
}

/** The machine beyond its verdict: over the evaporating temperature, remedies, number, other fluids, its start. */
export interface MachineRequest {
  readonly kind: 'machine';
  /** The design's own text, as it would be saved. */
  readonly text: string;
  readonly view: UnitView;
}

export type EngineRequest =
  | AssessRequest
  | CycleRequest
  | SecondCycleRequest
  | DiagramMessage
  | RangeRequest
  | CompareRequest
  | BriefRequest
  | FormulasRequest
  | WorkingsRequest
  | BothWaysRequest
  | WrappingRequest
  | MachineRequest;

/** What each kind of request is answered with. */
export interface EngineAnswers {
  readonly assess: BareAnswer;
  readonly cycle: CycleAnswer;
  readonly secondCycle: CycleAnswer;
  readonly diagram: Diagram;
  /** Undefined for a result that has no band. */
  readonly range: ResultRange | undefined;
  readonly compare: CompareAnswer;
  readonly brief: BriefAnswer;
  readonly formulas: FormulaTexts;
  readonly workings: readonly WorkingStep[];
  readonly bothWays: BothWaysAnswer;
  readonly wrapping: WrappingReply;
  readonly machine: MachineReply;
}

/** One thing wrong, with the place in the design where there is one. */
export interface EngineProblem {
  readonly code: string;
  readonly path: string | undefined;
  readonly message: string;
  /** Of a cycle whose levels lie outside the dome: levels that it could have. */
  readonly offer?: CycleOffer;
}

export interface Numbered<T> {
  readonly id: number;
  readonly body: T;
}

/** Told without being answered: refrigerants that will be asked about, to be fetched while the page still begins. */
export interface ComingFluids {
  readonly coming: readonly string[];
}

/** What the page sends. */
export type ToWorker = Numbered<EngineRequest> | ComingFluids;

export type EngineReply = {
  readonly [Kind in keyof EngineAnswers]:
    | { readonly kind: Kind; readonly id: number; readonly ok: true; readonly answer: EngineAnswers[Kind] }
    | { readonly kind: Kind; readonly id: number; readonly ok: false; readonly problems: readonly EngineProblem[] };
}[keyof EngineAnswers];
