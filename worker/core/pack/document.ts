import type { Message } from '../text/message.ts';
import type { PackContext } from './context.ts';
import type { View } from './render.ts';

/** One document to fill: an instance of a kind, such as the record of one modification. */
export interface DocumentInstance {
  /** Unique in the pack; the id of its article. */
  id: string;
  title: string;
  view: View;
  /** SHA-256 of an attached document whose pages follow. */
  appends?: string;
}

/** A kind of document, which declares its conditions, its template and its view. */
export interface DocumentKind {
  /** Folder of its template. */
  template: string;
  /** Title of a kind with only one document per pack. */
  title?: Message;
  /** Returns the instances that a visit requires; empty if it does not apply. */
  instances(context: PackContext): DocumentInstance[];
}

/** Returns a kind with only one document per pack. */
export function single(
  id: string,
  title: Message,
  view: (context: PackContext) => View,
  applies: (context: PackContext) => boolean = () => true,
): DocumentKind {
  return {
    template: id,
    title,
    instances: (context) => (applies(context) ? [{ id, title: context.fmt.text(title), view: view(context) }] : []),
  };
}
