// What lies between a panel and the room where it stands in a closed stand: the still air and the boards, which all panels in
// that air share. The floor below the stand is left out; openings are the caller's factor.

/** Conventional internal surface resistance R_si for horizontal heat flow, on both faces of a board [m² K/W]: ISO 6946:2017. */
export const BOARD_SURFACE_RESISTANCE = 0.13;

/**
 * Resistance R from the still air of a closed stand to the room, per area of the panels in that air.
 *     R = (0.13 + R_boards + 0.13) A_panels / A_boards
 * @param boards      R_boards [m² K/W], one board
 * @param panelArea   A_panels [m²], all panels that face the air of the stand
 * @param boardArea   A_boards [m²], sides and doors
 * @returns           R [m² K/W] for each panel; exact where all panels give the same heat per area
 * Source: ISO 6946:2017 (surface resistances), unheated space as in its clause 6.10 (number from memory).
 * Worked value: 18 mm of 0.13, 0.6 m² over 2.4 m² → 0.0996 m² K/W.
 */
export function standResistance(boards: number, panelArea: number, boardArea: number): number {
  return ((2 * BOARD_SURFACE_RESISTANCE + boards) * panelArea) / boardArea;
}
