// The numbers of the machine in the coldest spell: those looked at first, and the others folded. Those of the motor and of the gas are of one machine.

import type { ReactNode } from 'react';
import type { Assessment } from '../../assess/index.ts';
import { sayRange, type UnitView } from '../../quantities/index.ts';
import { NumberItem, Numbers } from '../ui/number.tsx';
import { say } from '../ui/say.ts';
import { Part } from './part.tsx';

interface MachineNumbersProps {
  readonly assessment: Assessment;
  readonly view: UnitView;
}

export function MachineNumbers({ assessment, view }: MachineNumbersProps): ReactNode {
  const { machine, workings } = assessment;
  const { count, ratedCurrent } = machine;
  const shown = { view, workings } as const;
  const together = count === 1 ? '' : `, ${count} machines`;
  return (
    <Numbers>
      <NumberItem
        label={`Heat to the water, running${together}`}
        band={assessment.heatDelivered}
        quantity="power"
        ink="into-water"
        {...shown}
      />
      <NumberItem
        label={count === 1 ? 'Electricity of the compressor' : `Electricity of ${count} compressors`}
        band={assessment.compressorPower}
        quantity="electricPower"
        ink="electricity"
        {...shown}
      />
      <NumberItem
        label="Current"
        band={machine.current}
        quantity="current"
        note={ratedCurrent === null ? 'rated current not known' : `rated ${sayRange(ratedCurrent, 'current', view)}`}
        {...shown}
      />
      <NumberItem label="Load of the motor" band={machine.motorLoad} quantity="fraction" {...shown} />
    </Numbers>
  );
}

/** Those that are looked up, rather than looked at first. */
export function MoreNumbers({ assessment, view }: MachineNumbersProps): ReactNode {
  const { operating, machine, workings } = assessment;
  const { currentShare } = machine;
  const shown = { view, workings } as const;
  return (
    <Part
      name="more-numbers"
      title="More numbers"
      brief={`overall efficiency ${say(operating.overallEfficiency.likely, 'fraction', view, 2)}`}
    >
      <Numbers>
        {currentShare !== null && (
          <NumberItem label="Of its rated current" band={currentShare} quantity="fraction" {...shown} />
        )}
        <NumberItem label="Inside of the shell" band={machine.wallTemperature} quantity="temperature" {...shown} />
        <NumberItem label="Shell heat, lost beside the water" band={operating.shellHeat} quantity="power" {...shown} />
        <NumberItem
          label="Volumetric efficiency"
          band={operating.volumetricEfficiency}
          quantity="fraction"
          {...shown}
        />
        <NumberItem label="Overall efficiency" band={operating.overallEfficiency} quantity="fraction" {...shown} />
        <NumberItem label="Refrigerant flow" band={operating.massFlow} quantity="massFlow" {...shown} />
      </Numbers>
    </Part>
  );
}
