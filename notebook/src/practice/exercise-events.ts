/** An exercise is done: what was said, and whether it was right. */
export class ExerciseDone extends CustomEvent<{
  readonly said: string;
  readonly met: boolean;
}> {
  constructor(said: string, met: boolean) {
    super('exercise-done', { detail: { said, met }, bubbles: true });
  }
}
