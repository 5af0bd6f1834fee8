import { connect } from 'node:net';

/**
 * Asks for one address over and over, on several connections with several requests under way on each, and counts the
 * answers. It looks at the first answer whole and afterwards only counts bytes, so that it costs little beside a server;
 * every answer must therefore be as long as the first.
 *
 * @param address of an answer that does not change
 * @param ms how long
 * @returns answers a second
 */
export async function answersPerSecond(address: string, ms: number, connections = 8, underWay = 4): Promise<number> {
  const { hostname, port, host, pathname } = new URL(address);
  const request = Buffer.from(`GET ${pathname} HTTP/1.1\r\nHost: ${host}\r\n\r\n`);
  const end = performance.now() + ms;
  const start = performance.now();
  const counts = await Promise.all(
    Array.from({ length: connections }, () => oneConnection(Number(port), hostname, request, underWay, end)),
  );
  return (counts.reduce((sum, count) => sum + count, 0) * 1000) / (performance.now() - start);
}

function oneConnection(port: number, host: string, request: Buffer, underWay: number, end: number): Promise<number> {
  return new Promise((resolve, reject) => {
    const socket = connect({ port, host, noDelay: true });
    let first: Buffer | undefined = Buffer.alloc(0);
    let length = 0;
    let bytes = 0;
    let answered = 0;
    let asked = 0;
    const ask = (count: number) => {
      asked += count;
      socket.write(count === 1 ? request : Buffer.concat(Array.from({ length: count }, () => request)));
    };
    socket.on('connect', () => ask(1));
    socket.on('error', reject);
    socket.on('data', (chunk) => {
      if (first !== undefined) {
        first = Buffer.concat([first, chunk]);
        length = lengthOf(first);
        if (length === 0 || first.length < length) return;
        if (!first.subarray(0, 15).toString('latin1').startsWith('HTTP/1.1 200')) {
          socket.destroy();
          reject(new Error(first.toString('utf8')));
          return;
        }
        first = undefined;
        ask(underWay);
        return;
      }
      bytes += chunk.length;
      const finished = Math.floor(bytes / length) - answered;
      if (finished === 0) return;
      answered += finished;
      if (performance.now() < end) ask(finished);
      else if (answered + 1 === asked) {
        socket.end();
        if (bytes === answered * length) resolve(answered);
        else reject(new Error('the answers were not all equally long'));
      }
    });
  });
}

/** Length of an answer with its head, 0 until the whole head is there. */
function lengthOf(answer: Buffer): number {
  const head = answer.indexOf('\r\n\r\n');
  if (head < 0) return 0;
  const said = /\r\ncontent-length: (\d+)\r\n/i.exec(answer.subarray(0, head + 2).toString('latin1'));
  if (said === null) throw new Error('the answer does not say how long it is');
  return head + 4 + Number(said[1]);
}
