// Where it settles: the operating point at the coldest spell, its p-h picture, the exchangers its approaches imply, and
// which uncertain input moves the verdict most.

import { lazy, type ReactNode } from 'react';
import type { Assessment, OperatingAnswer, SizingAnswer } from '../../assess/index.ts';
import { pictureTitle, stateTable } from '../../charts/index.ts';
import { sayBand, type UnitView } from '../../quantities/index.ts';
import { PicturePlace } from '../charts/picture-place.tsx';
import { DataTable } from '../ui/data-table.tsx';
import { Findings, saidFindings } from '../ui/findings.tsx';
import { HowComputed } from '../ui/how-computed.tsx';
import { Later } from '../ui/later.tsx';
import { NumberItem, Numbers } from '../ui/number.tsx';
import { ResultLink } from '../ui/result-link.tsx';
import { say, sayNeed, sentenceStart } from '../ui/say.ts';
import { Station, type StationProps } from './station.tsx';

// Loaded when they come near the view, or after a rest.
const LoopPicture = lazy(() => import('./loop-picture.tsx').then((part) => ({ default: part.LoopPicture })));
const WhatMatters = lazy(() => import('../doubt/what-matters.tsx').then((part) => ({ default: part.WhatMatters })));
const MeasureNext = lazy(() => import('../doubt/measure-next.tsx').then((part) => ({ default: part.MeasureNext })));

export function WhereItSettles({ answer, view }: StationProps): ReactNode {
  const { assessment } = answer;
  const { operating } = assessment;
  return (
    <Station
      name="where-it-settles"
      answer={answerSentence(assessment, view)}
      numbers={
        <Numbers>
          <NumberItem
            label={operating.blend === null ? 'Evaporating' : 'Evaporating (dew)'}
            band={operating.evaporatingTemperature}
            quantity="temperature"
            view={view}
            ink="from-source"
            note={
              <ResultLink
                workings={assessment.workings}
                result={operating.evaporatingPressure.result}
                of="evaporating pressure"
              >
                {sayBand(operating.evaporatingPressure, 'pressure', view)}
              </ResultLink>
            }
            workings={assessment.workings}
          />
          <NumberItem
            label={operating.blend === null ? 'Condensing' : 'Condensing (dew)'}
            band={operating.condensingTemperature}
            quantity="temperature"
            view={view}
            ink="into-water"
            note={
              <ResultLink
                workings={assessment.workings}
                result={operating.condensingPressure.result}
                of="condensing pressure"
              >
                {sayBand(operating.condensingPressure, 'pressure', view)}
              </ResultLink>
            }
            workings={assessment.workings}
          />
          {operating.blend !== null && (
            <>
              <NumberItem
                label="Glide while boiling"
                band={operating.blend.evaporatingGlide}
                quantity="temperatureDifference"
                view={view}
                note={`down to ${sayBand(operating.blend.evaporatingBubbleTemperature, 'temperature', view)} (bubble)`}
                workings={assessment.workings}
              />
              <NumberItem
                label="Glide while condensing"
                band={operating.blend.condensingGlide}
                quantity="temperatureDifference"
                view={view}
                note={`down to ${sayBand(operating.blend.condensingBubbleTemperature, 'temperature', view)} (bubble)`}
                workings={assessment.workings}
              />
            </>
          )}
          <NumberItem
            label="Discharge gas"
            band={operating.dischargeTemperature}
            quantity="temperature"
            view={view}
            workings={assessment.workings}
          />
          <NumberItem
            label="Heat to the water"
            band={assessment.heatDelivered}
            quantity="power"
            view={view}
            ink="into-water"
            workings={assessment.workings}
          />
          <NumberItem
            label="Electricity, all parts"
            band={assessment.systemPower}
            quantity="electricPower"
            view={view}
            ink="electricity"
            workings={assessment.workings}
          />
          <NumberItem
            label="COP of the compressor alone"
            band={assessment.compressorCop}
            quantity="ratio"
            view={view}
            workings={assessment.workings}
          />
          <NumberItem
            label="COP with fan, pump, controls"
            band={assessment.systemCop}
            quantity="ratio"
            view={view}
            workings={assessment.workings}
          />
          {assessment.seasonCop !== null && (
            <NumberItem
              label="COP over the year, heater included"
              band={assessment.seasonCop}
              quantity="ratio"
              view={view}
              workings={assessment.workings}
            />
          )}
        </Numbers>
      }
    >
      <Picture operating={operating} view={view} />
      <section className="block">
        <h3>States of the refrigerant</h3>
        <DataTable table={stateTable(operating.points, view)} workings={assessment.workings} />
      </section>
      <Sizes sizing={assessment.sizing} answer={answer} view={view} />
      <section className="block">
        <h3 id="what-matters-title" tabIndex={-1}>
          What matters most
        </h3>
        <Later>
          <WhatMatters assessment={assessment} view={view} />
        </Later>
      </section>
      <section className="block">
        <h3 id="measure-next-title" tabIndex={-1}>
          Measure this next
        </h3>
        <Later>
          <MeasureNext assessment={assessment} view={view} />
        </Later>
      </section>
      <section className="block">
        <h3 id="findings-title" tabIndex={-1}>
          What the model leaves open
        </h3>
        <Findings said={saidFindings(answer, ['model'])} none="The model raised no doubt of its own at this point." />
      </section>
    </Station>
  );
}

