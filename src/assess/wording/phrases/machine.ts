// Words of the findings about where the loop settles, its pressures, and refrigerant where it is not wanted.

import { sentenceStart } from '../../../quantities/index.ts';
import { type Phrase, type Told, whenAndRange } from '../phrase.ts';

export const machinePhrases = {
  motorOverloaded: {
    title: 'The motor would be overloaded',
    text: (t) =>
      `${sentenceStart(t('when'))} it would evaporate at ${t('evaporatingTemperature')}, ${t('beyond')} above the ${t('limit')} usual for ${t('application')}, and take about ${t('power')}; the hardest point such a machine is built for takes ${t('hardestAllowedPower')} by the same model. Its overload protector would trip, or the motor burn out.`,
  },
  motorWouldTrip: {
    title: (t) => (t.has('current') ? 'The motor would trip' : 'The motor is likely to trip'),
    text: (t) =>
      t.has('current')
        ? `${sentenceStart(t('when'))} it would take ${t('current')}, far above the ${t('limit')} that a motor with this nameplate bears for long.${t.has('tripsAt') ? ` By the model it trips from ${t('tripsAt')} of evaporation on.` : ''}`
        : `${sentenceStart(t('when'))} it would evaporate at ${t('evaporatingTemperature')}; by the model its motor gives up from ${t('tripsAt')} on.`,
  },
  currentAboveRated: {
    title: (t) =>
      t.has('endOfRange') ? 'It may take more current than is printed on it' : 'More current than is printed on it',
    text: (t) =>
      `It would take ${whenAndRange(t, 'current')}: up to ${t('share')} times the ${t('limit')} of its nameplate.${t.has('bears') ? ` Motors bear up to about ${t('bears')} for long where the plate follows the custom of the USA; elsewhere less.` : ''}`,
  },
  suctionAboveMotor: {
    title: 'Denser gas than the motor was matched to',
    text: (t) =>
      `It would draw in ${t('fluid')} at ${t('evaporatingPressure')} ${t('when')}; with ${t('madeFor')}, for which it was made, its motor never meets more than ${t('limit')}.`,
  },
  littleFlowToCoolMotor: {
    title: (t) => (t.has('endOfRange') ? 'The motor may get too warm' : 'Too little gas cools the motor'),
    text: (t) =>
      `Shell and motor would stand at ${whenAndRange(t, 'wallTemperature')}, on average; windings are hotter, and the insulation of most is for ${t('insulation')}.`,
  },
  floodBack: {
    title: 'Liquid comes back to the compressor',
    text: (t) =>
      `The gas would return with ${whenAndRange(t, 'superheat')} of superheat; below ${t('limit')} drops of liquid come along.`,
  },
  returnGasTooCold: {
    title: (t) =>
      t.has('endOfRange') ? 'The gas may return with little superheat' : 'The gas returns with little superheat',
    text: (t) =>
      `It would have ${whenAndRange(t, 'superheat')} of superheat at the shell; below ${t('limit')} drops of liquid may come along when anything changes.`,
  },
  lowTorqueStartAgainstPressure: {
    title: (t) =>
      t.has('lowTorque')
        ? 'The motor cannot start against this valve'
        : 'The motor may not start against the pressures',
    text: (t) =>
      t.has('lowTorque')
        ? 'Its kind of motor starts only against equal pressures, and a valve that closes at rest holds them apart: it would hum, draw its locked-rotor current and trip.'
        : 'Small motors without a start capacitor start only against equal pressures. How this one starts, or whether the pressures become alike while it rests, is not known.',
  },
  shortOffTime: {
    title: 'Too little rest between two runs',
    text: (t) =>
      `The control may start it again after ${t('rest')}; such machines want ${t('limit')}, so that pressures become alike and starter and protector cool.`,
  },
  evaporatingAboveApplication: {
    title: (t) =>
      t.has('endOfRange')
        ? 'Evaporation may be warmer than it was built for'
        : 'Warmer evaporation than it was built for',
    text: (t) =>
      `${evaporatingBeyond(t, 'above')}.${t.has('hardestAllowedPower') ? ` By the model it takes ${t('power')} there, against ${t('hardestAllowedPower')} at the hardest point such a machine is built for.` : ''} The motor may be overloaded.`,
  },
  evaporatingBelowApplication: {
    title: (t) =>
      t.has('endOfRange')
        ? 'Evaporation may be colder than the compressor was built for'
        : 'Colder evaporation than the compressor was built for',
    text: (t) => `${evaporatingBeyond(t, 'below')}.`,
  },
  dischargeAboveHighest: {
    title: 'The discharge gas is too hot for oil and valves',
    text: (t) =>
      `The discharge line would reach ${t('dischargeTemperature')} ${t('when')}; typical guides stop at ${t('limit')}, and at the valve it is hotter still.`,
  },
  dischargeNearHighest: {
    title: (t) =>
      t.has('endOfRange') ? 'The discharge gas may be nearly too hot' : 'The discharge gas is nearly too hot',
    text: (t) =>
      `The discharge line would reach ${whenAndRange(t, 'dischargeTemperature')}; typical guides begin to worry at ${t('limit')}.`,
  },
  condensingAbovePeak: {
    title: 'The condensing pressure is not for this machine',
    text: (t) =>
      `It would condense at ${t('condensingTemperature')} (${t('condensingPressure')}) ${t('when')}; typical guides allow ${t('limit')} for moments only.`,
  },
  condensingAboveContinuous: {
    title: (t) =>
      t.has('endOfRange')
        ? 'Condensing may be hotter than the machine bears for long'
        : 'Condensing hotter than the machine bears for long',
    text: (t) =>
      `It would condense at ${whenAndRange(t, 'condensingTemperature')}, likely under ${t('condensingPressure')}; typical guides allow ${t('limit')} continuously.`,
  },
  pressureRatioTooLow: {
    title: (t) => (t.has('endOfRange') ? 'There may be very little lift' : 'Very little lift'),
    text: (t) =>
      `The pressures would differ by a factor of ${whenAndRange(t, 'pressureRatio')}, a lift of likely ${t('lift')}; capillaries, valves and oil return usually want ${t('limit')} or more.`,
  },
  pressureRatioAboveHighest: {
    title: (t) =>
      t.has('endOfRange')
        ? 'There may be more pressure ratio than one stage does'
        : 'More pressure ratio than one stage does',
    text: (t) =>
      `The ratio would be ${whenAndRange(t, 'pressureRatio')}; small compressors do not go beyond ${t('limit')} in one stage.`,
  },
  pressureRatioHigh: {
    title: (t) => (t.has('endOfRange') ? 'The pressure ratio may be high' : 'A high pressure ratio'),
    text: (t) =>
      `The ratio would be ${whenAndRange(t, 'pressureRatio')}; above ${t('limit')} small compressors pump little and run hot.`,
  },
  suctionBelowAtmosphere: {
    title: (t) => (t.has('endOfRange') ? 'The low side may work in a vacuum' : 'The low side works in a vacuum'),
    text: (t) =>
      `It would evaporate at ${whenAndRange(t, 'evaporatingPressure')}; the air around it has ${t('atmosphericPressure')}.`,
  },
  frostOnEvaporator: {
    title: (t) => (t.has('endOfRange') ? 'The evaporator may frost up' : 'The evaporator frosts up'),
    text: (t) =>
      `It would evaporate at ${whenAndRange(t, 'evaporatingTemperature')}, from air at ${t('sourceTemperature')}.`,
  },
  condensateOnEvaporator: {
    title: 'The evaporator drips',
    text: (t) =>
      `${sentenceStart(t('when'))} it runs at ${t('evaporatingTemperature')}, below the dew point of the air at ${t('dewPoint')}: water runs off it.`,
  },
  highSideAboveUsualRating: {
    title: 'The high side above what its parts are usually built for',
    text: (t) =>
      `It would stand at ${whenAndRange(t, 'condensingPressure')}. Parts made for ${t('madeFor')} are usually built for ${t('limit')}, its pressure at ${t('designTemperature')}.`,
  },
  fluidAbovePartsPressure: {
    title: (t) => `${t('fluid')} presses harder than the parts were built for`,
    text: (t) =>
      t.has('highSide')
        ? `At ${t('designTemperature')}, for which high sides are usually built, ${t('fluid')} stands at ${t('highSide')}; ${t('madeFor')}, for which these parts were made, at ${t('limit')}.`
        : `At ${t('designTemperature')}, for which high sides are usually built, ${t('fluid')} no longer condenses; ${t('madeFor')}, for which these parts were made, stands at ${t('limit')}.`,
  },
  standingPressureAboveLowSide: {
    title: 'At rest in the warmest room, more pressure than low sides are usually built for',
    text: (t) =>
      `The circuit may rest at ${t('warmest')}${t.has('standing') ? `, where its pressure is at most ${t('standing')}` : ', where its fluid no longer condenses'}. Low sides made for ${t('madeFor')} are usually built for ${t('limit')}, its pressure at ${t('designTemperature')}.`,
  },
  capillaryTooTight: {
    title: 'The appliance’s own capillary would pass too little',
    text: (t) =>
      `${sentenceStart(t('when'))} ${t('massFlow')} of refrigerant would go round, ${t('times')} times the ${t('ratedMassFlow')} of a machine for ${t('application')} at its usual rating point, for which its capillary was chosen.`,
  },
  migrationToCompressor: {
    title: 'While it rests, refrigerant gathers in the compressor',
    text: (t) =>
      `${t.has('shell') ? `The compressor stands at ${t('shell')} in the coldest spell` : 'The compressor stands outdoors'}, where it is, or may be, the coldest part of the circuit. Liquid collects in its oil; at the next start it boils, foams and tears the oil away.${t.has('heaterLow') ? ` ${heaterOn(t)}` : ''}`,
  },
  migrationToEvaporator: {
    title: 'While it rests, refrigerant gathers in the evaporator',
    text: (t) =>
      `The evaporator stands in air at ${t('source')}, the compressor at ${t('shell')}: liquid collects in the colder part, and the next start draws it back towards the compressor.`,
  },
  oilTakesUpWater: {
    title: 'The oil takes up water from the air',
    text: (t) =>
      `A compressor for ${t('fluid')} usually holds ${t('oils')} oil. Left open to room air it takes up water within hours; the mineral oil of old appliances bears it better.`,
  },
} satisfies Readonly<Record<string, Phrase>>;

/** "A heater that keeps the dome some 10 K warmer takes about 9 W to 17 W; there is none." */
function heaterOn(told: Told): string {
  const wanted = `A heater that keeps the resting dome warmer than what is around it takes some ${told('heaterLow')} to ${told('heaterHigh')}`;
  return told.has('heater') ? `${wanted}; the one here takes ${told('heater')}.` : `${wanted}.`;
}

/** "It would evaporate at 16 °C on a mild day, 2 K above the 14 °C usual for …". */
function evaporatingBeyond(told: Told, side: 'above' | 'below'): string {
  const usual = `the ${told('limit')} usual for ${told('application')}`;
  const at = `It would evaporate at ${whenAndRange(told, 'evaporatingTemperature')}`;
  return told.has('endOfRange') ? `${at}; ${usual} would be passed` : `${at}, ${told('beyond')} ${side} ${usual}`;
}
