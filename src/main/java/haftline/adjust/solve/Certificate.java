package haftline.adjust.solve;

/**
 * Why a demand can be met by nothing that may move.
 *
 * @param bestMm the most that its margin can be, mm, negative
 * @param because what stands in the way, a sentence without a full stop
 */
record Certificate(double bestMm, String because) {}
