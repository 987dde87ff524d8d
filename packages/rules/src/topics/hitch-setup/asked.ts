import type { Asking } from '../../engine/define/shapes';

/** What people ask of a hitch; the first that is told of is answered first. */
export const askings: Readonly<Record<string, Asking>> = {
  mount: {
    label: 'How high is the ball, and which ball mount does it take?',
    results: ['mount.dropToBuy', 'mount.riseToBuy', 'mount.way'],
    impliedBy: [
      'trailer.couplerHeight',
      'hitch.receiverHeightLoaded',
      'hitch.receiverHeightEmpty',
      'hitch.ballHeight',
    ],
    says: [
      {
        when: 'mount.isFromEmpty',
        says: 'By the empty height the drop is {mount.fromEmpty} at the most, less what the tail sinks: measure the receiver loaded before you buy.',
      },
      {
        when: 'mount.tooFar',
        says: 'No ball mount is made for so much between ball and receiver.',
      },
      {
        when: 'mount.dropsLevel',
        says: 'Take a ball mount with {mount.dropToBuy} of drop. The trailer then stands level.',
      },
      {
        when: 'mount.risesLevel',
        says: 'Take a ball mount with {mount.riseToBuy} of rise. The trailer then stands level.',
      },
      {
        when: 'mount.dropsLow',
        says: 'Take a ball mount with {mount.madeDrop} of drop. The trailer’s nose then stands {nose.madeLow} low.',
      },
      {
        when: 'mount.dropsHigh',
        says: 'Take a ball mount with {mount.madeDrop} of drop. The trailer’s nose then stands {nose.madeHigh} high.',
      },
      {
        when: 'mount.risesLow',
        says: 'Take a ball mount with {mount.madeRise} of rise. The trailer’s nose then stands {nose.madeLow} low.',
      },
      {
        when: 'mount.risesHigh',
        says: 'Take a ball mount with {mount.madeRise} of rise. The trailer’s nose then stands {nose.madeHigh} high.',
      },
    ],
  },
  level: {
    label: 'Does it stand level on the mount at hand?',
    results: ['finding.nose-high', 'finding.nose-low', 'nose.height'],
    impliedBy: ['hitch.mountRise'],
  },
  bars: {
    label: 'Which bars, and how are they set?',
    results: [
      'bars.restored',
      'finding.bars-strong',
      'finding.bar-setting',
      'fender.highest',
      'limit.spring-bars',
    ],
    impliedBy: [
      'vehicle.fenderTight',
      'vehicle.fenderSlack',
      'vehicle.fenderUnhitched',
      'hitch.barsMost',
      'hitch.barsLeast',
    ],
    says: [
      {
        says: 'Of what hitching lifts the front the bars take back {bars.restored}; {setting.least} to {setting.most} is wanted.',
      },
      {
        says: 'With the bars set, the front fender stands at {fender.highest} or lower, and not below {vehicle.fenderUnhitched}.',
      },
    ],
  },
  ball: {
    label: 'Which ball does it take?',
    results: ['ball.least', 'finding.coupler-class', 'finding.ball-class', 'finding.ball-size'],
    impliedBy: ['hitch.ballSize', 'trailer.couplerSize', 'trailer.gvwr'],
    says: [
      {
        when: 'coupler.isSmall',
        says: 'No smaller ball: a trailer of {trailer.gvwr} takes {ball.least} at least, and the coupler is what is wrong.',
      },
      {
        says: 'The trailer takes a ball of {ball.least} at least, and always the size stamped on its coupler.',
      },
    ],
  },
  room: {
    label: 'Does it clear in a turn, and does the tailgate open?',
    results: ['turn.room', 'tailgate.room', 'finding.turning', 'finding.tailgate'],
    impliedBy: ['trailer.frontBehindBall', 'vehicle.tailgateReach', 'trailer.jackBehindBall'],
  },
  cable: {
    label: 'Does it need a breakaway cable?',
    results: ['finding.breakaway'],
    says: [
      {
        when: 'brakes.areNone',
        says: 'A trailer without brakes of its own has no breakaway cable to clip. Its chains are all that holds it, so cross them.',
      },
    ],
  },
  ready: {
    label: 'Is it ready to roll?',
    results: ['finding.latch', 'finding.chains', 'finding.breakaway', 'finding.torque'],
    impliedBy: ['hitch.latched', 'hitch.chains', 'hitch.breakaway', 'hitch.torqued'],
  },
};
