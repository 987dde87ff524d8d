/** What can hurt somebody when it is not as it should be. */
const hurts =
  /(?<![\p{L}\d])(?:t[iy]re?s?|wheels?|whl|rims?|hubs?|hubcaps?|nuts?|lugs?|studs?|axles?|springs?|shackles?|fenders?|bearings?|hitch|coupler|ball|tongue|tounge|latch|handle|lever|chains?|hooks?|pin|clip|stinger|shank|chocks?|jacks?|blocks?|legs?|scissors?|stabili[sz]ers?|ramps?|brakes?|pedal|controller|frame|welds?|receiver|rails?|bars?|safety \w+|propane|gas|bottles?|tank valve|cylinders?|regulator|fittings?|valve|burners?|flame|pilot|stove|oven|grill|furnace|heater|flue|exhaust|generator|genny|plugs?|prongs?|cords?|outlets?|sockets?|switch(?:es)?|breakers?|fuses?|panel|pedestal|pole|hookup|wires?|wiring|lights?|lamps?|bulbs?|converter|charger|inverter|volts|voltage|current|faucets?|shower|tap|metal|batter(?:y|ies)|lithium|ac|alarm|detector|sniffer|beeper|co|hose|toilet|pipes?|roof|steps?|awning|slide|bunks?|door|steering)(?![\p{L}\d])/iu;
/** Whoever wants, weighs up, buys or asks something tells of no danger; nor do figures. */
const calm =
  /^\W*(?:is|are|was|will|would|do|did|does|can|could|should|have|has|may)\b|\d|\?|(?<![\p{L}])(?:wants?|wanted|wondering|wonders?|looking (?:at|for|to)|needs?|buy|buying|sell|selling|order|install|fits?|rated|rating|weighs?|weighed|weight|lbs?|pounds?|psi|costs?|price|how|which|recommend\w*|worth|should|best|better|upgrade|add|adding|trade|tow|pull|thinking|like to|love|prefer|insurance|warranty|policy|claim|plan|appointment|gallons?|amps?|watts?|ah|days?|payload|gvwr|dry|capacity|what|where|could|would|does|do (?:i|you|we)|is (?:it|there|that)|are (?:there|they)|can (?:i|we|you|it)|any|lock|stolen|storage|spares?|cust|rules?|asks?|asked|questions?|friend says|first (?:trip|long)|originals?|single axle|tandem|load range|mpg|own|tools?|theft|color|curtains?|please|thanks?|thank you|call me)(?![\p{L}])/iu;
/** How fast, how high, how long and how often say what happened. */
const howMuch =
  /(?<![\p{L}\d])[\d,]+ ?(?:mph|feet|foot|ft|a\.?m|p\.?m|min|minutes?|seconds?|hours?|times|miles?|volts?)(?![\p{L}\d])|(?<=\b(?:at|over|to) )\d\d(?!\d|%| ?(?:psi|lb|degrees|gal))/giu;
/** In fewer words nobody tells what happened. */
const fewest = 5;

/**
 * Whoever tells what a thing is like or did, and wants nothing else, tells it because it is not as it
 * should be; in which words is past foreseeing.
 *
 * @returns the thing that is told of
 */
export function reportedIn(sentence: string): string | undefined {
  if (sentence.trim().split(/\s+/).length < fewest || calm.test(sentence.replace(howMuch, ' ')))
    return undefined;
  return hurts.exec(sentence)?.[0];
}
