import { figuresOf, type UnitSystem } from '../../quantity';
import { figureIn, filled } from './fill';
import type { Language } from './language';
import type { Medium, Quantity, Say, Sayable, Text, Value } from './value';

/** How something is said; absent: American English, US units, written. */
export type Voice = {
  readonly language?: Language | undefined;
  readonly units?: UnitSystem | undefined;
  readonly medium?: Medium | undefined;
};

const isSayable = (value: Value | undefined): value is Sayable =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** A speaker of one voice; where it has no language, of the one given beside. */
export function speakerOf(
  { language: own, units = 'us', medium = 'written' }: Voice,
  otherwise: Language,
): Say {
  const language = own ?? otherwise;
  const quantity = (value: Quantity): string => {
    const { unit, style = value.of ? 'margin' : 'round' } = value;
    if (style === 'year') return language.years(value, medium);
    const close = style === 'round' && medium === 'spoken' ? 'aloud' : style;
    return language.quantity(figuresOf(value, unit, units, close), medium);
  };
  const inText = ({ text, values = {} }: Text): string => {
    const said = filled(language.text(text, medium), (name) => {
      const figure = figureIn(name);
      if (figure) return quantity({ ...figure, style: 'exact' });
      const value = values[name];
      if (!isSayable(value)) throw new Error(`Nothing fills “${name}” in “${text}”.`);
      return say(value);
    });
    return language.joined?.(said, medium) ?? said;
  };
  const say = (value: Sayable): string => {
    if ('text' in value) return inText(value);
    if ('heading' in value) return language.heading(value.heading, medium);
    if ('option' in value) return language.option(value.option, medium);
    if ('own' in value) return language.own(value.own, medium);
    if ('unit' in value) return quantity(value);
    const word = language.words[value.code];
    if (!word) throw new Error(`“${language.tag}” has no words for “${value.code}”.`);
    return word(value.values, speaker);
  };
  const speaker: Say = Object.assign(say, { medium });
  return speaker;
}
