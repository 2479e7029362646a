// The wall that stands for shell, motor and pump: it gets every loss and the heat of the discharge gas, warms the suction gas
// and gives the rest to the air around it. What does not leave through the shell leaves with the gas.
// Leaves out: that the dome, the motor and the cylinder head have temperatures of their own.

/** Losses P_loss [W] = W − W_in: everything of the electric power [W] that the gas is not given in the cylinder [W]. Source: first law. */
export function lossesToWall(power: number, internalPower: number): number {
  return power - internalPower;
}

/**
 * Temperature T_w [K] of the wall, from its balance P_loss + C_ex (T_e − T_w) = C_su (T_w − T_1) + UA (T_w − T_amb).
 *     T_w = (P_loss + UA T_amb + C_su T_1 + C_ex T_e) / (UA + C_su + C_ex)
 * @param losses                 P_loss [W]
 * @param shellConductance       UA [W/K], from the shell to the air
 * @param surroundings           T_amb [K], of that air
 * @param suctionCapacity        C_su [W/K], between wall and suction gas
 * @param suctionTemperature     T_1 [K], of the gas at the inlet of the shell
 * @param dischargeCapacity      C_ex [W/K], between discharge gas and wall
 * @param compressedTemperature  T_e [K], of the compressed gas
 * Source: steady balance of an isothermal wall, Winandy, Saavedra & Lebrun 2002, from memory.
 * Worked value: 60 W, 2 W/K, 295 K, 0.4 W/K, 280 K, 0.6 W/K, 350 K → 324 K.
 */
export function wallTemperature(
  losses: number,
  shellConductance: number,
  surroundings: number,
  suctionCapacity: number,
  suctionTemperature: number,
  dischargeCapacity: number,
  compressedTemperature: number,
): number {
  const gains =
    losses +
    shellConductance * surroundings +
    suctionCapacity * suctionTemperature +
    dischargeCapacity * compressedTemperature;
  return gains / (shellConductance + suctionCapacity + dischargeCapacity);
}

/** Heat Q_s [W] = UA (T_w − T_amb) from the shell, conductance [W/K] and both temperatures [K]; negative into a shell colder than its air. Source: definition of UA. */
export function shellHeatOf(shellConductance: number, wall: number, surroundings: number): number {
  return shellConductance * (wall - surroundings);
}

/**
 * Enthalpy h_2 [J/kg] in the discharge line from the energy balance of the whole shell.
 *     h_2 = h_1 + (W − Q_s) / ṁ
 * @param inletEnthalpy  h_1 [J/kg]
 * @param power          W [W], electric
 * @param shellHeat      Q_s [W]
 * @param massFlow       ṁ [kg/s]
 * Source: first law. Worked value: 400 kJ/kg, 120 W, 60 W, 1 g/s → 460 kJ/kg.
 */
export function dischargeEnthalpyOf(inletEnthalpy: number, power: number, shellHeat: number, massFlow: number): number {
  return inletEnthalpy + (power - shellHeat) / massFlow;
}
