import type { Called } from '../../engine/define/shapes';

/** What people call these things when they write or phone. */
export const called: Called = {
  topic: [
    'truck camper',
    'slide-in',
    'slide in camper',
    'pickup camper',
    'pop-up on my truck',
    'camper in the bed',
    'bed camper',
    'cab-over',
    'can my truck carry',
    'half-ton camper',
    'flatbed camper',
  ],
  facts: {
    'vehicle.cargoRating': [
      'cargo weight rating',
      'camper rating',
      'camper loading sheet',
      'slide-in sheet',
    ],
    'vehicle.placardPayload': ['payload', 'door sticker', 'yellow sticker', 'occupants and cargo'],
    'vehicle.seats': ['seat belts', 'seats', 'crew cab', 'how many seats'],
    'vehicle.zoneFore': ['center of gravity zone', 'cg zone', 'where it must balance'],
    'vehicle.zoneAft': ['back of the zone', 'rear of the zone'],
    'vehicle.headboardAhead': ['front of the bed', 'bulkhead', 'headboard'],
    'vehicle.bedLength': ['bed length', 'short bed', 'long bed', 'six and a half foot bed'],
    'camper.weight': ['camper weighs', 'dry weight of the camper', 'sticker on the camper'],
    'camper.center': [
      'center of gravity',
      'cg',
      'balance point',
      'mark on the side',
      'arrow on the side',
    ],
    'camper.labelWater': ['wet weight', 'weight with water', 'tanks full on the label'],
    'camper.options': ['air conditioner', 'awning', 'generator', 'solar on the roof'],
    'camper.cargo': ['gear', 'stuff', 'food and clothes', 'packed'],
    'camper.riders': ['ride in the back', 'kids in the camper', 'people in the camper'],
    'camper.freshWater': ['fresh tank', 'water on board', 'full of water'],
    'camper.propane': ['propane', 'gas bottle', 'LP'],
    'camper.floorLength': ['floor length', 'camper is longer', 'hangs over the tailgate'],
    'camper.tieDowns': ['tie-downs', 'turnbuckles', 'straps', 'anchors'],
    'hitch.extension': ['extension', 'stinger', 'hitch extender', 'sticks out past the bumper'],
    'hitch.extensionRating': ['extension is rated', 'label on the extension'],
    'load.occupants': ['of us', 'people', 'dog', 'passengers'],
  },
  options: {
    'camper.tieDowns': {
      frame: ['frame mount', 'frame-mounted', 'under the truck'],
      bed: ['bed mount', 'stake pockets', 'bed rail'],
      none: ['no tie-downs', 'just sits there', 'not tied'],
    },
  },
};
