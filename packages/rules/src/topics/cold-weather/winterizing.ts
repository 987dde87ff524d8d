import { part } from '../../engine/define/topic';
import { antifreezeCustom, frostCustom, heaterCustom } from '../../trade/bibliography/cold-weather';
import { frost } from '../../trade/heat/frost';

/** Put to bed for the winter: the water heater, what was filled in, and with what pressure. */
export const winterizing = part({
  facts: {
    'heater.isolated': {
      kind: 'yes-no',
      label: 'Water heater drained, bypassed, its element off',
      noun: 'whether the water heater is drained, bypassed and off',
      ask: 'Is the water heater drained and bypassed, with its electric element and its burner off?',
      where: 'the valves behind the heater, its switch, and the plug outside',
    },
    'antifreeze.kind': {
      kind: 'choice',
      label: 'Antifreeze in the lines',
      noun: 'what went into the lines',
      options: ['none', 'propylene-glycol', 'other'],
      ask: 'What went into the lines: nothing but air, antifreeze of propylene glycol for drinking water, or another?',
      where: 'the label of the jug: propylene glycol, for drinking water',
    },
    'blowout.pressure': {
      kind: 'quantity',
      label: 'Air pressure the lines are blown out with',
      noun: 'the air pressure',
      unit: 'psi',
      least: 0,
      most: 200,
      ask: 'To how many psi is the compressor’s regulator set for blowing the lines out?',
      where: 'the gauge on the compressor’s regulator',
    },
  },
  parameters: {
    'blowout.most': frost.parameters['blowout.most'],
  },
  formulas: {
    'heater.isUntold': {
      label: 'It is or is being winterized, and nothing was said of the water heater',
      unit: 'yes-no',
      is: "((given(water.state) && water.state == 'winterized') || given(blowout.pressure)) && !given(heater.isolated)",
      source: heaterCustom,
    },
    'antifreeze.isUntold': {
      label: 'It is winterized, and nobody said with what',
      unit: 'yes-no',
      is: "given(water.state) && water.state == 'winterized' && !given(antifreeze.kind)",
      source: antifreezeCustom,
    },
    'antifreeze.isWrong': {
      label: 'Another antifreeze than that for drinking water is in the lines',
      unit: 'yes-no',
      is: "given(antifreeze.kind) && antifreeze.kind == 'other'",
      source: antifreezeCustom,
    },
    'heater.isWet': {
      label: 'The water heater is not drained, bypassed and off',
      unit: 'yes-no',
      is: "given(heater.isolated) && heater.isolated == 'no'",
      source: heaterCustom,
    },
  },
  limits: {
    'blow-out': {
      label: 'Air pressure in the lines',
      short: 'the air pressure',
      do: 'Set the compressor under 50 psi before the lines are blown out.',
      near: 'Blow no harder.',
      used: 'blowout.pressure',
      limit: 'blowout.most',
      askedBy: ['blowout.pressure'],
      source: frostCustom,
    },
  },
  findings: {
    antifreeze: {
      label: 'Antifreeze in the lines',
      askedBy: ['antifreeze.kind', 'water.state'],
      stop: {
        when: 'antifreeze.isWrong',
        wrong:
          'The wrong antifreeze is in the lines: only propylene glycol made for drinking water goes there.',
        because: 'Antifreeze for engines poisons anybody who drinks from that faucet.',
        do: 'Do not use the faucets. Have the lines flushed, and ask the trailer’s maker what must be replaced.',
      },
      if: {
        when: 'antifreeze.isUntold',
        wrong: 'What went into the lines is not known yet.',
        do: 'Read the jug: propylene glycol, for drinking water.',
        proviso:
          'nothing but air or antifreeze of propylene glycol for drinking water went into the lines',
      },
      otherwise: 'What is in the lines is made for drinking water, or nothing is in them.',
      open: {
        wrong: 'Find out what went into the lines before anybody drinks from them.',
      },
      source: antifreezeCustom,
    },
    'water-heater': {
      label: 'Water heater in the winter',
      askedBy: ['heater.isolated', 'water.state', 'blowout.pressure'],
      stop: {
        when: 'heater.isWet',
        wrong: 'The water heater is not drained, bypassed and off.',
        because:
          'Its tank bursts in the frost, and an element that comes on dry burns out at once.',
        do: 'Element and burner off first, let it cool, open its relief valve, pull the plug, then set the bypass.',
      },
      if: {
        when: 'heater.isUntold',
        wrong: 'Nothing was said of the water heater.',
        do: 'Look behind it and at its plug outside.',
        proviso: 'the water heater is drained and bypassed, its element off',
      },
      otherwise: 'The water heater is drained and bypassed, its element off.',
      open: { wrong: 'Look whether the water heater is drained, bypassed and off.' },
      source: heaterCustom,
    },
  },
});
