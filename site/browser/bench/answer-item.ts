import { byId } from '../element.ts';
import { carriedEntry } from './carried-entry.ts';
import type { Editor } from './editor.ts';

/** Adds an answer to an open item, chosen by its name, to the record; its details are then typed in the text. */
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
