import { HubConnectionBuilder, HubConnectionState, LogLevel, type HubConnection, type ISubscription } from '@microsoft/signalr';
import type { Change, HouseAnswer, Sight } from './scene';
import type { StressAnswer } from './stress-scene';
import type { WaterAnswer } from './water-scene';

export type Act = 'Undo' | 'Redo' | 'Save' | 'Reload';

type Asking = { gesture: string | null; change?: Change; ask: (line: HubConnection) => Promise<HouseAnswer> };

/**
 * The line to the server for one open house. One request is under way at a time; while it is, a newer change of the
 * same gesture takes the place of one that still waits, and steps that wait are added up.
 */
export class HouseLine {
  private readonly hub: HubConnection;
  private readonly waiting: Asking[] = [];
  private running = false;
  private seen = 0;
  private flow: ISubscription<WaterAnswer> | ISubscription<StressAnswer> | null = null;

  constructor(
    private readonly key: string,
    private sight: Sight,
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
    this.put({ gesture: null, ask: (hub) => hub.invoke<HouseAnswer>('Open', this.key, this.sight) });
  }

  change(gesture: string, change: Change): void {
    const last = this.waiting.at(-1);
    const joined = last?.gesture === gesture ? together(last.change, change) : null;
    const whole = joined ?? change;
    const fresh: Asking = { gesture, change: whole, ask: (hub) => hub.invoke<HouseAnswer>('Change', this.key, gesture, whole, this.sight) };
    if (joined !== null) this.waiting[this.waiting.length - 1] = fresh;
    else this.put(fresh);
    void this.run();
  }

  /** Looks at something else of the same house. */
  look(sight: Sight): void {
    this.sight = sight;
    this.open();
  }

  /** How the wall dries, as far as it is worked out; what was asked before is given up. */
  water(took: (answer: WaterAnswer) => void): void {
    this.dry();
    this.flow = this.hub.stream<WaterAnswer>('Water', this.key, this.sight).subscribe({ next: took, complete: () => {}, error: () => {} });
  }

  /** What the wall carries, when it is solved; what was asked before is given up. */
  stress(took: (answer: StressAnswer) => void): void {
    this.dry();
    this.flow = this.hub.stream<StressAnswer>('Stress', this.key, this.sight).subscribe({ next: took, complete: () => {}, error: () => {} });
  }

  /** Nobody looks at the water or the stress any more. */
  dry(): void {
    this.flow?.dispose();
    this.flow = null;
  }

  /** Undo, redo, save, or take the file as another program left it. */
  act(act: Act): void {
    this.put({ gesture: null, ask: (hub) => hub.invoke<HouseAnswer>(act, this.key, this.sight) });
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

/** Two changes of one gesture as one; null where both have to be made. */
function together(before: Change | undefined, after: Change): Change | null {
  if (before === undefined) return null;
  if (after.kind === 'step' && before.kind === 'step') return { ...after, steps: before.steps + after.steps };
  return (after.kind === 'move' || after.kind === 'turn') && before.kind === after.kind ? after : null;
}
