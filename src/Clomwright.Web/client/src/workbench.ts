import { LitElement, html } from 'lit';
import type { Nearness } from './drawing/frame';
import { Flows, type FlowHost } from './flows';
import { HouseLine, type Act } from './line';
import type { ChoicesAnswer, DaysAnswer } from './days-scene';
import { daysPage, type DaysBench } from './pages/days';
import './pages/arrived';
import { comfortPage } from './pages/comfort';
import { earthPage, type EarthBench } from './pages/earth';
import { groundPage, type GroundBench } from './pages/ground';
import { papersPage } from './pages/papers';
import './pages/phones';
import './pages/record';
import './pages/round';
import { roofPage, type RoofBench } from './pages/roof';
import { sheetsPage } from './pages/sheets';
import { startPage } from './pages/start';
import { wallPage, type WallBench, type WallSheet } from './pages/wall';
import type { RecordScene } from './record-scene';
import { followLinks, papersAddress, placeOf, type Place } from './places';
import { Searches } from './searches';
import type { Change, Face, HouseAnswer, HouseCard, HouseState, PapersState, Sight } from './scene';
import type { FallAnswer, LiveAnswer, StressAnswer } from './stress-scene';
import type { WaterAnswer } from './water-scene';
import { say } from './words';

interface Houses {
  folder: string;
  houses: HouseCard[];
}

/** The whole page: where one is, the open house, and the line to the server. */
export class Workbench extends LitElement implements WallBench, RoofBench, EarthBench, DaysBench, GroundBench, FlowHost {
  static override properties = {
    place: { state: true },
    houses: { state: true },
    state: { state: true },
    papers: { state: true },
    record: { state: true },
    trouble: { state: true },
    nearness: { state: true },
    chosen: { state: true },
    pointed: { state: true },
    settled: { state: true },
    broken: { state: true },
    room: { state: true },
    told: { state: true },
    sheet: { state: true },
    day: { state: true },
  };

  declare place: Place;
  declare houses: Houses | null;
  declare state: HouseState | undefined;
  declare papers: PapersState | null;
  declare record: RecordScene | null;
  declare trouble: string | null;
  declare face: Face;
  declare nearness: Nearness;
  declare chosen: string | null;
  declare pointed: string | null;
  declare settled: boolean;
  declare broken: boolean;
  declare room: number;
  declare told: string;
  declare sheet: WallSheet;
  declare day: number;

  line: HouseLine | null = null;
  private lineFor = '';

  private readonly flows = new Flows(this);
  private readonly searches = new Searches(() => this.requestUpdate());
  private asks = 0;
  private readonly started = Date.now();
  private readonly watch = new ResizeObserver(() => this.measure());

