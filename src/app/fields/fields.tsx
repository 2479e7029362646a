// Fields one after another, each made from its record: choices of a kind, fields of a part that is absent, all others.

import type { ReactNode } from 'react';
import type { DesignDocument, FieldRecord } from '../../design/index.ts';
import { useWorkbench } from '../state/context.tsx';
import { isInAbsentPart, parentOf } from '../state/edits.ts';
import { DesignField } from './design-field.tsx';
import { KindField } from './kind-field.tsx';
import { PartFields } from './part-fields.tsx';

export function Fields({ records }: { records: readonly FieldRecord[] }): ReactNode {
  const { document } = useWorkbench();
  return (
    <div className="fields">
      {inParts(records, document).map((group) => {
        const [first] = group;
        if (first === undefined) return null;
        const key = group.map((record) => `${record.path} ${record.label}`).join();
        if (group.length > 1) return <PartFields key={key} records={group} />;
        return first.type === 'kind' ? (
          <KindField key={key} record={first} />
        ) : (
          <DesignField key={key} record={first} />
        );
      })}
    </div>
  );
}

/** Fields of one absent part stand together; every other field alone. */
function inParts(records: readonly FieldRecord[], document: DesignDocument): readonly (readonly FieldRecord[])[] {
  const groups: FieldRecord[][] = [];
  for (const record of records) {
    const last = groups.at(-1);
    const goesOn =
      last?.[0] !== undefined &&
      parentOf(last[0].path) === parentOf(record.path) &&
      isInAbsentPart(last[0], document) &&
      isInAbsentPart(record, document);
    if (goesOn) last.push(record);
    else groups.push([record]);
  }
  return groups;
}
