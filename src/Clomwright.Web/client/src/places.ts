/** Where one can be. */
export type Place = { page: 'start' } | { page: 'ground' | 'earth' | 'roof' | 'days' | 'comfort'; house: string } | { page: 'wall'; house: string; greet?: boolean } | { page: 'record' | 'round' | 'phones'; house: string } | { page: 'arrived'; house: string; of?: string } | { page: 'papers'; house: string; paper?: string; set?: string } | { page: 'sheet' | 'print'; house: string; of: string; paper?: string; set?: string };

export function hrefOf(place: Place): string {
  switch (place.page) {
    case 'start':
      return '/';
    case 'sheet':
    case 'print':
      return `/${place.page}/${encodeURIComponent(place.house)}${query({ of: place.of, paper: place.paper, set: place.set })}`;
    case 'papers':
      return `/papers/${encodeURIComponent(place.house)}${query({ paper: place.paper, set: place.set })}`;
    case 'arrived':
      return `/arrived/${encodeURIComponent(place.house)}${query({ of: place.of })}`;
    default:
      return `/${place.page}/${encodeURIComponent(place.house)}`;
  }
}

export function placeOf(address: URL | Location | HTMLAnchorElement): Place {
  const [, page, house] = address.pathname.split('/').map(decodeURIComponent);
  if (!house) return { page: 'start' };
  const asked = new URLSearchParams(address.search);
  const [paper, set] = [asked.get('paper') ?? undefined, asked.get('set') ?? undefined];
  if (page === 'wall') return { page, house, greet: asked.has('greet') };
  if (page === 'ground' || page === 'earth' || page === 'roof' || page === 'days' || page === 'comfort' || page === 'record' || page === 'round' || page === 'phones') return { page, house };
  if (page === 'papers') return { page, house, paper, set };
  if (page === 'sheet' || page === 'print') return { page, house, of: asked.get('of') ?? '', paper, set };
  if (page === 'arrived') return { page, house, of: asked.get('of') ?? undefined };
  return { page: 'start' };
}

function query(asked: Record<string, string | undefined>): string {
  const given = Object.entries(asked).filter((pair): pair is [string, string] => pair[1] !== undefined && pair[1] !== '');
  return given.length === 0 ? '' : `?${new URLSearchParams(given)}`;
}

/** Where the papers of a house are read. */
export function papersAddress(house: string, what: 'papers' | 'site.pdf' | 'office.pdf' | 'templates.pdf' | 'changed.pdf' | `papers/${string}.svg`, paper?: string, set?: string): string {
  return `/api/houses/${encodeURIComponent(house)}/${what}${query({ paper, set })}`;
}

/** Follows links inside the workbench without loading the page again. */
export function followLinks(go: () => void): void {
  addEventListener('popstate', go);
  document.addEventListener('click', (event) => {
    if (event.defaultPrevented || event.button !== 0 || event.ctrlKey || event.metaKey || event.shiftKey || event.altKey) return;
    const link = (event.target as Element | null)?.closest?.('a[href]') as HTMLAnchorElement | null;
    if (link === null || link.target !== '' || link.hasAttribute('download') || link.origin !== location.origin) return;
    if (placeOf(link).page === 'start' && link.pathname !== '/') return;
    if (link.hash !== '' && link.pathname === location.pathname && link.search === location.search) return;
    event.preventDefault();
    if (link.href !== location.href) history.pushState(null, '', link.href);
    go();
    scrollTo(0, 0);
  });
}
