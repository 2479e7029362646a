// The working of a dehumidifier in the tank's room, month by month: water taken out, electricity, heat given back.

import { latentHeat } from '../../matter/water/index.ts';
import { type StepInput, type WorkingStep, workingStep } from '../../quantities/index.ts';
import type { MonthResult, Year } from '../../year/index.ts';
import type { StagedDesign } from '../stages/engine-assumptions.ts';
import { dryingEnergyOf } from '../stages/plant.ts';

/**
 * The steps `<prefix>.<month>.dehumidifier.…` and `<prefix>.<month>.energies.dehumidifier…`; none in a room without one.
 * `evaporationOf` each month [kg/s], and where it came from; `prefix` is 'wrapped' of the tank with its measures.
 */
export function dehumidifierSteps(
  { room }: StagedDesign,
  { months }: Year,
  evaporationOf: (month: MonthResult, index: number) => StepInput,
  prefix: 'year' | 'wrapped',
): readonly WorkingStep[] {
  const energy = dryingEnergyOf(room);
  if (energy === null) return [];
  return months.flatMap((month, index) => monthSteps(month, evaporationOf(month, index), energy, prefix));
}

function monthSteps(
  { conditions, dehumidifier, energies }: MonthResult,
  m_e: StepInput,
  energy: number,
  prefix: string,
): readonly WorkingStep[] {
  if (dehumidifier === null) return [];
  const { month, roomTemperature, duration } = conditions;
  const at = (name: string) => `${prefix}.${month}.dehumidifier.${name}`;
  const { removed, electricity, heatToRoom } = dehumidifier;
  const latent = latentHeat(roomTemperature);
  const m_d: StepInput = [removed, at('removed')];
  const P_d: StepInput = [electricity, at('electricity')];
  const t: StepInput = [duration];
  return [
    workingStep(at('removed'), 'surroundings.waterRemoved', removed, { m_e, m_v: [0, 'room.moisture.kind'] }),
    workingStep(at('latentHeat'), 'water.latentHeat', latent, {
      T: [roomTemperature, `year.${month}.roomTemperature`],
    }),
    workingStep(at('electricity'), 'surroundings.dehumidifierPower', electricity, {
      m_d,
      e: [energy, 'room.moisture.energyPerLitre'],
    }),
    workingStep(at('heatToRoom'), 'surroundings.dehumidifierHeat', heatToRoom, {
      m_d,
      h_fg: [latent, at('latentHeat')],
      P_d,
    }),
    workingStep(
      `${prefix}.${month}.energies.dehumidifierElectricity`,
      'year.electricity',
      energies.dehumidifierElectricity,
      { P: P_d, t },
    ),
    workingStep(`${prefix}.${month}.energies.dehumidifierHeat`, 'year.energy', energies.dehumidifierHeat, {
      P: [heatToRoom, at('heatToRoom')],
      t,
    }),
  ];
}
