// What a machine cannot be: a plate that contradicts itself, a rating of nothing, temperatures out of order, coefficients and
// tables that cannot be read or lack what they hold for.

import {
  displacementContradiction,
  domeSizes,
  hasMachineReading,
  machineReading,
  polynomialUnits,
} from '../../parts/compressor/index.ts';
import type { DesignProblem } from '../problems.ts';
import { describeMachine } from '../resolving/machine-origin.ts';
import { whySuction } from '../schema/compressor/sheets.ts';
import type { DesignDocument } from '../schema/design.ts';
import { readCoefficients } from './coefficients-text.ts';
import { hair, inMetric, problemAt, valueAt } from './reading.ts';

const at = 'machine.compressor';

type Described = NonNullable<DesignDocument['machine']['compressor']>;
type CoefficientSet = NonNullable<Described['coefficients']>[number];
type PastedTable = NonNullable<Described['tables']>[number];

export function machineProblems(document: DesignDocument): readonly DesignProblem[] {
  const { ratings = [], coefficients = [], tables = [], bench = [] } = document.machine.compressor ?? {};
  return [
    ...countProblems(document),
    ...domeProblems(document),
    ...nameplateProblems(document),
    ...ratings.flatMap((rating, index) => ratingProblems(document, rating, `${at}.ratings.${index}`)),
    ...coefficients.flatMap((set, index) => coefficientProblems(document, set, `${at}.coefficients.${index}`)),
    ...tables.flatMap((pasted, index) => tableProblems(pasted, `${at}.tables.${index}`)),
    ...bench.flatMap((_, index) => benchProblems(document, `${at}.bench.${index}`)),
  ];
}

function countProblems(document: DesignDocument): readonly DesignProblem[] {
  const path = 'machine.count';
  const count = valueAt(document, path);
  if (count === undefined || (Number.isInteger(count.likely) && count.low === count.high)) return [];
  return [problemAt(document, path, 'notWhole', 'one whole number, such as 2')];
}

/** From the size of a dome follows what it sweeps; far beyond the sizes that are known it would follow anything. */
function domeProblems(document: DesignDocument): readonly DesignProblem[] {
  const sizes = domeSizes();
  const fields = { domeHeight: sizes.height, domeDiameter: sizes.diameter };
  const say = (value: number) => inMetric(value, 'length');
  const problems = Object.entries(fields).flatMap(([name, { known, accepted }]) => {
    const size = valueAt(document, `${at}.${name}`);
    if (size === undefined || (size.low >= accepted.low && size.high <= accepted.high)) return [];
    const expected = `from ${say(accepted.low)} to ${say(accepted.high)}: the domes known here measure ${say(known.low)} to ${say(known.high)}`;
    return [problemAt(document, `${at}.${name}`, 'outOfRange', expected)];
  });
  return problems.length > 0 ? problems : domeAgainstClass(document);
}

/** Where a typed displacement does not decide it, a dome must be one of its class. */
function domeAgainstClass(document: DesignDocument): readonly DesignProblem[] {
  if (document.machine.compressor?.displacement !== undefined) return [];
  const found = displacementContradiction(describeMachine(document).origin);
  if (found === undefined) return [];
  const { ofClass, ofDome } = found;
  const say = ({ low, high }: { readonly low: number; readonly high: number }) =>
    `${inMetric(low, 'displacement')} to ${inMetric(high, 'displacement')}`;
  const expected = `a dome as large as its appliance, application and refrigerant let expect: those sweep ${say(ofClass)}, a dome of this size ${say(ofDome)}; measure it again without feet and tubes, or give the displacement`;
  return [problemAt(document, `${at}.domeHeight`, 'domeAgainstClass', expected)];
}

/** Reading and printing of plates is good to a few per cent. */
const plateTolerance = 1.05;

