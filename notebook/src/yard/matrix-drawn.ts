import { levels } from '@tarebook/rules/engine';

/** How each level is filled: a color of the page and a shape, so that paper tells them apart too. */
const tones = ['--ok', '--care', '--if', '--unknown', '--rule'] as const;

export type Drawn = {
  readonly width: number;
  readonly height: number;
  readonly rows: number;
  readonly columns: number;
  /** Undefined where a pair is not judged yet. */
  readonly levelAt: (row: number, column: number) => number | undefined;
  readonly at: { readonly row: number; readonly column: number };
};

/** Below this many pixels a shape is only a blur. */
const leastForShape = 7;

function shape(
  g: CanvasRenderingContext2D,
  level: string | undefined,
  [x, y, w, h]: readonly [number, number, number, number],
): void {
  const [cx, cy] = [x + w / 2, y + h / 2];
  const r = Math.min(w, h) * 0.3;
  g.beginPath();
  if (level === 'care') {
    g.moveTo(cx, cy - r);
    g.lineTo(cx + r, cy + r);
    g.lineTo(cx - r, cy + r);
    g.closePath();
    g.fill();
  } else if (level === 'if') {
    g.moveTo(cx, cy - r);
    g.lineTo(cx + r, cy);
    g.lineTo(cx, cy + r);
    g.lineTo(cx - r, cy);
    g.closePath();
    g.stroke();
  } else if (level === 'unknown') {
    g.arc(cx, cy, r, 0, 2 * Math.PI);
    g.stroke();
  } else if (level === 'ok') {
    g.fillRect(x, y, w, h);
  } else if (level === 'stop') {
    g.moveTo(cx - r, cy - r);
    g.lineTo(cx + r, cy + r);
    g.stroke();
  }
}

/** Colors as the screen has them: red, green, blue and how much of it covers. */
function asPixels(colors: readonly string[]): Uint8ClampedArray {
  const pot = new OffscreenCanvas(colors.length, 1).getContext('2d', { willReadFrequently: true });
  if (!pot) return new Uint8ClampedArray(colors.length * 4);
  colors.forEach((color, i) => {
    pot.fillStyle = color;
    pot.fillRect(i, 0, 1, 1);
  });
  return pot.getImageData(0, 0, colors.length, 1).data;
}

/** Too many pairs for shapes: one pixel each, drawn at once and made as large as there is room. */
function drawSmall(g: CanvasRenderingContext2D, drawn: Drawn, colors: readonly string[]): void {
  const { width, height, rows, columns, levelAt } = drawn;
  const small = new OffscreenCanvas(columns, rows);
  const pixels = small.getContext('2d');
  if (!pixels) return;
  const image = pixels.createImageData(columns, rows);
  const inks = asPixels(colors);
  const stop = levels.indexOf('stop');
  for (let row = 0; row < rows; row += 1) {
    for (let column = 0; column < columns; column += 1) {
      const level = levelAt(row, column);
      if (level === undefined || level === stop) continue;
      const to = (row * columns + column) * 4;
      for (let i = 0; i < 4; i += 1) image.data[to + i] = inks[level * 4 + i] ?? 0;
    }
  }
  pixels.putImageData(image, 0, 0);
  g.imageSmoothingEnabled = false;
  g.drawImage(small, 0, 0, width, height);
}

/** All pairs as a picture: vehicles down, trailers across, the lightest at the left. */
export function drawMatrix(canvas: HTMLCanvasElement, drawn: Drawn): void {
  const g = canvas.getContext('2d');
  if (!g) return;
  const { width, height, rows, columns, levelAt, at } = drawn;
  const scale = globalThis.devicePixelRatio || 1;
  canvas.width = Math.round(width * scale);
  canvas.height = Math.round(height * scale);
  g.setTransform(scale, 0, 0, scale, 0, 0);
  g.clearRect(0, 0, width, height);
  const style = getComputedStyle(canvas);
  const colors = tones.map((each) => style.getPropertyValue(each).trim());
  const [w, h] = [width / columns, height / rows];
  const gap = Math.min(w, h) > 4 ? 1 : 0;
  const isShaped = Math.min(w, h) >= leastForShape;
  if (!isShaped) drawSmall(g, drawn, colors);
  for (let row = 0; isShaped && row < rows; row += 1) {
    for (let column = 0; column < columns; column += 1) {
      const level = levelAt(row, column);
      if (level === undefined) continue;
      const name = levels[level];
      g.fillStyle = colors[level] ?? '';
      g.strokeStyle = colors[level] ?? '';
      shape(g, name, [column * w, row * h, w - gap, h - gap]);
    }
  }
  g.lineWidth = 2;
  g.strokeStyle = style.getPropertyValue('--ink').trim();
  g.strokeRect(at.column * w, at.row * h, Math.max(4, w), Math.max(4, h));
}
