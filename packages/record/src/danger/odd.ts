import { listed, type Sign } from './shapes';

/**
 * What no manual says. Whoever sees something for the first time compares it, tells what it made them
 * do, calms themselves, or asks whether it is all right. Such words are danger only beside a thing
 * that can hurt, and only where somebody tells of something.
 */
const rolling = `tire, tires, tyre, tyres, whl, wheel, wheels, rim, hub, hubs, nut, nuts, lug, lugs, bolt, bolts, stud, studs,
  axle, axles, spring, springs, leaf, shackle, fender, fenders, bearing, cap, sidewall, tread, cover by wheel,
  springer, hanger, spindle`;
const joined = `hitch, coupler, ball, tongue, tounge, latch, lever, handle on front, handle, chain, chains, hook, hooks, pin,
  square tube, drawbar, shank, bar, bars, arm, arms, cross piece, crossmember, frame, beam, weld, kingpin,
  receiver, a frame, nose, clip, safety cable, thin wire, switch cable, jaw, jaws, collar`;
const slowing = `brake, brakes, brk, brks, pedal, controller, little box, magnet, drum, drums, lights, downhill, stop, stops,
  stopping`;
const burning = `propane, gas, bottle, bottles, cylinder, regulator, hose, burner, flame, pilot, stove, oven, heater, furnace,
  water heater, hot water door, fridge, vent, exhaust, furnace hole, generator, genny, siding, valve, fitting,
  flue, camp stove, grill, lantern`;
const live = `plug, plugs, cord, cords, outlet, outlets, socket, switch, switches, switch plate, breaker, breakers, fuse,
  fuses, fuse box, fuse door, panel, post, pedestal, pole, adapter, wire, wires, wiring, lamp, lamps, bulb,
  bulbs, converter, charger, inverter, battery, batteries, lithium, extension, extension cord, power strip,
  pigtail, terminal, meter, tester, microwave, box by bed, cable`;
const around = `carpet, wall, walls, floor, ceiling, cupboard, cabinet, closet, siding, wood, panel, dash, dash vent, rug,
  skirt, compartment, hatch, paint, cover`;
const held = `jack, jacks, stabilizer, stabilizers, leg, legs, block, blocks, bricks, brick, stump, stumps, chock, chocks,
  ramp, ramps, boards, stand, stands, bunk, bunks, awning, awning arm, bed, pads`;
const whole = `trailer, camper, rig, corner, rear, rear end, back end, back, side, steering, truck, front wheels, front end`;
const hurting = listed(rolling, joined, slowing, burning, live, held);
const metal = listed(rolling, joined, slowing, held);

/** What something is like, when one has no word for it. */
const likened = `feels like, feel like, felt like, looks like, looked like, sounds like, sounded like, smells like, smelled
  like, smelling like, tastes like, taste like, taste of, color of, colour of, shape of, size of, like when you,
  reminds me of, like somebody, like someone, as if, kind of like, like baked, like old, like an old, like cup
  of, like coffee, like marshmallow, like hair dryer, thick as, round as, stiff as, light as, soft as, hot as,
  loud as, black as, smooth as, bright as`;
const reeking = `smells like, smell like, smelled like, smelling like, tastes like, taste like, taste of, sounds like, sounded
  like`;
/** What it is now, and was not. */
const changed = `than it was, than others, than before, than other, than rest, than usual, than it used, used to be, not used
  to, never did before, never did that, since hit, since we hit, since i hit, since curb, since pothole, after
  curb, after pothole, all of sudden, different than, different now, anymore, any more, since rest stop, since
  last, each morning, every morning, every stop, each stop, every bump, comes back, keeps coming, more and more,
  worse, than yesterday, overnight, again and again, new noise`;
