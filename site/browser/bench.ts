// Page that checks a record: the record is typed or dropped here, and is computed and checked in the browser. Nothing
// is sent.
import { startAnswers } from './bench/answer-item.ts';
import { type Editor, openEditor } from './bench/editor.ts';
import { startExamples } from './bench/examples.ts';
import { readText } from './bench/record-text.ts';
import { debounce } from './debounce.ts';
import { byId } from './element.ts';
import { offerUndo } from './offer-undo.ts';
import { openOutcome } from './sheet/outcome.ts';
import type { PageFiles, Said } from './thread/protocol.ts';
import { setMoment, timestampOf } from './timestamp-field.ts';

/** Session storage key of the text, so that a reload of the tab loses nothing. */
const DRAFT = 'slipmark-bench';

const outcome = openOutcome();
const moment = byId('at', HTMLInputElement);
let files: PageFiles = {};

const assess = async (): Promise<void> => {
  const given = editor.text();
  sessionStorage.setItem(DRAFT, given);
  const { value: record, findings, placeOf } = readText(given);
  const place = ({ pointer }: Said) => {
    const stretch = placeOf(pointer);
    return { text: `line ${editor.lineOf(stretch.from)}`, show: () => editor.show(stretch) };
  };
  const mark = (said: readonly Said[]): void =>
    editor.mark(
      said.map(({ pointer, severity, sentence, remedy }) => {
        return { ...placeOf(pointer), severity, message: `${sentence}. ${remedy}` };
      }),
    );
  if (record === undefined) {
    outcome.refuse(findings, place);
    mark(findings);
    return;
  }
  const sheet = await outcome.work({ record, at: timestampOf(moment), files }, place);
  if (sheet) mark(sheet.findings);
};
const editor: Editor = openEditor(byId('record', HTMLElement), debounce(assess));

moment.addEventListener('change', () => void assess());
startAnswers(editor);
startExamples({
  async take(text, { at, handedIn = files }) {
    const before = { text: editor.text(), files, at: timestampOf(moment) };
    const put = (given: typeof before): void => {
      files = given.files;
      setMoment(moment, given.at);
      editor.replace(given.text);
    };
    put({ text, files: handedIn, at });
    if (before.text.trim() !== '' && before.text !== text) offerUndo(() => put(before));
  },
  async add(handedIn) {
    files = { ...files, ...handedIn };
    await assess();
  },
  failed: outcome.fail,
});
setMoment(moment, new Date().toISOString());
editor.replace(sessionStorage.getItem(DRAFT) ?? '');
