import type { WordsOfFacts } from './shapes';

/** Tires, tools, damage, insurance, theft and buying used. */
export const paperWords: WordsOfFacts = {
  facts: {
    'tire.maxPressure': [
      'sidewall',
      'sidewall says',
      'sidewall max',
      'max on the side',
      'on the sidewall',
    ],
    'tire.labelPressure': ['sticker on the trailer', 'sticker', 'label', 'label says', 'placard'],
    'tire.pressure': ['run', 'running', 'i run', 'been running', 'have them at', 'aired to', 'at'],
    'shop.quote': ['quote', 'estimate', 'quoted', 'they want', 'shop says'],
    'policy.deductible': ['deductible', 'deductible is', 'ded'],
    'policy.premium': ['premium', 'premium is'],
    'policy.raise': ['increase', 'percent increase', 'go up', 'surcharge'],
    'rig.value': ['worth', 'worth about', 'insured for'],
    'policy.agreedValue': ['agreed value', 'agreed at'],
    'price.asked': ['asking', 'asks', 'wants', 'listed at', 'grand', 'they want', 'for'],
    'lift.rating': ['jack rated', 'ton jack', 'jack is rated'],
  },
  options: {
    'place.kind': {
      'storage-lot': [
        'storage lot',
        'storage place',
        'storage yard',
        'storage facility',
        'in storage',
      ],
      driveway: ['driveway', 'side of the house'],
      street: ['on the street', 'in front of the house', 'at the curb'],
      campsite: ['campsite', 'campground'],
      'rest-stop': ['rest stop', 'rest area', 'truck stop'],
    },
    'guard.held': {
      coupler: ['coupler lock', 'hitch lock'],
      'coupler-and-wheel': [
        ...['wheel lock + hitch lock', 'wheel lock and hitch lock', 'hitch lock and wheel lock'],
        ...['boot and hitch lock', 'hitch lock and a boot', 'coupler lock and a wheel lock'],
        ...[
          'coupler lock and wheel lock',
          'wheel lock and coupler lock',
          'wheel boot and coupler lock',
        ],
      ],
      nothing: ['no lock', 'no locks'],
    },
    'policy.asks': {
      'two-devices': ['two devices', 'two anti-theft devices', '2 devices'],
      tracker: ['requires a tracker', 'insists on a tracker'],
    },
    'policy.basis': {
      agreed: ['agreed value', 'stated value'],
      actual: ['actual cash value', 'market value'],
      nothing: ['liability only', 'not insured'],
    },
    'damage.cause': {
      collision: [
        'backed into',
        'hit a',
        'scraped',
        'sideswiped',
        'clipped',
        'jackknifed',
        'ran into',
      ],
      weather: ['hail', 'tree fell', 'branch fell', 'windstorm', 'wind took'],
      'slow-leak': ['slow leak', 'has been leaking', 'leaked for years'],
      'sudden-water': ['pipe burst', 'burst pipe', 'hose let go', 'frozen pipe'],
    },
    'photos.taken': {
      yes: ['taken photographs', 'took pictures', 'took photos', 'have pictures', 'have photos'],
    },
    'cover.open': {
      yes: ['left a hole', 'rain gets in', 'open to the weather', 'rain is getting in'],
    },
    'water.signs': {
      soft: ['soft spot', 'soft to the touch', 'spongy', 'soft corner', 'mushy'],
      stains: ['a stain', 'stains', 'brown ring', 'water stain'],
    },
    'tire.kind': {
      passenger: ['p metric', 'p-metric', 'passenger tire', 'passenger car tire'],
      'special-trailer': ['st tire', 'special trailer tire'],
      'light-truck': ['lt tire', 'light truck tire'],
    },
    'spare.present': {
      yes: ['have a spare', 'a spare', '2 spares', 'two spares', 'spare aboard', 'carry a spare'],
      no: ['no spare', 'without a spare', "don't have a spare"],
    },
    'lift.kind': {
      none: ['no jack', "don't have a jack"],
      'bottle-jack': ['bottle jack'],
      'scissor-jack': ['scissor jack'],
      'drive-up-ramp': ['drive-up ramp', 'leveling ramp'],
      'vehicle-jack': ['truck jack', "truck's jack", 'car jack'],
    },
    'trip.remoteness': {
      'days-from-help': ['a day away', 'days from help', 'a day from help', 'middle of nowhere'],
    },
    'title.state': {
      branded: ['salvage title', 'branded title', 'rebuilt title'],
      lien: ['lien', 'still owes', 'loan on it'],
      'other-name': [
        'ex wife owns',
        'ex owns',
        'another name',
        'not in his name',
        'somebody else',
        'in his name',
      ],
      'number-differs': ['number does not match', 'numbers do not match', 'vin does not match'],
      'state-issues-none': ['does not title', 'do not title', 'too old for a title'],
      'other-name-with-paper': ['power of attorney', 'executor'],
      none: ['no title', 'lost title', 'bill of sale only', 'title is lost'],
      clean: ['clean title', 'title in hand'],
    },
    'label.state': {
      'painted-over': ['painted over'],
      missing: ['sticker is missing', 'sticker is gone', 'no weight sticker', 'sticker missing'],
    },
    'axle.wear': { 'one-edge': ['inside edge', 'outside edge', 'one edge', 'worn on one side'] },
    'gas.tested': {
      untested: [
        'gas has not been tried',
        'never tried the gas',
        'gas untested',
        'gas has not been tested',
      ],
      leaks: ['gas leaks', 'failed the leak test'],
      holds: ['passed the leak test', 'holds pressure'],
    },
    'wish.fiftyAmpService': { yes: ['50 amp', 'fifty amp', '50 amps', '50a'] },
    'wish.roofAir': { yes: ['roof air conditioner', 'roof air', 'roof ac'] },
    'wish.solarPanel': { yes: ['solar panel', 'solar on the roof', 'solar'] },
    'wish.garageBed': { yes: ['lifting bed', 'lift bed'] },
    'wish.garageRails': { yes: ['rails', 'tie-down rails'] },
    'wish.instantWaterHeater': { yes: ['instant hot water', 'tankless', 'instant water heater'] },
    'wish.tankWaterHeater': { yes: ['tank water heater', 'reg tank', 'regular tank'] },
    'wish.generator': { yes: ['generator'] },
    'wish.washerConnections': { yes: ['washer', 'washer hookup'] },
    'wish.rearLadder': { yes: ['ladder'] },
  },
  units: {
    'shop.rate': 'USD/h',
    'price.asked': 'USD',
    'policy.premium': 'USD/yr',
    'parked.days': 'd',
  },
};
