// Ticks are kept on this device, under the page's own title, so that two revisions don't share them.
(() => {
  const key = `sawn: ${document.title}`;
  const read = () => {
    try {
      return new Set(JSON.parse(localStorage.getItem(key) ?? '[]'));
    } catch {
      return new Set();
    }
  };
  const keep = (done) => {
    try {
      localStorage.setItem(key, JSON.stringify([...done]));
    } catch {
      // A device that keeps nothing still shows the ticks until the page is closed.
    }
  };
  const done = read();
  const boxes = [...document.querySelectorAll('input[data-piece]')];
  const show = (box) => {
    const piece = box.dataset.piece;
    box.checked = done.has(piece);
    document.getElementById(piece)?.classList.toggle('done', box.checked);
  };
  for (const box of boxes) {
    show(box);
    box.addEventListener('change', () => {
      if (box.checked) done.add(box.dataset.piece);
      else done.delete(box.dataset.piece);
      keep(done);
      show(box);
    });
  }
})();
