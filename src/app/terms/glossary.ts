// The terms of the trade that the pages use, each explained in one or two sentences for a person who meets it for the
// first time. Loaded once somebody is at the page. What a word means in the engine stands in docs/theory.

export interface Term {
  /** As it is written in a heading of its own. */
  readonly name: string;
  /** Ways it appears in sentences, lower case; the name itself is always one of them. */
  readonly forms: readonly string[];
  readonly meaning: string;
}

export const glossary: readonly Term[] = [
  {
    name: 'approach temperature',
    forms: ['approach temperatures', 'approach temperature', 'approaches', 'approach'],
    meaning:
      'How much colder the refrigerant is than what it takes heat from, or how much warmer than what it gives heat to. A larger exchanger needs a smaller one.',
  },
  {
    name: 'assumption',
    forms: ['assumptions', 'assumption'],
    meaning: 'A value nobody has told yet. It has a range, counts in every result, and can be replaced by your own.',
  },
  {
    name: 'back pressure',
    forms: ['low back pressure', 'medium back pressure', 'high back pressure', 'back pressure'],
    meaning:
      'The level of suction pressure a compressor was matched to: low for freezers, medium for bottle coolers, high for dehumidifiers and air conditioners.',
  },
  {
    name: 'backup heater',
    forms: ['backup heater', 'backup'],
    meaning:
      'A plain electric heater in the tank that makes up what the machine does not bring, and takes over when it fails.',
  },
  {
    name: 'bench measurement',
    forms: ['bench measurements', 'bench measurement'],
    meaning:
      'Temperatures of pipes and electricity of the running machine, taken with clamped thermometers and a meter in the plug; the circuit stays closed.',
  },
  {
    name: 'capillary tube',
    forms: ['capillary tube', 'capillary'],
    meaning:
      'A long thin tube that lets just so much refrigerant through. It is fixed when made: one from a freezer passes too little for a machine that evaporates much warmer.',
  },
  {
    name: 'charge',
    forms: ['whole charge', 'charge'],
    meaning: 'The mass of refrigerant in the circuit.',
  },
  {
    name: 'clearance',
    forms: ['clearance'],
    meaning:
      'The room left above the piston at the end of its stroke. The gas in it expands again and takes the place of fresh gas.',
  },
  {
    name: 'coldest spell',
    forms: ['coldest spell', 'cold spell'],
    meaning:
      'The lowest temperatures of room and heat source that last for days. The machine must carry the tank through it without a backup heater, so the verdict is judged there.',
  },
  {
    name: 'condensing temperature',
    forms: ['condensing temperature', 'condensing'],
    meaning:
      'The temperature at which the refrigerant gives its heat away by turning from vapour to liquid. Its pressure follows from it.',
  },
  {
    name: 'COP',
    forms: ['cops', 'cop'],
    meaning:
      'Coefficient of performance: heat brought for each unit of electricity or work put in. Which heat and which electricity is meant stands beside each.',
  },
  {
    name: 'crankcase heater',
    forms: ['crankcase heater'],
    meaning: 'A small heater on the dome that keeps refrigerant out of the oil of a compressor at rest.',
  },
  {
    name: 'critical point',
    forms: ['critical point', 'critical temperature', 'critical pressure'],
    meaning: 'Above this temperature a fluid no longer condenses, whatever the pressure.',
  },
  {
    name: 'dead state',
    forms: ['dead state'],
    meaning:
      'The temperature of the surroundings, at which heat can no longer do any work. Losses of work are counted from it.',
  },
  {
    name: 'desuperheating',
    forms: ['desuperheating'],
    meaning: 'Cooling of the hot gas down to the temperature at which it begins to condense.',
  },
  {
    name: 'dew point',
    forms: ['dew point', 'dew temperature', 'dew line'],
    meaning:
      'Where the last liquid boils away, or the first forms. For air: the temperature at which water begins to condense on a surface.',
  },
  {
    name: 'discharge temperature',
    forms: ['discharge temperature', 'discharge gas', 'discharge'],
    meaning: 'How hot the gas leaves the compressor. Too hot, and oil and valves suffer.',
  },
  {
    name: 'displacement',
    forms: ['displacement', 'volume swept per revolution', 'swept volume'],
    meaning: 'The volume that the piston sweeps in one revolution. It decides how much gas a compressor can move.',
  },
  {
    name: 'enthalpy',
    forms: ['specific enthalpy', 'enthalpy'],
    meaning:
      'The energy that a kilogram of flowing refrigerant carries, counted from a zero that is named beside it. Only differences mean something.',
  },
  {
    name: 'entropy',
    forms: ['specific entropy', 'entropy'],
    meaning:
      'A measure of how far heat has been spread out. It stays constant in a compression without losses and grows in every real one.',
  },
  {
    name: 'evaporating temperature',
    forms: ['evaporating temperature', 'evaporating'],
    meaning:
      'The temperature at which the refrigerant boils and takes its heat from the source. Its pressure follows from it.',
  },
  {
    name: 'exergy',
    forms: ['exergy'],
    meaning:
      'The part of an energy that could be turned into work. What each part of a machine destroys of it is the work wasted there.',
  },
  {
    name: 'flood-back',
    forms: ['flood-back', 'floods back'],
    meaning: 'Liquid that returns to the compressor with the gas. It washes the oil away and breaks valves.',
  },
  {
    name: 'gauge pressure',
    forms: ['gauge pressure', 'gauge'],
    meaning:
      'Pressure above that of the air outside, as a pressure gauge shows it. Absolute pressure counts from empty space.',
  },
  {
    name: 'house heat',
    forms: ['house heat'],
    meaning:
      'Heat from whatever heats the house, delivered into the room. Its price says what the tank’s warmth is worth to the room.',
  },
  {
    name: 'intermediate loop',
    forms: ['intermediate water loop', 'intermediate loop', 'water loop'],
    meaning:
      'A circuit of water between the refrigerant and the tank. A leak of refrigerant or oil then does not reach the animals.',
  },
  {
    name: 'isentropic efficiency',
    forms: ['isentropic efficiency'],
    meaning: 'The work a compression without losses would need, over the work it really needs.',
  },
  {
    name: 'latent heat',
    forms: ['latent heats', 'latent heat'],
    meaning:
      'What it takes to boil a kilogram of liquid away without warming it. It comes back when the vapour condenses.',
  },
  {
    name: 'lift',
    forms: ['temperature lift', 'lift'],
    meaning:
      'How far the heat is raised: condensing less evaporating temperature. The smaller it is, the less work each unit of heat takes.',
  },
  {
    name: 'locked-rotor current',
    forms: ['locked-rotor current', 'locked rotor'],
    meaning:
      'What a motor draws while it stands still with the mains on: at every start for a moment, and for as long as it cannot start.',
  },
  {
    name: 'lower flammability limit',
    forms: ['lower flammability limit', 'flammability limit'],
    meaning: 'The least concentration in air that burns.',
  },
  {
    name: 'margin',
    forms: ['margin'],
    meaning: 'Heat the machine brings less heat the tank needs. Below zero it falls short.',
  },
  {
    name: 'motor load',
    forms: ['motor load', 'load of the motor'],
    meaning: 'The torque a motor gives, over the torque at which it is most efficient.',
  },
  {
    name: 'nameplate',
    forms: ['nameplate', 'rating plate'],
    meaning:
      'The label on the dome or the appliance with its fluid, volts, amps and more. What it does not say is assumed, with a range.',
  },
  {
    name: 'over its life',
    forms: ['over its life', 'over their life'],
    meaning: 'Running cost of a year and the purchase spread over the years it lasts, with interest.',
  },
  {
    name: 'over-temperature cut-out',
    forms: ['over-temperature cut-out'],
    meaning:
      'A switch of its own that cuts the supply of every heat source when the water gets too warm, whatever the controller does.',
  },
  {
    name: 'overall efficiency',
    forms: ['overall efficiency'],
    meaning: 'The work a compression without losses would need, over the electricity the compressor takes.',
  },
  {
    name: 'overload protector',
    forms: ['overload protector'],
    meaning:
      'A switch on or in the dome that opens when the motor gets too hot or draws too much, and closes again when it has cooled.',
  },
  {
    name: 'power factor',
    forms: ['power factor'],
    meaning:
      'Watts over volts times amps. A small motor takes more amps than its watts alone would ask for, so amps times volts is not watts.',
  },
  {
    name: 'practical limit',
    forms: ['practical limit'],
    meaning:
      'The concentration in a room, named by a standard, from which people can still get out unharmed after a leak.',
  },
  {
    name: 'pressure ratio',
    forms: ['pressure ratio'],
    meaning:
      'Condensing pressure over evaporating pressure, both absolute. It says how hard the compressor has to squeeze.',
  },
  {
    name: 'rated current',
    forms: ['rated current'],
    meaning:
      'The current printed on the nameplate. It may be that of one running point or the most the motor bears, and plates seldom say which.',
  },
  {
    name: 'rating point',
    forms: ['rating points', 'rating point'],
    meaning: 'The temperatures at which a maker states capacity and power: evaporating, condensing, gas and liquid.',
  },
  {
    name: 'reference state',
    forms: ['reference state'],
    meaning:
      'Where enthalpy and entropy are set to a fixed number. Tables differ in it; differences between two states do not.',
  },
  {
    name: 'residual-current protection',
    forms: ['residual-current protection'],
    meaning:
      'A device that cuts the mains when current leaks into water or through a person. It is called RCD in Europe and GFCI in North America.',
  },
  {
    name: 'return gas',
    forms: ['return gas', 'returning gas'],
    meaning:
      'The gas as it comes back to the compressor. The warmer it is, the thinner, and the less of it cools the motor.',
  },
  {
    name: 'room credit',
    forms: ['room credit', 'credited', 'credit'],
    meaning:
      'What the heat that the tank gives to a heated room saves on the house’s heating. A machine that draws on the room owes it instead.',
  },
  {
    name: 'safety class',
    forms: ['safety class'],
    meaning:
      'A letter for toxicity (A lower, B higher) and a number for burning (1 does not, 2L hardly, 2 does, 3 easily).',
  },
  {
    name: 'shell heat',
    forms: ['shell heat'],
    meaning: 'Heat that leaves the compressor through its steel dome into whatever is around it.',
  },
  {
    name: 'slip',
    forms: ['slip'],
    meaning: 'How much slower a motor turns than the mains would have it, as a share.',
  },
  {
    name: 'subcooling',
    forms: ['subcooling'],
    meaning: 'How much colder the liquid leaves the condenser than the temperature at which it boils at that pressure.',
  },
  {
    name: 'suction',
    forms: ['suction gas', 'suction temperature', 'suction'],
    meaning: 'The gas that the compressor draws in.',
  },
  {
    name: 'superheat',
    forms: ['superheat'],
    meaning:
      'How much warmer the gas is than the temperature at which the last liquid boiled away. Some is needed so that no liquid reaches the compressor.',
  },
  {
    name: 'ten coefficients',
    forms: ['ten coefficients', 'coefficient set'],
    meaning:
      'Ten numbers of a maker’s data sheet from which flow, capacity, power or current follow by a formula, inside the range they were made for only.',
  },
  {
    name: 'vapour share',
    forms: ['vapour share', 'quality'],
    meaning:
      'The part of the mass that is vapour where liquid and vapour stand together: 0 is boiling liquid, 1 dry vapour.',
  },
  {
    name: 'volumetric heating capacity',
    forms: ['volumetric heating capacity', 'heat delivered per volume of gas drawn in'],
    meaning:
      'Heat brought for each cubic metre of gas that the compressor draws in. It tells how large a compressor a fluid asks for.',
  },
  {
    name: 'volumetric efficiency',
    forms: ['volumetric efficiency'],
    meaning:
      'The volume of gas drawn in over the volume swept. Gas left in the cylinder and warming on the way in keep it below 1.',
  },
  {
    name: 'warming potential',
    forms: ['global warming potential', 'warming potential', 'gwp'],
    meaning: 'How much a kilogram warms the climate over 100 years, in kilograms of carbon dioxide.',
  },
];
