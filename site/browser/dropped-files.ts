/**
 * Takes files that are dropped anywhere on the page: outside a small target the browser would open them and leave the
 * page.
 */
export function onDroppedFiles(take: (files: FileList) => void): void {
  const filesOf = (event: Event): FileList | undefined => {
    const { dataTransfer } = event as DragEvent;
    return dataTransfer?.types.includes('Files') ? dataTransfer.files : undefined;
  };
  // In the capture phase: otherwise an editor would insert the content of a file into its text.
  const options = { capture: true };
  document.addEventListener('dragover', (event) => filesOf(event) && event.preventDefault(), options);
  document.addEventListener(
    'drop',
    (event) => {
      const files = filesOf(event);
      if (!files) return;
      event.preventDefault();
      event.stopPropagation();
      take(files);
    },
    options,
  );
}

/** Takes files that are chosen. The same file may be chosen again, because it may have been rewritten. */
export function onChosenFiles(field: HTMLInputElement, take: (files: FileList) => void): void {
  field.addEventListener('click', () => {
    field.value = '';
  });
  field.addEventListener('change', () => field.files && field.files.length > 0 && take(field.files));
}
