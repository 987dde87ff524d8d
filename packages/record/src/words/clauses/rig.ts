import type { Clauses } from './shapes';

const vehicle =
  'truck|trk|car|suv|pickup|pick-up|crossover|vehicle|van|minivan|wagon|half-ton|sedan|4x4|ute';
const trailer = 'trailer|trlr|camper|caravan|teardrop|tt|rig|tandem|unit|travel trailer';
const papers = 'manual|book|handbook|papers|paper|brochure|guide|spec|specs';
const rated =
  'rated|rating|ratings|rates|limit|limits|max|maximum|most|allowed|allows|allow|permits|permitted|good for|stamped|marked|capacity|cap|tops|up to|no more than';
const pulls =
  'tow|tows|towing|pull|pulls|pulling|haul|hauls|hauling|behind it|behind me|behind us|drag|tug';
const plate = 'plate|label|sticker|tag|placard|vin plate|data plate';
const weighed =
  'weighed|weigh|weighs|scale|scales|scaled|gauge|measured|tested|ticket|reads|read|came out|came in';
const empty = 'dry|empty|unloaded|uvw|brochure|unladen|bare';
const loaded = 'loaded|packed|full load|ready to go|load up|gear in|with everything';
const brakeless =
  'without brake*|w/o brake*|no brake*|unbraked|unbreaked|brakeless|without trailer brake*';
const undistributed =
  'without|w/o|no bars|no wd|without bars|without wd|weight carrying|dead weight|carried|no distribution|no weight distribution';
const tongue = 'tongue|tounge|tw|hitch weight|nose weight|noseweight|tongue weight|ball weight';

