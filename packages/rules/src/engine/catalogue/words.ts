import type { Catalogue, OptionRule } from '../define/catalogue';
import { message } from '../words/message';
import { say } from '../words/say';
import { heading, type Said, text } from '../words/value';

/** A rule between options. */
export function ruleSaid({ options }: Catalogue, rule: OptionRule): Said {
  const label = (option: string): string => options[option]?.label ?? option;
  const of = rule.others.map((each) => heading(label(each)));
  switch (rule.kind) {
    case 'requires':
      return message('only-with', { option: text(label(rule.option)), of });
    case 'excludes':
      return message('not-with', { option: text(label(rule.option)), of });
    case 'one-of':
      return message('one-of', { of });
  }
}

/** The same as a person reads it: “Roof rack: only with rear ladder”. */
export const ruleInWords = (catalogue: Catalogue, rule: OptionRule): string =>
  say(ruleSaid(catalogue, rule));
