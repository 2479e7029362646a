// The fields of a textbook cycle. Beside each of the five facts stands the offer to give it in another way; what textbooks
// add to them (line losses, a heat exchanger, a flow, the bodies of the exergy account) stands behind "I know more".

import type { ReactNode } from 'react';
import { sayReferenceState } from '../../../charts/index.ts';
import type { TextbookCycle } from '../../../loop/index.ts';
import type { ReferenceStateName } from '../../../matter/refrigerants/index.ts';
import { type QuantityName, sayQuantity, type UnitView } from '../../../quantities/index.ts';
import { ChoiceField, TextField } from '../../fields/field.tsx';
import { unlessAlike } from '../../fields/understood.ts';
import { fluidNames } from '../../fluids/fluid-groups.ts';
import { RefrigerantField } from '../../fluids/refrigerant-field.tsx';
import { sentenceStart } from '../../ui/say.ts';
import {
  bodyFields,
  type CycleField,
  type CycleKey,
  chosenGroups,
  cycleFieldPath,
  lineFields,
  type OptionalField,
  referenceNames,
  volumetricEfficiencyField,
} from './cycle-fields.ts';
import {
  type CycleTexts,
  chosenOf,
  givenByPartner,
  givenFields,
  partnersOf,
  readOne,
  withChosen,
  withNumber,
} from './cycle-texts.ts';

export interface CycleInputsProps {
  /** What stands above the fields: which of two cycles they are of. */
  readonly head: ReactNode;
  readonly texts: CycleTexts;
  readonly change: (texts: CycleTexts) => void;
  /** The last cycle computed: another way to give a fact begins at its value. */
  readonly cycle: TextbookCycle | undefined;
  readonly view: UnitView;
}

export function CycleInputs(props: CycleInputsProps): ReactNode {
  const { head, texts, change, view } = props;
  return (
    <section className="station-inputs" aria-labelledby="station-inputs-title">
      <h3 id="station-inputs-title">What it rests on</h3>
      {head}
      <div className="fields">
        <RefrigerantField
          label="Refrigerant"
          path={cycleFieldPath('refrigerant')}
          value={texts.refrigerant}
          offered={fluidNames}
          commit={(refrigerant) => {
            change({ ...texts, refrigerant });
            return undefined;
          }}
        />
        {givenFields(texts).map((field) => (
          <FactField key={field.key} field={field} {...props} />
        ))}
      </div>
      <details className="fields-more">
        <summary>I know more</summary>
        <div className="fields">
          <ChosenFields group="flow" label="How much flows" none="not asked: all per kilogram" {...props} />
          <ChosenFields group="exchanger" label="Between liquid and suction gas" none="no heat exchanger" {...props} />
          {lineFields.map((field) => (
            <OptionalTextField key={field.key} field={field} {...props} />
          ))}
          {bodyFields.map((field) => (
            <OptionalTextField key={field.key} field={field} {...props} />
          ))}
          <ChoiceField
            label="Zero of enthalpy and entropy"
            help="Tables differ in it; only differences mean anything."
            path={cycleFieldPath('referenceState')}
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
        </div>
      </details>
    </section>
  );
}

function FactField({
  field,
  texts,
  change,
  cycle,
  view,
}: CycleInputsProps & { readonly field: CycleField }): ReactNode {
  return (
    <TextField
      label={field.label}
      help={field.help}
      path={cycleFieldPath(field.key)}
      text={texts.numbers[field.key] ?? ''}
      understood={understood(texts.numbers[field.key], field.quantity, view)}
      commit={committed(texts, change, field, false)}
      beside={
        cycle !== undefined &&
        partnersOf(field, texts).map((partner) => (
          <button
            key={partner.key}
            type="button"
            className="linkish field-instead"
            onClick={() => change(givenByPartner(texts, [field, partner], cycle, view))}
          >
            give the {partner.called} instead
          </button>
        ))
      }
    />
  );
}

interface OptionalTextFieldProps extends CycleInputsProps {
  readonly field: OptionalField;
}

function OptionalTextField({ field, texts, change, view }: OptionalTextFieldProps): ReactNode {
  return (
    <TextField
      label={field.label}
      help={field.help}
      path={cycleFieldPath(field.key)}
      assumed={field.assumed(view)}
      text={texts.numbers[field.key] ?? ''}
      understood={understood(texts.numbers[field.key], field.quantity, view)}
      commit={committed(texts, change, field, true)}
    />
  );
}

interface ChosenFieldsProps extends CycleInputsProps {
  readonly group: keyof typeof chosenGroups;
  readonly label: string;
  /** What the choice of none is called. */
  readonly none: string;
}

/** A choice, and the one field that belongs to what was chosen. */
function ChosenFields(props: ChosenFieldsProps): ReactNode {
  const { group, label, none, texts, change, cycle, view } = props;
  const chosen = chosenOf(group, texts);
  return (
    <>
      <ChoiceField
        label={label}
        value={chosen?.key ?? ''}
        assumed={none}
        options={chosenGroups[group].map(({ key, choice }) => ({ value: key, label: choice }))}
        commit={(key) => {
          change(withChosen(texts, group, key, (field) => field.start(view, cycle)));
          return undefined;
        }}
      />
      {chosen !== undefined && (
        <TextField
          key={chosen.key}
          label={chosen.label}
          help={chosen.help}
          path={cycleFieldPath(chosen.key)}
          text={texts.numbers[chosen.key] ?? ''}
          understood={understood(texts.numbers[chosen.key], chosen.quantity, view)}
          commit={committed(texts, change, chosen, false)}
        />
      )}
      {chosen?.key === 'displacement' && <OptionalTextField {...props} field={volumetricEfficiencyField} />}
    </>
  );
}

/** Uses a text that can be read, or says why it cannot. */
function committed(
  texts: CycleTexts,
  change: (texts: CycleTexts) => void,
  { key, quantity }: { readonly key: CycleKey; readonly quantity: QuantityName },
  mayBeEmpty: boolean,
) {
  return (text: string): string | undefined => {
    if (!(mayBeEmpty && text.trim() === '')) {
      const read = readOne(text, quantity);
      if (!read.ok) return `${read.message} The cycle is unchanged.`;
    }
    change(withNumber(texts, key, text));
    return undefined;
  };
}

function understood(text: string | undefined, quantity: QuantityName, view: UnitView): string | undefined {
  if (text === undefined) return undefined;
  const read = readOne(text, quantity);
  return read.ok ? unlessAlike(text, sayQuantity(read.value, quantity, view, 4)) : undefined;
}