function nameplateProblems(document: DesignDocument): readonly DesignProblem[] {
  const plate = (name: string) => valueAt(document, `${at}.nameplate.${name}`);
  const problems: DesignProblem[] = [];
  const [voltage, rated, locked, power] = ['voltage', 'ratedCurrent', 'lockedRotorCurrent', 'power'].map(plate);
  if (rated !== undefined && locked !== undefined && locked.high <= rated.low + hair) {
    const words = `more than the rated current of ${inMetric(rated.low, 'current')}: a motor that stands draws several times as much`;
    problems.push(problemAt(document, `${at}.nameplate.lockedRotorCurrent`, 'plateContradictsItself', words));
  }
  if (voltage !== undefined && rated !== undefined && power !== undefined) {
    const most = voltage.high * rated.high;
    if (power.low > plateTolerance * most) {
      const words = `at most volts times amps of the plate, ${inMetric(most, 'electricPower')}; the plate of an appliance may count a heater or a lamp that is not the compressor`;
      problems.push(problemAt(document, `${at}.nameplate.power`, 'plateContradictsItself', words));
    }
  }
  return problems;
}

function ratingProblems(
  document: DesignDocument,
  { capacity, power, current }: NonNullable<Described['ratings']>[number],
  path: string,
): readonly DesignProblem[] {
  const isEmpty = capacity === undefined && power === undefined && current === undefined;
  const expected = 'a capacity, an electric power or a current, as stated there; best all three';
  return [
    ...(isEmpty ? [problemAt(document, `${path}.capacity`, 'missing', expected)] : []),
    ...inOrder(document, `${path}.at.evaporating`, `${path}.at.condensing`, 'the condensing temperature'),
    ...inOrder(document, `${path}.at.liquid`, `${path}.at.condensing`, 'the condensing temperature', true),
    ...inOrder(document, `${path}.at.evaporating`, `${path}.at.returnGas`, 'the return gas', true),
    ...liquidAboveEvaporating(document, `${path}.at`),
    ...voltAmpereProblems(document, path),
  ];
}

/** Liquid colder than what it is to cool. */
function liquidAboveEvaporating(document: DesignDocument, path: string): readonly DesignProblem[] {
  const [liquid, evaporating] = [valueAt(document, `${path}.liquid`), valueAt(document, `${path}.evaporating`)];
  if (liquid === undefined || evaporating === undefined || liquid.likely >= evaporating.likely - hair) return [];
  const expected = `at least the evaporating temperature, ${inMetric(evaporating.likely, 'temperature')}`;
  return [problemAt(document, `${path}.liquid`, 'notInOrder', expected)];
}

/** More watts than volts times amperes, where the voltage is known. */
function voltAmpereProblems(document: DesignDocument, path: string): readonly DesignProblem[] {
  const [power, current] = [valueAt(document, `${path}.power`), valueAt(document, `${path}.current`)];
  const voltage = valueAt(document, `${path}.voltage`) ?? valueAt(document, `${at}.nameplate.voltage`);
  if (power === undefined || current === undefined || voltage === undefined) return [];
  const most = voltage.high * current.high;
  if (power.low <= plateTolerance * most) return [];
  const expected = `at most volts times amperes, ${inMetric(most, 'electricPower')}: check the units of power and current, and the voltage`;
  return [problemAt(document, `${path}.power`, 'aboveVoltAmperes', expected)];
}

function benchProblems(document: DesignDocument, path: string): readonly DesignProblem[] {
  return [
    ...inOrder(document, `${path}.evaporating`, `${path}.condensing`, 'the condensing temperature'),
    ...inOrder(document, `${path}.liquid`, `${path}.condensing`, 'the condensing temperature', true),
    ...liquidAboveEvaporating(document, path),
    ...inOrder(document, `${path}.evaporating`, `${path}.suction`, 'the suction pipe', true),
    ...inOrder(document, `${path}.suction`, `${path}.discharge`, 'the discharge pipe'),
  ];
}

/** Of two temperatures that are typed, the first must be the lower one, whatever their ranges hold. */
function inOrder(
  document: DesignDocument,
  lower: string,
  upper: string,
  words: string,
  mayEqual = false,
): readonly DesignProblem[] {
  const [low, high] = [valueAt(document, lower), valueAt(document, upper)];
  if (low === undefined || high === undefined) return [];
  if (low.likely < high.likely - hair || (mayEqual && low.likely <= high.likely + hair)) return [];
  const expected = `${mayEqual ? 'at most' : 'below'} ${words}, ${inMetric(high.likely, 'temperature')}`;
  return [problemAt(document, lower, 'notInOrder', expected)];
}

