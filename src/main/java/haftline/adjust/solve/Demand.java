package haftline.adjust.solve;

/**
 * One need of one piece.
 *
 * @param need what is to be met
 * @param piece the piece's place in the set, from 0
 */
record Demand(Need need, int piece) {}
