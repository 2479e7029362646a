// What leaves: the tank's heat by way out, what the water gains, what the machine has to carry.

import type { ReactNode } from 'react';
import type { Assessment } from '../../assess/index.ts';
import { sayBand, sayRange, type UnitView } from '../../quantities/index.ts';
import { type BarRow, Bars } from '../ui/bars.tsx';
import { Findings, saidFindings } from '../ui/findings.tsx';
import { exactly, NumberItem, Numbers } from '../ui/number.tsx';
import { say, sentenceStart } from '../ui/say.ts';
import { Station, type StationProps } from './station.tsx';

export function WhatLeaves({ answer, view }: StationProps): ReactNode {
  const { assessment } = answer;
  const { tank } = assessment;
  const cooling = tank.timePerKelvin === null ? undefined : timeToCool(tank.timePerKelvin, view);
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
            band={exactly(tank.gains.pump)}
            quantity="power"
            view={view}
            ink="electricity"
          />
          <NumberItem
            label="Comes from lights"
            band={exactly(tank.gains.light)}
            quantity="power"
            view={view}
            ink="electricity"
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
              view={view}
              note="with every heat source off"
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
        />
      </section>
      <section className="block">
        <h3>For the animals</h3>
        <Findings said={saidFindings(answer, ['livestock'])} none="No limit found for the animals." />
      </section>
    </Station>
  );
}

function answerSentence({ tank }: Assessment, view: UnitView): string {
  const largest = tank.paths.toSorted((a, b) => b.heat.likely - a.heat.likely)[0];
  const most =
    largest === undefined
      ? ''
      : ` The largest way out is ${largest.label}, ${say(largest.heat.likely, 'power', view)}.`;
  return `In the coldest spell the tank needs ${sayBand(tank.load, 'power', view)} of heat.${most}`;
}

function timeToCool(secondsPerKelvin: number, view: UnitView): { readonly label: string; readonly seconds: number } {
  return view === 'us'
    ? { label: 'To cool by 1 °F', seconds: (secondsPerKelvin * 5) / 9 }
    : { label: 'To cool by 1 °C', seconds: secondsPerKelvin };
}

function rows({ tank }: Assessment, view: UnitView): BarRow[] {
  const paths = tank.paths.toSorted((a, b) => b.heat.likely - a.heat.likely);
  return [
    ...paths.map(
      (path): BarRow => ({
        key: path.path,
        label: sentenceStart(path.label),
        band: path.heat,
        likely: say(path.heat.likely, 'power', view),
        range: sayRange(path.heat, 'power', view),
        look: path.kind,
      }),
    ),
    {
      key: 'total',
      label: 'All ways together',
      band: tank.loss,
      likely: say(tank.loss.likely, 'power', view),
      range: sayRange(tank.loss, 'power', view),
      look: 'sensible',
      total: true,
    },
  ];
}
