// The measurement beside the model, as sentences.

import type { MeterAnswer } from '../../assess/index.ts';
import { sayBand, type UnitView } from '../../quantities/index.ts';
import { say } from '../ui/say.ts';

export function meterSentence(meter: MeterAnswer, view: UnitView): string {
  const power = sayBand(meter.meanPower, 'electricPower', view);
  const measured = sayBand(meter.measuredLoss, 'power', view);
  const modelled = sayBand(meter.modelledLoss, 'power', view);
  const room = say(meter.roomTemperature, 'temperature', view);
  return `The heater took ${power} on average, with the room at ${room}; with pumps and lights, ${measured} left the tank. The model says ${modelled} for the same temperatures. ${differenceWords(meter)}`;
}

/** "The measurement is 18 % higher; …". */
export function differenceWords({ ratio, agrees }: Pick<MeterAnswer, 'ratio' | 'agrees'>): string {
  const percent = Math.round(100 * Math.abs(ratio.likely - 1));
  const explained = agrees
    ? 'what is uncertain of both explains that'
    : 'more than what is uncertain of both explains: something is not as described';
  if (percent === 0) return 'Both say the same.';
  return `The measurement is ${percent} % ${ratio.likely > 1 ? 'higher' : 'lower'}; ${explained}.`;
}
