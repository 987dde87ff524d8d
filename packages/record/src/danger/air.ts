import { listed, type Sign } from './shapes';

const smells = `smell, smelled, smelt, smelly, stink, stank, stinky, reek, odor, odour, whiff, stench, sniff,
  fume, aroma, funk, nose, nostrils, pong`;
const gases =
  'gas, propane, propain, propaine, lp, lpg, egg, sulfur, sulphur, skunk, ammonia, mercaptan, garlic';
const burners = `stove, oven, range, burner, cooktop, cook top, furnace, water heater, heater, grill,
  griddle, pilot, fridge, refrigerator, reefer, icebox`;
const supply =
  'propane, propain, gas, lp, regulator, cylinder, propane tank, gas bottle, gas line, propane bottle';
const alarms = `alarm, alrm, detector, sensor, co thing, co2 thing, monoxide thing, gas thing, smoke thing,
  box on wall, box by floor, box near floor, thing on wall, thing by floor, thing near floor,
  thing on ceiling, thing on * wall, thing by * floor, thing by bed, white box, little box, white disk, white disc, round thing, round white, puck`;
const sounds = `beep, beeping, chirp, peep, screech, scream, shriek, blare, cheep, tweet, bleep, quack, hoot, nuts, crazy, sing, talk, buzz, yell, holler, squawk, wail,
  whoop, ring, shrill, ping, siren, go off, goes off, went off, going off, gone off, goin off, set off,
  sounding, red, flash, blink, wont quit, wont stop, wont shut up, four short, short ones, four times, three times, went nuts`;

