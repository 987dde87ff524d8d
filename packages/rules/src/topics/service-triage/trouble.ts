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
      noun: 'what the trouble is in',
      ask: 'What do you see, hear or miss, and on which part of the trailer?',
      where: 'told by the owner; a photograph helps',
      means:
        'Lights with plug and wiring; twelve-volt with the house battery; water with pump, tanks and drains; roof with every leak from outside.',
    },
    'trouble.degree': {
      kind: 'choice',
      options: ['fails', 'worsens', 'steady', 'upkeep'],
      label: 'How bad it is',
      noun: 'how bad it is',
      ask: 'How is the trouble: does something fail, get worse or come and go, is it small and steady, or only upkeep?',
      where: 'told by the owner',
      means:
        'A gas flame that is yellow or leaves soot, a plug that gets warm, lights that come and go: worsens.',
    },
    'trailer.stands': {
      kind: 'choice',
      options: ['on-the-road', 'at-camp', 'at-home'],
      label: 'Where the trailer stands',
      noun: 'where the trailer stands',
      ask: 'Where is the trailer: on the road or about to go, set up at a camp, or at home?',
      where: 'told by the owner',
    },
  },
  formulas: {
    'triage.mustStand': {
      label: 'A reading or a recall says that it stands',
      unit: 'yes-no',
      is: "hub.runsHot || tire.runsSoft || recall.found == 'do-not-drive'",
      source: custom,
    },
    'triage.graver': {
      label: 'Something graver comes first',
      unit: 'yes-no',
      is: 'gas.comesFirst || alarm.sounds || danger.comesFirst || triage.mustStand',
      source: custom,
    },
    'triage.onlyReadings': {
      label: 'Only readings, an alarm or a recall were told',
      unit: 'yes-no',
      is: "!given(trouble.in) && !given(trouble.degree) && (hub.isMeasured || tire.isMeasured || (given(alarm.heard) && alarm.heard == 'chirps') || (given(recall.found) && recall.found == 'open'))",
      source: custom,
    },
    'trouble.isMild': {
      label: 'The trouble itself hurts nobody',
      unit: 'yes-no',
      is: "triage.onlyReadings || trouble.degree == 'upkeep' || trouble.in == 'furniture' || (trouble.degree == 'steady' && (trouble.in == 'lights' || trouble.in == 'doors-or-awning' || trouble.in == 'slide-or-jacks'))",
      source: custom,
    },
    'upkeep.isDue': {
      label: 'Upkeep of what rolls is due, and nothing has failed',
      unit: 'yes-no',
      is: "given(trouble.degree) && given(trouble.in) && trouble.degree == 'upkeep' && (trouble.in == 'wheel-or-hub' || trouble.in == 'brakes' || trouble.in == 'frame-or-suspension') && !triage.graver && !triage.isWatched && given(danger.sign) && danger.sign == 'none' && (!given(recall.found) || recall.found != 'open')",
      source: custom,
    },
    'triage.isWatched': {
      label: 'A hub is watched',
      unit: 'yes-no',
      is: 'hub.isWatched',
      source: custom,
    },
    'triage.paper': {
      label: 'A recall or the warranty sends it to the dealer',
      unit: 'yes-no',
      is: "recall.found == 'open' || warranty.asksFirst",
      source: custom,
    },
  },
  decisions: { 'triage.trouble': troubleTable, 'triage.path': pathTable },
  findings: {
    trouble: findingOf('triage.trouble', troubleTable, {
      open: {
        wrong: 'How the rest is to be done is still open.',
        because: 'What holds it on the road, gas and 120 volts are stopped for; a hinge is not.',
        do: 'Ask for signs of danger first, then what it is in, whether it grows worse, and where the trailer stands.',
      },
    }),
  },
});
