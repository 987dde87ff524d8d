import { findingOf, part } from '../../engine/define/topic';
import { alarmTable } from './alarm-table';

/** What an alarm does at this moment: one that sounds is left for fresh air, one that chirps is looked at. */
export const alarmHeard = part({
  facts: {
    'alarm.heard': {
      kind: 'choice',
      options: ['quiet', 'chirps', 'sounds'],
      label: 'What the alarm does',
      noun: 'what the alarm does',
      ask: 'Is the alarm, of gas, carbon monoxide or smoke, quiet, chirping now and then, or sounding without stopping?',
      where: 'there and now; the alarm’s own label says which pattern means what',
    },
  },
  decisions: { 'alarm.means': alarmTable },
  findings: {
    alarm: findingOf('alarm.means', alarmTable, {
      first: true,
      // A quiet alarm is no answer to whether the gas may be used.
      settles: [],
      askedBy: ['alarm.heard'],
      open: {
        wrong: 'Whether the alarm chirps or sounds is not known yet.',
        because:
          'A chirp once in a while asks for a battery; a sound that does not stop is gas, smoke or carbon monoxide.',
        do: 'In doubt out first, then listen.',
      },
    }),
  },
});
