import type { Called } from '../../engine/define/shapes';

/** What people call these things when they write or phone. */
export const called: Called = {
  topic: [
    'weigh',
    'weighed',
    'scale',
    'truck scale',
    'grain scale',
    'truck stop scale',
    'scale ticket',
    'weigh ticket',
    'three tickets',
    'three passes',
    'axle weights',
    'weigh the tongue',
    'bathroom scale',
    'tongue at home',
    'how do I weigh my rig',
    'truck only weight',
    'gross on the ticket',
    'side to side',
  ],
  facts: {
    'slack.front': ['steer axle', 'front axle'],
    'slack.rear': ['drive axle', 'rear axle'],
    'slack.trailer': ['trailer axles', 'trailer axle'],
    'lever.reading': ['bathroom scale reads', 'scale reads'],
    'tight.front': ['steer with bars tight', 'first ticket front'],
    'tight.trailer': ['trailer axles with bars tight', 'first ticket trailer'],
    'alone.front': ['steer axle truck alone', 'truck only front'],
    'alone.rear': ['drive axle truck alone', 'truck only rear'],
    'scale.step': ['rounds to', 'prints twenties'],
    'trailer.leftWheels': ['left wheels', 'left side'],
    'trailer.rightWheels': ['right wheels', 'right side'],
  },
};
