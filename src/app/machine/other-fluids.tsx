// Other fluids in this machine, at the coldest spell: what says not to, oil and materials first, then the numbers, for study only.

import type { ReactNode } from 'react';
import { type CompatibilityFact, doubtWords, messageInView, type OtherFluid } from '../../assess/index.ts';
import { listed, type QuantityName, type UnitView } from '../../quantities/index.ts';
import { Termed } from '../terms/termed.tsx';
import { BandCell } from '../ui/band-cell.tsx';
import { Fold } from '../ui/fold.tsx';
import { ScrollBox } from '../ui/scroll-box.tsx';
import { type StateKind, StateMark } from '../ui/state-mark.tsx';
import type { WordsOfFinding } from '../worker/messages.ts';
import { Part } from './part.tsx';

interface OtherFluidsProps {
  readonly fluids: readonly OtherFluid[];
  /** Words of the stops of each fluid, in the order of the answer. */
  readonly stopWords: readonly (readonly WordsOfFinding[])[];
  readonly view: UnitView;
}

export function OtherFluids({ fluids, stopWords, view }: OtherFluidsProps): ReactNode {
  const all = fluids.map((fluid, index) => ({ fluid, stops: stopWords[index] ?? [] }));
  const others = all.filter(({ fluid }) => !fluid.isMadeFor);
  if (others.length === 0) return null;
  return (
    <Part
      name="other-fluids"
      title="Another fluid in it"
      brief={<StateMark kind="stop" word="Not for this machine: for study only" />}
    >
      <p className="study-only">
        <StateMark kind="stop" word="Not for this machine: for study only, and in no order of merit." />
      </p>
      <p>
        A machine belongs to the fluid it was made for: its motor, its oil, its materials and its safety gear do. What
        follows is what the physics says would happen, not what may be done.
      </p>
      <div className="other-fluids">
        {others.map(({ fluid, stops }) => (
          <Reasons key={fluid.fluid} fluid={fluid} stops={stops} />
        ))}
      </div>
      <ScrollBox className="table-scroll" label="The same machine with each fluid, in numbers">
        <table className="data">
          <caption>In the coldest spell, one machine; for study only</caption>
          <thead>
            <tr>
              <th scope="col">Fluid</th>
              {columns.map(([, label]) => (
                <th key={label} scope="col" className="number">
                  {label}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {all.map(({ fluid }) => (
              <NumbersRow key={fluid.fluid} fluid={fluid} view={view} />
            ))}
          </tbody>
        </table>
      </ScrollBox>
    </Part>
  );
}

/** One line of a fluid that opens to its reasons. */
function Reasons({
  fluid: { fluid, safetyClass, oil, materials, point },
  stops,
}: {
  readonly fluid: OtherFluid;
  readonly stops: readonly WordsOfFinding[];
}): ReactNode {
  const doubt = point.ok ? point.doubt.flatMap((reason) => doubtWords[reason] ?? []) : [];
  return (
    <Fold
      className="other-fluid"
      summary={
        <>
          <strong>{fluid}</strong> <span className="quiet">{safetyClass}</span>
          <StateMark kind="stop" word={stops[0]?.title ?? 'not for this machine'} />
          <span className="quiet">
            oil {suits[oil.suits][1]}, materials {suits[materials.suits][1]}
          </span>
        </>
      }
    >
      {stops.map(({ title, text }) => (
        <p key={`${title} ${text}`}>
          <strong>{title}.</strong> <Termed>{text}</Termed>
        </p>
      ))}
      <dl>
        <Compatible label="Oil" fact={oil} />
        <Compatible label="Materials" fact={materials} />
      </dl>
      {doubt.length > 0 && <p className="quiet">In doubt, since {listed(doubt)}.</p>}
    </Fold>
  );
}

const suits: Readonly<Record<CompatibilityFact['suits'], readonly [StateKind, string]>> = {
  yes: ['plain', 'suits'],
  no: ['look', 'does not suit'],
  unknown: ['look', 'not known'],
};

function Compatible({ label, fact }: { readonly label: string; readonly fact: CompatibilityFact }): ReactNode {
  const [kind, word] = suits[fact.suits];
  return (
    <div>
      <dt>{label}</dt>
      <dd>
        <StateMark kind={kind} word={word} />
        <p>
          <Termed>{fact.words}</Termed> <span className="finding-source">Source: {fact.source}</span>
        </p>
      </dd>
    </div>
  );
}

type Point = Extract<OtherFluid['point'], { readonly ok: true }>;

const columns = [
  ['capacity', 'Taken from the source', 'power'],
  ['heat', 'Heat', 'power'],
  ['power', 'Electricity', 'electricPower'],
  ['cop', 'COP', 'ratio'],
  ['motorLoad', 'Motor load', 'fraction'],
  ['current', 'Current', 'current'],
  ['dischargeTemperature', 'Discharge', 'temperature'],
  ['evaporatingPressure', 'Evaporating', 'pressure'],
  ['condensingPressure', 'Condensing', 'pressure'],
] as const satisfies readonly (readonly [keyof Point, string, QuantityName])[];

function NumbersRow({
  fluid: { fluid, isMadeFor, point },
  view,
}: {
  readonly fluid: OtherFluid;
  readonly view: UnitView;
}): ReactNode {
  return (
    <tr>
      <th scope="row">
        {fluid}
        {isMadeFor && <span className="own-mark"> made for it</span>}
      </th>
      {point.ok ? (
        columns.map(([key, label, quantity]) => (
          <BandCell key={label} band={point[key]} quantity={quantity} view={view} />
        ))
      ) : (
        <td colSpan={columns.length}>No running point: {messageInView(point.message, view)}</td>
      )}
    </tr>
  );
}
