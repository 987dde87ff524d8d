import { part } from '../../engine/define/topic';
import { dampMargin, dampWood } from '../../trade/bibliography/body-repair';
import { custom, manual, insurers as policyWording } from '../../trade/bibliography/common';

const yes = (fact: string) => ({ all: [{ fact, operator: 'equal', value: 'yes' } as const] });
const no = (fact: string) => ({ all: [{ fact, operator: 'equal', value: 'no' } as const] });

/**
 * What comes before any repair.
 *
 *     safe? ─► photographed? ─► covered against rain? ─► dry? ─► opened, priced, repaired
 */
export const first = part({
  facts: {
    'wood.moisture': {
      kind: 'quantity',
      label: 'Moisture of the wood behind it',
      noun: 'the moisture of the wood',
      unit: '%',
      least: 0,
      most: 100,
      ask: 'What does a moisture meter show in the wood behind the damage, at its wettest?',
      where: 'a pin meter, in several places; a shop has one',
      instead: 'Have the wood measured with a moisture meter',
    },
    'photos.taken': {
      kind: 'yes-no',
      label: 'Photographs are taken',
      noun: 'whether photographs are taken',
      ask: 'Is all of it photographed, near and far, inside and out, with the date?',
      where: 'told by the owner',
    },
    'cover.open': {
      kind: 'yes-no',
      label: 'Rain can get in',
      noun: 'whether rain can get in',
      ask: 'Can rain get in where it is damaged?',
      where: 'told by the owner',
    },
    'structure.hurt': {
      kind: 'yes-no',
      label: 'Frame, axle, coupler or floor is bent or cracked',
      ask: 'Is anything bent or cracked that carries: A-frame, coupler, frame, axle, floor?',
      where: 'below and in front; look along it; doors that no longer close',
    },
    'services.hurt': {
      kind: 'yes-no',
      label: 'It went through gas, wiring or brakes',
      ask: 'Did it reach a gas pipe, wiring, lights or brakes?',
      where: 'behind the damage and below it',
    },
    'release.asked': {
      kind: 'yes-no',
      label: 'Someone wants it signed as settled',
      ask: 'Has anyone asked you to sign that all is settled?',
      where: 'letter that came with the check',
    },
  },
  parameters: {
    'moisture.most': {
      label: 'Most moisture of wood that is closed up',
      unit: '%',
      values: [{ from: '2020-01-01', value: 20 }],
      source: dampWood,
    },
    'moisture.care': {
      label: 'Moisture of wood from which care is due',
      unit: '%',
      values: [{ from: '2020-01-01', value: 16 }],
      range: [10, 20],
      source: dampMargin,
    },
  },
  findings: {
    services: {
      label: 'Gas, wiring, brakes',
      first: true,
      askedBy: ['services.hurt'],
      stop: {
        when: yes('services.hurt'),
        wrong:
          'Cylinders shut, battery and cord off, and do not tow it, gas, wiring or brakes are hurt.',
        do: 'A licensed trade makes them safe before the body is touched. Smell of gas: out first.',
      },
      otherwise: 'Gas, wiring and brakes were not reached.',
      open: { wrong: 'Cylinders shut, battery and cord off, until somebody has looked behind it.' },
      source: manual,
    },
    structure: {
      settles: true,
      label: 'What carries',
      first: true,
      askedBy: ['structure.hurt'],
      stop: {
        when: yes('structure.hurt'),
        wrong: 'Do not tow it, something that carries is hurt.',
        do: 'Frame, coupler, axle and floor come before any panel, and are for a shop that is qualified for them.',
      },
      otherwise: 'Nothing that carries is bent or cracked, as far as is seen.',
      open: { wrong: 'Do not tow it before frame, coupler, axle and floor have been looked at.' },
      source: manual,
    },
    photographs: {
      label: 'Photographs',
      askedBy: ['photos.taken'],
      stop: {
        when: no('photos.taken'),
        wrong: 'Start nothing yet, photograph first.',
        do: 'Near and far, inside and out, before anything is moved, dried or thrown away. What was not photographed was not there.',
      },
      otherwise: 'It is photographed.',
      open: { wrong: 'Photograph before anything is moved.' },
      source: custom,
    },
    damp: {
      label: 'Damp wood',
      askedBy: ['wood.moisture'],
      stop: {
        when: {
          all: [
            { fact: 'wood.moisture', operator: 'greaterThan', value: { fact: 'moisture.most' } },
          ],
        },
        wrong: 'Close nothing yet, the wood is wet.',
        do: 'Open it from inside, let air through and dry it; under a patch it decays.',
      },
      care: {
        when: {
          all: [
            { fact: 'wood.moisture', operator: 'greaterThan', value: { fact: 'moisture.care' } },
          ],
        },
        wrong: 'The wood is barely dry.',
        do: 'Let it dry on while parts are ordered, and measure again before it is closed.',
      },
      otherwise: 'The wood is dry.',
      open: { wrong: 'Nothing is closed before a meter says that the wood is dry.' },
      source: dampWood,
    },
    cover: {
      label: 'Cover',
      askedBy: ['cover.open'],
      care: {
        when: yes('cover.open'),
        wrong: 'Cover it today, with something that sheds water and lets air out below.',
        do: 'What gets wet from now on is the owner’s, by most policies.',
      },
      otherwise: 'No rain gets in.',
      source: policyWording,
    },
    release: {
      label: 'Signing',
      askedBy: ['release.asked'],
      care: {
        when: yes('release.asked'),
        wrong: 'Sign nothing as settled before the wall has been opened.',
        do: 'What is found afterwards is then nobody’s but yours. Questions of law are for a lawyer.',
      },
      otherwise: 'Nobody wants a signature.',
      source: policyWording,
    },
  },
});
