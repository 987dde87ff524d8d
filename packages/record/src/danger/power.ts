import type { Sign } from './shapes';

const electrics = `plug, cord, adapter, adaptor, dogbone, dog bone, pigtail, outlet, receptacle, socket, pedestal,
  breaker, panel, fuse, wire, wiring, converter, inverter, charger, terminal, connector, inlet, cable, extension,
  switch, surge protector, surge thing, twist lock, prong, blade, junction box, power post, power box, post, thermostat,
  solar controller, electric heater, space heater, power strip, usb, light fixture, electrical`;
const hot = `hot, hotter, warm, warmer, warmish, feels like, feel like, toasty, heat, heating, glow, soft, gooey, toffee, gum, wax, candle, goo, taffy, cook, roast, fry, burn, burned, burnt,
  melt, melty, sizzle, crackle, sputter, fizz, buzz, hum, spark, arc, arcing, charred, scorch, singe, crispy, fried, smoke, wisp, steam, vapor, gray, grey,
  smell, smelly, stink, discolor, discolored, toast, warped, bubbled, bubbling, fused, welded, smoldering, smolder, cant touch, ouch`;
const rolling = `hub, hubcap, wheel, bearing, tire, tyre, drum, rim, axle, dust cap, grease cap, center cap, spindle, lug, brake, rotor`;
const wet = `water, wet, drip, leak, rain, flood, damp, soaked, soak, puddle, moisture, condensation, submerged, pour, sprayed, splash,
  spray, hose, snow, trickle, weep, weeps, seep, ooze, runs down, run down, running down, towel, bowl, bucket, wept, rains, rained`;

/** Higher than any outlet of 120 V may be; 240 is another kind of outlet. */
const volts = Array.from({ length: 24 }, (_, above) => `${127 + above}`).join(', ');

