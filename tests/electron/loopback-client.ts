import { request, type IncomingHttpHeaders } from 'node:http';

export type Answer = {
  readonly status: number;
  readonly headers: IncomingHttpHeaders;
  readonly text: string;
};

export type Ask = {
  readonly port: number;
  readonly method?: string;
  readonly path?: string;
  readonly headers?: Readonly<Record<string, string>>;
  readonly body?: string;
};

/** Sends exactly the headers that are given, Host included, which `fetch` would not allow. */
export function send(ask: Ask): Promise<Answer> {
  return new Promise((resolve, reject) => {
    const outgoing = request(
      {
        host: '127.0.0.1',
        port: ask.port,
        method: ask.method ?? 'GET',
        path: ask.path ?? '/',
        headers: ask.headers ?? {},
        setHost: false,
        agent: false,
      },
      (response) => {
        let text = '';
        response.setEncoding('utf8');
        response.on('data', (part: string) => {
          text += part;
        });
        response.on('end', () =>
          resolve({ status: response.statusCode ?? 0, headers: response.headers, text }),
        );
        response.on('error', reject);
      },
    );
    outgoing.on('error', reject);
    outgoing.end(ask.body);
  });
}
