// The fields of the textbook cycle. Beside each of the five facts stands the offer to give its partner instead.

import type { ReactNode } from 'react';
import { sayReferenceState } from '../../../charts/index.ts';
import type { TextbookCycle } from '../../../loop/index.ts';
import type { ReferenceStateName } from '../../../matter/refrigerants/index.ts';
import { type QuantityName, sayQuantity, type UnitView } from '../../../quantities/index.ts';
import { unlessAlike } from '../../fields/design-field.tsx';
import { ChoiceField, TextField } from '../../fields/field.tsx';
import { refrigerantChoices } from '../../state/refrigerants.ts';
import { sentenceStart } from '../../ui/say.ts';
import {
  type CycleKey,
  type CycleTexts,
  givenByPartner,
  givenFields,
  moreCycleFields,
  partnerOf,
  readOne,
  withNumber,
} from './cycle-fields.ts';

export interface CycleInputsProps {
  readonly texts: CycleTexts;
  readonly change: (texts: CycleTexts) => void;
  /** The last cycle computed: a partner begins at its value. */
  readonly cycle: TextbookCycle | undefined;
  readonly view: UnitView;
}

const referenceNames: readonly ReferenceStateName[] = ['iir', 'ashrae', 'normalBoilingPoint'];

export function CycleInputs({ texts, change, cycle, view }: CycleInputsProps): ReactNode {
  const commit = (key: CycleKey, quantity: QuantityName, mayBeEmpty: boolean) => (text: string) => {
    if (!(mayBeEmpty && text.trim() === '')) {
      const read = readOne(text, quantity);
      if (!read.ok) return `${read.message} The cycle is unchanged.`;
    }
    change(withNumber(texts, key, text));
    return undefined;
  };
  return (
    <section className="station-inputs" aria-labelledby="station-inputs-title">
      <h3 id="station-inputs-title">What it rests on</h3>
      <div className="fields">
        <ChoiceField
          label="Refrigerant"
          value={texts.refrigerant}
          options={refrigerantChoices}
          commit={(refrigerant) => {
            change({ ...texts, refrigerant });
            return undefined;
          }}
        />
        {givenFields(texts).map((field) => (
          <TextField
            key={field.key}
            label={field.label}
            help={field.help}
            text={texts.numbers[field.key] ?? ''}
            understood={understood(texts.numbers[field.key], field.quantity, view)}
            commit={commit(field.key, field.quantity, false)}
            beside={
              cycle !== undefined && (
                <button
                  type="button"
                  className="linkish field-instead"
                  onClick={() => change(givenByPartner(texts, field, cycle, view))}
                >
                  give the {partnerOf(field).called} instead
                </button>
              )
            }
          />
        ))}
      </div>
      <details className="fields-more">
        <summary>I know more ({moreCycleFields.length + 1})</summary>
        <div className="fields">
          <ChoiceField
            label="Zero of enthalpy and entropy"
            help="Tables differ in it; only differences mean anything."
            value={texts.referenceState}
            options={referenceNames.map((name) => ({
              value: name,
              label: sentenceStart(sayReferenceState(name, view)),
            }))}
            commit={(name) => {
              change({ ...texts, referenceState: name as ReferenceStateName });
              return undefined;
            }}
          />
          {moreCycleFields.map(({ key, label, help, quantity, assumed }) => (
            <TextField
              key={key}
              label={label}
              help={help}
              assumed={assumed(view)}
              text={texts.numbers[key] ?? ''}
              understood={understood(texts.numbers[key], quantity, view)}
              commit={commit(key, quantity, true)}
            />
          ))}
        </div>
      </details>
    </section>
  );
}

function understood(text: string | undefined, quantity: QuantityName, view: UnitView): string | undefined {
  if (text === undefined) return undefined;
  const read = readOne(text, quantity);
  return read.ok ? unlessAlike(text, sayQuantity(read.value, quantity, view, 4)) : undefined;
}
