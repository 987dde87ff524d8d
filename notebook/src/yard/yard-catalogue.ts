import inventedLoads from 'virtual:loads';
import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { type Entries, openCatalogue, trailers, vehicles } from '../state/catalogue';
import type { LoadRow } from '../state/loads';
import { allOwnFiles, filesOf, type OwnFile, type OwnTexts, pairsOf } from '../state/own-catalogue';
import type { Beside } from './asked';
import { yardAsking } from './asking';

/** The catalogue that counts on this page: the dealer's own files as they are kept here, else the invented ones. */
export class YardCatalogue implements ReactiveController {
  own: readonly OwnFile[] = [];
  entries: Entries = { vehicles, trailers };
  /** Accessories, offers and loads; undefined until they are read. */
  beside: Beside | undefined;
  /** The vehicles and trailers of one's own; another only where they are others. */
  pairs: OwnTexts | undefined;

  constructor(private readonly host: ReactiveControllerHost) {
    host.addController(this);
  }

  hostConnected(): void {
    void this.look();
  }

  get files(): OwnTexts | undefined {
    return filesOf(this.own);
  }

  get loads(): readonly LoadRow[] {
    return this.beside?.loads ?? inventedLoads;
  }

  /** Reads what is kept; a device that keeps nothing has the invented catalogue. */
  look = async (): Promise<void> => {
    this.own = await allOwnFiles().catch(() => []);
    this.pairs = pairsOf(this.files);
    if (this.beside || this.own.some(({ file }) => file === 'loads.csv')) void this.readBeside();
    const areInvented = this.entries.vehicles === vehicles && this.entries.trailers === trailers;
    if (this.own.length > 0 || !areInvented) this.entries = await openCatalogue();
    this.host.requestUpdate();
  };

  wantBeside = (): void => {
    if (!this.beside) void this.readBeside();
  };

  /** In a worker of its own that is not needed afterwards. */
  private async readBeside(): Promise<void> {
    const { own } = this;
    const reading = yardAsking();
    const read = await reading.beside(filesOf(own)).catch(() => undefined);
    reading.end();
    if (own !== this.own) return;
    this.beside = read;
    this.host.requestUpdate();
  }
}
