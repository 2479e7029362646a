// While this paper is open, pages are printed crosswise: a table with a column a fluid is wider than a page is. A rule about
// pages holds for the whole document, so it comes and goes with the paper.

import { useEffect } from 'react';

export function useLandscape(): void {
  useEffect(() => {
    const sheet = new CSSStyleSheet();
    sheet.replaceSync('@page { size: landscape; margin: 12mm; }');
    document.adoptedStyleSheets.push(sheet);
    return () => {
      document.adoptedStyleSheets = document.adoptedStyleSheets.filter((other) => other !== sheet);
    };
  }, []);
}
