/**
 * How people ask about each topic, in voices of our own making: short, long-winded, with the words of a
 * text message. A topic’s data says what things are called; here stands what is wanted of them. An id
 * that no topic has is none.
 */
export const askings: Readonly<Record<string, readonly string[]>> = {
  'tow-fit': [
    'fifth wheel pin weight, what may sit on the pin, pin against the sticker, hitch in the bed weighs, three of us and the pin, sticker and people and pin fine, a 5th wheel and my payload sticker',
    'can my truck pull it, can my wagon tow this trailer, will my suv handle it, is it too much trailer for my truck, max tow rating, tow capacity',
    'enough payload for the tongue and the kids, door sticker payload left over, over payload, what is the biggest trailer I can pull, how heavy a trailer',
    'is my hitch rated for it, ball rated, receiver sticker, hitch class, gvwr of the trailer against my tow rating, gcwr combined rating, rated 5000 with 500 on the tongue',
    'what will it pull, what can I pull with, half ton with a 28 footer, good to go on weight, are we within the numbers, do the numbers work',
  ],
  'hitch-setup': [
    'how much drop do I need, which drop mount, what rise or drop do I order, receiver height and coupler height, nose high, nose down, level the trailer behind the truck',
    'how stiff a bar set, which bars, spring bars too stiff, tongue for a weight distribution hitch, how many links, head tilt, chain links, set the bars',
    'measure the ball height, ball height, sits nose up with the new truck',
  ],
  'weigh-in': [
    'here is my scale ticket, weighed at the truck stop, three passes, front drive and trailer axle, steer axle lost weight, are my bars set right by the scale',
    'weighed wheel by wheel, left and right side, one side heavier, tongue on the bathroom scale, what does my ticket say, did the front axle come back',
    'reading a scale ticket, tight slack alone, with bars and without',
  ],
  sway: [
    'feels like a dog shaking itself, shakes the truck on the downhill, still wiggles over sixty, nose is level and it still wiggles, since the spare went on the bumper it moves about',
    'trailer sways, wags, wiggles, wanders at highway speed, white knuckle when trucks pass, unstable, tail wagging the dog, is it tongue weight',
    'too windy to tow, gusts forecast, crosswind, how much wind is too much, dont tow in the wind, sway control or bars for wiggle, gets squirrelly since the rack went on the rear',
    'is a tongue of ten percent too little for crosswinds, short wheelbase with a long trailer',
  ],
  tires: [
    'what tire pressure, psi to run, cold pressure, sidewall max, load range, date code on tires, how old is too old for tires, tires look new but aged',
    'load index, ST or LT tires, passenger tires on a trailer, speed rating, do the tires carry it, swap for a higher load range, tire capacity',
  ],
  'house-battery': [
    'will six gauge do for forty feet one way at twelve volts, gauge for the amps or will it melt, batts at percent and it is only nine',
    'my batts at forty percent are we toast, batt says volts, is the batt dead, is it dead, charger on one hundred percent right',
    'battery at 12.2 is that half, how full is my battery, batt percent, dead battery at this voltage, is it bad to go below fifty percent, monitor says forty percent',
    'how long will the battery run the furnace, the cpap all night, amp hours left, what inverter can it run, which wire gauge for the run, which fuse, voltage drop, twelve volt wire',
    'charge lithium below freezing, lead or lithium, two six volts in series how many amp hours, solar enough to refill, how many watts of solar, batteries drained by morning, charger set for lithium, does the furnace drain my battery, read the voltage at rest, unplugged all night how full',
  ],
  'off-grid-stay': [
    'how many days can we stay, boondock, dry camp, without hookups, water lasts, gray tank full first, gallons a day, four people a week without hookup',
    'what runs out first, stretch the water, fresh tank and gray tank for a long weekend, any tricks to make the gray last',
  ],
  'gas-supply': [
    'how long does a twenty pound cylinder last, propane left in the tank, how much propane do I use, weigh the bottle tare, is my cylinder too old to fill, recertify the cylinder, overfill, eighty percent',
    'can the regulator feed the furnace and grill, low pressure port for a grill, furnace for three nights on two tanks, extend a stay, T for the hose',
    'how much gas do we burn at night with the furnace, furnace propane per night',
  ],
  'shore-power': [
    'two acs on thirty amp service, 2 acs on its 30a service, which amp service do I want with one ac, run both acs, only one ac',
    'can I run the ac and microwave on thirty amps, breaker at the pedestal trips, dogbone adapter, plug into a house outlet, fifteen amp outlet, extension cord long enough, how thick a cord',
    'fifty amp trailer on thirty amp, two air conditioners on one service, low voltage at the park, surge protector, generator big enough for the air conditioner, cord gets warm coiled up, thirty or fifty amp do I want',
  ],
  'cold-weather': [
    'will the pipes freeze, how cold can we go, freeze tonight, winter camping, heated tanks enough, what to do before winter so lines dont freeze, antifreeze pink stuff, drain the water heater',
    'condensation on the windows, keep warm at fifteen degrees, leave the furnace on while away, skirt it, stove for heat overnight, below zero camping',
  ],
  retrofit: [
    'I would like to hang, want to hang, would like to fit, like to fit a second, want to mount, would like to mount, wants it on the front, add it to the back, fit one more, can it be fitted, feasible to fit, how much does a rack take off the tongue, owner fit',
    'can I add a rack to the back, install solar on the roof, put a second air conditioner on, mount a generator on the tongue, bike rack on the bumper, bolt a box on the A-frame, swap in lithium, upgrade the axle',
    'cargo box behind the axle how far, hang bicycles, tv mount on the wall, washer, bigger fridge, does it void the warranty, can I fit it myself or a licensed person, add an outlet, put a bidet in, drop in a lithium battery where the lead one was, ebikes',
  ],
  'options-fit': [
    'is it standard or optional, comes with fifty amps, can it be had with, does the model have heated tanks, which year got, option package, both options together, available from the factory, which plan has twin beds, is there a version without slides, was optional now standard',
    'which floor plan has bunks, when did it become standard, can I order it with, what does the option add in weight',
  ],
  'used-trailer': [
    'wants to buy a used one with stains on the ceiling, bubbles under the window, rusty frame with holes, found an old one cheap, what should they look at first on a used one, ceiling is stained used',
    'looking at a used one, private sale, soft floor, is it worth asking price, what to check before buying used, salvage title, delamination, water damage, rust on the frame used, haggle, walk away, run from it, ten years old asking, found one for sale old',
  ],
  'body-repair': [
    'crack in the fiberglass, dent in the aluminum, hail damage to the roof, should I claim or pay myself, deductible, scratch, branch tore the side, awning torn off by storm claim, panel replaced or patched, shop quote, totaled, body damage estimate',
  ],
  'service-triage': [
    'something broke, what do I do first, who fixes it, can it wait, is it safe to use till fixed, under warranty or not, stuck slide, awning will not close, leak under the sink, water heater will not light, brakes do nothing, bearings who does those and how often, bent my coupler, needs a repair on the road',
  ],
  'spares-kit': [
    'what spares to carry, tools in the truck, which tools to bring, breakdown kit, what do I need to change a wheel on the road, jack and lug wrench, long trip list of parts, spare bearings, what tools belong in the tow vehicle, proper kit for two axles',
  ],
  'theft-deterrence': [
    'keep it from being stolen, which locks, coupler lock enough, wheel clamp, stolen from the driveway what would have stopped them, storage lot theft, insurance wants locks, chain it up, tracker, how easy is it to steal, lock on the coupler at a campsite',
  ],
  'towed-car': [
    'tow a car behind the motorhome, flat tow, four down, dinghy, tow dolly, tow bar rating, does the towed car need brakes, can my automatic be flat towed, motorhome tow limit with a car, car behind the coach, hatchback on a dolly',
  ],
  'truck-camper': [
    'camper says on its label, the camper label and my truck sticker, bed is inside six foot nine, camper in kilograms on my truck',
    'truck bed camper, slide in camper, will the camper fit my bed, center of gravity of the camper, camper wet weight against payload sticker, tailgate off, tie downs, one ton truck with a camper in the bed, used camper with water in the bed, camper on the label of payload, six foot bed',
  ],
  'electric-tow-range': [
    'mpg with a trailer, miles to the gallon over the pass, eats gas, fuel economy towing, pulling cuts the mpg in half, is my truck cooked, range on a tank',
    'electric truck towing range, how far on a charge with a trailer, kwh per mile towing, charging stops with the trailer, battery pack at twenty percent, range in the cold uphill, plug in hybrid towing miles, how many charging stops to the coast',
  ],
  elsewhere: [
    'drive with the propane on, fridge on propane while driving, leave the fridge running on the ferry, propane through the tunnel, refrigerator on gas going down the road, is it allowed',
    'we had a cold snap last year, first camper burned, one that talks or flashes, do you weigh them here, wants to know if we do that, is it safe for the kids to sleep there',
    'are you hiring, opening for a technician, internship, want to work with you, apply',
    'where is my order, has it shipped, it was promised for May, status of our order, when will it be ready, order placed in spring, not heard back, who can tell me where it stands',
    'dropping it off Thursday, move the appointment, come by at nine, running behind, the pickup is at noon, can you hold it, in the area on Tuesday',
    'is he still with you, the salesman who helped us, tell her thanks, brought cookies, kind people, five stars, bad review, never coming back, complaint, manager please',
    'invoice twice, charged twice, receipt, refund for the deposit, credit card, payment plan, monthly payment, interest rate, down payment, pay cash, payoff',
    'trade mine in, what is mine worth, buy it from me, sell on commission, want to sell my trailer, take a boat in trade, someone wants a call about one he has to trade',
    'registration papers, title not here yet, license plate, sales tax, driving license, bill of sale, insurance papers, inspection sticker',
    'part number for the latch, do you stock the knob, sell me just the ladder, need a new cushion, replacement glass, screen door spring, tap cartridge, where to get the decal, cover for the spare, paint code, mattress size',
    'do you sell hats, gift card, catalog by mail, brochure, newsletter, unsubscribe, wrong address, poster, stickers',
    'lost property, left my glasses, found a dog, lost the key, gate code, restroom, wifi password, coffee',
    'what is the speed limit with a trailer, is the road closed, is the pass open, which campground, reserve a site, pets allowed at the campground, which lake, festival, parade, fair, pond site, rally spots, potluck recipe',
    'love the video, what song was that, who edits, please cover toilets, next episode, live stream, podcast, your hair, that shirt, funniest one yet, algorithm, subscribed, greetings from abroad, first comment',
    'we met at your open house, our first camper, when my father was young, story about grandpa, back in 1974, remember the old ones, still have ours, nobody believes me, just wanted to say',
    'what does the abbreviation stand for, how do you say it, who invented it, how is it made, factory tour, where are they built, how old is your company, who owns you, school visit, thesis, novel, newspaper',
    'how do I clean the awning, get marker off the wall, stain on the sofa, smell in the cushions, mouse in the cabinet, ants, wax the outside, squeaky bed, hard water spots, sticky drawer, curtains',
    'which is prettier, cheaper brand, your opinion of the color, favorite model, low step for old knees, headroom for tall people, room for the cat, crib, a door that a toddler cannot open, big windows, quiet furnace, reading lamps, bathtub, double sink, dishwasher, closet',
    'do you rent, lend, tow it for me, deliver to another state, pick mine up, ship parts, storage at your lot per month, wash it for me, winter storage price, park it at yours',
    'how do I back it up, parking lessons, driving course, do you teach towing, first time nervous, level from side to side on a slope, how do I hitch alone, how do you turn on the oven, where is the switch for the lights, how do I set the clock, reset the radio, pair the speaker',
    'cell signal, internet, satellite, antenna, tv channels, radio, remote control',
    'build a bigger one, please make one with, will you bring back, new model next year, confirm the model year, lead time, factory shutdown, delivery weeks, announcement, rumors',
    'gas prices, weather nice today, politics, traffic, holidays, happy birthday, good luck, lol, test, ignore this, wrong chat, sent by mistake, hello, anyone there, ok, thanks again',
  ],
};
