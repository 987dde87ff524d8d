import type { Term } from '../language';

const term = (heard: RegExp, says: string, unless?: RegExp): Term =>
  unless === undefined ? { heard, says } : { heard, says, unless };

/**
 * Terms of the trade that are heard and not explained by what stands around them, the hardest first;
 * each is said once, right after it is first heard, where there is room. Common usage, no standard’s
 * own words.
 */
export const terms: readonly Term[] = [
  term(
    /\binterrupting rating\b/,
    'That rating is the largest short circuit that a fuse can break.',
  ),
  term(
    /\bweight-distributing hitch\b|\bweight distribution\b/i,
    'Such a hitch has spring bars that press weight back onto the front wheels.',
    /spring bars/,
  ),
  term(
    /\bcombined rating\b/i,
    'The combined rating is what vehicle and trailer may weigh together.',
  ),
  term(/\bgross rating\b/i, 'The gross rating is the most that it may weigh, fully loaded.'),
  term(/\bspring hangers?\b/i, 'A spring hanger holds an axle’s spring to the frame.'),
  term(/\bbase plate\b/i, 'The base plate is where the bar is fixed to the car.'),
  term(
    /\bdolly\b/i,
    'A dolly carries the front wheels of the car.',
    /front wheels|dolly or trailer with it|base plate, dolly/,
  ),
  term(
    /\bbreakaway (?:cable|switch)\b/i,
    'The breakaway cable puts the brakes on if what is towed comes loose.',
    /comes? (?:loose|apart)|without brakes/,
  ),
  term(
    /\b(?:brake )?controller\b/i,
    'The controller, by the driver, works the trailer’s electric brakes.',
    /controller’s lever, if any|nothing to work them/,
  ),
  term(/\bcenter of gravity\b/i, 'The center of gravity is the point where it would balance.'),
  term(
    /\bcargo weight rating\b/i,
    'The cargo weight rating, from the camper papers, is what the bed may carry.',
    /camper papers|in the bed/i,
  ),
  term(/\bslack bars\b|\bbars slack\b/i, 'Slack bars are the hitch’s springs, hanging loose.'),
  term(/\bequaliz/i, 'To equalize is to overcharge a battery on purpose.', /overcharge/),
  term(/\bshore power\b/i, 'Shore power is the cord to the park’s outlet.', /plug/),
  term(/\bload range\b/i, 'The load range is a letter on the tire’s sidewall.'),
  term(/\bdeclarations page\b/i, 'That page is the policy’s list of what it pays.'),
  term(
    /\bdeductible\b/i,
    'The deductible is what you pay yourself of every claim.',
    /pays nothing/,
  ),
  term(/\btow rating\b/i, 'The tow rating is the heaviest trailer that it may pull.'),
  term(
    /\bpayload\b/i,
    'Payload is all that rides in the vehicle, the trailer’s tongue with it.',
    /occupants and cargo/,
  ),
  term(/\binverter\b/i, 'The inverter makes 120 volts from the battery.'),
  term(/\bconverter\b/i, 'The converter charges the battery from the plug.'),
  term(/\bregulator\b/i, 'The regulator brings the gas down to the pressure of the stove.'),
  term(/\bgray tank\b/i, 'The gray tank takes what runs from sink and shower.', /sink/),
  term(/\bball mount\b/i, 'The ball mount is the bar that carries the ball.', /bar/),
  term(/\breceiver\b/i, 'The receiver is the square tube under the bumper.', /square tube/),
  term(/\bcoupler\b/i, 'The coupler is what closes over the ball.', /over the ball/),
  term(
    /\btongue\b/i,
    'The tongue is the trailer’s nose, which rests on the ball.',
    /\bon the ball\b|\bball carries\b|nose/,
  ),
];
