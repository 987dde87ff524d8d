import type { Sign } from './shapes';

const rolling = `wheel, whl, lug, lugs, lug nut, stud, nuts, tire, tyre, hub, bearing, axle, spindle, rim, spring, leaf spring, leaf, shackle,
  hanger, equalizer, u bolt, ubolt, center cap, dust cap, grease cap, hubcap, suspension`;
const noises = `grind, grinding, squeal, squeak, growl, rumble, rumbling, roar, howl, whine, scrape, scraping, click, clicking, clunk, knock,
  thump, thumping, thud, bang, banging, whump, chirp, screech, noise, sound, hum, humming, whir, crunch, crunchy, gravel, pop, popping, tick, clack, slap, flap, whup`;
const apart = `loose, loosen, loosened, wobble, wobbly, wobbling, lost, lose, off, gone, missing, broke, broken, came, snapped, snap, sheared, shear, crack, cracked,
  bent, moved, shifted, slid, slipped, trail, play, wiggle, wiggly, rock, shake, shaking, shakes, shimmy, tilt, leaning, leans, crooked, angle, camber, slop, sloppy, splayed, fell, rolled past,
  passed us, backed off, turn by hand, finger tight, by hand, blue, streak, streaks, black dust, rusty, stretched, inward, outward, toward fender, into fender, fender, dog tracks, sideways, quarter turn, retighten, re tighten, tightening again, keep tightening, two pieces, in two, in half, pieces, spins, drip, grease, seized, locked, jammed, twist, twisted, collapsed, sag, sagging, rubbing, rub,
  crumble, shattered, worn through, egged, elongated, stripped, hanging`;
const tires =
  'tire, rim, psi, tyre, sidewall, side wall, tread, carcass, spare, tires, tyres, trd, rubber';
const tireStates = `bulge, bulging, bubble, egg, lump, lumpy, knot, bump, bumpy, blister, cord, cords, belt, threads, thread, string, fabric, strands, strand, canvas, mesh, wire, steel, pregnant, wires, split, gash, cut, slice, crack, cracks,
  cracking, cracked, nail, screw, bolt, puncture, flat, hiss, losing, loses, lost, blew, blow, blown, blowout, pop, popped, shred, shredded, exploded, explode, peel, peeling,
  separate, separating, separated, delaminate, bald, pillow, goose, golf ball, tumor, wart, hernia, swollen, fabric, canvas, showing, worn thru, ripped, tear, torn,
  chunk, came away, come away, came apart, coming apart, coming off, strip of, piece of, flap, flapping, squishy, mushy, low, leak, leaking, wavy, wobble, scalloped, dent, plug, patch, patched, dip, ridge, groove, dimple, goes down, going down, gone down, gets low, smoking`;
const brakes =
  'brake, magnet, magnets, brakes, braking, brk, brks, breaks, pedal, break pedal, controller, brake controller, brakin, breaking';
const brakeStates = `no, not, dont, wont, doesnt, didnt, cant, couldnt, isnt, arent, anything, nothing, zilch, nada, zero, fail, failed, failing, gone, grab, grabbing, lock, locks, locked,
  locking, drag, dragging, stuck, stop, weak, out, spongy, sponge, soft, mushy, squishy, floor, sink, sinks, fade, faded, fading, squeal, grind, grinding, smoke, hot,
  pushes, push, pushing, shove, shoving, shoves, longer, barely, hardly, slow, pulse, jerk, clamp, clamped, forever, low gear, stay on, stays on, stayed on, smell, smells, stink, red light, puddle, pull, pulls, dead, quit, lost, fell, leak, fluid, error, fault, flash,
  disconnected, never, useless, iffy, kaput, shot, toast, weird, late, delayed, half working`;
const joint = `coupler, coupling, hitch, ball, ball mount, drawbar, tongue, kingpin, king pin, pin box, fifth wheel plate, jaws, plate, hitch head, receiver, latch, lever, lock lever, tow bar, towbar, jaw, frame, chassis, weld, a frame, crossmember, cross member,
  shank, cotter, hitch pin, hitch bolt, beam, rail, i beam, trunnion, spring bar, bumper, bracket, gooseneck, pintle, jackknife, safety pin, rivet`;
