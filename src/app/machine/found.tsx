// What could hurt someone, before anyone touches a machine, and what was found of this one.

import { Fragment, type ReactNode } from 'react';
import { machineCautions } from '../../cautions/index.ts';
import { useWorkbench } from '../state/context.tsx';
import { Findings, saidFindings } from '../ui/findings.tsx';
import type { AssessAnswer } from '../worker/messages.ts';

export function MachineCautions(): ReactNode {
  return (
    <section className="machine-cautions" aria-labelledby="machine-cautions-title">
      <h3 id="machine-cautions-title">Before anyone touches a machine</h3>
      <ul>
        {machineCautions.map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
    </section>
  );
}

export function Found({ answer }: { readonly answer: AssessAnswer }): ReactNode {
  return (
    <section className="block">
      <h3 id="findings-title" tabIndex={-1}>
        What was found
      </h3>
      <p className="quiet">A limit that is not listed was not checked, or not found: neither says that all is well.</p>
      <Findings said={saidFindings(answer, ['machine', 'person', 'house'])} none="No limit found." />
      <FoundElsewhere answer={answer} />
    </section>
  );
}

/** What else is to be stopped for or looked at stands with the animals and with the model; here is the way there. */
function FoundElsewhere({ answer }: { readonly answer: AssessAnswer }): ReactNode {
  const { open } = useWorkbench();
  const places = [
    ['livestock', 'for the animals', 'what-leaves'],
    ['model', 'of the model', 'where-it-settles'],
  ] as const;
  const found = places
    .map(([subject, words, station]) => {
      const grave = saidFindings(answer, [subject]).filter(({ finding }) => finding.severity !== 'note');
      return { count: grave.length, words, station };
    })
    .filter(({ count }) => count > 0);
  if (found.length === 0) return null;
  return (
    <p className="elsewhere">
      Elsewhere:{' '}
      {found.map(({ count, words, station }, index) => (
        <Fragment key={station}>
          {index > 0 && ', '}
          <button type="button" className="linkish" onClick={() => open(station, 'findings')}>
            {count} {words}
          </button>
        </Fragment>
      ))}
    </p>
  );
}
