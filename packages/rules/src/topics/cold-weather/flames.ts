import { part } from '../../engine/define/topic';
import { manual } from '../../trade/bibliography/common';

/** Whoever tells one of these means to keep warm in it. */
export const staying = [
  'furnace.input',
  'furnace.hours',
  'inside.temperature',
  'inside.humidity',
  'trip.nights',
  'body.length',
  'night.gas',
] as const;

/** What people do when they are cold, and must not. */
export const flames = part({
  facts: {
    'heat.portable': {
      kind: 'yes-no',
      label: 'A stove or portable gas heater warms the sleeping space',
      noun: 'whether a flame beside the furnace keeps it warm',
      ask: 'Is anything with a flame but the furnace used to keep warm?',
      where: 'told by the owner',
    },
    'furnace.exhaustClear': {
      kind: 'yes-no',
      label: 'Exhaust and intake of the furnace are free of snow and ice',
      noun: 'whether exhaust and intake are free of snow',
      ask: 'Are the furnace’s exhaust and intake outside free of snow and ice?',
      where: 'the two openings behind one grille in the outer wall; after every fall or drift',
    },
  },
  formulas: {
    'people.sleep': {
      label: 'Somebody sleeps in it, or means to keep warm in it',
      unit: 'yes-no',
      is: `given(heat.portable) || ${staying.map((fact) => `given(${fact})`).join(' || ')} || given(trailer.use) && trailer.use == 'lived-in'`,
      source: manual,
    },
    'flames.areUntold': {
      label: 'Nobody said what keeps them warm',
      unit: 'yes-no',
      is: '!given(heat.portable)',
      source: manual,
    },
  },
  findings: {
    'portable-heat': {
      label: 'Flames for warmth',
      first: true,
      askedWhen: 'people.sleep',
      stop: {
        when: '!flames.areUntold && heat.portable',
        wrong: 'Never heat a sleeping space with a stove or a portable gas heater.',
        because: 'It uses up the air and gives off carbon monoxide, which kills sleepers.',
        do: 'Put it out and open a window. Only the built-in furnace with its own flue keeps sleepers warm.',
      },
      if: {
        when: 'flames.areUntold',
        wrong:
          'Whether anything with a flame but the furnace keeps the trailer warm is not known yet.',
        do: 'Say to everybody who sleeps there: no flame but the built-in furnace keeps the trailer warm.',
        proviso: 'nothing with a flame but the furnace warms the sleeping space',
      },
      otherwise: 'Nothing with a flame but the furnace warms it.',
      open: {
        wrong: 'Make sure that nothing with a flame but the furnace warms the sleeping space.',
        because:
          'A stove or a portable gas heater gives off carbon monoxide, which kills sleepers.',
      },
      source: manual,
    },
    exhaust: {
      label: 'Exhaust and intake of the furnace',
      first: true,
      askedBy: ['furnace.exhaustClear'],
      stop: {
        when: '!furnace.exhaustClear',
        wrong: 'Switch the furnace off until its exhaust and intake are free of snow and ice.',
        because: 'A blocked exhaust fills the trailer with carbon monoxide, which has no smell.',
        do: 'Everybody out while it is aired; dig it free, and look again after every drift. If an alarm sounded, call.',
      },
      otherwise: 'Exhaust and intake are free.',
      open: {
        wrong:
          'Look whether snow or ice blocks the furnace’s exhaust and intake before anybody sleeps there.',
      },
      source: manual,
    },
  },
});
