/** What each key writes: number keyboards of telephones have digits and little else. */
const keys: readonly (readonly [shown: string, written: string])[] = [
  ['ft', ' ft '],
  ['in', ' in'],
  ['mm', ' mm'],
  ['/', '/'],
  ['␣', ' '],
  ['×', ' x '],
];

const bar = (): HTMLElement => document.getElementById('units')!;

function isMeasured(element: Element | null): element is HTMLInputElement {
  return element instanceof HTMLInputElement && element.hasAttribute('data-units');
}

/** Writes at the place of the cursor; two blanks never follow one another. */
function write(input: HTMLInputElement, text: string): void {
  const [start, end] = [input.selectionStart ?? input.value.length, input.selectionEnd ?? input.value.length];
  const before = input.value.slice(0, start);
  const put = /(^|\s)$/.test(before) ? text.trimStart() : text;
  input.setRangeText(put, start, end, 'end');
  input.dispatchEvent(new Event('input', { bubbles: true }));
}

/** Right above the keyboard, which covers the lower part of the page on some telephones. */
function place(): void {
  const seen = window.visualViewport;
  const covered = seen ? window.innerHeight - seen.height - seen.offsetTop : 0;
  bar().style.bottom = `${Math.max(0, covered)}px`;
}

/** Shows keys for units while a length is written. They take no focus, and a keyboard needs none of them. */
export function startUnitKeys(): void {
  for (const [shown, written] of keys) {
    const key = document.createElement('button');
    Object.assign(key, { type: 'button', textContent: shown, tabIndex: -1 });
    key.addEventListener('pointerdown', (event) => event.preventDefault());
    key.addEventListener('click', () => {
      if (isMeasured(document.activeElement)) write(document.activeElement, written);
    });
    bar().append(key);
  }
  const show = () => {
    bar().hidden = !isMeasured(document.activeElement);
    place();
  };
  document.addEventListener('focusin', show);
  document.addEventListener('focusout', () => setTimeout(show));
  window.visualViewport?.addEventListener('resize', place);
  window.visualViewport?.addEventListener('scroll', place);
}
