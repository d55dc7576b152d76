import { escapeXml } from './escapeXml.ts';
import type { Link } from './Link.ts';
import { svgRings } from './svgPath.ts';

/** Links as areas without ink over a drawing `height` mm high: the page's styles show which one is meant. */
export function svgLinks(links: readonly Link[], height: number): string {
  const areas = links.map(
    ({ id, to, label, rings }) =>
      `<a href="#${escapeXml(to)}" id="${escapeXml(id)}" aria-label="${escapeXml(label)}">` +
      `<path d="${svgRings(rings, height)}"/></a>`,
  );
  return areas.length === 0
    ? ''
    : `<g fill="#000" fill-opacity="0" fill-rule="evenodd">${areas.join('')}</g>`;
}
