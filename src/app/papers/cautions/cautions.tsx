// What could hurt the fish, the house or a person.

import type { ReactNode } from 'react';
import { Paper, type PaperProps } from '../paper.tsx';

export function Cautions(_: PaperProps): ReactNode {
  return (
    <Paper name="cautions" answer="What could hurt the fish, the house or a person.">
      {null}
    </Paper>
  );
}
