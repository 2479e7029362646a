// What the rules about a wrapped or covered tank look at: the tank as it stands and as it would be with the measures that are
// to be taken, apart from any machine. Plain data in base SI, gathered by whoever has assessed a design.

import type { Band } from '../quantities/index.ts';

/** Where water without heater and without cooling comes to rest: its losses have grown to what pumps, lights and lamp give. */
export interface RestingWater {
  /** [K]; null where it is beyond `searchedUpTo`. */
  readonly settlesAt: Band | null;
  /** Warmest water the tank model knows [K]. */
  readonly searchedUpTo: number;
}

/** The room in its warmest month. */
export interface SummerFacts {
  readonly roomTemperature: number;
  /** What pumps, lights and ultraviolet lamp give to the water [W]. */
  readonly gains: number;
  /** Null where the water would freeze before it came to rest. */
  readonly asItIs: RestingWater | null;
  /** With the measures; null where there are none, or as above. */
  readonly wrapped: RestingWater | null;
}

/** Faces on which the room's air leaves water, where nobody sees it. */
export interface DampFaces {
  readonly when: string;
  /** Labels of the faces, joined by ', '. */
  readonly faces: string;
  /** The coldest of them [K], and the dew point of the room's air [K]. */
  readonly coldest: number;
  readonly dewPoint: number;
}

export interface StandingTank {
  readonly summer: SummerFacts;
  /** Over the water of the display tank; `unknown` for a tank that only a meter knows. */
  readonly cover: 'none' | 'lid' | 'hood' | 'unknown';
  /** Share of the surface that a lid leaves open, 0 to 1; 1 without a lid. */
  readonly openShare: number;
  /** Whether a lid, or a cover for the night, is among the measures. */
  readonly isCoverPlanned: boolean;
  /** Air that stones and skimmer draw through the water [m³/s]. */
  readonly airDrawn: number;
  /** Lamps while they are on [W]. */
  readonly lightPower: number;
  /** Insulating materials on the outside of the tank or among the measures; 'own' where nobody says of what. */
  readonly insulation: readonly string[];
  /** Whether something soft lies below the display tank, or is to. */
  readonly isOnBoard: boolean;
  /** Water of the display tank [kg] and the area it stands on [m²]; null where unknown. */
  readonly footing: { readonly waterMass: number; readonly area: number } | null;
  readonly dampFaces: DampFaces | null;
  /** Whether a board hangs, or is to, between the tank and a wall of the house. */
  readonly isBoardAtWall: boolean;
  /** Water the tank evaporates in the coldest spell [kg/s]. */
  readonly evaporation: number;
  /** Air changes of the room [1/s]; null where nobody has said. */
  readonly airChanges: number | null;
  /** Whether a dehumidifier takes the water out of the room's air again. */
  readonly isDehumidified: boolean;
  /** From the coldest spell with heater, pumps and lights off to the temperature at which usual advice is alarm [s]; null where it never cools so far. */
  readonly timeToAlarm: number | null;
}
