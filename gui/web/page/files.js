// SPDX-License-Identifier: MIT
'use strict';
// Files that come and go: chosen, dropped, downloaded; pictures and paper.

page.files = (() => {
  const largest = 16 << 20;  // as of every plan file
  const input = document.getElementById('file');

  const download = (name, content) => {
    const link = document.createElement('a');
    link.href = URL.createObjectURL(content instanceof Blob ? content : new Blob([content]));
    link.download = name;
    link.click();
    setTimeout(() => URL.revokeObjectURL(link.href), 60000);
  };

  const takeIn = async file => {
    // One byte more than the most tells that it is too large; the program says so.
    const bytes = new Uint8Array(await file.slice(0, largest + 1).arrayBuffer());
    page.program.takeIn(file.name, bytes);
    document.getElementById('canvas').focus();
  };

  const ask = ending => {
    input.accept = ending === '.csv' ? '.csv,text/csv' : '.json,application/json';
    input.value = '';
    input.click();
  };
  input.addEventListener('change', () => { if (input.files.length > 0) takeIn(input.files[0]); });

  const hint = document.getElementById('dropHint');
  let over = 0;
  const holdsFile = event => [...event.dataTransfer.types].includes('Files');
  const onDesk = () => !document.getElementById('desk').hidden;
  addEventListener('dragenter', event => { if (holdsFile(event) && onDesk()) { over += 1; hint.hidden = false; } });
  addEventListener('dragleave', event => { if (holdsFile(event) && onDesk()) { over -= 1; hint.hidden = over <= 0; } });
  addEventListener('dragover', event => { if (holdsFile(event)) event.preventDefault(); });
  addEventListener('drop', event => {
    if (!holdsFile(event)) return;
    event.preventDefault();
    over = 0;
    hint.hidden = true;
    if (onDesk() && event.dataTransfer.files.length > 0) takeIn(event.dataTransfer.files[0]);
  });

  // A drawing's marks (engine/drawing/drawing.h) on a canvas.
  const drawn = (drawing, pixelsPerUnit) => {
    const canvas = document.createElement('canvas');
    canvas.width = Math.round(drawing.width * pixelsPerUnit);
    canvas.height = Math.round(drawing.height * pixelsPerUnit);
    const pen = canvas.getContext('2d');
    pen.scale(pixelsPerUnit, pixelsPerUnit);
    pen.fillStyle = drawing.paper;
    pen.fillRect(0, 0, drawing.width, drawing.height);
    pen.lineJoin = 'round';
    const trace = (points, closed) => {
      pen.beginPath();
      for (let i = 0; i < points.length; i += 2) pen.lineTo(points[i], points[i + 1]);
      if (closed) pen.closePath();
    };
    for (const [kind, colour, points, ...more] of drawing.marks) {
      pen.fillStyle = pen.strokeStyle = colour;
      if (kind === 'fill') {
        trace(points, true);
        pen.fill();
      } else if (kind === 'stroke') {
        const [width, closed] = more;
        pen.lineWidth = width;
        trace(points, closed);
        pen.stroke();
      } else {
        const [words, size, align] = more;
        pen.font = `${size}px Andika, sans-serif`;
        pen.textAlign = align;
        pen.textBaseline = 'alphabetic';
        // `at` is the middle of the capitals, which are about 0.7 of the em high.
        pen.fillText(words, points[0], points[1] + 0.35 * size);
      }
    }
    return canvas;
  };

  const nameOf = title => title.replace(/[^\p{L}\p{N}]+/gu, '_').replace(/^_+|_+$/g, '').toLowerCase() || 'tree';

  const savePicture = () =>
    drawn(page.program.drawing(), 2).toBlob(png => download(nameOf(page.text.verdict.title) + '.png', png), 'image/png');
  const takeHome = () => download(nameOf(page.text.verdict.title) + '.bough.json', page.program.plan());

  // Whoever prints, by our button or the browser's own: the picture, and below it what the verdict says.
  addEventListener('beforeprint', () => {
    if (!onDesk()) return;
    const verdict = document.getElementById('verdict').cloneNode(true);
    verdict.removeAttribute('id');
    verdict.className = '';
    document.getElementById('printed').replaceChildren(drawn(page.program.drawing(), 2), verdict);
  });
  addEventListener('afterprint', () => document.getElementById('printed').replaceChildren());

  return {download, ask, savePicture, takeHome};
})();
