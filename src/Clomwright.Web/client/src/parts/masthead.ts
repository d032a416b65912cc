import { html, nothing, type TemplateResult } from 'lit';
import { say } from '../words';
import { hrefOf, type Place } from '../places';

/** The head of every page of a house, ruled like the title line of a drawing. */
export function masthead(place: Place & { house: string }, name: string, middle: unknown, right: unknown): TemplateResult {
  const page = (page: 'ground' | 'earth' | 'wall' | 'roof' | 'days' | 'comfort' | 'papers' | 'record' | 'phones') => html`<a
    href=${hrefOf({ page, house: place.house })}
    aria-current=${place.page === page ? 'page' : nothing}
    >${say(`web.nav.${page}`)}</a
  >`;
  return html`
    <header class="masthead">
      <div class="title">
        <h1>${name}</h1>
        <nav aria-label=${say('web.nav.pages')}>${page('ground')} ${page('earth')} ${page('wall')} ${page('roof')} ${page('days')} ${page('comfort')} ${page('papers')} ${page('record')} <a href=${`/today/${encodeURIComponent(place.house)}`}>${say('web.nav.today')}</a> ${page('phones')}</nav>
      </div>
      <div class="standing">${middle}</div>
      <div class="acts">${right}</div>
    </header>
  `;
}

/** The foot of every page: what this is not, and whose letters it is set in. */
export function footer(): TemplateResult {
  return html`
    <footer class="foot">
      <p>${say('web.caution')}</p>
      <p><a href=${hrefOf({ page: 'start' })}>${say('web.nav.another')}</a></p>
    </footer>
  `;
}
