import type { Change } from '../../engine/define/changes';
import { custom } from '../../trade/bibliography/common';
import { ballClasses, geometry } from '../../trade/bibliography/hitch-setup';

/** What a person can change at the hitch; never a rating. */
export const changes: readonly Change[] = [
  {
    kind: 'set',
    fact: 'hitch.latched',
    to: { option: 'yes' },
    says: 'Shut and pin the coupling, and prove it with the jack.',
    asks: 1,
    source: custom,
  },
  {
    kind: 'set',
    fact: 'hitch.chains',
    to: { option: 'yes' },
    says: 'Hook on both chains, crossed.',
    asks: 1,
    source: custom,
  },
  {
    kind: 'set',
    fact: 'hitch.breakaway',
    to: { option: 'yes' },
    says: 'Clip the breakaway cable to a point of its own at the vehicle.',
    asks: 1,
    source: custom,
  },
  {
    kind: 'leave',
    fact: 'load.cargo',
    column: 'weight',
    says: 'Leave {row} at home.',
    asks: 2,
    source: custom,
  },
  {
    kind: 'set',
    fact: 'hitch.torqued',
    to: { option: 'yes' },
    says: 'Have ball nut and head torqued by the maker’s table.',
    asks: 3,
    source: custom,
  },
  {
    kind: 'shift',
    fact: 'hitch.mountRise',
    step: 1,
    says: 'Fit a ball mount with {to} instead of {from}.',
    sides: { above: 'of rise', at: 'of neither rise nor drop', below: 'of drop' },
    asks: 4,
    source: geometry,
  },
  {
    kind: 'set',
    fact: 'hitch.ballSize',
    to: { sameAs: 'trailer.couplerSize' },
    rights: ['coupler-class', 'ball-class'],
    says: 'Fit a ball of {to}, rated for the loaded trailer, instead of {from}.',
    asks: 5,
    source: ballClasses,
  },
  {
    kind: 'set',
    fact: 'hitch.distribution',
    to: { option: 'no' },
    says: 'Leave off the weight-distributing hitch, where the ratings without it allow.',
    asks: 6,
    source: custom,
  },
];
