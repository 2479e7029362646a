// Other refrigerants in the same machine, as a person reads it in a terminal: the one it was made for, then what is not for it.

import { limitLabel, messageInView, type OtherFluid, sayFinding } from '../../../assess/index.ts';
import { listed, type QuantityName, sayBand, type UnitView } from '../../../quantities/index.ts';
import { columnAndText, paragraph, section } from '../text-table.ts';

export function otherFluidsSections(fluids: readonly OtherFluid[], view: UnitView): readonly string[] {
  return fluids.map((fluid, index) => {
    const isFirstOther = fluid.forStudyOnly && (index === 0 || !fluids[index - 1]!.forStudyOnly);
    const heading = isFirstOther
      ? 'NOT FOR THIS MACHINE, FOR STUDY ONLY: other fluids in it, in the coldest spell\n\n'
      : '';
    const title = fluid.isMadeFor ? `${fluid.fluid}, which it was made for, in the coldest spell` : fluid.fluid;
    return `${heading}${section(title, fluidBody(fluid, view))}`;
  });
}

const numbers = [
  ['heat', 'heat out of the condenser', 'power'],
  ['power', 'electricity', 'electricPower'],
  ['cop', 'COP of the compressor', 'ratio'],
  ['current', 'current', 'current'],
  ['motorLoad', 'load of the motor, over its best load', 'fraction'],
  ['dischargeTemperature', 'discharge gas', 'temperature'],
  ['evaporatingPressure', 'evaporating pressure', 'pressure'],
  ['condensingPressure', 'condensing pressure', 'pressure'],
] as const satisfies readonly (readonly [string, string, QuantityName])[];

function fluidBody({ point, stops, oil, materials, safetyClass }: OtherFluid, view: UnitView): string {
  const told = stops.map((stop) => {
    const { title, text } = sayFinding(stop, view);
    return paragraph(`Stop: ${title}. ${text}`, '  ');
  });
  const facts: readonly (readonly [string, string])[] = [
    ['safety class', safetyClass],
    ['oil', oil.words],
    ['materials', materials.words],
  ];
  if (!point.ok) {
    return [
      ...told,
      paragraph(`No running point: ${messageInView(point.message, view)}`, '  '),
      columnAndText(facts),
    ].join('\n');
  }
  const rows = numbers.map(([name, label, quantity]): readonly [string, string] => [
    label,
    sayBand(point[name], quantity, view),
  ]);
  const limits: readonly (readonly [string, string])[] =
    point.passed.length === 0 ? [] : [['beyond', listed(point.passed.map((name) => limitLabel(name)))]];
  return [...told, columnAndText([...rows, ...limits, ...facts])].join('\n');
}
