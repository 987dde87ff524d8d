/** A formula that cannot be read: which part, and what would be right. */
export class FormulaError extends Error {}
