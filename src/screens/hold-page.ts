/** A file that is dropped where nothing takes it would open in place of the program. */
export function holdPage(): void {
  const hold = (event: DragEvent) => {
    if (event.defaultPrevented || !event.dataTransfer?.types.includes('Files')) return;
    event.preventDefault();
    event.dataTransfer.dropEffect = 'none';
  };
  window.addEventListener('dragover', hold);
  window.addEventListener('drop', hold);
}
