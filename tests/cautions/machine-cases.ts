// The rules about motor and starts: one design in which each speaks and one in which it is silent, near its border.

import { about, machineIn, startingWith } from './sample.ts';
import type { Case } from './speaking.ts';

export const machineCases = {
  // 0.8 A printed; a motor bears 1.56 times that, 1.248 A; a quarter more is 1.56 A.
  motorWouldTrip: {
    speaks: machineIn({ current: about(1.561) }),
    severity: 'stop',
    silent: machineIn({ current: about(1.559) }),
  },
  currentAboveRated: {
    speaks: machineIn({ current: about(0.801) }),
    severity: 'look',
    silent: machineIn({ current: { low: 0.5, likely: 0.6, high: 0.799 } }),
  },
  suctionAboveMotor: {
    speaks: machineIn({}, { highestSuctionPressure: 3.89e5 }),
    severity: 'look',
    silent: machineIn({}, { highestSuctionPressure: 3.91e5 }),
  },
  littleFlowToCoolMotor: {
    speaks: machineIn({ wallTemperature: about(403.2) }),
    severity: 'look',
    silent: machineIn({ wallTemperature: { low: 340, likely: 350, high: 383.1 } }),
  },
  floodBack: {
    speaks: machineIn({ superheat: about(1.9) }),
    severity: 'look',
    silent: machineIn({ superheat: about(2.1) }),
  },
  returnGasTooCold: {
    speaks: machineIn({ superheat: { low: 3, likely: 4.9, high: 10 } }),
    severity: 'note',
    silent: machineIn({ superheat: { low: 2.1, likely: 5.1, high: 10 } }),
  },
  lowTorqueStartAgainstPressure: {
    speaks: machineIn({}, { starting: startingWith('relay', 'closes') }),
    severity: 'look',
    silent: machineIn({}, { starting: startingWith('relay', 'equalises') }),
  },
  shortOffTime: {
    speaks: machineIn({}, { starting: startingWith('relay', 'equalises'), shortestOffTime: 299 }),
    severity: 'look',
    silent: machineIn({}, { starting: startingWith('relay', 'equalises'), shortestOffTime: 300 }),
  },
} satisfies Readonly<Record<string, Case>>;
