// Rules about the fluid itself: whether it burns and in what equipment, whether the compressor and its oil were made for
// it, and what the law says of opening a circuit that holds it.

import type { CautionFinding, Grounds } from '../../fact.ts';
import { quantity, word } from '../../fact.ts';
import type { CautionFacts, CautionFluid, Region } from '../../facts.ts';
import { isFlammable } from '../../facts.ts';

const classes: Grounds = {
  source: 'safety classes of ISO 817 and ASHRAE 34 as given in EN 378-1:2016 Annex E',
  certainty: 'confirmed',
};

/** What the class of a fluid rests on. */
export function classGrounds({ unconfirmed }: CautionFluid): Grounds {
  return unconfirmed.includes('safetyClass')
    ? { source: 'safety classes of ISO 817 and ASHRAE 34, from memory', certainty: 'memory' }
    : classes;
}

/** Global warming potential from which servicing refrigeration equipment is forbidden in the EU. */
const highWarming = 2500;

/** What is known of the law by region; general words, to be checked locally. */
const laws: Readonly<Record<Region, Grounds>> = {
  europeanUnion: {
    source: 'regulations (EU) 2024/573 and, for what harms the ozone layer, (EU) 2024/590: check locally',
    certainty: 'confirmed',
  },
  unitedKingdom: {
    source:
      'Great Britain: regulation 517/2014 as kept in its law; Northern Ireland: law of the EU; from memory: check locally',
    certainty: 'memory',
  },
  unitedStates: { source: 'Clean Air Act section 608, 40 CFR 82 subpart F: check locally', certainty: 'confirmed' },
  elsewhere: { source: 'the Montreal Protocol and national law: check locally', certainty: 'memory' },
  unknown: {
    source:
      'USA: 40 CFR 82 subpart F; EU: regulations (EU) 2024/573 and 2024/590; other countries have their own: check locally',
    certainty: 'confirmed',
  },
};

export type FluidFacts = Pick<CautionFacts, 'fluid' | 'madeFor' | 'forFlammables' | 'machine'>;
export type LawFacts = Pick<CautionFacts, 'fluid' | 'region'>;

/**
 * A fluid that burns, in equipment said not to be made for it; or equipment nobody knows of, around a compressor that
 * itself was made for a fluid that does not burn.
 */
export function flammableFluidInUnsuitableEquipment(facts: FluidFacts): CautionFinding | undefined {
  if (!isFlammable(facts.fluid) || !isEquipmentUnsuitable(facts)) return undefined;
  return {
    code: 'flammableFluidInUnsuitableEquipment',
    severity: 'stop',
    subject: 'person',
    facts: { fluid: word(facts.fluid.name), safetyClass: word(facts.fluid.safetyClass) },
    ...classGrounds(facts.fluid),
    remedy:
      'Choose a fluid that does not burn, or a complete certified appliance whose fan, relay, thermostat and overload protector were made for this fluid.',
    needsLicensedPerson: true,
  };
}

/** A fluid that burns, in a compressor made for such fluids, and nobody has said that the rest of the equipment is. */
export function flammableFluidEquipmentUnconfirmed(facts: FluidFacts): CautionFinding | undefined {
  const open = facts.forFlammables === 'unknown' && isFlammable(facts.madeFor);
  if (!isFlammable(facts.fluid) || !open) return undefined;
  return {
    code: 'flammableFluidEquipmentUnconfirmed',
    severity: 'look',
    subject: 'person',
    facts: { fluid: word(facts.fluid.name), safetyClass: word(facts.fluid.safetyClass) },
    ...classGrounds(facts.fluid),
    remedy:
      'Have a licensed technician confirm that every switch, relay, fan, thermostat and lamp near the circuit is made for a flammable fluid.',
    needsLicensedPerson: true,
  };
}

