import type { Change } from '../../engine/define/changes';
import { house, manual } from '../../trade/bibliography/common';
import { charge, layers } from '../../trade/bibliography/theft-deterrence';

const set = (fact: string, option: string, says: string, asks: number): Change => ({
  kind: 'set',
  fact,
  to: { option },
  says,
  asks,
  source: asks === 1 ? manual : layers,
});

/** What an owner can do; never what it is worth, owed or insured for. */
export const changes: readonly Change[] = [
  set('exit.blocked', 'no', 'Free every door and escape window, so that they open from inside.', 1),
  set('chains.replaced', 'no', 'Put safety chains, latch pin and breakaway cable back.', 1),
  set('lock.onTheRoad', 'no', 'Take every wheel and coupler lock off before it moves.', 1),
  set('gas.shutIn', 'no', 'Open the gas locker’s vents and free its valves.', 1),
  set('trap.set', 'no', 'Take away what is set to hurt someone.', 1),
  set('thief.followed', 'no', 'Leave it to police, with the numbers.', 1),
  set('guard.doors', 'yes', 'Lock all that opens, with keys of its own.', 2),
  set('guard.hidden', 'yes', 'Take home what tempts, and the papers.', 2),
  set(
    'guard.noticed',
    'listed-and-watched',
    'List numbers and marks, and ask someone to look by.',
    3,
  ),
  set('guard.held', 'coupler-and-wheel', 'Fit a coupler lock and a wheel lock.', 4),
  set(
    'guard.held',
    'coupler-and-both-wheels',
    'Fit a lock to a wheel on the other side as well.',
    5,
  ),
  {
    ...set('guard.held', 'anchored', 'Chain it to a ground anchor besides.', 5),
    onlyIf: { fact: 'place.kind', is: 'driveway' },
  },
  {
    ...set(
      'guard.held',
      'anchored',
      'Chain it to a ground anchor besides, if the lot allows one.',
      5,
    ),
    onlyIf: { fact: 'place.kind', is: 'storage-lot' },
  },
  set('guard.noticed', 'tracked', 'Hide a tracker in it.', 5),
  {
    kind: 'less',
    fact: 'tracker.reports',
    step: 1,
    says: 'Let the tracker report {to} times a day instead of {from}.',
    asks: 6,
    source: charge,
  },
  {
    kind: 'less',
    fact: 'contents.value',
    step: 100,
    says: 'Take things home until {to} are left in it instead of {from}.',
    asks: 7,
    source: house,
  },
];
