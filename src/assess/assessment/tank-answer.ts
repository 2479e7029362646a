// What Kettlefin says of the tank alone: where its watts go at the coldest spell and through the year, panel by panel, how fast
// it cools, and what a meter says of it. Plain data in base SI; part of the Assessment and of what `kettlefin load` answers.

import type { Band } from '../../quantities/index.ts';
import type { Shape } from '../../tank/index.ts';
import type { BandWithUnit } from './assessment.ts';

/** Where the heat of a path goes. */
export type HeatSink = 'room' | 'outdoors' | 'ground' | 'freshWater';

/** One way heat leaves the tank. */
export interface LossPath {
  /**
   * 'evaporation', 'surfaceConvection', 'surfaceRadiation', 'lid', 'freeboard', 'front', 'bottom', 'makeUpWater', …; of another
   * vessel than the display tank with its name before: 'sump.evaporation'; of a pipe 'pipes.return'.
   */
  readonly path: string;
  readonly label: string;
  readonly kind: 'sensible' | 'latent';
  readonly to: HeatSink;
  /** 'tank', 'sump', 'refuge', 'overflow'; null where it is of the whole tank. */
  readonly vessel: string | null;
  /** Name of the panel it passes; null where it passes none. */
  readonly panel: string | null;
  readonly heat: BandWithUnit;
}

/** One vessel: its water, and what leaves by it. */
export interface VesselAnswer {
  /** 'tank', 'sump', 'refuge', 'overflow'. */
  readonly vessel: string;
  readonly label: string;
  readonly loss: BandWithUnit;
  /** [m²], [m³]. */
  readonly waterSurface: number;
  readonly waterVolume: number;
  /** Inner sizes [m, m², m³], likely values, from which it is drawn: see answers/vessel-shape.ts. */
  readonly shape: Shape;
  /** What lies over its water; the height of a hood [m]. */
  readonly cover: { readonly kind: 'none' | 'lid' } | { readonly kind: 'hood'; readonly height: number };
}

/** One layer of a panel as it settles at the coldest spell, likely values. */
export interface LayerAnswer {
  /** 'solid', 'resistance', 'sealedGap', 'waterGap'. */
  readonly kind: string;
  /** Material, or what else it is, in words. */
  readonly label: string;
  /** [m]; null for a layer known by its resistance alone. */
  readonly thickness: number | null;
  /** [m² K/W]. */
  readonly resistance: number;
  /** Of its faces towards and away from the water [K]. */
  readonly innerTemperature: number;
  readonly outerTemperature: number;
  /** Where in the design it stands: 'tank.load.insulation.back'; null where the design does not say. */
  readonly origin: string | null;
}

/** One piece of a vessel's shell, or its lid or hood. */
export interface PanelAnswer {
  readonly vessel: string;
  /** 'front', 'bottom', 'recessBack', 'lid', 'hood', …; unique in its vessel. */
  readonly panel: string;
  readonly label: string;
  readonly facing: 'side' | 'bottom' | 'top';
  /** 'roomAir', 'againstWall', 'closedStand', 'slab', 'outdoors'. */
  readonly exposure: string;
  /** Of which the heat is [m²]: below the water line, or the covered surface of a lid. */
  readonly area: number;
  /** Above the water line [m²]; 0 for a lid and a bottom. */
  readonly dryArea: number;
  /** Heat through `area`. */
  readonly heat: BandWithUnit;
  /** From the inside to what lies beyond [W/(m² K)]. */
  readonly transmittance: number;
  /** Water, or the damp air below a lid [K]. */
  readonly insideTemperature: number;
  /** Film of water on the inside [m² K/W]; 0 where damp air lies there. */
  readonly waterFilmResistance: number;
  /** From the water outwards. */
  readonly layers: readonly LayerAnswer[];
  /** Of the outer face [K], and the resistance from it to what lies beyond [m² K/W]. */
  readonly outerTemperature: number;
  readonly outerResistance: number;
  /** Of what lies beyond [K]: air of the room, outdoors, ground. */
  readonly sinkTemperature: number;
  /** True where the outer face is so cold that the room's air leaves water on it; false where no air of the room touches it. */
  readonly condenses: boolean;
}

/** How long the water takes to fall without any heat, from the coldest spell's state. */
export interface FallAnswer {
  /** [K]. */
  readonly by: number;
  /** [s]; null where it never falls so far. */
  readonly time: number | null;
  /** An end is null where it might never fall so far; null where even the fastest end does not. */
  readonly range: { readonly low: number; readonly high: number | null } | null;
  /** Name of this result; a step of `workings` of the same name shows how it was computed. */
  readonly result: string;
}

