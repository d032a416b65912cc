import type { DaysAnswer } from './days-scene';
import type { HouseLine } from './line';
import type { WallSheet } from './pages/wall';
import type { HouseState, Scene } from './scene';
import type { LiveAnswer, StressAnswer } from './stress-scene';
import type { WaterAnswer } from './water-scene';

/** Who shows what flows in. */
export interface FlowHost {
  readonly line: HouseLine | null;
  readonly state: HouseState | undefined;
  readonly sheet: WallSheet;
  requestUpdate(): void;
  /** What was tried for a forecast that is no more is given up. */
  stopTrying(): void;
}

/** What is worked out beside everything else for the house as it is: its water, its stress, its days. Each is asked for once for each house. */
export class Flows {
  water: WaterAnswer | null = null;
  stress: StressAnswer | null = null;
  /** The newest answer while an opening is in hand: a picture, or why the wall cannot be followed where it is. */
  live: LiveAnswer | null = null;
  forecast: DaysAnswer | null = null;

  /** An opening is in hand on the sheet of stress. */
  private inHand = false;

  /** Which house, revision and face the stress is of. */
  private stressOf = '';

  /** Which house, revision and face the water is of. */
  private waterOf = '';

  /** Which house and revision the forecast is of. */
  forecastOf = '';

  constructor(private readonly host: FlowHost) {}

  takeInHand(opening: string): void {
    this.inHand = true;
    this.host.line?.hold(opening, (answer) => {
      // The first picture is of the house at rest, which is on the sheet already, and better.
      if (this.host.sheet !== 'stress' || answer.revision === this.stress?.scene?.revision) return;
      this.live = answer;
      this.host.requestUpdate();
    });
  }

  letGo(): void {
    this.inHand = false;
    this.host.line?.settle();
    this.flow();
  }

  leaveHand(): void {
    this.inHand = false;
    this.live = null;
    this.host.line?.release();
    this.host.requestUpdate();
  }

  /** Asks for the water or the stress of the wall looked at, or the days, where that is not what is here already. */
  flow(): void {
    const { line, state, sheet } = this.host;
    if (line !== null && state?.days) {
      this.foresee(line, state);
      return;
    }
    this.forgetForecast();
    if (line === null || !state?.scene || sheet === 'cutting') {
      line?.dry();
      this.forgetUnfinished(state);
      return;
    }
    const of = lookedAt(state, state.scene);
    if (sheet === 'stress') this.carry(line, state, of);
    else this.soak(line, of);
  }

  private carry(line: HouseLine, state: HouseState, of: string): void {
    if (of === this.stressOf) {
      if (!this.inHand && this.stress?.scene?.revision === state.revision) this.leaveHand();
      return;
    }
    this.forgetUnfinished(state);
    if (line.idle) this.ask(line, of);
  }

  /** The hand rests on the sheet of stress: all cases come before everything else. */
  handRests(): boolean {
    const { line, state, sheet } = this.host;
    if (!this.inHand || sheet !== 'stress' || line === null || !state?.scene) return false;
    const of = lookedAt(state, state.scene);
    if (of === this.stressOf) return false;
    this.ask(line, of);
    return true;
  }

  private ask(line: HouseLine, of: string): void {
    this.stressOf = of;
    line.stress((answer) => {
      // Until it is solved, what is on the sheet stays and says of which house it is.
      if (this.stressOf !== of || (answer.scene === null && answer.trouble === null && this.stress?.scene)) return;
      this.stress = answer;
      if (!this.inHand) this.leaveHand();
      // The hand rests: all cases are shown under it until it goes on.
      else if (answer.scene !== null) this.live = null;
      this.host.requestUpdate();
    });
  }

  private soak(line: HouseLine, of: string): void {
    if (this.stress?.scene === null) this.stressOf = '';
    if (of === this.waterOf || !line.idle) return;
    this.waterOf = of;
    this.water = null;
    line.water((answer) => {
      if (this.waterOf !== of) return;
      this.water = answer;
      this.host.requestUpdate();
    });
  }

  /** Asks when the job would be done, where that is not what is here already; what others would bring is of another house then. */
  private foresee(line: HouseLine, state: HouseState): void {
    this.waterOf = this.stressOf = '';
    const of = `${state.key}/${state.revision}`;
    if (of === this.forecastOf || !line.idle) return;
    this.forecastOf = of;
    this.host.stopTrying();
    line.days((answer) => {
      // Until the seasons are drawn, what is here stays.
      if (this.forecastOf !== of || (answer.scene === null && answer.trouble === null && this.forecast?.scene)) return;
      this.forecast = answer;
      this.host.requestUpdate();
    });
  }

  private forgetForecast(): void {
    this.forecastOf = '';
    this.host.stopTrying();
  }

  /** What was asked for and given up before it came is asked for again. */
  private forgetUnfinished(state: HouseState | undefined): void {
    if (!this.water?.scene) this.waterOf = '';
    if (!this.stress?.scene || (state !== undefined && this.stress.scene.revision !== state.revision)) this.stressOf = '';
  }

  /** Another house, or none. */
  forget(): void {
    this.inHand = false;
    this.waterOf = this.stressOf = this.forecastOf = '';
    this.water = this.stress = this.live = this.forecast = null;
    this.host.requestUpdate();
  }
}

/** Which house, revision and face stress and water are of. */
function lookedAt(state: HouseState, scene: Scene): string {
  return `${state.key}/${state.revision}/${scene.face}`;
}
