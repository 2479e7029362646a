// Which of the tank model's factors matter for a tank that is known by its sizes, each with its range and source.

import type { LayerOf, SizedLoadOf } from '../../../design/index.ts';
import { layerConductivity, type MaterialRange, material } from '../../../matter/materials/index.ts';
import { outerFilmRange, type Stack } from '../../../tank/index.ts';
import { standardTankFactors, type TankAssumption, type TankFactors } from '../tank/tank-assumptions.ts';
import { exposuresIn, mirrorEmissivity } from '../tank/tank-stacks.ts';
import { vesselsOf } from './vessels.ts';

interface UsedLayer {
  readonly material: string;
  readonly thickness: number;
}

/** The factors that matter for this tank, with range and source. */
export function sizedTankAssumptions(load: SizedLoadOf<number>): readonly TankAssumption[] {
  const { walls, inside, wrapped, lids } = layersOf(load);
  const { low, likely, high, source } = outerFilmRange;
  return [
    {
      key: 'outerFilmFactor',
      label: `outer film of ${lids.length > 0 ? 'panes, bottom and lid' : 'panes and bottom'}, as a multiple of the standard one`,
      quantity: 'ratio',
      estimate: { low, likely, high, origin: 'assumed' },
      source,
    },
    ...conductivityOf('wallConductivityFactor', 'panes', walls),
    ...conductivityOf('insideConductivityFactor', 'layers in the water', inside),
    ...conductivityOf('insulationConductivityFactor', 'insulation', wrapped),
    ...conductivityOf('lidConductivityFactor', 'lid', lids),
    ...(isFoilSeen(load) ? foilOf([...walls, ...wrapped, ...lids]) : []),
    ...(exposuresIn(load).some(({ kind }) => kind === 'closedStand') ? [standDoubt] : []),
  ];
}

/** The sheets and boards of a tank by the part they play. */
function layersOf(load: SizedLoadOf<number>) {
  const vessels = [load.sump, load.refuge, load.overflow].filter((vessel) => vessel !== undefined);
  const parts = load.kind === 'panels' ? load.panels : load.faces;
  const boards = load.kind === 'panels' ? [] : Object.values(load.insulation);
  const pipeWraps = load.pipes.map(({ insulation }) => insulation);
  const sideWraps = vessels.map(({ insulation }) => insulation);
  const sideLids = vessels
    .filter(({ lid }) => lid !== 'none')
    .map(({ lidMaterial, lidThickness }): UsedLayer => ({ material: lidMaterial, thickness: lidThickness }));
  return {
    walls: given([load.wall, ...parts.map(({ wall }) => wall), ...vessels.map(({ wall }) => wall)]),
    inside: parts.flatMap((part) => sheetsIn(part.inside)),
    wrapped: [...given([...boards, ...sideWraps, ...pipeWraps]), ...parts.flatMap(({ outside }) => sheetsIn(outside))],
    lids: [...displayLid(load), ...sideLids],
  };
}

function displayLid(load: SizedLoadOf<number>): readonly UsedLayer[] {
  if (load.lid === 'none') return [];
  if (load.lid === 'hood') return [load.hood];
  if (load.lidLayers !== undefined) return sheetsIn(load.lidLayers);
  return [{ material: load.lidMaterial, thickness: load.lidThickness }];
}

function sheetsIn(layers: readonly LayerOf<number>[]): readonly UsedLayer[] {
  return layers.filter((layer) => layer.kind === 'material');
}

function given(layers: readonly (UsedLayer | undefined)[]): readonly UsedLayer[] {
  return layers.filter((layer) => layer !== undefined);
}

const standDoubt: TankAssumption = {
  key: 'standFactor',
  label: 'resistance of the closed stand, as a multiple of that of its boards',
  quantity: 'ratio',
  estimate: { low: 0.3, likely: 1, high: 1.2, origin: 'assumed' },
  source: 'common practice, no source: openings for hoses and cables let room air in',
};

/** Whether foil or bare metal faces a sealed gap or what lies beyond: else its emissivity has no say. */
function isFoilSeen(load: SizedLoadOf<number>): boolean {
  const stacks = vesselsOf(load, standardTankFactors, 0).flatMap(({ panels, cover }) => [
    ...panels.map(({ stack }) => stack),
    ...(cover.kind === 'none' ? [] : [cover.stack]),
  ]);
  return stacks.some((stack) => stack.some((_, index) => isMirrorSeen(stack, index)));
}

function isMirrorSeen(stack: Stack, index: number): boolean {
  const layer = stack[index]!;
  if (layer.kind !== 'solid' || (layer.emissivity ?? 1) >= mirrorEmissivity) return false;
  const before = stack[index - 1];
  const beyond = stack[index + 1];
  const isSeenFromBefore = before?.kind === 'sealedGap' && before.outerEmissivity === undefined;
  const isSeenFromBeyond =
    beyond === undefined ||
    beyond.kind === 'openGap' ||
    (beyond.kind === 'sealedGap' && beyond.innerEmissivity === undefined);
  return isSeenFromBefore || isSeenFromBeyond;
}

/** One factor for all foil of a tank; where it is of several kinds its ends are the farthest of them. */
function foilOf(layers: readonly UsedLayer[]): TankAssumption[] {
  const foils = layers
    .map((layer) => material(layer.material))
    .filter(({ emissivity }) => emissivity.likely < mirrorEmissivity);
  return rangeOf(
    'foilEmissivityFactor',
    (labels) => `emissivity of foil and bare metal (${labels}), as a multiple of the tabulated one`,
    foils.map(({ label, emissivity }) => ({ label, range: emissivity })),
  );
}

function conductivityOf(key: keyof TankFactors, part: string, layers: readonly UsedLayer[]): TankAssumption[] {
  return rangeOf(
    key,
    (labels) => `conductivity of the ${part} (${labels}), as a multiple of the tabulated one`,
    layers.map((layer) => ({
      label: material(layer.material).label,
      range: layerConductivity(layer.material, layer.thickness),
    })),
  );
}

/** One factor for all layers of a kind; where they are of several materials its ends are the farthest of them. */
function rangeOf(
  key: keyof TankFactors,
  label: (labels: string) => string,
  used: readonly { readonly label: string; readonly range: MaterialRange }[],
): TankAssumption[] {
  if (used.length === 0) return [];
  const ranges = used.map(({ range }) => range);
  return [
    {
      key,
      label: label(
        together(
          used.map((layer) => layer.label),
          ' and ',
        ),
      ),
      quantity: 'ratio',
      estimate: {
        low: Math.min(...ranges.map(({ low, likely }) => low / likely)),
        likely: 1,
        high: Math.max(...ranges.map(({ high, likely }) => high / likely)),
        origin: 'assumed',
      },
      source: together(
        ranges.map(({ source }) => source),
        '; ',
      ),
    },
  ];
}

function together(words: readonly string[], between: string): string {
  return [...new Set(words)].join(between);
}
