import type { ForEverybody } from '../../engine/define/shapes';

const clauses = {
  'vehicle.placardPayload': 'the door label says {value}',
  'vehicle.maxTongueCarried': 'the manual lets {value} rest on the ball',
} as const;

/** What is said to all who ask what may be towed and told next to nothing. */
export const everybody: Readonly<Record<string, ForEverybody>> = {
  fit: {
    rule: 'Three limits rule, and the lowest wins. Read tow rating and tongue limit in the manual, the payload on the door label, and the trailer’s own maximum.',
    because: 'Payload often runs out first, since the whole tongue counts as cargo.',
    look: ['vehicle.placardPayload', 'vehicle.maxTongueCarried'],
    given: {
      'vehicle.maxTrailerWeight': '= vehicle.maxTrailerWeight',
      'trailer.gvwr': '= usual.gross',
      'trailer.measuredTongueWeight': '= usual.tongue',
    },
    givenSays:
      'for a trailer with the usual room below its own maximum and {usual.tongue} on the ball',
    clauses,
    worked: {
      says: 'A trailer of {trailer.unloaded} unloaded comes to about {usual.loaded} on the road, with about {usual.tongue} on the ball.',
      given: { 'trailer.dryWeight': '4,300 lb' },
    },
    fromTold: [
      {
        says: 'At its own maximum of {trailer.gvwr} the trailer takes {maximum.ofRating} of the rating of {vehicle.maxTrailerWeight}; shop for up to {shopping.toShare}. The door label must leave room for people and about {wanted.tongue} of tongue.',
      },
      {
        says: 'A trailer of {trailer.dryWeight} empty comes to about {usual.loaded} on the road. The rating of {vehicle.maxTrailerWeight} must hold that.',
      },
      {
        says: 'A trailer of {trailer.dryWeight} empty comes to about {usual.loaded} on the road, with about {usual.tongue} on the ball.',
      },
      {
        says: 'A trailer at its maximum of {trailer.gvwr} rests about {wanted.tongue} on the ball. Of your label’s {vehicle.placardPayload} that leaves {wanted.left} for people, things and hitch. Where that is too little, look for a lighter trailer.',
      },
      {
        says: 'A trailer with a maximum of {trailer.gvwr} wants a tow rating of {wanted.rating}, and {wanted.tongue} allowed on the ball.',
      },
    ],
    otherwise:
      'If you do not know, reckon with the trailer’s own maximum, and with {tongue.heavyBallShare} of that on the ball.',
  },
  'how-heavy': {
    rule: 'Read the tow rating in the manual. Look at trailers whose own maximum is {shopping.fromShare} to {shopping.toShare} of that. Then read the payload on the vehicle’s door label.',
    because: 'The payload often runs out before the tow rating does.',
    look: ['vehicle.placardPayload', 'vehicle.maxTongueCarried'],
    given: {
      'trailer.gvwr': '= shopping.to',
      'trailer.dryWeight': '= shopping.bare',
      'trailer.measuredTongueWeight': '= shopping.tongue',
    },
    givenSays: 'for a trailer of {shopping.from} on the road with {shopping.tongue} on the ball',
    clauses,
    worked: {
      says: 'A rating of {vehicle.maxTrailerWeight} means trailers whose own maximum is {shopping.from} to {shopping.to}.',
      given: { 'vehicle.maxTrailerWeight': '6,480 lb' },
    },
    otherwise: 'If you do not know the door label, take the lighter trailer.',
  },
  tongue: {
    rule: 'Each pound on the ball is a pound less for people and things, with weight distribution or without. Loading usually adds {tongue.addOn} to the dry tongue.',
    because:
      'The door label counts the tongue as cargo. The tongue also counts against the tongue rating, the rear axle and the stamp on the ball mount.',
    look: ['vehicle.placardPayload'],
    // Follows from what was told of the tongue; without that there is nothing to look up.
    given: { 'trailer.measuredTongueWeight': '= tongue.loaded' },
    clauses,
    worked: {
      says: 'A tongue that comes to {tongue.loaded} loaded takes {tongue.loaded} of the payload.',
      given: { 'trailer.dryTongueWeight': '540 lb' },
    },
    otherwise:
      'If you do not know, weigh the tongue loaded: less than {tongue.leastShare} of the trailer on the ball sways.',
  },
  load: {
    rule: 'Read the payload on the door label. Take off everybody’s weight, the hitch and the whole loaded tongue: the rest may go into the vehicle. The trailer has its own maximum.',
    because: 'The label was printed for that very vehicle; a brochure knows none of its options.',
    look: ['vehicle.placardPayload'],
    given: { 'trailer.measuredTongueWeight': '= tongue.loaded' },
    clauses,
    worked: {
      says: 'A label of {vehicle.placardPayload}, {load.people} of people and a tongue of {tongue.loaded} leave {payload.left}.',
      given: {
        'vehicle.placardPayload': '1,430 lb',
        'load.occupants': [{ label: 'Three people', weight: '480 lb' }],
        'trailer.measuredTongueWeight': '610 lb',
      },
    },
    fromTold: [
      {
        says: 'Say {load.people} of people and a tongue of {tongue.loaded}: of your label’s {vehicle.placardPayload} then {payload.left} are left.',
        given: {
          'load.occupants': [{ label: 'Three people', weight: '480 lb' }],
          'trailer.measuredTongueWeight': '610 lb',
        },
      },
    ],
    otherwise: 'If you do not know, weigh the loaded rig on a public scale before the trip.',
  },
  brakes: {
    rule: 'Loaded to more than {unbraked.careAbove} a trailer wants brakes of its own; above {unbraked.stopAbove} most states require them. The manual’s own limit without brakes comes before both.',
    because: 'Without them the vehicle’s brakes stop both, and the trailer pushes.',
    look: ['vehicle.maxUnbraked'],
    given: { 'trailer.dryWeight': '= trailer.bare' },
    otherwise: 'If you cannot find that limit, tow no trailer without brakes.',
  },
  trip: {
    rule: 'An engine without a turbocharger loses about {altitude.loss} of its pull. A grade above {grade.launch} is steeper than what tow ratings are tested on.',
    because:
      'Thin air feeds the engine less, and once stopped on such a grade it may not get away.',
    look: ['vehicle.gcwr'],
    given: { 'vehicle.curbWeight': '= vehicle.curb', 'trailer.dryWeight': '= trailer.bare' },
    fromTold: [
      {
        says: 'At {trip.altitude} a combined rating of {vehicle.gcwr} counts as {combined.limit}.',
        given: { 'vehicle.gcwr': '10,000 lb' },
      },
    ],
    otherwise: 'If you are close to a rating, take the lower road, and a lower gear down.',
  },
  bars: {
    rule: 'You need one where the manual asks for it, or where the loaded tongue is more than may rest on the ball without. It raises no rating.',
    because: 'A heavy tongue presses the rear down and takes load off the front wheels.',
    look: ['vehicle.maxTongueCarried'],
    fromTold: [
      {
        says: 'A trailer of {trailer.dryWeight} empty comes with about {usual.tongue} on the ball: where less may rest there without bars, you need them.',
      },
      {
        says: 'A trailer with a maximum of {trailer.gvwr} rests about {wanted.tongue} on the ball: where less may rest there without bars, you need them.',
      },
    ],
    otherwise: 'If you do not know, weigh the tongue loaded, and read the manual.',
  },
  'to-buy': {
    rule: 'First read the tongue weight the vehicle may carry and the payload on its door label. Then ask for weight distribution, the factory tow package, a seven-way connector and a brake controller.',
    because:
      'Cooling, springs and wiring come with the package; a hitch fitted later raises no rating.',
    look: ['vehicle.placardPayload', 'vehicle.maxTongueCarried'],
    given: {
      'vehicle.maxTrailerWeight': '= wanted.rating',
      'trailer.dryWeight': '= wanted.bare',
      'trailer.measuredTongueWeight': '= wanted.tongue',
    },
    givenSays: 'for the trailer at its maximum',
    clauses,
    worked: {
      says: 'For a trailer with a maximum of {wanted.weight} look for a tow rating of {wanted.rating} and about {wanted.tongue} on the ball. Look for {wanted.payload} of payload, with {load.people} of people.',
      given: { 'trailer.gvwr': '5,000 lb' },
    },
    otherwise: 'If you are not sure, read the door label of that very vehicle before you sign.',
  },
};
