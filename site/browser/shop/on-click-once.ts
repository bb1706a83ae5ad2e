import { said } from './session.ts';

/** Does something when a button is pressed; not again before it is done, however often it is pressed. */
export function onClickOnce(button: HTMLButtonElement, act: () => Promise<void>): void {
  button.addEventListener('click', async () => {
    button.disabled = true;
    await said(act());
    button.disabled = false;
  });
}