  constructor() {
    super();
    this.place = placeOf(location);
    this.houses = this.papers = this.record = this.trouble = this.chosen = this.pointed = null;
    this.face = 'inside';
    this.nearness = 'whole';
    this.settled = true;
    this.broken = false;
    this.room = 0;
    this.told = '';
    this.sheet = 'cutting';
    this.day = 0;
  }

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.addEventListener('choose', (event) => this.choose((event as CustomEvent<string>).detail));
    this.addEventListener('change-house', (event) => {
      const { gesture, change } = (event as CustomEvent<{ gesture: string; change: Change }>).detail;
      this.settled = false;
      this.line?.change(gesture, change);
    });
    this.addEventListener('point-at', (event) => {
      const { id, show } = (event as CustomEvent<{ id: string | null; show: boolean }>).detail;
      this.pointed = id;
      if (show && id !== null) void this.showPlace();
    });
    this.addEventListener('go-to', (event) => {
      history.pushState(null, '', (event as CustomEvent<string>).detail);
      this.go();
      scrollTo(0, 0);
    });
    this.addEventListener('form-there', () => this.requestUpdate());
    this.addEventListener('take-opening', (event) => this.flows.takeInHand((event as CustomEvent<string>).detail));
    this.addEventListener('let-go', () => this.flows.letGo());
    this.addEventListener('go-to-day', (event) => (this.day = (event as CustomEvent<number>).detail));
    addEventListener('keydown', (event) => this.keyed(event));
    addEventListener('beforeunload', (event) => {
      if (this.sight !== null && this.state?.saved === false && this.broken) event.preventDefault();
    });
    followLinks(() => this.go());
    this.watch.observe(document.documentElement);
    this.measure();
    this.go();
  }

  protected override render() {
    if (this.trouble !== null) return this.troublePage();
    switch (this.place.page) {
      case 'start':
        return this.houses === null ? this.waitPage() : startPage(this.houses.folder, this.houses.houses);
      case 'wall':
        return this.state?.scene ? wallPage(this, this.state, this.state.scene, this.place.greet) : this.waitPage();
      case 'roof':
        return this.state?.roof ? roofPage(this, this.state, this.state.roof) : this.waitPage();
      case 'ground':
        return this.state?.ground ? groundPage(this, this.state, this.state.ground) : this.waitPage();
      case 'earth':
        return this.state?.earth ? earthPage(this, this.state, this.state.earth) : this.waitPage();
      case 'days':
        return this.state?.days && this.state.scene ? daysPage(this, this.state, this.state.scene, this.state.days) : this.waitPage();
      case 'comfort':
        return this.state?.comfort ? comfortPage(this, this.state, this.state.comfort) : this.waitPage();
      case 'arrived':
        return this.state?.scene
          ? html`<arrived-page .bench=${this} .state=${this.state} .of=${this.place.of} .settled=${this.settled} .room=${this.room} .broken=${this.broken}></arrived-page>`
          : this.waitPage();
      case 'papers':
        return this.papers === null ? this.waitPage() : papersPage(this.place.house, this.papers);
      case 'record':
        return this.record === null ? this.waitPage() : html`<record-page .house=${this.place.house} .scene=${this.record}></record-page>`;
      case 'phones':
        return html`<phones-page .house=${this.place.house}></phones-page>`;
      case 'round':
        return html`<round-page .house=${this.place.house}></round-page>`;
      case 'sheet':
      case 'print': {
        const whenThere = this.place.page === 'print' ? () => void document.fonts.ready.then(() => print()) : () => {};
        return this.papers === null ? this.waitPage() : sheetsPage(this.place.house, this.place.of, this.papers, whenThere, this.place.set);
      }
    }
  }

  protected override updated(): void {
    this.toggleAttribute('data-ready', this.querySelector('.wait:not(.told), house-form:not([data-there])') === null);
    this.toggleAttribute('data-settled', this.settled);
  }

  private waitPage() {
    return html`<main class="wait"><h1 class="only-read-aloud">${say('web.program')}</h1><p>${say('web.wait')}</p></main>`;
  }

  private troublePage() {
    return html`<main class="wait told">
      <h1>${say('web.trouble')}</h1>
      <p class="reason">${this.trouble}</p>
      <p><a href="/">${say('web.nav.another')}</a></p>
    </main>`;
  }

  /** What of the open house is looked at; null on pages that have no open house. */
  private get sight(): Sight | null {
    return this.place.page === 'wall' ? this.face : this.place.page === 'arrived' ? 'inside' : this.place.page === 'ground' || this.place.page === 'roof' || this.place.page === 'earth' || this.place.page === 'days' || this.place.page === 'comfort' ? this.place.page : null;
  }

  get water(): WaterAnswer | null {
    return this.flows.water;
  }

  get stress(): StressAnswer | null {
    return this.flows.stress;
  }

  get live(): LiveAnswer | null {
    return this.flows.live;
  }

  get forecast(): DaysAnswer | null {
    return this.flows.forecast;
  }

  get fall(): FallAnswer | null {
    return this.searches.fall;
  }

  get falling(): boolean {
    return this.searches.falling;
  }

  get fallOf(): number {
    return this.searches.fallOf;
  }

  get choices(): ChoicesAnswer | null {
    return this.searches.choices;
  }

  get trying(): boolean {
    return this.searches.trying;
  }

  turn = (face: Face): void => {
    this.face = face;
    this.line?.look(face);
  };

  step = (nearness: Nearness): void => {
    this.nearness = nearness;
  };

  choose = (opening: string): void => {
    this.chosen = opening;
  };

  lay = (sheet: WallSheet): void => {
    this.sheet = sheet;
    if (sheet !== 'stress') this.flows.leaveHand();
    this.flows.flow();
  };

  search = (): void => {
    if (this.line !== null && this.state !== undefined) this.searches.search(this.line, this.state.revision);
  };

  giveUp = (): void => this.searches.giveUp(this.line);

  tryOthers = (): void => this.searches.tryOthers(this.line);

  stopTrying = (): void => this.searches.stopTrying(this.line);

  ask = (change: Change): void => {
    this.settled = false;
    this.line?.change(`ask-${++this.asks}-${this.started}`, change);
  };

  act = (act: Act): void => {
    if (this.line === null) return;
    this.settled = false;
    this.line.act(act);
  };

  private measure(): void {
    const style = getComputedStyle(document.documentElement);
    this.room = Math.max(0, Math.floor(document.documentElement.clientWidth - 2 * Number.parseFloat(style.getPropertyValue('--page-edge') || '0')));
  }

  private go(): void {
    this.place = placeOf(location);
    this.trouble = null;
    this.papers = this.record = null;
    const house = this.place.page === 'start' ? '' : this.place.house;
    if (this.sight === null || house !== this.lineFor) this.hangUp();
    switch (this.place.page) {
      case 'start':
        this.houses = null;
        document.title = say('web.program');
        void this.fetched<Houses>('/api/houses', (houses) => (this.houses = houses));
        break;
      case 'ground':
      case 'wall':
      case 'roof':
      case 'earth':
      case 'days':
      case 'comfort':
      case 'arrived':
        this.ring(house, this.sight ?? this.face);
        break;
      case 'phones':
        break;
      case 'record':
        void this.fetched<RecordScene>(`/api/houses/${encodeURIComponent(house)}/record`, (record) => {
          this.record = record;
          document.title = say('web.title.record', { name: record.name });
        });
        break;
      case 'round':
        break;
      default:
        void this.fetched<PapersState>(papersAddress(house, 'papers', this.place.paper, this.place.set), (papers) => {
          this.papers = papers;
          document.title = say('web.title.papers', { name: papers.name });
        });
    }
  }

  private hangUp(): void {
    void this.line?.stop();
    this.line = null;
    this.lineFor = '';
    this.flows.forget();
    this.searches.forget();
  }

  private ring(house: string, sight: Sight): void {
    this.pointed = null;
    if (this.line !== null) {
      this.line.look(sight);
      return;
    }
    this.state = undefined;
    this.chosen = null;
    this.lineFor = house;
    const line = new HouseLine(
      house,
      sight,
      (answer) => this.answered(line, answer),
      (broken) => {
        if (this.line === line) this.broken = broken;
      },
    );
    this.line = line;
    line.first = () => this.flows.handRests();
    line.start().catch(() => (this.trouble = say('web.line.lost')));
  }

  private answered(line: HouseLine, answer: HouseAnswer): void {
    if (this.line !== line) return;
    this.settled = line.idle;
    if (answer.state === null) {
      this.trouble = answer.trouble ?? this.trouble;
      return;
    }
    this.chosen = chosenAfter(this.state, answer.state, this.chosen);
    this.state = answer.state;
    if (this.settled) this.told = this.inShort(answer.state);
    document.title = say(`web.title.${this.place.page}`, { name: answer.state.name });
    this.flows.flow();
  }

  /** What is read aloud when a change has settled. */
  private inShort({ scene, roof, earth, comfort, ground }: HouseState): string {
    if (ground !== null) return [...ground.figures.map((figure) => `${figure.label} ${figure.value}`), ground.house].join('. ');
    if (comfort !== null) return comfort.figures.map((figure) => `${figure.label} ${figure.value}`).join('. ');
    if (earth !== null) return [earth.triangle.named, earth.next.what, earth.totals.line].join('. ');
    if (roof !== null) return [roof.trouble, roof.tightest[0]?.what, roof.tightest[0]?.used, roof.totals.line].filter(Boolean).join('. ');
    if (scene === null) return '';
    const chosen = scene.openings.find((opening) => opening.name === this.chosen);
    return [chosen?.label, scene.totals.line].filter(Boolean).join('. ');
  }

  private async fetched<T>(address: string, took: (value: T) => void): Promise<void> {
    const from = location.href;
    try {
      const answer = await fetch(address);
      const body = (await answer.json()) as T & { trouble?: string };
      if (location.href !== from) return;
      if (answer.ok) took(body);
      else this.trouble = body.trouble ?? say('web.line.lost');
    } catch {
      if (location.href === from) this.trouble = say('web.line.lost');
    }
  }

  private keyed(event: KeyboardEvent): void {
    if (this.sight === null || !(event.ctrlKey || event.metaKey) || event.altKey) return;
    const key = event.key.toLowerCase();
    const writing = event.target instanceof HTMLInputElement && event.target.type === 'text';
    if (key === 's') this.act('Save');
    else if (writing) return;
    else if (key === 'z' && !event.shiftKey) this.act('Undo');
    else if (key === 'y' || (key === 'z' && event.shiftKey)) this.act('Redo');
    else return;
    event.preventDefault();
  }

  private async showPlace(): Promise<void> {
    await this.updateComplete;
    const behavior = matchMedia('(prefers-reduced-motion: reduce)').matches ? 'auto' : 'smooth';
    this.querySelector('.pointed')?.scrollIntoView({ behavior, block: 'center', inline: 'center' });
  }
}

/** A part that has just been added, or has another name now, is the one that is chosen. */
function chosenAfter(before: HouseState | undefined, after: HouseState, chosen: string | null): string | null {
  const names = (state: HouseState | undefined): string[] | null => (state?.scene ? [...state.scene.openings, ...state.scene.parts].map((part) => part.name) : null);
  const was = names(before);
  const fresh = was === null ? [] : (names(after) ?? []).filter((name) => !was.includes(name));
  return before?.key === after.key && fresh.length === 1 ? (fresh[0] ?? chosen) : chosen;
}
