import { part } from '../../engine/define/topic';
import { custom, manual } from '../../trade/bibliography/common';
import {
  circuits,
  highVolts,
  lowestVolts,
  lowVolts,
  neutralSigns,
  neutralSpread,
} from '../../trade/bibliography/power';

/** What a meter reads, leg to neutral, and what is left of it at the trailer. */
export const voltages = part({
  facts: {
    'voltage.outlet': {
      kind: 'quantity',
      label: 'Voltage at the outlet, hot to neutral',
      noun: 'the voltage at the outlet',
      unit: 'V',
      least: 0,
      most: 300,
      ask: 'What voltage is there at the outlet, between hot and neutral?',
      means: 'At a 30 A trailer outlet: between its two flat blades.',
      where: 'read by a protector with a display, or measured by someone trained to',
    },
    'voltage.secondLeg': {
      kind: 'quantity',
      label: 'Voltage of the second leg to neutral',
      unit: 'V',
      least: 0,
      most: 300,
      ask: 'And between the other hot and neutral, of a 50 A outlet?',
      where: 'read by a protector with a display, or measured by someone trained to',
    },
  },
  parameters: {
    'voltage.low': {
      label: 'Voltage at which motors suffer',
      noun: 'the voltage at which motors suffer',
      unit: 'V',
      values: [{ from: '2020-01-01', value: 108 }],
      source: lowVolts,
    },
    'voltage.lowest': {
      label: 'Least voltage at which a compressor may run',
      noun: 'the least voltage at which a compressor may run',
      unit: 'V',
      values: [{ from: '2020-01-01', value: 104 }],
      source: lowestVolts,
    },
    'voltage.highest': {
      label: 'Most voltage at which anything may stay plugged in',
      noun: 'the most voltage at which anything may stay plugged in',
      unit: 'V',
      values: [{ from: '2020-01-01', value: 132 }],
      source: highVolts,
    },
    'legs.apart': {
      label: 'How far the two legs may differ',
      unit: 'V',
      values: [{ from: '2020-01-01', value: 10 }],
      range: [5, 15],
      source: neutralSpread,
    },
  },
  formulas: {
    'voltage.highLeg': {
      label: 'The higher leg',
      unit: 'V',
      is: 'choose(given(voltage.secondLeg), max(voltage.outlet, voltage.secondLeg), voltage.outlet)',
      source: circuits,
    },
    'voltage.lowLeg': {
      label: 'The lower leg',
      unit: 'V',
      is: 'choose(given(voltage.secondLeg), min(voltage.outlet, voltage.secondLeg), voltage.outlet)',
      source: circuits,
    },
    'voltage.apart': {
      label: 'How far the two legs differ',
      unit: 'V',
      is: 'voltage.highLeg - voltage.lowLeg',
      source: circuits,
    },
    'voltage.trailer': {
      label: 'Voltage at the trailer, with everything running',
      noun: 'the voltage at the trailer',
      unit: 'V',
      is: 'max(0, voltage.lowLeg - cord.drop)',
      source: circuits,
    },
  },
  findings: {
    'high-voltage': {
      label: 'Too much voltage',
      askedBy: ['voltage.outlet'],
      stop: {
        when: {
          all: [
            {
              fact: 'voltage.highLeg',
              operator: 'greaterThan',
              value: { fact: 'voltage.highest' },
            },
          ],
        },
        wrong: 'Shut off the breaker and unplug, there is far more than 120 V.',
        do: 'It comes from a 240 V outlet or an open neutral. It destroys what is plugged in; an electrician must look.',
      },
      otherwise: 'It is not too much voltage.',
      open: {
        wrong: 'It may be far too much.',
        do: 'Have it measured before anything is plugged in.',
      },
      source: highVolts,
    },
    'low-voltage': {
      label: 'Low voltage',
      askedBy: ['voltage.outlet'],
      stop: {
        when: {
          all: [
            { fact: 'voltage.trailer', operator: 'lessThan', value: { fact: 'voltage.lowest' } },
          ],
        },
        wrong: 'Shut off air conditioner, heat pump and everything else with a compressor.',
        do: 'At so low a voltage they draw more, run hot and burn out. Less load, a shorter and thicker cord, another site.',
      },
      care: {
        when: {
          all: [{ fact: 'voltage.trailer', operator: 'lessThan', value: { fact: 'voltage.low' } }],
        },
        wrong: 'The voltage is low.',
        do: 'Compressors run hot on it, and one that hums and does not cool is shut off at once. Shut something off, and watch it over the afternoon, when the whole park cools.',
      },
      otherwise: 'There is voltage enough.',
      open: {
        wrong: 'Whether there is voltage enough is not known.',
        do: 'Read it with everything running.',
      },
      source: lowVolts,
    },
    'legs-apart': {
      label: 'Open neutral, by the meter',
      first: true,
      askedBy: ['voltage.secondLeg'],
      stop: {
        when: {
          all: [{ fact: 'voltage.apart', operator: 'greaterThan', value: { fact: 'legs.apart' } }],
        },
        wrong: 'Shut off the breaker and unplug now, the two legs are far apart.',
        do: 'So it is when the neutral is open. What hangs on the higher one is burning out; tell the park, and have an electrician look.',
      },
      otherwise: 'The two legs are alike.',
      open: {
        wrong: 'The legs may be far apart.',
        do: 'Have both measured before anything is plugged in.',
      },
      source: neutralSigns,
    },
  },
});

