// The study of wrapping: what each measure saves alone and the next best in turn, with ranges from one-at-a-time variation of every
// uncertain input that matters; what a heat pump makes of them; other prices; what the last inch of a board earns. The order is
// decided at the likely values, so that the ranges are those of one order.

import { bestInTurn, type Candidate, payingSteps } from '../../../accounts/index.ts';
import { caution, findStandingTankCautions, worstFirst } from '../../../cautions/index.ts';
import { type DesignDocument, type Resolution, resolveDesign } from '../../../design/index.ts';
import { KettlefinError } from '../../../numerics/index.ts';
import { type Estimate, type Finding, secondsPerYear } from '../../../quantities/index.ts';
import { assumptionsLeft } from '../../assumptions.ts';
import { standingTank } from '../../caution-facts/standing-tank.ts';
import { type Doubt, type DoubtfulInput, doubt } from '../../doubt/doubt.ts';
import { unansweredFinding } from '../../findings/model-findings.ts';
import { fromDesign } from '../../from-design.ts';
import { doubtfulInputs, isTankInput, withInput } from '../../inputs.ts';
import { StageRunner } from '../../stage.ts';
import { type TankAloneResults, tankAloneStages } from '../../stages/accounts/heater.ts';
import { type StagedDesign, stagedDesign } from '../../stages/engine-assumptions.ts';
import { heaterPricesOf, type StageResults, stages, wrappingSlice, wrappingSubject } from '../../stages/index.ts';
import { sourceIsTankRoom } from '../../stages/plant.ts';
import { WrappedStates } from '../../stages/wrapping/states.ts';
import type { WithHeatPump, WrappingAnswer, WrappingOutcome } from './answer.ts';
import { wrappingFindings } from './findings.ts';
import { type InchTerms, lastInchCurve } from './last-inch.ts';
import { wrappingNumbers } from './numbers.ts';
import { priceTable } from './prices.ts';
import { type Said, sayStudy } from './tell.ts';
import { type HeatPumpInput, withCertified, withThisLoop } from './with-heat-pump.ts';

/** Paths of the costs of usual measures begin with this. */
const costPath = 'wrapping.cost.';

/** @param design  the text of a design file, or a document that was parsed before */
export function assessWrapping(design: string | DesignDocument): WrappingOutcome {
  return fromDesign(design, (document) => ({ answer: answerFor(document) }));
}

function answerFor(document: DesignDocument): WrappingAnswer {
  const resolution = resolveDesign(document);
  const described = stagedDesign(resolution.design);
  const runner = new StageRunner<TankAloneResults>(tankAloneStages);
  const results = runner.run(described);
  const states = statesOf(described, results);
  const design: StagedDesign = { ...described, wrapped: states.applicable };
  const terms = termsOf(design);
  const candidates = states.applicable.map(({ id, cost }): Candidate => ({ id, cost: cost.likely }));
  const costWith = heaterCost(states, terms);
  const inTurn = bestInTurn(candidates, costWith, terms);
  const order = inTurn.map(({ id }) => id);
  const varied = variedNumbers(runner, { resolution, design }, states, order);
  const heatPump: HeatPumpInput = {
    states,
    candidates: order.map((id) => candidates.find((each) => each.id === id)!),
    withHeater: inTurn,
    names: new Map(states.offered.map(({ id, name }) => [id, name])),
    terms,
  };
  const said: Said = {
    document,
    resolution,
    design,
    results,
    states,
    terms,
    order,
    doubt: varied,
    payingCount: payingSteps(inTurn).length,
  };
  return {
    wrappingVersion: 1,
    caution,
    designName: document.name,
    currency: design.prices.currency,
    measuresFrom: design.wrapping.measures === undefined ? 'usual' : 'design',
    ...sayStudy(said),
    withHeatPump: heatPumps(design, heatPump),
    prices: priceTable(states, candidates, terms, terms),
    lastInch: states.applicable.flatMap((offered) => lastInchCurve(offered, states, terms) ?? []),
    assumptions: assumptionsLeft(design, resolution.assumptions).filter(({ path }) => matters(path)),
    findings: worstFirst([
      ...wrappingFindings(design, states),
      ...tankCautions({ resolution, design, results, states }, order.slice(0, payingSteps(inTurn).length)),
      ...varied.unanswered.map(unansweredFinding),
    ]),
    unanswered: varied.unanswered,
  };
}

