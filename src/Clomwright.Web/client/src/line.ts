import { HubConnectionBuilder, HubConnectionState, LogLevel, type HubConnection } from '@microsoft/signalr';
import type { Change, HouseAnswer } from './scene';

export type Act = 'Undo' | 'Redo' | 'Save' | 'Reload';

type Asking = { gesture: string | null; ask: (line: HubConnection) => Promise<HouseAnswer> };

/**
 * The line to the server for one open house. One request is under way at a time; while it is, a newer move of the same
 * gesture takes the place of one that still waits.
 */
export class HouseLine {
  private readonly hub: HubConnection;
  private readonly waiting: Asking[] = [];
  private running = false;
  private seen = 0;

  constructor(
    private readonly key: string,
    private readonly took: (answer: HouseAnswer) => void,
    private readonly lost: (broken: boolean) => void,
  ) {
    this.hub = new HubConnectionBuilder()
      .withUrl('/hub')
      .withAutomaticReconnect([0, 500, 1000, 2000, 5000, 5000, 5000])
      .configureLogging(LogLevel.None)
      .build();
    this.hub.on('changed', (revision: number) => this.heardOf(revision));
    this.hub.onreconnecting(() => this.lost(true));
    this.hub.onreconnected(() => {
      this.lost(false);
      this.open();
    });
    this.hub.onclose(() => this.lost(true));
  }

  /** Nothing is under way and nothing waits. */
  get idle(): boolean {
    return !this.running && this.waiting.length === 0;
  }

  async start(): Promise<void> {
    await this.hub.start();
    this.open();
  }

  async stop(): Promise<void> {
    await this.hub.stop();
  }

  open(): void {
    this.put({ gesture: null, ask: (hub) => hub.invoke<HouseAnswer>('Open', this.key) });
  }

  change(gesture: string, change: Change): void {
    const fresh: Asking = { gesture, ask: (hub) => hub.invoke<HouseAnswer>('Change', this.key, gesture, change) };
    const last = this.waiting.at(-1);
    if (change.kind === 'move' && last?.gesture === gesture) this.waiting[this.waiting.length - 1] = fresh;
    else this.put(fresh);
    void this.run();
  }

  /** Undo, redo, save, or take the file as another program left it. */
  act(act: Act): void {
    this.put({ gesture: null, ask: (hub) => hub.invoke<HouseAnswer>(act, this.key) });
  }

  private heardOf(revision: number): void {
    if (revision > this.seen && this.idle) this.open();
  }

  private put(asking: Asking): void {
    this.waiting.push(asking);
    void this.run();
  }

  private async run(): Promise<void> {
    if (this.running || this.hub.state !== HubConnectionState.Connected) return;
    const next = this.waiting.shift();
    if (next === undefined) return;
    this.running = true;
    let answer: HouseAnswer;
    try {
      answer = await next.ask(this.hub);
    } catch {
      this.waiting.length = 0;
      this.lost(true);
      return;
    } finally {
      this.running = false;
    }
    this.seen = answer.state?.revision ?? this.seen;
    this.took(answer);
    void this.run();
  }
}
