// A list of the design: its items with their fields, each with buttons that move or remove it, and one that adds another.

import './list-fields.css';
import type { ReactNode } from 'react';
import {
  addItem,
  type DesignDocument,
  type EditResult,
  type FieldRecord,
  fieldsOf,
  itemsOf,
  type ListRecord,
  listRecord,
  listsOf,
  moveItem,
  removeItem,
} from '../../design/index.ts';
import { useWorkbench } from '../state/context.tsx';
import { sentenceStart } from '../ui/say.ts';
import { AddItem, focusAdd } from './add-item.tsx';
import { Fields } from './fields.tsx';

export interface ListFieldsProps {
  /** Path of the list: 'tank.load.pipes'. */
  readonly list: string;
  /** In place of the list's own label. */
  readonly title?: string;
  /** What moving an item to the front and to the end of the list is called. */
  readonly directions?: readonly [string, string];
  /** Adds an item where the list itself cannot be begun yet. */
  readonly add?: (item: unknown) => EditResult;
  /** Whether a field or a list within an item is shown here; all are where absent. */
  readonly isShown?: (record: { readonly path: string }) => boolean;
}

export function ListFields(props: ListFieldsProps): ReactNode {
  const { list, directions = ['Move up', 'Move down'], isShown = () => true } = props;
  const { document } = useWorkbench();
  const record = listRecord(list);
  if (record === undefined) return null;
  const items = itemsOf(document, list);
  const add = props.add ?? ((item: unknown, at: number) => addItem(document, list, item, at));
  return (
    <fieldset className="list-fields">
      <legend>{props.title ?? record.label}</legend>
      <p className="field-help">{record.help}</p>
      {items.length > 0 && (
        <ol>
          {items.map((_, index) => (
            <li key={index}>
              <Item {...{ record, index, directions, isShown }} count={items.length} />
            </li>
          ))}
        </ol>
      )}
      <AddItem
        list={list}
        words={`Add ${article(record.itemName)} ${record.itemName}`}
        items={items.map((_, index) => `${record.itemName} ${index + 1}`)}
        add={add}
      />
    </fieldset>
  );
}

interface ItemProps {
  readonly record: ListRecord;
  readonly index: number;
  readonly count: number;
  readonly directions: readonly [string, string];
  readonly isShown: (record: { readonly path: string }) => boolean;
}

function Item({ record, index, count, directions, isShown }: ItemProps): ReactNode {
  const { document, edit, dispatch } = useWorkbench();
  const { path: list, itemName } = record;
  const name = `${sentenceStart(itemName)} ${index + 1}`;
  const { fields, lists } = contentsOf(document, `${list}.${index}`);
  const move = (to: number, direction: string) => {
    edit(moveItem(document, list, index, to), list);
    dispatch({ type: 'editEnded' });
    focusTool(toolName(list, to, direction), toolName(list, to, directions[to === 0 ? 1 : 0]));
  };
  const remove = () => {
    edit(removeItem(document, list, index), list);
    dispatch({ type: 'editEnded' });
    focusAdd(list);
  };
  return (
    <fieldset className="list-item">
      <legend>{name}</legend>
      <Fields records={fields.filter(isShown)} />
      {lists.filter(isShown).map(({ path }) => (
        <ListFields key={path} list={path} isShown={isShown} />
      ))}
      <p className="item-tools">
        {([index - 1, index + 1] as const).map((to, end) => {
          const direction = directions[end]!;
          const isPossible = to >= 0 && to < count;
          return (
            count > 1 && (
              <button
                key={direction}
                type="button"
                className="plain"
                aria-label={`${direction}: ${name}`}
                data-tool={toolName(list, index, direction)}
                disabled={!isPossible}
                onClick={() => move(to, direction)}
              >
                {direction}
              </button>
            )
          );
        })}
        <button type="button" className="plain" aria-label={`Remove ${name}`} onClick={remove}>
          Remove
        </button>
      </p>
    </fieldset>
  );
}

/** The fields of an item itself, and the lists within it, whose own items bring their fields. */
function contentsOf(
  document: DesignDocument,
  item: string,
): { readonly fields: readonly FieldRecord[]; readonly lists: readonly ListRecord[] } {
  const lists = listsOf(document).filter(({ path }) => path.startsWith(`${item}.`));
  const fields = fieldsOf(document).filter(
    ({ path }) => path.startsWith(`${item}.`) && !lists.some((list) => path.startsWith(`${list.path}.`)),
  );
  return { fields, lists };
}

function article(noun: string): string {
  return /^[aeiou]/.test(noun) ? 'an' : 'a';
}

function toolName(list: string, index: number, direction: string): string {
  return `${list}.${index} ${direction}`;
}

/** The focus follows the moved item; at the end of the list its button that leads back. */
function focusTool(...names: readonly string[]): void {
  requestAnimationFrame(() => {
    for (const name of names) {
      const tool = document.querySelector<HTMLButtonElement>(`[data-tool="${CSS.escape(name)}"]:not(:disabled)`);
      if (tool !== null) return tool.focus();
    }
  });
}
