import { findingOf, part } from '../../engine/define/topic';
import { custom } from '../../trade/bibliography/service-triage';
import { pathTable } from './path-table';
import { troubleTable } from './trouble-table';

/** What the trouble is in, how bad it is, and where the trailer stands. */
export const trouble = part({
  facts: {
    'trouble.in': {
      kind: 'choice',
      options: [
        'wheel-or-hub',
        'tire',
        'brakes',
        'coupling',
        'frame-or-suspension',
        'sway',
        'lights',
        'twelve-volt',
        'shore-power',
        'gas-appliance',
        'electric-appliance',
        'water',
        'roof',
        'doors-or-awning',
        'slide-or-jacks',
        'furniture',
      ],
      label: 'What the trouble is in',
      ask: 'What is it about: what do you see, hear or miss, and on which part of the trailer?',
      where: 'told by the owner; a photograph helps',
      means:
        'Lights with plug and wiring; twelve-volt with the house battery; water with pump, tanks and drains; roof with every leak from outside.',
    },
    'trouble.degree': {
      kind: 'choice',
      options: ['fails', 'worsens', 'steady', 'upkeep'],
      label: 'How bad it is',
      noun: 'how bad it is',
      ask: 'Does it fail, does it get worse or come and go, is it small and the same as yesterday, or is it only upkeep?',
      where: 'told by the owner',
      means:
        'A gas flame that is yellow or leaves soot, a plug that gets warm, lights that come and go: worsens.',
    },
    'trailer.stands': {
      kind: 'choice',
      options: ['on-the-road', 'at-camp', 'at-home'],
      label: 'Where the trailer stands',
      ask: 'Where is it: on the road or about to go, set up at a camp, or at home?',
      where: 'told by the owner',
    },
  },
  formulas: {
    'triage.graver': {
      label: 'Something graver comes first',
      unit: 'yes-no',
      is: "gas.smell == 'yes' || danger.sign != 'none' || hub.runsHot || tire.runsSoft || recall.found == 'do-not-drive'",
      source: custom,
    },
  },
  decisions: { 'triage.trouble': troubleTable, 'triage.path': pathTable },
  findings: {
    trouble: findingOf('triage.trouble', troubleTable, {
      open: {
        wrong: 'It may be one to stop for.',
        do: 'Find out what it is in, whether it gets worse, and where the trailer stands; until then it does not roll.',
      },
    }),
  },
});
