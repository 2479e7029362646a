// What the rules of caution say of a fluid in the machine of a design, wherever the loop settles and even where it does not.

import {
  cautionFluid,
  flammableFluidInUnsuitableEquipment,
  fluidAttacksCopper,
  fluidForStudyOnly,
  notForThisMachine,
} from '../../cautions/index.ts';
import { catalogueEntry } from '../../matter/refrigerants/index.ts';
import type { Finding } from '../../quantities/index.ts';
import type { StagedDesign } from '../stages/engine-assumptions.ts';

/** Rules that ask nothing but which fluid is in which machine, and where. */
export function fluidFindings({ machine, place }: StagedDesign, fluid: string): readonly Finding[] {
  const facts = {
    fluid: cautionFluid(catalogueEntry(fluid)),
    madeFor: cautionFluid(catalogueEntry(machine.compressor.madeFor)),
    forFlammables: machine.forFlammables,
    region: place.region,
  };
  const rules = [flammableFluidInUnsuitableEquipment, notForThisMachine, fluidForStudyOnly, fluidAttacksCopper];
  return rules.flatMap((rule) => rule(facts) ?? []);
}
