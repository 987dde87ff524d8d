import { answerEverybody, type Everybody, type Forms, formsOf } from '@tarebook/rules';
import { type Asked, formNames, nearest, type Remedies, type Topic } from '@tarebook/rules/engine';
import { BadInput } from './files';

/** In which forms an answer is wanted, and what it answers first. */
export type Wanted = {
  readonly everybody: boolean;
  readonly forms: boolean;
  readonly asking?: string | undefined;
};

export function wantedFrom(given: Readonly<Record<string, unknown>>): Wanted {
  const { everybody, forms, asking } = given;
  return {
    everybody: everybody === true,
    forms: forms === true,
    ...(typeof asking === 'string' && { asking }),
  };
}

/** The asking named, checked against what people ask of the topic. */
function askingIn({ id, askings = {} }: Topic, { asking }: Wanted): string | undefined {
  if (asking === undefined || Object.hasOwn(askings, asking)) return asking;
  const all = Object.keys(askings);
  const near = nearest(asking, all);
  const hint = near ? ` Did you mean ${near}?` : '';
  throw new BadInput(
    `\`--asking\`: “${asking}” is nothing that ${id} is asked; there is ${all.join(', ') || 'none'}.${hint}`,
  );
}

/** How an answer leaves, as far as that is wanted. */
export type Leaving = {
  readonly everybody?: Everybody;
  readonly asking?: string | null;
  readonly forms?: Forms;
};

/**
 * @param front the asking that the case itself names; what is wanted wins over it
 * @throws BadInput for an asking that the topic does not have
 */
export function leavingOf(
  topic: Topic,
  asked: Asked,
  wanted: Wanted,
  has: { readonly title: string; readonly asking?: string | undefined; readonly changes: Remedies },
): Leaving {
  const asking = askingIn(topic, wanted) ?? has.asking;
  const { title, changes } = has;
  return {
    ...(wanted.everybody && { everybody: answerEverybody(topic, asked, asking) }),
    ...(wanted.forms && formsOf(topic, asked, { asking, title, changes })),
  };
}

const named: Readonly<Record<keyof Forms, string>> = {
  ticket: 'Ticket',
  short: 'In short',
  spoken: 'Spoken',
  everybody: 'For everybody',
  post: 'Post',
  letter: 'Letter',
  askBack: 'Ask back',
  sheet: 'Sheet',
  slip: 'Slip',
};

/** The forms as text, each under its name. */
export function leavingAsText({ everybody, forms }: Leaving): string {
  const told = forms ? formNames.map((name) => `${named[name]}\n\n${forms[name]}\n`) : [];
  const length = everybody && `${named.everybody}, ${everybody.seconds} seconds`;
  return [...(everybody ? [`${length}\n\n${everybody.text}\n`] : []), ...told].join('\n\n');
}
