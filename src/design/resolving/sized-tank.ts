// The tank of a document that is known by its sizes -> resolved: vessels, layers, cover, pipes.

import type { Estimate } from '../../quantities/index.ts';
import type { YesNo } from '../plain.ts';
import type {
  CoverPartsOf,
  FaceName,
  LidName,
  MeterOf,
  PanelFacing,
  PipeOf,
  SideVesselOf,
  SizedLoadOf,
  SurfaceName,
} from '../plain-tank.ts';
import { practice } from '../schema/field.ts';
import { type SourcedDefault, timesBy, usualEvaporationFactor, usualLidThickness } from './defaults.ts';
import { resolveItems } from './items.ts';
import { resolveBoard, resolveExposure, resolveFaceParts, resolveLayers, resolveSheet } from './layers.ts';
import type { Resolver } from './resolver.ts';
import { type LoadSurroundings, resolveGains, resolveMeasurement } from './tank.ts';

type Sized = SizedLoadOf<Estimate>;
type Of<Kind extends string> = Extract<Sized, { readonly kind: Kind }>;

const load = 'tank.load';

type SizedKind = Sized['kind'];

export function resolveSizedLoad(take: Resolver, around: LoadSurroundings, kind: SizedKind): Sized {
  switch (kind) {
    case 'rectangular':
      return {
        kind,
        length: take.quantity(`${load}.length`),
        width: take.quantity(`${load}.width`),
        ...resolveShaped(take, around, kind),
      };
    case 'cylinder':
      return { kind, diameter: take.quantity(`${load}.diameter`), ...resolveShaped(take, around, kind) };
    case 'lShape':
      return {
        kind,
        length: take.quantity(`${load}.length`),
        width: take.quantity(`${load}.width`),
        recessLength: take.quantity(`${load}.recessLength`),
        recessWidth: take.quantity(`${load}.recessWidth`),
        ...resolveShaped(take, around, kind),
      };
    case 'panels':
      return {
        kind,
        waterSurface: take.quantity(`${load}.waterSurface`),
        waterVolume: take.quantity(`${load}.waterVolume`),
        freeboard: take.quantity(`${load}.freeboard`),
        panels: resolveItems(take, `${load}.panels`, (path) => ({
          name: take.text(`${path}.name`)!,
          facing: take.choice<PanelFacing>(`${path}.facing`),
          area: take.quantity(`${path}.area`),
          areaAboveWater: take.quantity(`${path}.areaAboveWater`),
          ...resolveFaceParts(take, path),
        })),
        ...resolveSized(take, around, kind),
      };
  }
}

function resolveShaped(take: Resolver, around: LoadSurroundings, kind: SizedKind) {
  const height = take.quantity(`${load}.height`);
  const waterDepth = resolveDepth(take, load, height);
  const { wall, ...rest } = resolveSized(take, around, kind);
  const board = (face: string) => ({ [face]: resolveBoard(take, `${load}.insulation.${face}`) });
  const insulation = ['sides', 'back', 'bottom', 'front'].filter((face) => take.hasPart(`${load}.insulation.${face}`));
  return {
    height,
    waterDepth,
    wall,
    insulation: Object.assign({}, ...insulation.map(board)) as Of<'rectangular'>['insulation'],
    faces: resolveItems(take, `${load}.faces`, (path) => ({
      face: take.choice<FaceName>(`${path}.face`),
      ...resolveFaceParts(take, path),
    })),
    ...rest,
  };
}

type SizedParts = Omit<
  SizedLoadOf<Estimate> & { kind: 'panels' },
  'kind' | 'panels' | `water${'Surface' | 'Volume'}` | 'freeboard'
>;

