import type { Called } from '../../engine/define/shapes';

/** What people call these things when they write or phone. */
export const called: Called = {
  topic: [
    'sway',
    'sways',
    'swaying',
    'swayed',
    'sway control',
    'sway bar',
    'anti-sway',
    'fishtail',
    'fishtails',
    'fishtailing',
    'wag',
    'wags',
    'wagging the dog',
    'whip',
    'trailer whips',
    'squirrelly',
    'pushed around by trucks',
    'semis push me around',
    'white knuckle',
    'wanders',
  ],
  facts: {
    'sway.felt': ['swayed', 'it swayed', 'felt it sway', 'started to sway', 'wagging'],
    'trailer.length': ['foot trailer', 'ft trailer', 'footer', 'overall length', 'long trailer'],
    'trailer.rides': ['nose high', 'nose low', 'sits level', 'rides level', 'nose up'],
    'hitch.frontFender': ['front fender', 'wheel well height', 'front end lifts'],
    'hitch.swayControl': ['sway control', 'sway bar', 'friction bar', 'anti-sway'],
    'tires.pressures': ['tire pressures', 'aired up', 'psi on the label'],
    'trip.speed': ['at speed', 'how fast', 'speed I drive', 'cruise at'],
    'trip.gusts': ['gusts', 'crosswind', 'side wind', 'windy', 'wind forecast'],
    'vehicle.wheelbase': ['wheelbase', 'wheel base'],
    'vehicle.overhang': ['overhang', 'axle to ball'],
    'trailer.measuredTongueWeight': ['tongue scale', 'tongue weighed', 'tongue measured'],
  },
  options: {
    'sway.felt': {
      never: ['tows straight', 'never swayed', 'tracks straight'],
      'with-trucks': ['when trucks pass', 'semis pass', 'when a semi goes by', 'sucked in'],
      'by-itself': ['started to sway', 'began to sway', 'kept swaying', 'got worse and worse'],
      mended: ['used to sway', 'fixed the sway', 'no sway since'],
      now: ['swaying right now', 'is swaying now'],
    },
    'trailer.rides': {
      level: ['sits level', 'rides level'],
      'nose-low': ['nose low', 'nose down'],
      'nose-high': ['nose high', 'nose up', 'tilts back'],
    },
    'hitch.frontFender': {
      'as-alone': ['same as without', 'back to stock height'],
      'half-back': ['front comes partly back', 'half of it restored'],
      'hardly-back': ['front is up', 'front lifts', 'light steering'],
      lower: ['front is lower', 'front squats'],
    },
    'hitch.swayControl': {
      set: ['friction bar tight', 'built-in sway control'],
      slack: ['friction bar loose', 'not tightened'],
      none: ['no sway control', 'no sway bar', 'just a ball'],
    },
    'tires.pressures': {
      'as-labeled': ['at the sticker pressure', 'aired up'],
      below: ['low tires', 'soft tires', 'underinflated'],
    },
  },
};
