import { part } from '../../engine/define/topic';
import { custom, manual } from '../../trade/bibliography/common';
import { chains } from '../../trade/bibliography/theft-deterrence';

/** Where guarding hurts someone; none of it is milder than stop. */
export const dangers = part({
  facts: {
    'exit.blocked': {
      kind: 'yes-no',
      label: 'Whether a way out is blocked',
      noun: 'whether a way out is blocked',
      means: 'A lock, bar, chain or screw keeps a door or escape window from opening inside.',
      ask: 'With all locked, does each door and escape window still open from inside, without a key?',
      where: 'try it from inside; “yes” here means that something is blocked',
    },
    'chains.replaced': {
      kind: 'yes-no',
      label: 'A lock stands in for safety chain, latch pin or breakaway cable',
      noun: 'whether a lock stands in for a safety chain',
      ask: 'On the road, does a lock or lock chain do the work of safety chains, pin or cable?',
      where: 'at the coupler, hitched',
    },
    'lock.onTheRoad': {
      kind: 'yes-no',
      label: 'A wheel or coupler lock stays on while it is moved',
      noun: 'whether a lock stays on while it is moved',
      ask: 'Does any wheel or coupler lock stay on while the trailer is moved?',
      where: 'told by the owner',
    },
    'gas.shutIn': {
      kind: 'yes-no',
      label: 'A cover or lock shuts the gas locker’s vents or valves',
      noun: 'whether the gas locker is shut in',
      ask: 'Does a cover or lock close the vents of the gas locker, or keep a hand from the valves?',
      where: 'at the gas locker',
    },
    'trap.set': {
      kind: 'yes-no',
      label: 'Something is set to hurt a thief',
      noun: 'whether something is set to hurt a thief',
      ask: 'Is anything meant to hurt whoever breaks in?',
      where: 'told by the owner',
    },
    'thief.followed': {
      kind: 'yes-no',
      label: 'The owner means to fetch it back',
      noun: 'whether somebody would follow it',
      ask: 'If the tracker moves: will anyone drive after it?',
      where: 'told by the owner',
    },
  },
  formulas: {
    'exit.isAsked': {
      label: 'Whether a way out is blocked is asked',
      unit: 'yes-no',
      is: 'given(exit.blocked) || (given(place.kind) && place.isSleptIn)',
      source: manual,
    },
    'exit.isToldOpen': {
      label: 'Somebody was asked about the ways out and does not know',
      unit: 'yes-no',
      is: 'given(exit.blocked) && !known(exit.blocked)',
      source: manual,
    },
    'gas.isAsked': {
      label: 'Whether the gas locker is shut in is asked',
      unit: 'yes-no',
      is: 'given(gas.shutIn) || (given(place.kind) && exposed.some)',
      source: manual,
    },
    'gas.isToldOpen': {
      label: 'Somebody was asked about the gas locker and does not know',
      unit: 'yes-no',
      is: 'given(gas.shutIn) && !known(gas.shutIn)',
      source: manual,
    },
  },
  findings: {
    'exit-blocked': {
      label: 'Ways out',
      first: true,
      stop: {
        when: "exit.isAsked && exit.blocked == 'yes'",
        wrong: 'Take it off before anyone sleeps in it: a way out is blocked.',
        because: 'In a fire there are seconds, without light and without keys.',
        do: 'Every door and escape window opens from inside, without a key.',
        proviso: 'every door and escape window opens from inside without a key',
      },
      stopOpen: 'if',
      unknown: {
        when: "exit.isToldOpen && exit.blocked == 'yes'",
        wrong: 'Whether a way out is blocked comes first.',
      },
      otherwise: 'Every way out opens from inside, or no one sleeps in it there.',
      open: {
        wrong: 'Whether every way out opens from inside is not told.',
        do: 'Try every door and escape window from inside before anyone sleeps in it.',
      },
      source: manual,
    },
    'chains-replaced': {
      label: 'Safety chains',
      askedBy: ['chains.replaced'],
      stop: {
        when: "chains.replaced == 'yes'",
        wrong: 'Do not tow so: a lock is no safety chain.',
        because:
          'Chains, latch with its pin and breakaway cable are each rated for the trailer, and each is called for beside any lock.',
        do: 'Put safety chains, latch pin and breakaway cable back in place.',
      },
      otherwise: 'Chains, latch and cable are as they should be, beside any lock.',
      open: {
        wrong: 'Whether chains, latch pin and breakaway cable are in their places is not known.',
        do: 'Do not tow before they are seen there.',
      },
      source: chains,
    },
    'lock-on-the-road': {
      label: 'Locks off before it moves',
      askedBy: ['lock.onTheRoad'],
      stop: {
        when: "lock.onTheRoad == 'yes'",
        wrong: 'Do not move it with a lock on.',
        because:
          'A wheel lock tears brake, tire and fender, and a coupler lock may keep the latch from closing.',
        do: 'Walk around it first, and take every lock off.',
      },
      otherwise: 'Locks come off before it moves.',
      open: {
        wrong: 'Whether a lock is still on is not known.',
        do: 'Walk around it before it moves, and take every lock off.',
      },
      source: manual,
    },
    'gas-shut-in': {
      label: 'Gas locker',
      stop: {
        when: "gas.isAsked && gas.shutIn == 'yes'",
        wrong: 'Open the gas locker’s vents and free its valves now.',
        because:
          'Gas that leaks must fall out below, and a hand must reach the valve without a key.',
        proviso: 'the gas locker’s vents stay open and its valves within reach',
      },
      stopOpen: 'if',
      unknown: {
        when: "gas.isToldOpen && gas.shutIn == 'yes'",
        wrong: 'Whether the gas locker is shut in comes first.',
      },
      otherwise:
        'The gas locker’s vents are open and its valves within reach, or no lock was told of.',
      open: {
        wrong: 'Whether the gas locker’s vents are open is not told.',
        do: 'See that they are, and that a hand reaches the valves.',
      },
      source: manual,
    },
    trap: {
      label: 'Traps',
      askedBy: ['trap.set'],
      stop: {
        when: "trap.set == 'yes'",
        wrong: 'Take away what was rigged: nothing may be set to hurt anyone.',
        because: 'It hits children, firefighters and owners, and is a crime in most places.',
      },
      otherwise: 'Nothing is set to hurt anyone.',
      open: {
        wrong: 'Something may be set to hurt the person who opens it.',
        do: 'Have it looked at, and taken away.',
      },
      source: custom,
    },
    following: {
      label: 'Following',
      askedBy: ['thief.followed'],
      stop: {
        when: "thief.followed == 'yes'",
        wrong: 'Do not follow a stolen trailer, and do not fetch it back.',
        because: 'A trailer is money; the thief may not want to be seen.',
        do: 'Give police the numbers and where the tracker shows it, and stay away.',
      },
      otherwise: 'Police are told, and no one follows.',
      open: {
        wrong: 'Whether somebody would follow it is not known.',
        do: 'Agree now that no one does: police are told, with the numbers.',
      },
      source: custom,
    },
  },
});
