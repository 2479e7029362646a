// What the pictures of a loop are made of, for when one comes near the view.

export { makeDiagram } from '../../charts/index.ts';
