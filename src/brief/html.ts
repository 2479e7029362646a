// The brief as HTML: its pages, and one complete file around them. Everything a person wrote is escaped; there is no script,
// and the file's own policy forbids one. The workbench shows the same pages.

import { type ChartTable, chartSvg, escapeMarkup } from '../charts/index.ts';
import type { BriefAssumption, BriefDocument, BriefFinding, BriefInput, BriefValue } from './document.ts';
import { briefStyles } from './styles.ts';

/** Nothing is loaded and nothing runs; only the file's own styles and pictures that stand in it. */
const policy = "default-src 'none'; style-src 'unsafe-inline'; img-src data:";

/** One complete HTML file: no script, its own styles, to be printed on A4 or Letter. */
export function briefHtml(document: BriefDocument): string {
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policy}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="referrer" content="no-referrer">
<title>Brief: ${escapeMarkup(document.designName)}</title>
<style>
${briefStyles}
</style>
</head>
<body>
${briefBody(document, 1)}
</body>
</html>
`;
}

/**
 * The pages alone, for showing them inside another page.
 * @param document  what stands on them
 * @param level     of their first heading, 1 to 4; those under it follow
 */
export function briefBody(document: BriefDocument, level: number): string {
  const write = new Writer(level);
  const { contact, date, refrigerant, designName } = document;
  const asks = contact === null ? '' : `<p class="contact">Asked by: ${lines(contact)}</p>`;
  const tag = level === 1 ? 'main' : 'div';
  return `<${tag} class="brief">
<div class="brief-pages">
<header>
<p class="kind">Brief for a licensed refrigeration technician</p>
${write.heading(0, designName)}
<p class="facts">${escapeMarkup(date)} · ${escapeMarkup(refrigerant)} · made with Kettlefin from a description; nothing here was checked on the machine</p>
${asks}
</header>
<p class="caution"><strong>Caution.</strong> ${escapeMarkup(document.caution)}</p>
${document.forStudyOnly === null ? '' : `<p class="study"><strong>For study only.</strong> ${escapeMarkup(document.forStudyOnly)}</p>`}
${sections(document, write)}
</div>
<footer class="brief-foot"><p>${escapeMarkup(document.caution)}</p><p class="of">${escapeMarkup(designName)}, ${escapeMarkup(date)}</p></footer>
</${tag}>`;
}

function sections(document: BriefDocument, write: Writer): string {
  const { asked, findings } = document;
  return [
    write.section('What is asked', [
      paragraph(asked.text),
      asked.reasons.length === 0 ? '' : list('ul', asked.reasons, 'reasons'),
      list('ol', asked.questions, 'questions'),
    ]),
    write.section('The duty in the coldest spell', [
      `<p class="standing standing-${document.standing}"><strong>${escapeMarkup(standing(document))}.</strong> ${escapeMarkup(document.sentence)}</p>`,
      values(document.duty),
    ]),
    write.section('States of the refrigerant in the coldest spell', [table(document.states)]),
    write.section('Limits and operating range', [
      limits(document.limits),
      `<div class="figure"${scrollable(document.diagram.title)}>${chartSvg(document.diagram, { width: 720, height: 340 })}</div>`,
      table(document.operatingRange),
    ]),
    write.section('Parts as described', [
      inputs(document.parts),
      ...document.impliedSizes.map((size) => paragraph(size, 'small')),
    ]),
    write.section('Open questions', [
      paragraph('The design does not say, and nothing here rests on it being well:'),
      list('ul', document.openQuestions, 'open'),
    ]),
    write.section('Findings', [
      findings.shown.length === 0
        ? paragraph('The rules that were applied found nothing to stop at or to look at. That is not an approval.')
        : findings.shown.map(finding).join('\n'),
      alsoLookAt(findings.alsoLookAt),
      noted(findings.noted),
    ]),
    write.section('What was given of room, tank and source', [inputs(document.given)]),
    write.section('What is assumed', [
      document.assumptions.shown.length === 0 ? '' : assumptionTable(document.assumptions.shown),
      paragraph(document.assumptions.rest, 'small'),
    ]),
  ].join('\n');
}

/** A standing is never calmer than what was found: what is to be looked at goes with it. */
function standing({ standingTitle, standing: name, findings }: BriefDocument): string {
  const looks = findings.shown.filter(({ severity }) => severity === 'look').length + findings.alsoLookAt.length;
  return name === 'carriesLoad' && looks > 0 ? `${standingTitle}, with ${looks} to look at` : standingTitle;
}

/** Headings under the level the pages begin with; sections are numbered in their order. */
class Writer {
  readonly #level: number;
  #number = 0;

  constructor(level: number) {
    this.#level = level;
  }

  heading(below: number, text: string): string {
    const tag = `h${this.#level + below}`;
    return `<${tag}>${escapeMarkup(text)}</${tag}>`;
  }

  section(title: string, parts: readonly string[]): string {
    this.#number += 1;
    return `<section>\n${this.heading(1, `${this.#number}. ${title}`)}\n${parts.filter((part) => part !== '').join('\n')}\n</section>`;
  }
}