/** Any fluid that burns. */
export function flammableFluid(facts: FluidFacts): CautionFinding | undefined {
  if (!isFlammable(facts.fluid)) return undefined;
  return {
    code: 'flammableFluid',
    severity: 'note',
    subject: 'house',
    facts: { fluid: word(facts.fluid.name), safetyClass: word(facts.fluid.safetyClass) },
    ...classGrounds(facts.fluid),
    remedy:
      'No flame, spark or hot surface near the circuit, and none on it even after it has been emptied: the oil goes on giving off gas.',
    needsLicensedPerson: false,
  };
}

/** A fluid the compressor was not made for: shown for study only. */
export function notForThisMachine(facts: FluidFacts): CautionFinding | undefined {
  if (facts.fluid.name === facts.madeFor.name) return undefined;
  return {
    code: 'notForThisMachine',
    severity: 'stop',
    subject: 'machine',
    facts: { fluid: word(facts.fluid.name), madeFor: word(facts.madeFor.name) },
    source:
      'a compressor is released by its maker for the fluids on its rating plate only; the design names another fluid',
    certainty: 'stated',
    remedy:
      'Study it on the fluid its rating plate names, or choose a compressor made for the fluid you have in mind; changing the fluid of a circuit is work for a licensed technician with the maker’s release.',
    needsLicensedPerson: true,
  };
}

/** The oil printed on the compressor, or else the oils usual with its own fluid, are none of those usual with this one. */
export function oilNotForThisFluid(facts: FluidFacts): CautionFinding | undefined {
  const printed = facts.machine?.oil ?? null;
  if (facts.fluid.name === facts.madeFor.name && printed === null) return undefined;
  const inMachine = printed === null ? facts.madeFor.usualOils : [printed];
  if (facts.fluid.usualOils.some((oil) => inMachine.includes(oil))) return undefined;
  const said = (oils: readonly string[]) => (oils.length === 0 ? 'no' : oils.join(' or '));
  return {
    code: 'oilNotForThisFluid',
    severity: 'look',
    subject: 'machine',
    facts: {
      fluid: word(facts.fluid.name),
      madeFor: word(facts.madeFor.name),
      oilsForFluid: word(said(facts.fluid.usualOils)),
      oilsInMachine: word(said(inMachine)),
      ...(printed === null ? {} : { oilPrinted: word(printed) }),
    },
    source: 'usual pairs of fluid and oil in refrigeration handbooks, from memory',
    certainty: 'memory',
    remedy: 'An oil that does not mix with the fluid stays in the evaporator; keep to the fluid on the rating plate.',
    needsLicensedPerson: true,
  };
}

/** Seals, varnish of the windings and drier were chosen for another fluid. */
export function materialsForOtherFluid({ fluid, madeFor }: FluidFacts): CautionFinding | undefined {
  if (fluid.name === madeFor.name) return undefined;
  return {
    code: 'materialsForOtherFluid',
    severity: 'note',
    subject: 'machine',
    facts: { fluid: word(fluid.name), madeFor: word(madeFor.name) },
    source:
      'refrigeration handbooks, from memory: seals swell or shrink, varnish softens, driers are made for some fluids',
    certainty: 'memory',
    remedy:
      'Only the maker’s release of this very compressor for this fluid says that its materials bear it; what is known of the oil says nothing of them.',
    needsLicensedPerson: true,
  };
}

/** A fluid of which what a leak is judged by was not read in a source: nothing here may be cleared by it. */
export function fluidForStudyOnly({ fluid }: Pick<FluidFacts, 'fluid'>): CautionFinding | undefined {
  if (fluid.unconfirmed.length === 0) return undefined;
  return {
    code: 'fluidForStudyOnly',
    severity: 'stop',
    subject: 'person',
    facts: { fluid: word(fluid.name), unconfirmed: word(fluid.unconfirmed.join(' ')) },
    source: 'the catalogue of refrigerants names no source that was read for these; the design names this fluid',
    certainty: 'stated',
    remedy:
      'Study its properties and cycle; for a machine choose a fluid whose class, limits and law are known, with a compressor made for it.',
    needsLicensedPerson: true,
  };
}

