import type { Source } from './source';

/**
 * A catalogue: models by year, each with options that come with it, may be chosen, or are not
 * offered; and rules between options. Plain data; formulas ask it (see formula/catalogued.ts).
 *
 *     model, year, wishes ─► what is offered ─► rules ─► builds ─► rows, figures, counts
 */
export type Catalogue = {
  readonly label: string;
  readonly source: Source;
  /** The choice facts that say which model, and of which year. */
  readonly model: string;
  readonly year: string;
  /** The yes/no fact that says whether an option is wanted, by option; not said: either will do. */
  readonly wishes: Readonly<Record<string, string>>;
  /** Every year there is, in order. */
  readonly years: readonly string[];
  /** The unit of each figure of models and options; places are in `placeUnit`. */
  readonly figures: Readonly<Record<string, string>>;
  readonly placeUnit: string;
  readonly models: Readonly<Record<string, CatalogueModel>>;
  readonly options: Readonly<Record<string, CatalogueOption>>;
  /** What is offered, by the name of a list that models share. */
  readonly offers: Readonly<Record<string, readonly Offer[]>>;
  readonly rules: readonly OptionRule[];
  /** The list of facts that the options of a build are added to as rows. */
  readonly rows?: BuildRows;
  /** The lists that an answer has from it, by their ids there. */
  readonly tells?: Tells;
};

export type CatalogueModel = {
  readonly label: string;
  /** First and last year in which it is sold. */
  readonly sold: readonly [first: string, last: string];
  /** The name of its list of offers. */
  readonly offers: string;
  readonly figures: Readonly<Record<string, number>>;
  /** Figures that differ in some year, by year. */
  readonly inYear?: Readonly<Record<string, Readonly<Record<string, number>>>>;
  /** Where the places of options lie in this model. */
  readonly places: Readonly<Record<string, number>>;
};

export type CatalogueOption = {
  readonly label: string;
  readonly figures: Readonly<Record<string, number>>;
  /** One of the places that every model has. */
  readonly place: string;
};

/** An option of a list, from a year on; without `to` to the end. Not listed: not offered. */
export type Offer = {
  readonly option: string;
  readonly as: 'standard' | 'optional';
  readonly from: string;
  readonly to?: string;
};

/**
 * `requires`: with the option, one of the others at the least. `excludes`: with the option, none of
 * the others. `one-of`: exactly one of those that are offered, if any is.
 */
export type OptionRule =
  | {
      readonly kind: 'requires' | 'excludes';
      readonly option: string;
      readonly others: readonly string[];
    }
  | { readonly kind: 'one-of'; readonly others: readonly string[] };

export type BuildRows = {
  readonly list: string;
  /** Which column takes which figure of the option. */
  readonly figures: Readonly<Record<string, string>>;
  /** The column that takes the option's place in the model. */
  readonly place: string;
};

/** The title of each list, and the words that go with its entries. */
export type Tells = {
  /** What is built in: why each option is; `amount` is a figure of options. */
  readonly build: {
    readonly title: string;
    readonly amount: string;
    readonly wanted: string;
    readonly needed: string;
    readonly oneOf: string;
  };
  /**
   * Which models can be had so, and in how many ways; the same by year, of the chosen model. In
   * `years.because`, `{ways}` stands for their number.
   */
  readonly models: { readonly title: string; readonly because: string };
  readonly years: { readonly title: string; readonly because: string };
  /** What stands against the order, where it cannot be built. */
  readonly against: {
    readonly title: string;
    readonly notOffered: string;
    readonly wanted: string;
    readonly unwanted: string;
    readonly rule: string;
  };
  /** What came to be standard on the chosen model up to the chosen year. */
  readonly standard: {
    readonly title: string;
    readonly amount: string;
    readonly because: string;
  };
  /** Models by how many options each leaves open. */
  readonly choices: { readonly title: string };
};
