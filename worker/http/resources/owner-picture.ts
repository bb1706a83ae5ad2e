import type { VisitRecord } from '../../visit/record.ts';
import { found, reached } from '../answer.ts';
import { missing, openedLink } from '../opened-link.ts';
import type { Operation } from '../route.ts';

const TYPES: readonly { type: string; signature: number }[] = [
  { type: 'image/jpeg', signature: 0xff },
  { type: 'image/png', signature: 0x89 },
];

export const openLinkPicture: Operation = {
  id: 'openLinkPicture',
  summary: 'A photograph of the pack that the link leads to, without place and camera data',
  answers: {
    200: { description: 'The picture', content: { 'image/jpeg': 'binary', 'image/png': 'binary' } },
    404: { description: 'The link or the picture is unknown', content: { 'text/html': 'text' } },
  },
  async handle(call) {
    const opened = await openedLink(call, 'photograph');
    if (!opened) return missing(call);
    const { archive } = call.world;
    const record = new Response(found(reached(await archive.blob(opened.pack.recordSha256)), 'such record'));
    const { attachments = [] } = await record.json<VisitRecord>();
    const picture = attachments.find(({ kind, sha256 }) => kind === 'photograph' && sha256 === call.params.sha256);
    const body = picture && reached(await archive.blob(picture.sha256));
    if (!body) return missing(call);
    const bytes = call.pipeline.cleanImage(await new Response(body).bytes());
    const type = TYPES.find(({ signature }) => signature === bytes[0])?.type;
    if (!type) return missing(call);
    return new Response(bytes as Uint8Array<ArrayBuffer>, {
      headers: { 'Content-Type': type, 'Cache-Control': 'private, no-store' },
    });
  },
};
