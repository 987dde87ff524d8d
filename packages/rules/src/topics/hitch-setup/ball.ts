import type { Decision } from '../../engine/define/shapes';
import { part } from '../../engine/define/topic';
import { ballClasses } from '../../trade/bibliography/hitch-setup';

const trailerClass: Decision = {
  label: 'Class of the trailer by its gross rating',
  hit: 'first',
  on: ['class.first', 'class.second', 'class.third'],
  rows: [
    { when: ['yes', '-', '-'], gives: 'class-1' },
    { when: ['no', 'yes', '-'], gives: 'class-2' },
    { when: ['no', 'no', 'yes'], gives: 'class-3' },
    { when: ['no', 'no', 'no'], gives: 'class-4' },
  ],
  results: {
    'class-1': { label: 'class 1', says: 'Up to 2,000 lb: a ball of 1⅞ in at least.' },
    'class-2': { label: 'class 2', says: '2,001 to 3,500 lb: a ball of 2 in at least.' },
    'class-3': { label: 'class 3', says: '3,501 to 5,000 lb: a ball of 2 in at least.' },
    'class-4': { label: 'class 4', says: 'Above 5,000 lb: the ball that the coupling names.' },
  },
  source: ballClasses,
};

const edge = (label: string, value: number) =>
  ({ label, unit: 'lb', values: [{ from: '2020-01-01', value }], source: ballClasses }) as const;
const size = (label: string, value: number) =>
  ({ label, unit: 'in', values: [{ from: '2020-01-01', value }], source: ballClasses }) as const;

/** The least ball for the trailer's class; sizes run 1⅞, 2 and 2 5⁄16 in. */
export const ball = part({
  parameters: {
    'class.firstMost': edge('Heaviest trailer of class 1', 2000),
    'class.secondMost': edge('Heaviest trailer of class 2', 3500),
    'class.thirdMost': edge('Heaviest trailer of class 3', 5000),
    'ball.small': size('Least ball of class 1', 1.875),
    'ball.middle': size('Least ball of classes 2 and 3', 2),
  },
  decisions: { 'trailer.class': trailerClass },
  formulas: {
    'class.first': {
      label: 'Class 1',
      unit: 'yes-no',
      is: 'trailer.gvwr <= class.firstMost',
      source: ballClasses,
    },
    'class.second': {
      label: 'Class 2 or below',
      unit: 'yes-no',
      is: 'trailer.gvwr <= class.secondMost',
      source: ballClasses,
    },
    'class.third': {
      label: 'Class 3 or below',
      unit: 'yes-no',
      is: 'trailer.gvwr <= class.thirdMost',
      source: ballClasses,
    },
    'coupler.isSmall': {
      label: 'The coupler is too small for the trailer’s class',
      unit: 'yes-no',
      is: 'given(trailer.couplerSize, trailer.gvwr) && trailer.couplerSize < coupler.least',
      source: ballClasses,
    },
    'coupler.least': {
      label: 'Least coupler for the trailer’s class',
      noun: 'the least coupler of its class',
      unit: 'in',
      is: "choose(trailer.class == 'class-1', ball.small, ball.middle)",
      source: ballClasses,
    },
    'size.isOpen': {
      label: 'A size was mentioned and is not known',
      unit: 'yes-no',
      is: "trailer.coupling == 'ball' && ((given(hitch.ballSize) && !known(hitch.ballSize)) || (given(trailer.couplerSize) && !known(trailer.couplerSize)))",
      source: ballClasses,
    },
    'ball.least': {
      label: 'Least ball for the trailer’s class',
      noun: 'the least ball of its class',
      unit: 'in',
      is: "choose(trailer.class == 'class-1', ball.small, choose(trailer.class == 'class-4', trailer.couplerSize, ball.middle))",
      source: ballClasses,
    },
  },
  findings: {
    'ball-class': {
      label: 'Ball for the trailer’s class',
      askedByKnown: ['hitch.ballSize', 'trailer.gvwr'],
      stop: {
        when: 'hitch.ballSize < ball.least',
        wrong:
          'The ball is too small: {hitch.ballSize}, and a trailer of {trailer.gvwr} gross takes {ball.least} at least.',
        because:
          'A coupler shut over a ball too small for the trailer lifts off on the first bump.',
        do: 'Fit a ball of the size stamped on the coupler, rated for the trailer’s gross.',
      },
      open: {
        wrong: 'The ball may be too small for this trailer.',
        do: 'Read the size stamped on the coupler.',
      },
      otherwise: 'The ball is no smaller than the trailer’s class takes.',
      source: ballClasses,
    },
    'coupler-class': {
      label: 'Coupler for the trailer’s class',
      askedByKnown: ['trailer.couplerSize', 'trailer.gvwr'],
      stop: {
        when: 'trailer.couplerSize < coupler.least',
        wrong:
          'The coupler is too small for {trailer.gvwr} gross: it takes a ball of {trailer.couplerSize}, and {coupler.least} is the least.',
        because:
          'It is the coupler that is wrong here, not the ball: a smaller ball to suit it would be wrong too.',
        do: 'Have a coupler of the right class fitted by somebody who may weld on that frame.',
      },
      open: {
        wrong: 'The coupler may be too small for this trailer.',
        do: 'Read its size and the trailer’s gross rating.',
      },
      otherwise: 'The coupler is no smaller than the trailer’s class takes.',
      source: ballClasses,
    },
    'ball-gross': {
      label: 'Ball against the trailer’s own maximum',
      askedByKnown: ['hitch.ballRating', 'trailer.gvwr'],
      askedWhen: 'coupling.isBall',
      stop: {
        when: 'hitch.ballRating < trailer.gvwr',
        wrong:
          'The ball is rated for {hitch.ballRating}, and the trailer’s own maximum is {trailer.gvwr}.',
        because: 'Ball and mount must each be rated for what the trailer may weigh.',
        do: 'Fit a ball of the coupler’s size that is rated for {trailer.gvwr} or more.',
      },
      open: {
        wrong: 'The ball may be rated for less than the trailer’s own maximum.',
        do: 'Read the rating stamped on the ball.',
      },
      otherwise: 'The ball is rated for the trailer’s own maximum.',
      source: ballClasses,
    },
    'mount-gross': {
      label: 'Ball mount against the trailer’s own maximum',
      askedByKnown: ['hitch.mountRating', 'trailer.gvwr'],
      askedWhen: 'coupling.isBall',
      stop: {
        when: 'hitch.mountRating < trailer.gvwr',
        wrong:
          'The ball mount is rated for {hitch.mountRating}, and the trailer’s own maximum is {trailer.gvwr}.',
        because: 'Ball and mount must each be rated for what the trailer may weigh.',
        do: 'Fit a mount that is rated for {trailer.gvwr} or more.',
      },
      open: {
        wrong: 'The ball mount may be rated for less than the trailer’s own maximum.',
        do: 'Read the rating on the mount.',
      },
      otherwise: 'The ball mount is rated for the trailer’s own maximum.',
      source: ballClasses,
    },
    'size-unknown': {
      label: 'Size of ball and coupler',
      askedBy: ['hitch.ballSize', 'trailer.couplerSize'],
      unknown: {
        when: 'size.isOpen',
        wrong: 'The size of the ball or of the coupler is not known.',
        because: 'A ball a size too small holds until the first bump.',
        do: 'Read the size stamped on top of the ball and the one on the coupler.',
      },
      otherwise: 'What was told of ball and coupler has its size.',
      source: ballClasses,
    },
  },
});
