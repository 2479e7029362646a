// What the engine assumes that no design document asks for: films, fouling, where a pump's heat goes. They are varied and
// listed like every other assumption, so that nothing is silent; their paths begin with 'engine.'. Those of the tank stand in
// tank-assumptions.ts.

import { type PlainDesign, plainDesign, type ResolvedDesign } from '../../design/index.ts';
import { exchangerAssumptions, type TubeMaterial, tubeWall } from '../../parts/exchangers/index.ts';
import type { Estimate } from '../../quantities/index.ts';
import { exactStates, type StatesFrom } from './states.ts';
import { standardTankFactors, type TankFactors, tankAssumptions } from './tank/tank-assumptions.ts';
import { type MeasureFactors, measureAssumptions, standardMeasureFactors } from './wrapping/assumptions.ts';
import type { OfferedMeasure } from './wrapping/offered.ts';

/** Plain values behind the sizes of coil and face. */
export interface SizingValues {
  readonly fouling: number;
  readonly refrigerantFilm: number;
  readonly loopSideFilm: number;
  readonly tankCoilShare: number;
  readonly loopTemperatureChange: number;
  readonly airEffectiveness: number;
  readonly finnedCoefficient: number;
  readonly wallThickness: number;
  readonly wallConductivity: number;
}

/** Plain values of the engine's own assumptions. */
export interface EngineValues extends SizingValues, TankFactors, MeasureFactors {
  readonly loopPumpShareToWater: number;
  /** Where flow and power of the machine's model stand within what is left in doubt of them, −1 to 1. */
  readonly machineFlowDoubt: number;
  readonly machinePowerDoubt: number;
}

/** A design as the stages read it: the person's, with the engine's own assumptions as one more part. */
export interface StagedDesign extends PlainDesign {
  readonly engine: EngineValues;
  /** Where the states of refrigerants come from. */
  readonly states: StatesFrom;
  /** The compressor with its ranges, as it is identified from. */
  readonly described: ResolvedDesign['machine']['compressor'];
  /** What the identification of the compressor leaves open and no field holds, by path; absent at its likely value. */
  readonly open: Readonly<Record<string, number>>;
  /** The measures that "insulation only" was decided to stand for; absent before that was decided, and where none pays. */
  readonly wrapped?: readonly OfferedMeasure[];
}

export interface EngineAssumption {
  readonly key: keyof EngineValues;
  readonly label: string;
  readonly quantity: string;
  readonly estimate: Estimate;
  readonly source: string;
}

/** Material a coil is sized with where the design leaves it open: of the metals the one that conducts least well. */
const materialWhereUnknown: TubeMaterial = 'titanium';

/** The material the coil is sized with. */
function coilMaterial(wettedMetal: string): TubeMaterial {
  return wettedMetal === 'unknown' ? materialWhereUnknown : (wettedMetal as TubeMaterial);
}

/** Every assumption of the engine's own for this design, with its range and source. */
export function engineAssumptions(
  design: PlainDesign & Pick<Partial<StagedDesign>, 'wrapped'>,
): readonly EngineAssumption[] {
  const hasLoop = design.exchangers.condenserArrangement === 'intermediateLoop';
  const ofMachineAndTank = everyAssumption(design).filter(({ key }) => hasLoop || !ofTheLoop.includes(key));
  return [...ofMachineAndTank, ...measureAssumptions(design.wrapped ?? [])];
}

/** Assumptions about the water loop between refrigerant and tank; without meaning for a coil in the tank. */
const ofTheLoop: readonly (keyof EngineValues)[] = [
  'loopSideFilm',
  'tankCoilShare',
  'loopTemperatureChange',
  'loopPumpShareToWater',
];

function everyAssumption(design: PlainDesign): readonly EngineAssumption[] {
  const { wettedMetal } = design.exchangers;
  const material = coilMaterial(wettedMetal);
  const wall = tubeWall(material);
  const named = wettedMetal === 'unknown' ? `${material}, since the design names no material` : material;
  const ranges = exchangerAssumptions;
  return [
    fromRange('fouling', 'slime on the coil in the tank', 'surfaceResistance', ranges.fouling),
    fromRange('refrigerantFilm', 'film of condensing refrigerant', 'heatTransferCoefficient', ranges.refrigerantFilm),
    fromRange('loopSideFilm', 'film of loop water at the refrigerant', 'heatTransferCoefficient', ranges.loopSideFilm),
    fromRange('tankCoilShare', 'share of the approach between loop and tank', 'fraction', ranges.tankCoilShare),
    fromRange(
      'loopTemperatureChange',
      'how far the loop water cools on its way through the tank',
      'temperatureDifference',
      ranges.loopTemperatureChange,
    ),
    fromRange(
      'airEffectiveness',
      'share of the possible cooling the air undergoes',
      'fraction',
      ranges.airEffectiveness,
    ),
    fromRange(
      'finnedCoefficient',
      'overall coefficient of the finned surface',
      'heatTransferCoefficient',
      ranges.finnedCoefficient,
    ),
    fromRange('wallThickness', `wall of the coil (${named})`, 'length', wall.thickness),
    fromRange('wallConductivity', `conductivity of the coil’s wall (${named})`, 'conductivity', wall.conductivity),
    {
      key: 'loopPumpShareToWater',
      label: 'share of the loop pump’s electricity that warms the water',
      quantity: 'fraction',
      estimate: { low: 0.5, likely: 0.8, high: 1, origin: 'assumed' },
      source: 'common practice, no source',
    },
    ofTheModel('machineFlowDoubt', 'how far the model of the compressor is off in flow'),
    ofTheModel('machinePowerDoubt', 'how far the model of the compressor is off in power'),
    ...tankAssumptions(design.tank),
  ];
}

/** How wide it is depends on the running point, so that the range counts in half widths. */
function ofTheModel(key: 'machineFlowDoubt' | 'machinePowerDoubt', label: string): EngineAssumption {
  return {
    key,
    label,
    quantity: 'ratio',
    estimate: { low: -1, likely: 0, high: 1, origin: 'assumed' },
    source: 'scatter of the points known of it, growing with the distance from them; 1 is the whole half width',
  };
}

/** The design at likely values with the engine's own assumptions at theirs; factors on parts it does not have are 1. */
export function stagedDesign(resolved: ResolvedDesign, states: StatesFrom = exactStates): StagedDesign {
  const design = plainDesign(resolved);
  const values = everyAssumption(design).map(({ key, estimate }) => [key, estimate.likely]);
  return {
    ...design,
    described: resolved.machine.compressor,
    open: {},
    engine: { ...standardTankFactors, ...standardMeasureFactors, ...Object.fromEntries(values) } as EngineValues,
    states,
  };
}

function fromRange(
  key: keyof EngineValues,
  label: string,
  quantity: string,
  range: Estimate & { readonly source: string },
): EngineAssumption {
  const { low, likely, high, origin, source } = range;
  return { key, label, quantity, estimate: { low, likely, high, origin }, source };
}
