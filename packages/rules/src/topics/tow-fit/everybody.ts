import type { ForEverybody } from '../../engine/define/shapes';

const clauses = {
  'vehicle.placardPayload': 'the door label says {value}',
  'vehicle.maxTongueCarried': 'the manual lets {value} rest on the ball',
} as const;

/** What is said to all who ask what may be towed and told next to nothing. */
export const everybody: Readonly<Record<string, ForEverybody>> = {
  fit: {
    rule: 'What runs out first rules: what the manual lets it pull and carry on the ball, the payload on the door label, or the trailer’s own maximum.',
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
    otherwise:
      'Whoever does not know reckons with the trailer’s own maximum, and with {tongue.heavyBallShare} of that on the ball.',
  },
  'how-heavy': {
    rule: 'Look at trailers whose own maximum is {shopping.fromShare} to {shopping.toShare} of what the vehicle may pull, then at the payload on its door label.',
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
    otherwise: 'Whoever does not know the label takes the lighter trailer.',
  },
  tongue: {
    rule: 'Each pound on the ball is a pound less for people and things, with weight distribution or without; loading usually adds {tongue.addOn} to the dry tongue.',
    because:
      'The door label counts the tongue as cargo; it also counts against the tongue rating, the rear axle and the stamp on the ball mount.',
    look: ['vehicle.placardPayload'],
    // Follows from what was told of the tongue; without that there is nothing to look up.
    given: { 'trailer.measuredTongueWeight': '= tongue.loaded' },
    clauses,
    worked: {
      says: 'A tongue that comes to {tongue.loaded} loaded takes {tongue.loaded} of the payload.',
      given: { 'trailer.dryTongueWeight': '540 lb' },
    },
    otherwise:
      'Whoever does not know weighs the tongue loaded: less than {tongue.leastShare} of the trailer on the ball sways.',
  },
  load: {
    rule: 'From the payload on the door label take everybody’s weight, the hitch and the whole loaded tongue: what is left may go into the vehicle. The trailer has its own maximum.',
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
    otherwise: 'Whoever does not know weighs the loaded rig on a public scale before the trip.',
  },
  brakes: {
    rule: 'Loaded to more than {unbraked.careAbove} a trailer wants brakes of its own, and above {unbraked.stopAbove} most states require them; the manual’s own limit without brakes comes before both.',
    because: 'Without them the vehicle’s brakes stop both, and the trailer pushes.',
    look: ['vehicle.maxUnbraked'],
    given: { 'trailer.dryWeight': '= trailer.bare' },
    otherwise: 'Whoever cannot find that limit tows no trailer without brakes.',
  },
  trip: {
    rule: 'An engine without a turbocharger loses about {altitude.loss} of its pull, and a grade above {grade.launch} is steeper than what tow ratings are tested on.',
    because:
      'Thin air feeds the engine less, and once stopped on such a grade it may not get away.',
    look: ['vehicle.gcwr'],
    given: { 'vehicle.curbWeight': '= vehicle.curb', 'trailer.dryWeight': '= trailer.bare' },
    otherwise: 'Whoever is close to a rating takes the lower road, and a lower gear down.',
  },
  'to-buy': {
    rule: 'First the tongue weight it may carry and the payload on its door label; then weight distribution allowed, the factory tow package, a seven-way connector and a brake controller.',
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
      says: 'For a trailer with a maximum of {wanted.weight}: about {wanted.tongue} on the ball, {wanted.payload} of payload with {load.people} of people, and a tow rating of {wanted.rating}.',
      given: { 'trailer.gvwr': '5,000 lb' },
    },
    otherwise: 'Whoever is not sure reads the door label of that very vehicle before signing.',
  },
};
