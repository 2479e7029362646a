// What could hurt a person, the house, the animals or the machine, and what the law says: every caution with its numbers,
// its source and the field that could settle it; each enclosed space by itself; what was not checked.

import type { ReactNode } from 'react';
import { machineCautions, notChecked } from '../../../cautions/index.ts';
import { saidFindings } from '../../ui/findings.tsx';
import { sentenceStart } from '../../ui/say.ts';
import { Paper, type PaperProps } from '../paper.tsx';
import { CautionGroups } from './caution-groups.tsx';
import './cautions.css';
import { ChargeFigures, Spaces } from './leak-tables.tsx';
import { answerSentence } from './words.ts';

export function Cautions({ answer, view }: PaperProps): ReactNode {
  if (answer === undefined) {
    return (
      <Paper name="cautions" answer="There is no answer yet: no rule has looked at this design.">
        <NotChecked />
      </Paper>
    );
  }
  const { assessment } = answer;
  const said = saidFindings(answer);
  return (
    <Paper name="cautions" answer={answerSentence(said)}>
      <div className="cautions-paper">
        <CautionGroups said={said} />
        <Spaces spaces={assessment.spaces} view={view} />
        <ChargeFigures comparisons={assessment.chargeComparisons} view={view} />
        <NotChecked />
      </div>
    </Paper>
  );
}

function NotChecked(): ReactNode {
  return (
    <section className="block" aria-labelledby="cautions-not-checked-title">
      <h3 id="cautions-not-checked-title" tabIndex={-1}>
        What was not checked
      </h3>
      <p className="quiet">No rule looks at these. Silence about them says nothing.</p>
      <ul className="not-checked">
        {notChecked.map((line) => (
          <li key={line}>{sentenceStart(line)}.</li>
        ))}
      </ul>
      <details className="caution-notes">
        <summary>Before anyone touches a machine ({machineCautions.length})</summary>
        <ul className="not-checked">
          {machineCautions.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      </details>
    </section>
  );
}
