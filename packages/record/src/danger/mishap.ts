import type { Sign } from './shapes';

const people = `finger, fingers, hand, hands, thumb, foot, feet, toe, toes, leg, arm, head, back, shoulder, eye, kid, kids, child, boy, girl, son, daughter, wife, husband, grandpa, grandma, dad, mom, neighbor, he, she, me, myself, himself, herself, dog`;

/** What befell somebody, and what comes over everybody. */
export const mishaps: readonly Sign[] = [
  {
    kind: 'doubt',
    lists: [
      people,
      'crushed, pinched, caught in, caught under, trapped, stuck inside, stuck under, stuck in slide, locked in, locked inside, knocked down, knocked over, knocked him, knocked me, knocked her, came down on, fell on, fell off ladder, fell off roof, fell through, landed on, bleeding, bled, stitches, gash, broken wrist, broken arm, electrocuted, injured, got hurt, is hurt, swallowed, drank, ingested, in his eye, in my eye, in her eye, in eyes',
    ],
    within: 8,
  },
  {
    kind: 'doubt',
    lists: [
      'accident, wreck, wrecked, crashed, crash, rear ended, flipped over, rolled over, tipped over, on its side, laying on side, lying on side, in ditch, in a ditch, on tracks, railroad tracks, on bridge, in median, blocking lane, blocking road, stuck across, jackknifed, through windshield, into traffic, hit a car, hit car behind, hit somebody, other lane',
    ],
    within: 1,
    mention: true,
    told: true,
    unless: 'crash course, accident forgiveness, insurance',
  },
  {
    kind: 'doubt',
    lists: [
      'tornado, hurricane, flood, flooding, flooded, creek, river, water rising, wildfire, brush fire, lightning, mudslide, tree, branch, limb, power line, powerline, overhead wire, overhead line, high winds, gusts, storm',
      'coming, coming up, is up, up to, standing in, raining, under water, underwater, rising, rose, warning, watch, now, right now, tonight, tonite, fell, down, on top, on roof, touching, touched, touches, leaning, struck, hit, inches from, getting close, close, smoke, evacuate, rocking, tipping',
    ],
    within: 8,
    told: true,
    unless: 'gas station, claim, claims, insurance, shop, deductible',
  },
  // Water that reaches what is live.
  {
    kind: 'shock',
    lists: [
      'post, pedestal, pole, plug, plugged, cord, outlet, hookup, extension cord, power strip, adapter, generator, breaker box',
      'standing in it, standing in water, in water, in puddle, in a puddle, under water, underwater, submerged, floating, flooded, soaked, up to second step, water up to, water is up to, lake, swamp, ankle deep, knee deep',
    ],
    within: 14,
    told: true,
    unless: 'on lake, at lake, by lake, lake house, lakeside',
  },
  // What pulls is too hot, or spills what burns.
  {
    kind: 'heat',
    lists: [
      'temp gauge, temperature gauge, temp needle, needle, gauge, engine, radiator, transmission, trans, tranny, coolant, motor, engine temp, trans temp',
      'in red, into red, past red, hot, overheat, overheated, overheating, steam, steaming, boiling over, boiled over, smoke, smoking, smell, burnt, pegged, slipping, warning light, red light, climbing, 240, 250, 260, too hot',
    ],
    within: 8,
    told: true,
  },
  {
    kind: 'gas',
    lists: [
      'gasoline, fuel, diesel, gas can, gas tank, generator',
      'smell, smells, leak, leaks, leaking, drip, drips, dripping, puddle, spilled, spill, spilling, pouring, running down, soaked, refill while, refueled, hot',
    ],
    within: 8,
    told: true,
  },
  // Nobody may ride in a trailer that is towed.
  {
    kind: 'doubt',
    lists: [
      'kid, kids, children, twins, baby, babies, toddler, grandkids, grandma, grandpa, mom, dad, wife, husband, somebody, people, they, nephew, niece, teens, boys, girls',
      'in bunk, in bunks, in back, back in trailer, back in camper, in trailer, in camper, in fifth wheel, in bed, on dinette, on couch, on sofa, on bed',
      'ride, rides, riding, rode, while we drive, while driving, while i drive, while towing, while we tow, while moving, while its moving, on highway, on road, on freeway, going down road, mph, on way, nap, naps, napping',
    ],
    within: 14,
    told: true,
    unless: 'riding mower, bike, bikes, ride quality, ride height, in storage',
  },
  // What keeps somebody alive hangs on the battery.
  {
    kind: 'doubt',
    lists: [
      'oxygen, concentrator, ventilator, breathing machine, oxygen machine, cpap, bipap, apnea machine, dialysis, insulin, feeding pump, suction machine, pacemaker charger, nebulizer, medical device, medicine fridge',
      'battery, batteries, inverter, solar, generator, power, volts, volt, plug, breaker, monitor',
      'gauge says, monitor says, percent, gets low, is low, shuts off, shut off, quits, quit, beeping, dying, died, tripped, out, until morning, will it last, will it hold, last all night, hold till',
    ],
    within: 26,
    told: true,
  },
  // A step or a floor that gives way under somebody will do so again.
  {
    kind: 'doubt',
    lists: [
      'step, steps, stair, stairs, ladder, bunk, railing, handrail, grab handle',
      'folded, folded under, folds under, gave way, gives way, gave out, collapsed, collapses, let go, lets go, came off, pulled out',
      'under, foot, shin, ankle, fell, nearly, almost, every time, third time, now and then',
    ],
    within: 12,
    told: true,
    unless:
      'dinette folds, table folds, sofa folds, fold up, fold out, folds up, folds down, folds away, folds flat',
  },
  // What flew open, or off, while it was rolling.
  {
    kind: 'doubt',
    lists: [
      'door, hatch, window, awning, slide, slideout, step, steps, bike, bikes, bike rack, ladder, roof vent, vent lid, cover, panel, tarp, spare, spare tire, tailgate, load, mattress, kayak, stinger, bunk, shelf, cabinet, tv, fridge door',
      'flew open, flew off, flew out, flew up, came open, comes open, swings open, swung open, opened while, opens while, unrolled, unrolling, came out while, creeps out, creeping out, slid out, dragging, drags, hanging, hanging off, hanging by, flapping, fell on, fell off, fell onto, fell out, collapsed, gave way, came down, came loose, on highway, on road, on freeway, into road, behind me',
    ],
    within: 8,
    told: true,
    unless: 'ride bikes, ride our bikes, ride my bike, bike ride',
  },
  // Somebody is hurt, and asks for a part.
  {
    kind: 'doubt',
    lists: [
      'finger, fingers, hand, thumb, foot, toes, leg, arm, eye, head',
      'purple, crushed, smashed, pinched, bleeding, bled, points wrong, numb, swollen, blistered, cut open, burned, caught',
      'jack, tongue, coupler, hitch, ball, door, stove, jack post, wheel, chain, slide, brake, battery',
    ],
    within: 16,
    told: true,
  },
  // Whoever rides in a trailer that is towed.
  {
    kind: 'doubt',
    lists: [
      'riding, ride, rides, lying, sleeping, napping, sits',
      'in camper, in trailer, in bunk, in back of trailer, in fifth wheel',
      'home, highway, freeway, interstate, while drive, while driving, while moving, hr, hrs, hours, mi, miles, truck is full',
    ],
    within: 16,
    told: true,
    unless: 'rides level, rides nose, ride level',
  },
];
