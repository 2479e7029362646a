// Points of a machine out of its printed ratings and its plate, as the identification reads them. What the plate says of current
// and power is taken as a wide range at the rating point of its application. And everything that was given of a machine together.

import type { ApplicationName } from '../../design/index.ts';
import type { Refrigerant } from '../../matter/refrigerants/index.ts';
import {
  type EvidencePoint,
  type EvidenceQuantity,
  machineReading,
  type RatingConditions,
  type RatingDoubt,
  ratingPoint,
  sheetTolerance,
} from '../../parts/compressor/index.ts';
import type { Estimate } from '../../quantities/index.ts';
import { compressorPath as path } from './machine.ts';
import {
  aboutOne,
  calorimeterSurroundings,
  type DescribedCompressor,
  type Evidence,
  supplyOf,
} from './machine-evidence.ts';
import { benchEvidence, coefficientEvidence, tableEvidence } from './machine-points.ts';
import { usualRating } from './usual-rating.ts';

/**
 * Every point that was printed or measured of a machine.
 * @throws InputError and OutOfModelError of the readers of coefficients and tables, at the path in the design
 */
export function givenEvidence(
  described: DescribedCompressor,
  application: ApplicationName,
  fluid: Refrigerant,
): readonly Evidence[] {
  return [
    ratingsEvidence(described, fluid),
    plateEvidence(described, application),
    coefficientEvidence(described, fluid),
    tableEvidence(described, fluid),
    benchEvidence(described, fluid),
  ];
}

const ratingSeries = `${path}.ratings`;

/** Printed figures without a range share the tolerance of the sheet; those with one stand alone. */
function ratingsEvidence(described: DescribedCompressor, fluid: Refrigerant): Evidence {
  const points = ratedPoints(described, fluid);
  for (const point of points) doubtOfRating(described, fluid, point);
  const factor = aboutOne(sheetTolerance);
  const series = { path: ratingSeries, label: 'Tolerance of printed ratings', flowFactor: factor, powerFactor: factor };
  return { points, series: points.some((point) => point.series !== undefined) ? [series] : [] };
}

function ratedPoints({ ratings }: DescribedCompressor, fluid: Refrigerant): readonly EvidencePoint[] {
  return ratings.map((rating, index) => {
    const { capacity, power, current } = rating;
    const given = givenOf({ capacity, power, current });
    const isPrinted = Object.values(given).some(({ low, high }) => low === high);
    return machineReading().ratingEvidence({
      fluid,
      path: `${ratingSeries}.${index}`,
      label: ratings.length === 1 ? ratingLabel(rating.at) : `${ratingLabel(rating.at)}, rating ${index + 1}`,
      at: ratedAt(rating.at),
      given,
      supply: supplyOf(rating),
      surroundings: calorimeterSurroundings,
      ...(isPrinted ? { series: ratingSeries } : {}),
    });
  });
}

/** @throws ImplausibleUnitError where a rating must be meant in another unit */
function doubtOfRating(
  described: DescribedCompressor,
  fluid: Refrigerant,
  point: EvidencePoint,
): RatingDoubt | undefined {
  const usual = { numbers: described, ratedSupply: supplyOf(described.nameplate) };
  return machineReading().requirePlausibleRating(fluid, point, usual);
}

/** What is odd about the ratings of a machine that was identified from them. */
export function ratingDoubts(described: DescribedCompressor, fluid: Refrigerant): readonly RatingDoubt[] {
  return ratedPoints(described, fluid).flatMap((point) => doubtOfRating(described, fluid, point) ?? []);
}

type RatedAt = DescribedCompressor['ratings'][number]['at'];

function ratedAt(at: RatedAt): string | RatingConditions {
  if (at.kind === 'named') return at.point;
  const { evaporating, condensing, returnGas, liquid } = at;
  return {
    evaporating: evaporating.likely,
    condensing: condensing.likely,
    returnGas: returnGas.likely,
    liquid: liquid.likely,
  };
}

function ratingLabel(at: RatedAt): string {
  return at.kind === 'named' ? ratingPoint(at.point).title : 'Rating at its own temperatures';
}

/**
 * Running current and power at the rating point of the application over what the plate says: from memory, own judgement. Plates
 * state the most a machine should take for long, or what it takes at its rating point.
 */
const plateShares = {
  current: { low: 0.55, likely: 0.8, high: 1.1 },
  power: { low: 0.6, likely: 0.85, high: 1.15 },
} as const;

/** Says why the values beside it are not those of the plate. */
const plateLabel = `Running, usually ${inPercent(plateShares.current)} of the current and ${inPercent(plateShares.power)} of the power on its plate`;

function inPercent({ likely }: { readonly likely: number }): string {
  return `${Math.round(100 * likely)} %`;
}

function plateEvidence({ nameplate }: DescribedCompressor, application: ApplicationName): Evidence {
  const { ratedCurrent, power } = nameplate;
  const given = givenOf({
    current: ratedCurrent && timesShare(ratedCurrent, plateShares.current),
    power: power && timesShare(power, plateShares.power),
  });
  if (Object.keys(given).length === 0) return { points: [], series: [] };
  return {
    points: [
      {
        path: `${path}.nameplate.running`,
        label: plateLabel,
        ...usualRating(application),
        surroundings: calorimeterSurroundings,
        supply: supplyOf(nameplate),
        given,
        isSupposed: true,
      },
    ],
    series: [],
  };
}

function timesShare(
  { low, likely, high }: Estimate,
  share: { readonly low: number; readonly likely: number; readonly high: number },
): Estimate {
  return { low: low * share.low, likely: likely * share.likely, high: high * share.high, origin: 'inferred' };
}

function givenOf(values: Readonly<Partial<Record<EvidenceQuantity, Estimate | undefined>>>): EvidencePoint['given'] {
  return Object.fromEntries(Object.entries(values).filter(([, estimate]) => estimate !== undefined));
}
