// Gathers every formula record of the engine and writes one page of theory per folder. Bundled and run by make.mjs;
// the tests call it to see that the pages are those of the present code.

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
  readonly text: string;
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
    pages.push({ name: `${folder.replace('/', '-')}.md`, title, text: page(title, folder, formulas) });
  }
  return pages;
}

function page(title: string, folder: string, formulas: readonly Formula[]): string {
  const opening = `Every formula of [src/${folder}](../../src/${folder}), as the engine computes it. Base SI throughout. Written by \`npm run documents\` from the formula records beside the functions; a test evaluates each expression and compares it with its function.`;
  return `${[`# ${title}`, opening, ...formulas.map(section)].join('\n\n')}\n`;
}

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
