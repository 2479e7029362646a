// What the models themselves leave in doubt about this design, as findings: warnings of the parts, months without an
// operating point, and ends of ranges at which the engine has no answer.

import type { ResolvedDesign } from '../../design/index.ts';
import {
  type Contradiction,
  evidenceQuantityNames,
  type IdentifiedMachine,
  nameplateContradictions,
  type Residual,
} from '../../parts/compressor/index.ts';
import type { Fact, Finding, Severity } from '../../quantities/index.ts';
import type { MachineAnswer } from '../assessment/machine-answer.ts';
import type { UnansweredEnd } from '../doubt/doubt.ts';
import type { StageResults } from '../stages/index.ts';
import type { StatesFrom } from '../stages/states.ts';

/** Every code this file can report. */
const modelFindingCodes = [
  'wetDischarge',
  'littleFlow',
  'smallLift',
  'glideApproximated',
  'loopVelocityHigh',
  'dryEvaporator',
  'dryEvaporatorElsewhere',
  'machineWithoutPoints',
  'machineBeyondItsPoints',
  'machineValueDisagrees',
  'machinePointsSetAside',
  'coefficientsUnusual',
  'numbersUnusual',
  'nameplateContradictsItself',
  'runsSeldom',
  'surroundingsHeld',
  'surplusHeatUnused',
  'monthsWithoutMachine',
  'accountsLeaveOut',
  'statesFromTables',
  'rangeEndWithoutAnswer',
] as const;

export type ModelFindingCode = (typeof modelFindingCodes)[number];

/** What the findings of the models are made from. */
export interface ModelFindingsInput {
  readonly results: StageResults;
  readonly machine: MachineAnswer;
  readonly nameplate: ResolvedDesign['machine']['compressor']['nameplate'];
  readonly unanswered: readonly UnansweredEnd[];
  readonly states: StatesFrom['kind'];
}

/** Findings of the models from one run of the stages and from the variation of its inputs. */
export function modelFindings(input: ModelFindingsInput): readonly Finding[] {
  const { results, machine, nameplate, unanswered, states } = input;
  return [
    ...machineFindings(results, machine),
    ...nameplateFindings(nameplate),
    ...operatingFindings(results),
    ...glideFindings(results),
    ...sizingFindings(results),
    ...runFindings(results),
    ...surroundingsFindings(results),
    ...yearFindings(results),
    accountsLeaveOut(),
    ...(states === 'tables' ? [statesFromTables()] : []),
    ...unanswered.map(unansweredFinding),
  ];
}

/** Numbers of one plate that are hardly of one machine. */
export function nameplateFindings(nameplate: ModelFindingsInput['nameplate']): readonly Finding[] {
  return nameplateContradictions(nameplate).map(nameplateFinding);
}

function nameplateFinding({ of, value, usual, source }: Contradiction): Finding {
  const fact = (number: number): Fact => ({ value: number, quantity: 'ratio' });
  return finding(
    'nameplateContradictsItself',
    'look',
    { of: { word: of }, value: fact(value.likely), usualLow: fact(usual.low), usualHigh: fact(usual.high) },
    source,
    'Read the plate again: volts, amps and watts may be of different parts of the appliance, or of other mains.',
  );
}

/** How far the machine is known where it would run, and what of its description does not fit the rest. */
function machineFindings({ identified, operating }: StageResults, { doubt }: MachineAnswer): readonly Finding[] {
  const disagreeing = disagreementFindings(identified);
  const halfWidths = {
    flow: { value: doubt.flow.halfWidth, quantity: 'fraction' },
    power: { value: doubt.power.halfWidth, quantity: 'fraction' },
  };
  if (doubt.reasons.length === 0) return disagreeing;
  if (doubt.reasons.includes('noPoints')) {
    return [
      ...disagreeing,
      finding(
        'machineWithoutPoints',
        'note',
        halfWidths,
        'ranges of such machines and a model of hermetic compressors; its own doubt is our judgement',
        'A capacity and a power printed for a named rating point, or an hour on the bench with a plug-in meter and clamped thermometers, would narrow every figure of the machine.',
      ),
    ];
  }
  return [
    ...disagreeing,
    finding(
      'machineBeyondItsPoints',
      'look',
      {
        reasons: { word: doubt.reasons.join(', ') },
        evaporating: { value: operating.evaporating.temperature, quantity: 'temperature' },
        condensing: { value: operating.condensing.temperature, quantity: 'temperature' },
        ...halfWidths,
      },
      'own judgement: the doubt of the model grows with the distance from what is known',
      'Look for a rating nearer to these temperatures, or measure the machine where it runs.',
    ),
  ];
}

/** Given values that do not fit everything else that was given, and points that were left out for it. */
export function disagreementFindings({
  residuals,
  setAside,
}: Pick<IdentifiedMachine, 'residuals' | 'setAside'>): readonly Finding[] {
  const disagreeing = residuals.filter(({ disagrees }) => disagrees).map(valueDisagrees);
  return setAside.length === 0 ? disagreeing : [pointsSetAside(setAside), ...disagreeing];
}

function pointsSetAside(setAside: IdentifiedMachine['setAside']): Finding {
  const most = Math.max(...setAside.map(({ volumetricEfficiency }) => volumetricEfficiency));
  return finding(
    'machinePointsSetAside',
    'look',
    {
      labels: { word: setAside.map(({ label }) => label).join(', ') },
      volumetricEfficiency: { value: most, quantity: 'fraction' },
    },
    'likely machine against everything that was given of it',
    'Check these points, the displacement and the clearance. If they are right, take what is told near them as a guess: so near to no flow the model of the machine does not hold.',
  );
}

function valueDisagrees({ label, quantity, given, modelled, deviation }: Residual): Finding {
  const name = evidenceQuantityNames[quantity];
  return finding(
    'machineValueDisagrees',
    'look',
    {
      label: { word: label },
      value: { word: quantity },
      given: { value: given, quantity: name },
      modelled: { value: modelled, quantity: name },
      deviation:
        quantity === 'dischargeTemperature'
          ? { value: deviation, quantity: 'temperatureDifference' }
          : { value: deviation, quantity: 'fraction' },
    },
    'likely machine against everything that was given of it',
    'Check this value, its unit, mains and conditions, and that it is of this very machine: nothing else that was given fits it.',
  );
}

/** Warnings of one operating point. */
export function operatingFindings({ operating }: Pick<StageResults, 'operating'>): readonly Finding[] {
  const facts: Record<(typeof operating.warnings)[number], Readonly<Record<string, Fact>>> = {
    wetDischarge: { discharge: { value: operating.dischargeTemperature, quantity: 'temperature' } },
    littleFlow: { volumetricEfficiency: { value: operating.volumetricEfficiency, quantity: 'fraction' } },
    smallLift: { lift: { value: operating.lift, quantity: 'temperatureDifference' } },
  };
  const remedies: Record<(typeof operating.warnings)[number], string> = {
    wetDischarge:
      'Ask a technician how the oil would be kept free of liquid: refrigerant condensing in the dome thins it.',
    littleFlow: 'Treat the capacity as a guess; look for a published rating near these temperatures.',
    smallLift: 'Treat power and capacity as a guess; small machines are not described at so small a lift.',
  };
  return operating.warnings.map((code) =>
    finding(code, 'look', facts[code], 'limits of the compressor model', remedies[code]),
  );
}

/** What is simplified of a blend. */
export function glideFindings({
  operating: { evaporating, condensing },
}: Pick<StageResults, 'operating'>): readonly Finding[] {
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

/** That states were interpolated in tables. */
export function statesFromTables(): Finding {
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
