// The brief for the paper of that name: its pages, their styles, and the file that holds both. Loaded when the paper is
// first opened.

import type { Assessment } from '../../assess/index.ts';
import { brief, briefBody, briefHtml, briefStyles } from '../../brief/index.ts';
import { parseDesign } from '../../design/index.ts';
import { InputError } from '../../numerics/index.ts';
import type { UnitView } from '../../quantities/index.ts';

export interface BriefForm {
  /** As the page shows it; made in the same view. */
  readonly assessment: Assessment;
  /** Text of the design that was assessed. */
  readonly text: string;
  /** Year, month and day. */
  readonly date: string;
  /** Who asks, as typed; may be empty. */
  readonly contact: string;
}

export interface BriefAnswer {
  /** The pages as HTML, to stand under a heading of level two. */
  readonly body: string;
  readonly styles: string;
  /** One complete HTML file. */
  readonly file: string;
}

/** @throws InputError for a text that is no design, or a contact that is too long */
export function answerBrief({ assessment, text, date, contact }: BriefForm, view: UnitView): BriefAnswer {
  const parsed = parseDesign(text);
  if (!parsed.ok) throw new InputError('design', text, 'the text of a design');
  const document = brief({ assessment, design: parsed.document, view, date, contact });
  return { body: briefBody(document, 3), styles: briefStyles, file: briefHtml(document) };
}
