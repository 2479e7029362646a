// Areas, volumes and heights of simple shapes.

/**
 * Area A of n like faces, or of a share of one.
 *     A = n b h
 * @param count    n [-], number of faces or share of one
 * @param breadth  b [m]
 * @param height   h [m]
 * @returns        A [m²]
 * Source: geometry. Worked value: 2, 0.5, 0.57 → 0.57 m².
 */
export function faceArea(count: number, breadth: number, height: number): number {
  return count * breadth * height;
}

/**
 * Area A of a round bottom or water surface.
 *     A = π D² / 4
 * @param diameter  D [m]
 * @returns         A [m²]
 * Source: geometry. Worked value: 0.8 m → 0.50265 m².
 */
export function circleArea(diameter: number): number {
  return (Math.PI * diameter ** 2) / 4;
}

/**
 * Water V above an area.
 *     V = A D
 * @param plan   A [m²], of the bottom
 * @param depth  D [m], of the water
 * @returns      V [m³]; gravel and rock are not taken off
 * Source: geometry. Worked value: 0.75 m², 0.57 m → 0.4275 m³.
 */
export function waterVolume(plan: number, depth: number): number {
  return plan * depth;
}

/**
 * Height d of the air between the water and the rim.
 *     d = H − D
 * @param height  H [m], inner
 * @param depth   D [m], of the water
 * @returns       d [m]
 * Source: geometry. Worked value: 0.60, 0.57 → 0.03 m.
 */
export function headspaceGap(height: number, depth: number): number {
  return height - depth;
}

/**
 * What is left of a length or an area when a part of it is cut out.
 *     x = x_1 − x_2
 * @param whole  x_1 [m] or [m²]
 * @param part   x_2, in the same unit
 * @returns      x
 * Source: geometry. Worked value: 0.60, 0.25 m → 0.35 m.
 */
export function remainder(whole: number, part: number): number {
  return whole - part;
}

/**
 * Way around an upright cylinder.
 *     b = π D
 * @param diameter  D [m]
 * @returns         b [m]
 * Source: geometry. Worked value: 0.8 m → 2.5133 m.
 */
export function circumference(diameter: number): number {
  return Math.PI * diameter;
}

/**
 * Share of an area.
 *     A_s = s A
 * @param share  s [-]
 * @param area   A [m²]
 * @returns      A_s [m²]
 * Source: definition. Worked value: 0.85, 0.75 m² → 0.6375 m².
 */
export function shareOfArea(share: number, area: number): number {
  return share * area;
}
