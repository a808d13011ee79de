package haftline.template;

/** What cuts the cards out of the sheet. */
public sealed interface CuttingTool permits LaserBeam, RouterBit, HandSaw {
    /**
     * A card with its cut lines as this tool must follow them.
     *
     * @param card the card in its true size
     * @return the card as it is to be cut, with findings about what the tool cannot do
     */
    Card prepare(Card card);

    /**
     * The tool in a few words, for a sheet's notes.
     *
     * @return for instance {@code laser, kerf 0.15 mm allowed for}
     */
    String note();
}
