// What is to be known of the tank's answers beside the findings of its model: faces that sweat, what a meter says against the
// sizes, and what the cooling of the water leaves out.

import type { Fact, Finding, Severity } from '../../quantities/index.ts';
import { dampFaces, type TankLoad } from '../../tank/index.ts';
import { roomDewPoint } from '../answers/tank.ts';
import type { TankResults } from '../answers/tank-values.ts';
import type { MeterAnswer } from '../assessment/tank-answer.ts';
import { panelLabel } from '../wording/labels.ts';

/** Every code this file can report. */
const tankAnswerFindingCodes = [
  'surfaceBelowDewPoint',
  'meterDisagrees',
  'meterAdopted',
  'meterThen',
  'coolingSimplified',
] as const;

export type TankAnswerFindingCode = (typeof tankAnswerFindingCodes)[number];

/** Findings of the tank at the coldest spell, those of its model first. */
export function tankFindings(results: TankResults, meter: MeterAnswer | null): readonly Finding[] {
  return [
    ...results.tank.warnings,
    ...dampFindings(results),
    ...(meter === null ? [] : meterFindings(meter)),
    coolingSimplified(),
  ];
}

/** Faces that the room's air leaves water on, at the coldest spell or in the first month in which any does. */
function dampFindings({ surroundings, tank, monthLoads }: TankResults): readonly Finding[] {
  const moments = [
    { when: 'in the coldest spell', load: tank, room: surroundings.spell.roomTemperature },
    ...surroundings.months.map(({ month, roomTemperature }, index) => {
      return { when: `in ${month}`, load: monthLoads[index]!, room: roomTemperature };
    }),
  ];
  for (const { when, load, room } of moments) {
    const dew = roomDewPoint(load, room);
    const damp = dew === null ? [] : facesBelow(load, dew);
    if (damp.length > 0) return [surfaceBelowDewPoint(when, damp, dew!)];
  }
  return [];
}

interface NamedFace {
  readonly label: string;
  readonly temperature: number;
}

/** Of panels that water touches, of lids and of what stands above the water. */
function facesBelow({ intermediates }: TankLoad, dew: number): readonly NamedFace[] {
  if (intermediates.kind !== 'built') return [];
  return intermediates.vessels.flatMap(({ name: vessel, panels, lid }) =>
    [...panels, ...(lid === undefined ? [] : [lid.lid, ...lid.freeboard])].flatMap((state) =>
      dampFaces(state, { room: dew }).map(({ temperature }) => ({
        label: panelLabel(vessel, state.name),
        temperature,
      })),
    ),
  );
}

function surfaceBelowDewPoint(when: string, faces: readonly NamedFace[], dew: number): Finding {
  const coldest = Math.min(...faces.map(({ temperature }) => temperature));
  return finding(
    'surfaceBelowDewPoint',
    'look',
    {
      when: { word: when },
      faces: { word: [...new Set(faces.map(({ label }) => label))].join(', ') },
      coldest: { value: coldest, quantity: 'temperature' },
      dewPoint: { value: dew, quantity: 'temperature' },
    },
    'dew point of the room’s air; ISO 6946 surface resistances',
    'Wrap these faces, dry the air, or see that water running down harms nothing; it also brings heat that is left out here.',
  );
}

function meterFindings({ ratio, agrees, adopted, measuredLoss, modelledLoss }: MeterAnswer): readonly Finding[] {
  const facts: Readonly<Record<string, Fact>> = {
    ratio: { value: ratio.likely, quantity: 'fraction' },
    measured: { value: measuredLoss.likely, quantity: 'power' },
    modelled: { value: modelledLoss.likely, quantity: 'power' },
  };
  return [
    ...(agrees
      ? []
      : [
          finding(
            'meterDisagrees',
            'look',
            facts,
            'measured against modelled loss, ranges of both combined',
            'Look for what the design does not tell: a draught, a gap, a pump or lamp left out, a heater that another meter counts.',
          ),
        ]),
    ...(adopted
      ? [
          finding(
            'meterAdopted',
            'note',
            facts,
            'own simplification, no source',
            'What the model misses is taken to act in the same proportion on every path and at every temperature.',
          ),
        ]
      : []),
    finding(
      'meterThen',
      'note',
      {},
      'own simplification, no source',
      'Measure in the heating season, with the lid, pumps and lights as they are now, and begin and end with the water equally warm.',
    ),
  ];
}

function coolingSimplified(): Finding {
  return finding(
    'coolingSimplified',
    'note',
    {},
    'own simplification, no source',
    'Glass, sand, rock and stand hold heat too, so the tank cools rather slower than this.',
  );
}

function finding(
  code: TankAnswerFindingCode,
  severity: Severity,
  facts: Readonly<Record<string, Fact>>,
  source: string,
  remedy: string,
): Finding {
  return { code, severity, subject: 'model', facts, source, remedy, needsLicensedPerson: false };
}