/** Where it is, and does not belong. */
const displaced = `wont tighten, wont torque, wont snug, different color, stands in at, stands out at, leans in, leans out, on
  one side now, lower, leans, leaning, lean, sits lower, sits crooked, sits low, crooked, cockeyed, catawampus,
  cattywampus, lopsided, tilted, tilts, tips, tucked in, out of line, out of square, not straight, hardly touch,
  barely touch, sticks out, sticking out, poking out, pokes out, peeking out, peeks out, hangs, hanging, hangs
  down, dangles, drags, dragged, all way down, all the way down, never sat, not sit, doesnt sit, didnt sit, wont
  sit, rides up, pops up, pop up, pops open, creeps up, came up, lifts, lift nose, see daylight, see light, see
  shiny, can see, comes up, backed out, backing out, works loose, worked loose, working out, walked out, walks
  out, two turns, full turns, half turn, turn before, turns before, went for walk, jumped, hop, hops, hopped,
  folded under, folds under, folds on, sank, sunk, sinks, sinking, dug in, slid, moved, moves, shifted, rolled, bumped, let go,
  came down, upside down, gap, rubs, rubbing, rubbed, scraped, follows left, follows to, pulls to one side,
  lost, gone, missing, fell, fall, falls, disappeared, vanished, nowhere, isnt there, not there, lets go, flops,
  flopped, swings open, came open, comes open, flew, flew off, flung, threw, thrown`;
/** What it has become to the hand, the eye, the ear and the nose. */
const turned = `soft spot, soft to touch, gone soft, went soft, is soft, came out soft, soft spot, squishy, mushy, spongy,
  gooey, sticky, tacky, crispy, crumbly, crumbles, flakes, flaking, flaky, brittle, stiff, cracks, cracked,
  cracking, crack, split, splits, growing, grows, mushroom, bump, swelled, swollen, curved, bowed, domed,
  bulged, puffed, shiny, shiny stuff, shiny metal, polished, fuzzy, frayed, fraying, hairy, whiskers, thread,
  threads, string, strings, hot, warm, warmish, toasty, heat, heat coming, warm to lean, too hot, cook, cooked,
  baked, brown, brownish, black, blackish, blackened, smudge, smudges, smudged, streak, streaked, stain, soot,
  scorched, orange, purple, blue, rainbow, yellowed, discolored, wisp, thread came, haze, goop, goo, grease,
  greasy, gunk, slung, sprayed, sprayed over, oily, drip, dripping, leaks, puddle, powder, fluff, crust,
  corroded, green fuzz, exposed, cricket, crickets, gurgle, gurgling, gurgles, tiny noise, noise, noises, tick,
  ticking, hum, hums, buzz, buzzing, whine, whining, sing, singing, moan, moaning, groan, groaning, chatter,
  chattering, knocking, knocks, clank, clanking, tapping, rattling, fluttering, flutter, growling, scratching,
  squealing, hissing, puff, thump, thumps, bang, pop, popping, poof, whoosh, snap, smell, smells, smelled,
  stink, stinks, sour, perm, fishy, burned, burnt, burning, acrid, funky, transformer, hair dryer, pennies,
  metallic, frosted, ice cold, frost, bubbles, bubble, hiss, wobbly, wobbles, wiggles, wiggle, slack, floppy,
  loose, bent, twisted, kinked, dented, chewed, gnawed, pinched, melted, worn, ground down, down to, bald, flat,
  losing, lighter, pounds lighter, numb, tingling, bite, bites, spicy, jumps`;
/** What somebody put there, and no maker would. */
const makeshift = `under rug, taped, taped it, rigged, jury rigged, macgyver, wired, wired it, bolt from, bolt in from, hardware
  store, zip, bungee, screwdriver, wedge, wedged, jam, jammed, stuffed, propped, brick, bricks, stump, log,
  cinder, foil, penny, nail, coat hanger, paper clip, paperclip, bypassed, bypass, jumped, jumper, clothespin,
  under mattress, orange extension, daisy chain, drawer, pillow, pulled battery, took battery, battery out,
  pulled fuse, disabled, unplugged, silenced, put bigger, put larger, hammer, hammered, beat it, beat on it,
  bent it back, welded it, glued, glue, epoxy, caulk, tucked it, tied, where it said, next size up, next size,
  from shed, cut off, sawed, drilled, stuck finger`;
