import { html, nothing, type TemplateResult } from 'lit';
import { planKey } from '../drawing/plan';
import '../parts/language-choice';
import '../parts/new-house';
import { hrefOf } from '../places';
import type { HouseCard } from '../scene';
import { say } from '../words';
import fontLicence from 'source-sans/LICENSE.md?url';

/** The houses in the folder. */
export function startPage(folder: string, houses: readonly HouseCard[]): TemplateResult {
  return html`
    <main class="start">
      <header class="opening-words">
        <h1>${say('web.program')}</h1>
        <p>${say('web.start.what')}</p>
        <language-choice></language-choice>
      </header>
      <section aria-labelledby="houses">
        <h2 id="houses">${say('web.start.houses')}</h2>
        <p class="folder">${say('web.start.folder', { folder })}</p>
        ${houses.length === 0 ? html`<p class="empty">${say('web.start.none', { folder })}</p>` : nothing}
        <ul class="houses">
          ${houses.map(houseCard)}
        </ul>
      </section>
      <section class="begin" aria-labelledby="begin">
        <h2 id="begin">${say('web.new.heading')}</h2>
        <new-house .houses=${houses}></new-house>
      </section>
      <footer class="foot">
        <p>${say('web.caution')}</p>
        <p><a href=${fontLicence} target="_blank">${say('web.start.letters')}</a></p>
      </footer>
    </main>
  `;
}

function houseCard(house: HouseCard): TemplateResult {
  const wall = hrefOf({ page: 'wall', house: house.key });
  const ground = hrefOf({ page: 'ground', house: house.key });
  if (house.trouble !== null) {
    return html`<li class="house troubled">
      <div class="about">
        <h3>${house.file}</h3>
        <p class="reason">${house.trouble}</p>
      </div>
    </li>`;
  }
  return html`<li class="house">
    <a class="plan-link" href=${wall} tabindex="-1" aria-hidden="true">${house.plan === null ? nothing : planKey(house.plan, 148, null)}</a>
    <div class="about">
      <h3><a href=${wall}>${house.name}</a></h3>
      ${house.notes === null ? nothing : html`<p>${house.notes}</p>`}
      <p class="standing">${house.line}</p>
      <p class="ways">
        <a href=${ground}>${say('web.nav.ground')}</a>
        <a href=${wall}>${say('web.nav.wall')}</a>
        <a href=${hrefOf({ page: 'roof', house: house.key })}>${say('web.nav.roof')}</a>
        <a href=${hrefOf({ page: 'papers', house: house.key })}>${say('web.nav.papers')}</a>
        <a href=${`/today/${encodeURIComponent(house.key)}`}>${say('web.nav.today')}</a>
        <a class="print" href=${hrefOf({ page: 'print', house: house.key, of: 'lifts' })} target="_blank">${say('web.start.print-lifts')}</a>
      </p>
      <p class="file">${house.file}</p>
    </div>
  </li>`;
}
