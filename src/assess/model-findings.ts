// What the models themselves leave in doubt about this design, as findings: warnings of the parts, months without an
// operating point, and ends of ranges at which the engine has no answer.

import type { Fact, Finding, Severity } from '../quantities/index.ts';
import type { UnansweredEnd } from './doubt/doubt.ts';
import type { StageResults } from './stages/index.ts';
import type { StatesFrom } from './stages/states.ts';

/** Every code this file can report. */
export const modelFindingCodes = [
  'wetDischarge',
  'littleFlow',
  'smallLift',
  'glideApproximated',
  'loopVelocityHigh',
  'powerLawExtrapolated',
  'shellHeatLarge',
  'dryEvaporator',
  'dryEvaporatorElsewhere',
  'efficiencyUnusuallyLow',
  'efficiencyUnusuallyHigh',
  'runsSeldom',
  'surroundingsHeld',
  'surplusHeatUnused',
  'monthsWithoutMachine',
  'accountsLeaveOut',
  'statesFromTables',
  'rangeEndWithoutAnswer',
] as const;

export type ModelFindingCode = (typeof modelFindingCodes)[number];

/** Findings of the models from one run of the stages and from the variation of its inputs. */
export function modelFindings(
  results: StageResults,
  unanswered: readonly UnansweredEnd[],
  states: StatesFrom['kind'],
): readonly Finding[] {
  return [
    ...ratingFindings(results),
    ...operatingFindings(results),
    ...glideFindings(results),
    ...shellFindings(results),
    ...sizingFindings(results),
    ...runFindings(results),
    ...surroundingsFindings(results),
    ...yearFindings(results),
    accountsLeaveOut(),
    ...(states === 'tables' ? [statesFromTables()] : []),
    ...unanswered.map(unansweredFinding),
  ];
}

function ratingFindings({ compressor }: StageResults): readonly Finding[] {
  const { rated } = compressor;
  if (rated === undefined) return [];
  return rated.warnings.map((code) =>
    finding(
      code,
      'look',
      { efficiency: { value: rated.point.overallEfficiency, quantity: 'fraction' } },
      'own judgement from published small hermetic machines',
      'Check the unit, the mains frequency and the rating point printed with the capacity, and that the power is electric.',
    ),
  );
}

function operatingFindings({ operating }: StageResults): readonly Finding[] {
  const facts: Record<(typeof operating.warnings)[number], Readonly<Record<string, Fact>>> = {
    wetDischarge: { discharge: { value: operating.dischargeTemperature, quantity: 'temperature' } },
    littleFlow: { volumetricEfficiency: { value: operating.volumetricEfficiency, quantity: 'fraction' } },
    smallLift: { lift: { value: operating.lift, quantity: 'temperatureDifference' } },
  };
  const remedies: Record<(typeof operating.warnings)[number], string> = {
    wetDischarge: 'Give the share of the power that leaves through the shell; the assumed one is too large here.',
    littleFlow: 'Treat the capacity as a guess; look for a published rating near these temperatures.',
    smallLift: 'Treat power and capacity as a guess; small machines are not described at so small a lift.',
  };
  const warned = operating.warnings.map((code) =>
    finding(code, 'look', facts[code], 'limits of the compressor model', remedies[code]),
  );
  return operating.pressureRatio < lowestCheckedPressureRatio ? [...warned, powerLawExtrapolated(operating)] : warned;
}

/** What is simplified of a blend. */
function glideFindings({ operating: { evaporating, condensing } }: StageResults): readonly Finding[] {
  if (condensing.glide === 0) return [];
  return [
    finding(
      'glideApproximated',
      'note',
      {
        evaporatingGlide: { value: evaporating.glide, quantity: 'temperatureDifference' },
        condensingGlide: { value: condensing.glide, quantity: 'temperatureDifference' },
      },
      'published equation of the blend as one substance, with curves of bubble and dew pressure',
      'Approaches count from dew in the evaporator and from bubble in the condenser, the nearest to source and water: pressures and exchangers are rather on the safe side. A leak changes the mixture; that is not followed.',
    ),
  ];
}

/** The compressor's power law was held against measured rows from this pressure ratio up (R600a, F. Fortkamp 2022). */
const lowestCheckedPressureRatio = 4;

function powerLawExtrapolated({ pressureRatio }: StageResults['operating']): Finding {
  return finding(
    'powerLawExtrapolated',
    'note',
    {
      pressureRatio: { value: pressureRatio, quantity: 'ratio' },
      checked: { value: lowestCheckedPressureRatio, quantity: 'ratio' },
    },
    'R600a data set of F. Fortkamp 2022, pressure ratios 4 to 13',
    'A published capacity and power near these temperatures would replace the extrapolation.',
  );
}

/** Largest conductance from a small dome's shell to the air around it [W/K]: typical, from memory. */
const largestShellConductance = 1.5;

