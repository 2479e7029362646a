// `kettlefin brief`: a design file to the printed pages for a licensed technician, as one HTML file or as JSON.

import { assessDesign } from '../../assess/index.ts';
import { type BriefDocument, brief, briefHtml, longestContact } from '../../brief/index.ts';
import { parseDesign } from '../../design/index.ts';
import { InputError } from '../../numerics/index.ts';
import { oneFile, readArguments, unitView } from '../arguments.ts';
import type { Command } from '../command.ts';
import { exitCodes } from '../exit-codes.ts';
import { fileTitle } from '../input.ts';
import { standardOutput, writeNewFile } from '../output-file.ts';
import { refuse, withDesignText } from '../refusal.ts';
import { printable } from '../report/printable.ts';

export const briefCommand: Command = {
  name: 'brief',
  summary: 'one to three pages for a licensed technician, as an HTML file to print',
  usage: `kettlefin brief FILE [--output FILE] [--force] [--contact WORDS] [--json] [--units metric|us]

FILE             a design file, or - for standard input
--output FILE    writes the brief to a file; without it, or with -, to standard output
--force          lets --output replace a file
--contact WORDS  who asks and how to reach them; printed at the head, at most ${longestContact} characters
--json           the brief as data, in the words and units of the view, in place of HTML
--units VIEW     metric (default) or us

The file needs nothing beside itself and runs no script: open it in a browser and print it, on A4 or Letter.
Where the answer is not to build, the brief says so first, and the charge is withheld.

Exit codes: 0 answered, whatever the verdict; 2 unusable input; 3 no solution.`,
  async run(args, streams) {
    const { texts, flags, positionals } = readArguments(args, {
      output: 'text',
      force: 'flag',
      contact: 'text',
      json: 'flag',
      units: 'text',
    });
    const asked = { file: oneFile(positionals), json: flags.json, view: unitView(texts.units) };
    const { output: file, contact = '' } = texts;
    if (file === '') throw new InputError('--output', 'nothing', 'the path of a file', 'missing');
    if (flags.force && file === undefined) {
      throw new InputError('--force', 'this option', '--output FILE beside it', 'bothGiven');
    }
    if (contact.length > longestContact) {
      throw new InputError(
        '--contact',
        `${contact.length} characters`,
        `at most ${longestContact} characters`,
        'tooLong',
      );
    }
    return withDesignText(asked, streams, async (text) => {
      const parsed = parseDesign(text);
      if (!parsed.ok) return refuse(asked, { ...parsed, kind: 'unusable' }, streams);
      const outcome = assessDesign(parsed.document, asked.view);
      if (!outcome.ok) return refuse(asked, outcome, streams);
      const document = brief({
        assessment: outcome.assessment,
        design: parsed.document,
        view: asked.view,
        date: today(),
        contact,
      });
      const written = asked.json ? asJson(document) : briefHtml(document);
      if (file === undefined || file === standardOutput) {
        streams.output.write(written);
      } else {
        await writeNewFile(file, written, flags.force);
        streams.output.write(printable(`The brief is in ${fileTitle(file)}.\n`));
      }
      return exitCodes.answered;
    });
  },
};

function asJson(document: BriefDocument): string {
  return `${JSON.stringify(document, null, 2)}\n`;
}

/** Year, month and day where the person is. */
function today(): string {
  const now = new Date();
  const two = (number: number) => String(number).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
