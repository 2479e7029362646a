// How every number was computed.

import type { ReactNode } from 'react';
import { Paper, type PaperProps } from '../paper.tsx';

export function Working(_: PaperProps): ReactNode {
  return (
    <Paper name="working" answer="How every number was computed.">
      {null}
    </Paper>
  );
}
