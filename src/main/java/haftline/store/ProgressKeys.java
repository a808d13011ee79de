package haftline.store;

import haftline.set.production.Quantities;

/** Keys of a progress document. */
final class ProgressKeys {
    static final String KIND = "progress";

    static final Key SET = Key.text("set", "name of the set").must();
    static final Key BATCH = Key.text("batch", "measured batch that its parts come from").must();
    static final Key STEPS = Key.texts("steps", "the steps of the work in their order").must();
    static final Key NAME = Key.text("name", "name of the piece").must();
    static final Key QUANTITY =
            Key.whole("quantity", 1, Quantities.MOST, "how many are made").must();
    static final Key STEP = Key.text("step", "one of the steps").must();
    static final Key COUNT =
            Key.whole("count", 0, Quantities.MOST, "how many have gone through it").must();
    static final Key DONE =
            Key.maps(
                    "done",
                    Keys.of("step that was done", STEP, COUNT),
                    "what is done; a step that is not named was not begun");
    static final Key PIECES =
            Key.maps(
                            "pieces",
                            Keys.of("piece of the batch", NAME, QUANTITY, DONE),
                            "the pieces of the batch")
                    .must();

    static final Keys PROGRESS = Document.keys(KIND, SET, BATCH, STEPS, PIECES);

    private ProgressKeys() {}
}
