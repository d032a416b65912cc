import { LitElement, html, nothing, svg, type PropertyValues } from 'lit';
import { guard } from 'lit/directives/guard.js';
import { repeat } from 'lit/directives/repeat.js';
import type { Change, Face, FaceView, OpeningCard, Scene } from '../scene';
import { say } from '../words';
import { asked, follow, take, type Held, type Movable } from './drag';
import { direction, frameOf, round, xOfStation, type Frame, type Nearness } from './frame';
import { foundLayer, freeLayer, type FoundMark } from './free';
import { hatches } from './hatches';
import { builtInLayer, builtInShape, landingLayer, markLayer, wallLayer } from './layers';
import { namePlaces, openingShape, type NamePlace } from './openings';
import { pierLayer } from './piers';
import { pierEdges, stressLayer } from './stress';
import type { StressPicture, StressScene } from '../stress-scene';

/** Below this width the wall is read, not dragged. */
const dragsFrom = '(min-width: 700px)';

/** Presses of the arrow keys nearer together than this are taken back as one, ms. */
const samePress = 1500;

/** The unrolled wall. It sends changes and draws what comes back; the opening in hand follows the pointer by itself. */
export class UnrolledWall extends LitElement {
  static override properties = {
    scene: { attribute: false },
    face: {},
    nearness: {},
    chosen: {},
    pointed: {},
    settled: { type: Boolean },
    stress: { attribute: false },
    picture: { attribute: false },
    found: { attribute: false },
    room: { state: true },
  };

  declare scene: Scene;
  declare face: Face;
  declare nearness: Nearness;
  declare chosen: string | null;
  declare pointed: string | null;
  declare settled: boolean;
  /** The sheet of stress in the place of the one of what is where; null for that. */
  declare stress: StressScene | null;
  declare picture: StressPicture | null;
  /** What was found otherwise than drawn. */
  declare found: readonly FoundMark[];
  declare room: number;

  private held: Held | null = null;
  private frame: Frame | null = null;
  private painting = 0;
  private gestures = 0;
  private lastNudge = 0;
  private readonly watch = new ResizeObserver(([entry]) => {
    if (entry) this.room = Math.floor(entry.contentRect.width);
  });

