// How humid the tank's room is when nobody has measured it: from the air it exchanges with outdoors. The tank evaporates the
// more the drier its room is, so both are solved together; the caller brings the tank's evaporation as a function of the
// humidity. And what a dehumidifier that holds the humidity draws and gives. A steady state of one well-mixed room. Left out:
// people, plants and laundry, what walls take up and give back, and air exchanged beside a dehumidifier.

import {
  DRY_AIR_HEAT_CAPACITY,
  dryAirDensity,
  humidityRatio,
  saturationVapourPressure,
  VAPOUR_HEAT_CAPACITY,
} from '../matter/air/index.ts';
import { latentHeat } from '../matter/water/index.ts';
import { findRoot, requireFinite, requireNonNegative, requirePositive } from '../numerics/index.ts';

/** The room: air T_r [K], p [Pa], volume V [m³]. */
export interface RoomAir {
  readonly temperature: number;
  readonly pressure: number;
  readonly volume: number;
}

/** What comes in: air changes n [1/s] of the room's volume, outdoor air T_o [K] and its vapour pressure p_o [Pa]. */
export interface Ventilation {
  readonly airChanges: number;
  readonly outdoorTemperature: number;
  readonly outdoorVapour: number;
}

/** Evaporation of the tank [kg/s] at a relative humidity of the room, 0 to 1: falling as it rises. */
export type EvaporationAt = (relativeHumidity: number) => number;

/** A room that only its ventilation dries. */
export interface VentilatedRoom {
  /** RH [-], p_r [Pa], W_r [kg/kg]. */
  readonly relativeHumidity: number;
  readonly vapourPressure: number;
  readonly humidityRatio: number;
  /** W_o [kg/kg] of the outdoor air. */
  readonly outdoorRatio: number;
  /** m_da [kg/s] through the room, as dry air. */
  readonly dryAirFlow: number;
  /** Of the tank; carried off by the air; left to condense on the room where the air can hold no more [kg/s]. */
  readonly evaporation: number;
  readonly carried: number;
  readonly condensation: number;
  /** Warmth and latent heat that the exchanged air takes out of the room [W]. */
  readonly sensibleHeat: number;
  readonly latentHeat: number;
  readonly iterations: number;
}

/** What a dehumidifier does about the water that a tank evaporates into its room. */
export interface Dehumidifier {
  /** Taken out of the air [kg/s]; 0 where nothing evaporates. */
  readonly removed: number;
  /** [W]. */
  readonly electricity: number;
  /** Set free where it condenses [W]. */
  readonly latentHeat: number;
  /** What it gives the room: that latent heat and its electricity [W]. */
  readonly heatToRoom: number;
}

/**
 * Dry air m_da exchanged with outdoors.
 *     m_da = n V ρ_da
 * @param airChanges  n [1/s]
 * @param volume      V [m³] of the room
 * @param density     ρ_da [kg dry air/m³] of the room's air
 * @returns           m_da [kg/s]
 * Source: definition. Worked value: 0.5 per hour, 50 m³, 1.18 → 8.19e-3 kg/s.
 */
export function ventilationAirFlow(airChanges: number, volume: number, density: number): number {
  return airChanges * volume * density;
}

/**
 * Moisture m_v that exchanged air carries off.
 *     m_v = m_da (W_r − W_o)
 * @param dryAirFlow  m_da [kg/s]
 * @param room        W_r [kg/kg]
 * @param outdoors    W_o [kg/kg]
 * @returns           m_v [kg/s]; negative where outdoor air is damper
 * Source: mass balance. Worked value: 8.19e-3, 0.0082, 0.0045 → 3.03e-5 kg/s, 2.6 kg a day.
 */
export function carriedMoisture(dryAirFlow: number, room: number, outdoors: number): number {
  return dryAirFlow * (room - outdoors);
}

/**
 * Warmth Q_v that exchanged air takes out of the room.
 *     Q_v = m_da (1006 + 1860 W_o) (T_r − T_o)
 * @param dryAirFlow  m_da [kg/s]
 * @param ratio       W_o [kg/kg] of the outdoor air
 * @param room        T_r [K]
 * @param outdoors    T_o [K]
 * @returns           Q_v [W]; negative where it is warmer outdoors
 * Source: energy balance; common practice says 0.334 n V ΔT with n per hour. Worked value: 8.19e-3, 0.0045, 20 K → 166 W.
 */
export function ventilationHeat(dryAirFlow: number, ratio: number, room: number, outdoors: number): number {
  return dryAirFlow * (DRY_AIR_HEAT_CAPACITY + VAPOUR_HEAT_CAPACITY * ratio) * (room - outdoors);
}

/**
 * Water m_d that a dehumidifier has to take out of the air.
 *     m_d = max(0, m_e − m_v)
 * @param evaporation  m_e [kg/s] of the tank at the humidity that is held
 * @param carried      m_v [kg/s] that exchanged air carries off
 * @returns            m_d [kg/s]
 * Source: mass balance. Worked value: 5e-5, 3e-5 → 2e-5 kg/s.
 */
export function waterRemoved(evaporation: number, carried: number): number {
  return Math.max(0, evaporation - carried);
}

/**
 * Electricity P_d of a dehumidifier.
 *     P_d = m_d e
 * @param removed  m_d [kg/s]
 * @param energy   e [J/kg], electricity per water removed
 * @returns        P_d [W]
 * Source: definition. Worked value: 2e-5 kg/s, 1.44e6 J/kg (0.4 kWh a litre) → 28.8 W.
 */
