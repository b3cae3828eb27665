/** What is taken for a home of which nobody has said it, each with where it comes from. */

/** Temperature asked for in the rooms that are lived in. From memory, close to what British homes keep. */
export const ROOM_C = 20;
/** Outdoor temperature above which a British home needs no heating. Common practice, no source. */
export const BASE_C = 15.5;
/** People in a British home, where neither people nor floor area are known: mean household, Census 2021, from memory. */
export const PEOPLE = 2.4;
/** Floor area of a typical British home, m²; English Housing Survey mean 94 m², from memory. */
export const FLOOR_AREA_M2 = 90;
/** Cylinder that a home with a heat pump needs, where none is named. Common practice, no source. */
export const CYLINDER_LITRES = 180;
/** Temperature at which hot water is drawn off the cylinder: SAP 10.2 Appendix J. */
export const HOT_C = 52;
