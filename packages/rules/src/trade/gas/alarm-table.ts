import type { Decision } from '../../engine/define/shapes';
import { alarms } from '../bibliography/service-triage';

/** An alarm that sounds is believed; one that chirps once in a while speaks of itself. */
export const alarmTable: Decision = {
  label: 'What the alarm means',
  hit: 'unique',
  on: ['alarm.heard'],
  rows: [
    { when: ['quiet'], gives: 'nothing' },
    { when: ['chirps'], gives: 'the-alarm-itself' },
    { when: ['sounds'], gives: 'out-then-call' },
  ],
  results: {
    nothing: { label: 'nothing', level: 'ok', says: 'The alarm is quiet.' },
    'the-alarm-itself': {
      label: 'the alarm itself: a weak battery, or its years are over',
      level: 'if',
      says: 'A chirp once in a while is the alarm itself: its battery is weak, or its years are over.',
      because: 'An alarm that is taken down to have peace does not warn.',
      do: 'Fresh battery, test button, date on its back: past it, replace it. If it sounds without stopping, everybody out.',
      proviso: 'the alarm only chirps once in a while and all feel well',
    },
    'out-then-call': {
      label: 'out, then call',
      level: 'stop',
      says: 'Everybody out into fresh air now, touch no switch, no flame.',
      because: 'An alarm that sounds without stopping is believed: carbon monoxide has no smell.',
      do: 'From well away call the emergency number, and say so if anyone feels dizzy or sick. Do not go back in before a professional has found where it came from.',
    },
  },
  source: alarms,
};