/** The assumed share of shell heat, held against the shell temperature it would need. */
function shellFindings({ operating, hardware, surroundings }: StageResults): readonly Finding[] {
  if (hardware.shellPlace === 'outdoors') return [];
  const { roomTemperature, sourceTemperature } = surroundings.spell;
  const around = hardware.shellPlace === 'tankRoom' ? roomTemperature : sourceTemperature;
  const shellTemperature = around + operating.shellHeat / largestShellConductance;
  if (shellTemperature <= operating.dischargeTemperature) return [];
  return [
    finding(
      'shellHeatLarge',
      'look',
      {
        shellHeat: { value: operating.shellHeat, quantity: 'power' },
        shellTemperature: { value: shellTemperature, quantity: 'temperature' },
        dischargeTemperature: { value: operating.dischargeTemperature, quantity: 'temperature' },
      },
      'heat balance of the shell; at most 1.5 W/K to the air around it, from memory',
      'A smaller share leaves through the shell at so mild a lift: the heat to the water and the discharge temperature are rather higher than shown.',
    ),
  ];
}

function sizingFindings({ sizing, hardware }: StageResults): readonly Finding[] {
  const { condenser, evaporator } = sizing;
  const coil = loopFindings(condenser);
  if (hardware.sourceIsTankRoom && evaporator.warnings.length === 0) return coil;
  return [
    ...coil,
    finding(
      hardware.sourceIsTankRoom ? 'dryEvaporator' : 'dryEvaporatorElsewhere',
      'note',
      { evaporating: { value: sizing.evaporatorRequest.evaporatingTemperature, quantity: 'temperature' } },
      'simplification of the evaporator’s size',
      'The face is sized dry: condensing vapour would carry a part of the heat, frost would block the air.',
    ),
  ];
}

/** Of the loop's water; a coil that refrigerant flows through has none. */
function loopFindings({ loop, warnings }: StageResults['sizing']['condenser']): readonly Finding[] {
  if (loop === null) return [];
  return warnings.map((code) =>
    finding(
      code,
      'look',
      { velocity: { value: loop.velocity, quantity: 'speed' } },
      'common practice, no source',
      'Plan several coils side by side, or a wider tube.',
    ),
  );
}

/** Running less than this share of the coldest spell, the machine is far larger than the tank: common practice, no source. */
const seldomRunning = 0.15;

/** Starts are not modelled; a machine that is much too large does little else. */
function runFindings({ plant }: StageResults): readonly Finding[] {
  if (plant.heatNeeded === 0 || plant.runFraction >= seldomRunning) return [];
  return [
    finding(
      'runsSeldom',
      'look',
      { share: { value: plant.runFraction, quantity: 'fraction' } },
      'common practice, no source',
      'Look for a smaller machine: each start costs heat, stresses the motor and swings the water’s temperature, and none of that is in these figures.',
    ),
  ];
}

/** Room and source stay as warm as the design says, whatever the machine takes out of them. */
function surroundingsFindings({ plant, hardware }: StageResults): readonly Finding[] {
  if (plant.heatTakenFromSource === 0) return [];
  const { place, remedy } = hardware.sourceIsTankRoom
    ? { place: 'the room of the tank', remedy: 'The accounts charge the room for it in the months it is heated.' }
    : {
        place: 'the other room',
        remedy:
          'An unheated room loses some 50 to 100 W/K (common practice, no source): reckon how much colder it settles, and give that temperature.',
      };
  const heatTaken: Fact = { value: plant.heatTakenFromSource, quantity: 'power' };
  return [
    finding('surroundingsHeld', 'note', { heatTaken, place: { word: place } }, 'own simplification, no source', remedy),
  ];
}

function statesFromTables(): Finding {
  return finding(
    'statesFromTables',
    'note',
    {},
    'interpolation in tables made from the equation of the fluid',
    'Reckon the design without tables to have every state from the equation itself; no figure of the verdict moves by more than a ten thousandth.',
  );
}

/** What stands in no account because it is the same in all of them. */
function accountsLeaveOut(): Finding {
  return finding(
    'accountsLeaveOut',
    'note',
    {},
    'own simplification, no source',
    'Compare the accounts with each other; none of them is the whole bill of the tank.',
  );
}

function yearFindings({ year }: StageResults): readonly Finding[] {
  const { surplusHeat } = year.energies;
  const unused =
    surplusHeat > 0
      ? [
          finding(
            'surplusHeatUnused',
            'note',
            { surplus: { value: surplusHeat, quantity: 'energy' } },
            'own simplification, no source',
            'In truth the water stands warmer then. It is the same in every scenario, so their order does not depend on it.',
          ),
        ]
      : [];
  if (year.monthsWithoutMachine.length === 0) return unused;
  return [
    ...unused,
    finding(
      'monthsWithoutMachine',
      'look',
      { months: { word: year.monthsWithoutMachine.join(', ') } },
      'limits of the loop model',
      'In these months a backup heater does everything in the accounts.',
    ),
  ];
}

/** An end of a range at which the engine has no answer. */
export function unansweredFinding({ label, end, message }: UnansweredEnd): Finding {
  return finding(
    'rangeEndWithoutAnswer',
    'look',
    { input: { word: label }, end: { word: end }, reason: { word: message } },
    'one-at-a-time variation',
    'Narrow this range: at that end the engine finds no answer, so the bands shown are too narrow.',
  );
}

function finding(
  code: ModelFindingCode,
  severity: Severity,
  facts: Readonly<Record<string, Fact>>,
  source: string,
  remedy: string,
): Finding {
  return { code, severity, subject: 'model', facts, source, remedy, needsLicensedPerson: false };
}
