// Exit codes of the command line, stable: scripts read them.

export const exitCodes = {
  /** Answered; for `check`: carriesLoad. */
  answered: 0,
  /** `check` only: the answer is no. */
  no: 1,
  /** The input cannot be used. */
  unusableInput: 2,
  /** The input is understood, and physics or the models give no solution. */
  noSolution: 3,
  /** `check` only: the ranges overlap. */
  uncertain: 4,
} as const;

export type ExitCode = (typeof exitCodes)[keyof typeof exitCodes];