  constructor() {
    super();
    this.room = 0;
    this.stress = this.picture = null;
    this.found = [];
  }

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.watch.observe(this);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.watch.disconnect();
    cancelAnimationFrame(this.painting);
  }

  private get view(): FaceView {
    return this.scene.view;
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('settled') && this.settled && this.held?.pointer === -1) this.held = null;
  }

  protected override render() {
    if (this.room === 0) return nothing;
    const { scene, view } = this;
    const frame = this.framed(frameOf(scene, view, this.room, this.nearness));
    this.frame = frame;
    const names = namePlaces(frame, view);
    const { stress, picture } = this;
    const carries = stress !== null && picture !== null;
    return html`
      <svg
        class=${carries ? 'unrolled stress' : 'unrolled'}
        width=${round(frame.width)}
        height=${round(frame.height)}
        role="group"
        aria-label=${say(carries ? 'web.stress.said' : this.face === 'inside' ? 'web.drawing.inside' : 'web.drawing.outside')}
        @pointerrawupdate=${this.pointerMoved}
        @pointermove=${this.pointerMoved}
        @pointerup=${this.pointerLeft}
        @pointercancel=${this.pointerLeft}
      >
        ${hatches}
        ${carries ? stressLayer(frame, scene, stress, picture) : svg`${guard([frame, view.wall, view.stem, view.bondBeam, view.liftLines, view.grade, view.ticks, scene.heights], () => wallLayer(frame, scene, view))} ${guard([frame, view.free, view.freeSays], () => freeLayer(frame, view))} ${guard([frame, view.landings], () => landingLayer(frame, scene, view))} ${guard([frame, view.tees], () => builtInLayer(frame, view))} ${pierLayer(frame, view, scene.piers)}`}
        ${carries ? nothing : svg`<g class="built-ins">${this.inHand(this.placed, 'built', () => 'built', (card) => guard([frame, view.niches, view.embeds, card.name], () => builtInShape(frame, view, card.name)))}</g>`}
        <g class="openings">${this.inHand(scene.openings, 'opening', (card) => `opening ${card.kind} ${card.trouble === null ? '' : 'troubled'}`, (card) => this.openingShape(frame, card, names.get(card.name)))}</g>
        ${carries ? pierEdges(frame, scene, picture) : svg`${foundLayer(frame, this.found)} ${markLayer(frame, view, scene.findings, this.pointed)}`}
      </svg>
    `;
  }

  /** The frame as it was, where it is the same: what is drawn in it and did not change is left as it stands. */
  private framed(fresh: Frame): Frame {
    const { frame } = this;
    return frame !== null && frame.k === fresh.k && frame.width === fresh.width && frame.height === fresh.height && frame.y(0) === fresh.y(0) ? frame : fresh;
  }

  /** What can be taken in hand, each with its drawing: openings, and what is built in. */
  private inHand<T extends Movable & { label: string }>(cards: readonly T[], as: 'opening' | 'built', looks: (card: T) => string, shape: (card: T) => unknown) {
    return repeat(
      cards,
      (card) => card.name,
      (card) => svg`
        <g
          class="${looks(card)} ${card.name === this.chosen ? 'chosen' : ''}"
          data-opening=${as === 'opening' ? card.name : nothing}
          data-built=${as === 'built' ? card.name : nothing}
          role="button"
          tabindex="0"
          aria-label=${card.label}
          aria-describedby="moving"
          aria-pressed=${card.name === this.chosen}
          transform=${this.shift(card)}
          @pointerdown=${(event: PointerEvent) => this.taken(card, event)}
          @keydown=${(event: KeyboardEvent) => this.nudged(card, event)}
          @focus=${() => this.choose(card.name)}
        >${shape(card)}</g>`,
    );
  }

  private openingShape(frame: Frame, card: OpeningCard, place: NamePlace | undefined) {
    const shape = this.view.openings.find((opening) => opening.name === card.name);
    return shape === undefined ? nothing : guard([frame, shape, place?.way, place?.way === 'below' ? place.row : null], () => openingShape(frame, shape, place));
  }

  /** Niches and what is built in, those that have a place. */
  private get placed(): (Movable & { label: string })[] {
    return this.scene.parts.flatMap((part) => (part.station === null ? [] : [{ ...part, station: part.station }]));
  }

  private find(name: string): Movable | undefined {
    return this.scene.openings.find((opening) => opening.name === name) ?? this.placed.find((part) => part.name === name);
  }

  /** How far the opening in hand stands from where the scene last had it. */
  private shift(card: Movable): string {
    const { held, frame } = this;
    if (held?.opening !== card.name || !held.moved || frame === null) return 'translate(0 0)';
    const dx = held.x - xOfStation(this.view, this.scene.ring, card.station);
    return `translate(${round(dx * frame.k)} ${round((card.sill - held.sill) * frame.k)})`;
  }

  private taken(card: Movable, event: PointerEvent): void {
    if (event.button !== 0 || !matchMedia(dragsFrom).matches) return;
    (event.currentTarget as Element).setPointerCapture(event.pointerId);
    this.held = take(card, this.view, this.scene.ring, event, `drag-${Date.now()}-${++this.gestures}`);
    this.choose(card.name);
    if (this.stress !== null) this.dispatchEvent(new CustomEvent('take-opening', { detail: card.name, bubbles: true }));
  }

  /** Asked for as soon as the pointer is there, where the browser tells that before the next frame. */
  private pointerMoved(event: PointerEvent): void {
    const { held, frame } = this;
    if (held?.pointer !== event.pointerId || frame === null) return;
    const card = this.find(held.opening);
    if (card === undefined || !follow(held, card, this.view, frame.k, event)) return;
    this.send(held.gesture, { kind: 'move', opening: held.opening, ...asked(held, this.view, this.scene.ring) });
    this.painting ||= requestAnimationFrame(() => {
      this.painting = 0;
      this.querySelector(`[data-opening="${CSS.escape(held.opening)}"], [data-built="${CSS.escape(held.opening)}"]`)?.setAttribute('transform', this.shift(this.now(card)));
    });
  }

  private now(card: Movable): Movable {
    return this.find(card.name) ?? card;
  }

  private pointerLeft(event: PointerEvent): void {
    if (this.held?.pointer !== event.pointerId) return;
    // Let go: it stays where it was put until the last answer is in.
    this.held = this.held.moved && !this.settled ? { ...this.held, pointer: -1 } : null;
    this.requestUpdate();
    this.dispatchEvent(new CustomEvent('let-go', { bubbles: true }));
  }

  private nudged(card: Movable, event: KeyboardEvent): void {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const step = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, 1], ArrowDown: [0, -1] }[event.key];
    if (step === undefined) return;
    event.preventDefault();
    const [right = 0, up = 0] = step;
    const now = Date.now();
    if (now - this.lastNudge > samePress) this.gestures++;
    this.lastNudge = now;
    const change: Change = { kind: 'nudge', opening: card.name, along: right * direction(this.view), up, large: event.shiftKey };
    this.send(`nudge-${card.name}-${this.gestures}`, change);
  }

  private choose(opening: string): void {
    if (opening === this.chosen) return;
    this.gestures++;
    this.dispatchEvent(new CustomEvent('choose', { detail: opening, bubbles: true }));
  }

  private send(gesture: string, change: Change): void {
    this.dispatchEvent(new CustomEvent('change-house', { detail: { gesture, change }, bubbles: true }));
  }
}

customElements.define('unrolled-wall', UnrolledWall);
