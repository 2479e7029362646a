// What cannot be among layers: a gap that nothing closes, a sheet of a thickness that is not known.

import { layerConductivity } from '../../matter/materials/index.ts';
import { KettlefinError } from '../../numerics/index.ts';
import { listsOf } from '../field-records.ts';
import { partAt, textAt } from '../paths.ts';
import type { DesignProblem } from '../problems.ts';
import type { DesignDocument } from '../schema/design.ts';
import { inMetric, problemAt, valueAt } from './reading.ts';
import type { SizedLoad } from './tank-checks.ts';

interface WrittenLayer {
  readonly kind: string;
}

export function layerProblems(document: DesignDocument, load: SizedLoad): readonly DesignProblem[] {
  const lists = listsOf(document)
    .map(({ path }) => path)
    .filter((path) => path.startsWith('tank.load.') && /\.(?:inside|outside|lidLayers)$/.test(path));
  return [...lists.flatMap((list) => gapProblems(document, list)), ...sheetsOf(load, lists, document)];
}

/** A gap lies between two faces: the pane is one of them in a list of a face; on a lid nothing is. */
function gapProblems(document: DesignDocument, list: string): readonly DesignProblem[] {
  const layers = (partAt(document, list) as readonly WrittenLayer[] | undefined) ?? [];
  const isInWater = list.endsWith('.inside');
  const beginsAtPane = list.endsWith('.outside');
  return layers.flatMap(({ kind }, index) => {
    const hasBefore = index > 0 || beginsAtPane;
    const hasBeyond = index < layers.length - 1 || isInWater;
    const expected = gapNeeds(kind, isInWater, hasBefore, hasBeyond);
    return expected === undefined ? [] : [problemAt(document, `${list}.${index}.kind`, 'gapOpen', expected)];
  });
}

/** What a gap lacks, in words; undefined where it lacks nothing. */
function gapNeeds(kind: string, isInWater: boolean, hasBefore: boolean, hasBeyond: boolean): string | undefined {
  if (kind === 'openGap' && isInWater) return 'sealedGap or waterGap: room air does not come into the water';
  if ((kind === 'sealedGap' || kind === 'waterGap') && !hasBeyond) return 'a layer beyond it that closes the gap';
  // Standing water may be the first thing in the water; air may not.
  if (kind === 'sealedGap' && !hasBefore) return 'a layer before it that closes the gap';
  return undefined;
}

/** Every sheet of the tank: a twin-wall sheet is known in a few thicknesses only. */
function sheetsOf(load: SizedLoad, lists: readonly string[], document: DesignDocument): readonly DesignProblem[] {
  const inLists = lists.flatMap((list) =>
    ((partAt(document, list) as readonly unknown[] | undefined) ?? []).map((_, index) => `${list}.${index}`),
  );
  const lids = ['', 'sump.', 'refuge.', 'overflow.'].map((vessel) => `tank.load.${vessel}lid`);
  const hood = load.hood === undefined ? [] : ['tank.load.hood'];
  return [
    ...inLists.flatMap((path) => sheetProblems(document, `${path}.material`, `${path}.thickness`)),
    ...lids.flatMap((path) => sheetProblems(document, `${path}Material`, `${path}Thickness`, 'glass')),
    ...hood.flatMap((path) => sheetProblems(document, `${path}.material`, `${path}.thickness`, 'acrylic')),
  ];
}

/** What keeps a sheet from having that thickness; `usual` is its material where none was named. */
export function sheetProblems(
  document: DesignDocument,
  materialPath: string,
  thicknessPath: string,
  usual?: string,
): readonly DesignProblem[] {
  const name = textAt(document, materialPath) ?? usual;
  const thickness = valueAt(document, thicknessPath);
  if (name === undefined || thickness === undefined) return [];
  for (const end of [thickness.low, thickness.high]) {
    try {
      layerConductivity(name, end);
    } catch (error) {
      if (!(error instanceof KettlefinError)) throw error;
      return [problemAt(document, thicknessPath, 'sheetThicknessUnknown', knownThickness(error))];
    }
  }
  return [];
}

function knownThickness(error: KettlefinError): string {
  const facts = error.facts();
  return 'low' in facts && 'high' in facts
    ? `${inMetric(Number(facts.low), 'length')} to ${inMetric(Number(facts.high), 'length')}`
    : error.message;
}
