import { hasFields } from '../state/shelf';

/** What comes over a line of the relay, by its kind. */
export type Heard = Readonly<Record<string, unknown>> & { readonly kind: string };

const isHeard = (value: unknown): value is Heard => hasFields(value, { kind: 'string' });

/** A line to the relay of the server that this page came from. */
export function lineTo(
  end: 'trainer' | 'learner',
  heard: (message: Heard) => void,
  closed: (wasOpen: boolean) => void,
  opened: () => void = () => undefined,
): { say: (message: object) => void; close: () => void } {
  const url = new URL(`relay/${end}`, location.href.replace(/#.*$/, ''));
  url.protocol = url.protocol === 'https:' ? 'wss:' : 'ws:';
  const socket = new WebSocket(url);
  let wasOpen = false;
  socket.addEventListener('open', () => {
    wasOpen = true;
    opened();
  });
  socket.addEventListener('message', ({ data }: MessageEvent<unknown>) => {
    try {
      const message: unknown = JSON.parse(String(data));
      if (isHeard(message)) heard(message);
    } catch {
      // The relay sends nothing else; what is none of its messages is left alone.
    }
  });
  socket.addEventListener('close', () => closed(wasOpen));
  return {
    say: (message) => {
      if (socket.readyState === WebSocket.OPEN) socket.send(JSON.stringify(message));
    },
    close: () => socket.close(),
  };
}
