// What leaves: the tank's heat by way out, what the water gains, what the machine has to carry.

import type { ReactNode } from 'react';
import type { Assessment } from '../../assess/index.ts';
import { sayBand, sayRange, type UnitView } from '../../quantities/index.ts';
import { type BarRow, Bars } from '../ui/bars.tsx';
import { Findings, saidFindings } from '../ui/findings.tsx';
import { HowComputed } from '../ui/how-computed.tsx';
import { exactly, NumberItem, Numbers } from '../ui/number.tsx';
import { say, sayParts, sentenceStart } from '../ui/say.ts';
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
            workings={assessment.workings}
            result="tank.gains.pump"
          />
          <NumberItem
            label="Comes from lights"
            band={exactly(tank.gains.light)}
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
        <div className="hows">
          {largestFirst(assessment).map((path) => (
            <HowComputed
              key={path.path}
              workings={assessment.workings}
              result={`tank.paths.${path.path}`}
              of={path.label}
              words={`${sentenceStart(path.label)}: how computed`}
            />
          ))}
        </div>
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
    largest === undefined
      ? ''
      : ` The largest way out is ${largest.label}, ${sayParts(largest.heat, 'power', view).likely}.`;
  if (tank.load.high <= 0) {
    const surplus = { low: -tank.load.high, likely: -tank.load.likely, high: -tank.load.low };
    return `Even in the coldest spell the tank needs no heat: ${sayBand(surplus, 'power', view)} more comes in than goes out.`;
  }
  return `In the coldest spell the tank needs ${sayBand(tank.load, 'power', view)} of heat.${most}`;
}

function timeToCool(secondsPerKelvin: number, view: UnitView): { readonly label: string; readonly seconds: number } {
  return view === 'us'
    ? { label: 'To cool by 1 °F', seconds: (secondsPerKelvin * 5) / 9 }
    : { label: 'To cool by 1 °C', seconds: secondsPerKelvin };
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
    },
  ];
}
