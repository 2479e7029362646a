// What the rules about the machine's motor and its start look at. Null stands for what is not known.

import type { StartingNumbers, Trip } from '../parts/compressor/index.ts';
import type { Band } from '../quantities/index.ts';

/** How one machine stands in a state of the loop, each with its range. */
export interface MachineStateFacts {
  /** [A] */
  readonly current: Band | null;
  /** Mean temperature of shell, motor and pump [K]. */
  readonly wallTemperature: Band | null;
  /** Of the gas at the inlet of the shell [K]. */
  readonly superheat: Band | null;
}

/** Where doubt begins, and what is not to be passed, with the words of its source. */
export interface StepsOfLimit {
  readonly caution: number;
  readonly beyond: number;
  readonly source: string;
}

export interface MachineFacts {
  /** Current printed on its nameplate, and what such a machine bears for long at most [A]. */
  readonly ratedCurrent: number | null;
  readonly continuousCurrent: number | null;
  /** Lowest evaporating temperature at which its motor gives up, condensing as in the coldest spell. */
  readonly trip: Trip | null;
  /** Saturation pressure of the fluid it was made for at the highest evaporating temperature of its application [Pa]. */
  readonly highestSuctionPressure: number | null;
  /** Limits of the wall and of the superheat [K]. */
  readonly wall: StepsOfLimit | null;
  readonly superheat: StepsOfLimit | null;
  readonly starting: StartingNumbers | null;
  /** Shortest rest that the control leaves between two runs [s]. */
  readonly shortestOffTime: number | null;
  /** Electricity of a heater on the dome while it rests [W]; 0 for none. */
  readonly crankcaseHeater: number | null;
  /** Oil printed on the machine, by its name in the catalogue of refrigerants. */
  readonly oil: string | null;
}
