// Answers that several parts of the document share.

export const yesNo = ['yes', 'no'] as const;
export const yesNoUnknown = ['yes', 'no', 'unknown'] as const;
export const yesNoLabels = { yes: 'Yes', no: 'No', unknown: 'Not known' };
