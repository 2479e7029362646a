// What the textbook cycle is asked with: five facts, each given by one of several fields, and what may be left out: pressure
// lost in the lines, a heat exchanger, a flow, and the bodies of the exergy account. Data only; texts and requests are made
// from it elsewhere.

import type {
  CyclePoint,
  CyclePointName,
  MassFlowKey,
  TextbookCycle,
  TextbookCycleRequest,
} from '../../../loop/index.ts';
import type { ReferenceStateName } from '../../../matter/refrigerants/index.ts';
import { type QuantityName, sayQuantity, type UnitView } from '../../../quantities/index.ts';

export type CycleKey = Exclude<keyof TextbookCycleRequest, 'refrigerant' | 'referenceState'>;

interface Asked {
  readonly key: CycleKey;
  readonly label: string;
  readonly help: string;
  readonly quantity: QuantityName;
}

/** One way to give a fact. */
export interface CycleField extends Asked {
  /** What it is called in "give the pressure instead". */
  readonly called: string;
  /** Where it has a meaning only with, or only without, a liquid-to-suction heat exchanger. */
  readonly only?: 'withExchanger' | 'withoutExchanger';
  /** Its value in a cycle that was computed. */
  readonly valueIn: (cycle: TextbookCycle) => number;
}

/** A field that may stay empty, and what is taken then. */
export interface OptionalField extends Asked {
  readonly assumed: (view: UnitView) => string;
}

/** One of several fields of which at most one is given; it begins with a round number of the view. */
export interface ChosenField extends Asked {
  readonly choice: string;
  readonly start: (view: UnitView, cycle: TextbookCycle | undefined) => string;
}

/** Each fact by the field it starts with and those that may replace it. */
export const cycleFacts: readonly (readonly [CycleField, ...CycleField[]])[] = [
  [
    {
      key: 'evaporating',
      label: 'Evaporating temperature',
      help: 'Temperature of the vapour as the last liquid boils away (dew point).',
      quantity: 'temperature',
      called: 'temperature',
      valueIn: (cycle) => cycle.evaporating.temperature,
    },
    {
      key: 'evaporatingPressure',
      label: 'Evaporating pressure',
      help: 'Absolute, such as 2.9 bar abs or 42 psia. Gauge pressures are counted from one standard atmosphere.',
      quantity: 'pressure',
      called: 'pressure',
      valueIn: (cycle) => cycle.evaporating.pressure,
    },
  ],
  [
    {
      key: 'condensing',
      label: 'Condensing temperature',
      help: 'Temperature of the vapour as the first liquid forms (dew point).',
      quantity: 'temperature',
      called: 'temperature',
      valueIn: (cycle) => cycle.condensing.temperature,
    },
    {
      key: 'condensingPressure',
      label: 'Condensing pressure',
      help: 'Absolute, such as 10 bar abs or 147 psia. Gauge pressures are counted from one standard atmosphere.',
      quantity: 'pressure',
      called: 'pressure',
      valueIn: (cycle) => cycle.condensing.pressure,
    },
  ],
  [
    {
      key: 'superheat',
      label: 'Superheat',
      help: 'How much warmer the gas leaves the evaporator than the evaporating temperature; 0 is dry saturated vapour. Without a heat exchanger it enters the compressor like that.',
      quantity: 'temperatureDifference',
      called: 'superheat',
      valueIn: (cycle) => cycle.superheat,
    },
    {
      key: 'suctionTemperature',
      label: 'Suction temperature',
      help: 'Of the gas into the compressor; not below evaporating.',
      quantity: 'temperature',
      called: 'temperature',
      only: 'withoutExchanger',
      valueIn: (cycle) => cycle.points[0].temperature,
    },
    {
      key: 'suctionQuality',
      label: 'Vapour share into the compressor',
      help: 'Wet gas: the part of its mass that is vapour. A real compressor would not live long.',
      quantity: 'fraction',
      called: 'vapour share',
      only: 'withoutExchanger',
      valueIn: (cycle) => cycle.points[0].quality ?? 0.95,
    },
    {
      key: 'evaporatorOutletTemperature',
      label: 'Temperature out of the evaporator',
      help: 'Of the gas before it enters the heat exchanger; not below evaporating.',
      quantity: 'temperature',
      called: 'temperature',
      only: 'withExchanger',
      valueIn: (cycle) => pointNamed(cycle, 'evaporatorOutlet').temperature,
    },
  ],
  [
    {
      key: 'subcooling',
      label: 'Subcooling',
      help: 'How much colder the liquid leaves the condenser than it boils at that pressure; 0 is saturated liquid.',
      quantity: 'temperatureDifference',
      called: 'subcooling',
      valueIn: (cycle) => cycle.subcooling,
    },
    {
      key: 'liquidTemperature',
      label: 'Liquid temperature',
      help: 'Of the liquid out of the condenser; not above condensing.',
      quantity: 'temperature',
      called: 'temperature',
      valueIn: (cycle) => cycle.points[3].temperature,
    },
  ],
  [
    {
      key: 'isentropicEfficiency',
      label: 'Isentropic efficiency',
      help: 'Work of a loss-free compressor over the work done on the gas: (h2s − h1)/(h2 − h1).',
      quantity: 'fraction',
      called: 'efficiency',
      valueIn: (cycle) => cycle.isentropicEfficiency,
    },
    {
      key: 'dischargeTemperature',
      label: 'Discharge temperature',
      help: 'Of the gas out of the compressor; the efficiency follows from it.',
      quantity: 'temperature',
      called: 'discharge temperature',
      valueIn: (cycle) => cycle.points[2].temperature,
    },
  ],
];

