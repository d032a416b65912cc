import { LitElement, html, svg, type PropertyValues } from 'lit';
import type { GroundScene } from '../form-scene';
import type { Change, Point } from '../scene';
import { say } from '../words';

/** Presses of the arrow keys nearer together than this are taken back as one, ms. */
const samePress = 1500;

/** The plan from above. A drawn curve's points are taken by the pointer or by the keyboard; everything else follows the server. */
export class GroundPlan extends LitElement {
  static override properties = { scene: { attribute: false }, size: { type: Number }, settled: { type: Boolean }, chosen: { state: true } };

  declare scene: GroundScene;
  declare size: number;
  declare settled: boolean;
  declare chosen: number;

  private held: { point: number; pointer: number; gesture: string; moved: boolean; at: Point } | null = null;
  private scale: { k: number; west: number; north: number } | null = null;
  private height = 0;
  private gestures = 0;
  private lastNudge = 0;
  private readonly started = Date.now();

  constructor() {
    super();
    this.chosen = 0;
  }

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('settled') && this.settled && this.held?.pointer === -1) this.held = null;
    if (this.chosen >= this.scene.points.length) this.chosen = 0;
  }

  protected override render() {
    const { plan, points, peg } = this.scene;
    const edge = 34;
    // While a point is in hand the picture keeps its scale, so that the point stays under the finger.
    if (this.scale === null || this.held === null) {
      const all = [...plan.outside, ...points.map((point) => point.at)];
      const [west, east, south, north] = [Math.min(...all.map(([x]) => x)), Math.max(...all.map(([x]) => x)), Math.min(...all.map(([, y]) => y)), Math.max(...all.map(([, y]) => y))];
      const k = (this.size - 2 * edge) / Math.max(east - west, north - south);
      this.height = points.length > 0 ? this.size : (north - south) * k + 2 * edge;
      this.scale = { k, west: west - ((this.size - 2 * edge) / k - (east - west)) / 2, north: north + ((this.height - 2 * edge) / k - (north - south)) / 2 };
    }
    const { k, west, north } = this.scale;
    const x = (at: Point): number => (at[0] - west) * k + edge;
    const y = (at: Point): number => (north - at[1]) * k + edge;
    const closed = (outline: readonly Point[]): string => `M${outline.map((at) => `${x(at).toFixed(1)} ${y(at).toFixed(1)}`).join('L')}Z`;
    const drawn = points.length > 0;
    return html`
      <svg class="plan ground-plan" width=${this.size} height=${this.height} role=${drawn ? 'group' : 'img'} aria-label=${say('web.drawing.plan')} @pointermove=${this.moved} @pointerup=${this.letGo} @pointercancel=${this.letGo}>
        <path class="ring" fill-rule="evenodd" d="${closed(plan.outside)}${closed(plan.inside)}" />
        ${plan.openings.map((opening) => svg`<path class="gap" d=${closed(opening.outline)}><title>${opening.name}</title></path>`)}
        <path class="zero" d="M${x(plan.zero[0])} ${y(plan.zero[0])}L${x(plan.zero[1])} ${y(plan.zero[1])}" />
        <path class="peg" d="M${x(peg) - 6} ${y(peg)}h12M${x(peg)} ${y(peg) - 6}v12" />
        <g class="north" transform="translate(${this.size - 14} 18)"><path d="M0 -12l5 12h-10z" /><text y="13" text-anchor="middle">${say('web.drawing.north')}</text></g>
        ${points.map((point, i) => {
          const at = this.held?.point === i && this.held.moved ? this.held.at : point.at;
          return svg`<g class="plan-point ${i === this.chosen ? 'chosen' : ''}" data-point=${i} role="button" tabindex="0" aria-label=${point.label} aria-pressed=${i === this.chosen}
            transform="translate(${x(at).toFixed(1)} ${y(at).toFixed(1)})" @pointerdown=${(event: PointerEvent) => this.taken(i, event)} @keydown=${(event: KeyboardEvent) => this.keyed(i, event)} @focus=${() => (this.chosen = i)}>
            <circle class="hit" r="16" /><circle class="spot" r="7" /><text y="-11" text-anchor="middle">${i + 1}</text></g>`;
        })}
      </svg>
      ${
        drawn
          ? html`<p class="hint-line">${say('web.ground.moving')}</p>
              <p class="form-acts">
                <button type="button" class="act" @click=${() => this.send(this.fresh(), { kind: 'add-point', point: this.chosen })}>${say('web.ground.add-point', { n: this.chosen + 1 })}</button>
                <button type="button" class="act" @click=${() => this.send(this.fresh(), { kind: 'take-point-out', point: this.chosen })}>${say('web.ground.take-point-out', { n: this.chosen + 1 })}</button>
                <button type="button" class="act" @click=${() => this.send(this.fresh(), { kind: 'enter', blank: 'house.plan.shape', text: 'round' })}>${say('web.ground.snap')}</button>
              </p>`
          : html`<p class="form-acts"><button type="button" class="act" @click=${() => this.send(this.fresh(), { kind: 'enter', blank: 'house.plan.shape', text: 'path' })}>${say('web.ground.draw')}</button></p>`
      }
    `;
  }

  private taken(point: number, event: PointerEvent): void {
    if (event.button !== 0) return;
    (event.currentTarget as Element).setPointerCapture(event.pointerId);
    this.chosen = point;
    this.held = { point, pointer: event.pointerId, gesture: this.fresh(), moved: false, at: this.scene.points[point]?.at ?? [0, 0] };
  }

  private readonly moved = (event: PointerEvent): void => {
    const { held, scale } = this;
    if (held?.pointer !== event.pointerId || scale === null) return;
    const box = this.querySelector('svg')!.getBoundingClientRect();
    held.at = [(event.clientX - box.left - 34) / scale.k + scale.west, scale.north - (event.clientY - box.top - 34) / scale.k];
    held.moved = true;
    this.send(held.gesture, { kind: 'move-point', point: held.point, east: held.at[0], north: held.at[1] });
    this.requestUpdate();
  };

  private readonly letGo = (event: PointerEvent): void => {
    if (this.held?.pointer !== event.pointerId) return;
    this.held = this.held.moved && !this.settled ? { ...this.held, pointer: -1 } : null;
    this.requestUpdate();
  };

  private keyed(point: number, event: KeyboardEvent): void {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    if (event.key === 'Delete') {
      this.send(this.fresh(), { kind: 'take-point-out', point });
      event.preventDefault();
      return;
    }
    const way = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, 1], ArrowDown: [0, -1] }[event.key];
    if (way === undefined) return;
    event.preventDefault();
    const now = Date.now();
    if (now - this.lastNudge > samePress) this.gestures++;
    this.lastNudge = now;
    const [east = 0, north = 0] = way;
    this.send(`point-${point}-${this.gestures}-${this.started}`, { kind: 'nudge-point', point, east, north, large: event.shiftKey });
  }

  private fresh(): string {
    return `plan-${++this.gestures}-${this.started}`;
  }

  private send(gesture: string, change: Change): void {
    this.dispatchEvent(new CustomEvent('change-house', { detail: { gesture, change }, bubbles: true }));
  }
}

customElements.define('ground-plan', GroundPlan);
