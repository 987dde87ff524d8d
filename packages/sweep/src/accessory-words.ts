import { type Accessories, type Accessory, type Effect, effectOf } from './accessories';
import type { Entry } from './catalogue';
import { rateSaid } from './rates';

const capital = (word: string): string => `${word.charAt(0).toUpperCase()}${word.slice(1)}`;

/** On which model years of a line it fits, and why that changed; one sentence. */
export function fitSaid({ fits }: Accessories, { id, label }: Accessory, line: string): string {
  const own = fits.filter(({ accessory }) => accessory === id);
  const whole = capital(line);
  if (own.length === 0)
    return `${label}: fits the ${whole} line in every model year, as every other.`;
  const found = own.filter((each) => each.line === line);
  if (found.length === 0) {
    const others = [...new Set(own.map((each) => capital(each.line)))].join(', ');
    return `${label}: does not fit the ${whole} line; it fits ${others}.`;
  }
  const spans = found.map(({ from, to, because }) => {
    const years = to === '' ? `from model year ${from} on` : `in model years ${from} to ${to}`;
    return because === '' ? years : `${years}, because ${because}`;
  });
  return `${label}: fits the ${whole} line ${spans.join('; ')}.`;
}

const pounds = (value: number): string =>
  `${Math.round(Math.abs(value)).toLocaleString('en-US')} lb`;

function tongueSaid({ tongue }: Effect): string {
  if (Math.round(tongue) === 0) return 'leaves the tongue and the payload as they are';
  return tongue > 0
    ? `puts ${pounds(tongue)} on the tongue and takes as much of the payload`
    : `takes ${pounds(tongue)} off the tongue and gives as much of the payload back`;
}

/** What it does to one trailer's tongue and to the payload of whatever tows it; one sentence. */
export function effectSaid(all: Accessories, accessory: Accessory, trailer: Entry): string {
  const effect = effectOf(all, accessory, trailer);
  const { weight, sits } = accessory;
  if (!effect) {
    return `What it does to the tongue of ${trailer.name} cannot be said: nobody tells ${sits === undefined ? 'where' : 'how far from the axle'} it sits.`;
  }
  if (effect.trailer === 0) {
    const where = sits === 'hitch' ? 'on the hitch' : 'in the vehicle';
    return `It sits ${where}, takes ${pounds(weight)} of the payload, and nothing of what the trailer may carry.`;
  }
  const lighter =
    effect.tongue < -0.5 ? ' A lighter tongue sways sooner: weigh it before the first trip.' : '';
  return `On ${trailer.name} it takes ${pounds(weight)} of what the trailer may carry and ${tongueSaid(effect)}.${lighter}`;
}

/** Who fits it and what that costs, whose it is, and who stands behind it. */
export function standingSaid({ rates }: Accessories, { beside, work }: Accessory): string {
  const rate = rates.rates.find((each) => each.work === work);
  const stock = { yes: 'In stock', order: 'To be ordered', no: 'Not kept here' }[beside.stocked];
  const parts = [
    stock ?? 'Whether it is in stock is not told',
    beside.fittedBy && `fitted by ${beside.fittedBy}`,
    rate && rateSaid(rate, rates.source),
    beside.touches && beside.touches !== 'nothing' && `touches ${beside.touches}`,
    beside.standsBehind && `${beside.standsBehind} stands behind it`,
  ].filter((part) => typeof part === 'string' && part !== '');
  const hands =
    beside.touches === 'gas' || beside.touches === '120V'
      ? ' Gas and 120-volt work is for licensed hands.'
      : '';
  return `${parts.join('; ')}.${hands}`;
}

/** The accessory that is meant by what somebody wrote. */
export function accessoryMeant({ accessories }: Accessories, said: string): Accessory | undefined {
  const wanted = said.trim().toLowerCase();
  return accessories.find(({ id, label }) => id === wanted || label.toLowerCase() === wanted);
}
