// What pumps, lights and ultraviolet lamp of the tank itself give to its water, as a mean over the day.

/** [s]. */
const day = 86_400;

/**
 * Heat Q_pump of the pumps that stays in the water.
 *     Q_pump = P φ
 * @param power  P [W], electricity of the pumps, on all day
 * @param share  φ [-], that ends in the water
 * @returns      Q_pump [W]
 * Source: energy balance. Worked value: 10 W, 0.9 → 9 W.
 */
export function pumpHeat(power: number, share: number): number {
  return power * share;
}

/**
 * Heat Q_light of the lights that stays in the water, mean over the day.
 *     Q_light = P t φ / 86 400 s
 * @param power     P [W], electricity of the lights while on
 * @param duration  t [s], on per day
 * @param share     φ [-], that ends in the water
 * @returns         Q_light [W]
 * Source: energy balance. Worked value: 60 W, 8 h, 0.3 → 6 W.
 */
export function lightHeat(power: number, duration: number, share: number): number {
  return (power * duration * share) / day;
}

/**
 * Heat Q_uv of an ultraviolet lamp that stays in the water.
 *     Q_uv = P φ
 * @param power  P [W], electricity of the lamp with its ballast, on all day
 * @param share  φ [-], that ends in the water: nearly all of a lamp that water flows around, without its ballast
 * @returns      Q_uv [W]
 * Source: energy balance; what is absorbed as light ends as heat. Worked value: 18 W, 0.8 → 14.4 W.
 */
export function ultravioletHeat(power: number, share: number): number {
  return power * share;
}