const yes = (fact: string) => ({ all: [{ fact, operator: 'equal', value: 'yes' } as const] });

/** What is seen and felt; any of these is an end to it. */
export const signs = part({
  facts: {
    'lights.brighten': {
      kind: 'yes-no',
      label: 'Some lights grow brighter as others dim',
      ask: 'Do some lights grow brighter when something else is switched on?',
      where: 'seen in the trailer',
    },
    'skin.tingles': {
      kind: 'yes-no',
      label: 'The trailer’s skin or step tingles',
      ask: 'Does it tingle when you touch the door, the skin or the step from the ground?',
      where: 'felt once is enough: do not try it again',
    },
    'plug.hot': {
      kind: 'yes-no',
      label: 'A plug is browned, melted or too hot to hold',
      ask: 'Is any plug, adapter or outlet browned, melted, or too hot to hold?',
      where: 'both ends of the cord and each adapter, with the breaker off',
    },
    'outlet.tester': {
      kind: 'choice',
      label: 'What an outlet tester shows',
      options: ['correct', 'open-ground', 'open-neutral', 'reversed'],
      ask: 'What does an outlet tester or protector show, before you plug in?',
      where: 'its lights and the legend beside them',
    },
    'breaker.trips': {
      kind: 'yes-no',
      label: 'The breaker trips again and again',
      ask: 'Does the breaker, or the ground-fault outlet, trip again and again?',
      where: 'there and now',
    },
  },
  findings: {
    'hot-skin': {
      label: 'Hot skin',
      first: true,
      askedBy: ['skin.tingles'],
      stop: {
        when: yes('skin.tingles'),
        wrong: 'Keep everyone off and away, the skin is live.',
        do: 'The next touch with wet feet may kill. Shut off the breaker at the site without touching the trailer, then unplug; an electrician must find it.',
      },
      otherwise: 'Nothing tingles.',
      open: {
        wrong: 'If anything ever tingles.',
        do: 'Keep everyone off, and shut off the breaker at the site.',
      },
      source: custom,
    },
    'open-neutral': {
      label: 'Open neutral, by the lights',
      first: true,
      askedBy: ['lights.brighten'],
      stop: {
        when: yes('lights.brighten'),
        wrong: 'Shut off the breaker at the site and unplug now, the neutral is open.',
        do: 'Lights that brighten as others dim tell it, and there are up to 240 V on half of the trailer. An electrician must look, at the site first.',
      },
      otherwise: 'No lights brighten as others dim.',
      source: neutralSigns,
    },
    'hot-plug': {
      label: 'Hot or melted plug',
      first: true,
      askedBy: ['plug.hot'],
      stop: {
        when: yes('plug.hot'),
        wrong: 'Shut off the breaker, then unplug what is hot.',
        do: 'A browned or melted plug has poor contact and burns next time. Plug, adapter and outlet are replaced, not cleaned.',
      },
      otherwise: 'No plug is browned or hot.',
      source: custom,
    },
    'outlet-tester': {
      label: 'Outlet tester',
      askedBy: ['outlet.tester'],
      stop: {
        when: {
          all: [{ fact: 'outlet.tester', operator: 'notEqual', value: 'correct' }],
        },
        wrong: 'Do not plug in there, the outlet is wired wrongly.',
        do: 'It can make the skin live or destroy what is plugged in. Tell the park, and take another site.',
      },
      otherwise: 'The tester shows a correct outlet.',
      open: { wrong: 'Test the outlet before you plug in.' },
      source: manual,
    },
    'breaker-trips': {
      label: 'Breaker that trips',
      askedBy: ['breaker.trips'],
      care: {
        when: yes('breaker.trips'),
        wrong: 'A breaker that trips does its work.',
        do: 'Shut things off before you set it again, once, and never hold it, bridge it or fit a larger one. Trips with little running mean a fault: a licensed electrician.',
      },
      otherwise: 'No breaker trips.',
      source: manual,
    },
  },
});
