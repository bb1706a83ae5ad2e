import { crc32, deflateSync } from 'node:zlib';

function chunk(type: string, content: Uint8Array): Buffer {
  const body = Buffer.concat([Buffer.from(type, 'latin1'), content]);
  const [length, check] = [Buffer.alloc(4), Buffer.alloc(4)];
  length.writeUInt32BE(content.length);
  check.writeUInt32BE(crc32(body));
  return Buffer.concat([length, body, check]);
}

/** A PNG of coloured noise, which no compression makes smaller: three bytes a pixel, as heavy as a photograph four times its size. */
export function noisePicture(width: number, height: number): Buffer {
  const rows = Buffer.alloc(height * (1 + 3 * width));
  let state = 1;
  for (let i = 0; i < rows.length; i++) {
    // Numerical Recipes' linear congruential generator: the same noise on every machine.
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    rows[i] = i % (1 + 3 * width) === 0 ? 0 : state >>> 24;
  }
  const head = Buffer.alloc(13);
  head.writeUInt32BE(width, 0);
  head.writeUInt32BE(height, 4);
  head.set([8, 2], 8);
  const signature = Buffer.from('\x89PNG\r\n\x1a\n', 'latin1');
  return Buffer.concat([
    signature,
    chunk('IHDR', head),
    chunk('IDAT', deflateSync(rows, { level: 1 })),
    chunk('IEND', Buffer.alloc(0)),
  ]);
}