function paragraph(text: string, name?: string): string {
  return `<p${name === undefined ? '' : ` class="${name}"`}>${escapeMarkup(text)}</p>`;
}

function lines(text: string): string {
  return text.split(/\r?\n/).map(escapeMarkup).join('<br>');
}

function list(tag: 'ul' | 'ol', items: readonly string[], name: string): string {
  return `<${tag} class="${name}">${items.map((item) => `<li>${escapeMarkup(item)}</li>`).join('')}</${tag}>`;
}

function values(rows: readonly BriefValue[]): string {
  const items = rows.map(({ label, value }) => item(label, escapeMarkup(value)));
  return `<dl class="values">${items.join('')}</dl>`;
}

function inputs(rows: readonly BriefInput[]): string {
  const items = rows.map(({ label, value, origin }) => {
    const mark = origin === 'typed' ? '' : ` <small>${originWords[origin]}</small>`;
    return item(label.endsWith('?') ? label : `${label}:`, `${escapeMarkup(value)}${mark}`);
  });
  const isMixed = rows.some(({ origin }) => origin !== 'typed');
  const legend = isMixed ? paragraph('What is not marked was given by the person.', 'small') : '';
  return `<dl class="inputs">${items.join('')}</dl>${legend}`;
}

const originWords: Readonly<Record<BriefInput['origin'], string>> = {
  typed: 'given',
  nameplate: 'rating plate',
  measured: 'measured',
  assumed: 'assumed',
  inferred: 'inferred',
};

function item(label: string, value: string): string {
  return `<div><dt>${escapeMarkup(label)}</dt> <dd>${value}</dd></div>`;
}

/** What to do stands with what stops the design; the rest the technician judges. */
function finding({ severity, title, text, remedy }: BriefFinding): string {
  const cure = severity === 'stop' ? ` <em>${escapeMarkup(remedy)}</em>` : '';
  return `<p class="finding ${severity}"><b class="severity">${severityWords[severity]}</b> <strong>${escapeMarkup(ended(title))}</strong> ${escapeMarkup(text)}${cure}</p>`;
}

const severityWords: Readonly<Record<BriefFinding['severity'], string>> = { stop: 'Stop', look: 'Look', note: 'Note' };

function alsoLookAt(titles: readonly string[]): string {
  return titles.length === 0 ? '' : paragraph(`Also to look at: ${titles.join(' · ')}`);
}

/** Titles of what is only worth knowing that are named; the others are counted. */
const mostNoted = 8;

function noted(titles: readonly string[]): string {
  if (titles.length === 0) return '';
  const count = titles.length === 1 ? 'One finding is' : `${titles.length} findings are`;
  const more = titles.length - mostNoted;
  const rest = more > 0 ? ` · and ${more} more` : '';
  return paragraph(`${count} only worth knowing: ${titles.slice(0, mostNoted).join(' · ')}${rest}`, 'small');
}

function ended(text: string): string {
  return /[.?!]$/.test(text) ? text : `${text}.`;
}

/** A table of few rows, each as one entry: what is usual, where the machine is, how far that is apart. */
function limits({ caption, rows }: ChartTable): string {
  const items = rows.map(([label = '', usual = '', here = '', margin = '']) =>
    item(label, escapeMarkup(`${usual}, here ${here}, ${margin}`)),
  );
  return `${paragraph(caption, 'small')}<dl class="values">${items.join('')}</dl>`;
}

function assumptionTable(rows: readonly BriefAssumption[]): string {
  return table({
    caption: 'Assumed values that matter most, with the share of the doubt about the verdict that each alone explains.',
    columns: [{ label: 'Assumed' }, { label: 'Value' }, { label: 'Share', numeric: true }],
    rows: rows.map(({ label, value, share }) => [label, value, share]),
  });
}

function table({ caption, columns, rows }: ChartTable): string {
  const heads = columns.map(({ label, unit, numeric }) => {
    const words =
      unit === undefined || unit === ''
        ? escapeMarkup(label)
        : `${escapeMarkup(label)}<br><small>${escapeMarkup(unit)}</small>`;
    return label === '' ? '<td></td>' : `<th scope="col"${classOf(numeric)}>${words}</th>`;
  });
  const body = rows.map((row) => {
    const cells = row.map((cell, index) => {
      const words = escapeMarkup(cell);
      return index === 0 ? `<th scope="row">${words}</th>` : `<td${classOf(columns[index]?.numeric)}>${words}</td>`;
    });
    return `<tr>${cells.join('')}</tr>`;
  });
  return `<div class="wide"${scrollable(caption)}><table>\n<caption>${escapeMarkup(caption)}</caption>\n<thead><tr>${heads.join('')}</tr></thead>\n<tbody>\n${body.join('\n')}\n</tbody>\n</table></div>`;
}

/** What is wider than a small screen scrolls, by keyboard too, and has a name to be found by. */
function scrollable(name: string): string {
  return ` tabindex="0" role="region" aria-label="${escapeMarkup(name)}"`;
}

function classOf(numeric: boolean | undefined): string {
  return numeric ? ' class="number"' : '';
}
