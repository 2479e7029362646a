// What lies over the water in the design, as the tank model wants it told.

import type { SheetOf, SideVesselOf, SizedLoadOf } from '../../../design/index.ts';
import type { Cover, ShapeMeasures, Stack } from '../../../tank/index.ts';
import type { TankFactors } from '../tank/tank-assumptions.ts';
import { listedLayers, outermostEmissivity, sheetLayer } from '../tank/tank-stacks.ts';

/** The cover of the display tank. */
export function displayCover(
  load: SizedLoadOf<number>,
  { waterSurface, perimeter }: ShapeMeasures,
  factors: TankFactors,
): Cover {
  switch (load.lid) {
    case 'none':
      return { kind: 'none' };
    case 'tight':
    case 'loose':
      return lidOf(lidStack(load, factors), load.lid === 'loose' ? load.lidOpenShare : 0);
    case 'hood': {
      const { airFlow, height, ...sheet } = load.hood;
      const stack = [sheetLayer(sheet, factors, 'lidConductivityFactor', 'tank.load.hood')];
      // Sides above the rim, and a top as large as the water: the hood stands on the rim.
      const area = perimeter * height + waterSurface;
      return { kind: 'hood', stack, emissivity: outermostEmissivity(stack), area, airFlow };
    }
  }
}

/** The cover of sump, refuge or overflow. */
export function sideCover(vessel: SideVesselOf<number>, path: string, factors: TankFactors): Cover {
  if (vessel.lid === 'none') return { kind: 'none' };
  const sheet = { material: vessel.lidMaterial, thickness: vessel.lidThickness };
  const stack = [sheetLayer(sheet, factors, 'lidConductivityFactor', `${path}.lidMaterial`)];
  return lidOf(stack, vessel.lid === 'loose' ? vessel.lidOpenShare : 0);
}

function lidStack(load: SizedLoadOf<number>, factors: TankFactors): Stack {
  if (load.lidLayers !== undefined) {
    return listedLayers(load.lidLayers, factors, 'lidConductivityFactor', 'tank.load.lidLayers');
  }
  const pane: SheetOf<number> = { material: load.lidMaterial, thickness: load.lidThickness };
  const sheet = sheetLayer(pane, factors, 'lidConductivityFactor', 'tank.load.lidMaterial');
  if (load.lidPanes === 'one') return [sheet];
  return [sheet, { kind: 'sealedGap', thickness: load.lidPaneGap, origin: 'tank.load.lidPaneGap' }, sheet];
}

function lidOf(stack: Stack, openShare: number): Cover {
  return { kind: 'lid', stack, emissivity: outermostEmissivity(stack), openShare };
}
