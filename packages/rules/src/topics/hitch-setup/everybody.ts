import type { ForEverybody } from '../../engine/define/shapes';

/** What is said to all who ask of their hitch and told next to nothing. */
export const everybody: Readonly<Record<string, ForEverybody>> = {
  mount: {
    rule: 'Copy no other height. Measure the coupler with the trailer level, and the receiver, the square tube under the bumper, with everything loaded. The drop is the receiver’s height plus the ball’s own, less the coupler’s.',
    because:
      'Each vehicle sags in its own way under the tongue, so the drop on another one is no guide.',
    look: [],
    fromTold: [
      {
        says: 'Empty, the receiver stands at {hitch.receiverHeightEmpty}; loaded it sinks. The drop is its loaded height plus the ball’s own, less the coupler’s {trailer.couplerHeight}.',
      },
      {
        says: 'Empty, the receiver stands at {hitch.receiverHeightEmpty}; loaded it sinks. The drop is its loaded height plus the ball’s own, less the coupler’s.',
      },
    ],
    worked: {
      says: 'Say the loaded receiver is at {hitch.receiverHeightLoaded} and the coupler at {trailer.couplerHeight}. A ball {hitch.ballHeight} high then wants a drop of {mount.dropOnly}.',
      given: {
        'hitch.receiverHeightLoaded': '21 in',
        'hitch.ballHeight': '2.5 in',
        'trailer.couplerHeight': '19.25 in',
      },
    },
    otherwise:
      'If you cannot measure loaded, take an adjustable mount, and set the nose level to {nose.lowest} low, never high.',
  },
  level: {
    rule: 'With everything loaded and hitched the trailer stands level, or its nose up to {nose.lowest} low; never high.',
    because: 'A high nose takes weight off the ball and lets the trailer sway.',
    look: [],
    otherwise: 'If you are not sure, lay a level on the trailer’s frame, loaded, on level ground.',
  },
  bars: {
    rule: 'Measure the front fender three times: not hitched, hitched with the bars slack, and with the bars set. The bars are to take back {setting.least} to {setting.most} of what hitching lifted, or what the vehicle’s manual says.',
    because:
      'Too little leaves the steering light, too much unloads the rear tires and strains the frame.',
    look: ['vehicle.fenderTight'],
    given: {
      'vehicle.fenderUnhitched': '= vehicle.fenderUnhitched',
      'vehicle.fenderSlack': '= vehicle.fenderSlack',
    },
    clauses: { 'vehicle.fenderTight': 'the fender stands at {value} with the bars set' },
    otherwise:
      'If you are not sure, take bars whose rating holds the loaded tongue, and have a shop set them the first time.',
  },
  ball: {
    rule: 'Read the size stamped on the coupler, and take a ball of exactly that size. Ball, mount and coupler must each be rated for the trailer’s own maximum.',
    because: 'A coupler shut over a smaller ball holds until the first bump.',
    look: [],
    worked: {
      says: 'A trailer of {trailer.gvwr} gross takes a ball of {ball.least} at least.',
      given: { 'trailer.gvwr': '3,200 lb' },
    },
    otherwise: 'If you cannot read the size, try no ball: ask the coupler’s maker or a shop.',
  },
  room: {
    rule: 'At a right angle the corner of the trailer must clear the bumper, and the open tailgate whatever stands on the trailer’s nose.',
    because: 'In a tight turn on a slope there is less room than on the flat.',
    look: [],
    otherwise:
      'If you are not sure, turn slowly with somebody watching, and open the tailgate by hand.',
  },
  cable: {
    rule: 'Yes, on every trailer with brakes of its own. It goes to a point of its own on the vehicle, never to the ball or a chain, and is free to turn.',
    because: 'If the trailer comes loose, the cable puts its brakes on.',
    look: ['hitch.breakaway'],
    otherwise: 'If you find no point for it, tow nothing before a shop has fitted one.',
  },
  ready: {
    rule: 'Coupler shut and pinned, chains crossed and off the road, breakaway cable on a point of its own. Receiver pin clipped, plug in, jack up, lights and brakes tried.',
    because: 'Each has been forgotten by somebody who hitched up for years.',
    look: [],
    otherwise:
      'If you are not sure, lift the tongue once with the jack: the vehicle must rise with the tongue.',
  },
};
