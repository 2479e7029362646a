// What leaves: what the tank needs, how much evaporates, how fast it cools; the tank drawn to scale with the section of the chosen
// panel, every way out, the year, and a meter beside it all.

import { type ReactNode, useEffect, useMemo, useState } from 'react';
import type { Assessment, FallAnswer } from '../../assess/index.ts';
import { sayBand, sayRange, type UnitView } from '../../quantities/index.ts';
import { Meter } from '../leaving/meter.tsx';
import { TankYear } from '../leaving/tank-year.tsx';
import { WaysOut } from '../leaving/ways-out.tsx';
import { placeOfAddress } from '../pages.ts';
import { PanelLayers } from '../panel-section/panel-layers.tsx';
import { PanelSection } from '../panel-section/panel-section.tsx';
import { panelOfField } from '../panel-section/place-in-design.ts';
import { useWorkbench } from '../state/context.tsx';
import { type PicturePanel, picturePanels } from '../tank-picture/panels.ts';
import { TankPicture } from '../tank-picture/tank-picture.tsx';
import { Findings, saidFindings } from '../ui/findings.tsx';
import { exactly, NumberItem, Numbers } from '../ui/number.tsx';
import { say, sentenceStart } from '../ui/say.ts';
import { StateMark } from '../ui/state-mark.tsx';
import { Station, type StationProps } from './station.tsx';

