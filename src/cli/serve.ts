import { readFile, stat } from "node:fs/promises";
import { createServer, type IncomingMessage, type Server, type ServerResponse } from "node:http";
import { createServer as createSecureServer } from "node:https";
import path from "node:path";

/** Everything from our own origin, no inline script, no eval; Univer writes style attributes. */
const contentSecurityPolicy = [
  "default-src 'none'",
  "script-src 'self'",
  "worker-src 'self'",
  "style-src 'self' 'unsafe-inline'",
  "img-src 'self' data:",
  "font-src 'self'",
  "connect-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
].join("; ");

const types: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".json": "application/json; charset=utf-8",
  ".map": "application/json; charset=utf-8",
  ".svg": "image/svg+xml",
  ".png": "image/png",
  ".ico": "image/x-icon",
  ".woff": "font/woff",
  ".woff2": "font/woff2",
  ".xml": "application/xml; charset=utf-8",
  ".xlsx": "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
};

export interface ServeOptions {
  /** 0 for any that is free. */
  readonly port: number;
  readonly root: string;
  /** Certificate and key in PEM, for https. */
  readonly tls?: { readonly cert: string; readonly key: string };
  /** In place of the page's content security policy, where the files bring their own. */
  readonly headers?: Readonly<Record<string, string>>;
}

export interface Serving {
  /** With the port that was taken, also where 0 (any) was asked for. */
  readonly address: string;
  readonly close: () => Promise<void>;
}

/** The port belongs to another program. */
export class PortTakenError extends Error {
  constructor(port: number) {
    super(`Port ${port} is taken by another program. Choose another one, for example --port ${port + 1}.`);
    this.name = "PortTakenError";
  }
}

/**
 * Serves the files of a folder on this machine only, until closed.
 * @throws PortTakenError where the port is in use.
 */
export async function serve({ port, root, tls, headers }: ServeOptions): Promise<Serving> {
  const folder = path.resolve(root);
  const own = headers ?? { "Content-Security-Policy": contentSecurityPolicy };
  const answer = (request: IncomingMessage, response: ServerResponse): void => {
    for (const [name, value] of Object.entries(own)) response.setHeader(name, value);
    void respond(folder, request, response);
  };
  const newServer = (): Server => (tls === undefined ? createServer(answer) : createSecureServer(tls, answer));
  const first = newServer();
  const taken = await listen(first, "127.0.0.1", port);
  const servers = [first];
  // "localhost" may mean ::1 first; a machine without IPv6 does without.
  const second = newServer();
  try {
    await listen(second, "::1", taken);
    servers.push(second);
  } catch (error) {
    if (error instanceof PortTakenError) {
      await closeAll(servers);
      throw error;
    }
  }
  return { address: `http${tls === undefined ? "" : "s"}://localhost:${taken}/`, close: () => closeAll(servers) };
}

function listen(server: Server, host: string, port: number): Promise<number> {
  return new Promise((resolve, reject) => {
    server.once("error", (error: NodeJS.ErrnoException) => {
      reject(error.code === "EADDRINUSE" ? new PortTakenError(port) : error);
    });
    server.listen({ host, port }, () => {
      const bound = server.address();
      resolve(typeof bound === "object" && bound !== null ? bound.port : port);
    });
  });
}

async function closeAll(servers: readonly Server[]): Promise<void> {
  await Promise.all(
    servers.map((server) => {
      server.closeAllConnections();
      return new Promise((resolve) => server.close(resolve));
    }),
  );
}

async function respond(folder: string, request: IncomingMessage, response: ServerResponse): Promise<void> {
  response.setHeader("X-Content-Type-Options", "nosniff");
  response.setHeader("Referrer-Policy", "no-referrer");
  response.setHeader("Cache-Control", "no-cache");
  if (request.method !== "GET" && request.method !== "HEAD") {
    response.setHeader("Allow", "GET, HEAD");
    finish(response, 405, "Only GET and HEAD are answered here.\n");
    return;
  }
  if (!isLocalHost(request.headers.host)) {
    finish(response, 403, "This address is served to this machine only.\n");
    return;
  }
  const file = fileFor(folder, request.url ?? "/");
  const body = file === undefined ? undefined : await content(file);
  if (file === undefined || body === undefined) {
    finish(response, 404, "There is nothing at this address.\n");
    return;
  }
  response.setHeader("Content-Type", types[path.extname(file).toLowerCase()] ?? "application/octet-stream");
  response.setHeader("Content-Length", body.length);
  response.end(request.method === "HEAD" ? undefined : body);
}

/** A page of another site whose name has been pointed at this machine does not get in. */
function isLocalHost(host: string | undefined): boolean {
  return host !== undefined && /^(localhost|127\.0\.0\.1|\[::1\])(:\d+)?$/i.test(host);
}

/** The file that a request means, or undefined where it is not a path within the folder. */
function fileFor(folder: string, url: string): string | undefined {
  let pathname: string;
  try {
    pathname = decodeURIComponent(url.split(/[?#]/, 1)[0] ?? "");
  } catch {
    return undefined;
  }
  // Hidden files and anything that climbs (also with a backslash, on Windows) are not pages.
  if (
    !pathname.startsWith("/") ||
    pathname.includes("\0") ||
    pathname.split(/[/\\]/).some((part) => part.startsWith("."))
  )
    return undefined;
  const file = path.join(folder, pathname.endsWith("/") ? `${pathname}index.html` : pathname);
  return file.startsWith(folder + path.sep) ? file : undefined;
}

async function content(file: string): Promise<Buffer | undefined> {
  try {
    return (await stat(file)).isFile() ? await readFile(file) : undefined;
  } catch {
    return undefined;
  }
}

function finish(response: ServerResponse, status: number, text: string): void {
  response.writeHead(status, { "Content-Type": "text/plain; charset=utf-8" }).end(text);
}
