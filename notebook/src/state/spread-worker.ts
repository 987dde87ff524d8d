import type { SpreadRequest } from './spread';
import { drawSpread } from './spread-drawn';

self.onmessage = ({ data }: MessageEvent<SpreadRequest>) =>
  drawSpread(data, (message) => self.postMessage(message));
