import type { Fact } from '@tarebook/rules/engine';

/** A choice as a person reads it: “at rest” where a case has `at-rest`. */
export const optionSaid = (option: string): string => option.replaceAll('-', ' ');

/** A value of a fact as a person reads it. */
export const choiceSaid = (fact: Fact | undefined, value: string): string =>
  fact?.kind === 'choice' ? optionSaid(value) : value;
