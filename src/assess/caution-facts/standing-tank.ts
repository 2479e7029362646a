// What the rules of caution are told of a tank apart from any machine, as it stands and with the measures that are to be taken.

import { lowestUsualWater, type StandingTank } from '../../cautions/index.ts';
import type { PlainDesign, SizedLoadOf } from '../../design/index.ts';
import { insulationNames } from '../../matter/materials/index.ts';
import { dampFaces, type TankDescription, type TankLoad, timeToFall, type Vessel } from '../../tank/index.ts';
import { roomDewPoint } from '../answers/tank.ts';
import { type StageResults, tankSlice } from '../stages/index.ts';
import { carriedBy } from '../stages/tank/meter.ts';
import { tankConditions, tankDescription } from '../stages/tank/tank.ts';
import type { OfferedMeasure } from '../stages/wrapping/offered.ts';
import { panelLabel } from '../wording/labels.ts';
import { type SummerSubject, warmestMonth, waterInSummer } from './summer.ts';

type PlainLoad = PlainDesign['tank']['load'];
type SizedLoad = SizedLoadOf<number>;

export interface StandingSubject extends SummerSubject {
  readonly results: Pick<StageResults, 'surroundings' | 'meter' | 'tank' | 'monthLoads'>;
  /** Measures that are to be taken: those that pay. */
  readonly taken: readonly OfferedMeasure[];
  /** Measures that are looked at, taken or not. */
  readonly measures: readonly OfferedMeasure[];
}

export function standingTank(subject: StandingSubject): StandingTank {
  const { design, results, measures } = subject;
  const { load } = design.tank;
  const { moisture } = design.room;
  const slice = carriedBy(tankSlice(design), results.meter);
  const described = tankDescription(slice);
  const display = displayOf(described);
  return {
    summer: summerOf(subject),
    cover: display?.cover.kind ?? 'unknown',
    openShare: display?.cover.kind === 'lid' ? display.cover.openShare : 1,
    isCoverPlanned: measures.some(isDisplayCover),
    airDrawn: load.kind === 'measured' ? 0 : load.airStones + load.skimmerAir,
    lightPower: load.lightPower,
    insulation: [...new Set([...insulationOf(load), ...measures.flatMap(insulationOfMeasure)])],
    isOnBoard: load.kind !== 'measured' && isOnBoard(load, described, measures),
    footing: footingOf(display, results),
    dampFaces: hiddenDamp(subject),
    isBoardAtWall: load.kind !== 'measured' && isBoardAtWall(load, display, measures),
    evaporation: results.tank.evaporation,
    airChanges: moisture.kind === 'ventilated' ? moisture.airChanges : null,
    isDehumidified: moisture.kind === 'dehumidifier',
    timeToAlarm: timeToAlarm(subject, described),
  };
}

function summerOf(subject: StandingSubject): StandingTank['summer'] {
  const { pump, light, ultraviolet } = subject.results.tank.gains;
  const engine = subject.taken.flatMap(({ measure }) => measure ?? []);
  return {
    roomTemperature: warmestMonth(subject.results.surroundings).roomTemperature,
    gains: pump + light + ultraviolet,
    asItIs: waterInSummer(subject, []),
    wrapped: engine.length === 0 ? null : waterInSummer(subject, engine),
  };
}

function displayOf(described: TankDescription): Vessel | undefined {
  return described.kind === 'built' ? described.vessels.find(({ name }) => name === 'tank') : undefined;
}

function isDisplayCover({ measure }: OfferedMeasure): boolean {
  return (measure?.kind === 'lid' && measure.vessel === 'tank') || measure?.kind === 'nightCover';
}

function insulationOfMeasure({ measure, sheet }: OfferedMeasure): readonly string[] {
  const isInsulation = measure !== null && sheet !== null && insulationNames.includes(sheet.material);
  return isInsulation ? [sheet.material] : [];
}

type ListedLayer = Exclude<SizedLoad, { readonly kind: 'panels' }>['faces'][number]['outside'][number];

/** Names of the insulating materials outside of panes and pipes; 'own' for a layer of one's own. */
function insulationOf(load: PlainLoad): readonly string[] {
  if (load.kind === 'measured') return [];
  const sides = [load.sump, load.refuge, load.overflow].flatMap((vessel) => vessel?.insulation ?? []);
  const pipes = load.pipes.flatMap(({ insulation }) => insulation ?? []);
  const boards = [...boardsOf(load), ...sides, ...pipes].map(({ material }) => material);
  const listed = [...outsideOf(load), ...(load.lidLayers ?? [])].flatMap(nameOfLayer);
  return [...boards, ...listed].filter((name) => name === 'own' || insulationNames.includes(name));
}

function boardsOf(load: SizedLoad): readonly { readonly material: string }[] {
  if (load.kind === 'panels') return [];
  const { front, sides, back, bottom } = load.insulation;
  return [front, sides, back, bottom].flatMap((board) => board ?? []);
}

