import { part } from '../../engine/define/topic';
import { alarms, custom, signs } from '../../trade/bibliography/service-triage';
import { alarmHeard } from '../../trade/gas/alarm-heard';
import { gasTrade } from '../../trade/gas/index';

/**
 * What is asked before anything else, and is stop whatever else may be so.
 *
 *     gas smelled, an alarm sounds ──► out, then call
 *     smoke, ammonia, a tingle, wet outlets, hot, loose ──► each its own first word
 *
 * Nobody asked is a proviso where the trouble itself can hurt nobody, and unknown elsewhere.
 */
export const danger = part({
  facts: {
    'gas.smell': gasTrade.facts['gas.smell'],
    'alarm.heard': alarmHeard.facts['alarm.heard'],
    'danger.sign': {
      kind: 'choice',
      options: [
        'none',
        'smoke-or-burning',
        'ammonia',
        'tingling',
        'water-at-the-wires',
        'hot',
        'loose',
      ],
      label: 'Sign of danger',
      noun: 'whether anything smokes, stings, tingles, is wet at the wires, hot or loose',
      ask: 'Does anything smoke or smell of burning, does it sting in the nose by the refrigerator, does the skin tingle when touched, is an outlet wet or does water run where wires are, is anything hot or loose that should not be?',
      where: 'there and now, from where it is safe to look',
      means: 'If there are several, the first of them in this list counts.',
    },
  },
  formulas: {
    'alarm.sounds': {
      label: 'An alarm sounds without stopping',
      unit: 'yes-no',
      is: "given(alarm.heard) && alarm.heard == 'sounds'",
      source: alarms,
    },
    'gas.comesFirst': {
      label: 'Gas comes before everything else',
      unit: 'yes-no',
      is: "gas.smell == 'yes' && (given(gas.smell) || !trouble.isMild)",
      source: custom,
    },
    'danger.comesFirst': {
      label: 'A sign of danger comes before everything else',
      unit: 'yes-no',
      is: "danger.sign != 'none' && (given(danger.sign) || !trouble.isMild)",
      source: custom,
    },
    'danger.isUntold': {
      label: 'Nobody asked for a sign of danger',
      unit: 'yes-no',
      is: "danger.sign != 'none' && !given(danger.sign)",
      source: custom,
    },
  },
  decisions: alarmHeard.decisions,
  findings: {
    smell: {
      label: 'Gas or an alarm',
      first: true,
      stop: {
        when: "gas.smell == 'yes'",
        wrong: 'Everybody out into fresh air now, touch no switch, no flame.',
        do: 'Shut the cylinder if it is on your way. From well away call the emergency number, and say so if anyone has a headache or feels sick. Do not go back in before a professional has found the cause.',
        proviso: 'no gas is smelled and no alarm sounds',
      },
      stopOpen: 'if',
      unknown: {
        when: 'gas.comesFirst',
        wrong: 'Whether gas is smelled comes first.',
      },
      otherwise: 'No gas is smelled.',
      open: {
        wrong: 'Whether gas is smelled is not known yet.',
        do: 'In doubt whether gas is smelled: out first, then call.',
      },
      source: custom,
    },
    alarm: alarmHeard.findings.alarm,
    danger: {
      label: 'Sign of danger',
      first: true,
      askedBy: ['danger.sign'],
      stop: [
        {
          when: "danger.sign == 'smoke-or-burning'",
          wrong: 'Get everybody out and away from it.',
          because: 'What smokes or smells of burning may be in flames within a minute.',
          do: 'On the road, off the lane and behind the rail first. Then call the emergency number; an extinguisher only from the side of the way out.',
        },
        {
          when: "danger.sign == 'ammonia'",
          wrong: 'Everybody out and upwind: that sting is ammonia.',
          because:
            'An absorption refrigerator has leaked its cooling unit; it burns eyes and lungs, and with its hydrogen it can catch fire.',
          do: 'Shut the cylinder if it is on your way, leave doors and vents open, and touch no switch. Call the fire department if the smell is strong or anyone coughs. The refrigerator never runs again on any supply: its cooling unit is replaced.',
        },
        {
          when: "danger.sign == 'tingling'",
          wrong: 'Do not touch the trailer: its skin is live.',
          because: 'A tingle on dry ground kills on wet ground.',
          do: 'Have the park shut off the breaker at the site, or do it with dry hands on dry ground. Then unplug, and stay unplugged until an electrician has found the fault.',
        },
        {
          when: "danger.sign == 'water-at-the-wires'",
          wrong: 'Keep off what is wet: water and wires meet there.',
          because:
            'A wet outlet can be live to the touch, and goes on burning inside the wall once it is dry.',
          do: 'Have the park shut off the breaker at the site, or do it with dry hands on dry ground. Unplug, then stop the water. Nothing there is switched on before an electrician has opened and tested it.',
        },
        {
          when: "danger.sign == 'hot'",
          wrong: 'Stop where it is safe and leave what is hot alone.',
          because: 'What is hot that should not be is on its way to fire or to falling off.',
          do: 'A wheel cools by standing, never by water; a plug or a wire gets its breaker shut off first. It goes no further and is not used before someone qualified has found out why.',
        },
        {
          when: "danger.sign == 'loose'",
          wrong: 'Stop where it is safe: what is loose is about to come off.',
          because: 'A wheel, a coupling or a load on the road kills others.',
          do: 'Do not roll on, not even slowly. First have it tightened by the manual, and let someone qualified look why it came loose.',
        },
      ],
      otherwise: 'Nothing smokes, stings, tingles, is wet at the wires, hot or loose.',
      open: {
        wrong:
          'Whether anything smokes, stings, tingles, is wet at the wires, hot or loose is not known yet.',
        do: 'Find out from where it is safe, and stay there until then.',
      },
      source: signs,
    },
    'danger-untold': {
      label: 'Nobody asked for a sign of danger',
      unknown: {
        when: 'danger.comesFirst && danger.isUntold',
        wrong: 'Whether there is a sign of danger comes first.',
      },
      if: {
        when: 'danger.isUntold',
        wrong: 'Signs of danger have not been asked for yet.',
        proviso: 'nothing smokes, stings, tingles, is wet at the wires, hot or loose',
      },
      otherwise: 'Whether there is a sign of danger was asked.',
      open: {
        wrong:
          'Whether anything smokes, stings, tingles, is wet at the wires, hot or loose is not known yet.',
        do: 'Find out from where it is safe, and stay there until then.',
      },
      source: custom,
    },
  },
});