export function dehumidifierPower(removed: number, energy: number): number {
  return removed * energy;
}

/**
 * Heat Q_d that a dehumidifier gives the room: vapour turned back into warmth, and its electricity.
 *     Q_d = m_d h_fg + P_d
 * @param removed     m_d [kg/s]
 * @param latentHeat  h_fg [J/kg], at the room temperature
 * @param power       P_d [W]
 * @returns           Q_d [W]
 * Source: energy balance; the water leaves as warm as the room. Worked value: 2e-5, 2.45e6, 28.8 → 77.8 W.
 */
export function dehumidifierHeat(removed: number, latentHeat: number, power: number): number {
  return removed * latentHeat + power;
}

/**
 * Humidity of a room in which a tank evaporates and air is exchanged with outdoors.
 * @param room           the room's air and volume
 * @param ventilation    what comes in; 0 air changes make the room as damp as the tank can
 * @param evaporationAt  of the tank, not negative at a relative humidity of 0
 * @returns              humidity and flows in balance; where the air can hold no more the rest condenses on the room
 * @throws InputError naming what cannot be; ConvergenceError where evaporation does not settle with humidity
 */
export function ventilatedRoom(room: RoomAir, ventilation: Ventilation, evaporationAt: EvaporationAt): VentilatedRoom {
  requireRoomAir(room, ventilation);
  const surplus = (relativeHumidity: number) => {
    const { carried } = exchangeAt(room, ventilation, relativeHumidity);
    return carried - evaporationAt(relativeHumidity);
  };
  const dry = surplus(0);
  const saturated = surplus(1);
  if (saturated < 0) return ventilatedState(room, ventilation, evaporationAt(1), 1, 0);
  if (dry === 0) return ventilatedState(room, ventilation, evaporationAt(0), 0, 0);
  const { root, iterations } = findRoot(surplus, 0, 1, {
    valueAtLow: dry,
    valueAtHigh: saturated,
    residualTolerance: 1e-12 * Math.max(-dry, saturated),
    what: 'relative humidity of the room',
  });
  return ventilatedState(room, ventilation, evaporationAt(root), root, iterations);
}

/**
 * A dehumidifier that takes out of the air of a room what a tank evaporates into it, so that the room stays as humid as set.
 * @param evaporation      m_e [kg/s] of the tank at the humidity that is set; below 0 where vapour condenses on the water
 * @param roomTemperature  T_r [K]
 * @param energy           e [J/kg], electricity per water removed, ≥ 0
 * @returns                what it removes, draws and gives; it stands still where nothing evaporates
 * Leaves out: air exchanged with outdoors, which dries a room in winter and may damp it in summer.
 * @throws InputError outside these ranges
 * Source: mass and energy balance. Worked value: 2e-5 kg/s, 294.15 K, 1.8e6 J/kg (0.5 kWh a litre) → 36 W, 85 W to the room.
 */
export function dehumidifier(evaporation: number, roomTemperature: number, energy: number): Dehumidifier {
  requireFinite('evaporation', evaporation);
  requirePositive('room.temperature', roomTemperature);
  requireNonNegative('room.moisture.energyPerLitre', energy);
  const removed = waterRemoved(evaporation, 0);
  const electricity = dehumidifierPower(removed, energy);
  const latent = latentHeat(roomTemperature);
  return {
    removed,
    electricity,
    latentHeat: removed * latent,
    heatToRoom: dehumidifierHeat(removed, latent, electricity),
  };
}

function ventilatedState(
  room: RoomAir,
  ventilation: Ventilation,
  evaporation: number,
  relativeHumidity: number,
  iterations: number,
): VentilatedRoom {
  const { carried, ...exchange } = exchangeAt(room, ventilation, relativeHumidity);
  return {
    relativeHumidity,
    ...exchange,
    evaporation,
    carried,
    condensation: relativeHumidity < 1 ? 0 : evaporation - carried,
    latentHeat: carried * latentHeat(room.temperature),
    iterations,
  };
}

/** Flows of the exchanged air at a humidity of the room. */
function exchangeAt({ temperature, pressure, volume }: RoomAir, ventilation: Ventilation, relativeHumidity: number) {
  const vapourPressure = relativeHumidity * saturationVapourPressure(temperature);
  const roomRatio = humidityRatio(vapourPressure, pressure);
  const outdoorRatio = humidityRatio(ventilation.outdoorVapour, pressure);
  const density = dryAirDensity(temperature, vapourPressure, pressure);
  const dryAirFlow = ventilationAirFlow(ventilation.airChanges, volume, density);
  return {
    vapourPressure,
    humidityRatio: roomRatio,
    outdoorRatio,
    dryAirFlow,
    carried: carriedMoisture(dryAirFlow, roomRatio, outdoorRatio),
    sensibleHeat: ventilationHeat(dryAirFlow, outdoorRatio, temperature, ventilation.outdoorTemperature),
  };
}

function requireRoomAir({ temperature, pressure, volume }: RoomAir, ventilation: Ventilation): void {
  requirePositive('room.temperature', temperature);
  requirePositive('atmosphericPressure', pressure);
  requirePositive('room.volume', volume);
  requireNonNegative('room.moisture.airChanges', ventilation.airChanges);
  requirePositive('place.outdoors', ventilation.outdoorTemperature);
  requireNonNegative('room.moisture.outdoorHumidity', ventilation.outdoorVapour);
}
