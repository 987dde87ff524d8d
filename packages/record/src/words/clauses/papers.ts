import type { Clauses } from './shapes';

/** Tires, tools, damage, insurance, theft, add-ons, floor plans and buying used. */
export const paperClauses: Clauses = {
  numbers: {
    'tire.pressure': [
      'run|runs|running|keep|keeps|hold|air|aired|inflated|reads|read|were|are|found|have|cold they|measured|gauge & ~tire|tires|psi|lts|sts|st|lt ! label|sticker|placard|sidewall|max|rim|wheel|wheels|another|other|offered|new|interstate|mph|highway|load index|rated|carries|battery|volt*|range|inch*|inches|letting|let',
    ],
    'tire.maxPressure': [
      'sidewall|side wall|side of the tire|max & psi|says|reads|max|cold|maximum & ~tire|tires|sidewall|psi ! load|lb|pound*|label|rim|wheel|another',
    ],
    'tire.labelPressure': [
      'label|sticker|placard|tag|plate & psi|says|wants|calls|cold|asks & ~psi|tire|tires|pressure|cold ! payload|lb|pound*|cargo|gvwr|door says 1',
    ],
    'wheel.maxPressure': [
      '<wheel|wheels|rim|rims & psi ! tire|sidewall',
      '~inside my wheels|wheel stamped|rim stamped|stamped in the wheel|on the wheel|on the rim & psi',
    ],
    'wheel.rating': [
      'wheel|wheels|rim|rims & lb|lbs|pound*|rated|stamped|read|reads ! psi|left|right|on the scale|weigh*|hub|tire',
    ],
    'tire.loadIndex': ['load index|li|index ! dual|trailer'],
    'upgrade.capacity': [
      'another|other|next|new|offered|bigger|higher|upgrade & carries|carry|rated|holds|lb|lbs|pound*|load|good for & ~tire|tires ! psi|truck|wheel|rim|trailer|spare|jack',
    ],
    'upgrade.maxPressure': [
      '>psi & ~another|other tire|next|new tire|offered|bigger|higher range|upgrade & ~carries|carry|rated|holds|lb|pounds ! label|sticker|wheel|wheels|rim|run|gauge',
    ],
    'spare.capacity': [
      'spare & lb|lbs|pound*|rated|carries|holds|says|good for ! psi|dated|weighs',
    ],
    'lift.rating': [
      'jack|ramp & rated|rating|ton|lb|lbs|pound*|good for ! stands|stand|lowest|tall|weighs|inch*|highest',
    ],
    'lift.lowest': [
      'lowest|collapsed|closed|all the way down|min height|stands & lowest|low|collapsed|closed|down|minimum & ~jack',
    ],
    'lift.reach': ['highest|lifts to|all the way up|max height|reaches|fully up & ~jack'],
    'lift.gapFlat': [
      'under|below|room|gap|clearance|space & ~flat & ~jack|spot|axle|lift ! lowest|collapsed',
    ],
    'stand.rating': ['stand|stands|jack stands & rated|ton|lb|pound*'],
    'trip.days': [
      'day|days|week|weeks & trip|off|away|out|gone|for|road|leaving|next|spares & ~spares|tools|trip|kit|tow truck|road|carry ! ago|old|storage|stay|park|away from|street|drive',
    ],
    'shop.rate': [
      'hour|hr|hourly|labor rate|shop rate & usd|dollars|charge|charges|rate|labor|gets|an hour|per hour ! drive',
    ],
    'shop.quote': [
      'quote|quoted|estimate|estimated|bid|shop|body man|dealer & estimate|estimated|quoted|quote|wants|asks|says|bid|shop ! insurer|deductible|worth|asking|hour|pay',
    ],
    'policy.deductible': ['deductible|excess'],
    'policy.premium': ['premium ! adds|goes up|%'],
    'rig.value': [
      'worth|value|valued|market|book value ! agreed|claim|insured for|stuff|gear|dry|owe',
    ],
    'policy.agreedValue': ['agreed|insured for|insured at|stated value ! deductible'],
    'loan.owed': ['owe|owes|owing|owed|loan|note ! month'],
    'parked.days': [
      'park|parked|parking|stands|sits|leave it|street|storage|lot|curb & day|days|week|weeks|month|months ! trip|ago|old|left|warranty',
    ],
    'price.asked': [
      'ask|asks|asking|wants|offers|offered|price|found one|sells|selling|for sale|listed|tag|seller|private & ~used|trailer|one|he|she|they|frame|title|seller|old ! hour|deductible|dry ones|like ones|worth|quote|month|knock|lb|dry go',
      "found one for|buy used|buy a used|buying one for|for sale at|they'd ask|he'd take",
    ],
    'price.dry': [
      'dry|sound|good|like ones|similar|comparable & go for|goes for|brings|bring|fetch*|sell for|cost|costs|run|worth|are about ! lb|lbs|pounds|weigh*',
    ],
    'soft.zones': [
      'soft|gave|spongy|give & place|places|spot|spots|zone|zones & ~floor|wall|walls|roof|soft|window|shower',
    ],
    'trailer.owned': [
      'bought|owned|had it|got it & year|years|yr|months & ~warranty|covered|guarantee',
    ],
    'warranty.length': ['warranty|guarantee & year|years|yr'],
    'addon.weight': [
      'weighs|weight|lb|lbs|pound*|kg|heavy & ~rack|tv|television|air conditioner|ac|inverter|fridge|washer|smoker|grill|generator|battery|toolbox|box|unit|awning|winch ! cargo|label|tag|door|sticker|payload|gvwr|bikes|rated|max|tongue',
    ],
    'addon.carries': [
      'bike|bikes|bicycle|bicycles|ebike|ebikes|e-bikes & together|both|total|pair|all ! rack weighs|rack is',
    ],
    'addon.panelPower': [
      'panel|panels|solar & add|adding|put|want|wants|more|another|second|install|mount',
    ],
    'addon.capacity': ['ah|amp-hours|amp hours & add|adding|another|second|2nd|more|extra|third'],
    'addon.power': ['inverter & w|watt|watts & add|adding|put|install|want|wants ! idle*'],
    'mount.rating': [
      'arm|mount|bracket|bumper|rack & rated|max|holds|says|good for|limit ! tongue|receiver',
    ],
    'circuit.breaker': ['breaker & amp|amps|a ! trip*'],
  },
  values: {
    'tire.kind': {
      'special-trailer': [
        'st|sts|st tire|special trailer & tire|tires|set|load|psi|rated|range ! street|lt|main st|1 st',
      ],
      'light-truck': ['lt|lts|light truck & tire|tires|psi|set|load|range|sidewall|rear ! st'],
    },
    'tire.readCold': {
      yes: [
        'cold|this morning|before driving|overnight & psi|they were|read|reads|gauge|runs them|at|all ! label|sticker|placard|sidewall|°|degrees|weather|in full sun|hot|warm',
      ],
      no: [
        'drove|driven|hot|warm|in the sun|full sun|just stopped|on the road & ~psi|gauge|reads|read|tire|pressure & ~gauge|read|reads|pressure ! cold they|hub|brake*|battery',
      ],
    },
    'tire.speedSymbol': {
      m: ['letter m|symbol m|speed m|rated m|letter is m'],
      n: ['letter n|symbol n|speed n|letter is n'],
      l: ['letter l|symbol l|speed l|letter is l'],
    },
    'tire.place': {
      rear: [
        'rear|back & tire|tires & ~truck|van|his|her|my|camper ! trailer|trailers|hub|axle|left',
      ],
      front: ['front|steer & tire|tires & ~truck|van ! trailer|hub'],
    },
    'spare.present': {
      yes: [
        'spare|spare wheel|spare tire & have|got|carry|has|bolted|on board|aboard|on our|is on|dated|under it|on the back|full size ! no|not|without|need|should|do i|does it|new spare|what|key|buy|spares',
      ],
      no: ['no|without|never|lost|stolen & spare|spare wheel|spare tire ! key|problem'],
    },
    'trip.remoteness': {
      'near-help': [
        'never|not|always & far from|near|close to|within reach & town|a town|help|shop|tire shop|anything',
        'near town|near towns|close to town|close to help|never far from|towns all along|interstate all the way',
      ],
      'hours-from-help': [
        'hour|hours|some hours|few hours|couple hours & from|away|to the nearest & town|shop|help|tire shop|anything|anybody|nearest ! furnace|days',
      ],
      'days-from-help': [
        'days|a day & away|from & tow truck|town|help|shop|anything|anybody|nearest|pavement ! never|not far|far from',
        'no cell|no signal|no service & days|roads|desert|back country|backcountry',
      ],
    },
    'lift.kind': {
      'bottle-jack': ['bottle jack|bottle-jack|hydraulic jack'],
      'scissor-jack': ['scissor jack|scissors jack'],
      'drive-up-ramp': ['drive-up ramp|drive on ramp|ramp & lift|jack|drive-up|pull up'],
      none: ['no jack|without a jack'],
    },
    'ramp.trailerAllows': {
      no: ['ramp|ramps & no|not|forbids|never & manual|book|handbook|maker|says'],
      yes: ['ramp|ramps & ok|okay|allows|permits|fine & manual|book|handbook|maker ! not|no|never'],
    },
    'kit.place': {
      vehicle: [
        "tools|kit|spares|box & ride|rides|go|kept|carry|carried|in & truck|car|bed|trunk ! trailer's|need",
      ],
      trailer: [
        'tools|kit|spares|box & ride|rides|kept|carried|go & trailer|pass-through|tongue box',
      ],
    },
    'kit.socketTried': {
      no: ["never|not|hasn't|haven't|didn't & tried|try|fitted|checked & socket|lug wrench|wrench"],
      yes: ["tried|tested|fits|checked & socket|lug wrench ! never|not|hasn't|haven't|did you"],
    },
    'trailer.brakeKind': {
      electric: ['electric & brake|brakes|drums|drum ! controller for'],
      hydraulic: ['surge|hydraulic|disc & brake|brakes'],
    },
    'gas.tested': {
      untested: [
        "gas & not|never|nobody|hasn't|no one|untested & tested|tried|test|checked|untested",
      ],
      holds: [
        'gas|propane & tested|test|checked & holds|held|passed|tight|ok|fine|good ! not|never|no|nobody',
        'gas & ~gas & holds|held|passed|tight & it|and|gas ! not|never|no',
      ],
      leaks: ['gas|propane & leaks|leaked|failed|bubbles & test|tested|fitting|soap|line'],
    },
    'brakes.tested': {
      faults: [
        "brake|brakes|magnets & failed|dead|bad|faulty|don't work|not working|worn out|grab|grabs|shot|seized|didn't work ! trailer's own manual",
      ],
      untested: ['brakes & nobody|never|not|untested|no one & tried|tested|untested|checked'],
      work: ["brakes & work|works|good|fine|tested ok|new ! not|never|don't|nobody|how|need"],
    },
    'electrics.tested': {
      works: [
        "lights|electrics|outlets|electric|12 volt|everything electric & work|works|all work|fine|ok|good ! not|don't|except|never|no|quit",
      ],
      faults: [
        "lights|electrics|outlets|wiring & dead|don't work|faulty|not working|half work|flicker*|quit ! trailer lights on",
      ],
      untested: ['electrics|lights|power & untested|not tried|never tried|nobody tried|not tested'],
    },
    'frame.state': {
      'surface-rust': [
        'frame|rails & rust|rusty & skin deep|surface|light|only|just on top|on top|little|some|bit ! through|holes|soft|flakes off|perforat*',
      ],
      'rust-through': [
        "frame|rail|rails & rust|rusted|rotted|holes|screwdriver|hole & through|holes|goes in|right in ! not|didn't|no",
      ],
      cracked: [
        'frame|rail|rails|hanger|weld|welds|a-frame & crack|cracked|cracks|split ! no|not|never',
      ],
      sound: ['frame & sound|solid|straight|clean|good shape|perfect ! not|crack*|rust*|bent'],
    },
    'label.state': {
      'painted-over': ['paint|painted|sprayed & over & label|sticker|tag|plate'],
      missing: ['label|sticker|tag|plate & missing|gone|none|torn off|scraped off|no ! cargo|door'],
      readable: ["label|sticker|tag & readable|still there|can be read|legible ! not|can't"],
    },
    'axle.wear': {
      'one-edge': ['worn|wear|bald & inside|outside|one & edge|side|only|shoulder ! rust'],
      even: ['wear|worn & even|evenly ! not|uneven'],
    },
    'cylinders.dates': {
      past: [
        'bottle|bottles|cylinder|cylinders|tanks & past|expired|out of date|outdated|too old|overdue ! water',
      ],
      'in-date': [
        'bottle|bottles|cylinder|cylinders & in date|still good|not expired|recertified|new ones',
      ],
    },
    'title.state': {
      clean: [
        "title|titles & clean|in hand|clear|in his own name|in the man's own name|own name ! not|no|isn't|lien|uncle|late",
      ],
      lien: ['lien|bank|loan & title|on it|still|holds|owes|owed ! no|paid off|clear of|without'],
      'other-name': [
        'title|papers & name of|in the name|on name of|uncle|father|mother|ex|late|dead|deceased|other name|someone else|somebody else|brother|cousin ! own name|clean',
      ],
      branded: ['salvage|branded|rebuilt & title'],
      none: ['no title|lost title|without title|title is lost|title lost|missing title'],
      'number-differs': [
        "vin|number & doesn't match|does not match|differs|don't match|other number",
      ],
    },
    'structure.moves': {
      no: [
        "wall|walls|corner|corners & don't|doesn't|do not|nothing|not|no & move|moves|give|gives|shove|push",
      ],
      yes: [
        "wall|walls|corner|corners|front & move|moves|gives|flexes|wobbles ! not|don't|doesn't|no|nothing",
      ],
    },
    'soft.zones': {
      '0': ['no|not a|nothing|zero & soft & spot|spots|places|anywhere|floor'],
      '2': ['two|couple|2 & place|places|spot|spots|zones & soft|gave|give|spongy|gives ! no'],
      '3': ['three|3 & place|places|spot|spots|zones & soft|gave|give|spongy|gives ! no'],
    },
    'water.signs': {
      'none-seen': [
        'no|not any|without|dry|nothing wet & water|leak|leaks|stain|stains|inside ! heater|hot|pressure|tank|fresh|running|signs of life',
      ],
      stains: [
        'stain|stains|stained|discolored|brown ring|ring & ceiling|wall|corner|panel|water|window ! no|not|never|without',
      ],
      soft: [
        'soft|spongy|mushy|rotten & floor|wall|corner|panel|below|under ! no|not|never|tire|brake*|pedal',
      ],
    },
    'damage.cause': {
      weather: [
        'hail|storm|tree|limb|branch|tornado|wind & dent*|tore|torn|hit|fell|damage*|left|smash*|apart ! driving|gust*|radar|sway*|forecast',
      ],
      collision: [
        'scrape*|hit|backed|clipped|sideswiped|ran|bumped|dinged & post|corner|pole|gate|wall|tree|bollard|side|rear|garage|fence|rock|curb ! hail|storm|limb fell|brakes',
      ],
    },
    'place.kind': {
      'storage-lot': ['storage & lot|yard|place|facility|unit|in'],
      driveway: [
        'driveway|carport|my drive|our drive|at home|in the yard|beside the house ! drove|miles',
      ],
      street: ['street|curb|curbside & park*|leave|stands|sits|on'],
      campsite: ['campsite|campground|site & park*|leave|left|stands|unhitched'],
    },
    'guard.held': {
      coupler: [
        'coupler lock|hitch lock|lock on the coupler|lock on the hitch|ball lock ! wheel|boot|need|get|which|buy|no|without|should|tried|saw',
      ],
      'coupler-and-wheel': [
        'coupler lock|hitch lock & wheel lock|wheel clamp|boot|wheel boot ! or|need|buy|which|should',
      ],
      nothing: ['no lock|no locks|nothing on it|not locked|unlocked'],
    },
    'touches.roof': { yes: ['roof & hole|holes|cut|through|drill*|screw*|mount* ! without|no'] },
    'wish.secondRoofAir': {
      yes: [
        'second|2nd|two|another & air conditioner|ac|a/c|roof air|air & order*|want|wants|get|have|can',
      ],
    },
  },
};
