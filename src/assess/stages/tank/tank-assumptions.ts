// What the tank model assumes that no design document asks for: the outer film of panes, bottom and lid, how well their
// materials conduct, how bright foil stays, how closed a stand is. Each is a factor on the value the model uses; 1 is that
// value. A measured tank needs none of them.

import type { PlainDesign } from '../../../design/index.ts';
import type { Estimate } from '../../../quantities/index.ts';
import { sizedTankParts } from '../sized-tank/handed-over.ts';

/** Plain factors of the tank's assumptions. */
export interface TankFactors {
  /** On the outer surface coefficient h_c + h_r of panes, bottom and lid. */
  readonly outerFilmFactor: number;
  /** On the tabulated conductivity of panes and bottom, of layers in the water, of the wrapping, of the lid. */
  readonly wallConductivityFactor: number;
  readonly insideConductivityFactor: number;
  readonly insulationConductivityFactor: number;
  readonly lidConductivityFactor: number;
  /** On the tabulated emissivity of foil and bare metal. */
  readonly foilEmissivityFactor: number;
  /** On the resistance of the boards of a closed stand. */
  readonly standFactor: number;
}

/** All of them as the model has them; also where a design has no such part. */
export const standardTankFactors: TankFactors = {
  outerFilmFactor: 1,
  wallConductivityFactor: 1,
  insideConductivityFactor: 1,
  insulationConductivityFactor: 1,
  lidConductivityFactor: 1,
  foilEmissivityFactor: 1,
  standFactor: 1,
};

export interface TankAssumption {
  readonly key: keyof TankFactors;
  readonly label: string;
  readonly quantity: 'ratio';
  readonly estimate: Estimate;
  readonly source: string;
}

/** The factors that matter for this tank, with range and source; none where its load was measured. */
export function tankAssumptions({ load }: PlainDesign['tank']): readonly TankAssumption[] {
  return load.kind === 'measured' ? [] : sizedTankParts().sizedTankAssumptions(load);
}