/** Pressure lost between the two ends of an exchanger. */
export const lineFields: readonly OptionalField[] = [
  {
    key: 'suctionPressure',
    label: 'Pressure at the compressor inlet',
    help: 'Absolute. Lower than evaporating by what evaporator and suction line lose.',
    quantity: 'pressure',
    assumed: () => 'assumed: nothing is lost',
  },
  {
    key: 'liquidPressure',
    label: 'Pressure at the condenser outlet',
    help: 'Absolute. Lower than condensing by what the condenser loses.',
    quantity: 'pressure',
    assumed: () => 'assumed: nothing is lost',
  },
];

/** A heat exchanger in which the liquid warms the suction gas. */
export const exchangerFields: readonly ChosenField[] = [
  {
    key: 'heatExchangerEffectiveness',
    choice: 'a heat exchanger of known effectiveness',
    label: 'Effectiveness',
    help: 'Of what the gas could take up if it left as warm as the liquid enters, counted in enthalpy.',
    quantity: 'fraction',
    start: () => '60 %',
  },
  {
    key: 'suctionTemperatureAfterExchanger',
    choice: 'a heat exchanger of known outlet temperature',
    label: 'Gas temperature after the exchanger',
    help: 'Of the gas as the compressor draws it in.',
    quantity: 'temperature',
    start: (view, cycle) => typed((cycle?.points[0].temperature ?? 278.15) + 10, 'temperature', view, 3),
  },
];

/** What the mass flow follows from. */
export const flowFields: readonly (ChosenField & { readonly key: MassFlowKey })[] = [
  {
    key: 'coolingCapacity',
    choice: 'from the cooling capacity',
    label: 'Cooling capacity',
    help: 'Heat taken in the evaporator each second.',
    quantity: 'power',
    start: (view) => (view === 'us' ? '3000 BTU/h' : '1 kW'),
  },
  {
    key: 'heatingCapacity',
    choice: 'from the heating capacity',
    label: 'Heating capacity',
    help: 'Heat given in the condenser each second.',
    quantity: 'power',
    start: (view) => (view === 'us' ? '4000 BTU/h' : '1.2 kW'),
  },
  {
    key: 'compressorPower',
    choice: 'from the power on the gas',
    label: 'Power of the shaft into the gas',
    help: 'Not electricity: no motor is in a textbook cycle.',
    quantity: 'electricPower',
    start: () => '250 W',
  },
  {
    key: 'displacement',
    choice: 'from the swept volume',
    label: 'Swept volume rate',
    help: 'Volume that the pistons sweep in a time: displacement times speed.',
    quantity: 'volumeFlow',
    start: (view) => (view === 'us' ? '1.5 ft³/min' : '2.5 m³/h'),
  },
  {
    key: 'massFlow',
    choice: 'given as mass flow',
    label: 'Mass flow',
    help: 'Of the refrigerant.',
    quantity: 'massFlow',
    start: (view) => (view === 'us' ? '50 lb/h' : '6 g/s'),
  },
];

/** Asked beside a swept volume only. */
export const volumetricEfficiencyField: OptionalField = {
  key: 'volumetricEfficiency',
  label: 'Volumetric efficiency',
  help: 'Volume of gas drawn in over volume swept.',
  quantity: 'fraction',
  assumed: () => 'assumed: 100 %, a pump that fills completely',
};

/** Bodies that the exergy account is made with. */
export const bodyFields: readonly OptionalField[] = [
  {
    key: 'deadState',
    label: 'Dead state',
    help: 'Temperature at which heat can do no work; for the account of losses.',
    quantity: 'temperature',
    assumed: (view) => `assumed: ${sayQuantity(298.15, 'temperature', view)}`,
  },
  {
    key: 'sinkTemperature',
    label: 'What is heated',
    help: 'Temperature of the body the condenser gives its heat to.',
    quantity: 'temperature',
    assumed: () => 'assumed: as the dead state',
  },
  {
    key: 'sourceTemperature',
    label: 'What is cooled',
    help: 'Temperature of the body the evaporator takes its heat from.',
    quantity: 'temperature',
    assumed: () => 'assumed: as the dead state',
  },
];

export const chosenGroups = { exchanger: exchangerFields, flow: flowFields } as const;

export const referenceNames: readonly ReferenceStateName[] = ['iir', 'ashrae', 'normalBoilingPoint'];

/** The path by which a link finds a field of the cycle, and by which steps of the cycle name it. */
export function cycleFieldPath(key: keyof TextbookCycleRequest): string {
  return `request.${key}`;
}

/** Every field there is. */
export const allCycleFields: readonly Asked[] = [
  ...cycleFacts.flat(),
  ...lineFields,
  ...exchangerFields,
  ...flowFields,
  volumetricEfficiencyField,
  ...bodyFields,
];

export function pointNamed(cycle: TextbookCycle, name: CyclePointName): CyclePoint {
  return cycle.points.find((point) => point.name === name) ?? cycle.points[0];
}

/** A number of a cycle as a person would type it in the view. */
export function typed(value: number, quantity: QuantityName, view: UnitView, digits: number): string {
  return sayQuantity(value, quantity, view, digits)
    .replaceAll(/[\u00a0\u202f]/g, ' ')
    .replaceAll('−', '-');
}
