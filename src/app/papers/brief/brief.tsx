// One to three pages to take to a licensed technician.

import type { ReactNode } from 'react';
import { Paper, type PaperProps } from '../paper.tsx';

export function Brief(_: PaperProps): ReactNode {
  return (
    <Paper name="brief" answer="One to three pages to take to a licensed technician.">
      {null}
    </Paper>
  );
}
