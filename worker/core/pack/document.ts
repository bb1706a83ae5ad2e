import type { Message } from '../text/message.ts';
import type { PackContext } from './context.ts';
import type { View } from './render.ts';

/** One document to be filled: an instance of a kind, such as the record of one modification. */
export interface DocumentInstance {
  /** Unique in the pack; the id of its article. */
  id: string;
  title: string;
  view: View;
  /** SHA-256 of a paper whose pages follow its own. */
  appends?: string;
}

/** A kind of document. It declares itself: when it applies, its template and its view. */
export interface DocumentKind {
  /** Folder of its template. */
  template: string;
  /** Of a kind of which a pack holds at most one, its title. */
  title?: Message;
  /** The instances that a visit calls for; none when it does not apply. */
  instances(context: PackContext): DocumentInstance[];
}

/** A kind of which a pack holds at most one. */
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
