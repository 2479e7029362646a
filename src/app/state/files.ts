// Files in and out: a chosen or dropped file read as text, a text offered for saving. Too large a file is refused unread.

import { useEffect, useState } from 'react';

/** A design is a few kilobytes; a file beyond this is not one [bytes]. */
export const largestFile = 2_000_000;

export type FileText =
  | { readonly ok: true; readonly text: string; readonly name: string }
  | { readonly ok: false; readonly message: string };

export async function readFileText(file: File): Promise<FileText> {
  if (file.size > largestFile) {
    const megabytes = (file.size / 1e6).toFixed(0);
    return { ok: false, message: `${file.name} holds ${megabytes} MB; a design is a JSON text of less than 2 MB.` };
  }
  try {
    return { ok: true, text: await file.text(), name: file.name };
  } catch {
    return { ok: false, message: `${file.name} could not be read.` };
  }
}

/** Offers a text for saving. `type` is that of its format. */
export function saveText(text: string, name: string, type = 'application/json'): void {
  const address = URL.createObjectURL(new Blob([text], { type }));
  saveAddress(address, name);
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}

export function saveAddress(address: string, name: string): void {
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  document.body.append(link);
  link.click();
  link.remove();
}

/** A file name from the design's own name: letters, digits and hyphens. */
export function fileNameFor(designName: string, ending = 'json'): string {
  const plain = designName
    .normalize('NFKD')
    .toLowerCase()
    .replaceAll(/[^a-z0-9]+/g, '-')
    .replaceAll(/^-|-$/g, '');
  return `${plain === '' ? 'design' : plain}.${ending}`;
}

/** Takes a file dropped anywhere on the page. Answers whether one is held over it. */
export function useFileDrop(open: (file: File) => void): boolean {
  const [isOver, setOver] = useState(false);
  useEffect(() => {
    const holdsFile = (event: DragEvent) => event.dataTransfer?.types.includes('Files') === true;
    const over = (event: DragEvent) => {
      if (!holdsFile(event)) return;
      event.preventDefault();
      setOver(true);
    };
    const leave = (event: DragEvent) => {
      // Left the window, not just an element in it.
      if (event.relatedTarget === null) setOver(false);
    };
    const drop = (event: DragEvent) => {
      if (!holdsFile(event)) return;
      event.preventDefault();
      setOver(false);
      const file = event.dataTransfer?.files[0];
      if (file !== undefined) open(file);
    };
    addEventListener('dragover', over);
    addEventListener('dragleave', leave);
    addEventListener('drop', drop);
    return () => {
      removeEventListener('dragover', over);
      removeEventListener('dragleave', leave);
      removeEventListener('drop', drop);
    };
  }, [open]);
  return isOver;
}
