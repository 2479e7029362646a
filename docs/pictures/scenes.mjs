// What each picture of the documents shows: the page it is taken of, what a person does there before, and which part of the
// page is kept.

/**
 * @typedef {import('playwright-core').Page} Page
 * @typedef {{
 *   name: string,
 *   address?: string,
 *   width?: number,
 *   height?: number,
 *   colorScheme?: 'light' | 'dark',
 *   act?: (page: Page) => Promise<void>,
 *   part?: string,
 *   from?: string,
 * }} Scene
 * `address` follows the workbench's own; `part` is the selector of the one element kept; with `from` the picture is the
 * window, scrolled so that this element stands at its top.
 */

/** @type {readonly Scene[]} */
export const scenes = [
  { name: 'workbench', width: 1280, height: 1900 },
  { name: 'workbench-dark', height: 900, width: 1280, colorScheme: 'dark' },
  { name: 'workbench-phone', width: 390, height: 844 },
  { name: 'walk-experimenter-questions', act: openQuestions, part: 'dialog' },
  { name: 'walk-experimenter-verdict', act: ownTank, height: 860 },
  { name: 'walk-experimenter-doubt', act: ownTank, from: '#what-matters-title' },
  { name: 'walk-experimenter-bills', act: thenOpen(ownTank, 'Two bills'), part: '.bills', width: 1440, height: 1200 },
  { name: 'walk-experimenter-cautions', act: thenOpen(ownTank, 'Cautions'), from: '#page-title' },
  { name: 'walk-experimenter-brief', act: thenOpen(ownTank, 'Brief'), from: '.brief-host' },
  { name: 'walk-student-cycle', address: '#cycle-alone', act: textbookProblem, from: '#page-title' },
  { name: 'walk-student-working', address: '#cycle-alone', act: handIn, from: '.hand-in math' },
  { name: 'walk-student-two', address: '#cycle-alone', act: secondCycle, part: '.chart' },
  { name: 'walk-builder-table', address: '#side-by-side', from: '.paper table', height: 1200 },
  { name: 'walk-builder-loops', address: '#side-by-side', act: drawn, part: '.chart', height: 1400 },
  { name: 'walk-builder-spaces', address: '#cautions', part: '[aria-labelledby="cautions-spaces-title"]' },
];

/** @param {Page} page */
async function openQuestions(page) {
  await page.getByRole('button', { name: 'Start my own' }).click();
  await answerTank(page);
}

/** @param {Page} page */
async function answerTank(page) {
  const dialog = page.getByRole('dialog');
  await dialog.getByRole('combobox').first().selectOption('rectangular');
  await give(dialog, [
    ['Length', '160 cm'],
    ['Width', '60 cm'],
    ['Height', '60 cm'],
  ]);
  await dialog.getByLabel('Panes made of').selectOption('glass');
  await give(dialog, [['Thickness of the panes', '12 mm']]);
}

/**
 * The seven questions, answered for an invented tank.
 * @param {Page} page
 */
async function ownTank(page) {
  await page.getByRole('button', { name: 'Start my own' }).click();
  const dialog = page.getByRole('dialog');
  const next = () => dialog.getByRole('button', { name: 'Next question' }).click();
  await answerTank(page);
  await next();
  await give(dialog, [['Water temperature', '25.5 °C']]);
  await dialog.getByRole('combobox').first().selectOption('sea');
  await next();
  await give(dialog, [['Room temperature', '20 °C']]);
  await next();
  await dialog.getByRole('combobox').first().selectOption('tight');
  await next();
  await dialog.getByRole('combobox').nth(0).selectOption('dehumidifier');
  await dialog.getByRole('combobox').nth(1).selectOption('R134a');
  await next();
  await give(dialog, [
    ['Currency', 'EUR'],
    ['Price of electricity', '0.34 EUR/kWh'],
  ]);
  await next();
  await give(dialog, [['Months the room is heated', '7']]);
  await dialog.getByRole('button', { name: 'Show me the verdict' }).click();
  await dialog.waitFor({ state: 'detached' });
  await page.waitForFunction(() => document.querySelector('.design-name')?.textContent?.includes('My tank'));
}

/**
 * @param {import('playwright-core').Locator} dialog
 * @param {readonly (readonly [string, string])[]} answers
 */
async function give(dialog, answers) {
  for (const [label, text] of answers)
    await dialog
      .getByRole('textbox', { name: new RegExp(label) })
      .first()
      .fill(text);
}

/**
 * @param {(page: Page) => Promise<void>} before
 * @param {string} title
 */
function thenOpen(before, title) {
  return async (/** @type {Page} */ page) => {
    await before(page);
    await page.getByRole('link', { name: title, exact: true }).click();
  };
}

/**
 * Example 11-2 of Çengel and Boles, Thermodynamics (from memory of the source).
 * @param {Page} page
 */
async function textbookProblem(page) {
  await page.locator('.number-item').first().waitFor();
  const instead = (/** @type {string} */ what) => page.getByRole('button', { name: `give the ${what} instead` });
  await instead('pressure').first().click();
  await instead('pressure').first().click();
  await instead('temperature').nth(2).click();
  await instead('temperature').last().click();
  await instead('discharge temperature').click();
  for (const [label, text] of [
    ['Evaporating pressure', '0.14 MPa'],
    ['Condensing pressure', '0.8 MPa'],
    ['Suction temperature', '-10 °C'],
    ['Liquid temperature', '26 °C'],
    ['Discharge temperature', '50 °C'],
  ]) {
    await fill(page, /** @type {string} */ (label), /** @type {string} */ (text));
  }
  await page.locator('summary', { hasText: 'I know more' }).click();
  await fill(page, 'Pressure at the condenser outlet', '0.72 MPa');
  await page.getByLabel('How much flows').selectOption('massFlow');
  await fill(page, 'Mass flow', '0.05 kg/s');
  await page.locator('summary', { hasText: 'I know more' }).click();
}

/**
 * @param {Page} page
 * @param {string} label
 * @param {string} text
 */
async function fill(page, label, text) {
  const field = page.getByRole('textbox', { name: label, exact: true });
  await field.fill(text);
  await field.press('Enter');
}

/** @param {Page} page */
async function handIn(page) {
  await textbookProblem(page);
  await page.getByRole('button', { name: 'Every step, to hand in' }).click();
  await page.waitForSelector('.hand-in math');
}

/** @param {Page} page */
async function secondCycle(page) {
  await page.locator('.number-item').first().waitFor();
  await page.getByRole('button', { name: 'lay a second cycle over it' }).click();
  await page.getByLabel('Refrigerant', { exact: true }).selectOption('R290');
  await drawn(page);
}

/** @param {Page} page */
async function drawn(page) {
  await page.locator('.chart-picture').first().scrollIntoViewIfNeeded();
  await page.waitForSelector('.chart-picture[data-state="drawn"]');
}
