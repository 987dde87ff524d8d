import { ruleSet } from '../../engine/define/looked-at';
import { gather } from '../../engine/define/topic';
import { standingOn } from '../../engine/formula/standing-on';
import { custom } from '../../trade/bibliography/common';
import { looked, priceBook, titles, wetMeter } from '../../trade/bibliography/used-trailer';
import { alarmAssumptions, alarms } from '../../trade/gas/alarms';
import { cylinderStamp } from '../../trade/gas/cylinder-stamp';
import { rigTrade } from '../../trade/rig/index';
import { tireTrade } from '../../trade/tires/index';
import { askings } from './askings';
import { called } from './called';
import { changes } from './changes';
import { everybody } from './everybody';
import { usedFacts } from './facts';
import { how } from './how';
import { mend } from './mend';
import { firstCost } from './price';
import { round } from './round';
import { seen } from './seen';
import { walk } from './walk';
import { verdictOnWalking } from './walking';

/*
 * Facts, outcomes and thresholds, each with the class of its source.
 *
 * Facts: title.state, label.state, frame.state, frame.railWhole, axle.wear, soft.zones, soft.quoted, structure.moves, found.spots
 * (rows with a place: moisture, quote), gas.tested, gas.sellerMends, electrics.tested, brakes.tested,
 * cylinders.dates, price.asked, price.dry; shared: tire.codeYear, -Week, -Digits, cylinder.stampYear,
 * -Month, -dateKind, alarm.gasAge, alarm.monoxideAge and their replace-by dates, trailer.axles.
 *
 * C custom of the trade, H the house's choice, M from memory, I invented.
 *
 *     frame cracked                              walk away  C    rusted through: H
 *     spring hanger cracked                      unknown    C    rail whole by a frame shop: care, H; rail
 *                                                            cracked: the frame is
 *     soft in more than one zone                 walk away  C    a wall that moves: H; one zone: care
 *     no title, another's name, branded          walk away  C    a lien: if the lender is paid first;
 *     the number differs                         walk away  C    no title issued there, or a paper: if
 *     gas leaks and the seller shrugs            walk away  C    who mends it untold: unknown
 *     frame, floor or title not told             unknown
 *     gas, electrics, brakes untested            if
 *     wood over 20 % of moisture                 care       M
 *     tires of six years and more                care       C    the family of tires
 *     cylinder past 12 years; 7 with S, 5 with E care       M    from the month that is stamped
 *     alarm past its date: gas 5, monoxide 7     care       M    a replace-by date decides alone
 *     first costs, each from … to …              range      I    asking price against a dry one's: care
 *
 * Outcomes: nothing against it · nothing against it if · at its price · walk away · cannot say.
 * As an engineer: an untested system costs anything from nothing to its whole price, so a range.
 * As an owner: what ends it is asked before what costs money.
 */

const tireAge = standingOn(tireTrade, 'tire.age');
const borrowed = {
  facts: {
    ...alarms.facts,
    'tire.codeDigits': tireTrade.facts['tire.codeDigits'],
    'trailer.axles': rigTrade.facts['trailer.axles'],
  },
  formulas: {
    'alarm.gasPast': alarms.formulas['alarm.gasPast'],
    'alarm.monoxidePast': alarms.formulas['alarm.monoxidePast'],
    'alarm.gasTold': alarms.formulas['alarm.gasTold'],
    'alarm.monoxideTold': alarms.formulas['alarm.monoxideTold'],
    'assumed.gasMade': alarms.formulas['assumed.gasMade'],
    'assumed.monoxideMade': alarms.formulas['assumed.monoxideMade'],
  },
  parameters: {
    'alarm.gasLife': alarms.parameters['alarm.gasLife'],
    'alarm.monoxideLife': alarms.parameters['alarm.monoxideLife'],
    'age.trailerReplace': tireTrade.parameters['age.trailerReplace'],
  },
};

const parts = [
  usedFacts,
  tireAge,
  cylinderStamp,
  borrowed,
  seen,
  walk,
  mend,
  verdictOnWalking,
  firstCost,
  round,
] as const;

/** Is this used trailer worth buying, what must be spent first, and when does one walk away? */
export const usedTrailer = ruleSet({
  id: 'used-trailer',
  version: '4.0.2',
  title: 'A used trailer',
  question:
    'What is looked at on a used trailer, when does one walk away, and what must be spent first?',
  facts: gather('facts', parts),
  parameters: gather('parameters', parts),
  tables: {},
  wordTables: gather('wordTables', parts),
  formulas: gather('formulas', parts),
  selections: gather('selections', parts),
  limits: {},
  findings: gather('findings', parts),
  outcomes: {
    ok: {
      id: 'nothing-against-it',
      words: 'nothing against it',
      sentence: 'Nothing that was seen speaks against the trailer.',
    },
    if: {
      id: 'nothing-against-it-if',
      words: 'nothing against it if',
      sentence: 'Nothing that was seen speaks against the trailer',
    },
    care: {
      id: 'at-its-price',
      words: 'at its price',
      sentence: 'The trailer can be bought, at a price that pays for what must be done.',
    },
    stop: { id: 'walk-away', words: 'walk away', sentence: 'Walk away.' },
    unknown: { id: 'cannot-say', words: 'cannot say', sentence: 'That cannot be said yet.' },
  },
  apart: {},
  tells: [
    { of: 'first.cost', says: 'Before the first trip {of} must be spent.', when: 'walk.isOff' },
  ],
  headline: ['first.cost', 'offer.most', 'deal.total', 'tire.age', 'wet.spots'],
  assumptions: alarmAssumptions,
  changes,
  askings,
  everybody,
  how,
  called,
  cautions: [
    {
      says: 'Shut the gas before you look; at the smell of it everybody goes out, no switch, no flame.',
      source: looked,
      fits: ['finding.gas', 'finding.untested'],
    },
    {
      says: 'Never go under a trailer on a jack; have a ladder held, and do not walk on a soft roof.',
      source: looked,
      fits: [
        'finding.frame',
        'finding.hanger',
        'finding.frame-rust',
        'finding.structure',
        'finding.structure-moves',
      ],
    },
    {
      says: 'A meter reads behind a skin only roughly; what is opened shows more than was seen.',
      source: wetMeter,
      fits: ['finding.water'],
    },
    {
      says: 'Prices here are a range of ours; a shop’s quote in writing wins.',
      source: priceBook,
      fits: ['finding.price', 'price.asked', 'price.dry'],
    },
    {
      says: 'The label on that very trailer decides what it may weigh: then weigh-in and tow fit.',
      source: custom,
      fits: ['finding.label', 'label.state'],
    },
    {
      says: 'This is advice and no inspection; papers and law are the state’s and a lawyer’s.',
      source: titles,
      fits: ['finding.title'],
    },
  ],
});
