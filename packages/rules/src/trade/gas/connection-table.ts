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
 *     cylinder, none/trim wants-cylinder-pressure  never: cylinder pressure (trim), unregulated (none)
 *     other-gas           not-made-for-it, likewise: natural gas, or a pressure that nothing here gives
 *     unreadable          not-before-known, whatever its regulator, wherever it is to go
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
    {
      when: ['cylinder-pressure', low, 'after-regulator', 'no'],
      gives: 'wants-cylinder-pressure',
    },
    { when: ['cylinder-pressure', 'none', straight, 'no'], gives: 'never-unregulated' },
    { when: ['cylinder-pressure', 'trim', straight, 'no'], gives: 'never-cylinder-pressure' },
    { when: ['cylinder-pressure', 'high-pressure', 'after-regulator', 'no'], gives: 'will-starve' },
    { when: ['cylinder-pressure', 'high-pressure', straight, 'no'], gives: 'at-a-cylinder' },
    { when: ['other-gas', '-', '-', 'no'], gives: 'not-made-for-it' },
    { when: ['unreadable', '-', '-', 'no'], gives: 'not-before-known' },
  ],
  results: {
    'after-the-regulator': {
      label: 'connect it after the trailer’s regulator',
      level: 'ok',
      says: 'The appliance belongs after the trailer’s regulator, where there are the 11 inches of water column that it asks for.',
      do: 'Connect it there by the fitting made for it.',
    },
    'at-a-cylinder': {
      label: 'connect it at a cylinder through its own regulator',
      level: 'ok',
      says: 'The appliance belongs at a cylinder, through its own regulator.',
      do: 'Use the hose and regulator that it was sold with.',
    },
    'not-before-known': {
      label: 'do not connect it until it is identified',
      level: 'stop',
      says: 'Do not connect the appliance until it is identified.',
      because: 'The pressure it asks for cannot be read, and the wrong one burns people.',
      do: 'Ask the appliance’s maker, by the model number, or a licensed gas fitter. Then connect it only at a cylinder of its own, with the very regulator that came along.',
    },
    'not-made-for-it': {
      label: 'do not connect it: it is made for another gas or pressure',
      level: 'stop',
      says: 'Do not connect it: its plate asks for another gas or another pressure.',
      because:
        'Jets made for natural gas let far too much propane through: tall flames, soot and carbon monoxide.',
      do: 'First its maker’s conversion kit, fitted by a licensed gas fitter, and a plate that says so; without one, never.',
    },
    'will-starve': {
      label: 'it starves there',
      level: 'stop',
      says: 'The appliance will starve there.',
      because:
        'Its own regulator wants cylinder pressure, and behind the trailer’s regulator there is next to none.',
      do: 'Connect the appliance at a cylinder, and do not take its regulator off.',
    },
    'wants-cylinder-pressure': {
      label: 'it does not belong there: it asks for cylinder pressure',
      level: 'stop',
      says: 'The appliance does not belong there: its plate asks for cylinder pressure.',
      because:
        'After the trailer’s regulator there is less than half a pound to the square inch, and its flame starves, burns badly or goes out.',
      do: 'Nor at a cylinder as it is: ask its maker which regulator belongs to it, and connect it at a cylinder through that one.',
    },
    'never-cylinder-pressure': {
      label: 'never connect it at cylinder pressure',
      level: 'stop',
      says: 'Never connect it so: it would get cylinder pressure.',
      because:
        'That is a hundred pounds to the square inch and more on a warm day, on what is made for less than half a pound. A trim regulator does not hold it back; valves burst and flames shoot out.',
      do: 'Connect the appliance after the trailer’s regulator if its plate asks for 11 inches of water column. Else ask its maker which regulator belongs to it.',
    },
    'never-unregulated': {
      label: 'never connect it without a regulator',
      level: 'stop',
      says: 'Never connect it: nothing stands between this burner and the cylinder.',
      because: 'A high-pressure burner without a regulator gets whatever the cylinder gives.',
      do: 'Get the regulator that its maker names, or leave it.',
    },
    'never-adapter': {
      label: 'never use an adapter',
      level: 'stop',
      says: 'Never use such an adapter.',
      because:
        'It makes fittings go together that were made not to, or goes round a regulator: that defeats the one thing that keeps the pressures apart.',
      do: 'Get the hose that the appliance’s maker sells for that outlet.',
    },
  },
  source: connectionCustom,
};
