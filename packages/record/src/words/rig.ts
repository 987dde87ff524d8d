import type { WordsOfFacts } from './shapes';

/** Vehicle, trailer and hitch. */
export const rigWords: WordsOfFacts = {
  facts: {
    'vehicle.maxTrailerWeight': [
      ...['tow', 'to tow', 'rated', 'tow limit', 'tow rating', 'manual says', 'pound rated'],
      ...['max', 'tows', 'can pull', 'book says'],
    ],
    'vehicle.placardPayload': [
      ...['payload', 'pyld', 'door jamb', 'jamb', 'door sticker', 'truck sticker', 'door label'],
      ...['payload on the door', 'payload sticker', 'on the door sticker', 'yellow sticker'],
    ],
    'vehicle.gcwr': ['gcwr', 'gross combined', 'combined rating'],
    'vehicle.gawrFront': ['front gawr', 'gawr front', 'front axle rating'],
    'vehicle.gawrRear': ['rear gawr', 'gawr rear', 'rear axle rating'],
    'vehicle.maxTongueCarried': ['on the ball', 'max tongue', 'tongue limit', 'tongue rating'],
    'vehicle.bedLength': ['bed', 'bed len', 'bed length', 'ft bed', 'foot bed'],
    'vehicle.wheelbase': ['wheelbase', 'wheel base', 'wb'],
    'trailer.dryWeight': ['dry', 'dry weight', 'unloaded', 'uvw', 'empty'],
    'trailer.gvwr': ['gvwr', 'gross', 'pound gross', 'gross weight rating'],
    'trailer.cargoCapacity': ['cargo capacity', 'ccc', 'carrying capacity'],
    'trailer.dryTongueWeight': [
      ...['hitch weight', 'hitch wt', 'dry tongue', 'dry hitch', 'dry tongue weight'],
      ...['tongue dry', 'tongue empty', 'empty tongue', 'hitch'],
    ],
    'trailer.measuredTongueWeight': [
      ...['tongue on the scale', 'tongue scale', 'tongue weighed', 'measured tongue'],
      ...['tongue scale says', 'tongue on a scale', 'weighed the tongue'],
    ],
    'trailer.couplerHeight': [
      ...['coupler', 'coupling', 'coupler height', 'coupler level', 'coupling of trailer'],
      ...['coupler sits at', 'wants the ball at', 'to the coupler', 'top of the coupler'],
    ],
    'trailer.ballToAxle': ['ball to axle', 'ball to the axle', 'coupler to axle'],
    'trailer.length': ['ft long', 'long', 'footer', 'foot trailer', 'foot long', 'ft trailer'],
    'trailer.tireCapacity': ['tires rated', 'rated each', 'they hold', 'per tire', 'a tire'],
    'trailer.leftWheels': ['left', 'left side', 'left wheels'],
    'trailer.rightWheels': ['right', 'right side', 'right wheels'],
    'hitch.receiverRating': ['receiver stamped', 'receiver rated', 'receiver', 'receiver says'],
    'hitch.receiverHeightEmpty': ['to the receiver'],
    'hitch.ballHeight': ['ball', 'ball height', 'height of ball', 'top of the ball', 'my ball'],
    'hitch.hardwareWeight': [
      ...['hitch weighs', 'hitch itself weighs', 'hitch itself', 'the bars weigh'],
      ...['hitch in bed weighs', 'hitch in the bed weighs'],
    ],
    'trip.steepestGrade': ['grade', 'grades', 'pct grade', 'percent grade'],
    'trip.altitude': ['elevation', 'elev', 'altitude', 'feet up'],
    'trip.gusts': ['gusts', 'mph gusts', 'gusting', 'crosswind', 'gusts to', 'gusts of'],
    'camper.weight': [
      ...['camper', 'camper weighs', 'camper wet', 'camper dry', 'wet wt', 'wet weight'],
      ...['slide-in weighs', 'lightwt camper', 'camper is'],
    ],
    'motorhome.weighed': ['motorhome', 'motorhome weighs', 'motorhome weighed', 'coach weighs'],
    'towed.weight': ['car', 'car is', 'car weighs', 'toad', 'toad weighs', 'hatchback', 'jeep'],
    'towed.tongue': ['on the tongue', 'boat tongue'],
    'towBar.rating': ['tow bar', 'tow bar says', 'tow bar rated', 'bar is rated'],
    'carrier.weight': ['dolly weighs', 'dolly empty', 'empty dolly', 'dolly is'],
    'carrier.rating': ['dolly rated', 'dolly carries'],
    'solo.fuelEconomy': ['alone', 'solo', 'mpg alone', 'without the trailer'],
    'scale.onAxles': ['on the axles', 'on the two axles', 'axles weighed', 'on both axles'],
  },
  options: {
    'trailer.axles': {
      '1': ['single axle', 'one axle'],
      '2': ['tandem', 'tandem axle', 'dual axle', 'double axle', 'twin axle', 'two axles'],
      '3': ['triple axle', 'three axles'],
    },
    'trailer.coupling': { 'fifth-wheel': ['fifth wheel', '5th wheel', 'fiver'] },
    'vehicle.dualRearWheels': { yes: ['dually', 'dual rear wheels', 'drw'] },
    'vehicle.drive': {
      battery: [
        'electric truck',
        'elec truck',
        'ev',
        'electric pickup',
        'electric suv',
        'all electric',
      ],
      'plug-in-hybrid': ['plug-in hybrid', 'phev'],
      hybrid: ['hybrid'],
      engine: ['gas truck', 'diesel'],
    },
    'towed.manner': {
      'four-down': [
        ...['flat tow', 'flat towing', 'flat towed', 'four down', '4 down', 'four wheels down'],
        ...['all four down', 'four-down'],
      ],
      dolly: ['tow dolly', 'with a dolly', 'on a dolly', 'dolly'],
      trailer: ['car hauler', 'car trailer'],
    },
    'towed.brake': { no: ['no brake in the car', 'no auxiliary brake', 'no supplemental brake'] },
    'sway.felt': {
      'with-trucks': [
        ...['when trucks pass', 'trucks pass', 'semis pass', 'semi passes', 'passing trucks'],
        ...['when a semi', 'when a truck passes'],
      ],
      now: ['swaying right now', 'swaying now', 'is swaying now'],
    },
    'trailer.rides': {
      'nose-high': ['nose high', 'nose up'],
      'nose-low': ['nose low', 'nose down'],
    },
    'camper.tieDowns': {
      bed: ['bed tie downs', 'tie downs on the bed', 'ones on the bed', 'bed mounted tie downs'],
      frame: ['frame tie downs', 'frame mounted tie downs', 'tie downs on the frame'],
    },
    'hitch.distribution': {
      no: ['no bars', 'no wd'],
    },
  },
  units: {
    'trip.distance': 'mi',
    'trip.towSpeed': 'mph',
    'vehicle.usableBattery': 'kWh',
    'trial.consumption': 'kWh/mi',
  },
};
