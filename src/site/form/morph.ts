/** Attributes that the reader of the page sets, and that a new state leaves alone. */
const own = (element: Element): ReadonlySet<string> =>
  new Set(element.localName === 'details' ? ['open'] : []);

function sameAttributes(now: Element, next: Element): void {
  const kept = own(now);
  for (const name of now.getAttributeNames())
    if (!next.hasAttribute(name) && !kept.has(name)) now.removeAttribute(name);
  for (const name of next.getAttributeNames()) {
    const value = next.getAttribute(name) ?? '';
    if (now.getAttribute(name) !== value && !kept.has(name)) now.setAttribute(name, value);
  }
}

/** What stands in a box follows the new state, but not under the fingers of somebody who writes there. */
function sameValue(now: Element, next: Element, busy: Element | null): void {
  if (busy?.contains(now)) return;
  if (now instanceof HTMLInputElement && next instanceof HTMLInputElement) {
    if (now.type !== 'file' && now.type !== 'radio' && now.value !== next.value) now.value = next.value;
  } else if (now instanceof HTMLSelectElement && next instanceof HTMLSelectElement) {
    if (!now.id.startsWith('choose:') && now.value !== next.value) now.value = next.value;
  } else if (now instanceof HTMLTextAreaElement && next instanceof HTMLTextAreaElement)
    now.value = next.value;
}

const isSame = (now: Node | null | undefined, next: Node): boolean =>
  now?.nodeName === next.nodeName &&
  (!(now instanceof Element) || !(next instanceof Element) || now.id === next.id);

/**
 * Makes the children of one element like those of another and keeps the elements that are there, so that focus, open parts and what is
 * being written stay. Elements are the same that have the same `id`. `busy` is the question somebody is writing an answer to.
 */
export function morph(now: Element, next: Element, busy: Element | null): void {
  const stays = new Set([...next.children].map(({ id }) => id));
  let at = now.firstChild;
  for (const fresh of [...next.childNodes]) {
    // What goes is taken away rather than the rest moved past it: an element that is moved loses the focus.
    while (at instanceof Element && at.id !== '' && !stays.has(at.id)) at = removed(at);
    const wanted = fresh instanceof Element && fresh.id ? childOf(now, fresh.id) : undefined;
    if (wanted && wanted !== at) now.insertBefore(wanted, at);
    const found: ChildNode | null = wanted ?? (isSame(at, fresh) ? at : null);
    if (!found) {
      now.insertBefore(fresh, at);
      continue;
    }
    at = found.nextSibling;
    if (found instanceof Element && fresh instanceof Element) morphElement(found, fresh, busy);
    else if (found.nodeValue !== fresh.nodeValue) found.nodeValue = fresh.nodeValue;
  }
  while (at) at = busy?.contains(at) && at.contains(document.activeElement) ? at.nextSibling : removed(at);
}

const childOf = (parent: Element, id: string): Element | undefined =>
  [...parent.children].find((one) => one.id === id);

/** Takes a node away and gives the one behind it. */
function removed(node: ChildNode): ChildNode | null {
  const behind = node.nextSibling;
  node.remove();
  return behind;
}

function morphElement(now: Element, next: Element, busy: Element | null): void {
  if (now === busy && now.getAttribute('data-field') !== next.getAttribute('data-field')) return;
  sameAttributes(now, next);
  if (!now.isEqualNode(next)) morph(now, next, busy);
  sameValue(now, next, busy);
}
