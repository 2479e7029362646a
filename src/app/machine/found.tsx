// What could hurt someone, before anyone touches a machine, and what was found of this one.

import { Fragment, type ReactNode } from 'react';
import { machineCautions } from '../../cautions/index.ts';
import { useWorkbench } from '../state/context.tsx';
import { FindingItem, Findings, FindingWords, type SaidFinding, saidFindings, severityMarks } from '../ui/findings.tsx';
import { Fold } from '../ui/fold.tsx';
import { StateMark } from '../ui/state-mark.tsx';
import type { AssessAnswer } from '../worker/messages.ts';

/** What can kill at the first touch stands first, and is never folded. */
const openCautions = 6;

export function MachineCautions(): ReactNode {
  return (
    <section className="machine-cautions" aria-labelledby="machine-cautions-title">
      <h3 id="machine-cautions-title">Before anyone touches a machine</h3>
      <Sentences of={machineCautions.slice(0, openCautions)} />
      <Fold summary={`${machineCautions.length - openCautions} more before anyone touches a machine`}>
        <Sentences of={machineCautions.slice(openCautions)} />
      </Fold>
    </section>
  );
}

function Sentences({ of }: { readonly of: readonly string[] }): ReactNode {
  return (
    <ul>
      {of.map((sentence) => (
        <li key={sentence}>{sentence}</li>
      ))}
    </ul>
  );
}

export function Found({ answer }: { readonly answer: AssessAnswer }): ReactNode {
  return (
    <section className="block">
      <h3 id="findings-title" tabIndex={-1}>
        What was found
      </h3>
      <p className="quiet">A limit that is not listed was not checked, or not found: neither says that all is well.</p>
      <Findings said={saidFindings(answer, ['machine', 'person', 'house'])} none="No limit found." Item={FoundItem} />
      <FoundElsewhere answer={answer} />
    </section>
  );
}

/** A stop stands with its words; what is to be looked at, or only noted, opens to them. */
function FoundItem(said: SaidFinding): ReactNode {
  const { finding, words } = said;
  if (finding.severity === 'stop') return <FindingItem {...said} />;
  const [kind, word] = severityMarks[finding.severity];
  return (
    <li className={`finding finding-${finding.severity}`}>
      <StateMark kind={kind} word={word} />
      <Fold className="finding-fold" summary={<h4>{words.title}</h4>}>
        <div className="finding-body">
          <FindingWords {...said} />
        </div>
      </Fold>
    </li>
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
