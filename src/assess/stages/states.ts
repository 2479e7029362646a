// Where the stages take the states of refrigerants from: the equations themselves, or tables made from them (table-states.ts,
// apart, so that who does not use tables does not load them).

import { type Refrigerant, refrigerant } from '../../matter/refrigerants/index.ts';

export interface StatesFrom {
  readonly kind: 'exact' | 'tables';
  /** The fluid of a name, ready to be asked for states. */
  readonly fluid: (name: string) => Refrigerant;
}

/** Every state solved from the fluid's equation. */
export const exactStates: StatesFrom = { kind: 'exact', fluid: refrigerant };
