import { byId, element } from './element.ts';

/** After something that was typed has been replaced: says so, and puts it back when asked to. */
export function offerUndo(back: () => void): void {
  const place = byId('put-back', HTMLElement);
  const button = element('button', { type: 'button', className: 'place' }, 'Put it back');
  button.addEventListener('click', () => {
    place.hidden = true;
    back();
  });
  place.replaceChildren('What stood here was replaced. ', button);
  place.hidden = false;
}
