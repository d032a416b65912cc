import { LitElement, html, type PropertyValues } from 'lit';
import { freeLegend, type FoundMark } from '../drawing/free';
import type { UnrolledWall } from '../drawing/strip';
import type { Face, FaceView } from '../scene';
import { say } from '../words';

/** Under the sheet of cutting: what the free zone is, and what was found otherwise than drawn. It asks the site record and hands the strip its signs. */
export class FreeLegend extends LitElement {
  static override properties = { house: {}, face: {}, view: { attribute: false }, found: { state: true } };

  declare house: string;
  declare face: Face;
  declare view: FaceView;
  declare found: FoundMark[];

  constructor() {
    super();
    this.found = [];
  }

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  protected override willUpdate(changed: PropertyValues): void {
    if (changed.has('house') || changed.has('face')) void this.ask();
  }

  protected override updated(): void {
    const strip = this.closest('.board')?.querySelector<UnrolledWall>('unrolled-wall');
    if (strip && strip.found !== this.found) strip.found = this.found;
  }

  protected override render() {
    return html`${freeLegend(this.view, this.found, say('web.as-built.heading'))}`;
  }

  private async ask(): Promise<void> {
    const { house, face } = this;
    const answer = await fetch(`/api/houses/${encodeURIComponent(house)}/as-built?face=${face}`);
    if (answer.ok && house === this.house && face === this.face) this.found = (await answer.json()) as FoundMark[];
  }
}

customElements.define('free-legend', FreeLegend);
