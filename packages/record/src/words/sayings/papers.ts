import type { Sayings } from './shapes';

/** Tires, tools, damage, insurance, theft, add-ons, floor plans and buying used. */
export const paperSayings: Sayings = {
  numbers: {
    'tire.pressure': [
      '(run|running|runs|keep|kept|keep em|keep them|keep it|hold|holds|got|have|been at|air them to|aired to) [them|em] [at] #',
      '# [psi] [cold] in (it|em|them)',
      '# cold',
      'set to #',
      '(reads|sits at|lost to) # cold',
      'got # in',
      'has # in (em|them)',
    ],
    'tire.maxPressure': [
      '(sidewall|max|side of the st|side) (says|max|is|maximum) #',
      'sidewall #',
      '# (max|maximum)',
      '# on the (side|sidewall)',
    ],
    'tire.labelPressure': [
      '(sticker|label|placard) [on mine] (says|calls for|is|wants) #',
      '(sticker|label|placard) #',
      'label .. #',
    ],
    'wheel.maxPressure': ['(rim|wheel) stamped @ / #', '(rim|wheel) .. @ #'],
    'wheel.rating': ['(rim|wheel) [stamped|rated|is] #'],
    'tire.loadIndex': ['load index #', '# load index'],
    'tire.diameter': ['# across', '# (tall|in diameter)'],
    'upgrade.capacity': [
      '(next|higher|bigger) load range .. #',
      'load range up at #',
      '(upgrade|going up) to #',
    ],
    'spare.capacity': ['spare (says|is|rated|holds|stamped) #'],
    'lift.rating': ['# [bottle|floor|scissor] jack', 'jack [rated|is] #'],
    'lift.weight': ['jack @ #'],
    'stand.rating': ['# (stands|jack stands|stand)'],
    'lift.gapFlat': ['jack point [at] # when', '# when the tire'],
    'trip.days': ['# (trip|up the|on the road|way out|out there)', 'going #', '# near help'],
    'shop.rate': [
      '# (an hour|per hour|hourly|/hr|/hour|hr|on top)',
      'gets # an hour',
      'at # an hour',
      '(labor|hourly|shop) rate #',
    ],
    'shop.quote': [
      '(quoted|quote|estimate|bid) [is|of|for] #',
      '# (quote|estimate)',
      '(shop|body man|dealer) (wants|said|quoted|says|asks) #',
      'quoted #',
      'other shop #',
      'reseal quote #',
      'insurer .. settled at #',
    ],
    'policy.deductible': [
      'deductible [is|of|at|s] #',
      '# [dollar] deductible',
      '# deductible no claims',
    ],
    'policy.premium': ['premium #', 'premium # a year'],
    'policy.raise': ['(adds|raise|raises|increase|up) [a|by] #', 'claim adds #'],
    'policy.years': ['# for (three|3|five|5) (years|yrs)', '@ for # years', 'for #'],
    'seal.length': ['# of [the] [roof] (seam|seams)', '# of [the] seam', 'seams #'],
    'wood.moisture': [
      '(meter|wood|moisture) .. #',
      '# in the wood',
      'reads # in the wood',
      'wood inside reads #',
    ],
    'refinish.area': ['# will not polish', '# (to refinish|of film|polish)'],
    'segments.roof': [
      '# roof (segments|pieces|panels)',
      'roof #',
      '# (segments|panels) top',
      '(dented|creased) # roof segment',
    ],
    'segments.side': [
      '# side (segments|pieces|panels)',
      '# of the side (pieces|segments|panels)',
      '(left|right) side #',
      'side # segments',
      '# on the side',
    ],
    'segments.corner': ['# corner [piece|segment]', 'corner #'],
    'rig.value': ['worth [about|around] #', 'call it #', '(book|market) value #'],
    'policy.agreedValue': [
      'agreed [value] [of|at] #',
      '# agreed [value]',
      'insured at an agreed #',
      'value at #',
    ],
    'loan.owed': [
      '(owe|owing|owes) [still|about|them|the bank] #',
      'still owing #',
      '# on the loan',
    ],
    'contents.value': ['# worth of (stuff|gear|things)', '# (of|in) (stuff|gear) inside'],
    'parked.days': [
      '# while we',
      '(stands|parked|sits|street|campsite) .. #',
      '# (in storage|on the street|a year)',
      'street # days',
    ],
    'tracker.battery': ['# (cell|battery)', '(cell|batt|battery|tracker) [is] #'],
    'tracker.sleeping': ['(asleep|sleeps|sleeping|sleep) [at|is] #', '# asleep'],
    'tracker.report': ['reports .. at # each', '# each', '# (per|a) report'],
    'tracker.reports': [
      '# reports',
      'reports # times',
      '# times a day',
      '# (pings|updates) (a|per) day',
    ],
    'price.asked': [
      '(wants|asks|asking|asked|listed at|price|asking price|asking was) #',
      'they want #',
      '# for an old one',

      '(old|used) one ... for #',
      'owner for #',
    ],
    'price.dry': [
      '(dry|sound) [one|ones] ... (brings|bring|fetch|fetches|go for|goes for|about|is|are) #',
      'similar dry ones fetch #',
      'ask # for it dry',
      '# (dry and sound|for a dry one)',
      'a dry one like it brings #',
    ],
    'soft.zones': [
      '# (zones|spots|places) .. soft',
      '# soft (spots|places|zones)',
      '# zones of the (floor|wall)',
    ],
    'trailer.owned': ['bought [it] # ago', 'owned it #', '# ago [in]', '# old'],
    'warranty.length': ['# warranty', 'paper says #', 'warranty [is|of|for|runs] #'],
    'addon.weight': [
      '(rack|tv|television|arm|inverter|unit|box|air|fridge|panel) [weighs|is|+ arm|and arm] #',
      '# [the] box says',
      'is # and would hang',
      'tv+arm #',
      'inverter #',
    ],
    'addon.carries': [
      '(bikes|bicycles|e-bikes) ... # (for the pair|together|both|total)',
      '# for (the pair|both|all)',
      'all up [about] #',
      '# of (bikes|bicycles)',
    ],
    'addon.panelPower': [
      '# (panel|panels|of panels|on the roof|w panel)',
      '(add|adding|thinking|put) # [on]',
      '(add|adding|putting) ... # [of] [solar]',
    ],
    'addon.capacity': [
      '(more|extra|another|additional) #',
      '(1|one) more #',
      '(extra|another) @ #',
    ],
    'addon.power': ['add a # inverter', '# inverter', 'draws #', 'pulls #'],
    'mount.rating': ['(arm|mount) (says|rated|max|holds) #', '# max'],
    'circuit.breaker': ['# breaker'],
    'plan.year': ['(a|the|for|model year|order) #', '#s', "#'s", '# model year', 'the # model'],
  },
  values: {
    'tire.place': {
      rear: ['(back|rear) tires of the (truck|van)', '(van|truck) rear', 'rear tires'],
      front: ['front tires of the (truck|van)', '(van|truck) front tires'],
    },
    'tire.kind': {
      'special-trailer': ['st tires', 'st tire', 'the st', 'special trailer tires'],
      'light-truck': ['lt tires', 'lt kind', 'lt tire', 'light truck tires', 'light-truck'],
      passenger: ['passenger tires', 'p-metric', 'car tires on'],
    },
    'tire.readCold': { yes: ['psi cold', '# cold', 'read cold', 'cold in the morning'] },
    'tire.speedSymbol': {
      n: ['an n on (em|them)', 'symbol n', 'say n', 'speed rating n', 'says n'],
      l: ['symbol l', 'say l', 'says l', 'speed rating l'],
      m: ['symbol m', 'say m', 'speed rating m'],
    },
    'trip.remoteness': {
      'days-from-help': ['no towns', 'days from (anything|anywhere|help)', 'a day from'],
      'hours-from-help': ['hours from (anything|anybody|anywhere|help)'],
      'near-help': [
        'near help',
        'never more than .. miles from',
        'never more than',
        'close to town',
      ],
    },
    'trailer.brakeKind': {
      electric: ['electric (brakes|drums)'],
      hydraulic: ['(hydraulic|surge) brakes'],
    },
    'kit.extent': { lean: ['lean kit', 'short list', 'bare minimum'] },
    'kit.socketTried': { yes: ['tried my socket', 'tried the socket'] },
    'lift.kind': {
      'bottle-jack': ['bottle-jack', 'bottle-jacks'],
      'scissor-jack': ['scissor-jack', 'scissor-jacks'],
      'vehicle-jack': [
        "car's own jack",
        "truck's own jack",
        'the car jack',
        'jack from the (car|truck)',
        "(car's|truck's) jack",
      ],
      none: ['no jack', 'theres no jack', "don't have a jack"],
    },
    'lift.point': {
      axle: ['under the axle [tube]', 'by the axle'],
      'torsion-tube': ['torsion ... under the tube', 'under the torsion'],
      'named-by-maker': ['named by the maker', 'where the (maker|manual|book) says', 'jack point'],
      elsewhere: ['under the (step|bumper|step frame|frame rail|floor)'],
    },
    'spare.present': {
      yes: [
        '(have|carry|got|has) [one|1|a|@] spare',
        '(the|my) spare (says|is)',
        '1 spare',
        'the spare is',
      ],
      no: [
        'no spare',
        "(didn't|didnt|doesn't|doesnt) come with a spare",
        'took the spare',
        '(without|w/o) a spare',
      ],
    },
    'place.kind': {
      'storage-lot': [
        'storage (lot|place|yard|facility|unit)',
        'in storage',
        'on a storage lot',
        'the storage',
      ],
      driveway: [
        '[in|on] (our|my|the|his|her) (drive|driveway|yard|carport)',

        'beside the house',
      ],
      street: ['on (the|our|my) street', 'parked on the street', 'curb'],
      campsite: ['on its (campsite|site)', 'at the campsite', 'campground'],
      'rest-stop': ['rest (stop|stops|area|areas)', 'truck stop'],
    },
    'guard.held': {
      coupler: [
        '(has|have|got|a|one|with|use|one of them) [a|good|of] (coupler|hitch) lock',
        'lock [thing|things] on the (coupler|hitch)',
        '(lock|locks) things on the hitch',
        'coupler lock already',
      ],
      'coupler-and-wheel': [
        'lock on the coupler and one on the wheel',
        'coupler lock (plus|and|+) a wheel (lock|clamp|boot)',
        '(lock|locks) on the (coupler|hitch) and (the|a|one on the) wheel',
      ],
      nothing: ['nothing on it', 'no lock', 'no locks'],
    },
    'guard.noticed': {
      tracked: [
        'tracker shows',
        '(have|has|got|with|hidden|put) [a|the|my] [gps] tracker',
        'gps tracker',
        'lock tracker',
        'w/ tracker',
      ],
    },
    'guard.doors': { yes: ['locked doors', 'doors locked', 'all locked'] },
    'guard.hidden': { yes: ['blinds down', 'curtains (drawn|closed)', 'nothing left in'] },
    'policy.asks': {
      'two-devices': ['two [anti-theft] devices', '2 devices'],
      tracker: [
        'insurer .. (wants|requires|insists on) a tracker',
        '(requires|insists on) a tracker',
      ],
      'coupler-lock': ['(wants|requires|insists on) a coupler lock'],
    },
    'policy.basis': {
      agreed: ['agreed value', 'agreed #', 'insured at an agreed'],
      actual: ['actual [cash] value', 'pay actual', 'pays actual'],
      nothing: ['no insurance', 'not insured'],
    },
    'trap.set': {
      yes: [
        '(fence charger|shotgun|shell|rigged .. door|booby trap|tripwire) ... (door|handle|surprise|thief|thieves|fella)',
        '(wired|rigged) the door',
        'door .. (fence charger|electrified)',
      ],
    },
    'exit.blocked': {
      yes: [
        '(bolted|screwed|nailed) plywood over .. (window|windows|hatch)',
        'strap the door[s] [handles] shut',
        'escape hatch .. (shut|bolted|screwed)',

        'keyed from outside',
      ],
    },
    'chains.replaced': {
      yes: [
        'cut off the [two] [safety] chains',
        '(bicycle|bike) [cable] lock ... (instead|chain|chains|latch)',
      ],
    },
    'gas.shutIn': {
      yes: ['(steel box|box|cover) around the [propane] (bottles|tanks|cylinders)'],
    },
    'thief.followed': { yes: ['(going|go) ... (get it|get it back|fetch)'] },
    'damage.cause': {
      collision: [
        'backed (it|off|into|in)',
        'jackknifed (it|backing|into)',
        '(clipped|scraped|sideswiped|bumped) (the|a|my|our)',
        'hit (the|a)',
      ],
      weather: [
        'hail',
        '(tree|limb|branch) .. (fell|tore|hit|came down)',
        'in the storm',
        'windstorm',
        'tornado',
        'wind (took|blew)',
      ],
      'slow-leak': ['come on slow', 'slow leak', 'leaking for'],
      'other-party': [
        "neighbor's (tree|insurer|limb|car)",
        'neighbors (tree|insurer)',
        '(he|she|they|somebody|someone) backed into (me|us|ours|my)',
      ],
      'sudden-water': ['pipe burst', 'burst pipe', 'hose let go'],
    },
    'water.signs': {
      'none-seen': [
        'no (leak|leaks|stains|stain|water inside|water in it|drip)',
        '(dry|bone dry) (inside|below)',
        'floor below is dry',
        'no water inside',
        'all dry',
      ],
      stains: ['(brown|water|yellow) (stain|stains|ring|spot)', 'a stain'],
      soft: [
        'soft (place|spot|corner|below|floor)',
        'spongy',

        'mushy',
        'wall gives',
      ],
    },
    'cover.open': {
      yes: [
        'hole (through|in|you could)',
        'clear hole',
        'rain (is getting|gets|coming) in',

        'open to the (sky|rain|weather)',
      ],
      no: ['no hole', 'no holes', 'tarp is on', 'no rain gets in'],
    },
    'structure.hurt': {
      yes: [
        'axle (bent|cracked)',
        'bent axle',
        'floor gave (way|out)',
        '(frame|beam|tongue|coupler|main rail) ... (bent|cracked|tear|tore|torn|broken)',
      ],
    },
    'services.hurt': {
      yes: [
        '(wires|wiring|gas line|copper pipe|pipe|brake line) ... (kinked|tore|torn|cut|hanging|sparking|crushed)',
        'hanging by wires',
      ],
    },
    'release.asked': {
      yes: ['sign (that|a|the|it)', 'sign .. (settled|square|release)', 'do i sign'],
    },
    'photos.taken': {
      yes: ['took pictures', 'all photographed', '(have|took|taken) (photos|pictures|photographs)'],
      no: ['no (photos|pictures)'],
    },
    'policy.claimsBefore': {
      0: ['no claims ever', 'never made a claim', 'never had a claim', 'no claims'],
    },
    'wall.built': {
      'riveted-segments': ['riveted', 'rivets'],
      'laminated-wall': ['laminated', 'glued kind', 'glued wall', 'smooth wall', 'fiberglass wall'],
      'molded-shell': ['molded', 'egg-shaped fiberglass', 'fiberglass shell'],
    },
    'addon.kind': {
      'bicycle-rack': [
        '(bike|bicycle|bumper) rack',
        'rack ... (bike|bikes|bicycle|bicycles)',
        '(hauling|carrying) e-bikes',
        '(hang|hanging) bikes',
      ],
      television: ['tv', 'television'],
      'air-conditioner': [
        '(2nd|second|another|own second|bigger) [rooftop|roof] (ac|air|air conditioner)',
        'roof air',
        'rooftop ac',
      ],
      'bidet-seat': ['bidet'],
      'gas-appliance': ['gas (fireplace|stove|range|heater|fridge)', 'swapped the range'],
      inverter: ['inverter'],
      'solar-panel': ['# on the roof', 'w panel', 'solar', 'watts of panels', 'panel on'],
      battery: [
        'lithium upgrade',
        'bigger battery',
        'second battery',

        '2nd battery',
      ],
      other: ['smoke alarm', 'shock absorbers'],
    },
    'addon.heldBy': {
      bumper: ['(back|rear|square|steel) bumper', 'bumper rack', 'on the .. bumper'],
      wall: ['(in|on|into) (that|the) wall', 'wall by'],
      roof: ['rooftop', 'on the roof', 'roof air'],
      receiver: ['(in|from|off) the receiver', 'receiver tube'],
    },
    'addon.moves': {
      yes: ['swing arm', 'swinging arm', 'arm mount', 'tv arm', 'travels on the road'],
    },
    'addon.runsOn': {
      'twelve-volt': ['12-volt (tv|fridge)', '12v tv', 'at 12 v'],
      'shore-power': ['120 volt'],
    },
    'fitting.planned': {
      owner: [
        '(do|doing|doin|did|fit|fitting|install|installing|swap|swapped|swap in|putting in|put in|wire|add) .. (myself|ourselves)',
        '(swapped|fitted|installed|wired) .. myself',
        'putting in my own',
        'doin it myself',
      ],
      dealer: [
        "(you|u|y'all|you guys|u guys|your people) [people|guys] [to|would|can|could] (do|fit|install|put|put in|wire|add)",

        'have (you|u) (put|fit|do|install)',
        "i'd have you do it",
        'want us to fit it',
        'would want us to',
        'do you all do',
        '(can|could) you fit',
      ],
      'not-chosen': [
        'or (leave|leave it|book) [it] [to] (u|you)',
        'myself or',
        'or should i book (u|you)',
      ],
    },
    'touches.plumbing': { yes: ['bidet', 'water line'] },
    'touches.roof': {
      yes: ['on the roof', 'holes in roofs', 'roof fan', 'through the roof', 'make the roof leak'],
    },
    'touches.mains': {
      yes: [
        '(move|moved|moving) .. outlet',
        'outlet ... (black|gold screw|breaker)',
        'breaker for it',
        '20 a breaker',
      ],
    },
    'touches.gas': { yes: ['gas (fireplace|stove|range|appliance)', 'teed into'] },
    'touches.twelveVolt': { yes: ['12-volt circuit', '12 volt circuit', 'at 12 v', '12v circuit'] },
    'outlet.protected': { yes: ['protected outlet', 'gfci outlet', 'gfi outlet'] },
    'title.state': {
      clean: ['clean title', 'title [is] clean', 'title in hand'],
      lien: ['bank still has paper', 'still owes', 'lien'],
      'other-name': [
        "in his (late|uncle's|father's|dad's)",
        "in (his|her|the) .. (wife's|uncle's|father's|mother's|brother's|ex's) name",
        'not in his name',
        "uncle's name",
      ],
      branded: ['(salvage|branded|rebuilt) title'],
      none: ['no title', 'lost title', 'title is lost'],
    },
    'label.state': {
      'painted-over': ['painted over'],
      missing: [
        '(sticker|label) [is] (gone|missing)',
        'no weight (sticker|label)',
        'weight (sticker|label) [is] (gone|missing)',
      ],
      readable: ['label is readable', 'sticker is still'],
    },
    'frame.state': {
      cracked: [
        '(cracked|crack) .. (frame|i-beam|beam|rail)',
        '(frame|i-beam|beam|rail|hanger|weld) ... (cracked|crack|hairline)',
        'cracked frame',
      ],
      'rust-through': [
        '(screwdriver|pencil|finger) [goes] [right] (through|thru) .. (frame|rail)',
        '(poke|poked|put) a (screwdriver|pencil) (through|thru)',
        'frame ... (pencil|screwdriver|finger) (thru|through)',

        'rusted (through|thru)',
      ],
      'surface-rust': [
        'surface-rust',
        'surface rusty',
        'little rust on the frame',
        'rust .. just on top',
      ],
      sound: ['frame is (sound|solid|clean)'],
    },
    'axle.wear': {
      'one-edge': ['worn [down] on one edge', 'one-edge worn', '(inside|outside) edge', 'one edge'],
      even: ['worn even', 'even wear'],
    },
    'soft.zones': {
      '0': ['no soft (spots|places|spot)', 'nothing soft', 'not a soft spot'],
      '1': ['one soft (spot|place)', 'soft in one spot', 'a soft (spot|place)', '1 soft spot'],
    },
    'gas.tested': {
      holds: ['gas (holds|held|tight)', 'passed the (leak|drop) test', 'gas held on the test'],
      leaks: ['gas leaks', 'failed the (leak|drop) test'],
      untested: ['gas (untested|never tried|not tried)'],
    },
    'electrics.tested': {
      works: ['(electrics|lights) work', 'electrics (fine|good|ok)'],
      faults: ['(electrics|lights) (dead|faulty)'],
      untested: ['electrics untested'],
    },
    'alarm.gasReplaceBy': {
      past: [
        'gas alarm [is] (expired|out of date|past)',
        '(lp|propane|gas) (alarm|detector) ... (expired|out of date)',
      ],
    },
    'alarm.monoxideReplaceBy': {
      past: ['(co|monoxide) (alarm|detector) ... (expired|out of date)'],
    },
    'brakes.tested': {
      work: ['brakes work'],
      untested: ['brakes untested'],
      faults: ['brakes (bad|dead|faulty)'],
    },
    'cylinders.dates': {
      past: ['(bottles|tanks|cylinders) [are] (out of date|expired|outdated)'],
      'in-date': ['(bottles|cylinders) [are] in date'],
    },
    'structure.moves': {
      yes: ['corner moves', 'wall moves', 'corner .. moves if'],
      no: ["walls don't move", 'walls dont move', 'nothing moves'],
    },
    'wish.television': {
      no: ['no (tv|television)', 'without [a] (tv|television)'],
      yes: ['put the tv', 'with [a|the] (tv|television)'],
    },
    'wish.lithiumBank': { yes: ['lithium bank', 'lithium batteries', 'lithium package'] },
    'wish.solarPanel': { yes: ['[one|1] solar panel', 'panel on the roof'] },
    'wish.secondRoofAir': {
      yes: [
        '(second|2nd|two) (roof|rooftop) (ac|air)',
        '(second|2nd) (ac|air conditioner|roof air conditioner)',
      ],
    },
    'wish.heatedTanks': { yes: ['heated tanks', 'tank heaters'] },
    'wish.outsideKitchen': {
      yes: ['with the outside kitchen'],
      no: ['(delete|without|no|skip) the outside kitchen', 'no outside kitchen'],
    },
    'wish.recliners': { yes: ['recliners'] },
    'wish.dinette': {
      no: ['in place of the dinette', 'instead of the dinette', 'no dinette'],
      yes: ['get a dinette', 'with [a|the] dinette'],
    },
    'wish.roofRack': { yes: ['roof rack'] },
    'wish.birchDecor': { yes: ['in birch', 'birch'] },
    'wish.slateDecor': { yes: ['slate decor', 'slate panels', 'in slate', 'slate can be had'] },
    'wish.inverter': { yes: ['the inverter run', 'with the inverter'] },
    'wish.washerConnections': { yes: ['hookup for the washer', 'washer (hookup|connections)'] },
    'wish.secondBattery': { yes: ['second [lead] battery', '2nd battery'] },
    'wish.garageRails': { yes: ['with the rails', 'tie-down rails'] },
    'wish.generator': { yes: ['built-in generator', 'with the generator'] },
    'wish.powerTongueJack': { yes: ['power [tongue] jack', 'electric tongue jack'] },
    'wish.absorptionRefrigerator': {
      yes: ['gas (refrigerator|fridge)', 'absorption (refrigerator|fridge)'],
    },
    'wish.compressorRefrigerator': { yes: ['compressor (refrigerator|fridge)', '12-volt fridge'] },
    'wish.instantWaterHeater': { yes: ['instant (water heater|hot water)', 'tankless'] },
    'wish.foldingStep': { yes: ['folding step'] },
    'wish.tireMonitors': { yes: ['tire monitors', 'tire pressure monitors'] },
    'wish.powerStabilizers': { yes: ['power stabilizers', 'electric stabilizers'] },
    'wish.roofAir': { yes: ['with the roof air', 'roof air'] },
    'wish.fiftyAmpService': { yes: ['(50|fifty) amp service'] },
  },
  only: {
    'warranty.length': ['warranty', 'covered', 'paper'],
    'trailer.owned': ['bought', 'owned', 'warranty', 'covered'],
    'policy.years': ['premium', 'claim'],
    'policy.raise': ['premium', 'claim', 'rate'],
    'tire.readCold': ['psi', 'sidewall', 'pressure', 'tire', 'cold'],
    'lift.weight': ['jack'],
    'lift.gapFlat': ['jack'],
    'parked.days': ['park', 'stands', 'standing', 'street', 'campsite', 'storage', 'stay'],
    'plan.year': [
      'osier',
      'sallow',
      'coppice',
      'rushlight',
      'penstock',
      'millrace',
      'hurdle',
      'wattle',
      'model',
    ],
    'tracker.report': ['tracker', 'report'],
    'tracker.battery': ['tracker'],
    'tracker.reports': ['tracker', 'report'],
    'touches.twelveVolt': ['12'],
    'release.asked': ['settled', 'square', 'release', 'insurer'],
    'mount.rating': ['arm', 'mount'],
    'wood.moisture': ['meter', 'moisture', 'wood'],
  },
};
