import { part } from '../../engine/define/topic';
import { custom, recalls, warrantyBooklet } from '../../trade/bibliography/service-triage';

/** What to say on the phone, and what to keep as evidence: lists, each item with its reason. */
export const telling = part({
  formulas: {
    'telling.dangerFirst': {
      label: 'Somebody may be in danger',
      unit: 'yes-no',
      is: "gas.smell == 'yes' || alarm.sounds || danger.sign != 'none'",
      source: custom,
    },
    'telling.away': {
      label: 'It is not at home',
      unit: 'yes-no',
      is: "trailer.stands != 'at-home'",
      source: custom,
    },
    'telling.measured': {
      label: 'Hubs or tires were measured',
      unit: 'yes-no',
      is: 'hub.isMeasured || tire.isMeasured',
      source: custom,
    },
    'telling.running': {
      label: 'The trouble is in what rolls',
      unit: 'yes-no',
      is: "trouble.in == 'wheel-or-hub' || trouble.in == 'tire' || trouble.in == 'brakes' || trouble.in == 'coupling' || trouble.in == 'frame-or-suspension' || trouble.in == 'sway'",
      source: custom,
    },
    'telling.wet': {
      label: 'Water got in',
      unit: 'yes-no',
      is: "trouble.in == 'roof' || trouble.in == 'water'",
      source: custom,
    },
  },
  selections: {
    phone: {
      label: 'What to say on the phone',
      amounts: {},
      items: {
        emergency: {
          label: 'The emergency number first, from a safe place',
          when: 'telling.dangerFirst',
          amounts: {},
          because: 'People come before the trailer; the shop is called second.',
          source: custom,
        },
        place: {
          label: 'Where you are: road, milepost, direction, or camp and site',
          when: 'telling.away',
          amounts: {},
          because: 'Help that cannot find you is no help.',
          source: custom,
        },
        noticed: {
          label: 'What you noticed, since when, and what was done just before',
          amounts: {},
          because: 'What a mechanic hears first decides what is brought along.',
          source: custom,
        },
        identity: {
          label: 'Identification number, model year, day of sale',
          amounts: {},
          because: 'Parts, warranty and recalls hang on it.',
          source: recalls,
        },
        readings: {
          label: 'Every reading, with the wheel it was taken at',
          when: 'telling.measured',
          amounts: {},
          because: 'Comparison tells more than one number.',
          source: custom,
        },
        load: {
          label: 'What it weighs loaded, and whether it can roll',
          when: 'telling.running',
          amounts: {},
          because: 'It decides between a mechanic, a tow and a flatbed.',
          source: custom,
        },
        payer: {
          label: 'Who pays, and whose consent is needed before work begins',
          when: 'warranty.runs',
          amounts: {},
          because: 'Work done without it may not be paid.',
          source: warrantyBooklet,
        },
      },
      source: custom,
    },
    workshop: {
      label: 'What to ask a workshop',
      amounts: {},
      items: {
        kind: {
          label: 'Whether it does trailers, and may do gas, 120 volts, brakes',
          when: 'telling.away',
          amounts: {},
          because: 'A car shop that has never adjusted a trailer’s brake learns on yours.',
          source: custom,
        },
        day: {
          label: 'When it can look, and where you stand',
          when: 'telling.away',
          amounts: {},
          because:
            'A shop in two hours, or one that comes to you, beats a better one next week when it cannot roll.',
          source: custom,
        },
        price: {
          label: 'What look and hour cost, in writing',
          when: 'telling.away',
          amounts: {},
          because: 'Far from home there is no second shop to go to.',
          source: custom,
        },
        sent: {
          label:
            'What you can send ahead: photographs, the plate of the part, readings, the axle’s label',
          when: 'telling.away',
          amounts: {},
          because: 'It can order the part before you arrive.',
          source: custom,
        },
        home: {
          label: 'A call to your own dealer before anyone begins, and the old part to take along',
          when: 'warranty.runs',
          amounts: {},
          because: 'The maker’s consent has to be there first, or the bill is yours.',
          source: warrantyBooklet,
        },
      },
      source: custom,
    },
    evidence: {
      label: 'What to keep as evidence',
      amounts: {},
      items: {
        photographs: {
          label: 'Photographs, near and from afar, before anything is touched',
          amounts: {},
          because: 'Once it is moved or cleaned, how it was can no longer be told.',
          source: custom,
        },
        diary: {
          label: 'Day, hour, mileage, weather; who said what on the phone',
          amounts: {},
          because: 'A promise with a name and an hour is kept more often.',
          source: custom,
        },
        parts: {
          label: 'The part that failed, in a bag with its place and date',
          amounts: {},
          because: 'The maker may want to see it before it pays.',
          source: warrantyBooklet,
        },
        bills: {
          label: 'Every bill and receipt, also of tow and lodging',
          amounts: {},
          because: 'Warranty, recall and insurer ask for them.',
          source: warrantyBooklet,
        },
        scale: {
          label: 'The last weigh slip, and the tires’ date codes',
          when: 'telling.running',
          amounts: {},
          because: 'The first question about anything that rolls is whether it was overloaded.',
          source: custom,
        },
        dampness: {
          label: 'How far it is wet, marked and dated, again next day',
          when: 'telling.wet',
          amounts: {},
          because: 'A stain that grows tells that the leak is still open.',
          source: custom,
        },
      },
      source: custom,
    },
  },
});
