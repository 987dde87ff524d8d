import type { YesNoFact } from '../../engine/define/shapes';
import { findingOf, part } from '../../engine/define/topic';
import { custom } from '../../trade/bibliography/common';
import { trades } from '../../trade/bibliography/retrofit';
import { judgedTable, needsTable } from './fitting-table';

const touches = (label: string, ask: string) =>
  ({
    kind: 'yes-no',
    label,
    noun: `whether ${label.replace(/^It/, 'it')}`,
    ask,
    where: 'its fitting instructions',
  }) satisfies YesNoFact;

/**
 * Whether a kind of work is done: by its kind, or as told. Of a kind that is not known, every one
 * has to be told.
 */
const work = (fact: string, kinds: readonly string[]): string =>
  [
    ...kinds.map((kind) => `addon.kind == '${kind}'`),
    `((given(touches.${fact}) || addon.kind == 'other') && touches.${fact} == 'yes')`,
  ].join(' || ');

/** What it touches, and so who may fit it. */
export const fitting = part({
  facts: {
    'touches.plumbing': touches('It touches the plumbing', 'Is a water line or drain opened?'),
    'touches.twelveVolt': touches('It touches the 12-volt wiring', 'Is 12-volt wiring added?'),
    'touches.mains': touches('It touches 120 volts', 'Is anything connected to 120 volts?'),
    'touches.gas': touches('It touches the gas', 'Is a gas line opened or an appliance connected?'),
    'touches.structure': touches(
      'It touches the structure',
      'Is the frame, a rafter or a stud cut, drilled, welded or hung upon?',
    ),
    'touches.roof': touches('It goes through the roof', 'Is the roof or an outer skin pierced?'),
    'fitting.planned': {
      kind: 'choice',
      options: ['not-chosen', 'owner', 'dealer', 'licensed-trade'],
      label: 'Who is to fit it',
      noun: 'who is to fit it',
      ask: 'Who is to fit the new part?',
      where: 'told by the owner',
      silent: { value: 'not-chosen', says: 'Who is to fit it is not chosen yet.', source: custom },
    },
  },
  formulas: {
    'work.plumbing': {
      label: 'Work on the plumbing',
      unit: 'yes-no',
      is: work('plumbing', ['bidet-seat']),
      source: trades,
    },
    'work.twelveVolt': {
      label: 'Work on 12 volts',
      unit: 'yes-no',
      is: work('twelveVolt', ['solar-panel', 'battery', 'inverter']),
      source: trades,
    },
    'work.mains': {
      label: 'Work on 120 volts',
      unit: 'yes-no',
      is: `${work('mains', ['air-conditioner', 'inverter'])} || (mains.isPlugged && outlet.protected == 'no')`,
      source: trades,
    },
    'work.gas': {
      label: 'Work on gas',
      unit: 'yes-no',
      is: work('gas', ['gas-appliance']),
      source: trades,
    },
    'work.structure': {
      label: 'Work on the structure',
      unit: 'yes-no',
      is: work('structure', ['bicycle-rack', 'air-conditioner']),
      source: trades,
    },
    'work.roof': {
      label: 'Work on the roof',
      unit: 'yes-no',
      is: work('roof', ['air-conditioner', 'solar-panel']),
      source: trades,
    },
    'work.any': {
      label: 'It touches something',
      unit: 'yes-no',
      is: 'work.plumbing || work.twelveVolt || work.mains || work.gas || work.structure || work.roof',
      source: trades,
    },
    'work.stays': {
      label: 'It leaves a hole',
      unit: 'yes-no',
      is: 'work.structure || work.roof',
      source: trades,
    },
  },
  decisions: { 'fitting.needs': needsTable, 'fitting.judged': judgedTable },
  findings: {
    'gas-connection': {
      label: 'Where it takes its gas',
      if: {
        when: 'work.gas',
        wrong: 'A gas appliance is connected by the pressure that its own plate asks for.',
        because:
          'At cylinder pressure a burner made for the regulator’s low pressure throws flames.',
        do: 'Read the plate at its inlet; ask it as a question of gas supply before anything is joined.',
        proviso:
          'the appliance is connected at the pressure its own plate asks for and leak-tested',
      },
      otherwise: 'No gas is touched.',
      open: {
        wrong: 'The new part may touch gas.',
        do: 'Read the new part’s fitting instructions.',
      },
      source: trades,
    },
    fitting: findingOf('fitting.judged', judgedTable, {
      open: {
        wrong: 'Who may fit it hangs on what it touches, which is not all told.',
        because: 'Gas and 120 volts are for a licensed trade, structure for a qualified shop.',
        do: 'Read its fitting instructions for gas, 120 volts, structure, roof, 12 volts and water; do not begin before that.',
      },
    }),
  },
});
