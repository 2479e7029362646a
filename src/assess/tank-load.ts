// The tank alone: what leaves it, by path, with the bands that its own uncertain inputs give. Runs the stages of the tank and
// its surroundings and none of the machine, so that a machine without a solution keeps nobody from seeing the tank's watts.

import { caution, worstFirst } from '../cautions/index.ts';
import { type DesignDocument, type Follower, parseDesign, plainDesign, resolveDesign } from '../design/index.ts';
import { KettlefinError } from '../numerics/index.ts';
import type { Finding, WorkingStep } from '../quantities/index.ts';
import { type Bands, bandOf, tankAnswer } from './answers/answers.ts';
import { quantitiesOf, tankValues } from './answers/values.ts';
import type { AssessOutcome } from './assess.ts';
import type { AssumptionLeft, BandWithUnit, TankAnswer } from './assessment.ts';
import { assumptionsLeft } from './assumptions.ts';
import { refusalOf } from './bare-assessor.ts';
import { influencesOn, varied } from './doubt/vary.ts';
import { unansweredFinding } from './model-findings.ts';
import { StageRunner } from './stage.ts';
import { stagedDesign } from './stages/engine-assumptions.ts';
import { type StageResults, stages } from './stages/index.ts';
import { standardTankFactors } from './stages/tank-assumptions.ts';
import { tankWorkings } from './working/workings.ts';

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
  readonly influences: readonly LoadInfluence[];
  readonly assumptions: readonly AssumptionLeft[];
  readonly findings: readonly Finding[];
  readonly workings: readonly WorkingStep[];
}

export type TankLoadOutcome =
  | { readonly ok: true; readonly answer: TankLoadAnswer }
  | Exclude<AssessOutcome, { readonly ok: true }>;

const tankStages = stages.filter(({ name }) => name === 'surroundings' || name === 'tank');

/** Whether the tank's load at the coldest spell reads the value at this path. */
function countsForTank(path: string): boolean {
  if (path === 'tank.livestock') return false;
  if (path.startsWith('engine.')) return Object.hasOwn(standardTankFactors, path.slice('engine.'.length));
  return path.startsWith('tank.') || ['place.altitude', 'room.coldest', 'room.relativeHumidity'].includes(path);
}

/** Whether the load moves with the value at this path, by itself or by a default that follows it. */
function movesTank(followers: readonly Follower[], path: string): boolean {
  return (
    countsForTank(path) || followers.some(({ follows, path: next }) => follows === path && movesTank(followers, next))
  );
}

/** @param design  the text of a design file, or a document that was parsed before */
export function assessTankLoad(design: string | DesignDocument): TankLoadOutcome {
  const parsed = typeof design === 'string' ? parseDesign(design) : { ok: true as const, document: design };
  if (!parsed.ok) return { ok: false, kind: 'unusable', problems: parsed.problems };
  try {
    return { ok: true, answer: answerFor(parsed.document) };
  } catch (error) {
    if (!(error instanceof KettlefinError)) throw error;
    return refusalOf(error);
  }
}

function answerFor(document: DesignDocument): TankLoadAnswer {
  const resolution = resolveDesign(document);
  const { design: resolved, assumptions, followers } = resolution;
  const design = stagedDesign(plainDesign(resolved));
  const runner = new StageRunner<StageResults>(tankStages);
  const results = runner.run(design);
  const values = tankValues(results);
  const doubt = varied(runner, { resolution, design }, values, results, ({ path }) => movesTank(followers, path));
  const bands: Bands = { bands: doubt.bands, quantities: quantitiesOf(values) };
  return {
    assessmentVersion: 1,
    caution,
    designName: document.name,
    tankLoad: bandOf(bands, 'tank.load'),
    atmosphericPressure: bandOf(bands, 'surroundings.atmosphericPressure'),
    tank: tankAnswer(design, results, bands),
    influences: influencesOn(doubt, 'tank.load').map(({ atLow, atHigh, ...influence }) => ({
      ...influence,
      loadAtLow: atLow,
      loadAtHigh: atHigh,
    })),
    assumptions: assumptionsLeft(design, assumptions).filter(({ path }) => countsForTank(path)),
    findings: worstFirst([...results.tank.warnings, ...doubt.unanswered.map(unansweredFinding)]),
    workings: tankWorkings(design, results),
  };
}