/** Vehicle, trailer, hitch and scale. */
export const rigClauses: Clauses = {
  numbers: {
    'vehicle.maxTrailerWeight': [
      `${pulls} & ~${rated}|${papers} ! ball|tongue|hitch|receiver|bars|dry|empty|gross|gvwr|weighs|dolly|bar|brakeless|${brakeless}|${undistributed}`,
      `${pulls} & ${vehicle}|mine|ours|it ! ball|tongue|hitch|receiver|bars|dry|empty|gross|gvwr|weighs|dolly|bar|car|${brakeless}|${undistributed}`,
      `max|maximum|biggest|limit & ${trailer} ! ball|tongue|tongue weight|bars|gross|gvwr|plate|label|tire|axle|${brakeless}|${undistributed}`,
      `with brake*|braked & ${rated}|${pulls} ! without|w/o|no`,
      `${papers} & >with wd|with weight distribution|with bars|with weight-distribut*|with a weight-distribut*|with a wd|with spring bars`,
      `<${papers} & ~${vehicle} & ${rated}|says|gives|lists|lets|good ! ball|tongue|hitch|door|payload|people|front|rear|axle|gvwr|gcwr|cargo|camper|dolly|psi|${brakeless}|${undistributed}`,
    ],
    'vehicle.maxTrailerCarried': [
      `>${undistributed} & ~${pulls}|${papers} ! brake*|ball|tongue|hitch|receiver`,
    ],
    'vehicle.maxUnbraked': [`${brakeless}`],
    'vehicle.maxTongueCarried': [
      `ball|tongue|tounge|hitch|drawbar|tow ball & ${rated} ! receiver|stamped|ball mount|mount|coupler|dry|empty|weighed|scale|dolly|size`,
      `on the ball|on the hitch|on the tongue & ~${papers} & ~${vehicle} ! receiver|dry|empty|weighed|scale|stamped`,
      `nose weight|noseweight & ${rated}`,
    ],
    'vehicle.placardPayload': [
      'door|jamb|yellow|doorjamb & payload|people|occupants|cargo|passengers|allows|sticker|label|placard|tag ! gvwr|gawr|axle|trailer|camper|psi|cargo label',
      'payload ! camper|left|remaining|short|over',
      'people|occupants|passengers|everybody & cargo|stuff|things|gear ! left|weigh*|trailer',
    ],
    'vehicle.gvwr': [
      `gvwr|gross & ${vehicle}|tow vehicle|motorhome|coach ! ${trailer}|combined`,
      `gvwr & ~certification label|half ton|dually|truck|motorhome|coach|tow vehicle ! ${trailer}|combined|dry`,
    ],
    'vehicle.gcwr': ['combined|gcwr|gcvw & rat*|gross|weight|limit|of|is'],
    'vehicle.gawrFront': [
      'front axle|front gawr|front & axle|gawr & ~rated|rating|gvwr|limit|allowed|label|max|takes ! on the scale|weighed|trailer|slack|tight|alone',
    ],
    'vehicle.gawrRear': [
      'rear axle|back axle|rear gawr & ~rated|rating|gvwr|limit|allowed|label|max|takes ! on the scale|weighed|trailer|slack|tight|alone|ahead|behind|from|in front',
    ],
    'vehicle.curbWeight': [
      `curb|kerb|${vehicle} & weighs|weight|weighed & >empty|full tank|with me|with a full tank|by itself|alone ! ${trailer}`,
    ],
    'vehicle.wheelbase': ['wheelbase|wheel base|axle to axle'],
    'vehicle.overhang': ['axle & to the ball|ball & overhang|from ! trailer'],
    'vehicle.bedLength': [
      'bed|box & inside|long|length|gate|tailgate|headboard|foot|bed is ! camper|floor|over|scale',
    ],
    'vehicle.cargoRating': [
      'cargo|cargo weight rating|camper sheet|truck sheet|loading sheet & ~sheet|glove box|glovebox|slip|rating|papers|camper|slide-in ! label|door|door label|door sticker|camper label|dry|payload',
    ],
    'camper.weight': [
      `camper|slide-in|slide in & label|tag|plate|sticker|dry|wet|weighs|weight|marked|lbs ! truck|sheet|floor|rating|zone|gravity|gallon*|door|payload|trailer`,
      '<camper|slide-in|slide in ! truck|sheet|floor|rating|zone|gravity|center|gallon*|door|payload|trailer|mark|arrow|foot|feet|inches|year',
    ],
    'camper.center': [
      'ahead|forward|in front|fwd|behind|aft|back & axle|rear axle|axle line|wheel center & ~mark|center|centre|gravity|cg|cog|arrow|balance ! water|tank|propane|headboard|board|front wall',
    ],
    'camper.centerBehindBoard': [
      'behind|back from|back of|aft of|from & headboard|board|head board|bulkhead|front wall of the bed & ~mark|center|centre|gravity|cg|cog|arrow|camper ! zone|starts|ends|begins',
    ],
    'vehicle.zoneForeBehindBoard': ['zone & start*|begin*|from|front|nearest'],
    'vehicle.zoneAftBehindBoard': ['end*|rear|last|to & ~zone ! mark|center|gravity|arrow'],
    'vehicle.headboardAhead': [
      'headboard|head board|board & ahead|forward|in front|from & axle|axle line ! zone|mark|gravity',
    ],
    'camper.floorLength': ['camper|its|floor|floor length & floor|floor length|bottom ! bed|label'],
    'camper.freshWater': [
      'water|fresh|fresh water & ~camper|slide-in|slide in ! incl|includ*|including|label|gray|grey|heater|waste',
      'gallons aboard|gal aboard & ~camper|slide-in',
    ],
    'hitch.hardwareWeight': [
      'hitch|hitch head|bars|hardware & weighs|itself|heavy|weight of ! rated|stamped|tongue',
    ],
    'hitch.receiverRating': [
      'receiver & rated|rating|stamped|label|says|marked|good for ! tongue|tw|high|height|carried',
    ],
    'hitch.receiverTongueRating': ['receiver & tongue|tw ! high|carried'],
    'hitch.mountRating': [
      'mount|ball mount|drawbar|stinger & stamped|rated|rating|marked|says|good for|is ! tongue|tw|inch*|drop|rise',
    ],
    'hitch.mountTongueRating': ['>tongue|tw & ~mount|ball mount|stinger ! receiver'],
    'hitch.ballRating': [
      'ball|stamped & ~ball & stamped|rated|rating|marked|good for|says|lb|lbs|pound* ! mount|receiver|tongue|inch|inches|coupler|dolly|bar',
    ],
    'hitch.ballSize': [
      '<ball|stamped & ~ball ! coupler|socket|mount|receiver|shank|tall|high|height|off the ground|rated|lb|lbs|pound*|drop|rise|behind|ahead|above|from|crown',
    ],
    'trailer.couplerSize': [
      'coupler|socket & reads|says|stamped|takes|marked|is|for|inch ! high|height|level|off the ground|wants|stands|sits|up|at|tall',
    ],
    'trailer.couplerHeight': [
      'coupler|tongue height|hitch height & height|high|off the ground|level|stands|sits|up|wants|needs|at|tall|from the ground|above ! ball size|stamped|receiver|reads',
    ],
    'hitch.receiverHeightEmpty': [
      'empty|nothing in|unloaded|without a load & ~receiver|reciever|hitch tube ! loaded|packed|trailer on|coupler',
    ],
    'hitch.receiverHeightLoaded': [
      'loaded|packed|trailer on|with the trailer|all our|hitched|weighed down|full load|everything in & ~receiver|reciever|hitch tube ! empty|coupler|unloaded',
    ],
    'hitch.shankHeight': ['shank ! drop|rise|platform'],
    'hitch.barsMost': [
      'bars|spring bars & stamped|rated|marked|rating|say|says|are|for ! fender|slack|tight|set|hanging|weigh|trailer',
    ],
    'hitch.extension': ['extension|extender & inch*|in|long|back|is ! cord|rated'],
    'hitch.extensionRating': ['extension|extender & rated|rating|stamped|tongue'],
    'vehicle.fenderUnhitched': [
      'unhitched|unhooked|alone|not hitched|before|nothing on|no trailer|without the trailer & ~fender|wheel well|wheelwell|wheel arch|arch|lip',
    ],
    'vehicle.fenderSlack': [
      'slack|loose|off|hanging|unloaded|undone|down|no tension & ~bar|bars & ~fender|wheel well|wheelwell|wheel arch|arch|lip ! unhitched|unhooked',
    ],
    'vehicle.fenderTight': [
      'tight|set|on|snug|tensioned|hooked|up|loaded & ~bar|bars & ~fender|wheel well|wheelwell|wheel arch|arch|lip ! slack|loose|off|hanging|unhitched|unhooked|down',
    ],
    'trailer.gvwr': [
      `gvwr|gross|gtw|fully loaded max|max loaded & ~${trailer}|one|it ! ${vehicle}|combined|dry`,
      `<${trailer} & <${plate} ! dry|empty|cargo|ccc|tire|tires|psi|tongue|door|payload|people|brake*|ball|axle`,
      `${plate} & >gross|loaded|max ! ${vehicle}|dry|cargo|psi|door|payload`,
    ],
    'trailer.dryWeight': [
      `${empty} & ${trailer}|weight|weighs|it|one|wt|lb|lbs ! tongue|tounge|tw|hitch|ball|dolly|receiver|camper label|gvwr`,
      `${empty} & ~${trailer} ! tongue|tounge|tw|hitch|ball|dolly|receiver|truck|gvwr|floor|bed|car`,
    ],
    'trailer.cargoCapacity': [
      `cargo|ccc|occc|carrying capacity|load capacity & ${plate}|capacity|${trailer}|ccc|left|yellow ! door label|people|occupants|passengers|truck|jamb|rating for a camper|sheet|glove*`,
    ],
    'trailer.measuredTongueWeight': [
      `${tongue} & ${weighed}|${loaded}|last time|actual ! ${empty}|rated|max|limit|stamped|receiver`,
      `tongue scale|bathroom scale|sherline|weigh safe ! axle|${empty}|front|rear|cylinder|bottle|beam|pipe`,
    ],
    'trailer.dryTongueWeight': [
      `${tongue}|hitch & ${empty}|floor plan|given as|catalog|spec ! ${loaded}|receiver|scale|rated|limit`,
    ],
    'trailer.gawr': [
      'axle|axles & rated|rating|each|apiece|gawr|lb axles & ~trailer ! front|rear|truck|weighed|scale|tongue',
    ],
    'trailer.tireCapacity': [
      'tire|tires|tyres & rated|carry|carries|holds|hold|good for|capacity|load & ~trailer|st|each|camper ! psi|another|other|new|offered|upgrade|spare|next|truck|rim|wheel',
    ],
    'trailer.ballToAxle': ['ball|coupler|tongue & axle|axles ! truck|bumper|weigh*'],
    'trailer.length': [
      'long|overall|bumper|end to end|length|footer|total & ~trailer|camper|rig|caravan|coupler|box|tt|ft ! cord|axle|wheelbase|bed|behind|hose|wire|floor|ahead|away|miles|drive',
    ],
    'trailer.freshWater': [
      'fresh|fresh water|water in the tank|water aboard & >aboard|on board|in it|in the tank|full ! gray|grey|use|a day|capacity',
    ],
    'trailer.leftWheels': [
      'left|driver side|road side|street side & wheel|wheels|side|tires ! hub|psi|degrees|front|bearing',
    ],
    'trailer.rightWheels': [
      'right|passenger side|curb side & wheel|wheels|side|tires ! hub|psi|degrees|front|bearing',
    ],
    'lever.reading': [
      'scale & showed|shows|reads|read|said|says|pressed|weighs ! coupler|from|feet|foot|axle|front|rear',
    ],
    'lever.toBlock': ['from|to & block|blocks & ~coupler ! scale'],
    'lever.toScale': ['from|to & scale & ~coupler ! block'],
    'trip.gusts': ['gust|gusts|gusting|wind|winds|crosswind|windy|blow*'],
    'trip.speed': [
      'run|runs|running|cruise*|drive|drives|driving|do|doing|go|goes|tow|tows|pull|hold & interstate|highway|freeway|on the road|mph|road|every weekend|hwy ! psi|battery|charge|stop',
    ],
    'trip.steepestGrade': ['grade|grades|slope|incline|steep|percent hill'],
    'trip.distance': [
      'away|from our|from home|one way|to go|total|trip|drive|over|route|haul & mi|miles|mile|kilometers|km ! per|back|ago|an hour',
    ],
    'trip.towSpeed': [
      'hold|keep|keeping|tow|towing|pull|pulling|plan|cruise at|stay at|go & ~trailer|tow ! alone|solo|without|empty|by itself|trial|test|psi|nights|below',
    ],
    'hub.hottest': [
      'hub|wheel|bearing|one|drum & hot|hottest|bad|reads|shot|gun|left|right|rear|front ! others|rest|mates|limit|psi',
    ],
    'hub.coolest': [
      'others|rest|mates|other three|other 3|remaining & ~hub|hubs|gun|wheel|bearing ! psi',
    ],
    'tire.softest': [
      'one|soft|low|flat|down to|losing|left|right & ~tire|tpms|psi & psi|reads|shows|at|to ! others|rest|mates|label|sidewall|max|wheel stamped|rim',
    ],
    'tire.mates': ['others|rest|mates|other three & ~tire|psi|tpms'],
    'towed.weight': [
      `<${vehicle}|toad|hatchback|hatch|dinghy|little car|coupe & weigh*|is|about|round|lb|pound*|with fuel|full tank|loaded|ready|heavy ! motorhome|coach|dolly|trailer|bar|tongue|rated|combined|book|manual|year|mph|tow|tows|gvwr`,
      '~hatchback|hatch|toad|dinghy|small car|little car|car along|car & weigh*|with fuel|full tank|full of fuel|with everything|ready to roll ! motorhome|coach|dolly|bar|rated|combined|rear axle',
    ],
    'towed.tongue': ['tongue & ~dolly|trailer|car hauler ! receiver|rated'],
    'motorhome.weighed': [
      'motorhome|coach|class c|class a|rv|bus & weigh*|scale|rolls|loaded|cat scale ! rear|back|gcwr|combined|rated|gvwr|car|higher',
    ],
    'motorhome.rearWeighed': [
      'rear axle|back axle|drive axle|rear & ~weigh*|scale|scaled|of that & ~motorhome|coach|class c|class a|rv ! rated|gawr|limit',
    ],
    'carrier.weight': [
      'dolly|hauler|flat trailer|flatbed|car trailer & empty|weighs|weight|itself|is ! carry|carries|rated|good for|holds|may',
    ],
    'carrier.rating': [
      'carry|carries|rated|good for|holds|may|capacity & ~dolly|hauler|flat trailer|flatbed|car trailer|carrier ! tow bar|bar|base plate|car weighs|receiver',
    ],
    'towBar.rating': [
      'bar|tow bar|base plate|baseplate|a-bar & rated|good|stamped|marked|say|says|good for|rating ! higher|rise|rises|sway|spring|car',
    ],
    'towBar.rise': [
      'bar|tow bar & higher|lower|rise|rises|up|slope|slopes|difference|drop|out of level & ~coach|motorhome|rv',
    ],
  },
  values: {
    'trailer.axles': {
      '1': ['single|one & axle ! not|rated|weigh*'],
      '2': ['tandem|tandems|twin axle|dual axle|double axle|two axles|both axles'],
    },
    'trailer.brakes': {
      none: [
        'trailer & has no|no|without & brakes of its own|brakes ! with|works|rated|brake box|controller',
      ],
    },
    'vehicle.distributionAllowed': {
      no: [
        'distribution|distributing|spring bar|spring bars|spring-bar|wd|wdh & not allowed|not permitted|not to be used|prohibit*|forbid*|forbidden|may not|must not|do not use|not recommended|not be used',
        'no spring bars|no distribution|no weight distribution|no wd & allowed|permitted|says',
      ],
      yes: [
        'distribution|distributing|spring bars|wd & allowed|allows|permits|permitted|fine with ! not|no|without|never',
      ],
    },
    'hitch.distribution': {
      yes: [
        'wd hitch|wd bars|wdh|weight distribution hitch|weight distributing hitch|weight-distributing hitch|weight distribution setup|distribution hitch ! no|not|without|w/o|need|should|get|buy|add|lbs with|pounds with|allowed|permits|with a',
        'bars & snug|tight|tensioned|cranked|stamped & ~distribution|wd|spring ! no|friction|sway',
      ],
    },
    'vehicle.towPackage': {
      yes: [
        'tow package|towing package|tow pkg|tow pack|trailering package|tow group|max tow & has|factory|with|got|came with|on the truck|have|equipped|on it ! no|not|without|w/o|need',
      ],
      no: ["tow package|towing package|tow pkg & no|not|without|w/o|never came|doesn't have"],
    },
    'vehicle.sevenWay': {
      yes: [
        'seven|7 & way|pin|round|prong|blade & plug|socket|connector|way|pin ! no|not|only|need|without|to flat',
      ],
      no: ['four|4 & flat|pin|prong & only|just|has|plug ! adapter|and a'],
    },
    'hitch.swayControl': {
      none: [
        'no|without|w/o|nothing|not any & sway bar|sway control|friction bar|anti-sway|anti sway|sway bars',
      ],
      slack: [
        'sway bar|anti-sway|friction bar|sway control|friction & slack|loose|backed off|not tight|undone|hanging',
      ],
      set: [
        'sway bar|friction bar|sway control|anti-sway & cranked|tight|set|snug|adjusted|as its maker|on and ! not|no|never|slack|loose|worth|adding|need|should',
      ],
    },
    'sway.felt': {
      now: [
        'is|keeps|starts & whipping|swaying|fishtailing|wagging|weaving|swinging|snaking|dancing & now|right now|side to side|we do|what do|all over|driving|at the wheel|behind me',
        'swings|sways|weaves|wags|snakes|whips & from|to|side & ~at the wheel|driving|beside him|beside her ! when|if|home|last|used to',
        "at the wheel|driving|behind the wheel & ~swings|swaying|whipping|wagging|weaving|sways|whips & is|he's|she's|wife|husband|we're|i'm ! was|last|yesterday|drove|home again|parked",
      ],
      'with-trucks': [
        'semi|semis|truck|trucks|bus|buses|eighteen wheeler|18 wheeler|big rig & pass|passes|passing|go by|goes by|comes by|overtake*|blow by|blows by|going by ! no|without|nothing',
      ],
      'by-itself': [
        'by itself|on its own|all on its own|all by itself|for no reason|no wind|out of nowhere & weave*|sway*|wag*|wiggle*|snake*|fishtail*|wander*|swing*|dance*|moves ! never',
      ],
      mended: [
        "has not come back|hasn't come back|never came back|not come back|cured it|fixed it|gone since|not since|no more sway|stopped it & ~sway*|wag*|fishtail*|weave*|wiggle*|tail",
      ],
    },
    'trailer.rides': {
      'nose-high': ['nose|front & high|up|in the air ! truck|fender|not|cone|weight'],
      'nose-low': ['nose & low|down|droops|sags ! truck|not|jack|gets down|weight'],
      level: ['rides|sits|tows|stands|pulls & level|flat|dead level ! not|ground'],
    },
    'tires.pressures': {
      'as-labeled': [
        'tires|pressures|all & at what the label*|as label*|as the label*|to the label*|at label pressure|per the label|as placard*|to the sticker',
        'tires|pressures & label|labels|placard|sticker & at|as|match|matches|spot on ! says|low|under|below|over',
      ],
      below: ['tires|pressures & low|soft|under|below ! not|none|carry'],
    },
    'alone.sameLoad': {
      yes: [
        'same & people|folks|fuel|load|everybody|everything',
        'nobody got out|no one got out|nobody left|all aboard|everyone stayed|everybody stayed',
      ],
      no: [
        'not the same|different & people|folks|fuel|load|head',
        'head & off|out|left at home ! in|on',
      ],
    },
    'towed.manner': {
      'four-down': [
        'four|4|all four|all 4 & down|on the road|on the ground|wheels down|rolling|on the pavement ! dolly|not|truck|tires',
        'flat tow|flat towed|flat-tow|flat towing|dinghy tow*',
      ],
      dolly: ['on|with|a|the & dolly ! no|not|hand'],
    },
    'towed.fourDown': {
      yes: [
        "manual|handbook|book|owners & allows|allow|permits|permit|ok|okay|fine|says yes & ~flat|four|4|all four & it|that|this|which|four|flat|down ! not|no|dolly|doesn't|forbids",
      ],
      no: ["manual|handbook|book & not|forbids|no|never|doesn't & flat|four|4 ! dolly"],
    },
    'towed.dollyAllowed': {
      yes: [
        'manual|handbook|book & allows|allow|permits|ok|okay|fine & dolly|dollies ! not|no|never',
      ],
      no: ['manual|handbook|book & forbids|no|not|never & dolly|dollies'],
    },
    'towed.brake': {
      no: [
        "no|without|doesn't have|hasn't & brake|brakes|brake system|supplemental brake|braking & ~car|toad|hatchback|hatch & car|toad|it|hatch|in ! dolly|trailer brakes|of its own|needed|need",
      ],
      yes: [
        'brake|brake system|braking system & in the car|in it|in the toad|supplemental|auxiliary & ~car|toad ! no|not|without|need|do i',
      ],
    },
    'carrier.brakes': {
      yes: [
        'own brakes|its brakes|surge brakes|electric brakes|has brakes|with brakes|have brakes & ~dolly|hauler|car trailer|flatbed ! no|not|without|need|does',
      ],
      no: [
        "no|without|hasn't|doesn't have & brakes & ~dolly|hauler|car trailer|flatbed|it & dolly|trailer|hauler|it ! car has",
      ],
    },
    'camper.tieDowns': {
      frame: ['tie-downs|tiedowns|tie downs|turnbuckles|tied down|tied|anchors & frame'],
      bed: [
        'tie-downs|tiedowns|tie downs|turnbuckles|tied down|tied|anchors|hook & bed|bed rails|rails|stake pockets|bumper ! frame',
      ],
      none: [
        'no|without|not|nothing|never & tie-downs|tiedowns|tie downs|tied|turnbuckles|holds it|holding it ! frame|rails',
      ],
    },
    'vehicle.dualRearWheels': {
      yes: ['dually|duallies|dual rear|dual wheels|drw|duals'],
      no: ['single rear wheel*|single wheels|srw|not a dually|singles on the'],
    },
    'vehicle.body': {
      crossover: ['crossover|suv|cuv'],
      van: ['van|minivan ! cargo van trailer'],
      pickup: ['pickup|pick-up|electric truck|ev truck|hybrid truck'],
      sedan: ['sedan|saloon|station wagon|electric car|hybrid car'],
    },
    'vehicle.drive': {
      battery: [
        'electric|ev|battery-electric|all-electric & crossover|suv|truck|pickup|van|car|wagon|vehicle|sedan ! hybrid|brakes|gas|jack|trailer brake',
        'kwh ! hybrid',
      ],
      'plug-in-hybrid': ['plug-in|plug in|phev & hybrid ! no|not|without'],
      hybrid: ['hybrid ! plug-in|plug in|phev'],
      engine: [
        'gas|gasoline|diesel|petrol & truck|engine|suv|van|pickup|v6|v8 ! motorhome|stove|bottle|smell',
      ],
    },
    'trailer.nose': {
      flat: ['flat|boxy|square|blunt|straight & front|fronted|nose|nosed|box|boxes ! flat on|tire'],
      rounded: ['rounded|round|aero|aerodynamic|sloped|curved & front|fronted|nose|nosed ! flat'],
      low: ['low|pop-up|pop up|folding & trailer|camper ! slow|nose'],
    },
    'hitch.latched': {
      no: [
        "latch|coupler|lever|handle|jaw|jaws & won't|doesn't|does not|no longer|not|never|can't & close*|latch*|lock*|seat*|go down|shut|hold* ! furnace|door|fridge|oven",
      ],
      yes: ["latch|latched|coupler & pinned|pin in|pin is in|closed and ! not|never|won't"],
    },
    'hitch.chains': {
      yes: ['chains & crossed|are on|hooked|held|hanging on ! not|no|never|off|need|without'],
      no: ['chains & no|without|not|never|forgot|gone|dragging|off ! no problem'],
    },
  },
};