/** A fluid that attacks the copper of tubes and motor. */
export function fluidAttacksCopper({ fluid }: Pick<FluidFacts, 'fluid'>): CautionFinding | undefined {
  if (!fluid.metalsAttacked.includes('copper')) return undefined;
  return {
    code: 'fluidAttacksCopper',
    severity: 'stop',
    subject: 'machine',
    facts: { fluid: word(fluid.name) },
    source:
      'chemistry: with a trace of water it dissolves copper, brass and zinc; tubes and windings of small hermetic machines are copper',
    certainty: 'physics',
    remedy:
      'Its machines are built of steel and aluminium with a motor kept apart from the fluid. Choose a fluid that hermetic compressors are made for.',
    needsLicensedPerson: true,
  };
}

/** A fluid that depletes the ozone layer. */
export function ozoneDepletingFluid(facts: LawFacts): CautionFinding | undefined {
  const potential = facts.fluid.ozoneDepletionPotential;
  if (potential === null || potential === 0) return undefined;
  return {
    code: 'ozoneDepletingFluid',
    severity: 'look',
    subject: 'law',
    facts: {
      fluid: word(facts.fluid.name),
      ozoneDepletionPotential: quantity(potential, 'ratio'),
    },
    source: `Montreal Protocol; ${laws[facts.region].source}; details from memory`,
    certainty: 'memory',
    remedy:
      'Buying it, putting it into a circuit or letting it out is restricted or forbidden in most countries. A circuit that still holds it goes, closed, to a certified person for recovery.',
    needsLicensedPerson: true,
  };
}

/** A fluid that warms the climate so much that equipment holding it may not be serviced with it where EU law holds. */
export function highWarmingFluid({ fluid, region }: LawFacts): CautionFinding | undefined {
  const { globalWarmingPotential: potential, ozoneDepletionPotential } = fluid;
  if (region === 'unitedStates' || region === 'elsewhere') return undefined;
  if (potential === null || potential < highWarming || (ozoneDepletionPotential ?? 0) > 0) return undefined;
  return {
    code: 'highWarmingFluid',
    severity: 'look',
    subject: 'law',
    facts: {
      fluid: word(fluid.name),
      globalWarmingPotential: quantity(potential, 'ratio'),
      limit: quantity(highWarming, 'ratio'),
    },
    source:
      'regulation (EU) 2024/573, Article 13(3), with exceptions; Great Britain has a similar rule, from memory: check locally',
    certainty: region === 'unitedKingdom' ? 'memory' : 'confirmed',
    remedy:
      'A machine on it cannot count on being serviced. Ask a certified person before buying anything that holds it.',
    needsLicensedPerson: true,
  };
}

/** Letting the fluid out, or opening its circuit without a certificate, is against the law in most places. */
export function openingNeedsLicence(facts: LawFacts): CautionFinding | undefined {
  const { fluid } = facts;
  const harmless =
    !isFlammable(fluid) &&
    fluid.ozoneDepletionPotential === 0 &&
    fluid.globalWarmingPotential !== null &&
    fluid.globalWarmingPotential <= 1;
  if (harmless) return undefined;
  return {
    code: 'openingNeedsLicence',
    severity: 'note',
    subject: 'law',
    facts: { fluid: word(fluid.name), region: word(facts.region) },
    ...laws[facts.region],
    remedy:
      'Recovery, opening, charging and leak testing are for certified or licensed people; ask before you touch it.',
    needsLicensedPerson: true,
  };
}

function isEquipmentUnsuitable(facts: FluidFacts): boolean {
  switch (facts.forFlammables) {
    case 'yes':
      return false;
    case 'no':
      return true;
    case 'unknown':
      return !isFlammable(facts.madeFor);
  }
}
