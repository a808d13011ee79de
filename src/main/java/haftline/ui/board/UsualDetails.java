package haftline.ui.board;

import haftline.shape.Detail;
import haftline.shape.Place;
import java.util.List;

/** Details in sizes that suit a table knife's handle (common practice, no source). */
public final class UsualDetails {
    private UsualDetails() {}

    /**
     * One of each kind.
     *
     * @param xMm its middle, from the shoulder; taken to half a millimetre
     * @return the details
     */
    public static List<Detail> at(double xMm) {
        Place place = new Place.FromShoulder(Math.round(xMm * 2) / 2.0);
        return List.of(
                new Detail.Bead(place, 4, 1.2),
                new Detail.Cove(place, 5, 1),
                new Detail.Vee(place, 1.5, 0.8),
                new Detail.Fillet(place, 2, 0.6),
                new Detail.Flat(place, 6),
                new Detail.BurntLine(place, 0.8, 0.3));
    }

    /**
     * A kind as it stands in a menu.
     *
     * @param detail the detail
     * @return its word, with a capital
     */
    public static String word(Detail detail) {
        return Character.toUpperCase(detail.kind().charAt(0)) + detail.kind().substring(1);
    }
}
