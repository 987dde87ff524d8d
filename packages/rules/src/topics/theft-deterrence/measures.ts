import type { Parameter, Selection } from '../../engine/define/shapes';
import { part } from '../../engine/define/topic';
import { layers, prices } from '../../trade/bibliography/theft-deterrence';

const price = (label: string, value: number): Parameter => ({
  label,
  unit: 'USD',
  values: [{ from: '2020-01-01', value }],
  range: [0, value * 4 + 20],
  source: prices,
});

type Item = Selection['items'][string];
const item = (label: string, cost: string, because: string, when?: string): Item => ({
  label,
  ...(when && { when }),
  amounts: { cost },
  because,
  source: layers,
});

const amounts = { cost: 'USD' };

/**
 * Four layers, from the skin outwards in time; each with what it does and what it does not.
 *
 *     lock what opens ─► hide what tempts ─► hold coupler and wheel ─► notice and find
 */
export const measures = part({
  parameters: {
    'price.doorLock': price('Deadlock for the entry door', 60),
    'price.hatchLocks': price('Compartment locks with keys of their own', 80),
    'price.spareLock': price('Lock for spare wheel and cylinders', 35),
    'price.curtains': price('Opaque blinds', 40),
    'price.takeHome': price('Taking home what tempts', 0),
    'price.couplerLock': price('Coupler lock', 90),
    'price.pinLocks': price('Lock for hitch pin and coupler latch', 50),
    'price.wheelLock': price('Wheel lock', 150),
    'price.anchor': price('Ground anchor and hardened chain', 260),
    'price.list': price('List of numbers, photographs, hidden marks', 0),
    'price.neighbor': price('Someone who looks by', 0),
    'price.alarm': price('Door alarm', 70),
    'price.light': price('Motion light', 45),
    'price.secondWheel': price('Lock for a wheel on the other side', 150),
    'price.tracker': price('Tracker, the first year', 180),
  },
  selections: {
    locks: {
      label: 'Lock what opens',
      amounts,
      items: {
        doors: item(
          'Doors, windows and roof vents shut and locked',
          'price.doorLock',
          'Keeps out a thief who tries handles; not one with a bar. Must open from inside without a key while anyone sleeps in it.',
        ),
        hatches: item(
          'Compartment locks with keys of their own',
          'price.hatchLocks',
          'Many trailers leave the factory with one and the same key; changed locks stop that key, not a bar.',
          'exposed.some',
        ),
        outside: item(
          'Spare wheel, battery and cylinders locked on',
          'price.spareLock',
          'They go in a minute. The gas locker’s vents stay open, and the valves within reach.',
          'exposed.some',
        ),
      },
      source: layers,
    },
    hiding: {
      label: 'Hide what tempts',
      amounts,
      items: {
        blinds: item(
          'Blinds drawn, cupboards seen to be empty',
          'price.curtains',
          'What is not seen is not wanted; a thief who wants the trailer itself does not look inside.',
        ),
        home: item(
          'Papers, electronics, bicycles and spare keys taken home',
          'price.takeHome',
          'What is not there cannot be taken; registration and title never stay in the trailer.',
          'exposed.some',
        ),
      },
      source: layers,
    },
    holding: {
      label: 'Hold coupler and wheel',
      amounts,
      items: {
        coupler: item(
          'A lock that fills the coupler’s socket',
          'price.couplerLock',
          'Keeps a ball out; not chains around the tongue. Off before it is hitched: it replaces no chain, latch or pin.',
          'exposed.unhitched',
        ),
        pins: item(
          'Locks in hitch pin and coupler latch',
          'price.pinLocks',
          'Keep a trailer on its vehicle at a stop; chains, latch and breakaway cable stay as they are.',
          'rig.hitched',
        ),
        wheel: item(
          'A wheel lock',
          'price.wheelLock',
          'Shows from afar that it takes longer; a wheel can be changed. Off before it moves.',
          'exposed.someUnhitched',
        ),
        anchor: item(
          'Hardened chain through frame and a ground anchor',
          'price.anchor',
          'Takes tools and time; not around an axle or a brake line. On a lot only where its owner allows it.',
          'exposed.anchored',
        ),
        secondWheel: item(
          'A second wheel lock on the other side',
          'price.secondWheel',
          'Where no anchor can be set a second wheel has to be cut or changed. Off before it moves.',
          'exposed.unanchored',
        ),
      },
      source: layers,
    },
    noticing: {
      label: 'Notice and find',
      amounts,
      items: {
        list: item(
          'Numbers, photographs, receipts and a hidden mark, listed at home',
          'price.list',
          'Stops no thief; without it neither police nor insurer can do much.',
        ),
        neighbor: item(
          'Someone who looks by, and knows whom to call',
          'price.neighbor',
          'Finds out within days instead of months; is not to stand in anyone’s way.',
          'place.isWatched',
        ),
        light: item(
          'Motion light over it',
          'price.light',
          'Makes neighbors look; stops no thief by itself.',
          'place.isLit',
        ),
        alarm: item(
          'Door alarm',
          'price.alarm',
          'Makes noise where someone hears it; on a lot at night no one does.',
          'place.isHeard',
        ),
        tracker: item(
          'Hidden tracker with a battery of its own',
          'price.tracker',
          'Tells police where it is; holds nothing, and is blind below steel and when empty.',
          'exposed.much',
        ),
      },
      source: layers,
    },
  },
  formulas: {
    'measures.cost': {
      label: 'All that is called for here',
      unit: 'USD',
      is: 'locks.cost + hiding.cost + holding.cost + noticing.cost',
      source: prices,
    },
  },
});
