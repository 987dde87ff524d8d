// The functions of vitest that the tests of rules use, and no more: they are gathered, run one after the
// other in this process, and the first that fails ends it. Vitest itself needs ten times as long to start.

import {
  ASYMMETRIC_MATCHERS_OBJECT,
  customMatchers,
  GLOBAL_EXPECT,
  getState,
  JestAsymmetricMatchers,
  JestChaiExpect,
  JestExtend,
  setState,
} from '@vitest/expect';
// It takes from vitest the libraries that vitest itself stands on.
import * as chai from 'chai';

chai.use(JestExtend);
chai.use(JestChaiExpect);
chai.use(JestAsymmetricMatchers);

export const expect = (value, message) => chai.expect(value, message);
Object.assign(expect, chai.expect, globalThis[ASYMMETRIC_MATCHERS_OBJECT]);
expect.getState = () => getState(expect);
expect.setState = (state) => setState(state, expect);
expect.extend = (matchers) => chai.expect.extend(expect, matchers);
setState(
  { assertionCalls: 0, isExpectingAssertions: false, expectedAssertionsNumber: null },
  expect,
);
Object.defineProperty(globalThis, GLOBAL_EXPECT, { value: expect, configurable: true });
expect.extend(customMatchers);
expect.fail = (message) => {
  throw new Error(message);
};

export const expectTypeOf = () => ({ toEqualTypeOf: () => undefined });

const gathered = [];
let path = [];

const bodyOf = (rest) => rest.find((each) => typeof each === 'function');
const eachOf =
  (take) =>
  (rows) =>
  (name, ...rest) => {
    for (const row of rows) {
      const cells = Array.isArray(row) ? row : [row];
      take(`${name} ${String(cells[0])}`, () => bodyOf(rest)(...cells));
    }
  };

export function test(name, ...rest) {
  gathered.push({ name: [...path, name].join(' › '), body: bodyOf(rest) });
}
export function describe(name, ...rest) {
  const outer = path;
  path = [...path, name];
  bodyOf(rest)();
  path = outer;
}
test.each = eachOf(test);
describe.each = eachOf(describe);

const before = [];
export const beforeAll = (body) => before.push(body);

/** Runs what was gathered; what fails first is told, and nothing more is run. */
export async function runAll() {
  for (const body of before) await body();
  for (const { name, body } of gathered) {
    try {
      await body();
    } catch (problem) {
      console.log(`${name}: ${String(problem?.message ?? problem).slice(0, 300)}`);
      process.exit(1);
    }
  }
  console.log(`${gathered.length} hold`);
}
