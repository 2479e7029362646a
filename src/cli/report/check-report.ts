// The Assessment as a person reads it in a terminal: verdict, tank, machine, limits, bills, doubt, findings, assumptions,
// caution. Figures of the charge are withheld where the answer is not to build.

import { type Assessment, type LimitMargin, standingTitles, withoutCharge } from '../../assess/index.ts';
import { type Band, type QuantityName, sayBand, sayQuantity, type UnitView } from '../../quantities/index.ts';
import { billsSections } from './bills.ts';
import { flipWords, measureNextSection } from './doubt.ts';
import { limitsRows } from './machine/limits-rows.ts';
import { printableLine } from './printable.ts';
import {
  assumptionCount,
  assumptionsSection,
  cautionSections,
  influenceSection,
  pressureRows,
} from './report-sections.ts';
import { tankSection } from './tank.ts';
import { columns, paragraph, section } from './text-table.ts';

export function checkReport(whole: Assessment, view: UnitView): string {
  const assessment = withoutCharge(whole);
  return [
    verdict(assessment),
    tankSection(assessment.tank, view),
    machineSection(assessment, view),
    limitsSection(assessment.operating.limits, view),
    sizeSection(assessment, view),
    billsSections(assessment, notForThisMachine(assessment), view),
    influenceSection(
      'What matters most for the margin (heat brought less heat needed)',
      'the margin',
      assessment.influences.map((influence) => ({
        ...influence,
        ends: [influence.marginAtLow, influence.marginAtHigh],
        flips: flipWords(influence, assessment.currency, view),
      })),
      view,
    ),
    measureNextSection(assessment, view),
    cautionSections(assessment, view),
    assumptionsSection(assessment.assumptions, assessment.currency, view),
    paragraph(assessment.caution),
  ].join('\n');
}

function verdict({ designName, standing, sentence, assumptions }: Assessment): string {
  return [
    printableLine(designName),
    standingTitles[standing].toUpperCase(),
    paragraph(sentence),
    '',
    assumptionCount(assumptions.length),
    '',
  ].join('\n');
}

function machineSection(assessment: Assessment, view: UnitView): string {
  const { operating, flows, seasonCop } = assessment;
  const row = (label: string, band: Band, quantity: QuantityName) => [label, sayBand(band, quantity, view)];
  const source = sayQuantity(operating.sourceTemperature, 'temperature', view);
  const atmosphere = operating.atmosphericPressure;
  const { blend } = operating;
  const dew = blend === null ? '' : ' (dew)';
  return section(
    `${notForThisMachine(assessment) ? 'Not for this machine, for study only. ' : ''}The machine in the coldest spell (${operating.refrigerant}, source ${source})`,
    columns([
      row('heat to the water', assessment.heatDelivered, 'power'),
      row('electricity, all of it', assessment.systemPower, 'electricPower'),
      row('electricity of the compressor', assessment.compressorPower, 'electricPower'),
      row('COP of the compressor', assessment.compressorCop, 'ratio'),
      row('COP of the system', assessment.systemCop, 'ratio'),
      ...(seasonCop === null ? [] : [row('COP over the year, heater included', seasonCop, 'ratio')]),
      row(`evaporating${dew}`, operating.evaporatingTemperature, 'temperature'),
      ...(blend === null
        ? []
        : [
            row('  bubble', blend.evaporatingBubbleTemperature, 'temperature'),
            row('  glide', blend.evaporatingGlide, 'temperatureDifference'),
          ]),
      ...pressureRows(operating.evaporatingPressure, atmosphere.likely, view),
      row(`condensing${dew}`, operating.condensingTemperature, 'temperature'),
      ...(blend === null
        ? []
        : [
            row('  bubble', blend.condensingBubbleTemperature, 'temperature'),
            row('  glide', blend.condensingGlide, 'temperatureDifference'),
          ]),
      ...pressureRows(operating.condensingPressure, atmosphere.likely, view),
      row('air pressure of the place', atmosphere, 'pressure'),
      row('discharge gas', operating.dischargeTemperature, 'temperature'),
      row('pressure ratio', operating.pressureRatio, 'ratio'),
      ['running', `${sayQuantity(flows.runFraction, 'fraction', view)} of the time`],
      ['left to a backup heater', flows.backup === 0 ? 'nothing' : `about ${sayQuantity(flows.backup, 'power', view)}`],
    ]),
  );
}

function limitsSection(limits: readonly LimitMargin[], view: UnitView): string {
  return section(
    'Limits usual for such a machine, the nearest first, in the coldest spell',
    columns(limitsRows(limits, view)),
  );
}

function sizeSection({ sizing, operating }: Assessment, view: UnitView): string {
  // Of a blend the condenser's approach counts from its bubble temperature, the evaporator's from its dew temperature.
  const [bubble, dew] = operating.blend === null ? ['', ''] : [' (bubble)', ' (dew)'];
  const { condenser, evaporator } = sizing;
  const approach = (kelvin: number) => sayQuantity(kelvin, 'temperatureDifference', view);
  const rows = columns([
    [
      `coil in the tank, ${sayQuantity(condenser.tubeDiameter, 'length', view)} tube, ${approach(condenser.approach)} below condensing${bubble}`,
      sayBand(condenser.coilLength, 'length', view),
    ],
    [
      `evaporator face, evaporating${dew} ${approach(evaporator.approach)} below the source`,
      sayBand(evaporator.faceArea, 'area', view),
    ],
    ['  air through it', sayBand(evaporator.airFlow, 'volumeFlow', view)],
  ]);
  const leftOut = [condenser.leavesOut, evaporator.leavesOut].filter((text) => text !== '');
  return section(
    'Exchangers that such temperature differences imply',
    [rows, ...leftOut.map((text) => paragraph(`Left out: ${text}`, '  '))].join('\n'),
  );
}

/** Whether the compressor was made for another fluid: the figures are then shown for study, unranked. */
function notForThisMachine({ findings, cautions }: Assessment): boolean {
  return [...findings, ...cautions].some(({ code }) => code === 'notForThisMachine');
}
