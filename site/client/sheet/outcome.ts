import { type Core, startCore } from '../core/ask.ts';
import type { Figure, RecordQuestion, Said, Sheet } from '../core/protocol.ts';
import { element, there } from '../element.ts';
import { type FindingPlace, findingItems, isSettled, verdictOf } from './findings-list.ts';
import { openPreview } from './preview.ts';

/** What is asked of the core; undefined where there is nothing that it could read. */
export type Asked = Omit<RecordQuestion, 'want'>;

/** The part of a page that says what the core makes of a record. */
export interface Outcome {
  /** Has a record worked out and shows what comes of it. */
  work(asked: Asked, placeOf: (finding: Said) => FindingPlace): Promise<Sheet | undefined>;
  /** Shows what stands against a text that cannot be read at all. */
  refuse(findings: readonly Said[], placeOf: (finding: Said) => FindingPlace): void;
}

/** Verdict, findings, results, documents and PDF, for the elements that the page has for them. */
export function openOutcome(): Outcome {
  const core = startCore();
  const preview = openPreview();
  const verdict = there('verdict', HTMLElement);
  const list = there('findings', HTMLElement);
  const figures = there('figures', HTMLElement);
  let last: Asked | undefined;
  const pdf = startPdf(core, () => last);
  const say = (findings: readonly Said[], isReadable: boolean, placeOf: (finding: Said) => FindingPlace): void => {
    verdict.textContent = verdictOf(findings, isReadable);
    verdict.className = isReadable && isSettled(findings) ? 'verdict good' : 'verdict bad';
    list.replaceChildren(...findingItems(findings, placeOf));
  };
  return {
    refuse: (findings, placeOf) => say(findings, false, placeOf),
    async work(asked, placeOf) {
      const sheet = await core.sheet(asked);
      if (!sheet) return undefined;
      say(sheet.findings, sheet.isReadable, placeOf);
      // While a record is broken for a moment, what was computed last stays in sight.
      if (!sheet.isReadable) return sheet;
      last = asked;
      figures.replaceChildren(...sheet.figures.map((figure) => figureItem(figure, preview.show)));
      preview.update(sheet.documents, asked.files);
      pdf.reset();
      return sheet;
    },
  };
}

function figureItem({ name, value, document }: Figure, show: (document: string) => void): HTMLElement {
  const leads = element('button', { type: 'button', className: 'place', ariaLabel: `working of ${name}` }, 'working');
  leads.addEventListener('click', () => show(document));
  return element('div', {}, element('dt', {}, name), element('dd', {}, `${value} `, leads));
}

function startPdf(core: Core, asked: () => Asked | undefined): { reset(): void } {
  const button = there('make-pdf', HTMLButtonElement);
  const link = there('pdf', HTMLAnchorElement);
  const words = button.textContent ?? '';
  const make = async (question: Asked): Promise<void> => {
    const bytes = await core.pdf(question);
    URL.revokeObjectURL(link.href);
    link.href = URL.createObjectURL(new Blob([bytes], { type: 'application/pdf' }));
    link.hidden = false;
  };
  button.addEventListener('click', () => {
    const question = asked();
    if (!question) return;
    button.textContent = 'Making the PDF';
    make(question)
      .then(() => {
        button.textContent = words;
      })
      .catch((error: unknown) => {
        button.textContent = `Not made: ${error instanceof Error ? error.message : String(error)}`;
      });
  });
  return {
    reset() {
      link.hidden = true;
      button.disabled = false;
    },
  };
}
