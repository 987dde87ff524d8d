import type { Asking } from '../../engine/define/shapes';

/** What people ask about damage; what they told says which of it is answered first. */
export const askings = {
  claim: {
    label: 'Claim or pay?',
    results: ['claim.advice', 'breakEven.range', 'cost.range', 'claim.gain'],
    impliedBy: ['policy.deductible', 'policy.premium', 'policy.raise', 'policy.claimsBefore'],
    says: [
      {
        when: 'quote.isUnder',
        says: 'As quoted the insurer pays nothing: {shop.quote} is not above the deductible of {policy.deductible}. Only if more is found behind the panel would a claim pay.',
      },
      {
        when: 'quote.isOpen',
        says: 'Have the quote made to the dollar first: of {policy.deductible} or less the insurer pays nothing. Above that a claim costs you {breakEven.range}, by what it adds to the premium.',
      },
      {
        when: 'quote.mayBeUnder',
        says: 'Read the deductible first: from {shop.quote} on the insurer pays nothing of that quote. Below it a claim still costs you {breakEven.range}, by what it adds to the premium.',
      },
      {
        when: 'claims.areMany',
        says: 'Claim or pay: {claim.advice}. Another claim may cost the policy itself, so ask the agent in general first. The repair may come to {cost.range}, and a claim pays above {breakEven.range}.',
      },
      {
        says: 'Claim or pay: {claim.advice}. The repair may come to {cost.range}, and a claim is worth it only above {breakEven.range}.',
      },
      {
        when: 'claim.surelyCheaper',
        says: 'Claiming would save you {claim.maySave}; a claim pays from a repair of {breakEven.range}.',
      },
      {
        when: 'claim.surelyDearer',
        says: 'Claiming would cost you {claim.mayCost} more than paying yourself; a claim pays from a repair of {breakEven.range}.',
      },
      {
        says: 'Undecided: the repair may come to {cost.range}, and a claim, with dearer premiums, costs {breakEven.range}. Above that claim, below it pay yourself.',
      },
      {
        says: 'A claim costs you {breakEven.range}, by what it adds to the premium: claim only a repair above that. Ask the agent, in general.',
      },
      {
        says: 'Above a repair of {breakEven.range} claim, below it pay yourself; in between get a shop’s quote first.',
      },
    ],
  },
  writeOff: {
    label: 'Will it be written off?',
    results: ['writeOff.at', 'writeOff.paid', 'finding.write-off'],
    impliedBy: ['rig.value', 'rig.salvage'],
    says: [
      { says: 'Insurers write off from {writeOff.at}, and then pay {writeOff.paid}.' },
      { says: 'Insurers write off from {writeOff.at}.' },
    ],
  },
  damp: {
    label: 'May it be closed up?',
    results: ['finding.damp', 'finding.hidden-damage'],
    impliedBy: ['wood.moisture'],
  },
  sign: {
    label: 'May I sign that it is settled?',
    results: ['finding.release', 'finding.quote-apart'],
    impliedBy: ['release.asked'],
  },
  cost: {
    label: 'What may it cost?',
    results: ['cost.range', 'repair.low', 'repair.high', 'finding.estimate'],
    impliedBy: [
      'segments.front',
      'segments.side',
      'segments.rear',
      'segments.roof',
      'segments.corner',
      'refinish.area',
      'seal.length',
      'shop.quote',
      'shop.rate',
      'wall.built',
    ],
    says: [
      {
        when: 'quote.isAll',
        says: 'Quoted are {shop.quote}. With what an opened wall may show it may come to {cost.range}; only a shop that has looked can say.',
      },
      { says: 'The repair may come to {cost.range}; only a shop that has looked can say.' },
    ],
  },
  first: {
    label: 'What do I do first?',
    results: ['steps', 'finding.services', 'finding.structure'],
    impliedBy: ['damage.cause', 'structure.hurt', 'services.hurt', 'cover.open', 'photos.taken'],
  },
} satisfies Record<string, Asking>;