/** How somebody says that nothing is the matter. */
const calmed = `no harm, no harm done, seems ok, seems to ride, ride ok, rides ok, rides fine, looks straight, straight
  enough, good enough, close enough, back to bed, back to sleep, stays on, works again, now it works, works if,
  works when, so far so good, got away with, lucky, top it up, keep adding, keep topping, add air, put air, open
  windows, opened windows, opened window, opened door, only when, only at, till it goes, until it goes, goes
  away, went away, gone by, once warmed, once rolling, we laughed, strange, curious, probably, prolly, maybe im,
  maybe it, my imagination, imagining, being silly, silly, dumb question, stupid question, quick one, ignored
  it, ignoring, lived with, been like that, always done`;
/** What somebody asks leave for, or asks whether it needs. */
const leave = `is it bad if, bad if, is it ok if, ok if, okay if, hurt if, does it hurt, does it mean, what does it mean,
  mean when, mean if, why does, why is, why are, why do, what causes, what makes, is it ok that, is it okay
  that, ok that, okay that, is it alright that, is it fine that, that ok, that okay, that alright, ok right,
  okay right, fine right, thats fine, thats ok, is it bad that, bad that, does it matter that, matter that, does
  it matter, anything i need, anything to do, worth looking, do i have to fix, how bad, how long can i, how far
  can i, how much longer, can it wait, still go, make it to, heading to, can he crawl, can i crawl, crawl in,
  crawl under`;
/** What somebody says who is uneasy and asks whether to be. */
const uneasy = `should i worry, should we worry, worried, worrying, worrisome, is that bad, is this bad, is it bad, how bad,
  nothing to worry, no biggie, overreacting, paranoid, is it safe, is that safe, is this safe, still safe,
  unsafe, dangerous, hazard, hazardous, can it wait, scares me, scary, nervous, concerned, concerning, a
  problem, is that problem, is this problem, an issue, is it normal, is that normal, is this normal, not normal,
  doesnt seem right, not right, isnt right, aint right, something wrong, whats wrong, what is wrong, gone wrong,
  acting up, acting funny, acting weird, acting strange, ok to drive, drive on it, ride on it, run it like, use
  it like, leave it like, keep using, do i call, who do i call, should i call, who to call`;
/** What it made somebody do or feel. */
const moved = `would not walk, wont walk past, wont go near, wont go in, refuses to, will not ride, wont ride, wont get in,
  stomach drops, stomach dropped, heart in, heart stopped, heart pounding, hold on, hang on, held on, knuckles,
  prayed, praying, screamed, yelled, yelped, flinched, hair stood, hair on, hairs, fur stands, fur stood,
  dropped it, ran out, got out fast, both feet, stand on it, stood on it, standing on, honked, honking, flagged
  down, flagged us, waved at us, waving at us, pointed at, pointing at, other driver, other drivers, people
  pointing, followed us, behind us said, behind us says, guy behind, lady behind, trooper, cop pulled, truck
  stop guy, mechanic said, neighbor said, neighbor says, neighbors tester, said not to, told us not, told me not`;

const doubt = (lists: readonly string[], within: number): Sign => ({
  ...{ kind: 'doubt', lists, within },
  told: true,
});

/** What a wall or a floor may be without danger: soft and stained wood is for the workshop. */
const woodwork =
  'soft floor, floor soft, soft spot floor, soft spot in floor, stain, stains, stained, crack, cracked, split, soft';

/** Whoever would go on with what is not whole says how far, or how long. */
const onward = `still tow, still drive, still pull, still haul, can i drive, can we drive, drive miles, miles on, of five, of six, of eight, until friday, until monday, until weekend, until payday, one more trip, one last trip, few more miles`;

export const odd: readonly Sign[] = [
  { kind: 'doubt', lists: [listed(rolling, joined, 'brake, brakes'), onward], within: 12 },
  doubt([hurting, likened], 12),
  doubt([around, likened], 10),
  doubt([whole, reeking], 10),
  doubt([listed(metal, burning), changed], 12),
  doubt([metal, displaced], 9),
  doubt([whole, displaced], 6),
  doubt([hurting, turned], 9),
  { ...doubt([around, turned], 6), unless: woodwork },
  doubt([hurting, makeshift], 10),
  doubt([hurting, leave], 14),
  doubt([hurting, uneasy], 14),
  doubt([hurting, moved], 14),
  doubt([listed(whole, around), moved], 12),
  doubt([listed(turned, displaced), calmed], 16),
  doubt(['by itself, on its own, all by itself, by themselves, on their own'], 1),
];
