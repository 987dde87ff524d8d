import type { Asking } from '../../engine/define/shapes';

/** What people ask of scale tickets; the first that is told of is answered first. */
export const askings: Readonly<Record<string, Asking>> = {
  tongue: {
    label: 'What does the tongue weigh?',
    results: ['tongue.weighed', 'tongue.shareWeighed', 'tongue.lifted'],
    impliedBy: [
      'slack.front',
      'slack.rear',
      'alone.front',
      'alone.rear',
      'lever.reading',
      'trailer.measuredTongueWeight',
    ],
    says: [
      {
        when: 'tongue.isLifting',
        says: 'The tongue lifts by {tongue.lifted}: nothing rests on the coupling.',
      },
      {
        when: 'tongue.isSeenInPart',
        says: 'With the bars tight {tongue.apparent} of the tongue rest on the vehicle. It weighs that or more.',
      },
      { says: 'The tongue weighs {tongue.weighed}, {tongue.shareWeighed} of the trailer.' },
      { says: 'The tongue weighs {tongue.weighed}.' },
    ],
  },
  trailer: {
    label: 'What does the trailer weigh?',
    results: ['trailer.weighed', 'limit.trailer-gross', 'limit.trailer-weight'],
    impliedBy: ['tight.trailer', 'slack.trailer', 'tight.front', 'tight.rear'],
    says: [
      { says: 'As weighed, the trailer comes to {trailer.weighed}.' },
      {
        says: 'By one ticket the trailer’s axles carry {tight.trailer}, and the vehicle’s {vehicle.hitched}. The trailer weighs more than its axles show, by its tongue.',
      },
      {
        says: 'By one ticket the trailer’s axles carry {slack.trailer}: it weighs more than that, by its tongue.',
      },
      {
        says: 'By one ticket the trailer’s axles carry {tight.trailer}: it weighs more than that, by its tongue.',
      },
    ],
  },
  bars: {
    label: 'What do the bars bring back to the front axle?',
    results: ['bars.restoredWeighed', 'finding.restored'],
    says: 'The bars bring {bars.restoredWeighed} of the front axle’s loss back to it.',
  },
  payload: {
    label: 'How much may still be loaded?',
    results: ['payload.remaining', 'limit.payload', 'limit.rear-axle'],
    impliedBy: ['vehicle.placardPayload'],
    says: 'Of the payload {payload.remaining} remain.',
  },
  sides: {
    label: 'Is one side too heavy?',
    results: ['side.imbalance', 'finding.side-to-side'],
    impliedBy: ['trailer.leftWheels', 'trailer.rightWheels'],
    says: 'The heavier side carries {side.imbalance} more than half.',
  },
};
