import { part } from '../../engine/define/topic';
import { custom } from '../../trade/bibliography/service-triage';
import { gasTrade } from '../../trade/gas/index';

/**
 * What is asked before anything else, and is stop whatever else may be so.
 *
 *     gas smelled, an alarm ──► out, then call
 *     smoke, hot, loose, tingling, water at the wires ──► stop
 */
export const danger = part({
  facts: {
    'gas.smell': gasTrade.facts['gas.smell'],
    'danger.sign': {
      kind: 'choice',
      options: ['none', 'smoke-or-burning', 'hot', 'loose', 'tingling', 'water-at-the-wires'],
      label: 'Sign of danger',
      noun: 'the sign of danger',
      ask: 'Does anything smoke or smell of burning, is anything hot or loose that should not be, does the skin tingle when touched, does water run where wires are?',
      where: 'there and now, from where it is safe to look',
      means: 'If there are several, the first of them in this list counts.',
    },
  },
  findings: {
    smell: {
      label: 'Gas or an alarm',
      first: true,
      stop: {
        when: { all: [{ fact: 'gas.smell', operator: 'equal', value: 'yes' }] },
        wrong: 'Everybody out now, touch no switch, no flame.',
        do: 'Shut the cylinder if it is on your way. From well away call the emergency number; nobody goes back in before a professional has found the leak, or where the carbon monoxide came from.',
      },
      otherwise: 'No gas is smelled and no alarm sounds.',
      open: {
        wrong:
          'Ask it first: do you smell gas, does an alarm sound? In doubt out first, then call.',
      },
      source: custom,
    },
    danger: {
      label: 'Sign of danger',
      first: true,
      stop: {
        when: {
          all: [
            {
              fact: 'danger.sign',
              operator: 'in',
              value: ['smoke-or-burning', 'hot', 'loose', 'tingling', 'water-at-the-wires'],
            },
          ],
        },
        wrong: 'Stop where it is safe.',
        do: 'Smelled, hot or loose on the road is not driven on. With smoke get everybody out and away, then call the emergency number; with a tingle or with water at the wires keep everybody off the trailer, shut off the breaker at the site with dry hands on dry ground, or have the park do it, and touch nothing else.',
      },
      otherwise: 'Nothing smokes, is hot or loose, tingles, or stands in water.',
      open: {
        wrong: 'Find out from where it is safe.',
        do: 'Smoke, heat, anything loose, a tingle, water at wires. Until then stop.',
      },
      source: custom,
    },
  },
});
