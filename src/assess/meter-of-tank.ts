// The meter beside a tank's sizes, with what could explain the difference: the model of the tank as it stood while it was
// measured is asked again for every input that is tried.

import type { Resolution } from '../design/index.ts';
import type { Bands } from './answers/pieces.ts';
import type { TankResults } from './answers/tank-values.ts';
import type { MeterAnswer } from './assessment/tank-answer.ts';
import type { Doubt } from './doubt/doubt.ts';
import { doubtfulInputs, withInput } from './inputs.ts';
import type { StagedDesign } from './stages/engine-assumptions.ts';
import { tankSlice } from './stages/index.ts';
import { sizedTankParts } from './stages/sized-tank/handed-over.ts';
import { surroundingsOf, surroundingsSlice } from './stages/surroundings/surroundings.ts';
import { meterOf } from './stages/tank/meter.ts';

/** Null for a tank without a meter beside its sizes. */
export function meterOfTank(
  { resolution, design }: { readonly resolution: Resolution; readonly design: StagedDesign },
  { meter }: Pick<TankResults, 'meter'>,
  doubt: Doubt,
  bands: Bands,
): MeterAnswer | null {
  if (meter === null) return null;
  const ratioAt = (path: string, value: number) => {
    const changed = withInput(design, resolution.followers, path, value);
    return meterOf(tankSlice(changed), surroundingsOf(surroundingsSlice(changed)))!.ratio;
  };
  return sizedTankParts().meterAnswer(meter, doubtfulInputs(resolution, design), doubt, bands, ratioAt);
}