/** What people breathe: gas, carbon monoxide, and what it does to them. */
export const air: readonly Sign[] = [
  { kind: 'gas', lists: [smells, gases], within: 10 },
  { kind: 'gas', lists: [smells, listed(burners, supply, 'tank, bottle, compartment')], within: 9 },
  {
    kind: 'gas',
    lists: [
      'rotten egg, sulfury, relief valve, knob open, bad egg, egg smell, cat pee, cat piss, rotten cabbage',
    ],
    within: 1,
  },
  {
    kind: 'gas',
    lists: [
      smells,
      `headache, dizzy, sick, weird, funny, strange, odd, off, bad, chemical, sour, stings, wrinkle, curl, pee, urine, onion,
      cabbage, sweet, nose, eyes, throat, something, every time, whenever`,
    ],
    within: 8,
  },
  {
    kind: 'gas',
    lists: ['leak, leaky, hiss, whistle, escape, seep, bubble, spew, vent', supply],
    within: 8,
  },
  { kind: 'gas', lists: ['hiss'], within: 1 },
  // Filled past what it may hold, or past its years.
  {
    kind: 'gas',
    lists: [
      'cylinder, cylinders, propane bottle, propane tank, propane, bottle, bottles',
      'past little screw, past screw, to brim, too full, overfull, 100 percent, all way full, all the way full, in sun, in trunk, in back seat, in car, in tent, inside, on its side, upside down, laying down, lying down, rusty, rusted, dented, dent, expired, outdated, out of date, old, from 19, from 1998, without valve, dropped, cold, frosted, frosty, ice',
    ],
    within: 9,
    told: true,
    unless: 'how cold, cold weather, old tanks',
  },
  {
    kind: 'gas',
    lists: [
      'propane, gas, cylinder, gas bottle, propane bottle, lb bottle, tank, regulator',
      'spit, spits, spitting, overfill, overfilled, brim, weep, weeps, fell over, tipped over, blows off, chewed, gnawed, spew',
    ],
    within: 9,
  },
  {
    kind: 'gas',
    lists: [
      'exhaust, vent, flue, chimney',
      'covered, buried, blocked, snow, tarp, plugged up, clogged, nest, fell off',
    ],
    within: 8,
  },
  {
    kind: 'alarm',
    lists: [
      'alarm, detector, beeper, sensor, co',
      'unplug, unplugged, pulled, yanked, took out, disconnected, disconnect, taped, removed, nags, silenced, outside',
    ],
    within: 8,
  },
  {
    kind: 'alarm',
    lists: [
      'eyes, eye, throat',
      'teary, tears, tear, water, watery, burn, sting, stings, itch, red, scratchy, raw',
    ],
    within: 5,
  },
  {
    kind: 'gas',
    lists: ['tank, bottle, valve, hose, line, fitting', 'hiss, soap, bubble'],
    within: 8,
  },
  {
    kind: 'gas',
    lists: [
      listed(supply, 'burner, stove, knob, oven, valve'),
      `wont shut, wont close, wont turn, cant shut, cant close, cant turn, stuck open, left on,
      left open, bumped on, was on, been on, on all night, still on`,
    ],
    within: 7,
  },
  // The cooker for warmth, and whatever else burns in a closed room.
  {
    kind: 'gas',
    lists: [
      `stove, burner, oven, grill, griddle, charcoal, hibachi, camp stove, camp heater, buddy heater, tent heater,
      catalytic heater, propane heater, portable heater, kerosene, radiant heater, coals, brazier, lantern,
      fire bowl, little heater`,
      `heat, warm, overnight, all night, night, sleep, asleep, inside, warmth, floor, bed, bedtime, window, crack, vent, chilly, cold,
      take chill, toasty, keep us`,
    ],
    within: 14,
    unless: 'range hood, smoke',
  },
  {
    kind: 'gas',
    lists: [
      'generator, genny, gennie, genset, exhaust, tailpipe, idling, engine running, truck running',
      `inside, window, bedroom, asleep, sleep, fume, smell, bed, headache, under trailer, under camper,
      underneath, next to, beside, vent, closed, overnight, all night`,
    ],
    within: 12,
  },
  {
    kind: 'gas',
    lists: [
      'yellow, orange, soot, sooty, lazy, black, flicker, roar, whoosh, puff, boom, jump, float',
      'flame, burner, furnace, pilot, stove, water heater, exhaust, vent',
    ],
    within: 8,
  },
  {
    kind: 'gas',
    lists: [
      'whump, whomp, woof, boof, whoomp, whoomph, poof, bang, boom, thump, kaboom, pop, explode, fireball, eyebrow',
      'light, lit, lights, lighting, ignite, ignites, heater, furnace, oven, stove, burner, catch, fridge',
    ],
    within: 9,
  },
  // Whoever shuts the air out for warmth keeps in what the fire leaves.
  {
    kind: 'gas',
    lists: [
      'vent, vents, window, windows, fan, flue',
      'shut, closed, tape, taped, stuff, stuffed, stuffy, cover, covered, block, blocked, foam, rag, sealed, cardboard, foil, plastic, over',
      'warm, warmth, cold, heater, furnace, stove, buddy, winter, draft, sleepy, stuffy, heat, generator',
    ],
    within: 18,
  },
  {
    kind: 'gas',
    lists: [
      'yellow powder, yellow dust, yellow stain, yellow residue, yellow crust, yellow stuff',
      'fridge, refrigerator, cooling, absorption',
    ],
    within: 12,
  },
  {
    kind: 'gas',
    lists: [
      'propane, gas, tank, bottle, cylinder',
      'drops, empties, disappears, vanishes, gone, empty, nothing',
      'everything off, all off, all of it off, nothing on, nothing running, turned off, only fridge, only with fridge, fridge alone, after one day, after two days, after day, in one day',
    ],
    within: 16,
  },
  {
    kind: 'gas',
    lists: ['gas, propane, stove, fill, filling, fueling, pump', 'whoosh, flash, flare, fire'],
    within: 8,
  },
  {
    kind: 'alarm',
    lists: [
      'co, carbon, ppm',
      'ppm, reads, read, says, said, shows, showed, level, levels, number, numbers, screen, unit, feel, sick',
    ],
    within: 8,
  },
  {
    kind: 'gas',
    lists: ['fireball, eyebrows, singe, eyebrow, boom, explode, explosion'],
    within: 1,
  },
  { kind: 'alarm', lists: [alarms, sounds], within: 10 },
  {
    kind: 'alarm',
    lists: [
      'thing, thingy, box, gadget, gizmo, doodad, unit, button, puck, disc, contraption, device',
      'wall, floor, ceiling, bed, baseboard, dinette, hallway, sofa, couch, fridge',
      sounds,
    ],
    within: 14,
  },
  {
    kind: 'alarm',
    lists: [listed('co, smoke, gas, propane, lp', 'carbon, monoxide'), 'alarm, detector, sensor'],
    within: 4,
    mention: true,
  },
  {
    kind: 'alarm',
    lists: ['alarm, detector'],
    within: 1,
    mention: true,
    unless: 'car alarm, alarm fuse, alarm clock, car',
  },
  {
    kind: 'alarm',
    lists: ['monoxide, chirp, cheep, screech, shriek, blare, siren, bleep'],
    within: 1,
    mention: true,
  },
  {
    kind: 'alarm',
    lists: [
      `beep, peep, scream, squawk`,
      `floor, wall, ceiling, night, minute, seconds, bed, kids, stop, nonstop, constant, all day, every, stove,
      furnace, heater, unplug, battery, quiet, quit, shut up, inside, camper, trailer, twice, times`,
    ],
    within: 12,
  },
];

