import * as m from '../text/generated/messages.ts';
import { type Said, said } from '../text/message.ts';

/** Returns a sentence with the configuration that it is about; unchanged if the aircraft has only one. */
export function inConfiguration(name: string | undefined, sentence: Said): Said {
  return name === undefined ? sentence : said(m.inConfiguration_sentence, { name, sentence });
}
