// Gathers every formula record of the engine for the pages of theory, one per folder: what people wrote stays above a
// marker, the formulas follow below it. Bundled and run by make.mjs; the tests call it to see that no page is stale.

import type { Formula } from '../../src/quantities/index.ts';

const indexes = import.meta.glob<Record<string, unknown>>(
  ['../../src/*/index.ts', '../../src/{matter,parts}/*/index.ts', '!../../src/{app,cli,assess,design}/index.ts'],
  { eager: true },
);

/** Words at the head of a page. */
const subjects: Readonly<Record<string, string>> = {
  'matter/refrigerants': 'Refrigerants',
  'matter/air': 'Moist air',
  'matter/water': 'Water',
  'matter/materials': 'Materials',
  surroundings: 'Surroundings',
  tank: 'What leaves the tank',
  'parts/compressor': 'The compressor',
  'parts/exchangers': 'Evaporator and condenser',
  loop: 'The loop',
  plant: 'Tank, room and loop together',
  year: 'A year',
  accounts: 'The accounts',
  cautions: 'Cautions',
};

export interface TheoryPage {
  /** 'tank.md'. */
  readonly name: string;
  readonly title: string;
  /** The formulas, one section each. */
  readonly formulas: string;
  /** What stands above the marker on a page nobody has written yet. */
  readonly opening: string;
}

const marker =
  '<!-- Formulas: everything below is written by `npm run documents` from the formula records; edit above only. -->';

/** The page with its formulas renewed; what stands above the marker is kept to the letter. */
export function theoryText(page: TheoryPage, present: string | undefined): string {
  const written = present?.includes(marker) ? present.slice(0, present.indexOf(marker)) : page.opening;
  return `${written}${marker}\n\n${page.formulas}\n`;
}

export function theoryPages(): readonly TheoryPage[] {
  const seen = new Set<Formula>();
  const pages: TheoryPage[] = [];
  const byDepth = Object.entries(indexes).sort(
    ([a], [b]) => b.split('/').length - a.split('/').length || (a < b ? -1 : 1),
  );
  for (const [path, module] of byDepth) {
    const folder = path.replace('../../src/', '').replace('/index.ts', '');
    const formulas = Object.entries(module)
      .filter(([name, value]) => /formulas$/i.test(name) && Array.isArray(value))
      .flatMap(([, value]) => value as readonly Formula[])
      .filter((formula) => !seen.has(formula));
    for (const formula of formulas) seen.add(formula);
    if (formulas.length === 0) continue;
    const title = subjects[folder] ?? folder;
    pages.push({
      name: `${pageName(folder)}.md`,
      title,
      formulas: formulas.map(section).join('\n\n'),
      opening: `# ${title}\n\nEvery formula of [src/${folder}](../../src/${folder}), as the engine computes it. Base SI throughout.\n\n`,
    });
  }
  return pages;
}

/** What a kind of matter is called says enough; a part of the loop is named with its folder. */
function pageName(folder: string): string {
  return folder.replace('matter/', '').replace('/', '-');
}

/** One formula as a section. */
function section({ id, title, result, expression, symbols, validity, source, file }: Formula): string {
  const rows = Object.entries(symbols).map(
    ([symbol, { meaning, unit }]) => `| ${symbol} | ${cell(meaning)} | ${cell(unit)} |`,
  );
  return [
    `## ${title}`,
    `\`\`\`text\n${result.symbol} = ${expression}\n\`\`\``,
    `| symbol | stands for | unit |\n| --- | --- | --- |\n| **${result.symbol}** | ${cell(result.meaning)} | ${cell(result.unit)} |\n${rows.join('\n')}`,
    `- Holds for: ${validity}\n- Source: ${source}\n- Computed in [${file}](../../${file}), formula \`${id}\``,
  ].join('\n\n');
}

function cell(text: string): string {
  return text.replaceAll('|', '\\|');
}
