import type { Sign } from './shapes';

const worry = `should i be worried, should we be worried, should i worry, should we worry, worried, worry, worries, worrying, concerned, scared, nervous, freaked, freaking, panic, panicking, dont like it, doesnt seem right,
  is that bad, is this bad, is it bad, that bad, how bad, is it normal, is that normal, is this normal, that normal, this normal, seem normal, nothing to worry, probably nothing, prob nothing, prolly nothing, likely nothing, maybe nothing, no biggie, not biggie, no big deal, not big deal, overreacting,
  paranoid, safe to, still safe, is it safe, is that safe, are we safe, unsafe, ok to keep, okay to keep, fine to keep, alright to keep, can we keep, can i keep, keep driving, keep going, keep towing, keep using, keep running, keep rolling, drive on, drive home, driving home, tow home, tow it home, make it home, get home, limp,
  risk it, wait till, wait until, wait til, hold off, can it wait, can this wait, go back in, sleep in it, sleep there, stay in it, leave it on, dangerous, danger, hazard, emergency, urgent, asap, ignore, live with, shrug, says its fine, says its nothing, says relax,
  thinks its fine, not sure if, no rush, whenever, when you get chance, btw, big deal, wont hurt, get by, get away with, finish trip, rest of trip, driving on, rolls fine, rolling fine, still works, still holds, still runs, works great, works fine, no issue, no problem, fine tho, fine though, just fine, runs fine, tows fine, so far, miles so far, to go, leaving in, leaving at, getting by, for now, we take turns, blaming, figure fine, figure its fine, says new ones, new ones do, if that matters, if it matters, funny thing, all good, worse every, gets worse, getting worse, every time, whenever, once in while, now and then, all summer, since yesterday, since sunday, push on, press on`;
const trouble = `smell, stink, whiff, noise, clunk, bang, knock, thump, thud, grind, grinding, squeal, scrape, scraping, pop, popping, hum, hiss, whistle, vibrate, vibration, shake, shaking, shudder, wobble, wobbly, wiggle, loose, leaning, crooked, bent, crack, cracked, split,
  broken, snapped, torn, frayed, fell off, too hot, toasty, melted, melty, brown, browned, black, drip, dripping, bubble, bulge, lump, swollen, puffy, smoke, smoky, spark, shock, tingle, tingly, zap, buzz, flicker, alarm, beep, chirp, headache, sick, dizzy, mushy, spongy, drag,
  dragging, weird noise, weird smell, funny noise, funny smell, glow, soot, sway, fishtail, slipped, rolled, rust hole, sizzle, crackle`;

const makeshift =
  'bungee, zip tie, zip tied, zip ties, duct tape, duct taped, duck tape, coat hanger, baling wire, rope, ratchet strap, dog lead, dog leash, jb weld, epoxy, c clamp, vise grip, vice grip, tied up, tied it, tied on, taped up, taped over, wired shut, wired it, towel over, jammed in, wedged';
const parts =
  'coupler, latch, hitch, chain, chains, pin, brake, brakes, hub, axle, spring, shackle, cable, tire, gas, propane, regulator, hose, outlet, plug, breaker, panel, battery, jack, frame, safety, ball, wheel, tongue, valve, vent, receiver, lug';

const things =
  'ceiling, floor, wall, panel, exhaust, exhaust pipe, pigtail, regulator, hose, pole, fridge, furnace, water heater, tread, leaf, spring, jaws, axle, hub, wheel, tire, coupler, hitch, chain, brake, brakes, frame, tongue, jack, stabilizer, plug, outlet, cord, breaker, pedestal, battery, inverter, converter, propane, stove, oven, heater, light, switch';
const states =
  'hot and, brown, scorched, smoking, burnt, melted, frosty, pried, pry, pliers, came away, came apart, coming apart, ripped, ripped out, ripped off, tore, snapped, sheared, slit, fell off, fell out, falling off, fallen off, by itself, by themselves, on its own, drops to nothing, blew up, blew off, buckled, gave way, gave out, two pieces, half off, hanging by, hanging off, dangling, dragging';

/** Whatever it is: somebody doubts whether it is safe, or stands at the side of the road. */
export const doubt: readonly Sign[] = [
  { kind: 'doubt', lists: [makeshift, parts], within: 12 },
  { kind: 'doubt', lists: [things, states], within: 9 },
  { kind: 'doubt', lists: [worry, trouble], within: 30 },
  {
    kind: 'doubt',
    lists: [
      `pulled over, pulling over, on shoulder, shoulder of, side of road, side of highway, side of hwy, roadside, stranded, broke down, broken down, breakdown lane, tow truck, mile marker, flashers, hazards on, emergency lane, had to stop on, evacuate, evacuated, get out, got everyone out,
      everybody out, got kids out, outside in pajamas, standing outside, go back in, back inside, mayday, help asap, help now, need help now, please hurry, urgent`,
    ],
    within: 1,
    unless: 'get out of, pulled over by',
  },
];
