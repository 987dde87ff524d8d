import type { Asking } from '../../engine/define/shapes';

/** What people ask of a rig; the first that is told of is answered first. */
export const askings: Readonly<Record<string, Asking>> = {
  fit: {
    label: 'Can it tow this trailer?',
    results: ['verdict'],
    impliedBy: ['trailer.dryWeight', 'trailer.gvwr', 'trailer.cargoCapacity'],
  },
  'how-heavy': {
    label: 'How heavy may the trailer be?',
    results: ['shopping.to', 'shopping.from', 'largest.trailer'],
    impliedBy: [
      'vehicle.maxTrailerWeight',
      'vehicle.maxTrailerCarried',
      'vehicle.maxFifthWheel',
      'vehicle.gcwr',
    ],
    says: [
      {
        when: 'largest.isSome',
        says: 'Loaded it may weigh {largest.trailer} at the most; look at trailers whose own maximum is {shopping.from} to {shopping.to}.',
      },
      {
        when: 'towPackage.isNeeded',
        says: 'If its factory tow package is fitted, a rating of {vehicle.maxTrailerWeight} means trailers whose own maximum is {shopping.from} to {shopping.to}. Without it the vehicle may pull far less. Then read the payload on the door label: people, things and about {shopping.tongue} of tongue come off it.',
      },
      {
        says: 'A rating of {vehicle.maxTrailerWeight} means trailers whose own maximum is {shopping.from} to {shopping.to}. Then read the payload on the door label: people, things and about {shopping.tongue} of tongue come off it.',
      },
    ],
  },
  tongue: {
    label: 'What does the tongue’s weight take of the payload?',
    results: ['tongue.loaded', 'payload.stillLeft', 'limit.payload', 'limit.tongue'],
    impliedBy: ['trailer.dryTongueWeight', 'trailer.measuredTongueWeight'],
    says: [
      {
        when: 'load.peopleUntold',
        says: 'Loaded, the tongue comes to {tongue.loaded}; all of it counts as payload. With a driver of {occupant.weight} alone {payload.stillLeft} of payload are left. Weigh the tongue before you tow.',
      },
      {
        when: 'tongue.isEstimate',
        says: 'Loaded, the tongue comes to about {tongue.loaded} by estimate; all of it counts as payload. Weigh it before you tow.',
      },
      {
        says: 'Loaded, the tongue comes to {tongue.loaded}; all of it counts as payload, of which {payload.stillLeft} are left.',
      },
      { says: 'Loaded, the tongue comes to {tongue.loaded}, and all of it counts as payload.' },
    ],
  },
  load: {
    label: 'How much, and how many people, may still come along?',
    results: ['payload.stillLeft', 'limit.payload', 'trailerWeight.left'],
    impliedBy: ['vehicle.placardPayload', 'load.occupants', 'load.cargo', 'hitch.hardwareWeight'],
    says: [
      {
        when: 'load.peopleUntold',
        says: 'With a driver of {occupant.weight} alone and a tongue of {tongue.loaded}, {payload.stillLeft} of payload are left for people, things and hitch.',
      },
      { says: 'In the vehicle {payload.stillLeft} may still come along.' },
    ],
  },
  brakes: {
    label: 'Does the trailer need brakes of its own?',
    results: ['finding.unbraked', 'finding.brake-controller', 'limit.unbraked-rating'],
    impliedBy: ['vehicle.maxUnbraked', 'trailer.brakes'],
  },
  trip: {
    label: 'What do altitude and grades take?',
    results: ['finding.altitude-unasked', 'limit.combined', 'finding.grade'],
    impliedBy: ['trip.altitude', 'trip.steepestGrade'],
  },
  bars: {
    label: 'Do I need a weight-distributing hitch?',
    results: ['front.taken', 'finding.front-axle-light'],
    says: 'Without bars the tongue takes {front.taken} from the front axle; from a tenth of {front.withoutTongue} on bars are wanted.',
  },
  'to-buy': {
    label: 'What must a vehicle have that is bought to tow?',
    results: ['wanted.tongue', 'wanted.payload', 'wanted.rating'],
    says: [
      {
        says: 'A trailer with a maximum of {wanted.weight} wants about {wanted.tongue} allowed on the ball, and a tow rating of {wanted.rating}. Its door label must give {wanted.payload} of payload, with {load.people} of people.',
      },
      {
        says: 'A trailer with a maximum of {wanted.weight} wants about {wanted.tongue} allowed on the ball, and a tow rating of {wanted.rating}. Its door label must give {wanted.payload} of payload for driver and tongue alone; all else aboard comes on top.',
      },
    ],
  },
};
