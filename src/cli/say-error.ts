// Sentences for people about what was typed: made here, from the facts of the error, so that each says what was wrong in its
// own words. Programs read codes and facts.

import { possibleOf } from '../assess/index.ts';
import { InputError, type KettlefinError } from '../numerics/index.ts';

/** The sentence for an input that cannot be used. */
export function inputSentence(path: string, received: string, expected: string, code: string): string {
  switch (code) {
    case 'missing':
      return `${path} is missing. Expected ${expected}.`;
    case 'valueMissing':
      return `${path} has no value. Expected ${expected}.`;
    case 'unknownOption':
      return `There is no option ${path}. Expected ${expected}`;
    case 'optionTwice':
      return `${path} is given twice. Expected ${expected}.`;
    case 'noSuchFile':
      return `${path} does not exist. Expected ${expected}.`;
    case 'isFolder':
      return `${path} is a folder. Expected ${expected}.`;
    case 'unreadable':
      return `${path} cannot be read (${received}). Expected ${expected}.`;
    case 'fileExists':
      return `${path} exists already and is left as it is. Expected ${expected}.`;
    case 'noSuchFolder':
      return `${path} lies in no folder that exists. Expected ${expected}.`;
    case 'unwritable':
      return `${path} cannot be written (${received}). Expected ${expected}.`;
    case 'notText':
      return `${path} is not text. Expected ${expected}.`;
    case 'tooLarge':
      return `${path} is too large. Expected ${expected}.`;
    case 'bothGiven':
      return `${path} does not go with what else is given. Expected ${expected}.`;
    case 'tooMany':
      return `${received} is more than this command takes. Expected ${expected}.`;
    case 'unsupportedPair':
      if (path.endsWith('.quality')) return notAccepted(path, received, expected);
      return `These do not make a pair: ${received}. Expected one of: ${expected}.`;
    default:
      return notAccepted(path, received, expected);
  }
}

function notAccepted(path: string, received: string, expected: string): string {
  return `${path}: ${received} is not accepted. Expected ${expected}${/[.?]$/.test(expected) ? '' : '.'}`;
}

/** The sentence for any error of the engine, still in base SI where the engine made it. */
export function errorSentence(error: KettlefinError): string {
  if (error instanceof InputError) {
    const { received, expected } = error.facts();
    return inputSentence(error.path, received, expected, error.code);
  }
  return withReason(error.message, error.code, error.facts());
}

const reasons: Readonly<Record<string, string>> = {
  condensingAboveCritical:
    'Above the critical point nothing condenses; cycles that work there are not in this version.',
};

/** The message, for some codes the reason behind it, and for some what would be possible. */
export function withReason(message: string, code: string, facts: Readonly<Record<string, unknown>>): string {
  const sentence = message.endsWith('.') ? message : `${message}.`;
  const possible = possibleOf(code, facts);
  if (possible !== undefined) return `${sentence} Possible is ${possible}.`;
  const reason = reasons[code];
  return reason === undefined ? sentence : `${sentence} ${reason}`;
}