function resolveSized(take: Resolver, around: LoadSurroundings, kind: SizedKind): SizedParts {
  const wall = resolveSheet(take, `${load}.wall`);
  const cover = resolveCover(take, openingOf(take, kind));
  // A lid that closes tightly takes what rises as it comes, however lively the surface.
  const isOpen = cover.lid !== 'tight';
  const surface = take.choice<SurfaceName>(`${load}.surface`, undefined, isOpen);
  const airSpeed = take.quantityIfGiven(`${load}.airSpeed`);
  const evaporationFactor = take.quantity(`${load}.evaporationFactor`, () => usualEvaporationFactor(surface), isOpen);
  const stand = resolveExposure(take, `${load}.stand`)!;
  const sump = resolveVessel(take, 'sump');
  const refuge = resolveVessel(take, 'refuge');
  const overflow = resolveVessel(take, 'overflow');
  const meter = resolveMeter(take, around);
  const ultravioletPower = take.quantity(`${load}.ultravioletPower`);
  return {
    wall,
    surface,
    ...(airSpeed === undefined ? {} : { airSpeed }),
    evaporationFactor,
    ...cover,
    stand,
    ...(sump === undefined ? {} : { sump }),
    ...(refuge === undefined ? {} : { refuge }),
    ...(overflow === undefined ? {} : { overflow }),
    pipes: resolveItems(take, `${load}.pipes`, (path) => resolvePipe(take, path)),
    airStones: take.quantity(`${load}.airStones`),
    skimmerAir: take.quantity(`${load}.skimmerAir`),
    makeUpFrom: take.choice<'room' | 'mains'>(`${load}.makeUpFrom`),
    ...(take.hasPart(`${load}.waterChange`)
      ? {
          waterChange: {
            volume: take.quantity(`${load}.waterChange.volume`),
            every: take.quantity(`${load}.waterChange.every`),
          },
        }
      : {}),
    ...resolveGains(take),
    ultravioletPower,
    ultravioletShareToWater: take.quantity(`${load}.ultravioletShareToWater`, undefined, ultravioletPower.high > 0),
    ...(meter === undefined ? {} : { meter }),
  };
}

/** The opening of the display tank at its likely sizes [m²]. */
function openingOf(take: Resolver, kind: SizedKind): number {
  const likely = (name: string) => take.quantity(`${load}.${name}`).likely;
  switch (kind) {
    case 'rectangular':
      return likely('length') * likely('width');
    case 'cylinder':
      return (Math.PI / 4) * likely('diameter') ** 2;
    case 'lShape':
      return likely('length') * likely('width') - likely('recessLength') * likely('recessWidth');
    case 'panels':
      return likely('waterSurface');
  }
}

/** What a lid of known area leaves of the opening; undefined where its area was not given. */
function openShareBeside(take: Resolver, opening: number): (() => SourcedDefault) | undefined {
  const area = take.quantityIfGiven(`${load}.lidArea`);
  if (area === undefined) return undefined;
  const left = (covered: number) => Math.max(0, 1 - covered / opening);
  return () => ({
    low: left(area.high),
    likely: left(area.likely),
    high: left(area.low),
    source: 'what the area of the lid leaves of the opening',
  });
}

function resolveCover(take: Resolver, opening: number): CoverPartsOf<Estimate> {
  const lid = take.choice<LidName>(`${load}.lid`);
  const isLid = lid === 'tight' || lid === 'loose';
  const layers = resolveLayers(take, `${load}.lidLayers`);
  // Layers stand in place of material, thickness and panes.
  const isSheet = isLid && layers.length === 0;
  const lidMaterial = take.choice<string>(`${load}.lidMaterial`, undefined, isSheet);
  const lidPanes = take.choice<'one' | 'two'>(`${load}.lidPanes`, undefined, isSheet);
  const hood = `${load}.hood`;
  const isHood = lid === 'hood';
  return {
    lid,
    lidMaterial,
    lidThickness: take.quantity(`${load}.lidThickness`, () => usualLidThickness(lidMaterial), isSheet),
    lidPanes,
    lidPaneGap: take.quantity(`${load}.lidPaneGap`, undefined, isSheet && lidPanes === 'two'),
    ...(layers.length === 0 ? {} : { lidLayers: layers }),
    lidOpenShare: take.quantity(`${load}.lidOpenShare`, openShareBeside(take, opening), lid === 'loose'),
    hood: {
      airFlow: take.quantity(`${hood}.airFlow`, undefined, isHood),
      height: take.quantity(`${hood}.height`, undefined, isHood),
      material: take.choice<string>(`${hood}.material`, undefined, isHood),
      thickness: take.quantity(`${hood}.thickness`, undefined, isHood),
    },
  };
}

