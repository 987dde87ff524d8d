import { part } from '../../engine/define/topic';
import { custom, tongueBand } from '../../trade/bibliography/common';
import { heavyOnBall, tongueFindings } from '../../trade/rig/tongue-findings';

const {
  'tongue-share': share,
  'tongue-negative': negative,
  'tail-unreckoned': tail,
} = tongueFindings.findings;

/**
 * The tongue’s share says more than all the rest: as weighed it wins; by moments it holds where it
 * is known what rides where; a tenth on the dry tongue is a guess with a proviso.
 */
export const tongueShare = part({
  formulas: {
    'tongue.isUntold': {
      label: 'Nobody told what rests on the ball',
      unit: 'yes-no',
      is: '!tongue.isKnown',
      source: tongueBand,
    },
    'load.isUntold': {
      label: 'Nobody told what is built or packed into the trailer',
      unit: 'yes-no',
      is: '!given(trailer.cargo) && !given(trailer.options)',
      source: custom,
    },
    'share.isOfEmpty': {
      label: 'Heavy on the ball for the empty trailer, and not for one at its maximum',
      unit: 'yes-no',
      is: 'coupling.isBall && load.isUntold && !tongue.isEstimate && tongue.share > tongue.highEdge && !(known(trailer.gvwr) && tongue.loaded / trailer.gvwr > tongue.highEdge)',
      source: tongueBand,
    },
    'share.isAsked': {
      label: 'The tongue is known with what rides behind the axles, or too light without it',
      unit: 'yes-no',
      is: 'tongue.isKnown && (!tail.isUnreckoned || tongue.share < tongue.lowEdge)',
      source: tongueBand,
    },
    'share.told': {
      label: 'Tongue share of the loaded trailer',
      noun: 'the tongue’s share of the trailer',
      unit: '1',
      is: 'choose(tail.isUnreckoned, needs(tongue.share, trailer.ballToAxle), tongue.share)',
      source: tongueBand,
    },
  },
  findings: {
    'tongue-share': {
      ...share,
      // A share that is heavy of the empty trailer alone moves no load.
      care: share.care.map((each) =>
        each === heavyOnBall ? { ...each, when: `${each.when} && !share.isOfEmpty` } : each,
      ),
      settles: true,
      first: true,
      askedWhen: 'share.isAsked',
    },
    'tongue-negative': negative,
    'tongue-untold': {
      label: 'Tongue weight, not told',
      unknown: {
        when: 'tongue.isUntold',
        wrong: 'What rests on the ball is not known yet.',
        because: 'A light tongue is what makes most trailers sway.',
        do: 'Weigh the tongue, loaded as for the road, and the trailer.',
      },
      otherwise: 'What rests on the ball was told.',
      source: tongueBand,
    },
    'tail-unreckoned': tail,
    'tongue-unweighed': {
      label: 'Share, not weighed',
      askedBy: ['trailer.dryTongueWeight', 'trailer.measuredTongueWeight'],
      if: [
        {
          when: 'tongue.isEstimate',
          wrong: 'The loaded tongue has not been weighed.',
          because: 'A tenth on the dry tongue knows nothing of what is packed behind the axles.',
          do: 'Load it as for the road and weigh the tongue.',
          proviso: 'the loaded tongue weighs {tongue.lowEdge} to {tongue.highEdge} of the trailer',
        },
        {
          when: 'share.isOfEmpty',
          wrong:
            'Of the empty trailer {tongue.share} would rest on the ball, and of the packed one less.',
          because: '{tongue.lowEdge} to {tongue.highEdge} of what it weighs on the road is usual.',
          do: 'Weigh the loaded trailer before any load is moved.',
          proviso: 'with all packed, {tongue.lowEdge} to {tongue.highEdge} of it rests on the ball',
        },
        {
          when: 'load.isUntold && !tongue.isEstimate',
          wrong: 'The trailer is counted with nothing packed.',
          because: 'Each pound more in it makes the same tongue a smaller share.',
          do: 'Weigh the loaded trailer, or tell what is packed.',
          proviso: 'with all packed, the tongue is still {tongue.lowEdge} or more',
        },
      ],
      otherwise: 'The tongue is known as it is loaded.',
      source: tongueBand,
    },
  },
});
