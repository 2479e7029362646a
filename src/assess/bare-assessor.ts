// Design -> every answer, but not yet how it was computed: whoever asks for that seldom need not load or make it
// (assess.ts adds it). Parses and resolves the document, runs the stages, varies every uncertain input alone, judges, and
// gathers what people and programs read. A BareAssessor remembers its last run, so that an edit costs what depends on it.

import { caution, findCautions, worstFirst } from '../cautions/index.ts';
import { type DesignDocument, resolveDesign } from '../design/index.ts';
import type { Finding, UnitView } from '../quantities/index.ts';
import { loopAgainst } from './against/loop-against.ts';
import {
  heatFlows,
  monthAnswers,
  operatingAnswer,
  operatingRange,
  scenarioAccounts,
  sizingAnswer,
} from './answers/answers.ts';
import { chargeComparisonAnswers, spaceAnswers } from './answers/leak.ts';
import { limitMargins } from './answers/limits.ts';
import { machineAnswer } from './answers/machine.ts';
import { allMachinesResult } from './answers/machines.ts';
import { type Bands, bandOf } from './answers/pieces.ts';
import { tankAnswer } from './answers/tank.ts';
import { quantitiesOf, resultValues } from './answers/values.ts';
import type { Assessment } from './assessment/assessment.ts';
import { assumptionsLeft } from './assumptions.ts';
import { cautionFacts, limitReaches } from './caution-facts/caution-facts.ts';
import { standingTank } from './caution-facts/standing-tank.ts';
import type { Doubt } from './doubt/doubt.ts';
import { marginInfluences } from './doubt/margin.ts';
import { measureNext } from './doubt/measure-next.ts';
import { type ResultRange, rangeOfResult } from './doubt/range.ts';
import { varied } from './doubt/vary.ts';
import { modelFindings } from './findings/model-findings.ts';
import { roomFindings } from './findings/room-findings.ts';
import { tankFindings } from './findings/tank-findings.ts';
import { fromDesign, type Refusal } from './from-design.ts';
import { doubtfulInputs } from './inputs.ts';
import { meterOfTank } from './meter-of-tank.ts';
import { type StageCounts, StageRunner } from './stage.ts';
import { type StagedDesign, stagedDesign } from './stages/engine-assumptions.ts';
import { type StageResults, stages } from './stages/index.ts';
import { hasGivenPoints } from './stages/machine-evidence.ts';
import { machineParts } from './stages/machine-handed-over.ts';
import { exactStates, type StatesFrom } from './stages/states.ts';
import { judge } from './verdict.ts';
import { verdictSentence } from './wording/verdict.ts';

/** An Assessment without its workings. */
export type BareAssessment = Omit<Assessment, 'workings'>;

export type OutcomeOf<Answer> = { readonly ok: true; readonly assessment: Answer } | Refusal;

/** What an assessment was made from. */
export interface AssessedRun {
  readonly design: StagedDesign;
  readonly results: StageResults;
}

export interface AssessOptions {
  readonly states?: StatesFrom;
}

export class BareAssessor {
  readonly #runner = new StageRunner<StageResults>(stages);
  readonly #states: StatesFrom;
  #last: (AssessedRun & { readonly doubt: Doubt; readonly bands: Bands }) | undefined;

  /** @param options.states  where the states of refrigerants come from: exactStates, the default, or tableStates */
  constructor({ states = exactStates }: AssessOptions = {}) {
    this.#states = states;
  }

