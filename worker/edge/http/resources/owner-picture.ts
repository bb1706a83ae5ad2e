import { orUnavailable } from '../answer.ts';
import { blobOf } from '../lies-shared.ts';
import { missing, openedLink } from '../opened-link.ts';
import type { Operation } from '../route.ts';
import { sealedForm } from '../sealed-record.ts';

const TYPES: readonly { type: string; signature: number }[] = [
  { type: 'image/jpeg', signature: 0xff },
  { type: 'image/png', signature: 0x89 },
];

export const openLinkPicture: Operation = {
  id: 'openLinkPicture',
  summary: 'A photograph of the pack behind the link, without place and camera data',
  answers: {
    200: { description: 'The picture', content: { 'image/jpeg': 'binary', 'image/png': 'binary' } },
    404: { description: 'The link or the picture is unknown', content: { 'text/html': 'text' } },
  },
  async handle(call) {
    const opened = await openedLink(call, 'photograph');
    if (!opened) return missing(call);
    const record = await sealedForm(call, opened);
    const { sha256 } =
      record.attachments?.find((item) => item.kind === 'photograph' && item.sha256 === call.params.sha256) ?? {};
    const original = sha256 && orUnavailable(await call.world.archive.blob(await blobOf(call, opened, sha256)));
    if (!original) return missing(call);
    const bytes = call.pipeline.cleanImage(original);
    const type = TYPES.find(({ signature }) => signature === bytes[0])?.type;
    if (!type) return missing(call);
    return new Response(bytes as Uint8Array<ArrayBuffer>, {
      headers: { 'Content-Type': type, 'Cache-Control': 'private, no-store' },
    });
  },
};