function outsideOf(load: SizedLoad): readonly ListedLayer[] {
  const pieces = load.kind === 'panels' ? load.panels : load.faces;
  return pieces.flatMap(({ outside }) => outside);
}

function nameOfLayer(layer: ListedLayer): readonly string[] {
  if (layer.kind === 'material') return [layer.material];
  return layer.kind === 'own' || layer.kind === 'resistance' ? ['own'] : [];
}

function isSoft(layer: ListedLayer): boolean {
  return nameOfLayer(layer).some((name) => name === 'own' || insulationNames.includes(name));
}

/** Insulating layers below the display tank, as it stands or among the measures. */
function isOnBoard(load: SizedLoad, described: TankDescription, measures: readonly OfferedMeasure[]): boolean {
  const isListed =
    load.kind === 'panels'
      ? load.panels.some(({ facing, outside }) => facing === 'bottom' && outside.some(isSoft))
      : load.insulation.bottom !== undefined ||
        load.faces.some(({ face, outside }) => face === 'bottom' && outside.some(isSoft));
  const bottoms = displayOf(described)?.panels.filter(({ facing }) => facing === 'bottom') ?? [];
  const isPlanned = bottoms.some(({ name }) => measures.some((each) => covers(each, name)));
  return isListed || isPlanned;
}

/** Where the design says that a wall of the house is close by. */
function isBoardAtWall(load: SizedLoad, display: Vessel | undefined, measures: readonly OfferedMeasure[]): boolean {
  const atWall = display?.panels.filter(({ exposure }) => exposure.kind === 'againstWall') ?? [];
  return atWall.some(({ name }) => hasBoard(load, name) || measures.some((each) => covers(each, name)));
}

function hasBoard(load: SizedLoad, panel: string): boolean {
  if (load.kind === 'panels') return load.panels.some(({ name, outside }) => name === panel && outside.some(isSoft));
  const { back, sides, front } = load.insulation;
  const byPanel: Readonly<Record<string, unknown>> = { back, left: sides, right: sides, side: sides, front };
  const isListed = load.faces.some(({ face, outside }) => face === panel && outside.some(isSoft));
  return isListed || byPanel[panel] !== undefined;
}

/** Whether the measure lays something on this panel of the display tank. */
function covers({ measure }: OfferedMeasure, name: string): boolean {
  return measure?.kind === 'outside' && measure.panels.some(({ vessel, panel }) => vessel === 'tank' && panel === name);
}

function footingOf(
  display: Vessel | undefined,
  { tank: { waterMass, waterVolume } }: StandingSubject['results'],
): StandingTank['footing'] {
  if (display === undefined) return null;
  const area = display.panels.reduce((sum, panel) => (panel.facing === 'bottom' ? sum + panel.wetArea : sum), 0);
  return area > 0 ? { waterMass: (waterMass * display.waterVolume) / waterVolume, area } : null;
}

/** Hidden faces that the room's air leaves water on, at the coldest spell or in the first month in which any is damp. */
function hiddenDamp({ results: { surroundings, tank, monthLoads } }: StandingSubject): StandingTank['dampFaces'] {
  const moments = [
    { when: 'in the coldest spell', load: tank, room: surroundings.spell.roomTemperature },
    ...surroundings.months.map(({ month, roomTemperature }, index) => {
      return { when: `in ${month}`, load: monthLoads[index]!, room: roomTemperature };
    }),
  ];
  for (const { when, load, room } of moments) {
    const dewPoint = roomDewPoint(load, room);
    const damp = dewPoint === null ? [] : hiddenFacesBelow(load, dewPoint);
    if (damp.length === 0) continue;
    return {
      when,
      faces: [...new Set(damp.map(({ label }) => label))].join(', '),
      coldest: Math.min(...damp.map(({ temperature }) => temperature)),
      dewPoint: dewPoint!,
    };
  }
  return null;
}

/** Of panels below the water, before a wall, in a closed stand or underneath. */
function hiddenFacesBelow({ intermediates }: TankLoad, dewPoint: number) {
  if (intermediates.kind !== 'built') return [];
  return intermediates.vessels.flatMap(({ name: vessel, panels }) =>
    panels
      .filter(({ facing, exposure }) => facing === 'bottom' || exposure.kind !== 'roomAir')
      .flatMap((state) =>
        dampFaces(state, { room: dewPoint }).map(({ temperature }) => ({
          label: panelLabel(vessel, state.name),
          temperature,
        })),
      ),
  );
}

function timeToAlarm({ design, results }: StandingSubject, described: TankDescription): number | null {
  const { spell, atmosphericPressure } = results.surroundings;
  const slice = carriedBy(tankSlice(design), results.meter);
  const fall = slice.tank.waterTemperature - lowestUsualWater;
  return fall > 0 ? timeToFall(described, tankConditions(slice, spell, atmosphericPressure), fall) : null;
}
