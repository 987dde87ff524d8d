import type { Clauses } from './shapes';

const cells =
  'agm|agms|lithium|lithiums|lifepo4|gel|flooded|battery|batteries|batt|batts|deep-cycle|deep cycle|bank|lead';
const sun = 'solar|panel|panels|pv';
const air = 'ac|a/c|air conditioner|air con|aircon|air conditioning|aircondition|rooftop unit|air';

/** Battery, shore power, gas, water and cold. */
export const livingClauses: Clauses = {
  numbers: {
    'battery.capacity': [
      `${cells}|one|single|two|each & ah|amp-hour|amp-hours|amp hour|amp hours|amphour*|ampere-hours|hour|hours ! a day|per day|use|draws|more|extra|add|adding|another|second|2nd|furnace|night`,
      `~${cells} & ah|amp-hours|amp hours ! a day|per day|use|draws|more|extra|add|adding|another|second|2nd`,
    ],
    'battery.voltage': [
      `${cells}|meter|multimeter|voltmeter|it & v|volt|volts|read|reads|showed|shows|sits|rested|woke|down|says|measured ! series|parallel|system|pedestal|outlet|leg|post|amp|percent|degrees`,
    ],
    'battery.rested': [
      'after|rest|rested|resting|stood|standing|sat|sitting|off & hour|hours|hrs|h ! furnace|run|sun',
    ],
    'battery.temperature': [
      'cell|cells|battery|pack|batteries & temp|temperature|degrees|cold|warm|at|inside ! outside|tonight|%|volt*',
    ],
    'bank.parallel': ['parallel|side by side'],
    'bank.series': [
      'series|in line|in a row & ~6|six|6-volt|6-volts|six-volts|six-volt|battery|batteries|golf',
    ],
    'inverter.power': ['inverter & w|watt|watts|size|rated|plate|of|kw ! idle|idles|surge|peak'],
    'inverter.idle': ['inverter & idle|idles|idling|standby'],
    'charger.current': [
      'charger|converter|charging & amp|amps|a|of|his|her|my ! volt*|trip*|breaker|fuse|hot',
    ],
    'wire.length': [
      'wire|cable|wiring & ft|foot|feet|long|one way|run ! cord|extension|miles|trailer is',
    ],
    'wire.fuse': ['fuse|class t ! trips|panel|volt*'],
    'wire.current': ['draw|draws|continuous|current|load|pulls & ~wire|cable|gauge|fuse'],
    'steady.power': [
      'cpap|machine|fridge|load|fan|fans|router|heater pad|pad|laptop & w|watt|watts|draws|pulls|uses ! solar|panel|inverter',
    ],
    'steady.hours': [
      'cpap|fan|blower|machine|furnace fan|fridge|runs|run it|carry|load & hour|hours|hrs|h ! rest*|sun|drive|after|charg*',
    ],
    'monitor.stateOfCharge': [
      'monitor|shunt|app|charge|battery|full|batteries & %|percent|full ! health|humidity|grade|start|leave|duty|lead',
    ],
    'solar.power': [
      `${sun} & w|watt|watts|of|roof ! add|adding|another|more|want|put|wants|inverter`,
    ],
    'solar.peakSunHours': ['sun|sunshine|sun hours|sunny & hour|hours|hrs'],
    'place.latitude': ['latitude|degrees north|north & ~north|latitude|degrees'],
    'furnace.input': [
      'furnace|heater|heating & btu|btus|input|in|plate|rated ! watt*|output|water|degrees|set|volt*|amp*|hours',
    ],
    'furnace.blowerCurrent': [
      'furnace|blower|fan & amp|amps|a|draws|takes|pulls ! hours|breaker|charger|ah',
    ],
    'furnace.hours': ['furnace|heater|heat|heating|blower & hour|hours|hrs ! rest*|after'],
    'trip.nights': [
      'night|nights|nites & ~gas|propane|bottle|bottles|cylinder|furnace|heat ! burner*',
    ],
    'cylinder.fill': [
      'bottle|bottles|tank|tanks|cylinder|cylinders|propane|jug|jugs|pounder|pounders & lb|lbs|pound|pounds|pounder|pounders|kg|of gas|full|propane ! tare|tw|wc|scale|weighs|water|gal|gallon|gray|fresh|black|a night|per night|a day|burn*|used|stamped',
    ],
    'cylinder.tare': ['tw|tare|t.w. & ~scale|propane|bottle|cylinder|gas|collar|tank|stamped'],
    'cylinder.waterCapacity': ['wc|water capacity & ~stamped|collar|tw|bottle|cylinder'],
    'cylinder.scaleWeight': [
      'bottle|tank|cylinder|it|scale|scales|hook & weighs|scale|scales|weighed|fish scale|luggage ! plus|over|tare|tw|empty|stamped|trailer|tongue|axle',
    ],
    'cylinder.age': [
      'bottle|bottles|cylinder|cylinders|tanks & old|years|yrs|year ! hose|alarm|battery|trailer|left',
    ],
    'hose.age': ['hose|hoses|pigtail|pigtails & old|years|yrs|year'],
    'alarm.gasAge': ['gas|propane|lp & alarm|detector & old|years|yrs|year ! co|monoxide'],
    'alarm.monoxideAge': ['co|carbon|monoxide & alarm|detector & old|years|yrs|year'],
    'tank.gauge': ['gauge|needle|dial|reads & %|percent & ~tank|propane|gas ! tire|battery|charge'],
    'gas.dayUsed': ['use|uses|burn*|go through|used & day|daily & lb|pounds|propane|lbs'],
    'regulator.capacity': ['regulator & btu|btus|rated|stamped|capacity'],
    'water.freshTank': [
      'fresh|fresh water|fresh tank & tank|gal|gallon|gallons|holds|of ! heater|gray|grey|black|use',
    ],
    'water.grayTank': [
      'gray|grey|sink tank|galley & tank|gal|gallon|gallons|holds|is|of ! fresh|black',
    ],
    'water.blackTank': [
      'black|toilet tank|sewage & tank|gal|gallon|gallons|holds|is|of ! fresh|gray|grey',
    ],
    'water.daily': ['use|uses|using|go through|need & day|daily & gal|gallon|gallons'],
    'stay.days': [
      'stay|stays|staying|out|off-grid|off grid|boondock*|dry camp*|camping|hookups|no hookups|last|without hookups & day|days|nights|night|week|weeks ! trip|storage|ago|old|furnace|gas',
    ],
    'outside.temperature': [
      'outside|out|tonight|night|nights|overnight|forecast|forecasts|low|lows|frost|freeze|morning|dawn|weather|thursday|friday|saturday|sunday|monday|tuesday|wednesday & degree|degrees|°|f|c|below|celsius|fahrenheit|deg|out|down|low|lows|drop*|zero ! heat set|thermostat|inside|hub|battery|cell|volt*|hour*|mph',
    ],
    'inside.temperature': [
      'inside|indoors|thermostat|heat set|keep it|heat & degree|degrees|set|at|on|to|f ! outside|hub|hours',
    ],
    'inside.humidity': ['humidity|hygrometer|damp'],
    'blowout.pressure': ['blow*|compressor|air|lines & psi|pounds|regulator|set ! tire|tires'],
    'supply.breaker': ['breaker & amp|amps|a ! trip*|water heater'],
    'airConditioner.current': [
      `${air} & amp|amps|a|draws|takes|pulls|running & a|amp|amps|draws|takes|pulls ! breaker|cord|outlet|plug|hookup|service`,
    ],
    'cord.gauge': ['gauge|ga|awg & cord|extension|cable|wire ! fuse|inverter|charger|battery'],
    'cord.length': [
      'cord|extension|extension cord|extension lead & ft|foot|feet|long ! wire|breaker|trailer is',
    ],
    'generator.power': [
      'generator|genny|gen|genset|gen set & w|watt|watts|running|kw|rated ! start*|peak|surge|feet|altitude|ft',
    ],
    'generator.starting': ['starting|peak|surge|start & ~generator|genny|gen|genset'],
    'generator.altitude': [
      'up|altitude|elevation|elev|at|feet & ft|feet|foot|elevation|altitude & ~generator|genny|gen|genset ! cord|away|off|miles',
    ],
    'voltage.outlet': [
      'outlet|pedestal|post|plug|hookup|site|leg & volt|volts|v|reads|read|meter|showing|at ! other|amp|amps|second leg|falls|drops|battery|skin|ground',
    ],
    'vehicle.usableBattery': ['kwh & use|usable|battery|pack|really|capacity ! mile|/mi'],
    'vehicle.batteryHealth': [
      'battery|pack|health|soh|degrad* & %|percent & of new|health|left|degraded|capacity|new|soh ! start|leave|set off|charge',
    ],
    'solo.consumption': [
      'alone|solo|by itself|without|without a trailer|on its own|empty|nothing hitched & kwh|mi|mile|per mile|takes|uses ! trial|trailer behind|with',
    ],
    'trial.consumption': [
      'kwh|mi|mile & ~trial|test|trailer behind|loop|with the trailer|with our own trailer|towed ! alone|solo|without',
    ],
    'trial.speed': [
      'mph|steady|at|held & ~trial|test run|test loop|test drive|trial loop ! alone|solo|going to|plan',
    ],
    'solo.fuelEconomy': [
      'mpg & alone|solo|by itself|without|own|empty|itself|normally|highway|gets|get|does|nothing ! with the trailer|towing|pulling|behind',
    ],
    'solo.speed': [
      'at|mph|steady & ~alone|solo|by itself|without a trailer|without|on its own|mpg|empty & ~mpg|kwh|gallon ! trial|hold|tow|plan|limit|towing|pull|pulling|miles|do',
    ],
    'trip.startCharge': [
      'start|set off|leave|leaving|begin|head out|setting off|depart & %|percent',
    ],
    'trip.fuel': ['tank|fuel|gas & start|left|in it|in the tank|aboard & ~mpg|hybrid|miles'],
    'vehicle.fuelTank': [
      'tank|fuel tank|gas tank & gal|gallon|gallons & ~mpg|hybrid|fill-up*|fill up*|range|fuel ! gray|fresh|black|propane|water',
    ],
    'charge.power': ['kw & charg*|average|stall|station'],
  },
  values: {
    'battery.chemistry': {
      flooded: [
        'lead acid|lead-acid|flooded|wet cell|wet cells|lead ! agm|lithium|gel|or|free|instead|from',
      ],
      agm: ['agm|agms ! or|instead|lithium|from'],
      lifepo4: ['lithium|lithiums|lifepo4|lfp|li-ion ! or|instead|upgrade|tracker|worth|switch'],
    },
    'battery.reading': {
      'at-rest': [
        'nothing running|nothing on|no load|standing|stood|sat|overnight|all night|no charger|at rest|resting|disconnected|on its own & ~v|volt|volts|reads|read|showed|battery at|batt at ! furnace|blower|pedestal|outlet|hookup|with the|furnace on|equaliz*|charged',
      ],
      charging: [
        'on the charger|charging|plugged in|charger on|solar on it & volts|v|read|reads|shows',
      ],
    },
    'trailer.use': {
      'lived-in': [
        "living in|live in|sleeping in|sleep in|stay in|lives in & it|trailer|camper|caravan ! not|nobody|not living|alarm|won't",
      ],
      'stands-unused': [
        'stored|storage|stands|standing|parked|empty|sits & winter|unused|till spring|until spring|outdoors|nobody in ! living',
      ],
    },
    'water.state': {
      'in-use': [
        'water & in the lines|in its|in the heater|in the tanks|still in|in it ! no|drained|blown|out of',
      ],
      winterized: [
        "blown out|winterized|winterised|antifreeze in|pink stuff in|drained and bypassed ! put|not|haven't|never|before|should|how|need|first",
      ],
      drained: [
        "drained|emptied & lines|tanks|heater|water|everything ! not|never|haven't|heater drained",
      ],
    },
    'supply.outlet': {
      'household-15': [
        '15|fifteen|household|house|normal|regular|ordinary|garage|wall & outlet|socket|receptacle|plug|amp garage|circuit ! dryer|welder|50|30 amp outlet|20|on the trailer',
      ],
      'trailer-30': ['30|thirty|tt-30 & pedestal|post|hookup|site|power post ! 50|fifty|service'],
      'four-pin-50': [
        '50|fifty|14-50 & pedestal|post|hookup|site|outlet ! ft|foot|feet|30|extension',
      ],
      generator: [
        'generator|genny|genset & run|runs|start|power|plugged|plug|off|from & ac|air|aircondition|air conditioner|microwave|trailer|camper|battery|charger ! hate|loud|next',
      ],
    },
    'trailer.inlet': {
      '30': [
        '30|thirty & amp|amps|a|30a & trailer|camper|rig|inlet|service|shore cord ! pedestal|post|outlet|site|fuse|breaker',
      ],
      '50': [
        '50|fifty & amp|amps|a|50a & trailer|camper|rig|inlet|shore cord ! pedestal|post|outlet|site|ft|feet',
      ],
    },
    'furnace.duty': { '50 %': ['half & the time|duty|of the night'] },
    'power.hookup': {
      no: ['no|without|w/o|any & hookup|hookups|shore power'],
      yes: [
        'full hookups|plugged in|on shore power|with hookups|electric site ! not|no|never|without',
      ],
    },
    'charge.access': {
      stall: [
        'stalls|stall|drop the trailer|dropping the trailer|unhitch & ~charg*|charger|pull-through|stop|stops ! pull-throughs only',
      ],
      'pull-through': [
        'pull-through|pull through|pull-throughs|drive-through & charg*|charger|stops ! no|not|only stalls|without',
      ],
    },
    'steady.onInverter': { yes: ['through & inverter ! add|install|want|need'] },
  },
};
