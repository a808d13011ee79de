package haftline.template;

import haftline.set.TemplateSettings;

/** What cuts the cards out of the sheet. */
public sealed interface CuttingTool permits LaserBeam, RouterBit, HandSaw {
    /**
     * The tool of a workshop.
     *
     * @param cutting what the maker cuts with
     * @return the tool
     */
    static CuttingTool of(TemplateSettings.Cutting cutting) {
        return switch (cutting.tool()) {
            case HAND_SAW -> new HandSaw();
            case LASER -> new LaserBeam(cutting.kerfMm());
            case ROUTER -> new RouterBit(cutting.bitMm(), cutting.cornersRelieved());
        };
    }

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
