import { findingOf, part } from '../../engine/define/topic';
import { freezing, frostCustom } from '../../trade/bibliography/cold-weather';
import { house } from '../../trade/bibliography/common';
import { frostTable } from './frost-table';

const may = (label: string, is: string) =>
  ({ label, unit: 'yes-no', is, source: frostCustom }) as const;

const wet = "frost.isAsked && frost.isMet && water.state == 'in-use'";
const unheated = "(tanks.place != 'heated' || trailer.use == 'stands-unused')";
const reached =
  "(tanks.place == 'exposed' || trailer.use == 'stands-unused' || (tanks.place == 'enclosed' && frost.isHard))";

const item = (label: string, when: string, because: string) => ({
  label,
  when,
  amounts: {},
  because,
  source: frostCustom,
});

/** Which tanks and lines may freeze, and whether to stay, drain or winterise. */
export const frost = part({
  facts: {
    'water.state': {
      kind: 'choice',
      label: 'Water system',
      options: ['in-use', 'drained', 'winterised'],
      ask: 'Is there water in tanks and lines, were they drained, or is it winterised?',
      where: 'told by the owner',
      means: 'Winterised: blown out or filled with antifreeze, traps and heater too.',
    },
    'trailer.use': {
      kind: 'choice',
      label: 'Lived in or standing',
      options: ['lived-in', 'stands-unused'],
      ask: 'Does somebody live in it and heat it, or does it stand unused?',
      where: 'told by the owner',
    },
    'tanks.place': {
      kind: 'choice',
      label: 'Where tanks and lines run',
      options: ['heated', 'enclosed', 'exposed'],
      ask: 'Do tanks and lines run in a space that a furnace duct heats, behind a closed belly without heat, or in the open?',
      where: 'look beneath; the brochure says whether a furnace duct goes there',
    },
  },
  parameters: {
    'frost.point': {
      label: 'Freezing point of water',
      unit: '°F',
      values: [{ from: '2020-01-01', value: 32 }],
      source: freezing,
    },
    'frost.hard': {
      label: 'Hard frost: a night below this gets into an enclosed belly',
      unit: '°F',
      values: [{ from: '2020-01-01', value: 20 }],
      range: [15, 28],
      source: house,
    },
  },
  formulas: {
    'frost.isAsked': {
      label: 'The water is asked about',
      unit: 'yes-no',
      is: 'given(water.state) || given(trailer.use) || given(tanks.place)',
      source: frostCustom,
    },
    'frost.isMet': {
      label: 'Water freezes outside',
      unit: 'yes-no',
      is: 'outside.temperature <= frost.point',
      source: freezing,
    },
    'frost.isHard': {
      label: 'Hard frost',
      unit: 'yes-no',
      is: 'outside.temperature < frost.hard',
      source: house,
    },
    'freezes.outside': may('Hose and outside outlets may freeze', wet),
    'freezes.valves': may('Dump valves may freeze', `${wet} && ${unheated}`),
    'freezes.tanks': may('Tanks and lines below may freeze', `${wet} && ${reached}`),
    'freezes.inside': may(
      'Lines, pump and heater inside may freeze',
      `${wet} && trailer.use == 'stands-unused'`,
    ),
    'freezes.rest': may(
      'What is left in traps and pump may freeze',
      "frost.isAsked && frost.isMet && water.state == 'drained'",
    ),
  },
  decisions: { 'water.action': frostTable },
  selections: {
    freezing: {
      label: 'What may freeze',
      amounts: {},
      items: {
        outside: item('Hose and outside outlets', 'freezes.outside', 'they hang in the open air'),
        valves: item('Dump valves', 'freezes.valves', 'no furnace air reaches them'),
        tanks: item(
          'Tanks and lines below the floor',
          'freezes.tanks',
          'no furnace air reaches them, and the cold does',
        ),
        inside: item(
          'Lines inside, pump, water heater, toilet valve',
          'freezes.inside',
          'nobody heats it',
        ),
        rest: item('Traps, pump and low bends', 'freezes.rest', 'draining leaves water in them'),
      },
      source: frostCustom,
    },
  },
  findings: {
    water: findingOf('water.action', frostTable, {
      askedBy: ['water.state', 'tanks.place', 'trailer.use'],
      open: {
        wrong: 'Water may freeze in it.',
        do: 'Find out how cold it gets, what is in the lines, and where they run.',
      },
    }),
  },
});
