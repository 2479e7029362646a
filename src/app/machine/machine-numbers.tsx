// The numbers of the machine in the coldest spell. Those of the motor and of the gas are of one machine.

import type { ReactNode } from 'react';
import type { Assessment } from '../../assess/index.ts';
import { sayRange, type UnitView } from '../../quantities/index.ts';
import { NumberItem, Numbers } from '../ui/number.tsx';

interface MachineNumbersProps {
  readonly assessment: Assessment;
  readonly view: UnitView;
}

export function MachineNumbers({ assessment, view }: MachineNumbersProps): ReactNode {
  const { operating, machine, workings } = assessment;
  const { count, ratedCurrent, currentShare } = machine;
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
      {currentShare !== null && (
        <NumberItem label="Of its rated current" band={currentShare} quantity="fraction" {...shown} />
      )}
      <NumberItem label="Load of the motor" band={machine.motorLoad} quantity="fraction" {...shown} />
      <NumberItem label="Inside of the shell" band={machine.wallTemperature} quantity="temperature" {...shown} />
      <NumberItem label="Shell heat, lost beside the water" band={operating.shellHeat} quantity="power" {...shown} />
      <NumberItem label="Volumetric efficiency" band={operating.volumetricEfficiency} quantity="fraction" {...shown} />
      <NumberItem label="Overall efficiency" band={operating.overallEfficiency} quantity="fraction" {...shown} />
      <NumberItem label="Refrigerant flow" band={operating.massFlow} quantity="massFlow" {...shown} />
    </Numbers>
  );
}
