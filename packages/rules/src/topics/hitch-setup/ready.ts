import { part } from '../../engine/define/topic';
import { custom, partsRating as makersRating } from '../../trade/bibliography/common';

const asked = { kind: 'yes-no', where: 'a walk around the coupling' } as const;

/**
 * The walk around the coupling before the wheels turn. What holds the trailer is asked of everybody:
 *
 *     not told ─► only if it is so     told, and nobody knows ─► cannot say     no ─► must not roll
 */
export const ready = part({
  facts: {
    'hitch.latched': {
      ...asked,
      label: 'Coupler latched, both pins in',
      noun: 'whether the coupler is latched and both pins are in',
      ask: 'Before you roll: is the coupler shut over the ball and pinned, and the mount’s pin clipped in the receiver?',
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
  formulas: {
    'latch.isOff': {
      label: 'The coupling is not shut and pinned',
      unit: 'yes-no',
      is: "given(hitch.latched) && hitch.latched == 'no'",
      source: makersRating,
    },
    'latch.isSilent': {
      label: 'Nobody said whether the coupling is shut and pinned',
      unit: 'yes-no',
      is: '!given(hitch.latched)',
      source: makersRating,
    },
    'chains.areOff': {
      label: 'The safety chains are not on',
      unit: 'yes-no',
      is: "given(hitch.chains) && hitch.chains == 'no'",
      source: custom,
    },
    'chains.areAsked': {
      label: 'It rides on a ball, or chains were told of',
      unit: 'yes-no',
      is: 'coupling.isBall || given(hitch.chains)',
      source: custom,
    },
    'chains.areSilent': {
      label: 'Nobody said whether the safety chains are on',
      unit: 'yes-no',
      is: 'coupling.isBall && !given(hitch.chains)',
      source: custom,
    },
    'breakaway.isOff': {
      label: 'The breakaway cable is not on',
      unit: 'yes-no',
      is: "given(hitch.breakaway) && hitch.breakaway == 'no'",
      source: custom,
    },
    'brakes.areAssumed': {
      label: 'The breakaway cable is off, and nobody knows which brakes it would put on',
      unit: 'yes-no',
      is: 'breakaway.isOff && !brakes.areKnown',
      source: custom,
    },
    'breakaway.isSilent': {
      label: 'Nobody said whether the breakaway cable is on',
      unit: 'yes-no',
      is: '!given(hitch.breakaway)',
      source: custom,
    },
    'breakaway.isNeeded': {
      label: 'Nothing speaks against brakes that a breakaway cable works',
      unit: 'yes-no',
      is: '!brakes.areNone',
      source: custom,
    },
  },
  findings: {
    latch: {
      label: 'Latch and pins',
      stop: {
        when: 'latch.isOff',
        wrong: 'The coupling is not shut and pinned.',
        do: 'Do not move. Shut the latch, pin it, clip the receiver’s pin, then lift the tongue with the jack: the vehicle must rise with it.',
      },
      open: {
        wrong: 'Whether the coupling is shut and pinned is not known.',
        because: 'An open latch lets go on the first bump.',
        do: 'Look at latch and pins before the wheels turn.',
      },
      if: {
        when: 'latch.isSilent',
        wrong: 'Whether the coupling is shut and pinned is not known yet.',
        because: 'An open latch lets go on the first bump.',
        do: 'Look at latch and pins before the wheels turn.',
        proviso: 'the coupling is shut and pinned',
      },
      otherwise: 'The coupling is shut and pinned.',
      source: makersRating,
    },
    chains: {
      label: 'Safety chains',
      askedWhen: 'chains.areAsked',
      stop: {
        when: 'chains.areOff',
        wrong: 'The safety chains are not on.',
        do: 'Do not move. Hook both, crossed under the coupler, rated for the trailer.',
      },
      open: {
        wrong: 'Whether the chains are on is not known.',
        because: 'They are what holds the trailer when the ball no longer does.',
        do: 'Look at both chains before the wheels turn.',
      },
      if: {
        when: 'chains.areSilent',
        wrong: 'Whether the safety chains are on is not known yet.',
        because: 'They are what holds the trailer when the ball no longer does.',
        do: 'Look at both chains before the wheels turn.',
        proviso: 'both safety chains are on and crossed',
      },
      otherwise: 'The safety chains are on.',
      source: custom,
    },
    breakaway: {
      label: 'Breakaway cable',
      askedWhen: 'breakaway.isNeeded',
      stop: [
        {
          when: 'breakaway.isOff && brakes.areKnown',
          wrong: 'The breakaway cable is not hooked to the vehicle itself.',
          because: 'If the trailer comes loose, nothing brakes it.',
          do: 'Clip it to a point of its own.',
        },
        {
          when: 'breakaway.isOff',
          wrong: 'The breakaway cable is not hooked to the vehicle itself.',
          because: 'If the trailer comes loose, nothing brakes it.',
          do: 'Clip it to a point of its own. Where there is none, look for drums or discs, wires or a hose at the wheels before you set off.',
        },
      ],
      open: {
        wrong: 'Whether the breakaway cable is on is not known.',
        because: 'If the trailer comes loose without it, nothing brakes it.',
        do: 'Look at the cable before the wheels turn.',
      },
      if: {
        when: 'breakaway.isSilent',
        wrong: 'Whether the breakaway cable is on is not known yet.',
        because: 'If the trailer comes loose without it, nothing brakes it.',
        do: 'Look at the cable before the wheels turn.',
        proviso: 'the breakaway cable is on the vehicle',
      },
      otherwise: 'The breakaway cable is on the vehicle.',
      source: custom,
    },
    torque: {
      label: 'Torque',
      askedBy: ['hitch.torqued'],
      care: {
        when: "hitch.torqued == 'no'",
        wrong: 'Ball nut and hitch bolts have not been tightened with a torque wrench.',
        do: 'Have it done by the maker’s table before the trip, and again after the first miles.',
      },
      open: {
        wrong: 'Whether ball nut and hitch bolts were tightened with a torque wrench is not known.',
        do: 'Have it done by the maker’s table.',
      },
      otherwise: 'Ball nut and hitch bolts were tightened with a torque wrench.',
      source: makersRating,
    },
  },
});
