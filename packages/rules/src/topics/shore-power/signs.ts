import { part } from '../../engine/define/topic';
import { custom, manual } from '../../trade/bibliography/common';
import { bonding, neutralSigns } from '../../trade/bibliography/power';

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
      ask: 'Has anybody who stood on the ground felt a tingle at the door, the skin or the step?',
      where: 'felt once is enough: touch nothing to find out',
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
      ask: 'Does the breaker trip again and again?',
      where: 'there and now',
    },
    'groundFault.trips': {
      kind: 'yes-no',
      label: 'The ground-fault outlet trips with the trailer on it',
      ask: 'Does the ground-fault outlet trip as soon as the trailer hangs on it?',
      where: 'the outlet with a test button, or a breaker with one',
    },
    'house.fedBackwards': {
      kind: 'yes-no',
      label: 'A cord with two plugs feeds a house or an outlet',
      noun: 'whether something is fed backwards',
      ask: 'Is a house or an outlet fed from the generator or the trailer by a cord with a plug at both ends?',
      where: 'told by the owner',
    },
    'plug.adapter': {
      kind: 'choice',
      label: 'Adapter at the outlet',
      noun: 'the adapter',
      options: ['none', 'single', 'splitter', 'two-plug'],
      ask: 'What adapter is between: none, one plug to one socket, one plug to several sockets, or two plugs to one socket?',
      where: 'a look at it',
    },
    'bonding.plug': {
      kind: 'choice',
      label: 'Bonding plug',
      noun: 'the bonding plug',
      options: ['none', 'in-generator', 'in-trailer'],
      ask: 'Is a plug that joins neutral and ground in an outlet of the generator or of the trailer?',
      where: 'a plug without a cord, often sold for generators',
    },
  },
  formulas: {
    'tester.isUntold': {
      label: 'Nobody tested the outlet',
      unit: 'yes-no',
      is: 'given(supply.outlet) && !given(outlet.tester) && !given(voltage.outlet)',
      source: manual,
    },
    'tester.isBonding': {
      label: 'An open ground at a generator',
      unit: 'yes-no',
      is: "outlet.tester == 'open-ground' && given(supply.outlet) && supply.outlet == 'generator' && !bonding.isUsed",
      source: bonding,
    },
    'tester.isWrong': {
      label: 'The tester shows an outlet that is wired wrongly',
      unit: 'yes-no',
      is: "given(outlet.tester) && outlet.tester != 'correct' && outlet.tester != 'reversed' && !tester.isBonding",
      source: manual,
    },
    'tester.isReversed': {
      label: 'The tester shows hot and neutral reversed',
      unit: 'yes-no',
      is: "given(outlet.tester) && outlet.tester == 'reversed'",
      source: manual,
    },
    'bonding.isInTrailer': {
      label: 'A bonding plug in the trailer',
      unit: 'yes-no',
      is: "given(bonding.plug) && bonding.plug == 'in-trailer'",
      source: bonding,
    },
    'bonding.meetsShore': {
      label: 'A bonding plug and the service’s own bond at once',
      unit: 'yes-no',
      is: "given(bonding.plug) && bonding.plug == 'in-generator' && given(supply.outlet) && supply.outlet != 'generator'",
      source: bonding,
    },
    'bonding.isUntold': {
      label: 'A generator, and nobody said whether a bonding plug is in',
      unit: 'yes-no',
      is: "given(supply.outlet) && supply.outlet == 'generator' && !given(bonding.plug)",
      source: bonding,
    },
    'bonding.isAsked': {
      label: 'A bonding plug is told of, or a generator that often has one',
      unit: 'yes-no',
      is: 'given(bonding.plug) || bonding.isUntold',
      source: bonding,
    },
    'bonding.isUsed': {
      label: 'A bonding plug in the generator',
      unit: 'yes-no',
      is: "given(bonding.plug) && bonding.plug == 'in-generator'",
      source: bonding,
    },
  },
  findings: {
    backfeed: {
      label: 'Feeding a house backwards',
      first: true,
      askedBy: ['house.fedBackwards'],
      stop: {
        when: 'house.fedBackwards',
        wrong: 'Pull it now, generator off first: never feed a house through an outlet.',
        because:
          'The bare prongs are live, and the line outside comes alive under the hands of those who mend it.',
        do: 'A house is fed by a transfer switch that an electrician has put in, by nothing else.',
      },
      otherwise: 'Nothing is fed backwards.',
      source: manual,
    },
    'hot-skin': {
      label: 'Hot skin',
      first: true,
      askedBy: ['skin.tingles'],
      stop: {
        when: 'skin.tingles',
        wrong: 'Keep everyone off and away: the skin is live.',
        because: 'The next touch with wet feet may kill.',
        do: 'Shut off the breaker at the site without touching the trailer, then unplug; an electrician must find it.',
      },
      otherwise: 'Nothing tingles.',
      open: {
        wrong: 'The trailer’s skin may be live.',
        do: 'Keep everyone off, and shut off the breaker at the site; do not touch it to find out.',
      },
      source: custom,
    },
    'open-neutral': {
      label: 'Open neutral, by the lights',
      first: true,
      askedBy: ['lights.brighten'],
      stop: {
        when: 'lights.brighten',
        wrong: 'Shut off the breaker at the site and unplug now: the neutral is open.',
        because:
          'Lights that brighten as others dim tell it, and there may be twice the voltage on half of the trailer.',
        do: 'An electrician must look, at the site first.',
      },
      open: {
        wrong: 'The neutral may be open.',
        do: 'If lights brighten as others dim, shut off the breaker at the site and unplug.',
      },
      otherwise: 'No lights brighten as others dim.',
      source: neutralSigns,
    },
    'hot-plug': {
      label: 'Hot or melted plug',
      first: true,
      askedBy: ['plug.hot'],
      stop: {
        when: 'plug.hot',
        wrong: 'Shut off the breaker, then unplug what is hot.',
        because: 'A browned or melted plug has poor contact and burns next time.',
        do: 'Plug, adapter and outlet are replaced, not cleaned.',
      },
      open: {
        wrong: 'A plug may be hot or melted.',
        do: 'Shut off the breaker, then look at both ends of the cord and at each adapter.',
      },
      otherwise: 'No plug is browned or hot.',
      source: custom,
    },
    'two-plugs': {
      label: 'Adapter with two plugs',
      first: true,
      askedBy: ['plug.adapter'],
      stop: {
        when: "plug.adapter == 'two-plug'",
        wrong: 'Never use an adapter with two plugs.',
        because:
          'With one of them in, the bare prongs of the other are live; and two circuits together give what neither breaker guards.',
        do: 'One plug in one outlet, and no more run than that one gives.',
      },
      care: {
        when: "plug.adapter == 'splitter'",
        wrong: 'What hangs on a splitter shares one breaker.',
        do: 'Count everything on it together.',
      },
      otherwise: 'No adapter has two plugs.',
      open: {
        wrong: 'The adapter may have two plugs.',
        do: 'Look before it is plugged in: one with two plugs is never used.',
      },
      source: manual,
    },
    'bonding-plug': {
      label: 'Bonding plug',
      first: true,
      askedWhen: 'bonding.isAsked',
      if: {
        when: 'bonding.isUntold',
        wrong: 'Whether a bonding plug, which has no cord, sits in an outlet is not known yet.',
        because: 'One that stays in on shore power puts the neutral’s current on frame and skin.',
        do: 'Look in every outlet for a bonding plug, which has no cord. It belongs only into a generator that runs by itself, comes out before shore power, and never goes into the trailer.',
        proviso: 'no bonding plug is in the trailer, nor stays in the generator on shore power',
      },
      stop: [
        {
          when: 'bonding.isInTrailer',
          wrong: 'Switch off what feeds the trailer, then pull the bonding plug out of it.',
          because: 'A bond in the trailer puts the neutral’s current on frame and skin.',
          do: 'A bonding plug belongs into a generator that runs by itself, and never into the trailer.',
        },
        {
          when: 'bonding.meetsShore',
          wrong: 'Pull the bonding plug before the trailer is on shore power.',
          because:
            'The neutral is bonded at the service already; a second bond puts its current on frame and skin.',
          do: 'A bonding plug belongs into a generator that runs by itself, and never into the trailer.',
        },
      ],
      care: {
        when: 'bonding.isUsed',
        wrong: 'A bonding plug is in the generator.',
        do: 'Take it out before the trailer goes on shore power, and hang a tag on it.',
      },
      otherwise: 'No bonding plug is in.',
      open: {
        wrong: 'There may be a bonding plug in.',
        do: 'Look for a bonding plug in every outlet before you plug in.',
      },
      source: bonding,
    },
    'outlet-tester': {
      label: 'Outlet tester',
      first: true,
      askedBy: ['outlet.tester', 'supply.outlet'],
      stop: [
        {
          when: 'tester.isReversed',
          wrong: 'Do not plug in there: hot and neutral are reversed.',
          because: 'Switches and breakers then cut the wrong wire, and what is off stays live.',
          do: 'Tell whoever the outlet belongs to, and take another one.',
        },
        {
          when: 'tester.isWrong',
          wrong: 'Do not plug in there: the outlet is wired wrongly.',
          because: 'It can make the skin live or destroy what is plugged in.',
          do: 'Tell whoever the outlet belongs to, and take another one. A generator and its cord go to an electrician.',
        },
      ],
      if: {
        when: 'tester.isUntold',
        wrong: 'The outlet is not tested yet.',
        do: 'Have the outlet tested before you plug in.',
        proviso: 'a tester shows the outlet wired right before you plug in',
      },
      care: {
        when: 'tester.isBonding',
        wrong:
          'An open ground at a portable generator is a matter of its bonding, not of the park.',
        because: 'Many such generators leave their neutral unbonded.',
        do: 'Ask its maker; a bonding plug goes into the generator alone and comes out before shore power.',
      },
      otherwise: 'The tester shows a correct outlet.',
      open: { wrong: 'Test the outlet before you plug in.' },
      source: manual,
    },
    'ground-fault': {
      label: 'Ground-fault outlet that trips',
      askedBy: ['groundFault.trips'],
      care: {
        when: 'groundFault.trips',
        wrong: 'A ground-fault outlet that trips has found current going astray.',
        because:
          'A wet cord, a water heater’s element or a neutral that touches ground in the trailer does it; a household one may only dislike a long cord.',
        do: 'Never go around it. If anybody felt a tingle, leave it unplugged. Else plug in with everything off, and switch on one thing after the other: what trips it goes to a licensed electrician.',
      },
      otherwise: 'No ground-fault outlet trips.',
      source: manual,
    },
    'breaker-trips': {
      label: 'Breaker that trips',
      askedBy: ['breaker.trips'],
      care: {
        when: 'breaker.trips',
        wrong: 'A breaker that trips does its work.',
        because: 'Trips with little running mean a fault.',
        do: 'Shut things off before you set it again, once, and never hold it, bridge it or fit a larger one. Then a licensed electrician.',
      },
      otherwise: 'No breaker trips.',
      source: manual,
    },
  },
});
