import { parseFormula } from '@tarebook/rules/engine';
import temml from 'temml';
import { formulaTex } from './tex';

/**
 * A formula as MathML. Style attributes are left out, since the page's policy allows none; the
 * classes that remain are styled in rules.css.
 *
 * @throws when `is` is no formula
 */
export function formulaMath(name: string, is: string, unit: string): string {
  const tex = formulaTex(name, parseFormula(is), unit);
  const math = temml.renderToString(tex, { displayMode: true, throwOnError: true, trust: false });
  return math.replace(/ style="[^"]*"/g, '');
}
