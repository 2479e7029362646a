// The caution that stands on everything this project gives out, and the list shown beside a machine.
// SAFETY.md holds the same sentences; a test keeps the two alike.

/** Shown on every screen, printed page, chart image, answer of the command line and exported file. */
export const caution =
  'For study and discussion only: not permission to build. Opening, cutting, charging, pressurising or venting a refrigerant circuit is for certified or licensed people; so is mains work near water. Local law comes first.';

/** What no rule looks at: silence about it says nothing. Stands in the paper of cautions and in docs/theory/cautions.md. */
export const notChecked: readonly string[] = [
  'what pressure the parts themselves are rated for: it stands printed on them',
  'joints, welds, valves, and the state of an old machine',
  'how hard a start is on motor and mains, beyond whether it could start at all',
  'the wiring, its earthing and the electrical load of the circuit',
  'how air moves through a room, and where gas really goes',
  'what a refrigerant turns into when it meets a flame or a glowing wire',
  'vibration, noise, and whether floor and stand bear the weight',
  'rules of the building, its owner and its insurer',
  'needs of single species, and what medicines and salts do to metals',
];

/** What could hurt a person, an animal or a house; shown where the machine is described. */
export const machineCautions: readonly string[] = [
  'Certified or licensed people only: opening, cutting, brazing, pressure testing, evacuating, charging and recovering a refrigerant circuit, and any fixed mains wiring.',
  'Do not energise a dome that is open to air: compressing air with oil can explode, and windings arc in a vacuum.',
  'No air or oxygen in a pressure test: oil and oxygen under pressure explode. Testing is done with dry nitrogen, through a regulator, by a licensed person.',
  'No flame or heat on a circuit that holds or held a flammable fluid: oil goes on giving off gas after the circuit is empty.',
  'Recover before dismantling, never vent: releasing refrigerant is unlawful in most countries, and can burn, choke or freeze the skin.',
  'Capacitors hold a charge after the plug is pulled: leave them to people trained to discharge and test them.',
  'Oil of a burnt-out motor is acid and toxic: gloves and goggles, and hand it in as hazardous waste.',
  'Residual-current protection (30 mA) on every circuit that feeds equipment near the tank, tested as its maker says.',
  'Bonding: metal parts and a metal coil that touches water are earthed and bonded by a licensed electrician.',
  'Drip loops: every cable hangs lower than its socket before it rises to it, and no socket or plug stands under water, condensate or spray.',
  'An independent mechanical over-temperature cut-out in the tank, not part of the controller, that opens the supply of every heat source.',
  'A high-pressure cut-out and the motor’s own overload protector stay in the circuit and are never bridged.',
  'A flammable fluid needs fan, relay, thermostat, switch and overload protector made for it; one arc in a leak is enough.',
  'A leak collects in closed boxes, cabinets, hoods and at floor level: keep the circuit out of enclosed spaces and away from flames, sparks and sleeping places.',
  'Refrigerant and oil that leak into a tank stay in it: two walls or an intermediate water loop keep them apart.',
  'Heat failing is the commonest loss: an ordinary heater, an alarm and somebody who looks keep animals alive when the machine stops.',
  'Local codes and licensed practice come first, before anything shown here.',
];
