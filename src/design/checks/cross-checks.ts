// What a field alone cannot tell: water above the rim, a coldest spell above the usual temperature, a machine that
// contradicts itself, a price in another currency. Runs on documents whose fields are valid one by one.

import { readQuantity } from '../../quantities/index.ts';
import { fieldsOf } from '../field-records.ts';
import { textAt } from '../paths.ts';
import type { DesignProblem } from '../problems.ts';
import type { DesignDocument } from '../schema/design.ts';
import { machineProblems } from './machine-checks.ts';
import { hair, inMetric, problemAt, valueAt } from './reading.ts';
import { tankProblems } from './tank-checks.ts';
import { wrappingProblems } from './wrapping-checks.ts';

/** All problems between fields. */
export function crossProblems(document: DesignDocument): readonly DesignProblem[] {
  return [
    ...currencyProblems(document),
    ...temperatureProblems(document),
    ...tankProblems(document),
    ...wrappingProblems(document),
    ...machineProblems(document),
  ];
}

function currencyProblems(document: DesignDocument): DesignProblem[] {
  const { currency } = document.prices;
  return fieldsOf(document).flatMap(({ path, quantity }) => {
    if (quantity !== 'energyPrice' && quantity !== 'money') return [];
    const text = textAt(document, path);
    if (text === undefined) return [];
    const read = readQuantity(text, quantity, { currency });
    return read.ok ? [] : [{ path, ...read.problem }];
  });
}

/** The usual temperature of a place, the coldest and the warmest it knows. */
const climates = [
  { usual: 'room.temperature', coldest: 'room.coldest', warmest: 'room.warmest' },
  { usual: 'source.temperature', coldest: 'source.coldest', warmest: 'source.warmest' },
  { usual: 'place.outdoors.winter', coldest: 'place.outdoors.coldest', warmest: 'place.outdoors.summer' },
  { usual: 'place.mains.winter', warmest: 'place.mains.summer' },
] as const;

function temperatureProblems(document: DesignDocument): DesignProblem[] {
  return climates.flatMap((climate) => {
    const usual = valueAt(document, climate.usual);
    const coldest = 'coldest' in climate ? valueAt(document, climate.coldest) : undefined;
    const warmest = valueAt(document, climate.warmest);
    if (usual === undefined) return [];
    const said = `${inMetric(usual.likely, 'temperature')}, the usual temperature`;
    const problems: DesignProblem[] = [];
    if (coldest !== undefined && 'coldest' in climate && coldest.likely > usual.likely + hair) {
      problems.push(problemAt(document, climate.coldest, 'coldestAboveUsual', `at most ${said}`));
    }
    if (warmest !== undefined && warmest.likely < usual.likely - hair) {
      problems.push(problemAt(document, climate.warmest, 'warmestBelowUsual', `at least ${said}`));
    }
    return problems;
  });
}
