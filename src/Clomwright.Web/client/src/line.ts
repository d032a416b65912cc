import { HubConnectionBuilder, HubConnectionState, LogLevel, type HubConnection, type ISubscription } from '@microsoft/signalr';
import type { ArrivedAnswer } from './arrived-scene';
import type { ChoicesAnswer, DaysAnswer } from './days-scene';
import { wholeScene } from './kept-scene';
import type { Change, HouseAnswer, Scene, Sight } from './scene';
import type { FallAnswer, LiveAnswer, StressAnswer } from './stress-scene';
import type { WaterAnswer } from './water-scene';

export type Act = 'Undo' | 'Redo' | 'Save' | 'Reload';

/** How long after the last answer to a hand everything is asked for, ms: while it goes on, answers wait for nothing but where everything stands. */
const rest = 120;

type Asking = { gesture: string | null; change?: Change; ask: (line: HubConnection) => Promise<HouseAnswer> };

/**
 * The line to the server for one open house. One request is under way at a time; while it is, a newer change of the
 * same gesture takes the place of one that still waits, and steps that wait are added up.
 */
export class HouseLine {
  private readonly hub: HubConnection;
  private readonly waiting: Asking[] = [];
  private running = false;
  /** The wall as it is here, with the number it was sent under. */
  private wall: Scene | null = null;
  /** The last answer was given while something was in hand: everything is asked for when that rests. */
  private resting: ReturnType<typeof setTimeout> | null = null;
  /** The last state was given while something was in hand. */
  private inHand = false;
  /** How long it rests before that, ms. */
  private patience = rest;
  /** Everything waits for what the page wanted first. */
  private waits = false;
  private seen = 0;
  /** The newest revision that another window told of and that was not looked at yet. */
  private heard = 0;
  private flow: ISubscription<WaterAnswer> | ISubscription<StressAnswer> | ISubscription<DaysAnswer> | null = null;
  private held: { opening: string; flow: ISubscription<LiveAnswer> } | null = null;
  private search: ISubscription<FallAnswer> | null = null;
  private trying: ISubscription<ChoicesAnswer> | null = null;
  private arriving: ISubscription<ArrivedAnswer> | null = null;

