// "Measure this next": how a person could settle an uncertain input, with the circuit closed and nothing live opened.

const meterTheHeater =
  'put a plug-in energy meter on the heater for a week and note water and room temperature; that reading replaces the sizes';

const checkTheSize = 'measure it again with a tape or calliper, on the tank as it stands';
const cannotBeMeasured = 'check all other inputs first: nobody can measure this one at home';

const lookUpTheRating =
  'read the rating plate and look up the published capacity and power of that compressor at a named rating point';
const measurePower =
  'let the machine run in its own appliance, untouched, on a plug-in meter that shows watts, with a thermometer clamped to each pipe';
const askTheMaker = 'ask its maker, or a licensed technician who can measure the machine as it runs';
const compareTheSizes = 'compare the coil length and face area that it implies with the exchangers you have in mind';

/** Advice by the longest matching path; every uncertain input of the design has one, or the general advice. */
const adviceByPath: readonly (readonly [string, string])[] = [
  ['tank.load.', meterTheHeater],
  ['engine.outerFilmFactor', meterTheHeater],
  ['engine.wallConductivityFactor', meterTheHeater],
  ['engine.insulationConductivityFactor', meterTheHeater],
  ['engine.lidConductivityFactor', meterTheHeater],
  ['engine.insideConductivityFactor', meterTheHeater],
  ['engine.foilEmissivityFactor', meterTheHeater],
  ['engine.standFactor', meterTheHeater],
  ['tank.load.meter.', 'let the plug-in energy meter run a second week, in colder weather'],
  ['tank.load.meter.duration', 'note the hours at which the meter was started and read'],
  ['tank.load.meter.roomTemperature', 'note the room’s temperature each morning and evening while the meter runs'],
  ['tank.load.meter.waterTemperature', 'check the tank’s thermometer against a second one while the meter runs'],
  ['tank.load.energy', 'let the plug-in energy meter run a second week, in colder weather'],
  ['tank.load.duration', 'note the hours at which the meter was started and read'],
  ['tank.load.volume', 'reckon it from the inner length, width and depth of the water'],
  ['tank.load.roomTemperature', 'note the room’s temperature each morning and evening while the meter runs'],
  ['tank.load.waterTemperature', 'check the tank’s thermometer against a second one while the meter runs'],
  ['tank.load.evaporationShare', 'mark the water level and measure how much must be topped up in a week'],
  [
    'tank.load.sump.evaporationFactor',
    'mark the sump’s water line, and measure how far it falls in a day without top-up',
  ],
  ['tank.load.refuge.evaporationFactor', 'measure the top-up of a day with all other surfaces covered'],
  ['tank.load.overflow.evaporationFactor', 'measure the top-up of a day with all other surfaces covered'],
  ['tank.load.evaporationFactor', 'mark the water level and measure how much must be topped up in a week'],
  ['tank.load.airStones', 'let the air fill a jug of water turned upside down, and note how long it takes'],
  ['tank.load.skimmerAir', 'measure the air that the skimmer draws in with a flow meter, or read its data sheet'],
  ['tank.load.waterChange.', 'note the volume and the day of each water change for a month'],
  ['tank.load.lidArea', 'measure the lid with a tape and multiply'],
  ['tank.load.lidOpenShare', 'measure the gaps of the lid and divide them by the surface of the water'],
  ['tank.load.pump', 'read the pump’s power with a plug-in meter'],
  ['tank.load.ultraviolet', 'read the lamp’s power with a plug-in meter'],
  ['tank.load.light', 'read the light’s power with a plug-in meter'],
  ['tank.load.lightHours', 'look at the light’s timer'],
  ['tank.load.pumpShareToWater', 'look whether the pump stands in the water (nearly all) or outside it'],
  ['tank.waterTemperature', 'check the tank’s thermometer against a second one'],
  ['room.coldest', 'leave a minimum-maximum thermometer beside the tank through the coldest weeks'],
  ['room.temperature', 'leave a thermometer that records beside the tank for a week'],
  ['room.relativeHumidity', 'leave a hygrometer in the room for a week'],
  ['room.', 'look at last winter’s bills and thermostat settings'],
  ['room.moisture.', 'leave a hygrometer in the room for a week, and say that its humidity is known'],
  ['room.volume', 'measure the floor and the height of the room with a tape and multiply'],
  ['room.height', 'measure from floor to ceiling with a tape'],
  ['source.volume', 'measure the floor and the height of that room with a tape and multiply'],
  ['source.', 'leave a minimum-maximum thermometer where the heat would come from, through the coldest weeks'],
  ['machine.compressor.', lookUpTheRating],
  ['machine.compressor.nameplate.frequency', 'read the mains frequency on the rating plate'],
  ['machine.compressor.nameplate.voltage', 'read the voltage on the rating plate'],
  ['machine.compressor.bench.', 'measure it again, each time after it has run for half an hour'],
  ['machine.compressor.powerFactor', measurePower],
  ['machine.supply.', 'read voltage and frequency with a plug-in meter'],
  ['engine.machineFlowDoubt', lookUpTheRating],
  ['engine.machinePowerDoubt', measurePower],
  ['machine.enclosure.volume', 'measure its inside with a tape, and take off what stands in it'],
  ['machine.sunkenPlace', 'measure length, width and depth below the floor with a tape and multiply'],
  ['machine.charge', 'read the charge printed on the appliance’s rating plate'],
  ['exchangers.', compareTheSizes],
  ['power.', 'read it with a plug-in meter, or from the rating plate'],
  ['prices.', 'take it from the last bill or a written offer'],
  ['place.', 'look up the altitude of the place'],
  ['place.outdoors.', 'look up the monthly means of the nearest weather station'],
  ['place.outdoors.windSpeed', 'look up the wind of the nearest weather station and halve it between houses'],
  ['place.mains.', 'let the cold water run for some minutes and hold a thermometer into it'],
  ['wrapping.', 'take it from a written offer'],
];

const generalAdvice = 'replace the assumption by a number of your own';

/** How the person could replace the range of the input at `path` by a narrower one. */
export function howToMeasure(path: string): string {
  const matching = adviceByPath.filter(([prefix]) => path.startsWith(prefix));
  const longest = matching.sort(([left], [right]) => right.length - left.length)[0];
  return longest?.[1] ?? generalAdvice;
}

/** The same for an input of a tank that a meter was already put on: how to check the input itself. */
export function howToSettleMeter(path: string): string {
  const advice = howToMeasure(path);
  if (advice !== meterTheHeater) return advice;
  return path.startsWith('engine.') ? cannotBeMeasured : checkTheSize;
}

/** Whether a person can settle the input by measuring or reading something; not by choosing, or by asking somebody. */
export function isMeasurable(path: string): boolean {
  return ![generalAdvice, askTheMaker, compareTheSizes].includes(howToMeasure(path));
}

/** The fields of the design that take the result of that measurement; none for a value inside the models. */
export function enteredAt(path: string): readonly string[] {
  const advice = howToMeasure(path);
  if (advice === meterTheHeater) return ['tank.load.meter.kind'];
  if (advice === lookUpTheRating) return ['machine.compressor.ratings'];
  if (advice === measurePower) return ['machine.compressor.bench'];
  return path.startsWith('engine.') ? [] : [path];
}
