// A process of its own, so that it can be killed with its workerd: the service on a storage folder. Says where it is reached.
import { startEmbedded } from '../../worker/local/service/embedded.ts';

const [script = '', storage = '', adminSecret = '', sealSecret = ''] = process.argv.slice(2);
const { origin } = await startEmbedded({ script, storage, port: 0, adminSecret, sealSecret });
process.stdout.write(`${origin}\n`);
// Whoever started it may be killed too: then nobody would be left to end it.
process.stdin.on('end', () => process.exit(0)).resume();
