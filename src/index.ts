// The library: what other programs may import. Plain functions on plain numbers in base SI; errors are typed.
//   refrigerants  refrigerant, stateAt, saturationAt…      cycle    textbookCycle, propertyDiagram, cyclePath
//   tank          tankLoad, rectangularTank, materialLayer  machine  hermeticPoint, runningPoint, operatingPoint, condenserCoil, evaporatorFace
//   machine       assessMachine, assessMachinePoints, assessSettle, assessFit
//   design        parseDesign, resolveDesign               verdict  assessDesign, Assessor
//   working       chainOf, printedStep, parseExpression     cycle    textbookCycleWorking
//   comparison    compareRefrigerants, compareTextbookCycles
//   brief         brief, briefHtml                         picture  chartSvg

import './matter/every-refrigerant/index.ts';
import './assess/every-tank/index.ts';
import './assess/every-machine/index.ts';

export {
  type Assessment,
  type AssessOutcome,
  Assessor,
  allFormulas,
  assessDesign,
  assessFit,
  assessMachine,
  assessMachinePoints,
  assessSettle,
  compareRefrigerants,
  compareTextbookCycles,
  type FitAnswer,
  formulaById,
  type MachinePoint,
  type MachineStudy,
  type RefrigerantComparison,
  type SettleAnswer,
  type Standing,
  sayFinding,
  type UnansweredPoint,
} from './assess/index.ts';
export { type BriefDocument, type BriefRequest, brief, briefHtml } from './brief/index.ts';
export { caution } from './cautions/index.ts';
export { type ChartSpecification, chartSvg, type SvgOptions } from './charts/index.ts';
export {
  type DesignDocument,
  type DesignProblem,
  designJsonSchema,
  fieldRecords,
  parseDesign,
  resolveDesign,
  sayProblem,
  serialiseDesign,
  setField,
} from './design/index.ts';
export {
  cyclePath,
  type OperatingPoint,
  type OperatingPointInput,
  operatingPoint,
  propertyDiagram,
  type TextbookCycle,
  type TextbookCycleRequest,
  textbookCycle,
  textbookCycleWorking,
} from './loop/index.ts';
export {
  type MaterialLayer,
  material,
  materialLayer,
  materialNames,
  type OwnMaterial,
  ownMaterialLayer,
} from './matter/materials/index.ts';
export {
  catalogueEntry,
  isStudyOnly,
  type Refrigerant,
  refrigerant,
  refrigerantNames,
  type State,
  type StateInput,
  saturationAtPressure,
  saturationAtTemperature,
  stateAt,
  studyOnlyReasons,
  surfaceTensionAt,
  type Transport,
  type TransportMethod,
  type TransportMethods,
  transportAt,
  transportMethods,
} from './matter/refrigerants/index.ts';
export {
  ConvergenceError,
  DataError,
  InputError,
  KettlefinError,
  NoSolutionError,
  OutOfModelError,
} from './numerics/index.ts';
export {
  type HermeticCompressor,
  type HermeticPoint,
  hermeticPoint,
  type RunningMachine,
  type RunningPoint,
  runningPoint,
} from './parts/compressor/index.ts';
export { condenserCoil, evaporatorFace } from './parts/exchangers/index.ts';
export {
  type Band,
  chainOf,
  type Estimate,
  type Expression,
  evaluateExpression,
  type Finding,
  type Formula,
  numbersPutIn,
  type PrintedStep,
  parseExpression,
  printedStep,
  type ResultChain,
  readQuantity,
  sayBand,
  sayQuantity,
  type UnitView,
  type WorkingStep,
} from './quantities/index.ts';
export {
  type BuiltTank,
  type RectangularTank,
  rectangularTank,
  type TankConditions,
  type TankDescription,
  type TankLoad,
  tankLoad,
} from './tank/index.ts';
