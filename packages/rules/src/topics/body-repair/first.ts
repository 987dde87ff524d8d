import { part } from '../../engine/define/topic';
import { dampMargin, dampWood } from '../../trade/bibliography/body-repair';
import { custom, manual, insurers as policyWording } from '../../trade/bibliography/common';

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
      noun: 'whether frame, axle, coupler or floor is bent or cracked',
      ask: 'Is anything bent or cracked that carries: the frame up to the coupler, axle, floor?',
      where: 'below and in front; look along it; doors that no longer close',
    },
    'services.hurt': {
      kind: 'yes-no',
      label: 'It went through gas, wiring or brakes',
      noun: 'whether it reached gas, wiring or brakes',
      ask: 'Did the damage reach a gas pipe, wiring, lights or brakes, or did water run where wires are?',
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
  formulas: {
    'damage.mayHaveHit': {
      label: 'A blow, sudden water or a cause nobody knows',
      unit: 'yes-no',
      is: "given(damage.cause) && (damage.cause == 'collision' || damage.cause == 'other-party' || damage.cause == 'sudden-water') || !known(damage.cause)",
      source: manual,
    },
    'services.comeFirst': {
      label: 'Gas, wiring and brakes come first',
      unit: 'yes-no',
      is: "services.hurt == 'yes' && (given(services.hurt) || damage.mayHaveHit)",
      source: manual,
    },
    'structure.comesFirst': {
      label: 'Frame and running gear come first',
      unit: 'yes-no',
      is: "structure.hurt == 'yes' && (given(structure.hurt) || damage.mayHaveHit)",
      source: manual,
    },
    'water.isInside': {
      label: 'Water has been inside',
      unit: 'yes-no',
      is: "(given(water.signs) && water.signs != 'none-seen') || (given(damage.cause) && (damage.cause == 'sudden-water' || damage.cause == 'slow-leak'))",
      source: dampWood,
    },
    'claim.isMeant': {
      label: 'A claim is thought of',
      unit: 'yes-no',
      is: 'given(policy.deductible) || given(policy.premium) || given(release.asked)',
      source: policyWording,
    },
  },
  selections: {
    steps: {
      label: 'What comes first, in this order',
      amounts: {},
      items: {
        safe: {
          label: 'Cylinders shut, battery and cord off',
          amounts: {},
          because:
            'A wet or torn wire is live until its breaker is off, and a pipe that was hit may leak.',
          source: manual,
        },
        photographs: {
          label: 'Photographs, near and far, dated',
          amounts: {},
          because: 'Inside and out: what was not photographed was not there.',
          source: policyWording,
        },
        cover: {
          label: 'A cover today that sheds water',
          amounts: {},
          because: 'Who lets it get worse pays for the worse part. It lets air out below.',
          source: policyWording,
        },
        parts: {
          label: 'Every part that comes off, kept',
          amounts: {},
          because: 'In a bag, with its place: the insurer may want to see it before it pays.',
          source: policyWording,
        },
        dry: {
          label: 'Open and dry, until a meter says so',
          when: 'water.isInside',
          amounts: {},
          because: 'Wood under a patch decays.',
          source: dampWood,
        },
        inspection: {
          label: 'A shop that looks and writes down what it found',
          amounts: {},
          because: 'Only an opened wall tells what is behind it.',
          source: custom,
        },
        insurer: {
          label: 'Deductible and premium read, then the insurer told, if a claim pays',
          when: 'claim.isMeant',
          amounts: {},
          because: 'A call may be counted as a claim; a late one may not be paid.',
          source: policyWording,
        },
      },
      source: custom,
    },
  },
  findings: {
    services: {
      label: 'Gas, wiring, brakes',
      first: true,
      stop: {
        when: "services.hurt == 'yes'",
        wrong: 'Cylinders shut, battery and cord off: gas, wiring or brakes are hurt.',
        because: 'Gas finds a spark, a torn wire is one, and a trailer without brakes pushes.',
        do: 'Smell of gas: everybody out first. Have a licensed trade make gas and wires safe first; until then do not tow the trailer.',
        proviso: 'the damage reached no gas pipe, wiring or brakes',
      },
      stopOpen: 'if',
      unknown: {
        when: 'services.comeFirst',
        wrong: 'Whether gas, wiring or brakes are hurt comes first.',
      },
      otherwise: 'Gas, wiring and brakes were not reached.',
      open: {
        wrong: 'Whether gas, wiring or brakes are hurt is not known yet.',
        do: 'Cylinders shut, battery and cord off, until somebody has looked behind the damage.',
      },
      source: manual,
    },
    structure: {
      label: 'What carries',
      first: true,
      stop: {
        when: "structure.hurt == 'yes'",
        wrong: 'Do not tow the trailer: something that carries is hurt.',
        because: 'A bent axle or a cracked frame lets go on the road.',
        do: 'Frame, coupler, axle and floor come before any panel, and are for a shop that is qualified for them; it is carried there.',
        proviso: 'nothing that carries is bent or cracked',
      },
      stopOpen: 'if',
      unknown: {
        when: 'structure.comesFirst',
        wrong: 'Whether something that carries is hurt comes first.',
      },
      otherwise: 'Nothing that carries is bent or cracked, as far as is seen.',
      open: {
        wrong: 'Whether something that carries is bent or cracked is not known yet.',
        do: 'Do not tow it before frame, coupler, axle and floor have been looked at.',
      },
      source: manual,
    },
    photographs: {
      label: 'Photographs',
      askedBy: ['photos.taken'],
      stop: {
        when: "photos.taken == 'no'",
        wrong: 'Start nothing yet: photograph first.',
        because: 'What was not photographed was not there.',
        do: 'Near and far, inside and out, before anything is moved, dried or thrown away. Where it is wet or wires are hurt, battery and cord off before you go in.',
      },
      otherwise: 'It is photographed.',
      open: {
        wrong: 'Whether it is photographed is not known.',
        do: 'Photograph before anything is moved.',
      },
      source: custom,
    },
    damp: {
      label: 'Damp wood',
      askedBy: ['wood.moisture'],
      stop: {
        when: 'wood.moisture > moisture.most',
        wrong:
          'Close nothing yet: the wood is at {wood.moisture}, and over {moisture.most} it decays.',
        do: 'Open it from inside, let air through and dry it, and measure again.',
      },
      care: {
        when: 'wood.moisture > moisture.care',
        wrong: 'The wood is barely dry, at {wood.moisture}.',
        do: 'Let it dry on while parts are ordered, and measure again before it is closed.',
      },
      otherwise: 'The wood is dry.',
      open: {
        wrong: 'How damp the wood is, is not known.',
        do: 'Nothing is closed before a meter says that it is dry.',
      },
      source: dampWood,
    },
    cover: {
      label: 'Cover',
      askedBy: ['cover.open'],
      care: {
        when: "cover.open == 'yes'",
        wrong: 'Cover it today, with something that sheds water and lets air out below.',
        because: 'What gets wet from now on is the owner’s, by most policies.',
      },
      otherwise: 'No rain gets in.',
      open: { wrong: 'Rain may get in.', do: 'Cover it today, with air below.' },
      source: policyWording,
    },
    release: {
      label: 'Signing',
      askedBy: ['release.asked'],
      care: {
        when: "release.asked == 'yes'",
        wrong: 'Sign nothing as settled before the wall has been opened.',
        because: 'What is found afterwards is then yours to pay.',
        do: 'Questions of law are for a lawyer.',
      },
      otherwise: 'No signature is wanted.',
      open: {
        wrong: 'Somebody may want a signature.',
        do: 'Sign nothing before the wall was open.',
      },
      source: policyWording,
    },
  },
});
