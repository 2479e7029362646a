// Where temperature and pressure alone cannot tell the phases apart. A file of its own: the operating point needs nothing else of
// the textbook cycle, which is loaded when it is asked for.

/** Nearer than this to the saturation line [K], temperature and pressure cannot tell the phases apart: it is on the line. */
export const onTheLine = 1e-6;
