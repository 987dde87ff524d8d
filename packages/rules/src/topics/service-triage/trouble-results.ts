import type { Decision } from '../../engine/define/shapes';

/** What is said of a trouble: the act first, then why, then the rest of it. */
export const troubleResults: Decision['results'] = {
  'stop-now': {
    label: 'stop now',
    level: 'stop',
    says: 'Stop where it is safe and tow it no further.',
    because: 'This part holds the trailer on the road.',
    do: 'Someone qualified comes to it, or it is carried on a flatbed.',
  },
  'stop-swaying': {
    label: 'stop now, and find out why it sways',
    level: 'stop',
    says: 'Off the pedal, trailer brakes by hand if there is a lever for them, wheel held straight; then stop where it is safe.',
    because: 'Speeding up or braking the vehicle feeds it, and it begins again at the same speed.',
    do: 'Look at the weight on the ball, the load behind the axles, tires and hitch. Tow no further before the cause is found.',
  },
  'stop-unseen': {
    label: 'stop now, and make it seen',
    level: 'stop',
    says: 'Stop off the road, warning lights on, triangles out.',
    because:
      'Drivers behind do not see the trailer slow down or turn, and the brakes may have no current either.',
    do: 'Roll again only when lights and brakes answer. Look at plug and fuses first.',
  },
  'stop-open': {
    label: 'stop now, and secure what may open or fall',
    level: 'stop',
    says: 'Stop where it is safe; it does not roll with this open, hanging or out.',
    because: 'It reaches into the next lane, or falls there.',
    do: 'Bring it in and lock it by the manual’s way by hand, with no one beneath it. Else let someone qualified come to the trailer.',
  },
  'shut-the-gas': {
    label: 'shut the gas',
    level: 'stop',
    says: 'Shut the cylinder and use it no more.',
    because:
      'A flame that turns yellow, leaves soot or goes out by itself makes carbon monoxide or leaves gas.',
    do: 'Air the trailer, see that the carbon monoxide alarm lives, and have a licensed person come before it burns again.',
  },
  'pull-the-plug': {
    label: 'shut the breaker off and unplug',
    level: 'stop',
    says: 'Shut the breaker off at the site, then unplug with dry hands.',
    because:
      'A connection that gets warm or comes and goes is on its way to a fire or a live skin.',
    do: 'Leave it unplugged until an electrician has been at it.',
  },
  'after-what-is-graver': {
    label: 'nothing before what is graver',
    level: 'ok',
    says: 'What is graver comes first.',
  },
  'nothing-else-told': {
    label: 'go on, and measure again at the next stop',
    level: 'if',
    says: 'Only readings or an alarm were told.',
    do: 'Say what else is seen, heard or missed.',
    proviso: 'nothing else is wrong with it',
  },
  'nearest-shop': {
    label: 'to the nearest qualified shop',
    level: 'care',
    says: 'Drive slowly to the nearest qualified shop and no further, stopping after the first miles to look and to feel.',
    do: 'If it grows, stop.',
  },
  'book-with-dealer': {
    label: 'book with the dealer',
    level: 'care',
    says: 'Book it with your dealer and leave it as it is until then: switched off, shut or covered.',
  },
  'book-shut-off': {
    label: 'book with the dealer, shut off until then',
    level: 'care',
    says: 'Book it with your dealer; until then leave it shut off, and do not open it yourself.',
    because: 'Gas and 120 volts are for licensed hands.',
  },
  'book-upkeep': {
    label: 'book the upkeep',
    level: 'care',
    says: 'Book this upkeep with your dealer before the season or the next long trip.',
    because: 'It takes tools, a license or parts that have to be ordered; nothing has failed.',
    do: 'Stop after the first miles to look and to feel: anything hot, loud, loose or smelled ends the trip there.',
  },
  'mend-before-it-rolls': {
    label: 'do it yourself, before it rolls',
    level: 'if',
    says: 'You may see to it yourself, by the manual and with care.',
    because: 'Lights, brakes and the breakaway switch hang on it.',
    do: 'Look at plug, fuse and ground first. Before it rolls, try lights and brakes with somebody standing behind.',
    proviso: 'lights, brakes and breakaway switch work again before it rolls',
  },
  'do-it-yourself': {
    label: 'do it yourself, with care',
    level: 'ok',
    says: 'Do it by the manual, with power and gas off.',
  },
};
