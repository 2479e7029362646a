// The brief as data and as HTML: what stands in it, in both views; what is withheld; what people wrote stays text.

import { describe, expect, test } from 'vitest';
import { briefBody, briefHtml, longestContact } from '../../src/brief/index.ts';
import { caution } from '../../src/cautions/index.ts';
import { InputError } from '../../src/numerics/index.ts';
import { sayBand, sayQuantity } from '../../src/quantities/index.ts';
import { readSvg } from '../charts/svg-reading.ts';
import { changedDesign, demoTexts } from '../designs.ts';
import { assessed, briefOf, date, wordsOf } from './briefs.ts';

const propane = demoTexts['propane-in-the-cabinet.json']!;
const reef = demoTexts['reef-in-the-study.json']!;

describe.each(Object.entries(demoTexts))('%s', (_file, text) => {
  test.each(['metric', 'us'] as const)('tells what the assessment says, in the %s view', (view) => {
    const document = briefOf(text, view);
    const { assessment } = assessed(text, view);
    const html = briefHtml(document);
    const words = wordsOf(html);
    const said = (value: string) => value.replace(/[\u00a0\u202f]/g, ' ');
    for (const expected of [
      assessment.designName,
      assessment.sentence,
      caution,
      sayBand(assessment.tankLoad, 'power', view),
      sayBand(assessment.heatDelivered, 'power', view),
      sayBand(assessment.operating.evaporatingTemperature, 'temperature', view),
      sayBand(assessment.operating.condensingTemperature, 'temperature', view),
      sayQuantity(assessment.operating.sourceTemperature, 'temperature', view),
      date,
    ]) {
      expect(words).toContain(said(expected));
    }
    expect(html).not.toMatch(/NaN|undefined|\[object|null/);
    // What is never said of a machine of one's own.
    expect(words).not.toMatch(/\bsafe\b|\bsafely\b|\bapproved\b|\bcompliant\b/i);
    expect(words).not.toMatch(/\.\.(?!\.)|,,|\?[.;]/);
    expect(view === 'us' ? /°C|kJ\/kg|\bbar\b/.test(words) : /°F|BTU|psi/.test(words)).toBe(false);
  });

  test('the state table holds gauge and absolute pressures one atmosphere apart', () => {
    const { assessment } = assessed(text, 'metric');
    const { columns, rows } = briefOf(text).states;
    const place = columns.findIndex(({ label }) => label === 'Pressure, absolute');
    expect(columns[place + 1]?.label).toBe('Pressure, gauge');
    expect(rows.length).toBe(assessment.operating.points.length);
    for (const row of rows) {
      const apart = Number(row[place]) - Number(row[place + 1]!.replace('−', '-'));
      // Both are rounded to the decimals of the absolute one.
      expect(Math.abs(apart - assessment.operating.atmosphericPressure.likely / 1e5)).toBeLessThan(0.011);
      expect(row.length).toBe(columns.length);
    }
  });

  test('the operating range begins in the coldest spell, at the temperatures of the operating point', () => {
    const { assessment } = assessed(text, 'metric');
    const [spell] = assessment.operatingRange;
    expect(spell?.when).toBe('coldestSpell');
    expect(spell?.evaporatingTemperature).toBeCloseTo(assessment.operating.evaporatingTemperature.likely, 9);
    expect(spell?.condensingPressure).toBeCloseTo(assessment.operating.condensingPressure.likely, 6);
    const { columns, rows } = briefOf(text).operatingRange;
    expect(columns.length).toBe(1 + assessment.operatingRange.length);
    for (const row of rows) expect(row.length).toBe(columns.length);
  });

  test('every finding to stop at or to look at is named, and the others are counted', () => {
    const { assessment } = assessed(text, 'metric');
    const { shown, alsoLookAt, noted } = briefOf(text).findings;
    const all = [...assessment.findings, ...assessment.cautions];
    expect(shown.length + alsoLookAt.length).toBe(all.filter(({ severity }) => severity !== 'note').length);
    expect(noted.length).toBe(all.filter(({ severity }) => severity === 'note').length);
    const stops = all.filter(({ severity }) => severity === 'stop').map(({ code }) => code);
    expect(shown.map(({ code }) => code)).toEqual(expect.arrayContaining(stops));
    const order = shown.map(({ severity }) => severity);
    expect(order).toEqual([...order].sort((a, b) => (a === b ? 0 : a === 'stop' ? -1 : 1)));
  });
});

test('the answer not to build: nothing is asked to be built, with every reason', () => {
  const { asked, standing, forStudyOnly, findings } = briefOf(propane);
  expect(standing).toBe('doNotBuild');
  expect(asked.text).toMatch(/^Nothing is asked to be built\./);
  const stops = findings.shown.filter(({ severity }) => severity === 'stop').map(({ title }) => title);
  expect([...asked.reasons].sort()).toEqual([...stops].sort());
  expect(forStudyOnly).toMatch(/^Not for this machine\./);
  const html = briefHtml(briefOf(propane));
  expect(html.indexOf('Not for this machine')).toBeLessThan(html.indexOf('Nothing is asked to be built'));
  expect(html.indexOf('Nothing is asked to be built')).toBeLessThan(html.indexOf('The duty'));
});

test('a standing is never calmer than what was found', () => {
  const document = briefOf(reef);
  const looks = document.findings.shown.length + document.findings.alsoLookAt.length;
  expect(document.standing).toBe('carriesLoad');
  expect(looks).toBeGreaterThan(0);
  expect(wordsOf(briefHtml(document))).toContain(`Carries the load, with ${looks} to look at.`);
});

test('a design that may be judged asks for a judgement, never for work', () => {
  const { asked, forStudyOnly } = briefOf(reef);
  expect(asked.text).toContain('asks you, as a licensed technician, to judge whether');
  expect(asked.text).toContain('nothing is to be opened, filled or built');
  expect(asked.reasons).toEqual([]);
  expect(asked.questions.length).toBeGreaterThan(3);
  expect(forStudyOnly).toBeNull();
});

describe('the charge', () => {
  test('is withheld where the answer is not to build, in every form', () => {
    // The demo gives 90 to 130 g; none of these figures may be read anywhere.
    const design = changedDesign(propane, { 'machine.charge': '91.7 to 133.3 g' });
    for (const view of ['metric', 'us'] as const) {
      const document = briefOf(design, view);
      expect(document.standing).toBe('doNotBuild');
      expect(document.parts.find(({ path }) => path === 'machine.charge')?.value).toBe('withheld');
      for (const form of [JSON.stringify(document), briefHtml(document)]) {
        // 91.7 g and 133.3 g are 3.23 oz and 4.70 oz.
        expect(form).not.toMatch(
          /\b9[12](\.\d)?[\s\u00a0]g\b|\b13[03](\.\d)?[\s\u00a0]g\b|3\.2\d?[\s\u00a0]oz|4\.7\d?[\s\u00a0]oz/,
        );
      }
    }
  });

  test('is only a rough figure to hold against limits elsewhere', () => {
    const value = (charge: string) =>
      briefOf(changedDesign(reef, { 'machine.charge': charge })).parts.find(({ path }) => path === 'machine.charge')
        ?.value;
    expect(value('160 g')?.replace(/\u00a0/g, ' ')).toBe('about 160 g, to hold against limits');
    expect(value('150 to 170 g')?.replace(/\u00a0/g, ' ')).toBe('about 160 g (150 to 170), to hold against limits');
  });
});

test('no length of a capillary is named', () => {
  for (const text of Object.values(demoTexts)) {
    expect(wordsOf(briefHtml(briefOf(text)))).not.toMatch(/capillar[^.]*\d+[\s\u00a0]?(mm|m|in|ft)\b/);
  }
});

test('what nobody knows is asked: every field that is unknown, metering, the compressor’s condition', () => {
  const design = changedDesign(reef, {
    'safeguards.residualCurrentProtection': undefined,
    'exchangers.wettedMetal': 'unknown',
  });
  const { openQuestions, parts } = briefOf(design);
  expect(openQuestions).toEqual(expect.arrayContaining(['Residual-current protection', 'What touches the tank water']));
  expect(openQuestions.join(' ')).toContain('What meters the refrigerant');
  expect(parts.map(({ path }) => path)).not.toContain('exchangers.wettedMetal');
});

test('what was given is told apart from what is assumed, and prices are left out', () => {
  const document = briefOf(reef);
  expect(document.parts.find(({ path }) => path === 'power.fan')).toMatchObject({ origin: 'typed' });
  expect(document.parts.find(({ path }) => path === 'machine.compressor.displacement')).toMatchObject({
    origin: 'assumed',
  });
  expect(document.given.every(({ origin }) => origin === 'typed')).toBe(true);
  expect(document.given.find(({ path }) => path === 'tank.load.energy')?.value).toContain('96');
  expect(JSON.stringify([document.given, document.parts])).not.toMatch(/EUR|kWh\/|price/i);
});

test('the assumptions that matter most come first, and all are counted', () => {
  const { assumptions } = briefOf(reef);
  const shares = assumptions.shown.map(({ share }) => Number(share.replace(/[^\d.]/g, '')));
  expect(shares.length).toBeGreaterThan(2);
  expect(shares).toEqual([...shares].sort((a, b) => b - a));
  const { assessment } = assessed(reef, 'metric');
  expect(assumptions.rest).toMatch(new RegExp(`^${assessment.assumptions.length - shares.length} more values`));
});

describe('as HTML', () => {
  const odd = '<img src=x onerror=alert(1)> & "quoted" \u0000';

  test('what people wrote is text', () => {
    const document = briefOf(
      changedDesign(reef, { name: odd.replace('\u0000', '') }),
      'metric',
      `${odd}\n<script>x</script>`,
    );
    const html = briefHtml(document);
    expect(html).not.toMatch(/<img|<script/);
    expect(html).not.toContain('\u0000');
    expect(wordsOf(html)).toContain('<img src=x onerror=alert(1)> & "quoted"');
    expect(html).toContain('&lt;script&gt;');
  });

  test('one complete file: no script, nothing from outside, a policy that allows neither', () => {
    const html = briefHtml(briefOf(reef));
    expect(html).toMatch(/^<!doctype html>\n<html lang="en">/);
    expect(html).toContain(`content="default-src 'none'; style-src 'unsafe-inline'; img-src data:"`);
    expect(html).not.toMatch(/<script|javascript:|\son\w+=|<link|<iframe|@import|url\(/i);
    // The one address is the name of the SVG language.
    expect(html.match(/https?:[^"]*/g)).toEqual(['http://www.w3.org/2000/svg']);
    expect(html).not.toContain('Asked by');
  });

  test('the pages nest, and can stand under the headings of another page', () => {
    const body = briefBody(briefOf(reef), 3);
    expect(body).toMatch(/<h3>Reef tank/);
    expect(body).toMatch(/<h4>1\. What is asked<\/h4>/);
    const [svg] = /<svg[\s\S]*<\/svg>/.exec(body) ?? [''];
    expect(readSvg(svg).words.length).toBeGreaterThan(20);
    const withoutBreaks = body.replace(/<br>/g, '').replace(/ style="[^"]*"/g, '');
    expect(() => readSvg(withoutBreaks.replace(/<(\/?)h\d>/g, '<$1heading>'))).not.toThrow();
  });
});

test.each([
  ['a date in another form', { date: '14.3.2031' }],
  ['a contact as long as a letter', { date, contact: 'x'.repeat(longestContact + 1) }],
])('%s is refused', async (_name, rest) => {
  const { brief } = await import('../../src/brief/index.ts');
  expect(() => brief({ ...assessed(reef, 'metric'), view: 'metric', ...rest })).toThrow(InputError);
});