export function WhatLeaves({ answer, view }: StationProps): ReactNode {
  const { assessment } = answer;
  const { tank } = assessment;
  return (
    <Station
      name="what-leaves"
      answer={answerSentence(assessment, view)}
      numbers={<TankNumbers assessment={assessment} view={view} />}
    >
      {tank.vessels.length > 0 && <Drawn tank={tank} view={view} />}
      <WaysOut assessment={assessment} view={view} />
      <TankYear assessment={assessment} view={view} />
      <Meter meter={tank.meter} view={view} />
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
  const largest = tank.paths.toSorted((a, b) => b.heat.likely - a.heat.likely)[0];
  const most =
    largest === undefined ? '' : ` The largest way out: ${largest.label}, ${sayBand(largest.heat, 'power', view)}.`;
  if (tank.load.high <= 0) {
    const surplus = { low: -tank.load.high, likely: -tank.load.likely, high: -tank.load.low };
    return `Even in the coldest spell the tank needs no heat: ${sayBand(surplus, 'power', view)} more comes in than goes out.`;
  }
  return `In the coldest spell the tank needs ${sayBand(tank.load, 'power', view)} of heat.${most}`;
}

function TankNumbers({ assessment, view }: { readonly assessment: Assessment; readonly view: UnitView }): ReactNode {
  const { tank, workings } = assessment;
  const damp = tank.panels.filter(({ condenses }) => condenses);
  const shown = { view, workings } as const;
  return (
    <>
      {damp.length > 0 && (
        <p>
          <StateMark
            kind="look"
            word={`Water from the room’s air will settle on: ${damp.map(({ label }) => label).join(', ')}.`}
          />
        </p>
      )}
      <Numbers>
        <NumberItem label="Leaves the tank" band={tank.loss} quantity="power" {...shown} />
        {gains(tank).map(({ label, band, result }) => (
          <NumberItem key={result} {...{ label, band, result }} quantity="power" ink="electricity" {...shown} />
        ))}
        <NumberItem label="Still to be made: the load" band={tank.load} quantity="power" ink="into-water" {...shown} />
        <NumberItem label="Water that evaporates" band={tank.evaporation} quantity="evaporation" {...shown} />
        {tank.falls.map((fall) => (
          <FallItem key={fall.by} fall={fall} assessment={assessment} view={view} />
        ))}
      </Numbers>
    </>
  );
}

/** What warms the water besides a heater; an ultraviolet lamp only where there is one. */
function gains({ gainRanges }: Assessment['tank']) {
  const all = [
    { label: 'Comes from pumps', band: gainRanges.pump, result: 'tank.gains.pump' },
    { label: 'Comes from lights', band: gainRanges.light, result: 'tank.gains.light' },
    { label: 'Comes from ultraviolet lamps', band: gainRanges.ultraviolet, result: 'tank.gains.ultraviolet' },
  ];
  return all.filter(({ band, result }) => result !== 'tank.gains.ultraviolet' || band.high > 0);
}

/** One headline number per fall: the likely time, its range, or that it never falls so far. */
function FallItem({
  fall,
  assessment,
  view,
}: {
  readonly fall: FallAnswer;
  readonly assessment: Assessment;
  readonly view: UnitView;
}): ReactNode {
  const { by, time, range, result } = fall;
  const label = `To fall by ${say(by, 'temperatureDifference', view)} without heat`;
  if (time === null) {
    const soonest = range === null ? '' : `, at the soonest in ${say(range.low, 'duration', view, 2)}`;
    return <SaidItem label={label} words={`never${soonest}`} />;
  }
  return (
    <NumberItem
      label={label}
      band={exactly(time)}
      quantity="duration"
      digits={2}
      view={view}
      note={range === null ? undefined : fallRange(range, view)}
      workings={assessment.workings}
      result={result}
    />
  );
}

function fallRange({ low, high }: NonNullable<FallAnswer['range']>, view: UnitView): string {
  if (high === null) return `${say(low, 'duration', view, 2)} or longer, perhaps never`;
  return sayRange({ low, likely: (low + high) / 2, high }, 'duration', view);
}

function SaidItem({ label, words }: { readonly label: string; readonly words: string }): ReactNode {
  return (
    <div className="number-item">
      <dt>{label}</dt>
      <dd className="number-value">{words}</dd>
    </div>
  );
}

/** The tank to scale, and of the chosen panel its section and its layers. */
function Drawn({ tank, view }: { readonly tank: Assessment['tank']; readonly view: UnitView }): ReactNode {
  const { document } = useWorkbench();
  const panels = useMemo(() => picturePanels(tank), [tank]);
  const [wanted, choose] = useState<string | undefined>(undefined);
  // A link into a layer of another panel leads to that panel.
  useEffect(() => {
    const follow = () => {
      const part = placeOfAddress(location.hash)?.part;
      const panel = part === undefined ? undefined : panelOfField(document, part);
      if (panel !== undefined) choose(panel);
    };
    follow();
    addEventListener('hashchange', follow);
    return () => removeEventListener('hashchange', follow);
  }, [document]);
  const chosen = panels.find(({ key }) => key === wanted) ?? firstChosen(panels);
  return (
    <>
      <section className="block">
        <h3>The tank, panel by panel</h3>
        <TankPicture vessels={tank.vessels} panels={panels} view={view} chosen={chosen?.key} choose={choose} />
      </section>
      {chosen !== undefined && (
        <section className="block">
          <h3 id="panel-title" tabIndex={-1}>
            {sentenceStart(chosen.label)}
          </h3>
          {chosen.answer === undefined ? (
            <p>
              Open water: {sayBand(chosen.heat, 'power', view)} by vapour, warm air and radiation, likely{' '}
              {say(chosen.flux, 'heatFlux', view)}.
            </p>
          ) : (
            <PanelSection panel={chosen.answer} roomDewPoint={tank.roomDewPoint} view={view} />
          )}
          <PanelLayers key={chosen.key} vessel={chosen.vessel} panel={chosen.panel} />
        </section>
      )}
    </>
  );
}

/** Where water settles, else where most heat leaves through layers. */
function firstChosen(panels: readonly PicturePanel[]): PicturePanel | undefined {
  const layered = panels.filter(({ answer }) => answer !== undefined);
  return (
    layered.find(({ answer }) => answer?.condenses) ??
    layered.toSorted((a, b) => b.heat.likely - a.heat.likely)[0] ??
    panels[0]
  );
}