function Picture({ operating, view }: { operating: OperatingAnswer; view: UnitView }): ReactNode {
  const title = pictureTitle('pressureEnthalpy', operating.refrigerant);
  return (
    <Later place={(whenNear) => <PicturePlace title={title} whenNear={whenNear} />}>
      <LoopPicture operating={operating} view={view} title={title} />
    </Later>
  );
}

function answerSentence({ operating, heatDelivered, tankLoad }: Assessment, view: UnitView): string {
  const from = sayBand(operating.evaporatingTemperature, 'temperature', view);
  const to = sayBand(operating.condensingTemperature, 'temperature', view);
  return `The loop would settle between ${from} and ${to}, and bring ${sayBand(heatDelivered, 'power', view)} into the water. The tank needs ${sayNeed(tankLoad, view)}.`;
}

function Sizes({ sizing, answer, view }: StationProps & { sizing: SizingAnswer }): ReactNode {
  const { condenser, evaporator } = sizing;
  const { workings } = answer.assessment;
  return (
    <section className="block">
      <h3>What the approach temperatures imply</h3>
      <p className="quiet">
        An approach is the temperature difference that drives the heat through an exchanger. Assuming one means assuming
        a size: a smaller approach needs more coil or more air.
      </p>
      <div className="sizes">
        <div>
          <h4>Into the water, approach {say(condenser.approach, 'temperatureDifference', view)}</h4>
          <p>
            {sentenceStart(sayBand(condenser.coilLength, 'length', view))} of{' '}
            {say(condenser.tubeDiameter, 'length', view)} tube:{' '}
            <ResultLink workings={workings} result={condenser.coilArea.result} of="surface of the coil">
              {say(condenser.coilArea.likely, 'area', view, 2)}
            </ResultLink>{' '}
            of surface.
          </p>
          <p className="quiet">Left out: {condenser.leavesOut}.</p>
          <HowComputed workings={workings} result={condenser.coilLength.result} of="length of the coil" />
        </div>
        <div>
          <h4>Out of the source, approach {say(evaporator.approach, 'temperatureDifference', view)}</h4>
          <p>
            {sentenceStart(sayBand(evaporator.faceArea, 'area', view))} of coil face, with{' '}
            <ResultLink workings={workings} result={evaporator.airFlow.result} of="air through the coil">
              {sayBand(evaporator.airFlow, 'volumeFlow', view)}
            </ResultLink>{' '}
            of air through it.
          </p>
          <p className="quiet">Left out: {evaporator.leavesOut}.</p>
          <HowComputed workings={workings} result={evaporator.faceArea.result} of="face of the coil" />
        </div>
      </div>
    </section>
  );
}
