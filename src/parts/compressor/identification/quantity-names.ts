// Names of the quantities (src/quantities) that a machine's numbers and given values are of.

import type { QuantityName } from '../../../quantities/index.ts';
import type { HermeticParameter } from '../hermetic/parameters.ts';
import type { EvidenceQuantity } from './evidence.ts';

export const parameterQuantities: Readonly<Record<HermeticParameter, QuantityName>> = {
  displacement: 'displacement',
  clearanceRatio: 'ratio',
  suctionVelocity: 'speed',
  dischargeVelocity: 'speed',
  suctionHeatingUnits: 'ratio',
  dischargeCoolingUnits: 'ratio',
  leakageRatio: 'ratio',
  proportionalLoss: 'ratio',
  frictionPressure: 'pressureDifference',
  motorEfficiency: 'ratio',
  motorPressure: 'pressureDifference',
  slip: 'ratio',
  powerFactor: 'ratio',
  shellConductance: 'thermalConductance',
};

export const evidenceQuantityNames: Readonly<Record<EvidenceQuantity, QuantityName>> = {
  massFlow: 'massFlow',
  capacity: 'power',
  power: 'electricPower',
  current: 'current',
  dischargeTemperature: 'temperature',
};
