import type { Source } from './source';

type Said = {
  /**
   * The change as an instruction. `{row}` stands for the row's own words, `{from}` and `{to}` for
   * the value before and after, `{amount}` for what lies between.
   */
  readonly says: string;
  /** How much it asks of people, small first; changes that ask alike are measured in one unit. */
  readonly asks: number;
  readonly source: Source;
  /** Offered only while this fact has this option. */
  readonly onlyIf?: { readonly fact: string; readonly is: string };
  /** Not offered while this fact is known, since its effect could not be reckoned. */
  readonly unlessKnown?: { readonly fact: string; readonly says: string };
  /** Findings that must be ok, or not asked, once it is made; else it is not offered. */
  readonly rights?: readonly string[];
  /** Said with it when this fact is known, since the change makes the fact stale. */
  readonly remind?: { readonly known: string; readonly says: string };
};

/** One row of a list left out whole; `column` says how big it is. */
export type Leave = Said & {
  readonly kind: 'leave';
  readonly fact: string;
  readonly column: string;
  /** So many rows at the top of the list stay. */
  readonly keepFirst?: number;
  /** A row stays whose own words, `butNot` these, hold one that begins so. */
  readonly keeps?: { readonly named: readonly string[]; readonly butNot: readonly string[] };
};

/** A quantity, or the cell of one row, lowered by whole steps of its unit. */
export type Less = Said & {
  readonly kind: 'less';
  readonly fact: string;
  readonly column?: string;
  readonly step: number;
};

/**
 * A quantity, or the cell of one row, moved either way. Absent `within`: as far as the fact goes;
 * else between two numbers in its unit, or two multiples of another fact, which must be known.
 */
export type Shift = Said & {
  readonly kind: 'shift';
  readonly fact: string;
  readonly column?: string;
  readonly step: number;
  readonly within?: { readonly of?: string; readonly least: number; readonly most: number };
  /** How a place is told that may lie on either side of zero. */
  readonly sides?: { readonly above: string; readonly at: string; readonly below: string };
};

/** Several facts and columns made smaller in one proportion, told by a result that follows them. */
export type Scale = Said & {
  readonly kind: 'scale';
  /** The fact it is told under, one of `scaled` or the list of one. */
  readonly fact: string;
  readonly scaled: readonly string[];
  /** The result, in proportion to all of them; its unit and step are the change's. */
  readonly shown: string;
  readonly step: number;
  /** How small it may get, as a share of what it is. */
  readonly least: number;
  /** Only worth saying with so many rows in the list `fact`. */
  readonly rowsAtLeast?: number;
};

/** A choice or yes/no set to an option, or a quantity to what another known fact is. */
export type SetTo = Said & {
  readonly kind: 'set';
  readonly fact: string;
  readonly to: { readonly option: string } | { readonly sameAs: string };
};

/** What a person can change of the facts. Ratings are never among them; `checkTopic` sees to it. */
export type Change = Leave | Less | Shift | Scale | SetTo;

/** The facts and columns a change moves. */
export function namesChanged(change: Change): readonly string[] {
  switch (change.kind) {
    case 'scale':
      return change.scaled;
    case 'leave':
      return [`${change.fact}.${change.column}`];
    case 'less':
    case 'shift':
      return [change.column === undefined ? change.fact : `${change.fact}.${change.column}`];
    case 'set':
      return [change.fact];
  }
}
