/**
 * A line that each open page holds to the host, as a WebSocket (RFC 6455) over which nothing is said: while it stands the
 * page is open, also when its tab sleeps. A browser lets a page have six ordinary requests at a time and many of these.
 */
import { createHash } from 'node:crypto';
import type { IncomingMessage } from 'node:http';
import type { Duplex } from 'node:stream';

/** Fixed by RFC 6455, section 1.3. */
const ACCEPT_SALT = '258EAFA5-E914-47DA-95CA-C5AB0DC85B11';

/** The token travels as the name of the subprotocol, since a page can set no header here. */
export const tokenOfLine = ({ headers }: IncomingMessage): string => String(headers['sec-websocket-protocol'] ?? '');

export function refuseLine(socket: Duplex): void {
  socket.end('HTTP/1.1 403 Forbidden\r\nConnection: close\r\n\r\n');
}

/** Takes the line; `onGone` is called when the page lets go of it, in whichever way. */
export function takeLine(request: IncomingMessage, socket: Duplex, onGone: () => void): void {
  const accept = createHash('sha1')
    .update(String(request.headers['sec-websocket-key']) + ACCEPT_SALT)
    .digest('base64');
  socket.write(
    [
      'HTTP/1.1 101 Switching Protocols',
      'Upgrade: websocket',
      'Connection: Upgrade',
      `Sec-WebSocket-Accept: ${accept}`,
      `Sec-WebSocket-Protocol: ${tokenOfLine(request)}`,
      '\r\n',
    ].join('\r\n'),
  );
  // A page says nothing but that it closes, and then it goes; one that was killed only hangs up.
  socket.on('data', () => socket.end());
  socket.on('end', () => socket.end());
  socket.on('error', () => socket.destroy());
  socket.on('close', onGone);
}
