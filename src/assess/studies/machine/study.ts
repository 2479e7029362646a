// The study of a machine: what it does over its temperatures and where that is beyond its limits, where the loop of the design settles
// over the year, what would help, how many of them the tank needs, other fluids in it, and its starts.

import { caution, worstFirst } from '../../../cautions/index.ts';
import type { DesignDocument } from '../../../design/index.ts';
import { type OperatingPoint, operatingPoint } from '../../../loop/index.ts';
import { applicationLimits, lockedRotorCurrentOf, modelDoubt, ofAnotherSize } from '../../../parts/compressor/index.ts';
import { heatReachingWater } from '../../../plant/index.ts';
import { varied } from '../../doubt/vary.ts';
import { coefficientFindings } from '../../findings/coefficient-findings.ts';
import { disagreementFindings, statesFromTables, unansweredFinding } from '../../findings/model-findings.ts';
import { fromDesign } from '../../from-design.ts';
import { isTankInput } from '../../inputs.ts';
import { StageRunner } from '../../stage.ts';
import { type StageResults, stages } from '../../stages/index.ts';
import { aroundShell } from '../../stages/machine.ts';
import type { StatesFrom } from '../../stages/states.ts';
import { tableStates } from '../../stages/table-states.ts';
import type { MachineOutcome, MachineStudy, MapMark } from './answer.ts';
import { type Approaches, exchangersAnswer } from './exchangers-answer.ts';
import { howMany } from './how-many.ts';
import { type LimitsOfMachine, limitsOfMachine } from './limits.ts';
import { machineMap, mapAxes } from './map/map.ts';
import { mapLimits, type PointMargins } from './map/map-limits.ts';
import { markOf, type YearState, yearStates } from './map/marks.ts';
import { tripOf } from './map/trips.ts';
import { otherFluids } from './other-fluids.ts';
import { type Changed, remedies } from './remedies.ts';
import { machineSentence } from './sentence.ts';
import { startingFacts } from './starting.ts';
import {
  isOfLoop,
  isOfMachine,
  type LoopResults,
  type LoopRun,
  loopSubject,
  loopVariants,
  type MachineSubject,
  placeOf,
} from './subject.ts';
import type { Variants } from './variants.ts';

export interface MachineStudyOptions {
  /** Where the states of refrigerants come from: tables, unless asked otherwise. */
  readonly states?: StatesFrom;
}

/**
 * The study of the machine of a design.
 * @param design   the text of a design file, or a document that was parsed before
 * @param options  where states come from
 */
export function assessMachine(design: string | DesignDocument, options: MachineStudyOptions = {}): MachineOutcome {
  const { states = tableStates } = options;
  return fromDesign(design, (document) => ({ study: studyOf(loopSubject(document, states)) }));
}

function studyOf(subject: MachineSubject<LoopResults>): MachineStudy {
  const { design, results, document } = subject;
  const variants = loopVariants(subject, isOfLoop);
  const envelope = limitsOfMachine(subject, variants.likely);
  const states = yearStates(subject);
  const marks = states.map((state) => markOf(variants, state, envelope.passed));
  const load = loadBand(subject);
  return {
    machineVersion: 1,
    caution,
    designName: document.name,
    sentence: machineSentence(subject, variants, states, envelope),
    ...mapPart(subject, variants, envelope, marks),
    marks,
    remedies: remediesAt(subject, variants, states, marks, envelope),
    howMany: countPart(subject, marks, load),
    otherFluids: otherFluids(subject, variants, envelope),
    starting: startingFacts(subject.resolution.design, variants.likely.machine.compressor),
    findings: worstFirst([
      ...coefficientFindings(design),
      ...disagreementFindings(results.identified),
      ...(design.states.kind === 'tables' ? [statesFromTables()] : []),
      ...variants.unanswered.map(unansweredFinding),
    ]),
  };
}

/** The map, its limits and what it holds for. */
function mapPart(
  subject: Pick<MachineSubject, 'design' | 'results'>,
  variants: Variants<LoopRun>,
  envelope: LimitsOfMachine,
  marks: readonly Pick<MapMark, 'evaporating' | 'condensing'>[],
): Pick<MachineStudy, 'basis' | 'map' | 'limits' | 'trips'> {
  const { design, results } = subject;
  const { fluid, machine, superheat, subcooling } = variants.likely;
  const built = applicationLimits(design.machine.application);
  const axes = mapAxes({
    builtFrom: built.evaporating.lowest,
    builtTo: built.evaporating.highest,
    condensingContinuous: built.condensing.continuous,
    marks,
    critical: fluid.critical.temperature,
    coldest: fluid.limits.temperatureMin,
  });
  const ofMachine = { ...variants, ends: variants.ends.filter(({ input }) => isOfMachine(input.path)) };
  const points: PointMargins[] = [];
  const map = machineMap(ofMachine, axes, {
    passed: (point, levels) => {
      const margins = envelope.margins(point);
      points.push({ ...levels, margins });
      return margins.filter((each) => each.passed).map(({ limit }) => limit);
    },
    insideData: (levels) => {
      const at = { fluid: fluid.name, ...levels, supply: machine.supply };
      return modelDoubt(results.identified, machine.compressor, at).reasons.length === 0;
    },
  });
  const { frequency, voltage } = machine.supply;
  const { surroundings } = machine;
  return {
    basis: { refrigerant: fluid.name, superheat, subcooling, surroundings, frequency, voltage },
    map,
    limits: mapLimits(envelope.limits, points),
    trips: axes.condensing.map((condensing) => tripOf(variants.likely, envelope, condensing, axes.evaporating)),
  };
}