/** What somebody feels who is in danger already. */
export const ill: readonly Sign[] = [
  // What is in the air is left behind at the door.
  {
    kind: 'alarm',
    lists: [
      'better, fine, clears, cleared, goes away, went away, gone, ok again, okay again, perks up, perk up, wakes up, all right, lifts, headache, sleepy, groggy, tired',
      'outside, outdoors, fresh air, go out, get out, step out, stepped out, went out, leave camper, leave trailer, out in, open air, out of camper, out of trailer, air out, aired out',
    ],
    within: 8,
    told: true,
  },
  // Whoever is small is the first to feel it.
  {
    kind: 'alarm',
    lists: [
      'canary, bird, budgie, parakeet, parrot, hamster, cat, dog, puppy, baby, toddler, infant, newborn',
      'bottom of cage, bottom of, floor of cage, limp, listless, dead, died, wont wake, wont move, wont get up, hardly moves, panting, drooling, staggers, staggering, wobbly, falls over, fell over, throwing up, sneezing, coughing, gasping, fussy, crying, wont settle, whining, acting, quiet, lies',
      'heater, furnace, stove, inside, camper, trailer, gas, propane, generator, lit, night, cage, vent',
    ],
    within: 14,
    told: true,
  },
  {
    kind: 'alarm',
    lists: [
      'nap, naps, slept, sleep, sleeping, sleeps, wake, woke, waking, yawning, yawn, drowsy, foggy, fog',
      'double, hours, heater, furnace, stove, low, generator, heavy, cant get, hard to, through alarm, in trailer, in camper, every morning, still',
      'furnace, stove, heater, generator, propane, burner, everyone, all of us, we all, head, heads, trailer, camper',
    ],
    within: 12,
    told: true,
  },
  {
    kind: 'alarm',
    lists: [
      `headache, head hurts, head ache, head aches, head pounding, pounding head, splitting head, dizzy, dizziness,
      lightheaded, light headed, woozy, nausea, nauseous, nauseated, queasy, throw up, threw up, throwing up, thrown up,
      puke, vomit, barf, fainted, faint, passed out, pass out, unconscious, unresponsive, wont wake, cant wake, hard to wake,
      groggy, drowsy, cant breathe, short of breath, hard to breathe, catch breath, eyes burn, eyes water, eyes sting,
      burns eyes, stings eyes, sting eyes, burn eyes, watery eyes, itchy eyes, ambulance, 911, 9 1 1, hospital, paramedic,
      poison, fuzzy headed, foggy headed, head feels, head splitting, head * splitting, head * been splitting, splitting head, head swims, head spinning, hard to get up, hard to rouse, pukey, stomach, hungover, hangover, lethargic, stupor, staggering, listless, knocked out, zonked, out cold, heavy head, heavy heads, came out green, turned green, looks green, gray in face, white as sheet, blue lips, sees double, seeing double, saw double, double vision, blurry, blurred vision, cant think straight, slurring, slurred, mumbling, legs like, rubber legs, jelly legs, cherry red, pink cheeks, red cheeks, racing heart, heart racing, heart pounding, chest hurts, chest pain, tight chest, chest tight, ears ringing, ringing in ears, taste of pennies, taste of metal, tastes like pennies, metal taste, metallic taste, taste pennies, taste metal, bleeding, concussion, cough, coughing, sluggish`,
    ],
    within: 1,
    unless: 'such headache, real headache, hitch headache, paperwork',
  },
  {
    kind: 'alarm',
    lists: [
      'sick, ill, funny, off, weird, rough, terrible, crummy, lousy, awful, tired, sleepy, drowsy, dopey, flushed, pale, red, limp, strange, wobbly, confused, loopy',
      `feel, feels, felt, feeling, woke, wake, waking, everyone, everybody, kids, wife, husband, baby, dog, cat, mother, mom, dad, grandma, grandpa, bird, parakeet, they all, we all,
      acting, all of us, both of us, getting, got`,
    ],
    within: 4,
    unless: 'sick of, tired of, get off, got off, takes off, took off, dropped off',
  },
  {
    kind: 'heat',
    lists: [
      'burn, burned, burnt, blister, scald, hurt',
      'hand, finger, arm, palm, thumb, leg, myself, himself, herself',
    ],
    within: 4,
  },
];
