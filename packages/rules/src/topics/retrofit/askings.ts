import type { Asking } from '../../engine/define/shapes';

/** What people ask of an add-on; what they told says which of it is answered first. */
export const askings = {
  tongue: {
    label: 'What does it do to the tongue?',
    results: ['added.tongue', 'tongue.after', 'share.after', 'finding.tongue-lightened'],
    impliedBy: ['addon.ahead', 'trailer.measuredTongueWeight'],
    says: [
      {
        when: 'tongue.isLightened',
        says: 'With the new part the ball carries {tongue.after}, {share.after} of the trailer.',
      },
      {
        says: 'The new part adds {added.tongue} to the ball, which then carries {tongue.after}, {share.after} of the trailer.',
      },
    ],
  },
  water: {
    label: 'How long do the tanks last with it?',
    results: ['fresh.daysAfter', 'gray.daysAfter', 'black.daysAfter', 'finding.water'],
    impliedBy: ['addon.waterDaily'],
    says: 'With the new part fresh water lasts {fresh.daysAfter}, and the black tank fills in {black.daysAfter}.',
  },
  circuit: {
    label: 'Does the circuit carry it?',
    yesOrNo: true,
    results: ['circuit.load', 'limit.circuit'],
    impliedBy: ['circuit.breaker', 'circuit.alreadyOn'],
    says: 'With it {circuit.load} flow where the breaker lets {circuit.limit} through for that time.',
  },
  battery: {
    label: 'Does the battery carry it through the day?',
    yesOrNo: true,
    results: ['added.ampHours', 'energy.after', 'usable.after', 'energy.days', 'limit.battery-day'],
    impliedBy: ['addon.hours', 'battery.dayDrawn', 'addon.capacity', 'addon.panelPower'],
    says: 'The new part takes {added.ampHours} a day. A day then takes {energy.after} of the {usable.after} that the battery gives.',
  },
  wire: {
    label: 'Which wire and fuse?',
    results: ['chain.current', 'chain.drop', 'limit.wire', 'limit.fuse'],
    impliedBy: ['wire.gauge', 'wire.fuse', 'wire.length'],
    says: '{chain.current} flow in its wire.',
  },
  holds: {
    label: 'May it hang there?',
    yesOrNo: true,
    results: ['mount.load', 'limit.mount', 'finding.unrated'],
    impliedBy: ['addon.heldBy', 'mount.rating'],
    says: 'What holds it feels {mount.load}, as what moves with the road counts for more than its weight.',
  },
  hands: {
    label: 'Who may fit it?',
    usual: true,
    results: ['fitting.needs', 'fitting.judged'],
    impliedBy: ['addon.kind', 'fitting.planned'],
    says: 'Fitting it is for {fitting.needs}.',
  },
  warranty: {
    label: 'Does it end the warranty?',
    results: ['warranty.left', 'finding.warranty'],
    impliedBy: ['trailer.owned', 'warranty.length'],
    says: 'Left of the warranty: {warranty.left}.',
  },
} satisfies Record<string, Asking>;