const jointStates = `bent, bend, bending, crack, cracked, cracking, broke, broken, snapped, snap, pop, popped, pops, tore, torn, tear, tearing, rip, ripped, jump, jumped, slip, slipped, split, rust, rusted, rotted,
  came off, come off, came loose, come loose, loose, unhitched, unhooked, separate, separated, wont latch, wont lock, wont close, not latched, unlatched, lifts off, lifting off, lifts up, wiggle, wiggles, gap, hairline, bow, bowed, bowing,
  twist, twisted, egg shaped, egged, oval, wallowed, missing, gone, fell, fall out, fell out, sheared, opened, open, flex, flexing, droop, sag, sagging, buckle, buckled, shifted, flips, flip, pulled away,
  pulling away, let go, gave way, give way, disconnected, detached, bounced off, hopped, off ball, off the ball, not down, crease, line in paint, tweaked, kinked, dent, clunk, clunks, bang, banging, creak, rattle, rattles, daylight, hops, hop, hopping, bungee, doesnt drop, didnt close, doesnt close, not closed, didnt lock, didnt latch, doesnt quite, wont drop, wont seat, not seated, wont go down, wont stay, stretched, walked, bounces`;

/** What comes loose, lets go or does not stop on the road. */
export const road: readonly Sign[] = [
  {
    kind: 'wheel',
    lists: [rolling, apart],
    within: 7,
    unless:
      'wheel lock, wheel locks, steering, wheel well, fifth wheel, 5 th wheel, take off, take tire off, off road',
  },
  {
    kind: 'wheel',
    lists: [rolling, noises],
    within: 9,
    unless: 'steering wheel, fifth wheel, 5 th wheel',
  },
  {
    kind: 'wheel',
    lists: [tires, tireStates],
    within: 6,
    unless: 'flat tow, spare tire, low profile, flat towing',
  },
  {
    kind: 'wheel',
    lists: [
      'egg, lump, bulge, bubble, knot, bump, blister, string, hernia, wart',
      'tire, rim, sidewall, psi, tread, pressure, tires, inside wall, outside wall, spare, rubber',
    ],
    within: 16,
  },
  {
    kind: 'wheel',
    lists: [
      'blowout, blow out, blew out, blew tire, blown tire, flat tire, tire blew, cord showing, cords showing, belts showing, tire egg, egg on tire, egg on one',
    ],
    within: 1,
  },
  { kind: 'brakes', lists: [brakes, brakeStates], within: 9 },
  // The truck alone slows, or what it pulls comes late.
  {
    kind: 'brakes',
    lists: [
      'truck, pickup, suv, nose, front, trailer, camper, rig, it',
      'does all work, doing all work, all the work, nosedives, nosedive, nose dives, nose dive, dives, diving, shove, shoves, shoved, shoving, pushes, pushing, push, wakes up late, wake up late, wake up, comes late, kicks in late, late, keeps coming, keeps going, ran into, runs into, bumps into, plows, tries to pass, tried to pass, pass me, pass us, passing me, passing us, overtake, overtakes, come around, came around, wants to come',
      'stop, stops, stopping, slow, slows, slowing, slow down, step on, stepped on, light, lights, down, downhill, coming down, hill, grade, pass, panic, hit pedal, brake, corner, curve, ramp, exit, wet, rain',
    ],
    within: 14,
    told: true,
  },
  {
    kind: 'brakes',
    lists: [
      `wont stop, cant stop, couldnt stop, didnt stop, doesnt stop, hard to stop, barely stop, barely stopped, hardly stop, almost didnt, not slow, not stop, wont hold, not hold, doesnt hold, wont slow, doesnt slow, didnt slow, cant slow, hard time stopping,
      trouble stopping, take forever to stop, takes forever to stop, took forever to stop, forever to stop, takes ages to stop, ages to stop, twice as long to stop, long time to stop, pushes us, pushes me, pushing us, pushing me, pushing truck, pushes truck, shoves us, shoving us, shoves me, shoving me, no stopping power, runaway, stopping distance, through red, through intersection,
      through stop, to floor, pedal floor, nothing happens when brake`,
    ],
    within: 1,
  },
  {
    kind: 'brakes',
    lists: [
      'box in cab, brake box, blue box, controller, display, brake thing, box under dash, box on dash',
      'n c, sh, ol, nothing, error, blank, dashes, dots, flash, flashes, flashing, short, no trailer, e 2, dead, blink',
    ],
    within: 10,
  },
  {
    kind: 'brakes',
    lists: [
      'cable, wire, string, cord',
      'emergency, emergency thing, breakaway, safety',
      'ripped, out, pulled, snapped, broke, cut, lost, dragging, off, frayed, missing',
    ],
    within: 12,
  },
  {
    kind: 'brakes',
    lists: [
      'cable, wire, lanyard',
      'pin, plunger',
      'came out, pulled out, popped out, pulled, cut, lost, snapped, broke, dragging, missing, off, frayed',
    ],
    within: 12,
  },
  {
    kind: 'brakes',
    lists: [
      'breakaway, break away, emergency cable, breakaway cable, breakaway switch, lanyard, brake away, emergency brake',
      `snap, snapped, broke, broken, frayed, fray, pulled, pull, drag, dragging, missing, gone, lost, dead, test, wont, not, doesnt, didnt, no, came, cut, rusted, stretched, corroded, hanging, out, popped, short, tape, zip tie, loop`,
    ],
    within: 8,
  },
  {
    kind: 'coupling',
    lists: [
      'chain, chains, safety chain, safety cable',
      `drag, dragged, dragging, broke, broken, snap, snapped, lost, missing, loose, came off, come off, hanging, short, scrape, scraping, spark, sparks, gone, rusted, worn, wore, wore through, worn through, popped, ground, forgot, link, stretched, ground down, unhooked, opened, open, bent`,
    ],
    within: 7,
  },
  {
    kind: 'coupling',
    lists: [joint, jointStates],
    within: 7,
    unless:
      'awning, bike rack, drop hitch, drop shank, picture, window frame, door frame, bed frame',
  },
  {
    kind: 'coupling',
    lists: [
      'came unhitched, come unhitched, unhitched itself, came unhooked, popped off, jumped off, came off ball, came off * ball, off hitch, off ball, lost trailer, trailer came off',
    ],
    within: 1,
  },
  {
    kind: 'sway',
    lists: [
      `sway, swaying, sways, swayin, fishtail, fishtails, fish tail, whip, whipping, wag, wags, wagging, all over road, all over lane, all over place, dance, dancing, swing, swinging, squirrely, squirrelly, snake, snaking, weave, weaving,
      pushed around, wander, drifts, side to side, back and forth, wiggle, wiggling, wallow, rocking, bounce, porpoise, porpoising, oscillate, oscillates, oscillating, passed us, pass us, passing us, hula, shimmy, shimmies, jiggle, waltz, sashay, swish, swerve, swerving, swim, swims, boogie, wanders, wandering, wags dog, pass us`,
      `now, moment, currently, downhill, every hill, worse, interstate, highway, freeway, wind came up, white as sheet, rn, right now, as we speak, passenger, scared, scary, terrified, shaking, lost control, control, almost, nearly, close call, ditch, jackknife,
      jack knife, pulled over, shoulder, exit, rest stop, rest area, hands, knuckle, wife driving, husband driving, truck goes by, every truck, white knuckle, out of nowhere, violent, violently, guardrail, other lane, speeding, faster, hill, mph, wheels came off`,
    ],
    within: 18,
    unless: 'sway bar, sway control, anti sway, sway bars, music, swing arm',
  },
  // The hands feel it at the wheel before anybody calls it by its name.
  {
    kind: 'sway',
    lists: [
      'steering, steering wheel, front wheels, front end, front tires, truck, trailer, camper, rear, rear end, back end, it',
      'light as feather, feels light, floats, floaty, floating, light, vague, numb, loose, wanders, wandering, hunts, hunting, hydroplane, slides around, skates, skating, hardly touch, dance, dances, dancing, slow dance, wags, wagged, follows left, follows bit, crabs, crabbing, crab, tracks, tugs, tugging, yanks, jerks, steps out, kicks out, whips, pulls truck, drags us, tried to pass, sucks us, sucked, moves over, lane, aim, fight, fighting, wrestle, wrestling, correcting, counter steer, own idea, own mind, mind of own',
      'trailer, camper, mph, now, idea, mind, highway, interstate, bridge, semi, wind, curve, corner, bumps, hold on, hands, curb, hit, loaded, hooked up, hitched, behind, 55, 58, 60, 62, 65, 68, 70, 75',
    ],
    within: 12,
    told: true,
    unless:
      'sway bar, sway control, light truck, light trailer, light weight, brake light, tail light, lights, light rain',
  },
  // What is said of it by how much of the road it takes, and who goes along.
  {
    kind: 'sway',
    lists: [
      'trailer, camper, rig, it, truck, tail, back end, rear end',
      'takes whole lane, takes the whole lane, whole lane, whole road, both lanes, two lanes, takes truck with it, truck goes with it, takes us with it, pulls us along, wants to pass, wants to come around, tries to come around, comes around on us, shoves, shoves us, shoving, slews, slewing, yaws, hula, swims, swimming, wallows',
    ],
    within: 10,
    told: true,
    unless: 'swimming pool, swim in, swim at, swim trunks, both lanes of',
  },
  {
    kind: 'sway',
    lists: [
      'jackknife, jackknifed, into next lane, into the next lane, into ditch, jack knife, jack knifed, white knuckle, nearly rolled, almost rolled, nearly flipped, almost flipped, lost control, tail wag, tail wagging, out of control',
    ],
    within: 1,
  },
];

