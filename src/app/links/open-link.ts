// A link's text made into an open design, or into what a person should read about why it was not. Loaded when a link is
// opened.

import { type DesignDocument, type DesignNotice, parseDesign, sayProblem } from '../../design/index.ts';
import type { Notice } from '../state/workbench.ts';
import { type LinkFault, textOfLink } from './design-link.ts';

export type OpenedLink =
  | {
      readonly ok: true;
      readonly document: DesignDocument;
      readonly notices: readonly DesignNotice[];
    }
  | { readonly ok: false; readonly notice: Notice };

const sentences: Readonly<Record<LinkFault, string>> = {
  empty:
    'It carries no design. It may be cut off: copy it again from beginning to end, or ask for the design as a file.',
  changed:
    'It was cut off or changed on its way: what it carries does not add up. Copy it again from beginning to end, or ask for the design as a file.',
  newerLink:
    'It was made by a newer release of this program, or changed on its way. Ask for the design as a file, or copy the link again.',
  tooLong: 'It carries far more than a design, which has a few thousand characters. Ask for the design as a file.',
};

/** @param link  the whole address, or what follows from its '#' */
export async function openLink(link: string): Promise<OpenedLink> {
  const carried = await textOfLink(link);
  if (!carried.ok) return { ok: false, notice: refusal([{ path: undefined, message: sentences[carried.fault] }]) };
  const outcome = parseDesign(carried.text);
  if (outcome.ok) return outcome;
  return {
    ok: false,
    notice: refusal(outcome.problems.map((problem) => ({ path: problem.path, message: sayProblem(problem) }))),
  };
}

function refusal(problems: Notice['problems']): Notice {
  return { title: 'The link was not opened. The open design is unchanged.', problems };
}
