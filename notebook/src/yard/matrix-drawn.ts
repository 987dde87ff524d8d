import { levels } from '@tarebook/rules/engine';
import type { Seen } from './matrix-sieve';

/** How each level is filled: a color of the page and a shape, so that paper tells them apart too. */
const tones = ['--ok', '--care', '--if', '--unknown', '--rule'] as const;

/** Where the pairs lie within the picture, in pixels; names stand at its left and above it. */
export type Frame = {
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly top: number;
  readonly w: number;
  readonly h: number;
};

/** Below this many pixels a shape is only a blur, and a name would touch the next. */
const leastForShape = 7;
const leastForName = 11;
const nameSize = 11;

/** Names are written where there is room for them. */
export function frameOf(width: number, { rows, columns }: Seen): Frame {
  const named =
    width >= 560 && columns.length > 0 && (width - 170) / columns.length >= leastForName;
  const left = named ? 170 : 0;
  const w = (width - left) / Math.max(1, columns.length);
  const tall = Math.max(200, Math.min(width, w * rows.length));
  const h = Math.min(named ? 26 : tall, tall / Math.max(1, rows.length));
  const top = named ? 120 : 0;
  return { width, height: top + h * rows.length, left, top, w, h };
}

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

/** Colors as the screen has them, each as one number. */
function asPixels(colors: readonly string[]): Uint32Array {
  const pot = new OffscreenCanvas(colors.length, 1).getContext('2d', { willReadFrequently: true });
  if (!pot) return new Uint32Array(colors.length);
  colors.forEach((color, i) => {
    pot.fillStyle = color;
    pot.fillRect(i, 0, 1, 1);
  });
  return new Uint32Array(pot.getImageData(0, 0, colors.length, 1).data.buffer.slice(0));
}

export type Painter = {
  /** The pairs of some rows, by their places among those seen. */
  readonly paint: (found: Uint8Array, from: number, to: number) => void;
};

/**
 * A picture of what is seen, made ready once: vehicles down, trailers across, the lightest at the
 * left. What is left out, and what is not judged yet, stays empty.
 */
export function painterOn(
  canvas: HTMLCanvasElement,
  frame: Frame,
  { rows, columns }: Seen,
  wide: number,
  names: { readonly rows: readonly string[]; readonly columns: readonly string[] },
  without: ReadonlySet<number>,
): Painter {
  const g = canvas.getContext('2d');
  if (!g) return { paint: () => {} };
  const { width, height, left, top, w, h } = frame;
  const scale = globalThis.devicePixelRatio || 1;
  canvas.width = Math.round(width * scale);
  canvas.height = Math.round(height * scale);
  g.setTransform(scale, 0, 0, scale, 0, 0);
  const style = getComputedStyle(canvas);
  const colors = tones.map((each) => style.getPropertyValue(each).trim());
  if (top > 0)
    writeNames(g, frame, names, style.getPropertyValue('--ink').trim(), style.fontFamily);
  if (Math.min(w, h) >= leastForShape) {
    return { paint: (found, from, to) => paintShapes(found, from, to) };
  }

  const small = new OffscreenCanvas(Math.max(1, columns.length), Math.max(1, rows.length));
  const pixels = small.getContext('2d');
  const image = pixels?.createImageData(small.width, small.height);
  const into = new Uint32Array(image?.data.buffer ?? new ArrayBuffer(0));
  const inks = new Uint32Array(256);
  inks.set(asPixels(colors));
  inks[levels.indexOf('stop')] = 0;
  for (const level of without) inks[level] = 0;
  const across = Int32Array.from(columns);
  return {
    paint: (found, from, to) => {
      if (!pixels || !image) return;
      for (let at = from; at < to; at += 1) {
        const begin = (rows[at] ?? 0) * wide;
        const line = at * small.width;
        for (let i = 0; i < across.length; i += 1) {
          into[line + i] = inks[found[begin + (across[i] ?? 0)] ?? 255] ?? 0;
        }
      }
      pixels.putImageData(image, 0, 0, 0, from, small.width, to - from);
      g.imageSmoothingEnabled = false;
      g.clearRect(left, top + from * h, width - left, (to - from) * h);
      g.drawImage(
        small,
        ...([0, from, columns.length, to - from] as const),
        ...([left, top + from * h, width - left, (to - from) * h] as const),
      );
    },
  };

  function paintShapes(found: Uint8Array, from: number, to: number): void {
    if (!g) return;
    g.clearRect(left, top + from * h, width - left, (to - from) * h);
    g.lineWidth = 1;
    for (let at = from; at < to; at += 1) {
      columns.forEach((column, i) => {
        const level = found[(rows[at] ?? 0) * wide + column] ?? 255;
        const name = levels[level];
        if (name === undefined || without.has(level)) return;
        g.fillStyle = colors[level] ?? '';
        g.strokeStyle = colors[level] ?? '';
        shape(g, name, [left + i * w, top + at * h, w - 1, h - 1]);
      });
    }
  }
}

function writeNames(
  g: CanvasRenderingContext2D,
  { left, top, w, h }: Frame,
  names: { readonly rows: readonly string[]; readonly columns: readonly string[] },
  ink: string,
  family: string,
): void {
  g.fillStyle = ink;
  g.font = `${nameSize}px ${family}`;
  g.textBaseline = 'middle';
  g.textAlign = 'right';
  names.rows.forEach((name, at) => {
    if (h >= leastForName) g.fillText(name, left - 6, top + (at + 0.5) * h, left - 10);
  });
  g.textAlign = 'left';
  names.columns.forEach((name, at) => {
    g.save();
    g.translate(left + (at + 0.5) * w, top - 6);
    g.rotate(-Math.PI / 2);
    g.fillText(name, 0, 0, top - 10);
    g.restore();
  });
}
