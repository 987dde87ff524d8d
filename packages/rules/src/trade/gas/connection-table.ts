import type { Decision } from '../../engine/define/shapes';
import { connectionCustom } from '../bibliography/gas';

const low = ['none', 'trim'];
const straight = ['trailer-cylinder', 'separate-cylinder'];

/**
 * What the plate asks for at the inlet × the appliance's own regulator × where gas is taken ×
 * an adapter in between. One row at the most fits; no row that is wrong is milder than stop.
 *
 *                         after the regulator      at a cylinder (the trailer's or its own)
 *     11 inWC, none/trim  after-the-regulator      never: cylinder pressure
 *     11 inWC, own high   will-starve              at-a-cylinder
 *     cylinder, own high  will-starve              at-a-cylinder
 *     cylinder, trim      never: not made for it   never
 *     cylinder, none      never: unregulated       never: unregulated
 *     unreadable, high    separate-cylinder        trailer's: separate-cylinder; its own: own-cylinder
 *     unreadable, other   not-before-known         not-before-known
 */
export const connectionTable: Decision = {
  label: 'Connection',
  hit: 'unique',
  on: ['appliance.inlet', 'appliance.ownRegulator', 'supply.point', 'supply.adapter'],
  rows: [
    { when: ['-', '-', '-', 'yes'], gives: 'never-adapter' },
    { when: ['11-inwc', low, 'after-regulator', 'no'], gives: 'after-the-regulator' },
    { when: ['11-inwc', low, straight, 'no'], gives: 'never-cylinder-pressure' },
    { when: ['11-inwc', 'high-pressure', 'after-regulator', 'no'], gives: 'will-starve' },
    { when: ['11-inwc', 'high-pressure', straight, 'no'], gives: 'at-a-cylinder' },
    { when: ['cylinder-pressure', 'none', '-', 'no'], gives: 'never-unregulated' },
    { when: ['cylinder-pressure', 'trim', '-', 'no'], gives: 'never-cylinder-pressure' },
    { when: ['cylinder-pressure', 'high-pressure', 'after-regulator', 'no'], gives: 'will-starve' },
    { when: ['cylinder-pressure', 'high-pressure', straight, 'no'], gives: 'at-a-cylinder' },
    { when: ['unreadable', low, '-', 'no'], gives: 'not-before-known' },
    {
      when: ['unreadable', 'high-pressure', ['after-regulator', 'trailer-cylinder'], 'no'],
      gives: 'separate-cylinder',
    },
    { when: ['unreadable', 'high-pressure', 'separate-cylinder', 'no'], gives: 'own-cylinder' },
  ],
  results: {
    'after-the-regulator': {
      label: 'after the trailer’s regulator',
      level: 'ok',
      says: 'It asks for 11 inWC, and that is what comes after the trailer’s regulator: connect it there, by the fitting made for it.',
    },
    'at-a-cylinder': {
      label: 'at a cylinder',
      level: 'ok',
      says: 'It takes cylinder pressure through its own regulator: connect it at a cylinder, with the hose and regulator it was sold with.',
    },
    'own-cylinder': {
      label: 'at a separate cylinder',
      level: 'care',
      says: 'What it asks for cannot be read; a separate cylinder with the appliance’s own regulator is the safest way. Get a new plate from the maker.',
    },
    'separate-cylinder': {
      label: 'at a separate cylinder, not here',
      level: 'stop',
      says: 'Do not connect it there: what it asks for cannot be read. Use a separate cylinder with the appliance’s own regulator until its maker has told.',
    },
    'not-before-known': {
      label: 'not before it is known',
      level: 'stop',
      says: 'Do not connect it: nobody knows what pressure it asks for, and it has no regulator of its own for a cylinder. Its maker or a licensed gas fitter must tell first.',
    },
    'will-starve': {
      label: 'will starve',
      level: 'stop',
      says: 'It will starve: its own regulator wants cylinder pressure, and behind the trailer’s regulator there is next to none. Connect it at a cylinder, and do not take its regulator off.',
    },
    'never-cylinder-pressure': {
      label: 'never: cylinder pressure',
      level: 'stop',
      says: 'Never connect it so: there is cylinder pressure, a hundred pounds and more on a warm day, on what is made for less than half a pound. A trim regulator does not hold it; valves burst and flames shoot out.',
    },
    'never-unregulated': {
      label: 'never: no regulator',
      level: 'stop',
      says: 'Never connect it: a high-pressure burner without any regulator has nothing between it and the cylinder. It needs the regulator its maker names.',
    },
    'never-adapter': {
      label: 'never: adapter',
      level: 'stop',
      says: 'Never use such an adapter: one that makes fittings match which were made not to, or goes round a regulator, defeats the one thing that keeps the pressures apart.',
    },
  },
  source: connectionCustom,
};
