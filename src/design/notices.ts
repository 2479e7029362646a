// What a person should know of a document that is accepted all the same: it was of an older format, something of it could not
// be kept, its plate says what is unusual. As data with a path; and the sentence.

export type DesignNoticeCode =
  /** Of an older format version; saving writes the present one. */
  | 'olderFormat'
  /** A field without an equal in the present format: it is gone. */
  | 'leftOut'
  /** A field that stands elsewhere or says in other words now. */
  | 'readAs'
  /** Such appliances are not known to have been built for that fluid. */
  | 'unusualFluid'
  /** A fluid that was hardly sold in the year it was made. */
  | 'unusualYear'
  /** An oil that is not usual with the fluid it was made for. */
  | 'unusualOil'
  /** A name of size and a power that are hardly of one machine. */
  | 'horsepowerBesidePower'
  /** Built for one level of suction pressure and rated at another. */
  | 'applicationBesideRating';

export interface DesignNotice {
  readonly code: DesignNoticeCode;
  /** Where it stands, or stood, in the document. */
  readonly path: string;
  readonly received: string;
  /** What holds now, or what would be usual. */
  readonly now: string;
}

/** One sentence or two. */
export function sayNotice({ code, path, received, now }: DesignNotice): string {
  switch (code) {
    case 'olderFormat':
      return `The design was of format version ${received}. It was read as version ${now}, and saving writes version ${now}.`;
    case 'leftOut':
      return `${path}: "${received}" was left out: ${now}.`;
    case 'readAs':
      return `${path}: "${received}" is now ${now}.`;
    case 'unusualFluid':
      return `${path}: "${received}" is unusual: ${now}. The plate decides; look once more.`;
    case 'unusualOil':
      return `${path}: "${received}" is unusual: ${now}. It may have been changed; ask whoever serviced it.`;
    case 'horsepowerBesidePower':
      return `${path}: "${received}" ${now}. The name is never turned into watts; look at the plate once more.`;
    case 'applicationBesideRating':
      return `${path}: "${received}" ${now}. One of them is of another machine, or it was rated outside its use.`;
    case 'unusualYear':
      return `${path}: "${received}" is unusual: ${now}. Look at the plate once more.`;
  }
}
