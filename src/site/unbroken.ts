import { escapeXml } from '../drawing/escapeXml.ts';

/** Names of pieces and walls, and figures with their unit. */
const TOGETHER =
  /\b[A-Z]\d*-[A-Z\d]+[a-z]?\b|\b(?:\d+ ft )?\d[\d.,]*(?: \d+)?(?:\/\d+)? (?:in|mm|ft|lb|kg)\b/g;

/**
 * Text as HTML in which no name of a piece or a wall, and no figure from its unit, is broken off at the end of a line.
 *
 * @example unbroken('N5-13 at A-B') //=> '<span class="unbroken-words">N5-13</span> at <span class="unbroken-words">A-B</span>'
 * @example unbroken('5 29/32 in < 6') //=> '<span class="unbroken-words">5 29/32 in</span> &lt; 6'
 * @example unbroken('to 3 ft 7 7/64 in') //=> 'to <span class="unbroken-words">3 ft 7 7/64 in</span>'
 */
export function unbroken(text: string): string {
  return escapeXml(text).replace(TOGETHER, '<span class="unbroken-words">$&</span>');
}
