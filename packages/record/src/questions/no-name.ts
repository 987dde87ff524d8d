import { lookedAt } from '../danger/find';
import { urgentIn } from './urgent';

/** What people ask about, or how they call for help: no first line of these is a signature. */
const things =
  /(?<!\p{L})(?:help|urgent|emergency|danger|warning|problem|trouble|gas|propane|l\.?p\.?|carbon|monoxide|smok(?:e|es|ing)|sparks|smells?|odor|fumes|leaks?|leaking|alarm|detector|fire|flames?|fuses?|breakers?|shocks?|voltage|solar|inverter|converter|charger|batter(?:y|ies)|generators?|outlets?|plugs?|tires?|wheels?|lugs?|bearings?|hubs?|brak(?:es?|ing)|sway(?:ing|s)?|hitch(?:es)?|couplers?|couplings?|tongue|chains?|jacks|axles?|springs|trailers?|campers?|trucks?|tow(?:ing|s)?|payload|weights?|ratings?|furnace|heaters?|fridge|refrigerator|stove|oven|range|toilet|pipes?|hoses?|tanks?|pump|plumbing|awning|roof|floor|windows?|slide-?outs?|antifreeze|frozen|freezing|spares?|tools?|theft|stolen|scales?|weigh(?:ing)?|specs?|pric(?:e|es|ing)|warranty|insurance|delivery|rentals?|hours)(?!\p{L})/iu;

/** Whether words that stand where a name would tell of a thing or a danger, and are no name. */
export const isThing = (words: string): boolean => things.test(words);

/** “@lil_tow_peep” names somebody, whatever words stand in it. */
export const isHandle = (name: string): boolean => /^@[\w.]+$/.test(name);

/** What heads the place where messages came in, whatever it was about there. */
const places =
  /(?<!\p{L})(?:comments?|replies|phone|calls?|voicemails?|texts?|mails?|e-?mails?|letters?|counter|desk|walk-?ins?|posts?|radio|web(?:site)?|forms?|videos?|films?|clips?|forum|show|channel|inbox|messages?)(?!\p{L})/iu;

/** Whether a heading tells of a danger itself, and is no place where messages came in. */
export const isAlarm = (heading: string): boolean =>
  !places.test(heading) && urgentIn(heading) !== null;

/**
 * Whether what was taken for the writer’s name makes a message urgent, or urgent otherwise: then those
 * words are said too. Some names are words: a Dawn or a Brown alone tells of nothing.
 */
export function isUrgentBy(name: string, text: string): boolean {
  if (name === '' || isHandle(name) || lookedAt(name).named.size === 0) return false;
  const urgent = urgentIn(`${name}\n${text}`);
  return urgent !== null && urgent !== urgentIn(text);
}
