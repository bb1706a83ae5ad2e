import { crc32, deflateSync, inflateSync } from 'node:zlib';

/** A picture in sixteen greys, a byte a pixel, row by row: 0 is black, 15 is white. */
export interface GreyPicture {
  width: number;
  height: number;
  greys: Uint8Array;
}

const SIGNATURE = Buffer.from('\x89PNG\r\n\x1a\n', 'latin1');
const BITS = 4;

function chunk(type: string, content: Uint8Array): Buffer {
  const body = Buffer.concat([Buffer.from(type, 'latin1'), content]);
  const framed = Buffer.alloc(body.length + 8);
  framed.writeUInt32BE(content.length, 0);
  body.copy(framed, 4);
  framed.writeUInt32BE(crc32(body), body.length + 4);
  return framed;
}

/** The picture as a PNG of four bits a pixel, its rows unfiltered. */
export function pngFrom({ width, height, greys }: GreyPicture): Buffer {
  const rowBytes = 1 + Math.ceil(width / 2);
  const rows = Buffer.alloc(rowBytes * height);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const at = y * rowBytes + 1 + (x >> 1);
      rows[at] = (rows[at] ?? 0) | ((greys[y * width + x] ?? 0) << (x % 2 === 0 ? 4 : 0));
    }
  }
  const head = Buffer.alloc(13);
  head.writeUInt32BE(width, 0);
  head.writeUInt32BE(height, 4);
  head[8] = BITS;
  return Buffer.concat([
    SIGNATURE,
    chunk('IHDR', head),
    chunk('IDAT', deflateSync(rows, { level: 9 })),
    chunk('IEND', Buffer.alloc(0)),
  ]);
}

/** Reads what `pngFrom` wrote. */
export function pictureFrom(png: Buffer): GreyPicture {
  const [width, height] = [png.readUInt32BE(16), png.readUInt32BE(20)];
  const dataAt = SIGNATURE.length + 25;
  const rows = inflateSync(png.subarray(dataAt + 8, dataAt + 8 + png.readUInt32BE(dataAt)));
  const rowBytes = 1 + Math.ceil(width / 2);
  const greys = Uint8Array.from({ length: width * height }, (_, i) => {
    const x = i % width;
    const pair = rows[Math.floor(i / width) * rowBytes + 1 + (x >> 1)] ?? 0;
    return x % 2 === 0 ? pair >> 4 : pair & 15;
  });
  return { width, height, greys };
}
