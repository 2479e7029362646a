// Refrigerants in the same machine.

import type { ReactNode } from 'react';
import { Paper, type PaperProps } from '../paper.tsx';

export function SideBySide(_: PaperProps): ReactNode {
  return (
    <Paper name="side-by-side" answer="Refrigerants in the same machine.">
      {null}
    </Paper>
  );
}