function coefficientProblems(document: DesignDocument, set: CoefficientSet, path: string): readonly DesignProblem[] {
  const read = readCoefficients(set.values);
  const units: readonly string[] = polynomialUnits[set.of];
  const needsLiquid = set.of === 'capacity' && set.basis.liquid === undefined;
  return [
    ...(read.ok ? [] : [{ path: `${path}.values`, ...read.problem }]),
    ...(units.includes(set.unit)
      ? []
      : [problemAt(document, `${path}.unit`, 'wrongUnit', `one of ${units.join(', ')}`)]),
    ...(needsLiquid ? [missingLiquid(`${path}.basis.liquid`)] : []),
    ...rangeProblems(document, path),
  ];
}

function missingLiquid(path: string): DesignProblem {
  const expected =
    'the subcooling or the temperature of the liquid the capacity is stated for: it alone is worth a fifth of the capacity';
  return { path, code: 'missing', received: '', expected };
}

/**
 * What cannot be read of a table, by its line and column; and what its points are not known without. Nothing is said before
 * what reads tables was handed over: no design is reckoned before it was.
 */
function tableProblems({ table: text, basis }: PastedTable, path: string): readonly DesignProblem[] {
  if (!hasMachineReading()) return [];
  const read = machineReading().readPointTable(text);
  if (!read.ok) {
    return read.problems.map(({ code: _, ...place }) => ({ path: `${path}.table`, code: 'tableUnreadable', ...place }));
  }
  const points = read.table.rows.map(({ values }) => values);
  const needsGas = points.some(({ returnGas, superheat }) => returnGas === undefined && superheat === undefined);
  const needsLiquid = points.some(
    ({ capacity, liquid, subcooling }) => capacity !== undefined && liquid === undefined && subcooling === undefined,
  );
  const expected = `a column of return gas or superheat, or here what holds for all points: ${whySuction}`;
  const gas: DesignProblem = { path: `${path}.basis.suction`, code: 'missing', received: '', expected };
  return [
    ...(needsGas && basis?.suction === undefined ? [gas] : []),
    ...(needsLiquid && basis?.liquid === undefined ? [missingLiquid(`${path}.basis.liquid`)] : []),
  ];
}

/** Ranges are ranges, and what the set holds for makes sense everywhere in them. */
function rangeProblems(document: DesignDocument, path: string): readonly DesignProblem[] {
  const [evaporating, condensing] = ['evaporatingRange', 'condensingRange'].map((name) =>
    valueAt(document, `${path}.${name}`),
  );
  const gas = `${path}.basis.suction.returnGas`;
  const liquid = `${path}.basis.liquid.temperature`;
  if (evaporating === undefined || condensing === undefined) return [];
  const problems: DesignProblem[] = [];
  const say = (value: number) => inMetric(value, 'temperature');
  // Sheets for high evaporating temperatures let the two overlap: they hold where condensing is above evaporating.
  if (evaporating.low >= condensing.high) {
    const expected = `a range that begins below the end of the condensing range, ${say(condensing.high)}`;
    problems.push(problemAt(document, `${path}.evaporatingRange`, 'notInOrder', expected));
  }
  const returnGas = valueAt(document, gas);
  if (returnGas !== undefined && returnGas.likely < evaporating.high - hair) {
    const expected = `at least the upper end of the evaporating range, ${say(evaporating.high)}`;
    problems.push(problemAt(document, gas, 'notInOrder', expected));
  }
  const liquidTemperature = valueAt(document, liquid);
  if (liquidTemperature !== undefined && liquidTemperature.likely > condensing.low + hair) {
    const expected = `at most the lower end of the condensing range, ${say(condensing.low)}; where the sheet states one liquid temperature for all, let the range begin there`;
    problems.push(problemAt(document, liquid, 'notInOrder', expected));
  }
  return problems;
}
