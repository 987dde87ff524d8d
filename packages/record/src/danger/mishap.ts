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
      'coming, rising, rose, warning, watch, now, right now, tonight, tonite, fell, down, on top, on roof, touching, touched, touches, leaning, struck, hit, inches from, getting close, close, smoke, evacuate, rocking, tipping',
    ],
    within: 8,
    told: true,
    unless: 'gas station, claim, claims, insurance, shop, deductible',
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
  // What flew open, or off, while it was rolling.
  {
    kind: 'doubt',
    lists: [
      'door, hatch, window, awning, slide, slideout, step, steps, bike, bikes, bike rack, ladder, roof vent, vent lid, cover, panel, tarp, spare, spare tire, tailgate, load, mattress, kayak, stinger, bunk, shelf, cabinet, tv, fridge door',
      'flew open, flew off, flew out, flew up, came open, comes open, swings open, swung open, opened while, opens while, unrolled, unrolling, came out while, creeps out, creeping out, slid out, dragging, drags, hanging, hanging off, hanging by, flapping, fell on, fell off, fell onto, fell out, collapsed, gave way, came down, came loose, on highway, on road, on freeway, into road, behind me',
    ],
    within: 8,
    told: true,
  },
];
