import { findingOf, part } from '../../engine/define/topic';
import { freezing, frostCustom } from '../bibliography/cold-weather';
import { house } from '../bibliography/common';
import { frostTable } from './frost-table';
import { furnace } from './furnace';

const may = (label: string, is: string) =>
  ({ label, unit: 'yes-no', is, source: frostCustom }) as const;

const wet = "frost.isAsked && frost.isMet && water.state == 'in-use'";
const unheated = "(tanks.place != 'heated' || trailer.use == 'stands-unused')";
const reached =
  "(trailer.use == 'stands-unused' || (!frost.isBrief && (tanks.place == 'exposed' || (tanks.place == 'enclosed' && frost.isHard))))";

const item = (group: string, label: string, when: string, because: string) => ({
  label,
  group,
  when,
  amounts: {},
  because,
  source: frostCustom,
});

/** Which tanks and lines may freeze, and whether to stay, drain or winterize. */
export const frost = part({
  facts: {
    'water.state': furnace.facts['water.state'],
    'trailer.use': furnace.facts['trailer.use'],
    'frost.hours': furnace.facts['frost.hours'],
    'tanks.place': {
      kind: 'choice',
      label: 'Where tanks and lines run',
      noun: 'where tanks and lines run',
      options: ['heated', 'enclosed', 'exposed'],
      ask: 'Do tanks and lines run in a space that a furnace duct heats, behind a closed belly without heat, or in the open?',
      where: 'look beneath; the brochure says whether a furnace duct goes there',
    },
  },
  parameters: {
    'frost.point': furnace.parameters['frost.point'],
    'frost.brief': {
      label: 'Hours of light frost that get into lines and not into tanks',
      unit: 'h',
      values: [{ from: '2020-01-01', value: 4 }],
      range: [1, 8],
      source: house,
    },
    'frost.near': {
      label: 'How far above freezing hose and valves may freeze under a clear sky',
      unit: 'F°',
      values: [{ from: '2020-01-01', value: 4 }],
      range: [2, 8],
      source: house,
    },
    'frost.hard': {
      label: 'Hard frost: a night below this gets into an enclosed belly',
      unit: '°F',
      values: [{ from: '2020-01-01', value: 20 }],
      range: [15, 28],
      source: house,
    },
    'blowout.most': {
      label: 'Most air pressure that lines are blown out with',
      noun: 'the most for blowing out',
      unit: 'psi',
      values: [{ from: '2020-01-01', value: 50 }],
      source: frostCustom,
    },
  },
  formulas: {
    'frost.isAsked': {
      label: 'The water is asked about',
      unit: 'yes-no',
      is: 'given(water.state) || given(trailer.use) || given(tanks.place) || given(outside.temperature)',
      source: frostCustom,
    },
    'frost.isMet': {
      label: 'Water freezes outside',
      noun: 'how cold it gets',
      unit: 'yes-no',
      is: 'outside.temperature <= frost.point',
      source: freezing,
    },
    'frost.isNear': {
      label: 'So close to freezing that hose and valves may freeze',
      unit: 'yes-no',
      is: "given(outside.temperature) && outside.temperature > frost.point && outside.temperature <= frost.point + frost.near && water.state == 'in-use'",
      source: house,
    },
    'frost.isHard': {
      label: 'Hard frost',
      unit: 'yes-no',
      is: 'outside.temperature < frost.hard',
      source: house,
    },
    'frost.isBrief': {
      label: 'A light frost of a few hours',
      noun: 'how long the frost lasts',
      unit: 'yes-no',
      is: '!frost.isHard && frost.hours <= frost.brief',
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
        outside: item(
          'outside',
          'Hose and outside outlets',
          'freezes.outside',
          'they hang in the open air',
        ),
        valves: item(
          'below the floor',
          'Dump valves',
          'freezes.valves',
          'no furnace air reaches them',
        ),
        tanks: item(
          'below the floor',
          'Tanks and lines below the floor',
          'freezes.tanks',
          'no furnace air reaches them, and the cold does',
        ),
        inside: item(
          'inside',
          'Lines inside, pump, water heater, toilet valve',
          'freezes.inside',
          'it is not heated',
        ),
        rest: item(
          'inside',
          'Traps, pump and low bends',
          'freezes.rest',
          'draining leaves water in them',
        ),
      },
      source: frostCustom,
    },
  },
  findings: {
    water: findingOf('water.action', frostTable, {
      askedBy: ['water.state', 'tanks.place', 'trailer.use', 'frost.hours', 'outside.temperature'],
      askedFirst: true,
    }),
    'near-frost': {
      label: 'Close to freezing',
      askedBy: ['outside.temperature'],
      care: {
        when: 'frost.isNear',
        wrong: 'So close to freezing, hose and valves outside may freeze.',
        because:
          'A forecast is good to a few degrees, and under a clear sky a hose gets colder than the air.',
        do: 'Unhook and drain the hose for the night, and shut the dump valves.',
      },
      otherwise: 'It is not close to freezing, or what may freeze is told apart.',
      source: frostCustom,
    },
  },
});
