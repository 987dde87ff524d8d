import type { Called } from '../../engine/define/shapes';

/** What people call these things when they write or phone. */
export const called: Called = {
  topic: [
    'toad',
    'dinghy',
    'dinghy towing',
    'flat tow',
    'flat towing',
    'flat towed',
    'four down',
    'four wheels down',
    'car behind the motorhome',
    'car behind a motorhome',
    'tow a car behind',
    'tow my car behind',
    'tow dolly',
    'tow bar',
    'base plate',
    'motorhome',
  ],
  facts: {
    'motorhome.weighed': ['motorhome weighs', 'coach weighs', 'rig weighed'],
    'towed.weight': ['car weighs', 'weight of the car', 'toad weighs'],
    'towed.manner': ['behind the motorhome', 'how to tow the car'],
    'towed.fourDown': ['flat towable', 'can be flat towed', 'manual allows flat towing'],
    'towed.dollyAllowed': ['dolly allowed', 'ok on a dolly'],
    'towed.brake': ['supplemental brake', 'auxiliary brake', 'brake in the car'],
    'towBar.rating': ['tow bar rated', 'bar is rated', 'base plate rated'],
    'towBar.rise': ['tow bar level', 'bar slopes', 'drop receiver'],
    'carrier.weight': ['dolly weighs', 'car trailer weighs', 'car hauler weighs'],
    'vehicle.gcwr': ['gcwr', 'combined rating', 'gross combined'],
    'hitch.receiverRating': ['receiver is rated', 'hitch is rated', 'hitch on the motorhome'],
    'towed.breakaway': ['breakaway'],
    'towed.batteryKept': ['charge line', 'battery goes dead towing'],
  },
  options: {
    'towed.manner': {
      'four-down': ['four down', 'flat tow', 'flat towing', 'all four wheels'],
      dolly: ['on a dolly', 'tow dolly', 'two wheels up'],
      trailer: ['on a trailer', 'car hauler', 'all four up'],
    },
  },
};
