// Fields of a part that is entered whole or not at all, such as a layer of insulation: what is typed waits here until
// nothing is missing.

import { type ReactNode, useState } from 'react';
import type { FieldRecord } from '../../design/index.ts';
import { useWorkbench } from '../state/context.tsx';
import { setFields } from '../state/edits.ts';
import { refusalWords } from './design-field.tsx';
import { LooseField, type LooseTexts } from './loose-field.tsx';

export function PartFields({ records }: { records: readonly FieldRecord[] }): ReactNode {
  const { document, edit } = useWorkbench();
  const [texts, setTexts] = useState<LooseTexts>({});
  const give = (path: string) => (text: string) => {
    const given = { ...texts, [path]: text };
    setTexts(given);
    if (records.some((record) => (given[record.path] ?? '').trim() === '')) return undefined;
    const problems = edit(setFields(document, given), path);
    return problems.length === 0 ? undefined : refusalWords(problems, document);
  };
  return (
    <>
      {records.map((record) => (
        <LooseField
          key={record.path}
          record={record}
          text={texts[record.path] ?? ''}
          currency={document.prices.currency}
          mayStayEmpty
          patient
          give={give(record.path)}
        />
      ))}
    </>
  );
}
