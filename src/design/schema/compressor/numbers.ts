// The numbers of the machine behind its ratings. Nobody prints them; who knows one may say it, and it narrows the answer.

import * as z from 'zod/mini';
import type { HermeticParameter } from '../../../parts/compressor/index.ts';
import { quantityField } from '../field.ts';
import { ofSuchMachines } from './ranges.ts';

const expert = { level: 'expert', default: ofSuchMachines } as const;
const share = { ...expert, quantity: 'fraction' } as const;
const velocity = { ...expert, quantity: 'speed' } as const;
const transfer = { ...expert, quantity: 'ratio', minimum: 0, maximum: 20 } as const;
const pressure = { ...expert, quantity: 'pressureDifference' } as const;

/** All but the displacement, which people may find on a data sheet. */
export const machineNumbers = {
  clearanceRatio: z.optional(
    quantityField({
      ...share,
      label: 'Clearance ratio',
      help: 'Volume left above the piston over the swept volume.',
      minimum: 0,
      maximum: 0.5,
    }),
  ),
  suctionVelocity: z.optional(
    quantityField({
      ...velocity,
      label: 'Speed in the suction path',
      help: 'Swept volume flow over the opening that muffler, port and valve make together.',
      minimum: 0,
      maximum: 300,
    }),
  ),
  dischargeVelocity: z.optional(
    quantityField({
      ...velocity,
      label: 'Speed in the discharge path',
      help: 'Swept volume flow over the opening of the discharge valve; large, since it is open for a small part of a turn.',
      minimum: 0,
      maximum: 600,
    }),
  ),
  suctionHeatingUnits: z.optional(
    quantityField({
      ...transfer,
      label: 'Heating of the suction gas',
      help: 'Transfer units between the gas drawn in and the warm parts inside the shell.',
    }),
  ),
  dischargeCoolingUnits: z.optional(
    quantityField({
      ...transfer,
      label: 'Cooling of the discharge gas',
      help: 'Transfer units between the compressed gas and the parts inside the shell.',
    }),
  ),
  leakageRatio: z.optional(
    quantityField({
      ...expert,
      quantity: 'ratio',
      label: 'Leakage',
      help: 'Opening of all leaks over the two-thirds power of the swept volume.',
      minimum: 0,
      maximum: 0.1,
    }),
  ),
  proportionalLoss: z.optional(
    quantityField({
      ...share,
      label: 'Losses that grow with the work',
      help: 'Friction that is proportional to the work on the gas, over that work.',
      minimum: 0,
      maximum: 1,
    }),
  ),
  frictionPressure: z.optional(
    quantityField({
      ...pressure,
      label: 'Constant losses as a pressure',
      help: 'Friction and idle losses over the swept volume flow.',
      minimum: 0,
      maximum: 1e6,
    }),
  ),
  motorEfficiency: z.optional(
    quantityField({
      ...share,
      label: 'Efficiency of the motor',
      help: 'At its best load.',
      minimum: 0.1,
      maximum: 0.99,
    }),
  ),
  motorPressure: z.optional(
    quantityField({
      ...pressure,
      label: 'Size of the motor as a pressure',
      help: 'Shaft power at its best load over the swept volume flow.',
      minimum: 1e4,
      maximum: 1e7,
    }),
  ),
  slip: z.optional(
    quantityField({
      ...share,
      label: 'Slip of the motor',
      help: 'How far it falls behind the mains at its best load: 2900 rpm on 50 Hz are 3.3 %.',
      minimum: 0,
      maximum: 0.15,
    }),
  ),
  powerFactor: z.optional(
    quantityField({
      ...expert,
      quantity: 'powerFactor',
      label: 'Power factor of the motor',
      help: 'Watts over volts times amps, at its best load.',
      minimum: 0.2,
      maximum: 1,
    }),
  ),
  shellConductance: z.optional(
    quantityField({
      ...expert,
      quantity: 'thermalConductance',
      label: 'Heat through the shell',
      help: 'Heat the shell gives to the air around it, per difference of their temperatures.',
      minimum: 0.05,
      maximum: 100,
    }),
  ),
} satisfies Readonly<Record<Exclude<HermeticParameter, 'displacement'>, unknown>>;
