import { part } from '../../engine/define/topic';
import { alternators, interrupting } from '../../trade/bibliography/battery';

/** What a lithium bank asks of the fuse at its posts and of the vehicle that charges it. */
export const lithium = part({
  facts: {
    'fuse.kind': {
      kind: 'choice',
      label: 'Kind of the main fuse',
      noun: 'the kind of the main fuse',
      options: ['class-t', 'other'],
      ask: 'Is the main fuse at the battery of class T, or of another kind?',
      where: 'printed on the fuse',
    },
    'fuse.interrupting': {
      kind: 'quantity',
      label: 'Interrupting rating of the main fuse',
      noun: 'the interrupting rating of the main fuse',
      unit: 'A',
      least: 100,
      most: 300_000,
      exact: true,
      ask: 'What short-circuit current can the main fuse break?',
      where: 'on the fuse or in its data sheet: AIC or interrupting rating, at its DC voltage',
    },
    'battery.shortCircuit': {
      kind: 'quantity',
      label: 'Short-circuit current of one battery',
      noun: 'the short-circuit current of one battery',
      unit: 'A',
      least: 100,
      most: 100_000,
      ask: 'What short-circuit current does the maker state for one battery?',
      where: 'the battery’s data sheet, or its maker',
    },
    'charge.fromVehicle': {
      kind: 'choice',
      label: 'How the tow vehicle charges it',
      noun: 'how the tow vehicle charges it',
      options: ['dc-dc', 'direct', 'not'],
      ask: 'Does the tow vehicle charge the battery through a DC-DC charger, straight through the plug, or not at all?',
      where: 'the charge wire from the seven-way plug: what stands between it and the battery',
    },
  },
  formulas: {
    'bank.shortCircuit': {
      label: 'Short-circuit current of the bank',
      noun: 'the short-circuit current of the bank',
      unit: 'A',
      is: 'battery.shortCircuit * bank.parallel',
      source: interrupting,
    },
    'bank.isLithium': {
      label: 'The bank is of LiFePO₄',
      unit: 'yes-no',
      is: "battery.chemistry == 'lifepo4'",
      source: interrupting,
    },
    'fuse.isWeak': {
      label: 'The main fuse is of another class than T, and nobody said what it breaks',
      unit: 'yes-no',
      is: "given(fuse.kind) && fuse.kind == 'other' && !given(fuse.interrupting)",
      source: interrupting,
    },
    'fuse.isUntold': {
      label: 'Nobody said what the main fuse breaks',
      unit: 'yes-no',
      is: '!given(fuse.kind) && !given(fuse.interrupting)',
      source: interrupting,
    },
  },
  limits: {
    interrupting: {
      label: 'Short circuit through the main fuse',
      short: 'the fuse’s interrupting rating',
      do: 'Fit a main fuse with a higher interrupting rating, such as class T, at the posts.',
      near: 'Fit a main fuse with a higher interrupting rating.',
      exceeded: true,
      used: 'bank.shortCircuit',
      limit: 'fuse.interrupting',
      askedBy: ['battery.shortCircuit'],
      source: interrupting,
    },
  },
  findings: {
    'main-fuse': {
      label: 'Main fuse of a lithium bank',
      askedBy: ['fuse.kind', 'fuse.interrupting', 'wire.fuseAtBattery', 'inverter.power'],
      unknown: {
        when: 'bank.isLithium && fuse.isWeak',
        wrong: 'Whether the main fuse can break a short circuit of a lithium bank is not told.',
        because: 'A short is thousands of amperes, and a fuse that cannot break it burns on.',
        do: 'Read its interrupting rating, or have one of class T fitted.',
      },
      if: {
        when: 'bank.isLithium && fuse.isUntold',
        wrong: 'What current the main fuse of the lithium bank can break is not known yet.',
        because: 'A short is thousands of amperes, and a fuse that cannot break it burns on.',
        do: 'Read its class and interrupting rating at the battery.',
        proviso: 'the main fuse can break the bank’s short circuit, as one of class T does',
      },
      otherwise:
        'The main fuse is of class T, its interrupting rating is told, or the bank is not lithium.',
      source: interrupting,
    },
    alternator: {
      label: 'Charging from the tow vehicle',
      askedBy: ['charge.fromVehicle'],
      stop: {
        when: "bank.isLithium && charge.fromVehicle == 'direct'",
        wrong: 'A lithium bank never hangs straight on the tow vehicle’s alternator.',
        because: 'It takes all that the alternator gives, until that overheats or its wire burns.',
        do: 'Pull the charge wire’s fuse until a DC-DC charger is fitted between.',
      },
      otherwise:
        'The tow vehicle charges it through a DC-DC charger, not at all, or it is a lead battery.',
      open: {
        wrong: 'The battery may hang straight on the tow vehicle’s alternator.',
        do: 'Look what stands between the seven-way plug’s charge wire and the battery.',
      },
      source: alternators,
    },
  },
});
