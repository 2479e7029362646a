// What leaves: the tank's heat by way out, what the water gains, what the machine has to carry.

import type { ReactNode } from 'react';
import type { Assessment } from '../../assess/index.ts';
import { sayBand, sayRange, type UnitView } from '../../quantities/index.ts';
import { type BarRow, Bars } from '../ui/bars.tsx';
import { Findings, saidFindings } from '../ui/findings.tsx';
import { exactly, NumberItem, Numbers } from '../ui/number.tsx';
import { say, sayParts, sentenceStart } from '../ui/say.ts';
import { Station, type StationProps } from './station.tsx';

export function WhatLeaves({ answer, view }: StationProps): ReactNode {
  const { assessment } = answer;
  const { tank } = assessment;
  const cooling = timeToCool(tank, view);
  return (
    <Station
      name="what-leaves"
      answer={answerSentence(assessment, view)}
      numbers={
        <Numbers>
          <NumberItem
            label="Leaves the tank"
            band={tank.loss}
            quantity="power"
            view={view}
            workings={assessment.workings}
          />
          <NumberItem
            label="Comes from pumps"
            band={tank.gainRanges.pump}
            quantity="power"
            view={view}
            ink="electricity"
            workings={assessment.workings}
            result="tank.gains.pump"
          />
          <NumberItem
            label="Comes from lights"
            band={tank.gainRanges.light}
            quantity="power"
            view={view}
            ink="electricity"
            workings={assessment.workings}
            result="tank.gains.light"
          />
          <NumberItem
            label="Still to be made: the load"
            band={tank.load}
            quantity="power"
            view={view}
            ink="into-water"
            workings={assessment.workings}
          />
          <NumberItem
            label="Water that evaporates"
            band={tank.evaporation}
            quantity="evaporation"
            view={view}
            workings={assessment.workings}
          />
          {cooling !== undefined && (
            <NumberItem
              label={cooling.label}
              band={exactly(cooling.seconds)}
              quantity="duration"
              digits={2}
              view={view}
              note={cooling.note}
              workings={assessment.workings}
              result="tank.timePerKelvin"
            />
          )}
        </Numbers>
      }
    >
      <section className="block">
        <h3>Every way out of the water</h3>
        <p className="quiet">
          In the coldest spell: room at {say(tank.roomTemperature, 'temperature', view)}, water at{' '}
          {say(tank.waterTemperature, 'temperature', view)}. Dotted: heat that leaves as vapour and does not warm the
          room.
        </p>
        <Bars
          caption="Heat by way out, the largest first. The thin line is the range."
          heads={['Way out', 'Heat', 'Likely', 'Range']}
          rows={rows(assessment, view)}
          workings={assessment.workings}
        />
      </section>
      <section className="block">
        <h3 id="findings-title" tabIndex={-1}>
          For the animals
        </h3>
        <Findings said={saidFindings(answer, ['livestock'])} none="No limit found for the animals." />
      </section>
    </Station>
  );
}

function answerSentence(assessment: Assessment, view: UnitView): string {
  const { tank } = assessment;
  const [largest] = largestFirst(assessment);
  const most =
    largest === undefined ? '' : ` The largest way out: ${largest.label}, ${sayBand(largest.heat, 'power', view)}.`;
  if (tank.load.high <= 0) {
    const surplus = { low: -tank.load.high, likely: -tank.load.likely, high: -tank.load.low };
    return `Even in the coldest spell the tank needs no heat: ${sayBand(surplus, 'power', view)} more comes in than goes out.`;
  }
  return `In the coldest spell the tank needs ${sayBand(tank.load, 'power', view)} of heat.${most}`;
}

interface Cooling {
  readonly label: string;
  readonly seconds: number;
  readonly note: string;
}

/** Undefined where the tank needs no heat. The range is that of the load. */
function timeToCool({ timePerKelvin, timePerKelvinRange }: Assessment['tank'], view: UnitView): Cooling | undefined {
  if (timePerKelvin === null || timePerKelvinRange === null) return undefined;
  const [label, share] = view === 'us' ? ['To cool by 1 °F', 5 / 9] : ['To cool by 1 °C', 1];
  const { low, high } = timePerKelvinRange;
  const range =
    high === null
      ? `${say(low * share, 'duration', view, 2)} or longer, perhaps never`
      : sayRange({ low: low * share, likely: timePerKelvin * share, high: high * share }, 'duration', view);
  return { label, seconds: timePerKelvin * share, note: `${range}, with every heat source off` };
}

function largestFirst({ tank }: Assessment): Assessment['tank']['paths'] {
  return tank.paths.toSorted((a, b) => b.heat.likely - a.heat.likely);
}

function rows(assessment: Assessment, view: UnitView): BarRow[] {
  const { tank } = assessment;
  return [
    ...largestFirst(assessment).map(
      (path): BarRow => ({
        key: path.path,
        label: sentenceStart(path.label),
        band: path.heat,
        likely: sayParts(path.heat, 'power', view).likely,
        range: sayRange(path.heat, 'power', view),
        look: path.kind,
        result: path.heat.result,
      }),
    ),
    {
      key: 'total',
      label: 'All ways together',
      band: tank.loss,
      likely: sayParts(tank.loss, 'power', view).likely,
      range: sayRange(tank.loss, 'power', view),
      look: 'sensible',
      total: true,
      result: tank.loss.result,
    },
  ];
}
