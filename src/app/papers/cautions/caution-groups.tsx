// Cautions by whom they are about, the gravest first in each group; notes stand in a fold.

import type { ReactNode } from 'react';
import { fieldsOf } from '../../../design/index.ts';
import { type Subject, subjects, subjectTitles } from '../../../quantities/index.ts';
import { useWorkbench } from '../../state/context.tsx';
import { Termed } from '../../terms/termed.tsx';
import { type FieldFacts, FieldLink, useFieldFacts } from '../../ui/field-origin.tsx';
import { type SaidFinding, severityMarks } from '../../ui/findings.tsx';
import { StateMark } from '../../ui/state-mark.tsx';
import { fieldsSettling } from './settled-by.ts';
import { certaintyWords, countWords } from './words.ts';

export function CautionGroups({ said }: { said: readonly SaidFinding[] }): ReactNode {
  return subjects.map((subject) => (
    <CautionGroup key={subject} subject={subject} said={said.filter(({ finding }) => finding.subject === subject)} />
  ));
}

function CautionGroup({ subject, said }: { subject: Subject; said: readonly SaidFinding[] }): ReactNode {
  const grave = said.filter(({ finding }) => finding.severity !== 'note');
  const notes = said.filter(({ finding }) => finding.severity === 'note');
  const title = `cautions-${subject}`;
  return (
    <section className="block caution-group" aria-labelledby={`${title}-title`}>
      <h3 id={`${title}-title`} tabIndex={-1}>
        {subjectTitles[subject]}
      </h3>
      <p className="quiet">{said.length === 0 ? 'No limit found.' : `${countWords(said)}.`}</p>
      <Entries said={grave} />
      {notes.length > 0 && (
        <details className="caution-notes" open={grave.length === 0 && subject !== 'model'}>
          <summary>{notes.length === 1 ? '1 note' : `${notes.length} notes`}</summary>
          <Entries said={notes} />
        </details>
      )}
    </section>
  );
}

function Entries({ said }: { said: readonly SaidFinding[] }): ReactNode {
  if (said.length === 0) return null;
  return (
    <ul className="findings">
      {said.map((entry) => (
        <Entry key={`${entry.finding.code} ${entry.words.text}`} {...entry} />
      ))}
    </ul>
  );
}

function Entry({ finding, words }: SaidFinding): ReactNode {
  const [kind, word] = severityMarks[finding.severity];
  return (
    <li className={`finding finding-${finding.severity}`}>
      <StateMark kind={kind} word={word} />
      <div className="finding-body">
        <h4>{words.title}</h4>
        <p>
          <Termed>{words.text}</Termed>
        </p>
        <p>{words.remedy}</p>
        {finding.needsLicensedPerson && (
          <p className="licensed">
            <span>Needs a certified or licensed person</span>
          </p>
        )}
        <SettledBy code={finding.code} />
        <p className="finding-source">
          Rule: {words.source}.{finding.certainty !== undefined && <> How sure: {certaintyWords[finding.certainty]}.</>}
        </p>
      </div>
    </li>
  );
}

/** The fields of this design that could settle it, each a way into the field. */
function SettledBy({ code }: { code: string }): ReactNode {
  const factsOf = useFieldFacts();
  const { document } = useWorkbench();
  const present = fieldsOf(document).map(({ path }) => path);
  const fields = [...new Set(fieldsSettling(code))]
    .filter((path) => present.includes(path))
    .map(factsOf)
    .filter((facts): facts is FieldFacts => facts !== undefined);
  if (fields.length === 0) return null;
  return (
    <p className="settled-by">
      What could settle it:{' '}
      {fields.map((facts, index) => (
        <span key={facts.path}>
          {index > 0 && ', '}
          <FieldLink facts={facts} />
        </span>
      ))}
    </p>
  );
}
