import type { Catalogue, OptionRule } from '../define/catalogue';

const either = (words: readonly string[]): string =>
  words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} or ${words.at(-1)}`;

/** A rule between options as a person reads it: “Roof rack: only with rear ladder”. */
export function ruleInWords({ options }: Catalogue, rule: OptionRule): string {
  const label = (option: string) => options[option]?.label ?? option;
  const others = rule.others.map(label).map((each) => each.charAt(0).toLowerCase() + each.slice(1));
  switch (rule.kind) {
    case 'requires':
      return `${label(rule.option)}: only with ${either(others)}`;
    case 'excludes':
      return `${label(rule.option)}: not together with ${either(others)}`;
    case 'one-of':
      return `Of those offered, one and only one: ${either(others)}`;
  }
}
