// What the picture colours and names: every panel of the answer, and each open water surface with what leaves through it.

import type { PanelAnswer, TankAnswer } from '../../assess/index.ts';
import type { Band } from '../../quantities/index.ts';

/** A coloured part of the picture. */
export interface PicturePanel {
  /** 'tank.front', 'sump.waterSurface'. */
  readonly key: string;
  readonly vessel: string;
  readonly panel: string;
  readonly label: string;
  /** The label without the vessel's name, for where that stands beside it. */
  readonly shortLabel: string;
  /** [m²], of which the heat is. */
  readonly area: number;
  readonly heat: Band;
  /** Likely heat per area [W/m²], positive out of the water; 0 where it has no area. */
  readonly flux: number;
  /** Its layers and temperatures; undefined for an open water surface. */
  readonly answer: PanelAnswer | undefined;
}

export function panelKey(vessel: string, panel: string): string {
  return `${vessel}.${panel}`;
}

/** In the order of the answer; the open surface of a vessel after its panels. */
export function picturePanels(tank: TankAnswer): readonly PicturePanel[] {
  return tank.vessels.flatMap(({ vessel, label: vesselLabel, waterSurface }) => {
    const short = (label: string) => label.replace(` of the ${vesselLabel}`, '');
    const own = tank.panels.filter((panel) => panel.vessel === vessel);
    const panes = own.map((answer): PicturePanel => {
      const { panel, label, area, heat } = answer;
      return {
        key: panelKey(vessel, panel),
        vessel,
        panel,
        label,
        shortLabel: short(label),
        area,
        heat,
        flux: per(heat, area),
        answer,
      };
    });
    const isCovered = own.some(({ panel }) => panel === 'lid' || panel === 'hood');
    return isCovered ? panes : [...panes, openSurface(tank, vessel, vesselLabel, waterSurface)];
  });
}

/** Ways out of the open water itself. */
const surfacePaths = ['evaporation', 'surfaceConvection', 'surfaceRadiation'];

function openSurface({ paths }: TankAnswer, vessel: string, vesselLabel: string, area: number): PicturePanel {
  const own = paths.filter((path) => path.vessel === vessel && surfacePaths.some((name) => path.path.endsWith(name)));
  const sum = (end: keyof Band) => own.reduce((total, { heat }) => total + heat[end], 0);
  const heat = { low: sum('low'), likely: sum('likely'), high: sum('high') };
  const panel = 'waterSurface';
  const name = 'water surface';
  return {
    key: panelKey(vessel, panel),
    vessel,
    panel,
    label: vessel === 'tank' ? name : `${name} of the ${vesselLabel}`,
    shortLabel: name,
    area,
    heat,
    flux: per(heat, area),
    answer: undefined,
  };
}

function per({ likely }: Band, area: number): number {
  return area > 0 ? likely / area : 0;
}
