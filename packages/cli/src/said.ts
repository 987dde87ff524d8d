import { jsonShownPlainly, shownPlainly } from '@tarebook/casebook';
import { BadInput, reasonOf } from './files';

/** All that reaches the screen goes through here, so that no character can drive the terminal. */
const write = (stream: NodeJS.WriteStream, text: string): Promise<void> =>
  new Promise((resolve, reject) => {
    stream.write(text, (problem) => (problem ? reject(problem) : resolve()));
  });

/** What a stream could not write is told where it was written; as an event it is told again. */
for (const stream of [process.stdout, process.stderr]) stream.on('error', () => {});

const isClosed = (problem: unknown): boolean =>
  problem instanceof Error && 'code' in problem && problem.code === 'EPIPE';

async function toOutput(text: string): Promise<void> {
  try {
    await write(process.stdout, text);
  } catch (problem) {
    // A reader that has seen enough, such as `head`, closes the pipe; that is no error.
    if (isClosed(problem)) return;
    throw new BadInput(
      `standard output: ${reasonOf(problem)}; what was to be said is not all there.`,
    );
  }
}

export const sayText = (text: string): Promise<void> => toOutput(shownPlainly(text));

export const sayJson = (value: object): Promise<void> =>
  toOutput(jsonShownPlainly(`${JSON.stringify(value, null, 2)}\n`));

/** On standard error; where that is gone too, nobody is left to be told. */
export const sayBeside = (lines: string): Promise<void> =>
  write(process.stderr, shownPlainly(`${lines}\n`)).catch(() => {});
