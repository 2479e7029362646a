// Public names of the brief: one to three printed pages for a licensed technician, as data and as HTML.

export { type BriefRequest, brief } from './brief.ts';
export {
  type BriefAssumption,
  type BriefDocument,
  type BriefFinding,
  type BriefInput,
  type BriefValue,
  longestContact,
} from './document.ts';
export { briefBody, briefHtml } from './html.ts';
export { briefStyles } from './styles.ts';