interface StandingStudy extends Subject {
  readonly results: TankAloneResults;
  readonly states: WrappedStates;
}

/**
 * What the rules of caution say of the tank as it is and of what is on the list. What a cover on the list does to the air over
 * the water is told by the study itself.
 */
function tankCautions(
  { resolution, design, results, states }: StandingStudy,
  paying: readonly string[],
): readonly Finding[] {
  const measures = states.applicable;
  const taken = measures.filter(({ id }) => paying.includes(id));
  const { livestock, waterTemperature } = design.tank;
  const standing = standingTank({ design, resolution, results, taken, measures });
  const roomVolume = resolution.design.room.volume.low;
  const found = findStandingTankCautions({ standing, livestock, waterTemperature, roomVolume });
  return standing.isCoverPlanned ? found.filter(({ code }) => code !== 'coverHoldsGases') : found;
}

/** This loop where it has an answer, and a certified heat pump. */
function heatPumps(design: StagedDesign, input: HeatPumpInput): readonly WithHeatPump[] {
  const certified = withCertified(input, design.prices.certifiedCop, sourceIsTankRoom(design.source));
  try {
    const loop = withThisLoop(input, new StageRunner<StageResults>(stages).run(design));
    return loop === null ? [certified] : [loop, certified];
  } catch (error) {
    // A machine without a solution says so elsewhere, and keeps nobody from wrapping the tank.
    if (error instanceof KettlefinError) return [certified];
    throw error;
  }
}

function statesOf(design: StagedDesign, results: TankAloneResults): WrappedStates {
  return new WrappedStates(wrappingSubject(wrappingSlice(design), results));
}

function termsOf(design: StagedDesign): InchTerms {
  return {
    ...heaterPricesOf(design),
    discountRate: design.prices.discountRate,
    years: design.wrapping.years / secondsPerYear,
  };
}

function heaterCost(states: WrappedStates, terms: InchTerms): (ids: readonly string[]) => number {
  return (ids) => states.accountWith(ids, terms).runningCost;
}

interface Subject {
  readonly resolution: Resolution;
  readonly design: StagedDesign;
}

/** Every number with its range. The price of each usual measure is an input of its own. */
function variedNumbers(
  runner: StageRunner<TankAloneResults>,
  { resolution, design }: Subject,
  states: WrappedStates,
  order: readonly string[],
): Doubt {
  const likelyCosts = Object.fromEntries(states.applicable.map(({ id, cost }) => [id, cost.likely]));
  const numbersAt = (at: StagedDesign, now: WrappedStates, costs: Readonly<Record<string, number>>) => {
    const terms = termsOf(at);
    return wrappingNumbers({ states: now, prices: terms, terms, costs, order });
  };
  const inputs: readonly DoubtfulInput[] = [
    ...doubtfulInputs(resolution, design).filter(({ path }) => matters(path) && path !== 'engine.measureCostFactor'),
    ...states.applicable.flatMap(({ id, name, cost, usual }): readonly DoubtfulInput[] => {
      if (usual === null || cost.low === cost.high) return [];
      const estimate: Estimate = { ...cost, origin: 'assumed' };
      return [{ path: `${costPath}${id}`, label: `cost: ${name}`, estimate }];
    }),
  ];
  return doubt(numbersAt(design, states, likelyCosts), inputs, (path, value) => {
    if (path.startsWith(costPath)) {
      return numbersAt(design, states, { ...likelyCosts, [path.slice(costPath.length)]: value });
    }
    const at = withInput(design, resolution.followers, path, value);
    const now = path.startsWith('prices.') ? states : statesOf(at, runner.probe(at));
    const costs = Object.fromEntries(
      now.offered.filter(({ id }) => likelyCosts[id] !== undefined).map(({ id, cost }) => [id, cost.likely]),
    );
    return numbersAt(at, now, costs);
  });
}

/** Whether a number of the study reads the value at this path. */
function matters(path: string): boolean {
  if (path.startsWith('prices.')) return ['prices.electricity', 'prices.discountRate'].includes(path);
  return isTankInput(path) || path.startsWith('engine.measure') || path.startsWith('wrapping.');
}