function resolveVessel(take: Resolver, name: 'sump' | 'refuge' | 'overflow'): SideVesselOf<Estimate> | undefined {
  const path = `${load}.${name}`;
  // A tank may be taken to have a sump or not, and that is worth asking; a refuge or an overflow is there when somebody names it.
  const counts = name === 'sump';
  if (take.choice<'none' | 'rectangular'>(`${path}.kind`, undefined, counts) === 'none') return undefined;
  const height = take.quantity(`${path}.height`);
  const lid = take.choice<'none' | 'tight' | 'loose'>(`${path}.lid`);
  const hasLid = lid !== 'none';
  const isOpen = lid !== 'tight';
  const surface = take.choice<SurfaceName>(`${path}.surface`, undefined, isOpen);
  const lidMaterial = take.choice<string>(`${path}.lidMaterial`, undefined, hasLid);
  const insulation = take.hasPart(`${path}.insulation`) ? resolveBoard(take, `${path}.insulation`) : undefined;
  return {
    kind: 'rectangular',
    length: take.quantity(`${path}.length`),
    width: take.quantity(`${path}.width`),
    height,
    waterDepth: resolveDepth(take, path, height),
    wall: resolveSheet(take, `${path}.wall`),
    ...(insulation === undefined ? {} : { insulation }),
    surface,
    evaporationFactor: take.quantity(`${path}.evaporationFactor`, () => usualEvaporationFactor(surface), isOpen),
    lid,
    lidMaterial,
    lidThickness: take.quantity(`${path}.lidThickness`, () => usualLidThickness(lidMaterial), hasLid),
    lidOpenShare: take.quantity(`${path}.lidOpenShare`, undefined, lid === 'loose'),
    exposure: resolveExposure(take, `${path}.exposure`)!,
  };
}

function resolveDepth(take: Resolver, path: string, height: Estimate): Estimate {
  return take.quantity(`${path}.waterDepth`, () =>
    timesBy({ path: `${path}.height`, estimate: height }, { low: 0.92, likely: 0.95, high: 0.98 }, practice),
  );
}

function resolveMeter(take: Resolver, around: LoadSurroundings): MeterOf<Estimate> | undefined {
  const path = `${load}.meter`;
  if (!take.hasPart(path) || take.choice<'none' | 'heater'>(`${path}.kind`) === 'none') return undefined;
  const measurement = resolveMeasurement(take, path, around);
  return { kind: 'heater', ...measurement, adopt: take.choice<YesNo>(`${path}.adopt`) };
}

function resolvePipe(take: Resolver, path: string): PipeOf<Estimate> {
  const name = take.text(`${path}.name`);
  const outerDiameter = take.quantity(`${path}.outerDiameter`);
  const insulation = `${path}.insulation`;
  return {
    ...(name === undefined ? {} : { name }),
    length: take.quantity(`${path}.length`),
    outerDiameter,
    material: take.choice<string>(`${path}.material`),
    wallThickness: take.quantity(`${path}.wallThickness`, () =>
      timesBy(
        { path: `${path}.outerDiameter`, estimate: outerDiameter },
        { low: 0.04, likely: 0.07, high: 0.1 },
        practice,
      ),
    ),
    ...(take.hasPart(insulation) ? { insulation: resolveSheet(take, insulation) } : {}),
  };
}
