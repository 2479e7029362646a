// The tank alone: what leaves it, by path, with the bands that its own uncertain inputs give. Runs the stages of the tank and
// its surroundings and none of the machine, so that a machine without a solution keeps nobody from seeing the tank's watts.

import { caution, worstFirst } from '../cautions/index.ts';
import { type DesignDocument, type Follower, resolveDesign } from '../design/index.ts';
import type { Finding, WorkingStep } from '../quantities/index.ts';
import { scenarioAccount } from './answers/answers.ts';
import { type Bands, bandOf } from './answers/pieces.ts';
import { tankAnswer } from './answers/tank.ts';
import { tankValues, usualFalls } from './answers/tank-values.ts';
import { partsOfAccount, quantitiesOf } from './answers/values.ts';
import type { AssumptionLeft, BandWithUnit, ScenarioAccount } from './assessment/assessment.ts';
import type { TankAnswer } from './assessment/tank-answer.ts';
import { assumptionsLeft } from './assumptions.ts';
import { influencesOn, varied } from './doubt/vary.ts';
import { unansweredFinding } from './findings/model-findings.ts';
import { roomFindings } from './findings/room-findings.ts';
import { tankFindings } from './findings/tank-findings.ts';
import { fromDesign, type Refusal } from './from-design.ts';
import { isTankInput } from './inputs.ts';
import { meterOfTank } from './meter-of-tank.ts';
import { StageRunner } from './stage.ts';
import { type TankAloneResults, tankAloneStages } from './stages/accounts/heater.ts';
import { stagedDesign } from './stages/engine-assumptions.ts';
import { howToSettleMeter } from './wording/measure.ts';
import { tankAloneWorkings } from './working/workings.ts';

/** How far one uncertain input alone moves the load [W]. */
export interface LoadInfluence {
  readonly path: string;
  readonly label: string;
  readonly loadAtLow: number;
  readonly loadAtHigh: number;
  /** Share of the variance of the load, 0 to 1. */
  readonly share: number;
  readonly measure: string;
}

/** Plain data in base SI, as `kettlefin load --json` gives it. */
export interface TankLoadAnswer {
  readonly assessmentVersion: 1;
  readonly caution: string;
  readonly designName: string;
  readonly tankLoad: BandWithUnit;
  readonly atmosphericPressure: BandWithUnit;
  readonly tank: TankAnswer;
  /** Tank and room with a plain heater, which is all that a tank without a machine needs. */
  readonly heaterAccount: ScenarioAccount;
  readonly currency: string;
  readonly influences: readonly LoadInfluence[];
  readonly assumptions: readonly AssumptionLeft[];
  readonly findings: readonly Finding[];
  readonly workings: readonly WorkingStep[];
}

export type TankLoadOutcome = { readonly ok: true; readonly answer: TankLoadAnswer } | Refusal;

/** Prices that the account of a plain heater reads. */
const pricesOfHeater = ['prices.electricity', 'prices.heater', 'prices.life', 'prices.discountRate'];

/** Whether the tank's loads, or the account of a heater in it, read the value at this path. */
function countsForTank(path: string): boolean {
  return (isTankInput(path) && path !== 'room.volume') || pricesOfHeater.includes(path);
}

/** Whether the load moves with the value at this path, by itself or by a default that follows it. */
function movesTank(followers: readonly Follower[], path: string): boolean {
  return (
    countsForTank(path) || followers.some(({ follows, path: next }) => follows === path && movesTank(followers, next))
  );
}

export interface TankLoadOptions {
  /** By how much the water is let fall without heat [K], each above 0; the usual ones where absent. */
  readonly falls?: readonly number[];
}

/** The tank alone, from the text of a design file or a document that was parsed before. */
export function assessTankLoad(
  design: string | DesignDocument,
  { falls = usualFalls }: TankLoadOptions = {},
): TankLoadOutcome {
  const ascending = falls.toSorted((left, right) => left - right);
  return fromDesign(design, (document) => ({ answer: answerFor(document, ascending) }));
}

function answerFor(document: DesignDocument, falls: readonly number[]): TankLoadAnswer {
  const resolution = resolveDesign(document);
  const { design: resolved, assumptions, followers } = resolution;
  const design = stagedDesign(resolved);
  const runner = new StageRunner<TankAloneResults>(tankAloneStages);
  const results = runner.run(design);
  const values = [
    ...tankValues(results, falls),
    ...partsOfAccount<TankAloneResults>(results.heaterAccount.account, ({ heaterAccount }) => heaterAccount.account),
  ];
  const subject = { resolution, design };
  const doubt = varied(runner, subject, values, results, ({ path }) => movesTank(followers, path));
  const bands: Bands = { bands: doubt.bands, quantities: quantitiesOf(values) };
  const meter = meterOfTank(subject, results, doubt, bands);
  const { prices, account } = results.heaterAccount;
  return {
    assessmentVersion: 1,
    caution,
    designName: document.name,
    tankLoad: bandOf(bands, 'tank.load'),
    atmosphericPressure: bandOf(bands, 'surroundings.atmosphericPressure'),
    tank: tankAnswer(design, results, bands, { falls, meter }),
    heaterAccount: scenarioAccount(account, results.heaterYear, noHeatPump, prices, bands),
    currency: design.prices.currency,
    influences: influencesOn(doubt, 'tank.load').map(({ atLow, atHigh, measure, ...influence }) => ({
      ...influence,
      loadAtLow: atLow,
      loadAtHigh: atHigh,
      measure: meter === null ? measure : howToSettleMeter(influence.path),
    })),
    assumptions: assumptionsLeft(design, assumptions).filter(({ path }) => countsForTank(path)),
    findings: worstFirst([
      ...tankFindings(results, meter),
      ...roomFindings(design),
      ...doubt.unanswered.map(unansweredFinding),
    ]),
    workings: tankAloneWorkings(design, results, falls),
  };
}

/** Read for a certified heat pump only, which is none of the tank alone. */
const noHeatPump = { cop: 1, sourceIsTankRoom: false } as const;
