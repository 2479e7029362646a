// One more item of a list: what it is and what it needs is asked first, and the design changes when all of it is there.

import { type ReactNode, useState } from 'react';
import { type EditResult, fieldRecord } from '../../design/index.ts';
import { listed } from '../../quantities/index.ts';
import { useWorkbench } from '../state/context.tsx';
import { withText } from '../state/edits.ts';
import { askedOfItem, missedInItem } from './asked-of-item.ts';
import { refusalWords } from './design-field.tsx';
import { ChoiceField } from './field.tsx';
import { LooseField, type LooseTexts } from './loose-field.tsx';

export interface AddItemProps {
  /** 'tank.load.pipes', 'tank.load.faces.2.outside'. */
  readonly list: string;
  /** What the button says: "Add a pipe". */
  readonly words: string;
  /** What the items that are there are called, in order; the new one may stand before any of them. */
  readonly items?: readonly string[];
  /** Takes the item as it stands in a file, and its index. */
  readonly add: (item: unknown, at: number) => EditResult;
}

export function AddItem(props: AddItemProps): ReactNode {
  const { list, words } = props;
  const [isOpen, setOpen] = useState(false);
  if (isOpen) return <NewItem {...props} close={() => setOpen(false)} />;
  return (
    <p>
      <button type="button" className="plain" data-add={list} onClick={() => setOpen(true)}>
        {words}
      </button>
    </p>
  );
}

function NewItem({ list, words, items = [], add, close }: AddItemProps & { readonly close: () => void }): ReactNode {
  const { document, edit, dispatch } = useWorkbench();
  const selector = fieldRecord(`${list}.*.kind`);
  const [kind, setKind] = useState(selector?.choices?.[0]?.name);
  const [at, setAt] = useState(items.length);
  const [texts, setTexts] = useState<LooseTexts>({});
  const [problem, setProblem] = useState<string | undefined>(undefined);
  const [wanted, setWanted] = useState<readonly string[]>([]);
  const asked = askedOfItem(list, kind, texts, wanted);
  const take = () => {
    const open = asked.filter(({ path, optional }) => !optional && (texts[path] ?? '').trim() === '');
    if (open.length > 0) return setProblem(`Please answer: ${listed(open.map(({ label }) => label))}.`);
    const given = asked.filter(({ path, optional }) => !optional || (texts[path] ?? '').trim() !== '');
    const item = given.reduce(
      (whole, { path }) => withText(whole, keysInItem(path, list), (texts[path] ?? '').trim()),
      kind === undefined ? {} : { kind },
    );
    const problems = edit(add(item, at), list);
    if (problems.length > 0) {
      setWanted([...wanted, ...missedInItem(list, at, problems)]);
      return setProblem(refusalWords(problems, document));
    }
    // Each item is a step of its own to undo.
    dispatch({ type: 'editEnded' });
    close();
    focusAdd(list);
  };
  return (
    <form
      className="field-pending"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        take();
      }}
    >
      <p className="quiet">{words}. The design stays as it is until these are given:</p>
      {selector?.choices !== undefined && (
        <ChoiceField
          label={selector.label}
          help={selector.help}
          value={kind ?? ''}
          options={selector.choices.map(({ name, label }) => ({ value: name, label }))}
          commit={(chosen) => {
            setKind(chosen);
            return undefined;
          }}
        />
      )}
      {asked.map((field) => (
        <LooseField
          key={`${field.path} ${field.label}`}
          record={field}
          text={texts[field.path] ?? ''}
          currency={document.prices.currency}
          give={(text) => {
            setTexts((before) => ({ ...before, [field.path]: text }));
            return undefined;
          }}
        />
      ))}
      {items.length > 0 && (
        <ChoiceField
          label="Its place"
          value={String(at)}
          options={[...items, undefined].map((item, index) => ({
            value: String(index),
            label: item === undefined ? 'The last one' : `Before ${item}`,
          }))}
          commit={(chosen) => {
            setAt(Number(chosen));
            return undefined;
          }}
        />
      )}
      {problem !== undefined && (
        <p className="field-error" role="alert">
          {problem}
        </p>
      )}
      <p className="item-tools">
        <button type="submit" className="solid">
          Add it
        </button>
        <button
          type="button"
          className="plain"
          onClick={() => {
            close();
            focusAdd(list);
          }}
        >
          Leave it
        </button>
      </p>
    </form>
  );
}

/** 'tank.load.faces.*.outside.*.joint.share' within the list 'tank.load.faces.2.outside': joint, share. */
function keysInItem(path: string, list: string): readonly string[] {
  return path.split('.').slice(list.split('.').length + 1);
}

/** The keyboard goes on where the form was opened. */
export function focusAdd(list: string): void {
  requestAnimationFrame(() => {
    document.querySelector<HTMLElement>(`[data-add="${CSS.escape(list)}"]`)?.focus();
  });
}