/** What is held up and may come down, or roll. */
export const lifted: readonly Sign[] = [
  {
    kind: 'lift',
    lists: [
      'tongue jack, jack, scissor, scissors, bottle jack, stabilizers, lumber, pile, blocks, bricks',
      'wheel off, wheels off, tire off, tires off, spare on, put spare, changed tire, changing tire, changing wheel, change tire, with trailer on, pile of, crank, back down, half inch, inch',
    ],
    within: 12,
    told: true,
  },
  {
    kind: 'lift',
    lists: [
      'jack, jacked, jacks, lift, hoist, stabilizer, stabiliser, block, blocks, stand, stands, jack stand, chock, chocks, leg, legs, landing gear, cinder, ramp, ramps, tripod, scissor, bottle jack, cribbing, board, boards, prop, propped',
      `slip, slipped, slipping, fell, fall, falls, falling, dropped, lean, leaning, sink, sinking, sank, tilt, tilted, tilting, bend, bent, buckle, buckled, buckling, collapse, collapsed, crawl, crawled, crawling, roll, rolled, rolling, kick, kicked,
      shift, shifted, crush, crushed, trapped, pinned, stuck under, under it, underneath, wobbly, wobble, wobbles, wobbling, tipped, tipping, gave way, give way, crack, cracked, split, creak, creeping, creep, sketchy, soft ground, mud, unstable, shaky, rocking, dug, lopsided`,
    ],
    within: 11,
    unless: 'tongue jack drop, lift axle, lift kit, jackknife',
  },
  {
    kind: 'lift',
    lists: [
      'trailer, camper, rig, it',
      'rolled, rolling, rolls, rolled away, roll away, slid, crept, crept feet, rolled back, creeping, moved by itself, moved on own, moves on own, drifting, tipped, tipping over, fell off, fell on, on top of, wants to roll',
    ],
    within: 6,
    unless: 'sliding door, sliding windows, sliding tanks, slide out',
  },
  {
    kind: 'lift',
    lists: [
      'under, underneath, beneath',
      'dropped, fell, slipped, moved, rocked, shifted, came down, rolled',
    ],
    within: 7,
  },
  {
    kind: 'lift',
    lists: [
      'driveway, street, hill, ramp, slope, drive, yard, lot',
      'on its own, by itself, on own, without us, by self, stopped it, caught it, got away, took off down',
    ],
    within: 10,
  },
  {
    kind: 'lift',
    lists: ['holding it up, holding trailer up, holds it up, propped up, propping it, keeps it up'],
    within: 1,
  },
  {
    kind: 'lift',
    lists: [
      'under, underneath, beneath, below',
      'jack, jacked, jacks, lifted, held up, propped, blocks, hoist, jack stands',
    ],
    within: 8,
  },
];
