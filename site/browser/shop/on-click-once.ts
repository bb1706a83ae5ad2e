import { said } from './session.ts';

/** Runs an action when a button is pressed; further presses are ignored until it is done. */
export function onClickOnce(button: HTMLButtonElement, act: () => Promise<void>): void {
  button.addEventListener('click', async () => {
    button.disabled = true;
    await said(act());
    button.disabled = false;
  });
}
