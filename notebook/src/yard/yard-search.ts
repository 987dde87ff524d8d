import type { ReactiveController, ReactiveControllerHost } from 'lit';
import type { YardAsked, YardFound, YardWhy } from './asked';
import { yardAsking } from './asking';

/** Whoever types is not answered at every key. */
const rests = 150;

/** What of the yard goes with what was told: asked beside the page, told here as it comes in. */
export class YardSearch implements ReactiveController {
  found: YardFound | undefined;
  /** Why each of what was found comes out so, by its name, as far as it is told. */
  whys: ReadonlyMap<string, YardWhy> = new Map();
  /** Why nothing could be found; '' where that is not so. */
  notice = '';
  /** Whether something else was asked than what stands here. */
  waiting = false;
  readonly asking = yardAsking();
  private timer: ReturnType<typeof setTimeout> | undefined;
  private turn = 0;

  constructor(private readonly host: ReactiveControllerHost) {
    host.addController(this);
  }

  hostDisconnected(): void {
    clearTimeout(this.timer);
    this.asking.end();
  }

  /** Nothing is asked that could be answered: an answer never stands beside other figures than it was found for. */
  leave(): void {
    clearTimeout(this.timer);
    this.turn += 1;
    this.found = undefined;
    this.waiting = false;
  }

  ask(asked: YardAsked): void {
    clearTimeout(this.timer);
    this.turn += 1;
    this.waiting = true;
    const { turn } = this;
    this.timer = setTimeout(() => void this.hear(asked, turn), rests);
  }

  private async hear(asked: YardAsked, turn: number): Promise<void> {
    const isOver = (): boolean => turn !== this.turn;
    const hearWhys = (whys: readonly YardWhy[]): void => {
      if (isOver()) return;
      this.whys = new Map([...this.whys, ...whys.map((each) => [each.name, each] as const)]);
      this.host.requestUpdate();
    };
    try {
      const found = await this.asking.ask(asked, hearWhys);
      if (isOver()) return;
      if (found) {
        this.found = found;
        this.whys = new Map();
      }
      this.notice = '';
    } catch (problem) {
      if (isOver()) return;
      this.found = undefined;
      this.notice = problem instanceof Error ? problem.message : String(problem);
    }
    this.waiting = false;
    this.host.requestUpdate();
  }
}
