import { byId, element } from '../element.ts';
import { errorMessage } from '../error-message.ts';
import { showVerdict } from '../show-verdict.ts';
import { type Core, startCore } from '../thread/ask.ts';
import type { Figure, RecordQuestion, Said, Sheet } from '../thread/protocol.ts';
import { type FindingPlace, findingItems, isSettled, verdictOf, withoutRepeats } from './findings-list.ts';
import { openPreview } from './preview.ts';

/** Question to the core; undefined if the record cannot be read. */
export type Asked = Omit<RecordQuestion, 'want'>;

/** Part of a page that shows the assessment of a record. */
export interface Outcome {
  /** Assesses a record and shows the result. */
  work(asked: Asked, placeOf: (finding: Said) => FindingPlace): Promise<Sheet | undefined>;
  /** Shows the findings of a text that cannot be read. */
  refuse(findings: readonly Said[], placeOf: (finding: Said) => FindingPlace): void;
  /** Reports a failure, and removes the earlier result. */
  fail(error: unknown): void;
}

/** Opens the outcome: verdict, findings, results, documents and PDF, for the elements that the page has. */
export function openOutcome(): Outcome {
  const core = startCore();
  const preview = openPreview();
  const verdict = byId('verdict', HTMLElement);
  const list = byId('findings', HTMLElement);
  const figures = byId('figures', HTMLElement);
  let last: Asked | undefined;
  const pdf = startPdf(core, () => last);
  const say = (findings: readonly Said[], isReadable: boolean, placeOf: (finding: Said) => FindingPlace): void => {
    showVerdict(verdict, verdictOf(findings, { isReadable, isAlone: true }), isReadable && isSettled(findings));
    list.replaceChildren(...findingItems(withoutRepeats(findings), placeOf));
  };
  // The last result stays visible while a record is being edited, without its actions.
  const suspend = (): void => {
    if (last) byId('stale', HTMLElement).hidden = false;
    last = undefined;
    pdf.reset(false);
  };
  const outcome: Outcome = {
    refuse(findings, placeOf) {
      core.drop();
      say(findings, false, placeOf);
      suspend();
    },
    fail(error) {
      showVerdict(verdict, `Not calculated: ${errorMessage(error)}`, false);
      list.replaceChildren();
      suspend();
    },
    async work(asked, placeOf) {
      try {
        const sheet = await core.sheet(asked);
        if (!sheet) return undefined;
        say(sheet.findings, sheet.isReadable, placeOf);
        if (sheet.isReadable) {
          last = asked;
          show(sheet, asked.files);
        } else suspend();
        return sheet;
      } catch (error) {
        outcome.fail(error);
        return undefined;
      }
    },
  };
  const show = (sheet: Sheet, files: Asked['files']): void => {
    byId('stale', HTMLElement).hidden = true;
    figures.replaceChildren(...sheet.figures.map((figure) => figureItem(figure, preview.show)));
    preview.update(sheet.documents, files);
    pdf.reset(true);
  };
  return outcome;
}

function figureItem({ name, value, document }: Figure, show: (document: string) => void): HTMLElement {
  const leads = element('button', { type: 'button', className: 'place', ariaLabel: `working of ${name}` }, 'working');
  leads.addEventListener('click', () => show(document));
  return element('div', {}, element('dt', {}, name), element('dd', {}, `${value} `, leads));
}

function startPdf(core: Core, asked: () => Asked | undefined): { reset(canBeMade: boolean): void } {
  const button = byId('make-pdf', HTMLButtonElement);
  const link = byId('pdf', HTMLAnchorElement);
  const words = button.textContent ?? '';
  const make = async (question: Asked): Promise<void> => {
    const bytes = await core.pdf(question);
    // Later changes are not in it.
    if (asked() !== question) return;
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
        button.textContent = `Not made: ${errorMessage(error)}`;
      });
  });
  return {
    reset(canBeMade) {
      link.hidden = true;
      button.disabled = !canBeMade;
    },
  };
}
