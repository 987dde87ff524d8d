import type { Decision } from '../../engine/define/shapes';
import { insurers } from '../../trade/bibliography/common';
import { layers } from '../../trade/bibliography/theft-deterrence';

/** Whether what holds it is enough for how it is exposed. */
export const holdTable: Decision = {
  label: 'What holds it',
  hit: 'unique',
  on: ['theft.exposure', 'place.takesAnchor', 'guard.held'],
  rows: [
    { when: ['-', '-', 'nothing'], gives: 'bare' },
    {
      when: [
        'low',
        '-',
        ['coupler', 'coupler-and-wheel', 'coupler-and-both-wheels', 'anchored', 'hitched'],
      ],
      gives: 'enough',
    },
    { when: ['raised', '-', 'coupler'], gives: 'half' },
    {
      when: [
        'raised',
        '-',
        ['coupler-and-wheel', 'coupler-and-both-wheels', 'anchored', 'hitched'],
      ],
      gives: 'enough',
    },
    { when: ['high', '-', ['coupler', 'coupler-and-wheel', 'hitched']], gives: 'half' },
    { when: ['high', 'yes', 'coupler-and-both-wheels'], gives: 'half' },
    { when: ['high', 'no', 'coupler-and-both-wheels'], gives: 'enough' },
    { when: ['high', '-', 'anchored'], gives: 'enough' },
  ],
  results: {
    enough: {
      label: 'enough here',
      level: 'ok',
      says: 'What holds it is enough for where it stands.',
    },
    half: {
      label: 'half of it',
      level: 'care',
      says: 'What holds the trailer is half of what is called for here.',
      because: 'A second thing, at another place of the trailer, costs a thief twice the time.',
      do: 'Add a second lock, at another place of the trailer.',
    },
    bare: {
      label: 'nothing',
      level: 'care',
      says: 'Nothing holds it.',
      because: 'Anyone with a ball and two minutes takes it away.',
      do: 'Fit a coupler lock at the least.',
    },
  },
  source: layers,
};

/** Whether it would be noticed and found. */
export const noticeTable: Decision = {
  label: 'Noticed and found',
  hit: 'unique',
  on: ['theft.exposure', 'guard.noticed'],
  rows: [
    { when: ['-', 'nothing'], gives: 'blind' },
    { when: ['low', ['listed', 'listed-and-watched', 'tracked']], gives: 'enough' },
    { when: ['raised', 'listed'], gives: 'thin' },
    { when: ['raised', ['listed-and-watched', 'tracked']], gives: 'enough' },
    { when: ['high', ['listed', 'listed-and-watched']], gives: 'thin' },
    { when: ['high', 'tracked'], gives: 'enough' },
  ],
  results: {
    enough: {
      label: 'enough here',
      level: 'ok',
      says: 'The trailer would be missed, described and looked for.',
    },
    thin: {
      label: 'thin',
      level: 'care',
      says: 'The trailer could be described, but it would be missed too late.',
      do: 'Have someone look by, and where it is much exposed hide a tracker in it.',
    },
    blind: {
      label: 'blind',
      level: 'care',
      says: 'It would not be noticed when the trailer went, and its numbers are not written down.',
      because: 'Without them neither police nor insurer can do much.',
      do: 'Write down numbers and marks, photograph it, and keep the list at home. That costs nothing.',
    },
  },
  source: layers,
};

/** What the insurer asks against what is there. */
export const insurerTable: Decision = {
  label: 'What the insurer asks',
  hit: 'unique',
  on: ['policy.asks', 'guard.held', 'guard.noticed'],
  rows: [
    { when: ['nothing', '-', '-'], gives: 'free' },
    {
      when: [
        'coupler-lock',
        ['coupler', 'coupler-and-wheel', 'coupler-and-both-wheels', 'anchored'],
        '-',
      ],
      gives: 'met',
    },
    { when: ['coupler-lock', 'nothing', '-'], gives: 'not-met' },
    {
      when: ['two-devices', ['coupler-and-wheel', 'coupler-and-both-wheels', 'anchored'], '-'],
      gives: 'met',
    },
    { when: ['two-devices', ['nothing', 'coupler'], '-'], gives: 'not-met' },
    { when: [['coupler-lock', 'two-devices'], 'hitched', '-'], gives: 'ask' },
    { when: ['tracker', '-', 'tracked'], gives: 'met' },
    { when: ['tracker', '-', ['nothing', 'listed', 'listed-and-watched']], gives: 'not-met' },
  ],
  results: {
    free: {
      label: 'nothing is asked',
      level: 'ok',
      says: 'The insurer asks for nothing to be fitted; keep the page of the policy that says so.',
    },
    met: {
      label: 'met',
      level: 'ok',
      says: 'What the insurer asks is there; keep receipts and both keys, for they will be asked for.',
    },
    ask: {
      label: 'ask',
      level: 'care',
      says: 'The policy asks for a lock, and the trailer stays hitched.',
      do: 'Ask in writing whether locked pins count.',
    },
    'not-met': {
      label: 'not met',
      level: 'care',
      says: 'The insurer asks for what is not there, and may pay nothing.',
      do: 'Fit it, and keep the receipt.',
    },
  },
  source: insurers,
};
