// Named conditions under which makers state capacity and power. The liquid temperature alone is worth a fifth of the
// capacity, so only points whose four temperatures are confirmed may identify a machine; the others, and the variants that older
// or single sheets use under the same name, are named as unsure.

import shipped from '../../../data/rating-points.json';
import { DataError, InputError } from '../../numerics/index.ts';
import { type Application, applications } from './data.ts';

/** The four temperatures [K] without which a capacity means nothing: dew, dew, gas at the inlet, liquid before the valve. */
export interface RatingConditions {
  readonly evaporating: number;
  readonly condensing: number;
  readonly returnGas: number;
  readonly liquid: number;
}

/** A named point. Gas and liquid are null where editions and sheets differ. */
export interface RatingPoint {
  readonly name: string;
  readonly title: string;
  readonly application: Application;
  /** [K], dew. */
  readonly evaporating: number;
  readonly condensing: number;
  readonly returnGas: number | null;
  readonly liquid: number | null;
  readonly confirmed: boolean;
  /** What is confirmed and what is not, in words. */
  readonly status: string;
  /** Name of the point that other sheets use under the same title. */
  readonly variantOf?: string;
}

/** The file's form; tests hand over broken copies. */
export type RatingPointFile = typeof shipped;

const fileName = 'data/rating-points.json';

/** The file as checked records. @throws DataError that names the place and the rule it breaks. */
export function readRatingPoints(file: RatingPointFile): readonly RatingPoint[] {
  const names = file.points.map(({ name }) => name);
  return file.points.map((raw, index) => {
    const path = `points.${index}`;
    const application = applications.find((one) => one === raw.application);
    if (application === undefined) throw new DataError(fileName, `${path}.application`, 'is low, medium or high');
    if (names.indexOf(raw.name) !== index) throw new DataError(fileName, path, `"${raw.name}" stands twice`);
    if (raw.variantOf !== undefined && !names.includes(raw.variantOf)) {
      throw new DataError(fileName, `${path}.variantOf`, `"${raw.variantOf}" does not exist`);
    }
    const { evaporating, condensing, returnGas, liquid, confirmed } = raw;
    const isOrdered = evaporating > 0 && evaporating < condensing && (liquid ?? condensing) <= condensing;
    if (!isOrdered || (returnGas ?? evaporating) < evaporating) {
      throw new DataError(fileName, path, 'needs evaporating below condensing, gas not below, liquid not above them');
    }
    if (confirmed && (returnGas === null || liquid === null)) {
      throw new DataError(fileName, path, 'cannot be confirmed while its gas or liquid is not known');
    }
    return { ...raw, application };
  });
}

/** All points, confirmed or not. */
export const ratingPoints: readonly RatingPoint[] = readRatingPoints(shipped);

/** Names of the confirmed points: the only ones that a name alone is enough for. */
export const ratingPointNames: readonly string[] = ratingPoints
  .filter(({ confirmed }) => confirmed)
  .map(({ name }) => name);

/** The point of that name, confirmed or not. @throws InputError 'unknownRatingPoint' that lists the confirmed names. */
export function ratingPoint(name: string): RatingPoint {
  const found = ratingPoints.find((record) => record.name === name);
  if (found === undefined) {
    throw new InputError('ratingPoint', name, `one of ${ratingPointNames.join(', ')}`, 'unknownRatingPoint');
  }
  return found;
}

/** The points that sheets may mean where they print this one's title: itself and its variants. */
export function ratingPointVariants(name: string): readonly RatingPoint[] {
  const { variantOf = name } = ratingPoint(name);
  return ratingPoints.filter((point) => point.name === variantOf || point.variantOf === variantOf);
}

/**
 * The four temperatures of a confirmed point.
 * @throws InputError 'unsureRatingPoint' with the reason, where the conditions behind the name are not confirmed: give
 *         the four temperatures printed on the sheet instead.
 */
export function ratingConditions(name: string): RatingConditions {
  const { evaporating, condensing, returnGas, liquid, confirmed, status } = ratingPoint(name);
  if (!confirmed || returnGas === null || liquid === null) {
    throw new InputError(
      'ratingPoint',
      name,
      `a confirmed rating point (${ratingPointNames.join(', ')}), or the four temperatures of the sheet; ${status}`,
      'unsureRatingPoint',
    );
  }
  return { evaporating, condensing, returnGas, liquid };
}