/** Range of the heat that the tank needs in the coldest spell. */
function loadBand({ design, resolution }: MachineSubject<LoopResults>) {
  const names: readonly (keyof StageResults)[] = ['surroundings', 'meter', 'tank'];
  const runner = new StageRunner<StageResults>(stages.filter(({ name }) => names.includes(name)));
  const likely = runner.run(design);
  const values = [{ name: 'tank.load', quantity: 'power', read: ({ tank }: StageResults) => tank.load } as const];
  return varied(runner, { resolution, design }, values, likely, ({ path }) => isTankInput(path)).bands['tank.load']!;
}

function countPart(
  { design, resolution, results }: MachineSubject<LoopResults>,
  marks: readonly MapMark[],
  load: ReturnType<typeof loadBand>,
): MachineStudy['howMany'] {
  const { hardware, monthLoads, monthOperating, surroundings } = results;
  const [coldest, mild] = marks.map(({ values: { heat, power, current } }) => ({ heat, power, current }));
  return howMany({
    coldestSpell: coldest!,
    mildDay: mild ?? null,
    load,
    planned: design.machine.count,
    beside: { ...hardware, fanPower: design.power.fan },
    chargePerCircuit: resolution.design.machine.charge,
    lockedRotorCurrent: lockedRotorCurrentOf(design.described.nameplate),
    months: surroundings.months.map(({ month }, index) => ({
      month,
      load: monthLoads[index]!.load,
      heatOfOne: monthOperating[index]?.heatDelivered ?? null,
    })),
  });
}

/** Remedies at the state of the year in which the motor is loaded most. */
function remediesAt(
  { design, results }: MachineSubject<LoopResults>,
  { likely }: Variants<LoopRun>,
  states: readonly YearState[],
  marks: readonly MapMark[],
  envelope: LimitsOfMachine,
): MachineStudy['remedies'] {
  const loads = marks.map(({ values }) => values.motorLoad.likely);
  const hardest = states[loads.indexOf(Math.max(...loads))]!;
  const { count } = design.machine;
  const { loopPumpPower, loopPumpShareToWater } = results.hardware;
  return remedies({
    state: { when: hardest.when, load: hardest.load / count },
    settle: settlingIn(likely, hardest.month),
    settleColdest: settlingIn(likely, null),
    coldestLoad: results.tank.load / count,
    pumpHeat: heatReachingWater(0, loopPumpPower, loopPumpShareToWater) / count,
    ratedCurrent: results.compressor.ratedCurrent,
    highestSuctionPressure: envelope.limits.find(({ name }) => name === 'suctionPressureHighest')!.bound,
    passed: envelope.passed,
  });
}

/** The likely loop in one state of the year with something changed, its exchangers those that the approaches imply without it. */
function settlingIn(run: LoopRun, month: number | null): (changed: Changed) => OperatingPoint {
  const { evaporatorApproach, condenserApproach } = run.slice.exchangers;
  const held = { evaporatorApproach, condenserApproach };
  let before: OperatingPoint | undefined;
  return ({ condenserSurface = 1, ...changed }) => {
    before ??= settledWith(run, month, {}, held);
    if (condenserSurface === 1 && Object.keys(changed).length === 0) return before;
    const settle = (approaches: Approaches) => settledWith(run, month, changed, approaches);
    return exchangersAnswer(settle, before, held, { evaporator: 1, condenser: condenserSurface });
  };
}

function settledWith(
  { slice, machine, fluid, surroundings }: LoopRun,
  month: number | null,
  { size, suctionPressureLimit }: Changed,
  approaches: Approaches,
): OperatingPoint {
  const there = { ...machine, surroundings: aroundShell(slice.machine.shellPlace, placeOf(surroundings, month)) };
  return operatingPoint({
    fluid,
    machine: size === undefined ? there : ofAnotherSize(there, size),
    sourceTemperature: placeOf(surroundings, month).sourceTemperature,
    waterTemperature: slice.waterTemperature,
    ...slice.exchangers,
    ...approaches,
    ...(suctionPressureLimit === undefined ? {} : { suctionPressureLimit }),
  });
}
