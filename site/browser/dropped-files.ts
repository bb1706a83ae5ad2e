/** Takes files that are dropped anywhere on the page: beside a small target the browser would open them and leave the page. */
export function onDroppedFiles(take: (files: FileList) => void): void {
  const filesOf = (event: Event): FileList | undefined => {
    const { dataTransfer } = event as DragEvent;
    return dataTransfer?.types.includes('Files') ? dataTransfer.files : undefined;
  };
  // Before any part of the page: an editor would type the content of a file between what stands there.
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

/** Takes files that are chosen; the same file again, too, for it may have been written anew. */
export function onChosenFiles(field: HTMLInputElement, take: (files: FileList) => void): void {
  field.addEventListener('click', () => {
    field.value = '';
  });
  field.addEventListener('change', () => field.files && field.files.length > 0 && take(field.files));
}
