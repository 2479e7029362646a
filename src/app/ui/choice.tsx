// A row of a few exclusive choices: radio buttons that look like one switch.

import { type ReactNode, useId } from 'react';

export interface ChoiceProps<Value extends string> {
  readonly legend: string;
  readonly value: Value;
  readonly options: readonly (readonly [Value, string])[];
  readonly choose: (value: Value) => void;
}

export function Choice<Value extends string>({ legend, value, options, choose }: ChoiceProps<Value>): ReactNode {
  const name = useId();
  return (
    <fieldset className="choice-set">
      <legend>{legend}</legend>
      <div className="choice">
        {options.map(([option, label]) => (
          <label key={option}>
            <input type="radio" name={name} checked={option === value} onChange={() => choose(option)} />
            {label}
          </label>
        ))}
      </div>
    </fieldset>
  );
}
