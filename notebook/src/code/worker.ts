import { rowsOf } from './encode';

addEventListener('message', ({ data }: MessageEvent<string>) => {
  postMessage(rowsOf(data));
});
