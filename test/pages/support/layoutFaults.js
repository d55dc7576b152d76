/*
Runs in the page: what is cut off, runs out of its box or lies outside the sheet, as a list of sentences. Sizes in CSS pixels.
Only letters are judged, by the height of a capital: the space above and under them may touch something else.
*/
(() => {
  const slack = 0.75;
  const pixelsPerMm = 96 / 25.4;
  // Each sheet as wide as its print: the paper less margins of 20 and 12 mm.
  for (const { classList, style } of document.querySelectorAll('section.sheet')) {
    const [short, long] = classList.contains('paper-a4') ? [210, 297] : [215.9, 279.4];
    style.width = `${((classList.contains('landscape') ? long : short) - 32) * pixelsPerMm}px`;
  }
  const sheetOf = (element) =>
    /page-(\S+)/.exec(element.closest('section.sheet')?.className ?? '')?.[1] ?? 'page';
  const round = (value) => Math.round(value * 10) / 10;
  const describe = (box) => [box.left, box.top, box.right, box.bottom].map(round).join(' ');

  /** The box of the capitals in a line box: fonts leave about a fifth above them and under them. */
  const inked = (rect, upright) => {
    const [x, y] = upright ? [0, rect.height * 0.22] : [rect.width * 0.22, 0];
    return { left: rect.left + x, right: rect.right - x, top: rect.top + y, bottom: rect.bottom - y };
  };
  const isTurned = (element) => {
    const matrix = element.ownerSVGElement && element.getScreenCTM();
    return Boolean(matrix) && Math.abs(matrix.b) > Math.abs(matrix.a);
  };
  const isUnseen = (element) => {
    const style = getComputedStyle(element);
    return style.visibility === 'hidden' || style.display === 'none' || style.color === 'rgba(0, 0, 0, 0)';
  };
  const inside = (box, outer) =>
    box.left >= outer.left - slack &&
    box.right <= outer.right + slack &&
    box.top >= outer.top - slack &&
    box.bottom <= outer.bottom + slack;

  /** Why a box bounds the words in it, or nothing when it doesn't. */
  const boundOf = (element, style) => {
    if (element.tagName === 'svg') return 'its drawing';
    if (element.matches('td, th')) return 'its cell';
    if (element.matches('section.sheet')) return 'the sheet';
    if (style.overflowX !== 'visible' && !element.matches('html, body, main')) return 'what clips it';
    return Number.parseFloat(style.borderLeftWidth) > 0 && Number.parseFloat(style.borderRightWidth) > 0
      ? 'its box'
      : undefined;
  };

  const faults = [];
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  for (let node = walker.nextNode(); node; node = walker.nextNode()) {
    const parent = node.parentElement;
    if (!node.data.trim() || parent.closest('style, script, desc, title') || isUnseen(parent)) continue;
    const range = document.createRange();
    range.selectNodeContents(node);
    const rects = [...range.getClientRects()].filter(({ width, height }) => width > 0 && height > 0);
    const boxes = rects.map((rect) => inked(rect, !isTurned(parent)));
    const bars = parent.closest('.bars');
    for (let element = parent; element && element !== document.body; element = element.parentElement) {
      const why = boundOf(element, getComputedStyle(element));
      if (!why || (bars && why === 'the sheet')) continue;
      const outer = element.getBoundingClientRect();
      for (const box of boxes) {
        if (inside(box, outer)) continue;
        faults.push(
          `${sheetOf(parent)}: "${node.data.trim().slice(0, 60)}" (${describe(box)}) runs out of ${why} (${describe(outer)})`,
        );
      }
    }
  }
  for (const table of document.querySelectorAll('table')) {
    const outer = table.closest('section.sheet').getBoundingClientRect();
    const box = table.getBoundingClientRect();
    if (box.left >= outer.left - slack && box.right <= outer.right + slack) continue;
    faults.push(
      `${sheetOf(table)}: a table "${table.textContent.trim().slice(0, 40)}" (${describe(box)}) is wider than the sheet (${describe(outer)})`,
    );
  }
  for (const svg of document.querySelectorAll('section.sheet svg')) {
    const outer = svg.closest('section.sheet').getBoundingClientRect();
    const box = svg.getBoundingClientRect();
    const bars = svg.closest('.bars') ? 12 * pixelsPerMm : 0;
    if (box.left >= outer.left - bars - slack && box.right <= outer.right + slack) continue;
    faults.push(
      `${sheetOf(svg)}: the drawing "${svg.getAttribute('aria-label')}" (${describe(box)}) is wider than the sheet (${describe(outer)})`,
    );
  }
  return faults;
})();
