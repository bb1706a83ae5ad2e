import { byId, element } from './element.ts';

/** Reports that typed text was replaced, and offers to restore it. */
export function offerUndo(back: () => void): void {
  const place = byId('put-back', HTMLElement);
  const button = element('button', { type: 'button', className: 'place' }, 'Put it back');
  button.addEventListener('click', () => {
    place.hidden = true;
    back();
  });
  place.replaceChildren('The previous content was replaced. ', button);
  place.hidden = false;
}
