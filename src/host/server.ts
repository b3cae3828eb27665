/**
 * The loopback host: the same window and the same contract as the desktop shell, over HTTP on 127.0.0.1 only.
 * A call is POST /call/NAME; its answer comes as lines of JSON: any number of {progress}, then {result} or {refusal}.
 */
import type { IncomingMessage, ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import type { Duplex } from 'node:stream';
import { DeskError, type DeskRefusal } from '../desk/desk-error.ts';
import type { DeskLink } from './desk-link.ts';
import { type Door, makeDoor, refuseStranger, refuseToken } from './guard.ts';
import { refuseLine, takeLine, tokenOfLine } from './page-line.ts';
import type { Presence } from './presence.ts';
import { refusalOf } from './refuse-later.ts';
import { discardRest, readInput } from './request-body.ts';
import { readWebFile, SECURITY_HEADERS } from './web-files.ts';

export interface LoopbackOptions {
  readonly desk: Pick<DeskLink, 'call'>;
  readonly webFolder: string;
  /** 0 takes any free port. */
  readonly port: number;
  /** Hears of pages and of work. */
  readonly presence: Presence;
}

export interface LoopbackHost {
  readonly port: number;
  readonly token: string;
  /** The address to open; the token stands behind the #, where no log and no other page sees it. */
  readonly address: string;
  /** An address that lets in one page, once, within a minute: fit for a command line, which others can read. */
  makePageAddress(): string;
  /** Lets work that is under way come to its end. */
  close(): Promise<void>;
}

// An import would load all that the module offers, `fetch` and its streams among it, before the first page.
const { createServer } = process.getBuiltinModule('node:http');

const LINES = { ...SECURITY_HEADERS, 'Content-Type': 'application/x-ndjson', 'Cache-Control': 'no-store' };
const line = (content: object) => `${JSON.stringify(content)}\n`;

function refuse(response: ServerResponse, status: number, refusal: DeskRefusal): void {
  response.writeHead(status, LINES);
  response.end(line({ refusal }));
}

async function sendFile(request: IncomingMessage, response: ServerResponse, folder: string, path: string) {
  if (request.method !== 'GET' && request.method !== 'HEAD') {
    return refuse(response, 405, { code: 'bad-method', message: 'Files can only be fetched.' });
  }
  const file = await readWebFile(folder, path);
  if (!file) return refuse(response, 404, { code: 'not-found', message: 'There is nothing at this address.' });
  response.writeHead(200, { ...file.headers, 'Content-Length': file.bytes.byteLength });
  response.end(request.method === 'HEAD' ? undefined : file.bytes);
}

async function answerCall(
  request: IncomingMessage,
  response: ServerResponse,
  { desk, presence }: LoopbackOptions,
  name: string,
) {
  const stopped = new AbortController();
  response.on('close', () => {
    if (!response.writableFinished) stopped.abort();
  });
  let input: unknown;
  try {
    input = await readInput(request, name);
  } catch (error) {
    if (request.destroyed && !request.complete && !(error instanceof DeskError)) return;
    discardRest(request);
    const refusal = await refusalOf(error);
    return refuse(response, refusal.code === 'file-too-large' ? 413 : 400, refusal);
  }
  response.writeHead(200, LINES);
  try {
    const result = await presence.work(
      desk.call(name, input, {
        signal: stopped.signal,
        onProgress: (progress) => void response.write(line({ progress })),
      }),
    );
    response.end(line({ result }));
  } catch (error) {
    if (!stopped.signal.aborted) response.end(line({ refusal: await refusalOf(error) }));
  }
}

/** A page that was opened with a code asks for its token; another program asks for a code by the host's own token. */
function answerDoor(request: IncomingMessage, response: ServerResponse, door: Door): void {
  const token = door.takeCode(String(request.headers['x-plainwarmth-code'] ?? ''));
  if (token !== undefined) {
    response.writeHead(200, LINES);
    response.end(line({ result: { token } }));
    return;
  }
  const stranger = refuseToken(request, door);
  if (stranger) {
    refuse(response, 403, stranger);
    return;
  }
  response.writeHead(200, LINES);
  response.end(line({ result: { code: door.makeCode() } }));
}

export async function startLoopback(options: LoopbackOptions): Promise<LoopbackHost> {
  const { webFolder, port, presence } = options;
  const door = makeDoor();
  let ownPort = port;

  async function answer(request: IncomingMessage, response: ServerResponse): Promise<void> {
    const path = (request.url ?? '/').replace(/[?#].*$/s, '');
    const stranger = refuseStranger(request, ownPort);
    if (stranger) return refuse(response, 403, stranger);
    if (!path.startsWith('/call/') && path !== '/door') return sendFile(request, response, webFolder, path);
    if (request.method !== 'POST') {
      return refuse(response, 405, { code: 'bad-method', message: 'Calls are made by POST.' });
    }
    if (path === '/door') return answerDoor(request, response, door);
    const noToken = refuseToken(request, door);
    if (noToken) return refuse(response, 403, noToken);
    return answerCall(request, response, options, path.slice('/call/'.length));
  }

  const server = createServer((request, response) => {
    answer(request, response).catch((error: unknown) => {
      console.error(error);
      response.destroy();
    });
  });
  const lines = new Set<Duplex>();
  // Whoever opened a connection closes it. Closed from here after some quiet seconds it would break the next call of a
  // program that was held up meanwhile, since nobody sends a POST twice.
  server.keepAliveTimeout = 0;
  server.on('upgrade', (request, socket) => {
    if (refuseStranger(request, ownPort) || !door.fits(tokenOfLine(request))) return refuseLine(socket);
    const leave = presence.enter();
    lines.add(socket);
    takeLine(request, socket, () => {
      lines.delete(socket);
      leave();
    });
  });
  await new Promise<void>((resolve, reject) => {
    server.once('error', (error: NodeJS.ErrnoException) => {
      reject(
        error.code === 'EADDRINUSE'
          ? new DeskError({
              code: 'port-taken',
              message: `Port ${port} is taken by another program.`,
              where: '--port',
              remedy: 'Choose another, or leave --port out for any free one.',
            })
          : error,
      );
    });
    server.listen(port, '127.0.0.1', resolve);
  });
  ownPort = (server.address() as AddressInfo).port;
  const page = `http://127.0.0.1:${ownPort}/`;
  return {
    port: ownPort,
    token: door.token,
    address: `${page}#token=${door.token}`,
    makePageAddress: () => `${page}#code=${door.makeCode()}`,
    async close() {
      const closed = new Promise<void>((resolve) => server.close(() => resolve()));
      await presence.settled();
      server.closeAllConnections();
      for (const socket of lines) socket.destroy();
      await closed;
    },
  };
}
