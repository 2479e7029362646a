// The usual measures that fit the tank, offered beside a list of one's own: what the study would offer if there were none.

import { type ReactNode, useMemo, useState } from 'react';
import type { UnitView } from '../../quantities/index.ts';
import { useWorkbench } from '../state/context.tsx';
import { useStudy } from '../state/use-study.ts';
import { sayParts, sentenceStart } from '../ui/say.ts';
import { withUsual } from './list-edits.ts';

interface UsualMeasuresProps {
  readonly view: UnitView;
  readonly add: (item: unknown) => void;
}

export function UsualMeasures({ view, add }: UsualMeasuresProps): ReactNode {
  const [isOpen, setOpen] = useState(false);
  return (
    <details open={isOpen} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>Add a usual one</summary>
      {isOpen && <Offers view={view} add={add} />}
    </details>
  );
}

function Offers({ view, add }: UsualMeasuresProps): ReactNode {
  const { document } = useWorkbench();
  const bare = useMemo(() => {
    const outcome = withUsual(document);
    return outcome.ok ? outcome.document : undefined;
  }, [document]);
  const { reply, problems } = useStudy('wrapping', bare, view);
  if (problems.length > 0) return <p className="quiet">{problems.join(' ')}</p>;
  if (reply === undefined) return <p className="quiet">Looking what fits this tank…</p>;
  const { measures, currency } = reply.answer;
  if (measures.length === 0) return <p className="quiet">None of the usual measures fits this tank.</p>;
  return (
    <ul className="usual-measures">
      {measures.map(({ id, name, item, cost, alone }) => (
        <li key={id}>
          <button type="button" className="plain" onClick={() => add(item)}>
            Add: {sentenceStart(name)}
          </button>{' '}
          <span className="quiet">
            saves {sayParts(alone.loadSaved, 'power', view).likely} alone, for about{' '}
            {sayParts(cost, 'money', view, currency).likely}
          </span>
        </li>
      ))}
    </ul>
  );
}
