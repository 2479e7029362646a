// Where the work of the textbook cycle is lost: exergy destroyed by part, with its share of the work and its working.

import type { ReactNode } from 'react';
import type { TextbookCycle } from '../../../loop/index.ts';
import { sayQuantity, type UnitView } from '../../../quantities/index.ts';
import { type BarRow, Bars } from '../../ui/bars.tsx';
import { exactly } from '../../ui/number.tsx';
import { sayFixed } from '../../ui/say.ts';
import type { CycleAnswer } from '../../worker/cycle.ts';

export function ExergyLost({ answer, view }: { answer: CycleAnswer; view: UnitView }): ReactNode {
  return (
    <section className="block">
      <h3>Where the work is lost</h3>
      <p className="quiet">{exergySentence(answer.cycle, view)}</p>
      <Bars
        caption="Exergy (what could have been work) destroyed in each part, per mass of refrigerant and, with a flow given, per second, and its share of the work."
        heads={['Part', 'Lost', 'Per mass', 'Share of the work']}
        rows={exergyRows(answer, view)}
        workings={answer.workings}
      />
    </section>
  );
}

/** What is counted as heated and as cooled, in the view's units: without it the account means nothing. */
export function exergySentence({ exergyBasis: basis }: TextbookCycle, view: UnitView): string {
  const said = (kelvin: number) => sayQuantity(kelvin, 'temperature', view, 4);
  const body = (kelvin: number) =>
    kelvin === basis.deadState ? 'something at the dead state' : `something at ${said(kelvin)}`;
  const counted =
    basis.sinkTemperature === basis.sourceTemperature
      ? `Heat is counted as given to and taken from ${body(basis.sinkTemperature)}.`
      : `The heat is counted as given to ${body(basis.sinkTemperature)} and taken from ${body(basis.sourceTemperature)}.`;
  const start = `${counted} The dead state, at which heat can do no work, is ${said(basis.deadState)}.`;
  return basis.minimumWork === 0
    ? `${start} Nothing useful is done that way, so the losses add up to all the work put in.`
    : `${start} A cycle without losses would need ${sayFixed(basis.minimumWork, 'enthalpy', view, 3)} for the same: ${sayFixed(basis.secondLawEfficiency, 'fraction', view, 3)} of the work put in.`;
}

const lossParts = [
  ['Compressor', 'compressor', 'electric'],
  ['Condenser', 'condenser', 'into'],
  ['Heat exchanger', 'heatExchanger', 'cool'],
  ['Expansion', 'expansion', 'ink'],
  ['Evaporator', 'evaporator', 'cool'],
  ['All parts', 'total', 'ink'],
] as const;

function exergyRows({ name, cycle }: CycleAnswer, view: UnitView): BarRow[] {
  const { exergyDestruction: lost, specificWork, perSecond } = cycle;
  return partsOf(cycle).map(([label, part, look]) => {
    const rate = perSecond?.exergyDestructionRate[part];
    const perMass = sayFixed(lost[part] ?? 0, 'enthalpy', view, 3);
    return {
      key: label,
      label,
      band: exactly(lost[part] ?? 0),
      likely: rate === undefined ? perMass : `${perMass}, ${sayFixed(rate, 'electricPower', view, 3)}`,
      range: sayFixed((lost[part] ?? 0) / specificWork, 'fraction', view, 3),
      look,
      total: part === 'total',
      result: `${name}.exergyDestruction.${part}`,
    };
  });
}

/** The exchanger is a part only where there is one. */
function partsOf({ exergyDestruction }: TextbookCycle) {
  return lossParts.filter(([, part]) => exergyDestruction[part] !== undefined);
}
