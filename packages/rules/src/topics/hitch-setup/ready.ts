import { part } from '../../engine/define/topic';
import { custom, partsRating as makersRating } from '../../trade/bibliography/common';

const asked = { kind: 'yes-no', where: 'a walk around the coupling' } as const;
const no = (fact: string) =>
  ({ all: [{ fact, operator: 'equal', value: 'no' } as const] }) as const;

/** The walk around the coupling before the wheels turn; each is asked only when told of. */
export const ready = part({
  facts: {
    'hitch.latched': {
      ...asked,
      label: 'Coupler latched, both pins in',
      noun: 'whether the coupler is latched and both pins are in',
      ask: 'Is the coupler shut over the ball and pinned, and the mount’s pin clipped in the receiver?',
    },
    'hitch.chains': {
      ...asked,
      label: 'Safety chains on, crossed',
      noun: 'whether the safety chains are on and crossed',
      ask: 'Are both chains hooked on, crossed under the coupler, off the road and free to turn?',
    },
    'hitch.breakaway': {
      ...asked,
      label: 'Breakaway cable on the vehicle',
      noun: 'whether the breakaway cable is on the vehicle',
      ask: 'Is the breakaway cable on a point of its own at the vehicle, not on the ball or a chain?',
    },
    'hitch.torqued': {
      ...asked,
      label: 'Ball and head torqued',
      noun: 'whether ball and head are torqued',
      ask: 'Are ball nut and hitch head tightened with a torque wrench, and again after the first trip?',
    },
  },
  findings: {
    latch: {
      label: 'Latch and pins',
      askedBy: ['hitch.latched'],
      stop: {
        when: no('hitch.latched'),
        wrong: 'The coupling is not shut and pinned.',
        do: 'Do not move. Shut the latch, pin it, clip the receiver’s pin, and lift once with the jack to prove it.',
      },
      open: {
        wrong: 'Nobody knows whether it is shut and pinned.',
        do: 'Look before the wheels turn.',
      },
      otherwise: 'The coupling is shut and pinned.',
      source: makersRating,
    },
    chains: {
      label: 'Safety chains',
      askedBy: ['hitch.chains'],
      stop: {
        when: no('hitch.chains'),
        wrong: 'The safety chains are not on.',
        do: 'Do not move. Hook both, crossed under the coupler, rated for the trailer.',
      },
      open: {
        wrong: 'Nobody knows whether the chains are on.',
        do: 'Look before the wheels turn.',
      },
      otherwise: 'The safety chains are on.',
      source: custom,
    },
    breakaway: {
      label: 'Breakaway cable',
      askedBy: ['hitch.breakaway'],
      stop: {
        when: no('hitch.breakaway'),
        wrong: 'The breakaway cable is not on the vehicle.',
        do: 'If the trailer comes loose, nothing brakes it. Clip it to a point of its own.',
      },
      open: {
        wrong: 'Nobody knows whether the breakaway cable is on.',
        do: 'Look before the wheels turn.',
      },
      otherwise: 'The breakaway cable is on the vehicle.',
      source: custom,
    },
    torque: {
      label: 'Torque',
      askedBy: ['hitch.torqued'],
      care: {
        when: no('hitch.torqued'),
        wrong: 'Ball nut and head have not been torqued.',
        do: 'Have it done by the maker’s table before the trip, and again after the first miles.',
      },
      open: {
        wrong: 'Nobody knows whether ball nut and head were torqued.',
        do: 'Have it done by the maker’s table.',
      },
      otherwise: 'Ball nut and head were torqued.',
      source: makersRating,
    },
  },
});
