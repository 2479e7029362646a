// What starting asks of the machine of a design: whether its motor starts against a pressure difference, how long it must rest, and
// what keeps liquid refrigerant out of its oil.

import type { ResolvedDesign } from '../../../design/index.ts';
import { type HermeticCompressor, type SourcedEstimate, startingNumbers } from '../../../parts/compressor/index.ts';
import type { Band } from '../../../quantities/index.ts';
import type { StartingFact } from './answer.ts';

/** Source of a fact that follows from how such motors and circuits work. */
const guides = 'typical application guides, from memory';

/**
 * Facts in the order they are told. What meters the refrigerant is no part of a design, so nothing is taken for granted about it.
 * @param design      its machine and its small consumers
 * @param compressor  the likely machine
 */
export function startingFacts(
  design: Pick<ResolvedDesign, 'machine' | 'power'>,
  compressor: HermeticCompressor,
): readonly StartingFact[] {
  const { machine, power } = design;
  const { shellConductance } = compressor;
  const { startType, shellConductance: typed } = machine.compressor;
  const share = shellConductance / typed.likely;
  const numbers = startingNumbers({ startType, meter: 'unknown', shellConductance: scaled(typed, share) });
  const equalising = startingNumbers({ startType, meter: 'equalises', shellConductance: typed }).equalisation;
  return [
    fact('lowTorqueStart', 'Start against a pressure difference', lowTorqueWords[numbers.lowTorque], guides),
    ...(equalising === null
      ? []
      : [
          ranged(
            'equalisation',
            'Until the pressures are alike at rest',
            equalising,
            'duration',
            'Through a capillary tube. A thermostatic valve closes at rest and keeps the pressures apart: a motor of little starting torque then cannot start at all.',
          ),
        ]),
    ranged(
      'minimumOffTime',
      'Shortest rest between two runs',
      numbers.minimumOffTime,
      'duration',
      'For the pressures, for the protector and for the starting relay to cool. A thermostat with a narrow band must be kept from starting it sooner.',
    ),
    fact(
      'migration',
      'Refrigerant on the move at rest',
      'At rest refrigerant gathers in the coldest place and dissolves in the oil. A dome that stands colder than the tank’s coil fills with it over hours.',
      guides,
    ),
    fact(
      'floodedStart',
      'Start with liquid in the dome',
      'The oil foams and the bearings run dry for the first minute; liquid in the cylinder breaks valves. A dome kept warmer than everything else in the circuit has none of it.',
      guides,
    ),
    ranged(
      'crankcaseHeater',
      'Heater that keeps the resting dome a little warmer',
      numbers.crankcaseHeater,
      'electricPower',
      power.crankcaseHeater.likely > 0
        ? 'The design has one; it is counted while the machine rests.'
        : 'The design has none. It would take this much while the machine rests.',
    ),
  ];
}

const lowTorqueWords = {
  yes: 'Its motor starts with little torque: only against pressures that have become alike. Started sooner it hums, draws its locked-rotor current and trips.',
  no: 'Its motor starts against a pressure difference.',
  unknown:
    'Nobody has said how its motor starts. Most small domes start with a relay or a PTC and no capacitor, and then only against pressures that have become alike.',
} as const;

function fact(name: string, label: string, words: string, source: string): StartingFact {
  return { name, label, band: null, words, source };
}

function ranged(
  name: string,
  label: string,
  { low, likely, high, source }: SourcedEstimate,
  quantity: string,
  words: string,
): StartingFact {
  return { name, label, band: { low, likely, high, quantity }, words, source };
}

function scaled({ low, likely, high }: Band, share: number): Band {
  return { low: share * low, likely: share * likely, high: share * high };
}
