import { defaultKeymap, history, historyKeymap } from '@codemirror/commands';
import { json } from '@codemirror/lang-json';
import { bracketMatching, foldGutter, foldKeymap, HighlightStyle, syntaxHighlighting } from '@codemirror/language';
import { type Diagnostic, lintGutter, setDiagnostics } from '@codemirror/lint';
import { highlightSelectionMatches, search, searchKeymap } from '@codemirror/search';
import { EditorState } from '@codemirror/state';
import { drawSelection, EditorView, highlightActiveLine, keymap, lineNumbers } from '@codemirror/view';
import { tags } from '@lezer/highlight';
import type { Edit } from 'jsonc-parser';
import type { TextRange } from './record-text.ts';

/** Marked range of the text, such as that of a finding. */
export interface Mark extends TextRange {
  severity: 'blocks' | 'caution' | 'note';
  message: string;
}

/** Editor with the text of a record. */
export interface Editor {
  text(): string;
  replace(text: string): void;
  /** Changes parts of the text and selects `next`, where typing continues. */
  amend(edits: readonly Edit[], next: TextRange): void;
  mark(marks: readonly Mark[]): void;
  /** Selects a range and scrolls to it. */
  show(stretch: TextRange): void;
  lineOf(offset: number): number;
}

/** Syntax colours; weight and slope differ as well, for readers who do not see colours. */
const HIGHLIGHT = HighlightStyle.define([
  { tag: tags.propertyName, fontWeight: '600' },
  { tag: tags.string, color: 'var(--accent)' },
  { tag: [tags.bool, tags.null], fontStyle: 'italic' },
]);

const SEVERITIES = { blocks: 'error', caution: 'warning', note: 'info' } as const;

const THEME = EditorView.theme({
  '&': { height: 'min(70vh, 46rem)', border: '1px solid var(--soft)', backgroundColor: 'var(--card)' },
  '&.cm-focused': { outline: '3px solid var(--accent)', outlineOffset: '1px' },
  '.cm-scroller': { fontFamily: 'var(--mono)', fontSize: '0.875rem', lineHeight: '1.5' },
  '.cm-gutters': { color: 'var(--soft)', backgroundColor: 'var(--paper)' },
});

/**
 * Opens the editor in a shadow tree: in it the editor's styles are adopted sheets, which the content security policy
 * allows.
 */
export function openEditor(parent: HTMLElement, onChange: () => void): Editor {
  const root = parent.attachShadow({ mode: 'open' });
  const extensions = [
    THEME,
    lineNumbers(),
    foldGutter(),
    lintGutter(),
    history(),
    drawSelection(),
    highlightActiveLine(),
    highlightSelectionMatches(),
    bracketMatching(),
    search({ top: true }),
    json(),
    syntaxHighlighting(HIGHLIGHT),
    EditorView.lineWrapping,
    EditorView.contentAttributes.of({ 'aria-label': 'Visit record, JSON' }),
    EditorView.updateListener.of(({ docChanged }) => docChanged && onChange()),
    // Tab is left to the browser, so that keyboard users can leave the editor.
    keymap.of([...defaultKeymap, ...historyKeymap, ...searchKeymap, ...foldKeymap]),
  ];
  const view = new EditorView({ parent: root, root, state: EditorState.create({ extensions }) });
  // The scrolling area can be reached by keyboard.
  view.scrollDOM.tabIndex = 0;
  const within = (offset: number): number => Math.min(offset, view.state.doc.length);
  const show = ({ from, to }: TextRange): void => {
    const selection = { anchor: within(from), head: within(to) };
    view.dispatch({ selection, effects: EditorView.scrollIntoView(selection.anchor, { y: 'center' }) });
    view.focus();
  };
  return {
    text: () => view.state.doc.toString(),
    replace: (text) => view.dispatch({ changes: { from: 0, to: view.state.doc.length, insert: text } }),
    amend(edits, next) {
      view.dispatch({
        changes: edits.map(({ offset, length, content }) => ({ from: offset, to: offset + length, insert: content })),
      });
      show(next);
    },
    lineOf: (offset) => view.state.doc.lineAt(within(offset)).number,
    mark(marks) {
      const diagnostics = marks.map(({ from, to, severity, message }): Diagnostic => {
        return { from: within(from), to: within(to), severity: SEVERITIES[severity], message };
      });
      view.dispatch(setDiagnostics(view.state, diagnostics));
    },
    show,
  };
}