/** What is burning or about to, and what electricity does to whoever touches it. */
export const power: readonly Sign[] = [
  {
    kind: 'smoke',
    lists: [
      `smoke, smoking, smoky, wisp, haze, hazy, smokey, smolder, smoulder, fire, flames, ember, spark, sparking, sparky, arcing, burning,
      caught fire, singed, charred, blaze, up in flames`,
    ],
    within: 1,
    mention: true,
    unless: `smoking hot, fire pit, fire table, fire ring, fire bowl, fire ext, fire truck, fire house, straight fire, fire place, fire wood, fire extinguisher, fire sale, fire department,
      campfire, fire up, fired up, spark plug, smoke detector mount, ring of fire, smoke machine, smoke machines, smoked ribs, on fire this, smoked brisket, smoked fish, burning question, fire it, fire tables`,
  },
  {
    kind: 'smoke',
    lists: [
      'smell, stink, reek, odor, whiff, stench, smelled, smelt, fume',
      `plastic, burn, burning, burned, burnt, rubber, electrical, electric, hot, fish, fishy, wire, toast, hair, clutch,
      brake, popcorn, pennies, penny, metal, tar, scorched, solder, varnish, metallic, singed, scorched, match, campfire, matches`,
    ],
    within: 8,
  },
  {
    kind: 'heat',
    lists: [
      `crackle, crackles, crackling, melt, melty, melted, molten, scorch, burnt, overheat, fried, burn mark, burn marks, scorch mark, burn spot, blackened, char,
      charred, glowing, sizzle, sizzling`,
    ],
    within: 1,
    unless:
      'snow, ice, engine, transmission, truck, melted butter, fried chicken, fried fish, deep fried',
  },
  {
    kind: 'heat',
    lists: [electrics, hot],
    within: 9,
    unless: 'heat pump, electric heat, heat tape',
  },
  {
    kind: 'heat',
    lists: [
      'plug, prong, cord, outlet, adapter, adaptor, dogbone, receptacle, pedestal, inlet, connector, socket, blade, terminal',
      'brown, browned, browning, brownish, black, blackened, dark, darker, yellowed, yellow, discolored, tan, color, ring, mark, stuck',
    ],
    within: 8,
  },
  {
    kind: 'heat',
    lists: [
      rolling,
      `hot, hotter, heat, cooking, glow, smoke, sizzle, toasty, fry, fried, burn, burned, burnt, roast, blue, warmer,
      cant touch, cant hold, cant keep, cant put, warm, temp gun, degrees, boiling, scalding`,
    ],
    within: 11,
  },
  {
    kind: 'heat',
    lists: [
      `too hot, hot to touch, fry egg, fry * egg, cook egg, cant touch, cant hold, cant keep hand, cant keep * hand, couldnt touch, couldnt hold,
      couldnt keep, cant hold hand, cant put hand, hand off, yanked hand, warm to touch, hot to touch, warm to * touch, hot to * touch`,
    ],
    within: 1,
    unless: 'weather, summer, outside, inside, day, days',
  },
  {
    kind: 'shock',
    lists: [
      `shock, shocked, shocking, tingle, tingly, tingling, zap, zapped, zappy, electrocute, electrocuted, electrified, jolt, jolted,
      prickle, prickly, pins * needles, hot skin, electricity through, current through, feel electricity, feel current, got bit by`,
    ],
    within: 1,
    unless:
      'absorber, sticker, shock absorbers, air, shock price, culture, price, struts, springs, worn',
  },
  {
    kind: 'shock',
    lists: [
      `9 volt, 9 v battery, buzz, buzzy, buzzing, bite, bites, bit, bitten, nip, nipped, sting, stung, tickle, tickly, static, live, hum, fuzzy, funny,
      electric, current, vibrate, vibration, furry, velvety, alive, zing, zinger, poke, thrum, yelp, yelps, shy, refuse, hate, hates, afraid, scared, avoids, jumps back, spicy, cried, cries, fizz, kick, kicked, pinch, pinching, spark, numb, spicy, throw, threw, knocked, fur, hair stand, hair stood, teeth`,
      `touch, touched, touching, barefoot, bare feet, barefeet, wet shoes, 9 volt, 9 v, tongue, lean, leaned, bumper, steps, step, door handle, door frame, doorknob, grab, grabbed,
      grass, skin, hand, finger, fingers, elbow, arm, lips, ladder, bare foot, flip flops, puddle, metal, faucet, sink, dishes, paws, paw, plugged in, tap, frame, coupler, aluminum siding, siding, rail, handrail, dishwater, shower`,
    ],
    within: 12,
  },
  {
    kind: 'shock',
    lists: [
      'zing, zings, zapped, zaps, spicy, bites, bit me, nips, nipped, buzzes, buzzed, tickles, tickled, kicks, kicked, stung, stings, tingly, fizzy, tingles, numb, electric feeling, static',
      'trailer, camper, rig, park, site, campground, door, metal, outside, skin, fingers, hand, kid, kids, dog, cat',
    ],
    within: 9,
    told: true,
    unless: 'kicked tires, kick tires',
  },
  {
    kind: 'shock',
    lists: [
      wet,
      `outlet, ceiling light, light, lamp, fixture, breaker, panel, fuse, fuse box, wire, wiring, electric, electrical, electrics, converter,
      socket, plug, pedestal, inverter, power box, switch, distribution, junction, extension cord, power cord, cord end, receptacle, charger`,
    ],
    within: 14,
    unless:
      'light rain, hot water, water heater, light trailer, water pump switch, light weight, wash',
  },
  {
    kind: 'shock',
    lists: [
      'hot skin, reverse polarity, reversed polarity, open neutral, open ground, no ground, ground missing, polarity',
    ],
    within: 1,
  },
  // A bigger fuse than the wire bears.
  {
    kind: 'heat',
    lists: [
      'fuse, fuses, breaker',
      'bigger, larger, higher, foil, penny, nail, jumped, jumper, bypass, bypassed, upsized, where it said, where said, said 15, said 20, said 10, said 30, taped, tape, held in, where 15, where 20, where 10, instead of 15, instead of 20, in place of, popping so, stronger',
    ],
    within: 12,
  },
  {
    kind: 'heat',
    lists: [
      'put 15, put 20, put 25, put 30, put 40, put 50, put a 20, put a 30, put a 40, swapped, stuck 30, stuck 40, replaced, 30 in, 40 in, 30 amp, 40 amp, 25 in, bigger one, next size',
      'said 10, said 15, said 20, said 30, for 15, for 20, was 15, was 20, was 10, marked 15, marked 20, says 15, says 20, labeled 15, labeled 20, stays on, holds, no longer trips, stopped tripping, stopped blowing, no more blown',
    ],
    within: 10,
    told: true,
  },
  { kind: 'heat', lists: [volts, 'v, volt, volts, vac'], within: 2 },
  { kind: 'heat', lists: [volts, 'meter, pedestal, post, outlet, surge'], within: 6 },
  {
    kind: 'smoke',
    lists: [
      'flash, blue flash, flashed, pop, crack, snap, arc, lightning, bang',
      'plug, plugs, plugged, plugging, outlet, pole, pedestal, breaker, cord',
    ],
    within: 9,
  },
  {
    kind: 'heat',
    lists: [
      'over voltage, overvoltage, high voltage, too many volts, too much voltage, volts too high, voltage too high, voltage spike, double speed, twice speed, power surge',
    ],
    within: 1,
  },
  {
    kind: 'heat',
    lists: [
      'lights, light, bulb, lamps, led, microwave, tv, fridge, appliance, ac, air conditioner',
      `flicker, pulse, pulsing, brighter, bright, super bright, surge, exploded, explode,
      fried, blew, popped, popping, strobe, sag, sags, christmas, neighbor, neighbors, crazy, blinding, dim`,
    ],
    within: 7,
    unless: 'tail lights, brake lights, marker lights, turn signal, fuse, too bright',
  },
  {
    kind: 'heat',
    lists: [
      'battery, batteries, lithium, pack, packs, cell, lifepo4, agm',
      `swell, swelled, swollen, swole, bulge, bulging, bloat, bloated, puff, puffed, puffy, balloon, hiss, hot, warm, fizz, egg, smell, stink,
      leak, leaking, acid, boil, boiling, bubbling, bubble, gurgle, vent, venting, crack, cracked, burst, spark, smoke, warp, warped,
      rounded, fat, fatter, thicker, steam, domed, pillow, pregnant, expand, expanded, split, steaming, gassing, melt, exploded, explode`,
    ],
    within: 9,
  },
];
