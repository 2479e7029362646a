// Start my own: seven questions, one at a time, whose answers make a design; all else begins as an assumption.

import { type ReactNode, useLayoutEffect, useRef, useState } from 'react';
import {
  askedFields,
  type DesignDocument,
  type DesignProblem,
  fieldRecord,
  newDesign,
  type StartAnswers,
  type StartField,
  sayProblem,
  startQuestions,
  startRecord,
} from '../../design/index.ts';
import { LooseField, textProblem } from '../fields/loose-field.tsx';
import { useWorkbench } from '../state/context.tsx';
import { Choice } from '../ui/choice.tsx';
import { Dialog } from '../ui/dialog.tsx';
import { StateShape } from '../ui/state-mark.tsx';

const unitViews = [
  ['metric', 'Metric'],
  ['us', 'US'],
] as const;

export interface StartMyOwnProps {
  readonly close: () => void;
  readonly done: (document: DesignDocument) => void;
}

export function StartMyOwn({ close, done }: StartMyOwnProps): ReactNode {
  const [index, setIndex] = useState(0);
  const [answers, setAnswers] = useState<StartAnswers>({});
  const [problems, setProblems] = useState<readonly string[]>([]);
  const { state, dispatch } = useWorkbench();
  const heading = useRef<HTMLHeadingElement>(null);
  const question = startQuestions[index];

  // Each new question takes the focus, so that it is read out.
  useLayoutEffect(() => heading.current?.focus(), [index]);
  if (question === undefined) return null;
  const fields = askedFields(question, answers);
  const currency = answers['prices.currency'] ?? '';
  const isLast = index === startQuestions.length - 1;

  const goOn = () => {
    const unanswered = fields.flatMap((field) => problemOf(field, answers, currency));
    const outcome = newDesign(answers);
    const wrong = unanswered.length > 0 || outcome.ok ? unanswered : problemsOf(fields, outcome.problems);
    setProblems(wrong);
    if (wrong.length > 0) return;
    if (!isLast) return setIndex(nextIndex(index, answers));
    if (outcome.ok) return done(outcome.document);
    setProblems(outcome.problems.map(sayOfField));
    const owner = questionOf(outcome.problems, answers);
    if (owner !== undefined) setIndex(owner);
  };
  const goBack = () => {
    setProblems([]);
    setIndex(Math.max(0, index - 1));
  };
  return (
    <Dialog title="Start my own" close={close}>
      <p className="quiet">
        Question {index + 1} of {startQuestions.length}. Any unit will do, and a range where you are not sure: “
        {state.view === 'us' ? '75 to 79 °F' : '24 to 26 °C'}”.
      </p>
      <Choice
        legend="Units shown"
        options={unitViews}
        value={state.view}
        choose={(view) => dispatch({ type: 'viewChosen', view })}
      />
      <div className="question-progress" aria-hidden="true">
        {startQuestions.map(({ id }, step) => (
          <span key={id} className={step <= index ? 'done' : undefined} />
        ))}
      </div>
      <form
        className="question"
        noValidate
        onSubmit={(event) => {
          event.preventDefault();
          goOn();
        }}
      >
        <h3 ref={heading} tabIndex={-1}>
          {question.question}
        </h3>
        <p className="quiet">{question.help}</p>
        <div className="fields">
          {fields.map((field) => (
            <LooseField
              key={field.path}
              record={startRecord(field)}
              text={answers[field.path] ?? ''}
              currency={currency}
              mayStayEmpty={field.optional}
              give={(text) => {
                setAnswers((before) => ({ ...before, [field.path]: asWritten(field.path, text) }));
                return undefined;
              }}
            />
          ))}
          {fields.length === 0 && <p>Nothing to ask here after what you told.</p>}
        </div>
        {problems.length > 0 && (
          <ul className="question-problems" role="alert">
            {problems.map((problem) => (
              <li key={problem} className="field-error">
                <StateShape kind="stop" />
                <span>{problem}</span>
              </li>
            ))}
          </ul>
        )}
        <div className="question-foot">
          <button type="button" className="plain" onClick={goBack} disabled={index === 0}>
            Back
          </button>
          <button type="submit" className="solid strong">
            {isLast ? 'Show me the verdict' : 'Next question'}
          </button>
        </div>
      </form>
    </Dialog>
  );
}

/** Codes of currencies are written in capitals; "eur" can mean nothing else. */
function asWritten(path: string, text: string): string {
  return path === 'prices.currency' ? text.trim().toUpperCase() : text;
}

function problemOf(field: StartField, answers: StartAnswers, currency: string): readonly string[] {
  const record = fieldRecord(field.path);
  if (record === undefined) return [];
  const text = answers[field.path] ?? '';
  if (text.trim() === '') return field.optional ? [] : [`${record.label}: please answer, it has no usual value.`];
  const wrong = textProblem(record, text, currency);
  return wrong === undefined ? [] : [wrong];
}

/** What is wrong with the answers to these fields once they are put together; a field not reached yet is no matter. */
function problemsOf(fields: readonly StartField[], problems: readonly DesignProblem[]): readonly string[] {
  return problems.filter(({ path }) => fields.some((field) => field.path === path)).map(sayOfField);
}

function sayOfField(problem: DesignProblem): string {
  return sayProblem({ ...problem, path: fieldRecord(problem.path)?.label ?? problem.path });
}

/** The next question that has something to ask. */
function nextIndex(index: number, answers: StartAnswers): number {
  const next = startQuestions.findIndex((question, step) => step > index && askedFields(question, answers).length > 0);
  return next === -1 ? startQuestions.length - 1 : next;
}

/** The question that asked the first thing found wrong. */
function questionOf(problems: readonly DesignProblem[], answers: StartAnswers): number | undefined {
  for (const { path } of problems) {
    const found = startQuestions.findIndex((question) =>
      askedFields(question, answers).some((field) => field.path === path),
    );
    if (found !== -1) return found;
  }
  return undefined;
}
