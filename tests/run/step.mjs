// A step tells one short line, then its failures in full, and adds to the counts.
const counts = { passed: 0, failed: 0 };

const one = (number) => `${number.toFixed(1)} s`;

/** Counts a step that has ended; a step in which nothing ran has failed. */
export function tell(name, { passed, failed, says = '' }, seconds) {
  const nothing = passed + failed === 0;
  counts.passed += passed;
  counts.failed += nothing ? 1 : failed;
  const told = nothing
    ? 'nothing ran, which counts as 1 failed'
    : `${passed} passed, ${failed} failed`;
  console.log(`${name.padEnd(22)} ${told}, ${one(seconds)}`);
  if ((nothing || failed > 0) && says.trim() !== '') console.log(says.trimEnd());
}

/** Runs a step; what it throws is its failure. */
export async function step(name, work) {
  const began = Date.now();
  let result;
  try {
    result = await work();
  } catch (problem) {
    result = { passed: 0, failed: 1, says: problem.stack ?? String(problem) };
  }
  tell(name, result, (Date.now() - began) / 1000);
}

/** Several commands as one step: each is one test. */
export function together(results) {
  const failing = results.filter(({ code }) => code !== 0);
  return {
    passed: results.length - failing.length,
    failed: failing.length,
    says: failing.map(({ out, err }) => `${out}${err}`).join('\n'),
  };
}

export function finish() {
  console.log(`${counts.passed} passed, ${counts.failed} failed`);
  process.exitCode = counts.failed === 0 ? 0 : 1;
}