  /** Asked when the hand rests: whether the page has asked for something that comes first. It says so when that is here ({@link everything}). */
  first: (() => boolean) | null = null;

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
    return this.resting === null && !this.waits && !this.running && this.waiting.length === 0;
  }

  /** What was in hand is let go: everything is asked for at once. */
  settle(): void {
    this.patience = 0;
    if (this.resting !== null) this.rested();
    else this.everything();
  }

  private rested(): void {
    this.wake();
    this.waits = this.patience > 0 && this.first?.() === true;
    if (!this.waits) this.open();
  }

  /** What was wanted first is here, or will not come. */
  everything(): void {
    if (!this.waits) return;
    this.waits = false;
    this.open();
  }

  private wake(): void {
    if (this.resting !== null) clearTimeout(this.resting);
    this.resting = null;
  }

  async start(): Promise<void> {
    await this.hub.start();
    this.open();
  }

  async stop(): Promise<void> {
    this.wake();
    await this.hub.stop();
  }

  open(): void {
    this.put({ gesture: null, ask: (hub) => hub.invoke<HouseAnswer>('Open', this.key, this.sight) });
  }

  change(gesture: string, change: Change): void {
    this.patience = rest;
    this.waits = false;
    const last = this.waiting.at(-1);
    const joined = last?.gesture === gesture ? together(last.change, change) : null;
    const whole = joined ?? change;
    const fresh: Asking = {
      gesture,
      change: whole,
      ask: (hub) =>
        this.wall === null
          ? hub.invoke<HouseAnswer>('Change', this.key, gesture, whole, this.sight)
          : hub.invoke<HouseAnswer>('Drag', this.key, gesture, whole, this.sight, this.wall.edition),
    };
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

  /** When the job would be done, as far as the seasons are drawn; what was asked before is given up. */
  days(took: (answer: DaysAnswer) => void): void {
    this.dry();
    this.flow = this.hub.stream<DaysAnswer>('Days', this.key).subscribe({ next: took, complete: () => {}, error: () => {} });
  }

  /** Tries other ways and weeks; what was tried before is given up. */
  choices(took: (answer: ChoicesAnswer) => void, ended: () => void): void {
    this.stopTrying();
    this.trying = this.hub.stream<ChoicesAnswer>('Choices', this.key).subscribe({ next: took, complete: ended, error: ended });
  }

  stopTrying(): void {
    this.trying?.dispose();
    this.trying = null;
  }

  /** Tries what can be done with a frame that came in another size; what was tried before is given up. */
  arrived(opening: string, width: string, height: string, took: (answer: ArrivedAnswer) => void, ended: (lost: boolean) => void): void {
    this.stopArriving();
    this.arriving = this.hub.stream<ArrivedAnswer>('Arrived', this.key, opening, width, height).subscribe({ next: took, complete: () => ended(false), error: () => ended(true) });
  }

  stopArriving(): void {
    this.arriving?.dispose();
    this.arriving = null;
  }

  /** What the wall carries, when it is solved; what was asked before is given up. */
  stress(took: (answer: StressAnswer) => void): void {
    this.dry();
    const ended = () => this.everything();
    this.flow = this.hub.stream<StressAnswer>('Stress', this.key, this.sight).subscribe({ next: took, complete: ended, error: ended });
  }

  /** What the wall carries while an opening is in hand, whenever a picture of the house as it is has been made; until it is let go. */
  hold(opening: string, took: (answer: LiveAnswer) => void): void {
    if (this.held?.opening === opening) return;
    this.release();
    const ended = () => {
      if (this.held?.flow === flow) this.held = null;
    };
    const flow: ISubscription<LiveAnswer> = this.hub
      .stream<LiveAnswer>('Live', this.key, opening, this.sight)
      .subscribe({ next: (answer) => this.held?.flow === flow && took(answer), complete: ended, error: ended });
    this.held = { opening, flow };
  }

  /** Nothing is in hand any more; the server gives back what it held for it. */
  release(): void {
    this.held?.flow.dispose();
    this.held = null;
  }

  /** Searches for the push at which the house falls; what was searched for before is given up. */
  fall(took: (answer: FallAnswer) => void, ended: () => void): void {
    this.giveUp();
    this.search = this.hub.stream<FallAnswer>('Fall', this.key).subscribe({ next: took, complete: ended, error: ended });
  }

  giveUp(): void {
    this.search?.dispose();
    this.search = null;
  }

  /** Nobody looks at the water or the stress any more. */
  dry(): void {
    this.flow?.dispose();
    this.flow = null;
    this.everything();
  }

  /** Undo, redo, save, or take the file as another program left it. */
  act(act: Act): void {
    this.put({ gesture: null, ask: (hub) => hub.invoke<HouseAnswer>(act, this.key, this.sight) });
  }

  /** An answer with the whole wall: what was not sent again is what is here. */
  private whole(answer: HouseAnswer): HouseAnswer {
    const { state } = answer;
    const sent = state?.scene ?? null;
    this.wall = sent === null ? null : wholeScene(sent, this.wall);
    return state === null || this.wall === sent ? answer : { ...answer, state: { ...state, scene: this.wall } };
  }

  private heardOf(revision: number): void {
    this.heard = Math.max(this.heard, revision);
    this.catchUp();
  }

  /** Looks at what another window did, as soon as nothing of one's own is under way. */
  private catchUp(): void {
    if (!this.idle) return;
    const behind = this.heard > this.seen;
    this.heard = 0;
    if (behind) this.open();
  }

  private put(asking: Asking): void {
    this.waiting.push(asking);
    void this.run();
  }

  private async run(): Promise<void> {
    if (this.running || this.hub.state !== HubConnectionState.Connected) return;
    const next = this.waiting.shift();
    if (next === undefined) return;
    this.wake();
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
    const asShown = answer.state === null && answer.trouble === null;
    this.seen = answer.state?.revision ?? this.seen;
    this.inHand = asShown ? this.inHand : answer.state?.scene?.inHand === true;
    if (this.inHand && this.waiting.length === 0) this.resting = setTimeout(() => this.rested(), this.patience);
    this.took(asShown ? answer : this.whole(answer));
    this.catchUp();
    void this.run();
  }
}

/** Two changes of one gesture as one; null where both have to be made. */
function together(before: Change | undefined, after: Change): Change | null {
  if (before === undefined) return null;
  if (after.kind === 'step' && before.kind === 'step') return { ...after, steps: before.steps + after.steps };
  return (after.kind === 'move' || after.kind === 'turn' || after.kind === 'move-point') && before.kind === after.kind ? after : null;
}
