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
  thing on ceiling, thing on * wall, thing by * floor, thing by bed, white box, little box`;
const sounds = `beep, beeping, chirp, peep, screech, scream, shriek, blare, cheep, tweet, bleep, quack, hoot, nuts, crazy, sing, talk, buzz, yell, holler, squawk, wail,
  whoop, ring, shrill, ping, siren, go off, goes off, went off, going off, gone off, goin off, set off,
  sounding, red, flash, blink, wont quit, wont stop, wont shut up`;

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
      'everything off, all off, all of it off, nothing on, nothing running, turned off',
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
  {
    kind: 'alarm',
    lists: [
      `headache, head hurts, head ache, head aches, head pounding, pounding head, splitting head, dizzy, dizziness,
      lightheaded, light headed, woozy, nausea, nauseous, nauseated, queasy, throw up, threw up, throwing up, thrown up,
      puke, vomit, barf, fainted, faint, passed out, pass out, unconscious, unresponsive, wont wake, cant wake, hard to wake,
      groggy, drowsy, cant breathe, short of breath, hard to breathe, catch breath, eyes burn, eyes water, eyes sting,
      burns eyes, stings eyes, sting eyes, burn eyes, watery eyes, itchy eyes, ambulance, 911, 9 1 1, hospital, paramedic,
      poison, fuzzy headed, foggy headed, head feels, head splitting, head * splitting, head * been splitting, splitting head, head swims, head spinning, hard to get up, hard to rouse, pukey, stomach, hungover, hangover, lethargic, stupor, staggering, listless, knocked out, zonked, out cold, bleeding, concussion, cough, coughing, sluggish`,
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
