/** Hands a text to the reader of the page as a file. */
export function saveFile(text: string, name: string): void {
  const url = URL.createObjectURL(new Blob([text], { type: 'application/yaml' }));
  const link = document.createElement('a');
  Object.assign(link, { href: url, download: name });
  document.body.append(link);
  link.click();
  link.remove();
  setTimeout(() => URL.revokeObjectURL(url), 10_000);
}

/** Copies a text; from disk some browsers only copy what is selected. */
export async function copyText(text: string, box: HTMLTextAreaElement | null): Promise<void> {
  try {
    await navigator.clipboard.writeText(text);
  } catch {
    box?.select();
    document.execCommand('copy');
  }
}
