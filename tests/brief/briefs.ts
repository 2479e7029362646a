// Briefs of designs, for the tests of what stands in them.

import { assessDesign } from '../../src/assess/index.ts';
import { type BriefDocument, brief } from '../../src/brief/index.ts';
import { parseDesign } from '../../src/design/index.ts';
import type { UnitView } from '../../src/quantities/index.ts';

export const date = '2031-03-14';

const known = new Map<string, ReturnType<typeof assess>>();

/** Each design is assessed once in each view. */
export function assessed(text: string, view: UnitView) {
  const key = `${view} ${text}`;
  const answer = known.get(key) ?? assess(text, view);
  known.set(key, answer);
  return answer;
}

function assess(text: string, view: UnitView) {
  const parsed = parseDesign(text);
  const outcome = assessDesign(text, view);
  if (!parsed.ok || !outcome.ok) throw new Error(`no answer: ${JSON.stringify([parsed, outcome]).slice(0, 500)}`);
  return { assessment: outcome.assessment, design: parsed.document };
}

export function briefOf(text: string, view: UnitView = 'metric', contact?: string): BriefDocument {
  return brief({ ...assessed(text, view), view, date, ...(contact === undefined ? {} : { contact }) });
}

/** The words of an HTML text, without tags, styles and the blanks between. */
export function wordsOf(html: string): string {
  return html
    .replace(/<style>[\s\S]*?<\/style>/g, ' ')
    .replace(/<[^>]*>/g, ' ')
    .replace(/&lt;/g, '<')
    .replace(/&gt;/g, '>')
    .replace(/&quot;/g, '"')
    .replace(/&#39;/g, "'")
    .replace(/&amp;/g, '&')
    .replace(/[\s\u00a0\u202f]+/g, ' ');
}
