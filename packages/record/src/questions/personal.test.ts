import { expect, test } from 'vitest';
import { masked, personalIn } from './personal';

/** What somebody writes, and what of it is personal. */
const told: readonly (readonly [string, readonly string[]])[] = [
  // Whoever signs a letter, in whichever way.
  ['Is that so?\n\nYours faithfully, Otto Brindle', ['Otto Brindle']],
  ['Is that so?\n\nYours truly,\nEdda Brindle-Moss', ['Edda Brindle-Moss']],
  ['What is it worth? E. Brindle', ['E. Brindle']],
  ['Should we?\n\nYours,\nOtto and Edda Brindle', ['Otto', 'Edda Brindle']],
  // Whoever calls, as it is noted or typed.
  ['Edda Brindle, about her letter. Coupler 18 in.', ['Edda Brindle']],
  ['hi edda brindle again from the lake. still no answer', ['edda brindle']],
  ['hey its otto brindle. can i come by', ['otto brindle']],
  ['please ring Otto back', ['Otto']],
  // How they are reached.
  ['mail it to 7 Cooper Close, Brackwater', ['7 Cooper Close, Brackwater']],
  ['ship to 12 cooper st apt 3, low elm', ['12 cooper st apt 3, low elm']],
  ['text me at 555 0143', ['555 0143']],
  ['i am at +44 1632 960 123', ['+44 1632 960 123']],
  ['answer @brindle_on_wheels please', ['@brindle_on_wheels']],
  ['vin 1zz9t2028rm004417 needs a sticker', ['1zz9t2028rm004417']],
  ['its plate KLV 2093', ['KLV 2093']],
];

test.each(told)('%s', (text, personal) => {
  expect(personalIn(text)).toEqual(personal);
});

/** Figures and words of the trade that stand as personal words do. */
const figures: readonly string[] = [
  'trailer plate 7600, manual 9200',
  'trailer plate GVWR 5800, dry 4400',
  'on the plate 5800 LB',
  'ball 350 5000 trailer, is that ok',
  'front 2890 slack, 3610 rear',
  'I need 4 new st tires, load range e',
  'run them @ 65 or @80 psi',
  'hi its cold outside. will it freeze',
  'hi again, the furnace is back',
  'the lane is 12 feet wide and the road is icy',
];

test.each(figures)('nothing in “%s” is personal', (text) => {
  expect(personalIn(text)).toEqual([]);
  expect(masked(text)).toBe(text);
});
