// The pages of the workbench, in order, and the addresses they are reached at: stations ask a question of the design,
// papers are what a person takes away. An address is '#page' or '#page/part'.

export const stationNames = ['what-leaves', 'what-to-wrap', 'the-machine', 'where-it-settles', 'two-bills'] as const;
export const paperNames = ['side-by-side', 'cycle-alone', 'working', 'cautions', 'brief'] as const;

export type StationName = (typeof stationNames)[number];
export type PaperName = (typeof paperNames)[number];
export type PageName = StationName | PaperName;

export const pageTitles: Readonly<Record<PageName, string>> = {
  'what-leaves': 'What leaves',
  'what-to-wrap': 'What to wrap',
  'the-machine': 'The machine',
  'where-it-settles': 'Where it settles',
  'two-bills': 'Two bills',
  'side-by-side': 'Side by side',
  'cycle-alone': 'Cycle alone',
  working: 'Working',
  cautions: 'Cautions',
  brief: 'Brief',
};

/** Opened first: the operating point with its picture. */
export const firstPage: PageName = 'where-it-settles';

export function isStation(page: PageName): page is StationName {
  return (stationNames as readonly PageName[]).includes(page);
}

/** A page and, where the address goes on after a slash, the part of it that is meant: a result, a field, a heading. */
export interface Place {
  readonly page: PageName;
  readonly part: string | undefined;
}

export function placeOfAddress(hash: string): Place | undefined {
  const [name = '', ...rest] = hash.replace(/^#\/?/, '').split('/');
  const page = [...stationNames, ...paperNames].find((each) => each === name);
  if (page === undefined) return undefined;
  const part = decodedPart(rest.join('/'));
  return { page, part: part === '' ? undefined : part };
}

export function addressOf({ page, part }: Place): string {
  return part === undefined ? `#${page}` : `#${page}/${encodeURIComponent(part)}`;
}

/** Whether an address is that of a design, or began as one: see links/design-link.ts. */
export function isDesignLink(hash: string): boolean {
  return /^#for-study|(#|&|%26)design(=|%3d)/i.test(hash);
}

/** An address that was cut short or typed may hold a broken escape. */
function decodedPart(text: string): string {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
}
