import { part } from '../../engine/define/topic';
import { custom } from '../../trade/bibliography/common';
import { makersRating, softTire } from '../../trade/bibliography/tires';

/**
 * Air carries the load; the tire only holds it in.
 *
 *     maker's table     50 psi  60 psi  70 psi  80 psi ≤ sidewall, ≤ wheel
 *                          │       │
 *     allowed at 65 psi: the row below, never a line between
 */
export const pressure = part({
  simulations: {
    row: {
      label: 'Row by row of the maker’s table',
      steps: 'tire.table',
      states: {},
      values: {
        'row.allows': {
          label: 'Load of this row, if the pressure reaches it',
          unit: 'lb',
          is: 'choose(tire.table.pressure <= tire.pressure, tire.table.load, 0)',
          source: makersRating,
        },
        'row.pressure': {
          label: 'Pressure of this row, if it carries the load',
          unit: 'psi',
          is: 'choose(tire.table.load / tire.divisor >= tire.load, tire.table.pressure, unlimited)',
          source: makersRating,
        },
      },
      source: makersRating,
    },
  },
  parameters: {
    'pressure.lookShare': {
      label: 'Share of its pressure at which a tire counts as run flat',
      noun: 'the share at which it counts as run flat',
      unit: '%',
      values: [{ from: '2020-01-01', value: 80 }],
      source: softTire,
    },
  },
  formulas: {
    'pressure.own': {
      label:
        'Pressure it should have, cold: the label’s, and no less than the table’s; never beyond sidewall or wheel',
      noun: 'the pressure it should have',
      unit: 'psi',
      is: 'min(pressure.asked, pressure.cap)',
      source: softTire,
    },
    'pressure.asked': {
      label: 'Pressure that label or table ask for, cold; untold, up to the sidewall’s',
      noun: 'the pressure that is asked for',
      unit: 'psi',
      is: 'choose(count(tire.table) > 0, pressure.filled, choose(given(tire.labelPressure), tire.labelPressure, between(0, tire.maxPressure)))',
      source: softTire,
    },
    'pressure.cap': {
      label: 'What sidewall and wheel allow, as far as they are told',
      unit: 'psi',
      is: 'min(choose(known(tire.maxPressure), tire.maxPressure, unlimited), choose(known(wheel.maxPressure), wheel.maxPressure, unlimited))',
      source: makersRating,
    },
    'pressure.isOnlySidewall': {
      label: 'Of the pressures only the sidewall’s was told',
      unit: 'yes-no',
      is: 'given(tire.maxPressure) && (!given(tire.pressure) || pressure.isWarm) && !given(tire.labelPressure) && count(tire.table) < 1',
      source: softTire,
    },
    'pressure.labelIsOver': {
      label: 'The label asks for more pressure than the sidewall allows',
      unit: 'yes-no',
      is: 'given(tire.labelPressure) && given(tire.maxPressure) && tire.labelPressure > tire.maxPressure',
      source: makersRating,
    },
    'pressure.wheelIsBelow': {
      label: 'The label asks for more pressure than the wheel allows',
      unit: 'yes-no',
      is: 'known(tire.labelPressure, wheel.maxPressure) && tire.labelPressure > wheel.maxPressure',
      source: makersRating,
    },
    'pressure.labelMayBeOver': {
      label: 'The label may ask for more pressure than the sidewall allows',
      unit: 'yes-no',
      is: 'given(tire.labelPressure) && given(tire.maxPressure) && may(tire.labelPressure > tire.maxPressure)',
      source: makersRating,
    },
    'pressure.meetsLabel': {
      label: 'It has what its label asks for, and no table was told',
      unit: 'yes-no',
      is: 'known(tire.pressure, tire.labelPressure) && count(tire.table) < 1 && tire.pressure >= tire.labelPressure && !pressure.isWarm',
      source: softTire,
    },
    'pressure.isAsLabeled': {
      label:
        'It has what its label asks for, no more than may be, and carries no load that may be too much',
      unit: 'yes-no',
      is: 'pressure.meetsLabel && known(tire.maxPressure) && tire.pressure <= pressure.most && (!known(tire.load) || tire.load <= pressure.allows)',
      source: softTire,
    },
    'pressure.fillTo': {
      label:
        'Pressure to fill to, cold: the label’s, the table’s where that is more, untold the sidewall’s; never beyond sidewall or wheel',
      noun: 'the pressure to fill to',
      unit: 'psi',
      is: 'min(pressure.filled, pressure.cap)',
      source: softTire,
    },
    'pressure.filled': {
      label: 'Pressure of label or table, cold, whatever sidewall and wheel allow',
      unit: 'psi',
      is: 'choose(given(tire.labelPressure), choose(count(tire.table) > 0, max(tire.labelPressure, min(pressure.needed, tire.maxPressure)), tire.labelPressure), min(pressure.needed, tire.maxPressure))',
      source: softTire,
    },
    'pressure.share': {
      label: 'Share of the pressure it should have',
      noun: 'its share of the pressure it should have',
      unit: '1',
      is: 'tire.pressure / pressure.own',
      source: softTire,
    },
    'pressure.ranFlat': {
      label: 'So soft that it counts as run flat',
      unit: 'yes-no',
      is: 'tire.pressure <= pressure.own * pressure.lookShare',
      source: softTire,
    },
    'pressure.isFarBelow': {
      label: 'Far below what label or table ask for',
      unit: 'yes-no',
      is: 'tire.pressure <= pressure.asked * pressure.lookShare',
      source: softTire,
    },
    'pressure.most': {
      label: 'Most pressure, cold',
      noun: 'the most pressure',
      unit: 'psi',
      is: 'choose(given(wheel.maxPressure), min(tire.maxPressure, wheel.maxPressure), tire.maxPressure)',
      source: makersRating,
    },
    'pressure.needed': {
      label: 'Pressure for this load, cold',
      noun: 'the pressure needed',
      unit: 'psi',
      is: 'choose(count(tire.table) > 0, leastOver(row, row.pressure), tire.maxPressure)',
      source: makersRating,
    },
    'pressure.isWarm': {
      label: 'The pressure was read warm',
      unit: 'yes-no',
      is: "given(tire.readCold) && tire.readCold == 'no'",
      source: custom,
    },
    'pressure.takenAsCold': {
      label: 'Nobody said whether the pressure was read cold',
      unit: 'yes-no',
      is: 'given(tire.pressure) && !given(tire.readCold)',
      source: custom,
    },
    'pressure.read': {
      label: 'What one tire may carry at the pressure as read',
      noun: 'what the pressure as read allows',
      unit: 'lb',
      is: 'min(tire.capacity, choose(count(tire.table) > 0, mostOver(row, row.allows), choose(tire.pressure >= tire.maxPressure, tire.rated, tire.loadAtPressure)) / tire.divisor)',
      source: makersRating,
    },
    'pressure.allows': {
      label: 'What one tire may carry at its pressure (read warm: as much or less)',
      noun: 'what its pressure allows',
      unit: 'lb',
      is: 'needs(choose(pressure.isWarm, between(0, pressure.read), pressure.read), tire.pressure)',
      source: makersRating,
    },
  },
  limits: {
    'pressure-load': {
      label: 'Load at this pressure',
      short: 'the load at that pressure',
      do: 'Take load off; a tire that ran soft is looked into before anybody fills it.',
      near: 'Check the pressure cold before every drive.',
      used: 'tire.load',
      limit: 'pressure.allows',
      askedBy: ['tire.pressure'],
      source: makersRating,
    },
  },
  findings: {
    'under-inflated': {
      label: 'Under-inflated',
      askedByKnown: ['tire.pressure'],
      stop: [
        {
          when: 'pressure.ranFlat',
          wrong:
            'The tire has {pressure.share} of its {pressure.own}; at {pressure.lookShare} or less it counts as run flat.',
          because:
            'A tire that ran so soft is broken inside where it does not show, and can burst while it is filled.',
          do: 'Take the tire off, and let a tire shop look into it before anybody fills it.',
        },
        {
          when: 'pressure.isFarBelow',
          wrong: 'Label or table ask for {pressure.asked}, and {tire.pressure} are in it.',
          because:
            'So soft it counts as run flat, unless sidewall or wheel allow no more; then it is not the tire that is asked for.',
          do: 'Do not tow on it, and fill it no further: let a tire shop look into it, and fit the tire that the label means.',
        },
      ],
      care: [
        {
          when: 'tire.pressure < pressure.own',
          wrong: 'The tire is low: {tire.pressure} where {pressure.own} belong.',
          do: 'Fill it to {pressure.fillTo}, cold, before it tows, and look for the nail.',
        },
        {
          when: 'tire.pressure < pressure.asked',
          wrong: 'Sidewall or wheel may allow less than the {pressure.asked} that are asked for.',
          do: 'Never fill beyond sidewall and wheel: ask a tire shop for the tire that the label means.',
        },
      ],
      open: {
        wrong: 'Whether the tire has the pressure that its label asks for is not known.',
        because: 'The label may ask for as much as the sidewall states, or for much less.',
        do: 'Read that label before you drive on it: at {pressure.lookShare} of its pressure or less the tire counts as run flat, and comes off.',
      },
      otherwise: 'By that reading the tire is not low.',
      source: softTire,
    },
    'pressure-over': {
      label: 'Pressure over its most',
      askedBy: ['tire.pressure'],
      stop: {
        when: {
          all: [
            { fact: 'tire.pressure', operator: 'greaterThan', value: { fact: 'pressure.most' } },
            { fact: 'pressure.isWarm', operator: 'equal', value: 'no' },
          ],
        },
        wrong: 'There is more pressure in it than sidewall or wheel allow.',
        do: 'Set it cold, standing to the side, before it rolls.',
      },
      open: {
        wrong: 'Whether sidewall and wheel allow its pressure is not known.',
        do: 'Read the pressure on the sidewall, and the wheel’s.',
      },
      otherwise:
        'The pressure is within what sidewall and wheel allow, or it was read warm and shows nothing.',
      source: makersRating,
    },
    'pressure-warm': {
      label: 'Pressure read warm',
      askedBy: ['tire.readCold'],
      care: {
        when: { all: [{ fact: 'tire.readCold', operator: 'equal', value: 'no' }] },
        wrong: 'The pressure was read warm, and cold it is lower.',
        do: 'Read it again before the next drive, and never let air out of a warm tire.',
      },
      otherwise: 'It was read cold.',
      source: custom,
    },
  },
});