  /** @param design  the text of a design file, or a document that was parsed before */
  assess(design: string | DesignDocument, view: UnitView): OutcomeOf<BareAssessment> {
    return fromDesign(design, (document) => ({ assessment: this.#assessment(document, view) }));
  }

  /**
   * The range of one result of the last design that had an answer, and which inputs make it.
   * @param result  name of the result: 'tank.load'
   * @returns       undefined before the first answer, and for a result that has no band
   */
  rangeOf(result: string): ResultRange | undefined {
    return this.#last && rangeOfResult(this.#last.doubt, this.#last.bands, result);
  }

  /** What the last design that had an answer was assessed from; undefined before the first. */
  lastRun(): AssessedRun | undefined {
    return this.#last;
  }

  /** How often each stage ran so far. */
  stageCounts(): StageCounts {
    return this.#runner.counts();
  }

  #assessment(document: DesignDocument, view: UnitView): BareAssessment {
    const resolution = resolveDesign(document);
    const { design: resolved, assumptions } = resolution;
    const described = stagedDesign(resolved, this.#states);
    const results = this.#runner.run(described);
    const design = withWraps(described, results.wrappingChoice);
    const values = resultValues(results);
    const doubt = varied(this.#runner, { resolution, design, identified: results.identified }, values, results);
    const bands: Bands = { bands: doubt.bands, quantities: quantitiesOf(values) };
    this.#last = { design, results, doubt, bands };
    const { wrappingChoice: wraps } = results;
    const tank = standingTank({ design, resolution, results, taken: wraps, measures: wraps });
    const facts = cautionFacts(design, results, resolved, doubt, tank);
    const cautions = findCautions(facts);
    const meter = meterOfTank({ resolution, design }, results, doubt, bands);
    const reaches = limitReaches(design, results);
    const limits = limitMargins(reaches);
    const moments = operatingRange(facts.operating);
    const machine = machineAnswer({ design, resolved, results, bands, moments, reaches });
    const findings = worstFirst([
      ...cautions,
      ...tankFindings(results, meter),
      ...roomFindings(design),
      ...(hasGivenPoints(design.described) ? machineParts().coefficientFindings(design) : []),
      ...modelFindings({
        results,
        machine,
        nameplate: resolved.machine.compressor.nameplate,
        unanswered: doubt.unanswered,
        states: design.states.kind,
      }),
    ]);
    const influences = marginInfluences(doubt, doubtfulInputs(resolution, design, results.identified));
    const against = loopAgainst(results, doubt, bands);
    const accounts = scenarioAccounts(results, bands);
    const tankLoad = bandOf(bands, 'tank.load');
    const heatDelivered = bandOf(bands, 'plant.heatReachingWater');
    const standing = judge({ findings, heatDelivered, tankLoad, ...lifeCosts(results) });
    const { currency } = design.prices;
    const { count } = results.hardware;
    const verdict = {
      standing,
      tankLoad,
      heatDelivered,
      findings,
      limits,
      count,
      influences,
      loopAgainst: against,
      currency,
    };
    return {
      assessmentVersion: 1,
      caution,
      designName: document.name,
      standing,
      sentence: verdictSentence(verdict, view),
      tankLoad,
      heatDelivered,
      compressorPower: bandOf(bands, allMachinesResult(results.hardware.count, 'compressorPower')),
      systemPower: bandOf(bands, 'plant.systemPower'),
      compressorCop: bandOf(bands, 'operating.compressorCop'),
      systemCop: bandOf(bands, 'plant.systemCop'),
      seasonCop: results.year.seasonCop === null ? null : bandOf(bands, 'year.seasonCop'),
      tank: tankAnswer(design, results, bands, { meter }),
      operating: operatingAnswer(design, results, limits, bands),
      operatingRange: moments,
      machine,
      sizing: sizingAnswer(design, results, bands),
      flows: heatFlows(design, results, bands),
      year: monthAnswers(results),
      accounts,
      loopAgainst: against,
      currency,
      margin: bandOf(bands, 'plant.margin'),
      measureNext: measureNext(doubt, influences),
      influences,
      assumptions: assumptionsLeft(design, assumptions),
      findings: findings.filter((finding) => !isForPeopleAndAnimals(finding)),
      cautions: findings.filter(isForPeopleAndAnimals),
      spaces: spaceAnswers(facts, resolved),
      chargeComparisons: chargeComparisonAnswers(facts),
    };
  }
}

/** What was decided to be wrapped brings assumptions of its own. */
function withWraps(design: StagedDesign, wrapped: StageResults['wrappingChoice']): StagedDesign {
  return wrapped.length === 0 ? design : { ...design, wrapped };
}

function lifeCosts({ accounts }: StageResults) {
  const costOf = (scenario: string) => accounts.accounts.find((each) => each.scenario === scenario)!.annualCost;
  const others = accounts.accounts.filter((each) => each.scenario !== 'thisLoop').map((each) => each.annualCost);
  return { lifeCostThisLoop: costOf('thisLoop'), lifeCostCheapestOther: Math.min(...others) };
}

function isForPeopleAndAnimals({ subject }: Finding): boolean {
  return subject !== 'machine' && subject !== 'model';
}
