import { type Led, lengthMm, lineTo } from './leaders.ts';
import type { NameRequest } from './nameBlock.ts';

/** Finds the place of a name among others that are led out already. */
export type Lead = (request: NameRequest, among: readonly Led[]) => Led | undefined;

/** So many names beside one that found no place are moved for it; so often all are gone through; a shorter way must spare as much, in mm. */
const neighbours = 6;
const rounds = 3;
const spared = 0.5;

const far = (a: NameRequest, b: NameRequest) => Math.hypot(a.pole[0] - b.pole[0], a.pole[1] - b.pole[1]);

/** Whether two would have shorter leaders, each at the other's place. */
function isCrosswise(a: Led, b: Led): boolean {
  const swapped = lengthMm(lineTo(a.request.pole, b.box)) + lengthMm(lineTo(b.request.pole, a.box));
  return swapped + spared < lengthMm(a.line) + lengthMm(b.line);
}

/** Two names placed anew, the second first, if that makes their leaders shorter. */
function placedAnew(led: readonly Led[], a: Led, b: Led, lead: Lead): readonly Led[] | undefined {
  const rest = led.filter((one) => one !== a && one !== b);
  const first = lead(b.request, rest);
  const second = first && lead(a.request, [...rest, first]);
  if (!first || !second) return undefined;
  const now = lengthMm(first.line) + lengthMm(second.line);
  return now + spared < lengthMm(a.line) + lengthMm(b.line) ? [...rest, first, second] : undefined;
}

/** All pairs gone through once; undefined where none was better the other way round. */
function uncrossed(led: readonly Led[], lead: Lead): readonly Led[] | undefined {
  let now = led;
  for (const a of led)
    for (const b of led) {
      if (a === b || !now.includes(a) || !now.includes(b) || !isCrosswise(a, b)) continue;
      now = placedAnew(now, a, b, lead) ?? now;
    }
  return now === led ? undefined : now;
}

/** A name that found no place, put in before one of its neighbours, which then finds another. */
function putIn(led: readonly Led[], request: NameRequest, lead: Lead): readonly Led[] | undefined {
  const near = [...led]
    .sort((a, b) => far(a.request, request) - far(b.request, request))
    .slice(0, neighbours);
  for (const one of near) {
    const rest = led.filter((other) => other !== one);
    const own = lead(request, rest);
    const again = own && lead(one.request, [...rest, own]);
    if (own && again) return [...rest, own, again];
  }
  return undefined;
}

/**
 * Names led out one after the other, as many as find a place, so that none of two has a shorter leader at the other's: what stands in the order
 * of its pieces is followed by an eye.
 */
export function untangled(requests: readonly NameRequest[], lead: Lead): readonly Led[] {
  let led: readonly Led[] = [];
  const open: NameRequest[] = [];
  for (const request of requests) {
    const placed = lead(request, led);
    if (placed) led = [...led, placed];
    else open.push(request);
  }
  for (let round = 0; round < rounds; round += 1) led = uncrossed(led, lead) ?? led;
  for (const request of open) {
    const placed = lead(request, led);
    led = placed ? [...led, placed] : (putIn(led, request, lead) ?? led);
  }
  return led;
}
