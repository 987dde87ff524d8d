import { part } from '../../engine/define/topic';
import { trailerTireAge } from '../../trade/bibliography/tires';
import { looked } from '../../trade/bibliography/used-trailer';

/** What only costs money or a shop’s time: tested, mended or replaced before the first trip. */
export const mend = part({
  findings: {
    untested: {
      label: 'What nobody tested',
      if: [
        {
          when: 'untested.gas && untested.rest',
          wrong: 'Gas, electrics and brakes are not all tested.',
          do: 'A licensed shop tests them before the first trip; count with the upper price.',
          proviso: 'gas, electrics and brakes are tested by a shop before it is used',
        },
        {
          when: 'untested.gas',
          wrong: 'The gas was not tested.',
          do: 'A licensed shop tests it before anything is lit.',
          proviso: 'the gas holds a shop’s pressure test before anything is lit',
        },
        {
          when: 'untested.rest',
          wrong: 'Electrics or brakes were not tried.',
          do: 'Have them tried before it is towed home.',
          proviso: 'electrics and brakes are tried before it is towed home',
        },
      ],
      otherwise: 'Gas, electrics and brakes were tested.',
      source: looked,
    },
    faults: {
      label: 'Electrics and brakes',
      first: true,
      askedBy: ['electrics.tested', 'brakes.tested'],
      care: [
        {
          when: "brakes.wereTried && brakes.tested == 'faults'",
          wrong: 'The brakes have faults.',
          do: 'Do not tow it home before they are mended; have it carried.',
        },
        {
          when: "electrics.areKnown && electrics.tested == 'faults'",
          wrong: 'The electrics have faults.',
          do: 'Leave cord and battery off until a shop has found them.',
        },
      ],
      open: { wrong: 'Electrics or brakes may have faults.', do: 'Have them tried.' },
      otherwise: 'No fault of electrics or brakes was told.',
      source: looked,
    },
    axle: {
      label: 'Axle',
      askedBy: ['axle.wear'],
      care: {
        when: "wear.isKnown && axle.wear == 'one-edge'",
        wrong:
          'The tires are worn on one edge: an axle may be bent, overloaded or out of line, or a hanger worn.',
        do: 'Have it measured, and count with an axle.',
      },
      open: { wrong: 'An axle may be bent.', do: 'Feel across each tread.' },
      otherwise: 'The tires are worn evenly.',
      source: looked,
    },
    tires: {
      label: 'Tires’ age',
      askedBy: ['tire.codeYear', 'tire.codeDigits'],
      care: {
        when: 'tires.areDone',
        wrong: 'The tires are {tire.age} old, and a trailer’s are done at {age.trailerReplace}.',
        because: 'Old rubber comes apart on the way home, whatever its tread.',
        do: 'Replace them where it stands.',
      },
      open: {
        wrong: 'The tires may be past their years.',
        do: 'Read the code on every tire, the spare’s too.',
      },
      otherwise: 'The tires are young enough.',
      source: trailerTireAge,
    },
    label: {
      label: 'Weight label',
      first: true,
      askedBy: ['label.state'],
      care: [
        {
          when: "label.isKnown && label.state == 'painted-over'",
          wrong: 'The weights on the label are painted over.',
          because: 'What it may weigh is then nobody’s word, whatever the paint was for.',
          do: 'Ask the maker by the identification number, and weigh it, before anybody tows it.',
        },
        {
          when: "label.isKnown && label.state == 'missing'",
          wrong: 'The weight label is missing.',
          because: 'What it may weigh is then not certain.',
          do: 'Ask the maker by the identification number, and weigh it, before anybody tows it.',
        },
      ],
      open: { wrong: 'The weight label may be missing.', do: 'Look at the left front, outside.' },
      otherwise: 'The weight label can be read; it decides in weigh-in and tow fit.',
      source: looked,
    },
    dates: {
      label: 'Cylinders and alarms',
      first: true,
      askedBy: [
        'cylinders.dates',
        'cylinder.stampYear',
        'alarm.gasAge',
        'alarm.monoxideAge',
        'alarm.gasReplaceBy',
        'alarm.monoxideReplaceBy',
      ],
      care: [
        {
          when: 'alarms.arePast && cylinders.arePast',
          wrong: 'Cylinders and alarms are past their dates.',
          do: 'Do not sleep in it before the alarms are replaced, and fill nothing before the cylinders are requalified or replaced.',
        },
        {
          when: 'alarms.arePast',
          wrong: 'An alarm is past its date.',
          because: 'Past it, it may stay silent.',
          do: 'Do not sleep in it before the alarms are replaced.',
        },
        {
          when: 'cylinders.arePast',
          wrong: 'The gas cylinders are past their dates.',
          do: 'Fill nothing before the cylinders are requalified or replaced.',
        },
      ],
      open: { wrong: 'Cylinders or alarms may be past their dates.', do: 'Read each date.' },
      otherwise: 'No cylinder or alarm was told to be past its date.',
      source: looked,
    },
  },
});
