// The measures of a design, or where it lists none those that are usually worth a look, as the tank model wants them told, with
// the area they cover and what they cost.

import { type CostRange, costOf, type UsualMeasure, type UsualWork, usualMeasures } from '../../../accounts/index.ts';
import type { PlainDesign } from '../../../design/index.ts';
import { material } from '../../../matter/materials/index.ts';
import { insideSentence } from '../../../quantities/index.ts';
import {
  applyMeasures,
  areaOf,
  type BuiltTank,
  type Measure,
  type PanelGroup,
  type PanelPlace,
  panelsOf,
  type Stack,
  type TankDescription,
  type VesselName,
} from '../../../tank/index.ts';
import type { TankFactors } from '../tank/tank-assumptions.ts';
import { outermostEmissivity, type PlainSheet, sheetLayer } from '../tank/tank-stacks.ts';
import type { MeasureFactors } from './assumptions.ts';

type Listed = NonNullable<PlainDesign['wrapping']['measures']>[number];

/** Sealed gap of a lid of two panes, and the sheet of a second pane, where nobody says: common practice, no source. */
const usualPaneGap = 0.012;
const usualSecondPane: PlainSheet = { material: 'acrylic', thickness: 0.004 };
/** A lid of the design is told to be tight. */
const tight = 0;

/** One measure that could be taken. */
export interface OfferedMeasure {
  /** 'own.0' in the design's list, 'usual.twinWallLid' of those that are offered. */
  readonly id: string;
  readonly kind: Listed['kind'];
  readonly name: string;
  readonly path: string | null;
  /** Null where the tank has none of the parts it is for. */
  readonly measure: Measure | null;
  /** [m²]; null where it covers nothing. */
  readonly area: number | null;
  /** What it is made of, and how thick, where it is a sheet or a board [m]. */
  readonly sheet: PlainSheet | null;
  /** Cost at these plain values; low and high are those of a usual price. */
  readonly cost: CostRange;
  /** Cost of the board by its volume [money/m³], likely; null where it is no board of a usual measure. */
  readonly usual: UsualMeasure | null;
}

/** What the measures are read from. */
export interface OfferSlice {
  readonly measures: PlainDesign['wrapping']['measures'];
  readonly factors: TankFactors;
  /** On the tabulated conductivity of what is added, and on usual prices. */
  readonly measureFactors: MeasureFactors;
}

/** Every measure of the list, applicable or not. */
export function offeredMeasures(slice: OfferSlice, tank: TankDescription): readonly OfferedMeasure[] {
  const { measures, factors, measureFactors } = slice;
  const own: TankFactors = { ...factors, insulationConductivityFactor: measureFactors.measureConductivityFactor };
  if (measures === undefined) {
    return usualMeasures.measures.map((usual) => ofUsual(usual, tank, own, measureFactors.measureCostFactor));
  }
  return measures.map((listed, index) => ofDesign(listed, index, tank, own));
}

/** Measures that wrap: what one lays on or around. Cooler or calmer water is another tank, not the same one wrapped. */
export function isWrap({ kind }: OfferedMeasure): boolean {
  return kind !== 'cooler' && kind !== 'calmerSurface';
}

/** Whether the measure changes anything on this tank by itself. */
export function applies({ measure }: OfferedMeasure, tank: TankDescription, waterTemperature: number): boolean {
  return measure !== null && applyMeasures(tank, waterTemperature, [measure]).outcomes[0]!.changed.length > 0;
}

function ofUsual(usual: UsualMeasure, tank: TankDescription, factors: TankFactors, costFactor: number): OfferedMeasure {
  const { work } = usual;
  const { measure, area } = engineForm(work, tank, factors, `data/measures.json ${usual.id}`);
  const sheet = 'material' in work ? { material: work.material, thickness: work.thickness } : null;
  return {
    id: `usual.${usual.id}`,
    kind: work.kind === 'board' && work.where.includes('bottom') ? 'mat' : work.kind,
    name: usual.name,
    path: null,
    measure,
    area,
    sheet,
    cost: costOf(usual.cost, { area: area ?? 0, thickness: sheet?.thickness ?? 0, factor: costFactor }),
    usual,
  };
}

function ofDesign(listed: Listed, index: number, tank: TankDescription, factors: TankFactors): OfferedMeasure {
  const work = workOf(listed);
  const path = `wrapping.measures.${index}`;
  const { measure, area } = engineForm(work, tank, factors, path);
  const { cost } = listed;
  return {
    id: `own.${index}`,
    kind: listed.kind,
    name: listed.name ?? nameOf(listed),
    path,
    measure,
    area,
    sheet: 'material' in work ? { material: work.material, thickness: work.thickness } : null,
    cost: { low: cost, likely: cost, high: cost },
    usual: null,
  };
}

