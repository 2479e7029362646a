// One to three pages to take to a licensed technician, shown as they will be printed. Who asks is typed here, kept in this
// browser, and stands on the pages only then.

import { type ReactNode, useState } from 'react';
import { longestContact } from '../../../brief/index.ts';
import { useWorkbench } from '../../state/context.tsx';
import { fileNameFor, saveText } from '../../state/files.ts';
import { Paper, type PaperProps } from '../paper.tsx';
import './brief.css';
import { BriefPages } from './brief-pages.tsx';
import { useBrief } from './use-brief.ts';

const contactKey = 'brief-contact';

export function Brief({ answer, view }: PaperProps): ReactNode {
  const { keeper, state, document } = useWorkbench();
  const [contact, setContact] = useState(() => (keeper.read(contactKey) ?? '').slice(0, longestContact));
  const { brief, problem, isOld } = useBrief(answer, view, contact);
  const isRefused = state.refusal !== undefined && state.answered !== document;
  if (answer === undefined || isRefused) {
    return (
      <Paper name="brief" answer="There is no brief: the design as it stands has no answer.">
        {null}
      </Paper>
    );
  }
  const write = (text: string) => {
    setContact(text);
    keeper.write(contactKey, text);
  };
  const save = brief && (
    <button
      type="button"
      className="plain"
      disabled={isOld}
      onClick={() => saveText(brief.file, fileNameFor(`${answer.assessment.designName} brief`, 'html'), 'text/html')}
    >
      Save as an HTML file
    </button>
  );
  const isStop = answer.assessment.standing === 'doNotBuild';
  return (
    <Paper
      name="brief"
      answer={
        isStop
          ? 'The answer is not to build, so these pages ask for nothing to be built: they say why, for a licensed technician to read.'
          : 'One to three pages to take to a licensed technician: what is asked, the duty, the states, the parts, what is open.'
      }
      actions={save}
    >
      <label className="brief-contact">
        <span>Who asks, and how to reach them</span>
        <textarea
          rows={2}
          maxLength={longestContact}
          value={contact}
          autoComplete="off"
          onChange={(event) => write(event.target.value)}
        />
        <span className="quiet">Stands on the pages if you type it. Kept in this browser only.</span>
      </label>
      {problem !== undefined && <p className="quiet">The pages could not be made: {problem}</p>}
      {brief !== undefined && <BriefPages body={brief.body} styles={brief.styles} isOld={isOld} />}
    </Paper>
  );
}