/** The tank in one month. */
export interface TankMonth {
  readonly month: string;
  /** [s]. */
  readonly duration: number;
  readonly roomTemperature: number;
  readonly loss: BandWithUnit;
  /** Net heating; below 0 where pumps and lights give more than it loses. */
  readonly load: BandWithUnit;
  /** The same paths, in the same order, as at the coldest spell, and such as only this month has. */
  readonly paths: readonly { readonly path: string; readonly label: string; readonly heat: BandWithUnit }[];
  readonly evaporation: BandWithUnit;
  /** Heat needed in the month [J]; 0 where it needs none. */
  readonly heatNeeded: BandWithUnit;
}

/** One uncertain input, and the value of it that alone would bring the model to what the meter says. */
export interface MeterExplanation {
  readonly path: string;
  readonly label: string;
  readonly quantity: string;
  /** The input's own range. */
  readonly input: Band;
  /** Null where no value that the model accepts would. */
  readonly value: number | null;
  /** Whether that value lies within the input's own range. */
  readonly isWithin: boolean;
  /** The ratio of measured to modelled loss at the low and at the high end of the input. */
  readonly ratioAtLow: number;
  readonly ratioAtHigh: number;
  /** How one could find out. */
  readonly measure: string;
}

/** A meter on the heater of a tank of known sizes, and the model of the same tank at the same temperatures. */
export interface MeterAnswer {
  /** While it was measured [K]. */
  readonly roomTemperature: number;
  readonly waterTemperature: number;
  /** Mean electricity of the heater [W]. */
  readonly meanPower: BandWithUnit;
  /** Heater, pumps and lights together [W]. */
  readonly measuredLoss: BandWithUnit;
  /** What the model says at those temperatures [W], without the meter. */
  readonly modelledLoss: BandWithUnit;
  /** Measured over modelled loss, both varied together. */
  readonly ratio: BandWithUnit;
  /** Whether 1 lies within the range of the ratio: the uncertain inputs together can explain the difference. */
  readonly agrees: boolean;
  /** Whether the measurement was adopted: then every loss is multiplied by the ratio. */
  readonly adopted: boolean;
  /** Inputs that could explain the difference alone first, the least far-fetched at the front; then those that could not. */
  readonly explanations: readonly MeterExplanation[];
}

export interface TankAnswer {
  readonly waterTemperature: number;
  readonly roomTemperature: number;
  /** Dew point of the room's air at the coldest spell [K]; null for air without vapour. */
  readonly roomDewPoint: number | null;
  readonly paths: readonly LossPath[];
  /** The display tank first; empty for a measured tank. */
  readonly vessels: readonly VesselAnswer[];
  /** Of all vessels, lids and hoods among them; empty for a measured tank. */
  readonly panels: readonly PanelAnswer[];
  readonly loss: BandWithUnit;
  readonly gains: { readonly pump: number; readonly light: number; readonly ultraviolet: number };
  readonly gainRanges: { readonly pump: Band; readonly light: Band; readonly ultraviolet: Band };
  /** Net heating needed at the coldest spell; what the machine must carry. */
  readonly load: BandWithUnit;
  /** Water that evaporates [kg/s]. */
  readonly evaporation: BandWithUnit;
  /** Of the water alone [J/K]. */
  readonly heatCapacity: number;
  /** Time for the water to fall 1 K with no heat at the coldest spell [s]; null where it needs no heat. */
  readonly timePerKelvin: number | null;
  /** Its range, from that of the load; the upper end null where the tank might not cool at all. Null as timePerKelvin is. */
  readonly timePerKelvinRange: { readonly low: number; readonly high: number | null } | null;
  /** Change of the loss per kelvin of water temperature [W/K]. */
  readonly conductance: BandWithUnit;
  /** Heat capacity over conductance [s]. */
  readonly timeConstant: BandWithUnit;
  /** With heater, pumps and lights off. */
  readonly falls: readonly FallAnswer[];
  /** January first. */
  readonly months: readonly TankMonth[];
  /** Heat needed in the year [J]. */
  readonly yearHeatNeeded: BandWithUnit;
  /** Null where the design has no meter beside its sizes. */
  readonly meter: MeterAnswer | null;
}