/** A measure of the design in the words of the usual ones. */
function workOf(listed: Listed): UsualWork {
  switch (listed.kind) {
    case 'lid':
      return { ...listed, gap: usualPaneGap, openShare: tight };
    case 'board':
      return { ...listed, where: [listed.where] };
    case 'mat':
      return { ...listed, kind: 'board', where: ['bottom'] };
    case 'doubleGlazing': {
      const where: readonly PanelGroup[] = listed.where === 'frontAndSides' ? ['front', 'sides'] : [listed.where];
      return { kind: 'doubleGlazing', where, gap: listed.gap, ...usualSecondPane };
    }
    case 'nightCover':
      return { ...listed, openShare: tight };
    case 'cooler':
    case 'calmerSurface':
      return listed;
  }
}

interface EngineForm {
  readonly measure: Measure | null;
  readonly area: number | null;
}

function engineForm(work: UsualWork, tank: TankDescription, factors: TankFactors, origin: string): EngineForm {
  const sheetOf = (sheet: PlainSheet) => sheetLayer(sheet, factors, 'insulationConductivityFactor', origin);
  switch (work.kind) {
    case 'lid': {
      const sheet = sheetOf(work);
      const gap = { kind: 'sealedGap', thickness: work.gap ?? usualPaneGap, origin } as const;
      const stack: Stack = work.panes === 'two' ? [sheet, gap, sheet] : [sheet];
      const { vessel, openShare } = work;
      const area = surfaceOf(tank, vessel);
      if (area === null && tank.kind === 'built') return { measure: null, area };
      return { measure: { kind: 'lid', vessel, stack, emissivity: outermostEmissivity(stack), openShare }, area };
    }
    case 'nightCover': {
      const stack: Stack = [sheetOf(work)];
      const share = work.hours / secondsPerDay;
      const emissivity = outermostEmissivity(stack);
      const { openShare } = work;
      return { measure: { kind: 'nightCover', share, stack, emissivity, openShare }, area: surfaceOf(tank, 'tank') };
    }
    case 'board':
    case 'doubleGlazing': {
      const panels = work.where.flatMap((group): readonly PanelPlace[] => panelsIn(tank, group));
      if (panels.length === 0) return { measure: null, area: null };
      const sheet = sheetOf(work);
      const stack: Stack =
        work.gap === undefined ? [sheet] : [{ kind: 'sealedGap', thickness: work.gap, origin: `${origin}.gap` }, sheet];
      const area = tank.kind === 'built' ? areaOf(tank, panels) : null;
      return { measure: { kind: 'outside', panels, stack, emissivity: outermostEmissivity(stack) }, area };
    }
    case 'cooler':
      return { measure: { kind: 'cooler', by: work.by }, area: null };
    case 'calmerSurface':
      return { measure: { kind: 'calmerSurface', to: work.to }, area: null };
  }
}

const secondsPerDay = 86_400;

/** Panels of a group; of a tank known by its meter alone a nameless one, so that it can say that nobody knows them. */
function panelsIn(tank: TankDescription, group: PanelGroup): readonly PanelPlace[] {
  return tank.kind === 'built' ? panelsOf(tank, group) : [{ vessel: 'tank', panel: group }];
}

function surfaceOf(tank: TankDescription, vessel: VesselName): number | null {
  const found = (tank as Partial<BuiltTank>).vessels?.find(({ name }) => name === vessel);
  return found?.waterSurface ?? null;
}

const places = {
  hidden: 'on the hidden sides',
  back: 'at the back',
  sides: 'on the ends',
  bottom: 'underneath',
  front: 'at the front',
  frontAndSides: 'at front and ends',
  sideVessels: 'around the other vessels',
} as const;

/** "Extruded polystyrene (XPS) at the back". */
function nameOf(listed: Listed): string {
  switch (listed.kind) {
    case 'lid':
      return `${listed.panes === 'two' ? 'Double lid' : 'Lid'} of ${insideSentence(material(listed.material).label)}`;
    case 'board': {
      const over = listed.gap === undefined ? '' : ' over a sealed gap';
      return `${material(listed.material).label}${over} ${places[listed.where]}`;
    }
    case 'mat':
      return `${material(listed.material).label} underneath`;
    case 'doubleGlazing':
      return `Second pane ${listed.where === 'front' ? 'in front' : places[listed.where]}`;
    case 'cooler':
      return 'Cooler water';
    case 'nightCover':
      return `Cover of ${insideSentence(material(listed.material).label)} at night`;
    case 'calmerSurface':
      return listed.to === 'still' ? 'Still surface' : 'Rippled surface';
  }
}
