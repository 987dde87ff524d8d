/** What is used of the satisfiability solver, which comes without types. */
declare module 'logic-solver' {
  type Formula = string | { readonly type?: string };
  type Solver = {
    require(...formulas: readonly Formula[]): void;
    forbid(...formulas: readonly Formula[]): void;
    solve(): object | null;
    solveAssuming(formula: Formula): object | null;
  };
  const Logic: {
    Solver: new () => Solver;
    or(...formulas: readonly Formula[]): Formula;
    not(formula: Formula): Formula;
    implies(a: Formula, b: Formula): Formula;
    exactlyOne(...formulas: readonly Formula[]): Formula;
    readonly TRUE: Formula;
  };
  export default Logic;
}
