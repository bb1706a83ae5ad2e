import { byId } from '../element.ts';
import { carriedEntry } from './carried-entry.ts';
import type { Editor } from './editor.ts';

/** Puts an answer to an open item, by its name, into the record that is typed; what it needs is typed there. */
export function startAnswers(editor: Editor): void {
  const item = byId('open-item', HTMLInputElement);
  const said = byId('answer-said', HTMLElement);
  byId('answer-item', HTMLButtonElement).addEventListener('click', () => {
    const name = item.value.trim();
    const entry =
      name === ''
        ? 'Give the name of the open item, as the page of the aircraft lists it'
        : carriedEntry(editor.text(), name);
    const isMade = typeof entry !== 'string';
    said.hidden = isMade;
    said.textContent = isMade ? '' : entry;
    if (!isMade) {
      item.focus();
      return;
    }
    editor.amend(entry.edits, entry.reason);
    item.value = '';
  });
}
