// The textbook cycle for the paper "Cycle alone": its request in, the cycle with its steps and pictures out; and what was
// wrong with a request, in words of the view.

import { messageInView } from '../../assess/index.ts';
import { type Diagram, makeDiagram } from '../../charts/index.ts';
import {
  type TextbookCycle,
  type TextbookCycleRequest,
  textbookCycle,
  textbookCycleWorking,
} from '../../loop/index.ts';
import { referenceOffset, refrigerant, refrigerantNamed } from '../../matter/refrigerants/index.ts';
import { InputError, type KettlefinError, OutOfModelError } from '../../numerics/index.ts';
import { type QuantityName, sayQuantity, type UnitView, type WorkingStep } from '../../quantities/index.ts';
import { type CycleOffer, cycleOffer } from './cycle-offer.ts';
import { type CycleTransport, transportOf } from './cycle-transport.ts';
import type { CycleRequest, EngineReply, Numbered, SecondCycleRequest } from './messages.ts';
import { problemOf } from './problems.ts';

export interface CycleForm {
  readonly request: TextbookCycleRequest;
  /** Isotherms and isobars round in the view's own units [K], [Pa]. */
  readonly isotherms: readonly number[];
  readonly isobars: readonly number[];
}

/** The textbook cycle, and the one laid over it: so their results are named in the workings. */
export type CycleName = 'cycle' | 'secondCycle';

export interface CycleAnswer {
  readonly name: CycleName;
  readonly cycle: TextbookCycle;
  readonly workings: readonly WorkingStep[];
  readonly diagram: Diagram;
  readonly transport: CycleTransport;
}

export function answerCycle(name: CycleName, { request, isotherms, isobars }: CycleForm): CycleAnswer {
  const cycle = textbookCycle(request);
  const referenceState = request.referenceState ?? 'iir';
  const diagram = makeDiagram({
    refrigerant: request.refrigerant,
    points: cycle.points,
    levels: [],
    limits: [],
    isotherms,
    isobars,
    referenceState,
  });
  const workings = textbookCycleWorking(request, cycle, name);
  return { name, cycle, workings, diagram, transport: transportOf(cycle) };
}

/** The reply to a request for a cycle; what is wrong with it is said in the names of its fields. */
export function replyToCycle({ id, body }: Numbered<CycleRequest | SecondCycleRequest>): EngineReply {
  const { kind, form, view } = body;
  try {
    return { kind, id, ok: true, answer: answerCycle(kind, form) };
  } catch (error) {
    const problem = problemOf(error, view, (typed) => sayCycleError(typed, form, view));
    const offer = offerFor(form, view);
    return { kind, id, ok: false, problems: [offer === undefined ? problem : { ...problem, offer }] };
  }
}

/** None where the request names no refrigerant, which is what is wrong with it then. */
function offerFor({ request }: CycleForm, view: UnitView): CycleOffer | undefined {
  const name = refrigerantNamed(request.refrigerant);
  return name === undefined ? undefined : cycleOffer(request, refrigerant(name), view);
}

/** What a person calls each number of the request. */
const names: Readonly<Partial<Record<string, readonly [string, QuantityName]>>> = {
  evaporating: ['evaporating temperature', 'temperature'],
  evaporatingPressure: ['evaporating pressure', 'pressure'],
  condensing: ['condensing temperature', 'temperature'],
  condensingPressure: ['condensing pressure', 'pressure'],
  superheat: ['superheat', 'temperatureDifference'],
  suctionTemperature: ['suction temperature', 'temperature'],
  suctionQuality: ['vapour share into the compressor', 'fraction'],
  evaporatorOutletTemperature: ['temperature out of the evaporator', 'temperature'],
  suctionPressure: ['pressure at the compressor inlet', 'pressure'],
  liquidPressure: ['pressure at the condenser outlet', 'pressure'],
  heatExchangerEffectiveness: ['effectiveness of the heat exchanger', 'fraction'],
  suctionTemperatureAfterExchanger: ['gas temperature after the exchanger', 'temperature'],
  massFlow: ['mass flow', 'massFlow'],
  coolingCapacity: ['cooling capacity', 'power'],
  heatingCapacity: ['heating capacity', 'power'],
  compressorPower: ['power of the shaft into the gas', 'electricPower'],
  displacement: ['swept volume rate', 'volumeFlow'],
  volumetricEfficiency: ['volumetric efficiency', 'fraction'],
  subcooling: ['subcooling', 'temperatureDifference'],
  liquidTemperature: ['liquid temperature', 'temperature'],
  isentropicEfficiency: ['isentropic efficiency', 'fraction'],
  dischargeTemperature: ['discharge temperature', 'temperature'],
  deadState: ['dead state', 'temperature'],
  sinkTemperature: ['body the heat is given to', 'temperature'],
  sourceTemperature: ['body the heat is taken from', 'temperature'],
};

function sayCycleError(error: KettlefinError, { request }: CycleForm, view: UnitView): string {
  if (error.code === 'condensingAboveCritical') {
    const { temperature, pressure } = refrigerant(request.refrigerant).critical;
    const critical = `${sayQuantity(temperature, 'temperature', view, 3)}, ${sayQuantity(pressure, 'pressure', view, 3)}`;
    return `Above its critical point (${critical}) ${request.refrigerant} does not condense. Give a condensing temperature below it; cycles that reach above it are not computed.`;
  }
  if (error instanceof InputError) {
    const [label, quantity] = names[error.path] ?? [undefined, undefined];
    const received = Number(error.received);
    if (label !== undefined && Number.isFinite(received)) {
      return `The ${label} cannot be ${sayQuantity(received, quantity, view, 4)}. It should be ${messageInView(error.expected, view)}.`;
    }
  }
  if (error instanceof OutOfModelError) {
    // The engine names the field and, after a colon, what of it left the equation's range.
    const [label] = names[error.quantity.split(':')[0] ?? ''] ?? [undefined];
    const quantity = error.unit === 'K' ? 'temperature' : error.unit === 'Pa' ? 'pressure' : undefined;
    if (label !== undefined && quantity !== undefined) {
      const said = (value: number) => sayQuantity(value, quantity, view, 4);
      if (error.code === 'noSaturation') {
        return `${request.refrigerant} boils and condenses between ${said(error.low)} and ${said(error.high)} only; with this ${label} it would have to at ${said(error.value)}.`;
      }
      return `With this ${label} the refrigerant would be at ${said(error.value)}. The equation of ${request.refrigerant} covers ${said(error.low)} to ${said(error.high)}.`;
    }
  }
  if (hasNoReference(request)) {
    return `${request.refrigerant} has no boiling liquid to count from at the zero of enthalpy and entropy that is chosen. Choose another zero, under “I know more”.`;
  }
  return messageInView(error.message, view);
}

/** Whether the fluid has no liquid where enthalpy and entropy are to count from: water at −40 °C, R744 at one atmosphere. */
function hasNoReference({ refrigerant: name, referenceState = 'iir' }: TextbookCycleRequest): boolean {
  try {
    referenceOffset(refrigerant(name), referenceState);
    return false;
  } catch (error) {
    return error instanceof OutOfModelError;
  }
}
