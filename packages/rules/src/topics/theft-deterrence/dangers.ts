import { part } from '../../engine/define/topic';
import { custom, manual } from '../../trade/bibliography/common';
import { chains } from '../../trade/bibliography/theft-deterrence';

const yes = (fact: string) => ({ all: [{ fact, operator: 'equal', value: 'yes' } as const] });

/** Where guarding hurts someone; none of it is milder than stop. */
export const dangers = part({
  facts: {
    'exit.blocked': {
      kind: 'yes-no',
      label: 'Whether a way out is blocked',
      noun: 'whether a way out is blocked',
      means: 'A lock, bar, chain or screw keeps a door or escape window from opening inside.',
      ask: 'With everything locked, does each door and escape window still open from inside, without a key?',
      where: 'try it from inside; “yes” here means that something is blocked',
    },
    'chains.replaced': {
      kind: 'yes-no',
      label: 'A lock stands in for safety chain, latch pin or breakaway cable',
      ask: 'On the road, does a lock or lock chain do the work of safety chains, pin or cable?',
      where: 'at the coupler, hitched',
    },
    'lock.onTheRoad': {
      kind: 'yes-no',
      label: 'A wheel or coupler lock stays on while it is moved',
      ask: 'Does any wheel or coupler lock stay on while the trailer is moved?',
      where: 'told by the owner',
    },
    'gas.shutIn': {
      kind: 'yes-no',
      label: 'A cover or lock shuts the gas locker’s vents or valves',
      ask: 'Does a cover or lock close the vents of the gas locker, or keep a hand from the valves?',
      where: 'at the gas locker',
    },
    'trap.set': {
      kind: 'yes-no',
      label: 'Something is set to hurt a thief',
      ask: 'Is anything meant to hurt whoever breaks in?',
      where: 'told by the owner',
    },
    'thief.followed': {
      kind: 'yes-no',
      label: 'The owner means to fetch it back',
      ask: 'If the tracker moves: will anyone drive after it?',
      where: 'told by the owner',
    },
  },
  findings: {
    'exit-blocked': {
      label: 'Ways out',
      askedBy: ['exit.blocked'],
      stop: {
        when: yes('exit.blocked'),
        wrong: 'Take it off before anyone sleeps in it, a way out is blocked.',
        do: 'In a fire there are seconds, without light and without keys. Every door and escape window opens from inside.',
      },
      otherwise: 'Every way out opens from inside.',
      open: { wrong: 'Try every door and escape window from inside before anyone sleeps in it.' },
      source: manual,
    },
    'chains-replaced': {
      label: 'Safety chains',
      askedBy: ['chains.replaced'],
      stop: {
        when: yes('chains.replaced'),
        wrong: 'Do not tow so, a lock is no safety chain.',
        do: 'Chains, latch with its pin and breakaway cable are each rated for the trailer, and each is called for beside any lock.',
      },
      otherwise: 'Chains, latch and cable are as they should be, beside any lock.',
      open: {
        wrong: 'Do not tow before chains, latch pin and breakaway cable are seen in their places.',
      },
      source: chains,
    },
    'lock-on-the-road': {
      label: 'Locks off before it moves',
      askedBy: ['lock.onTheRoad'],
      stop: {
        when: yes('lock.onTheRoad'),
        wrong: 'Do not move it with a lock on.',
        do: 'A wheel lock tears brake, tire and fender, and a coupler lock may keep the latch from closing. Walk around it first.',
      },
      otherwise: 'Locks come off before it moves.',
      open: { wrong: 'Walk around it before it moves, and take every lock off.' },
      source: manual,
    },
    'gas-shut-in': {
      label: 'Gas locker',
      askedBy: ['gas.shutIn'],
      stop: {
        when: yes('gas.shutIn'),
        wrong: 'Open the gas locker’s vents and free its valves now.',
        do: 'Gas that leaks must fall out below, and a hand must reach the valve without a key.',
      },
      otherwise: 'The gas locker’s vents are open and its valves within reach.',
      open: { wrong: 'See that the gas locker’s vents are open and its valves within reach.' },
      source: manual,
    },
    trap: {
      label: 'Traps',
      askedBy: ['trap.set'],
      stop: {
        when: yes('trap.set'),
        wrong: 'Take it away, nothing may be set to hurt anyone.',
        do: 'It hits children, firefighters and owners, and is a crime in most places.',
      },
      otherwise: 'Nothing is set to hurt anyone.',
      open: { wrong: 'Nothing may be set to hurt anyone.', do: 'Look before you open it.' },
      source: custom,
    },
    following: {
      label: 'Following',
      askedBy: ['thief.followed'],
      stop: {
        when: yes('thief.followed'),
        wrong: 'Do not follow it and do not fetch it back.',
        do: 'Give police the numbers and where the tracker shows it, and stay away. A trailer is money.',
      },
      otherwise: 'Police are told, nobody follows.',
      open: {
        wrong: 'Agree before that nobody follows.',
        do: 'Police are told, with the numbers.',
      },
      source: custom,
    },
  },
});
