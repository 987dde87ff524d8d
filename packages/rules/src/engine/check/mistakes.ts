/**
 * Every kind of mistake that a rule set can have, worded here alone: what was found, then what would be
 * right. `$name` stands for what the problem says under that name.
 */
export const mistakes = {
  // Its shape
  'missing-part': ['it is missing', 'give $of'],
  'wrong-part': ['$found stands there', 'give $of'],
  'wrong-word': ['$found stands there', 'write one of $options'],
  'unread-key': ['it has “$found”, which nothing reads', 'write one of $options'],
  'wrong-name': ['“$found” is not dotted camelCase', 'write it as axle.front'],
  'not-used': ['nothing uses it', 'use it or leave it out'],

  // Sources
  'no-source': ['it has no source', 'give every item one'],
  'no-such-class': ['there is no source class “$found”', 'use one of $options'],

  // Names of what is not there
  'not-a-fact': ['it names “$found”, which is no fact', 'name a fact'],
  'not-a-value': ['there is no “$found”', 'name a fact, a column, a parameter or a formula'],
  'not-a-formula': ['it shows “$found”, which is no formula', 'name a formula'],
  'not-a-finding': ['it names “$found”, which is no finding', 'name a finding'],
  'not-an-asking': ['there is no asking “$found”', 'name an asking, or any'],
  'not-a-result': ['there is no result “$found”', 'name a value, a list, a limit or a finding'],
  'not-yes-no': ['it names “$found”, which is no yes/no', 'name a yes/no fact or formula'],
  'not-a-choice': ['it names “$found”, which is no choice', 'name a choice'],
  'not-a-list': ['it names “$found”, which is no list', 'name a list'],
  'not-an-option': ['“$found” is no option of $of', 'write one of $options'],
  'not-an-amount': ['it has the amount “$found”, which $of does not have', 'write one of $options'],
  'not-a-table': ['there is no table “$found”', 'name a table'],
  'not-a-simulation': ['there is no simulation “$found”', 'name a simulation'],
  'not-a-unit': ['there is no unit “$found”', 'name a unit, such as lb, in or %'],
  'not-a-hole': ['its words name “{$found}”', 'name a value of the topic'],
  'not-a-change-hole': ['it says “{$found}”', 'fill in $options'],
  'fits-nothing': ['“$of” fits “$found”, which is no result', 'name a fact, a limit or a finding'],
  'renamed-wrongly': ['“$of” is now “$found”', 'name an old id and a fact of today'],
  'renamed-to-nothing': ['“$of” is now nothing', 'write one of $options'],

  // What is told
  'told-without-value': ['“$found” is told without its value', 'write {of} for it'],
  'clause-without-value': [
    'its clause of $of has no “{value}”',
    'write one text, with {value} for the figure',
  ],
  'worked-from-nothing': [
    'it is never said, since “{$found}” does not follow from what it is given',
    'give what it is worked out from',
  ],
  'no-proviso': ['it does not say what must be true', 'give it a proviso, a clause after “if”'],
  'no-outcome': ['it has no outcome', 'give its id, words and sentence'],
  'outcome-twice': ['another level has “$found” too', 'give each an id of its own'],

  // Numbers and days
  'least-over-most': ['its least is over its most: $least, $most', 'swap them'],
  'default-outside': ['its default $found is outside $least to $most $unit', 'keep it inside'],
  'value-outside': ['its value $found is outside $least to $most $unit', 'keep it inside'],
  'no-step': ['its step is $found', 'let it be more than nothing'],
  'below-nothing': ['$found $unit is below nothing', 'give what it can be'],
  'without-values': ['it has no value', 'give it one with its date'],
  'not-a-date': ['“$found” is not a day', 'write it as 2026-01-31'],
  'ends-before-it-begins': ['it runs from $of to “$found”', 'let it end on or after its beginning'],
  'no-options': ['it has no option', 'give it those that may be told'],
  'empty-table': ['it has no entry', 'give it one'],
  'not-rising': ['its $of do not rise: $found', 'sort them, each once'],
  'option-without-number': ['table $of has nothing for “$found”', 'add it'],

  // Formulas: what is found, their reader mostly says
  'unreadable-formula': ['$found', 'write it as a formula is written'],
  'circular-formulas': ['they go in a circle: $found', 'each may use only what does not use it'],
  'wrong-kind': ['$found', 'use a number, a word or a yes/no where each belongs'],
  'mixed-units': ['$found', 'what is joined must share a kind of unit'],
  'no-such-function': ['$found', 'use a function that formulas have'],
  'words-apart': ['$found', 'compare two choices that share an option'],
  'not-in-catalogue': ['$found', 'name what the catalogue has'],

  // Conditions
  'not-a-condition': ['“$found” is no condition', 'compare named values, or name a yes/no'],
  'reckoned-in-condition': [
    '“$found” compares something reckoned',
    'give it a name as a formula, or a number one as a parameter',
  ],
  'strange-condition': [
    'a condition has “$found”',
    'only all, any and fact–operator–value are allowed',
  ],
  'empty-condition': ['its “$found” is empty', 'name at least one condition'],
  'not-an-operator': ['there is no operator “$found”', 'use one of $options'],
  'not-compared': [
    'it compares “$found”, which is no named value',
    'name a fact, formula or parameter',
  ],
  'word-without-quotes': ['“$found” is a word of a choice', "put it in quotes, '$found'"],
  'compared-units': ['it compares $of with $found', 'both sides must share a unit'],
  'literal-number': [
    'it compares “$of” with a literal, “$found”',
    'name the number in a parameter',
  ],
  'never-an-if': [
    'no case comes to it: where it may hold, the stop beside it may hold too, and is then unknown',
    "say stopOpen: 'if' and give the stop a proviso, or let one of the two hold elsewhere",
  ],

  // Decisions: the row of the table, and under what it stands
  'entries-of-row': ['row $row has $found entries', 'give one for each of $options'],
  'row-to-no-result': ['row $row comes to “$found”, which is no result', 'write one of $options'],
  'word-of-row': ['row $row says “$found” under $column', 'write one of $options'],
  'result-without-row': ['no row comes to “$found”', 'add the row or leave the result out'],
  'not-looked-at': [
    'it looks at “$found”, which has no words',
    'name a choice, a yes/no or another decision',
  ],
  'too-many-combinations': [
    'it has $found combinations, and $most are the most',
    'split it into several tables',
  ],
  'combination-left-out': ['no row fits $found', 'every combination must come to a result'],
  'row-in-shadow': ['row $row is never reached', 'a row above it takes all it fits'],
  'rows-overlap': ['row $row overlaps another', 'by “unique” one row at the most may fit'],

  // Rankings and simulations
  'ranked-units': ['it compares $found', 'rank values of one unit'],
  'outside-its-name': ['“$found” stands in it', 'begin its name with “$of.”'],

  // Catalogues
  'offered-twice': ['“$found” is offered twice in one year', 'write one row a year'],
  'named-twice': ['it names “$found” twice', 'name each once'],
  'alone-in-rule': ['it names no other option', 'name one'],
  'no-model': ['there is no model “$found”', 'add it'],
  'no-figure-of-model': ['it has no $found', 'every model has every figure'],
  'no-place-of-model': ['it has no place “$found”', 'give one'],
  'other-years': ['its years are not those of $of: $found', 'write $options'],
  'not-a-wish': [
    'the wish “$found” cannot be told by yes or no',
    'name a yes/no without a default',
  ],
  'not-of-catalogue': ['there is no $of “$found”', 'write one of $options'],
  'not-a-column': ['$of has no column “$found”', 'write one of $options'],

  // Changes
  'rating-changed': [
    '“$found” is a rating that something is held against',
    'ratings are not changed',
  ],
  'asks-in-two-units': [
    'it asks $least as others do, and is measured in $found where they are in $of',
    'give it a number of its own',
  ],

  // What is taken for what was not told
  'not-said-within': [
    'it takes something else where $found is not told',
    'say `within: [least, most]` what it stays by what is told',
  ],
  'within-of-nothing': ['it says `within` and falls back on nothing', 'leave `within` out'],
  'within-anything': [
    'it says `within`, and that is anything at all',
    'say what the told facts prove, or by `assumes` which assumption stands in',
  ],
  'taken-outside': [
    'untold it is taken for $found, outside of $of, which it says to stay within',
    'widen `within`, or take what lies in it',
  ],
  'not-proved': [
    'what is told does not prove that it stays within $of: $found',
    'widen `within` to all that it may be',
  ],
  'assumes-of-nothing': ['it says `assumes` and falls back on nothing', 'leave `assumes` out'],
  'assumes-another': [
    'what is taken where $of is not told is not what is said of $found',
    'name the fact whose `silent` says it',
  ],
  'not-an-assumption': [
    'no assumption is said of “$found”',
    'name an assumption that is said where it stands in',
  ],
  'assumption-never-holds': [
    '“$found” never holds where $of is not told',
    'name an assumption that is said where it stands in',
  ],
  'stand-in-outside': [
    'what stands in for $found is never within $least to $most $unit, which that may be',
    'take what the fact may be',
  ],
} as const satisfies Readonly<Record<string, readonly [found: string, wanted: string]>>;
