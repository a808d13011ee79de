package haftline.template;

/** A scroll or fret saw and a file: the line is the line, and the saw stays on its waste side. */
public record HandSaw() implements CuttingTool {
    @Override
    public Card prepare(Card card) {
        return card;
    }

    @Override
    public String note() {
        return "by hand: saw on the waste side, file to the line";
    }
}
