import type { Called } from '../../engine/define/shapes';

/** What people call these things when they write or phone. */
export const called: Called = {
  topic: [
    'tire',
    'tires',
    'tire pressure',
    'psi',
    'air them up',
    'date code',
    'DOT date',
    'load range',
    'ply',
    'st tires',
    'old tires',
    'tread',
    'tire age',
    'speed rating',
    'sidewall',
    'cracks in the tire',
  ],
  facts: {
    'tire.pressure': ['psi', 'pressure', 'running them at', 'aired to'],
    'tire.maxPressure': ['max psi', 'max pressure', 'on the sidewall'],
    'tire.labelPressure': ['placard', 'cold placard', 'label says', 'sticker says'],
    'tire.loadIndex': ['load index'],
    'trip.speed': ['speed', 'drive', 'at'],
    'wheel.maxPressure': ['wheel max', 'stamped in the wheel'],
  },
};
