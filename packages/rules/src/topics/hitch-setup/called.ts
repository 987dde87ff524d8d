import type { Called } from '../../engine/define/shapes';

/** What people call these things when they write or phone. */
export const called: Called = {
  topic: [
    'hitch setup',
    'ball height',
    'how high is the ball',
    'ball mount',
    'drop',
    'rise',
    'drop hitch',
    'sag',
    'sags',
    'squat',
    'nose up',
    'nose down',
    'level',
    'coupler height',
    'receiver height',
    'spring bars',
    'links of chain',
    'jackknife clearance',
    'tailgate hits the jack',
  ],
  facts: {
    'trailer.couplerHeight': ['coupler height', 'coupler', 'coupling of trailer', 'coupling'],
    'hitch.receiverHeightEmpty': ['receiver height', 'receiver height empty', 'receiver unloaded'],
    'hitch.receiverHeightLoaded': ['receiver height loaded', 'receiver loaded', 'receiver height'],
    'hitch.ballHeight': ['ball height', 'height of ball', 'ball is at', 'ball'],
    'hitch.ballSize': ['inch ball', 'ball size'],
    'hitch.mountRise': ['drop of the mount', 'rise of the mount'],
    'hitch.barsMost': ['bars rated', 'bar rating'],
  },
};
