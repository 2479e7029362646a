// What the symbols of the machine's formulas stand for, each told once.

import type { FormulaSymbol } from '../../../../quantities/index.ts';

export const winandy = 'Winandy, Saavedra & Lebrun 2002, Int. J. Thermal Sciences 41, 157, from memory';

const temperature = (meaning: string): FormulaSymbol => ({ meaning, unit: 'K', quantity: 'temperature' });
const pressure = (meaning: string): FormulaSymbol => ({ meaning, unit: 'Pa', quantity: 'pressure' });
const enthalpy = (meaning: string): FormulaSymbol => ({ meaning, unit: 'J/kg', quantity: 'enthalpy' });
const density = (meaning: string): FormulaSymbol => ({ meaning, unit: 'kg/m³', quantity: 'density' });
const capacity = (meaning: string): FormulaSymbol => ({ meaning, unit: 'W/K', quantity: 'thermalConductance' });
const heat = (meaning: string): FormulaSymbol => ({ meaning, unit: 'W', quantity: 'power' });
const loss = (meaning: string): FormulaSymbol => ({ meaning, unit: 'Pa', quantity: 'pressureDifference' });
const ratio = (meaning: string): FormulaSymbol => ({ meaning, unit: '1' });
const work = (meaning: string): FormulaSymbol => ({ meaning, unit: 'W', quantity: 'electricPower' });

export const symbols = {
  displacement: { meaning: 'displacement per revolution', unit: 'm³', quantity: 'displacement' },
  massFlow: { meaning: 'mass flow of refrigerant', unit: 'kg/s', quantity: 'massFlow' },
  leakage: { meaning: 'mass flow that leaks back to suction', unit: 'kg/s', quantity: 'massFlow' },
  speed: { meaning: 'speed of the shaft', unit: '1/s', quantity: 'frequency' },
  frequency: { meaning: 'frequency of the mains', unit: '1/s', quantity: 'mainsFrequency' },
  ratedFrequency: { meaning: 'frequency the motor was wound for', unit: '1/s', quantity: 'mainsFrequency' },
  voltage: { meaning: 'voltage of the mains', unit: 'V', quantity: 'voltage' },
  ratedVoltage: { meaning: 'voltage the motor was wound for', unit: 'V', quantity: 'voltage' },
  current: { meaning: 'current from the mains', unit: 'A', quantity: 'current' },
  magnetisingCurrent: { meaning: 'magnetising current at rated supply', unit: 'A', quantity: 'current' },
  motorPressure: loss('motor pressure: shaft power at the best load per swept volume flow'),
  bestPower: work('shaft power at the motor’s best load and rated supply'),
  motorEfficiency: ratio('efficiency of the motor at its best load'),
  powerFactor: ratio('power factor of the motor at its best load'),
  flux: ratio('magnetic flux over that at rated supply'),
  load: ratio('torque over that at the motor’s best load'),
  ratedSlip: ratio('slip at the motor’s best load and rated supply'),
  slip: ratio('slip of the rotor behind the field'),
  motorLosses: heat('losses of the motor, which become heat'),
  internalPower: work('power given to the gas'),
  shaftPower: work('power at the shaft'),
  power: work('electric power'),
  proportionalLoss: ratio('mechanical losses in proportion to the power given to the gas'),
  frictionPressure: loss('friction pressure: constant losses per swept volume flow'),
  velocity: { meaning: 'swept volume flow over the equivalent opening', unit: 'm/s', quantity: 'speed' },
  openingDensity: density('density of the gas before the opening'),
  openingLoss: loss('pressure lost in the opening'),
  suctionPressure: pressure('suction pressure, absolute'),
  dischargePressure: pressure('discharge pressure, absolute'),
  fillingPressure: pressure('pressure while the cylinder fills'),
  emptyingPressure: pressure('pressure while the cylinder empties'),
  referenceUnits: ratio('transfer units at 5 kg of gas per swept cubic metre, at rated frequency'),
  units: ratio('transfer units between gas and wall'),
  effectiveness: ratio('effectiveness of gas along a wall of one temperature'),
  heatCapacity: {
    meaning: 'heat capacity of the gas at constant pressure',
    unit: 'J/(kg K)',
    quantity: 'entropy',
  },
  capacity: capacity('heat exchanged per kelvin between gas and wall'),
  suctionCapacity: capacity('heat exchanged per kelvin between wall and suction gas'),
  dischargeCapacity: capacity('heat exchanged per kelvin between discharge gas and wall'),
  hot: temperature('temperature of the side that gives heat'),
  cold: temperature('temperature of the side that takes heat'),
  suctionHeat: heat('heat from the wall into the suction gas'),
  leakageRatio: ratio('equivalent opening of leakage over displacement^(2/3)'),
  leakRatio: ratio('pressure ratio in the leak, not below that of choked gas'),
  compressedDensity: density('density of the compressed gas'),
  fillingDensity: density('density of the gas in the filled cylinder'),
  inletDensity: density('density of the gas at the inlet of the shell'),
  inletEnthalpy: enthalpy('enthalpy of the gas at the inlet of the shell'),
  fillingEnthalpy: enthalpy('enthalpy of the gas in the filled cylinder'),
  compressedEnthalpy: enthalpy('enthalpy of the gas at the end of compression'),
  isentropicEnthalpy: enthalpy('enthalpy at discharge pressure and the entropy of the suction gas'),
  isentropicWork: { meaning: 'isentropic work, h_2s − h_1', unit: 'J/kg' },
  dischargeEnthalpy: enthalpy('enthalpy in the discharge line'),
  clearanceRatio: ratio('clearance volume over swept volume'),
  losses: heat('heat of all losses, which the wall gets'),
  shellConductance: capacity('conductance from the shell to the air around it'),
  surroundings: temperature('temperature of the air around the shell'),
  wall: temperature('temperature of the wall: shell, motor and pump as one'),
  suctionTemperature: temperature('temperature of the gas at the inlet of the shell'),
  compressedTemperature: temperature('temperature of the gas at the end of compression'),
  shellHeat: heat('heat that leaves through the shell'),
  volumetricEfficiency: { meaning: 'volumetric efficiency', unit: '1', quantity: 'fraction' },
} as const satisfies Record<string, FormulaSymbol>;
