import type { Slipmark } from '../../../worker/client/client.ts';
import { fetchFile } from './fetch-file.ts';

/** Fetches a sealed pack with the key and saves it with the browser. */
export async function fetchPdf(client: Slipmark, pack: string): Promise<void> {
  const { bytes } = await client.getPackPdf({ pack });
  fetchFile(bytes, `${pack}-release-pack.pdf`, 'application/pdf');
}
