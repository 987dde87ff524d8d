import { part } from '../../engine/define/topic';
import { frostCustom } from '../../trade/bibliography/cold-weather';

/** Frost while there is water aboard; whether to drain or to stay is the question of cold weather. */
export const frost = part({
  findings: {
    'frost-aboard': {
      label: 'Frost with water aboard',
      askedBy: ['outside.temperature', 'tanks.place'],
      askedFirst: true,
      stop: {
        when: 'freezes.tanks',
        wrong: 'Tanks and lines below the floor freeze.',
        because: 'At {outside.temperature} they burst, even while it is warm inside.',
        do: 'Drain them before the night and carry drinking water inside, or stay where it is milder.',
      },
      care: {
        when: 'freezes.outside',
        wrong: 'Hose and outlets outside freeze, and the furnace has to stay on.',
        because:
          'Its air is what keeps the tanks from freezing; count gas and battery for all that time.',
        do: 'Unhook and drain the hose. Never turn the heat down to save gas.',
      },
      otherwise: 'Nothing freezes.',
      open: {
        wrong: 'Water may freeze in it.',
        do: 'Look where tanks and lines run, and how long it freezes. If you do not know, drain them before the night.',
      },
      source: frostCustom,
    },
  },
});
