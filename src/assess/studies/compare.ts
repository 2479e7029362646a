// Several refrigerants in the machine of one design, side by side, on a stated basis. Every uncertain input of the machine
// is varied alone on every fluid (../doubt.ts), so that each number has its band and each difference its own: what two
// fluids share, such as the displacement, moves both at once.
// The numbers of the compressor, found on the fluid it was made for, are carried to the others; how far that is off is part of
// every other fluid's bands. Approaches are those of the design on every fluid.

import { caution } from '../../cautions/index.ts';
import type { DesignDocument } from '../../design/index.ts';
import { condensingTemperature, evaporatingTemperature } from '../../loop/index.ts';
import { InputError } from '../../numerics/index.ts';
import type { Doubt } from '../doubt/doubt.ts';
import { withheldFacts } from '../findings/withheld.ts';
import { fromDesign, type Refusal } from '../from-design.ts';
import { StageRunner } from '../stage.ts';
import { type StageResults, stages } from '../stages/index.ts';
import type {
  ComparisonColumn,
  ComparisonConditions,
  MachineBasis,
  PairDifference,
  RefrigerantComparison,
} from './comparison/comparison.ts';
import { cycleOn, type OwnLoop, ownLoopOf } from './comparison/cycle.ts';
import { pairDifferences } from './comparison/differences.ts';
import { chargeFigures, comparedFacts } from './comparison/facts.ts';
import { findingsFor } from './comparison/findings.ts';
import { comparedFluids } from './comparison/fluids.ts';
import { type ComparedLevels, onFluid, type Subject, subjectOf } from './comparison/subject.ts';
import { comparedValues } from './comparison/values.ts';
import { machineWorkings } from './comparison/workings.ts';

export type CompareOutcome = { readonly ok: true; readonly comparison: RefrigerantComparison } | Refusal;

/**
 * Compares refrigerants in the machine of a design, at its coldest spell.
 * @param design  the text of a design file, or a document that was parsed before
 * @param fluids  two to five names, each once
 * @param basis   what is held the same, see MachineBasis
 * @param levels  other dew temperatures [K]; those of the coldest spell where absent; not with 'sameParts'
 * @returns       the comparison; a fluid without a loop says why in its own column and loses nothing of the others
 * @throws InputError for fluids that cannot be compared (see comparedFluids) and for levels with 'sameParts'
 */
export function compareRefrigerants(
  design: string | DesignDocument,
  fluids: readonly string[],
  basis: MachineBasis,
  levels?: ComparedLevels,
): CompareOutcome {
  const names = comparedFluids(fluids);
  if (basis === 'sameParts' && levels !== undefined) {
    const expected = 'no temperatures with the same parts: source, water and approaches decide them';
    throw new InputError('evaporating', levels.evaporating, expected, 'bothGiven');
  }
  return fromDesign(design, (document) => ({
    comparison: comparisonOf(subjectOf(document, basis, levels), names),
  }));
}

function comparisonOf(subject: Subject, names: readonly string[]): RefrigerantComparison {
  const { design, basis } = subject;
  const { madeFor } = design.machine.compressor;
  const own = ownLoopOf(subject);
  const fluids = [...names.filter((name) => name === madeFor), ...names.filter((name) => name !== madeFor)];
  const compared = fluids.map((fluid) => comparedFluid(subject, fluid, own));
  return {
    comparisonVersion: 1,
    caution,
    basis,
    designName: subject.document.name,
    designFluid: design.machine.refrigerant,
    madeFor,
    conditions: conditionsOf(subject, compared),
    rows: comparedValues(basis).map(({ name, label, quantity, group }) => ({ name, label, quantity, group })),
    columns: compared.map(({ column }) => column),
    differences: differencesOf(subject, compared),
  };
}

interface ComparedFluid {
  readonly column: ComparisonColumn;
  readonly doubt: Doubt | undefined;
}

function comparedFluid(subject: Subject, fluid: string, own: OwnLoop | undefined): ComparedFluid {
  const { refrigerant, compressor } = subject.design.machine;
  const { madeFor } = compressor;
  const { cycle, doubt: doubtOfFluid, run } = cycleOn(subject, fluid, own);
  const findings = findingsFor(subject, fluid);
  const stops = findings.filter(({ severity }) => severity === 'stop').map(withheldFacts);
  // A design on a fluid its compressor was not made for must not be built, whichever fluid its charge is of.
  const isStop = stops.length > 0 || (subject.charge.fluid === fluid && refrigerant !== madeFor);
  const charge = chargeFigures(fluid, subject.charge, isStop);
  const column: ComparisonColumn = {
    fluid,
    standing: fluid === madeFor ? 'forThisMachine' : 'notForThisMachine',
    reason: stops.find(({ code }) => code === 'notForThisMachine') ?? null,
    stops,
    facts: comparedFacts(fluid, madeFor),
    charge: charge.figures,
    cycle,
    workings: [
      ...(run === undefined ? [] : machineWorkings(onFluid(subject.design, fluid), subject.design, run, subject)),
      ...charge.workings,
    ],
  };
  return { column, doubt: doubtOfFluid };
}

function conditionsOf(subject: Subject, compared: readonly ComparedFluid[]): ComparisonConditions {
  const { design, basis, levels } = subject;
  const { exchangers, tank } = design;
  const runner = new StageRunner<StageResults>(
    stages.filter(({ name }) => ['surroundings', 'identified', 'compressor'].includes(name)),
  );
  const { surroundings, compressor } = runner.run(design);
  const { sourceTemperature } = surroundings.spell;
  const heat = compared.flatMap(({ column }) => (column.cycle.ok ? [column.cycle.values.heat!] : []))[0];
  return {
    sourceTemperature: levels === undefined ? sourceTemperature : null,
    waterTemperature: levels === undefined ? tank.waterTemperature : null,
    evaporatingTemperature:
      levels?.evaporating ?? evaporatingTemperature(sourceTemperature, exchangers.evaporatorApproach),
    condensingTemperature:
      levels?.condensing ?? condensingTemperature(tank.waterTemperature, exchangers.condenserApproach),
    superheat: exchangers.superheat,
    subcooling: exchangers.subcooling,
    atmosphericPressure: surroundings.atmosphericPressure,
    displacement: compressor.compressor.displacement,
    isentropicEfficiency: null,
    heat: basis === 'sameHeat' ? (heat ?? null) : null,
  };
}

/** Each answered fluid beside the one for this machine, or the design's own, or the first. */
function differencesOf({ design, basis }: Subject, compared: readonly ComparedFluid[]): readonly PairDifference[] {
  const answered = compared.flatMap(({ column, doubt: found }) =>
    found === undefined ? [] : [{ fluid: column.fluid, standing: column.standing, doubt: found }],
  );
  const beside =
    answered.find(({ standing }) => standing === 'forThisMachine') ??
    answered.find(({ fluid }) => fluid === design.machine.refrigerant) ??
    answered[0];
  if (beside === undefined) return [];
  return pairDifferences(beside, answered, comparedValues(basis), basis);
}
