import { request } from 'node:http';

export interface Raw {
  readonly status: number;
  readonly headers: Readonly<Record<string, string | string[] | undefined>>;
  readonly text: string;
}

/** A request with headers a browser would not let a page set, such as `Host`. */
export function raw(
  address: string,
  path: string,
  { method = 'GET', body, ...headers }: { method?: string; body?: string } & Record<string, string> = {},
): Promise<Raw> {
  return new Promise((resolve, reject) => {
    const asked = request(address + path, { method, headers, agent: false }, (res) => {
      let text = '';
      res.setEncoding('utf8').on('data', (part: string) => {
        text += part;
      });
      res.on('end', () => resolve({ status: res.statusCode ?? 0, headers: res.headers, text }));
    });
    asked.on('error', reject);
    asked.end(body);
  });
}
